import { describe, expect, it } from 'vitest';
import { defaultForecastOptions } from '../../../src/core/pipeline/forecastOptions.js';
import { forecastPanel } from '../../../src/core/pipeline/forecastPanel.js';
import { imaginedBoard, imagineFace } from '../../../src/core/pipeline/imagineFace.js';
import { createBoard } from '../../../src/core/wood/createBoard.js';

const size = { widthMm: 150, heightMm: 100 };
const wood = { ringWidthMm: 2, contrast: 1, setting: 'softwood', seed: 3 } as const;

describe('imagined wood', () => {
  it.each([0, 20, 45, 70, 88])('has its rings at %s degrees to the face at its middle', (deg) => {
    const board = createBoard({
      ...imaginedBoard({ ...wood, ringAngleDeg: deg }, size),
      ...{ waviness: 0, slopeInFaceDeg: 0, slopeInDepthDeg: 0, taperMmPerM: 3 },
    });
    const at = { ageMm: 0, dx: 0, dy: 0, dz: 0 };
    board.field.sample(size.widthMm / 2, size.heightMm / 2, 0, at);
    // Angle between the ring's surface and the face = angle between their normals.
    const angle = (Math.acos(Math.abs(at.dz) / Math.hypot(at.dx, at.dy, at.dz)) * 180) / Math.PI;
    expect(Math.abs(angle - deg)).toBeLessThan(2);
  });

  it('is forecast like a photo, planing included', () => {
    const photo = imagineFace({ ...wood, ringAngleDeg: 45 }, size, 4);
    const result = forecastPanel(photo, {
      ...defaultForecastOptions,
      ...{ ripsMm: [50], ringAngleDeg: 45, imagine: [{ ...wood, ringAngleDeg: 90 }] },
    });
    expect(result.notes.join(' ')).toContain('Drawn by the wood model');
    expect(result.rips[0]?.visibility.v).not.toBeNull();
    expect(result.depth?.shiftPerMm).toBeCloseTo(1, 6);
    expect(result.imagined[0]?.cut).toBe('quartered');
    // Quartered lines do not move at all when planed.
    expect(result.imagined[0]?.depth.largestMm).toBeNull();
    expect(result.reglued?.heightMm).toBeCloseTo(100 - 3.175, 9);
  });
});
