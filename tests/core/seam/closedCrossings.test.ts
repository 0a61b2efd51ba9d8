import { describe, expect, it } from 'vitest';
import { closedCrossings } from '../../../src/core/seam/closedCrossings.js';
import { crossedAt } from '../../../src/core/seam/crossedAt.js';
import { lineMeasures } from '../../../src/core/seam/lineMeasures.js';
import { seamFrame } from '../../../src/core/seam/seamFrame.js';
import { seamWood } from '../../../src/core/seam/seamWood.js';

const rip = { x1Mm: 0, y1Mm: 40, x2Mm: 100, y2Mm: 40 };
const frame = seamFrame(rip);

describe('crossedAt', () => {
  it('is the place along the seam where another joint crosses it or ends on it', () => {
    expect(crossedAt(frame, { x1Mm: 60, y1Mm: 40, x2Mm: 60, y2Mm: 90 })).toBeCloseTo(60, 9);
    expect(crossedAt(frame, { x1Mm: 50, y1Mm: 0, x2Mm: 70, y2Mm: 80 })).toBeCloseTo(60, 9);
    expect(crossedAt(frame, { x1Mm: 100, y1Mm: 42, x2Mm: 100, y2Mm: 90 })).toBeCloseTo(100, 9);
  });

  it('is null for a joint that runs alongside or stays clear', () => {
    expect(crossedAt(frame, { x1Mm: 0, y1Mm: 60, x2Mm: 100, y2Mm: 60 })).toBeNull();
    expect(crossedAt(frame, { x1Mm: 60, y1Mm: 50, x2Mm: 60, y2Mm: 90 })).toBeNull();
    expect(crossedAt(frame, { x1Mm: 150, y1Mm: 0, x2Mm: 150, y2Mm: 90 })).toBeNull();
  });
});

describe('closedCrossings', () => {
  const pxPerMm = 4;
  /** Even lines 3 mm apart at 4 deg, with a black bar below the seam from x = 97.5 mm on. */
  const planes = (barred: boolean) => {
    const [width, height] = [100 * pxPerMm, 80 * pxPerMm];
    const data = new Float32Array(width * height);
    const angle = (4 * Math.PI) / 180;
    for (let j = 0; j < height; j++) {
      for (let i = 0; i < width; i++) {
        const [x, y] = [(i + 0.5) / pxPerMm, (j + 0.5) / pxPerMm];
        const across = y * Math.cos(angle) - x * Math.sin(angle);
        const black = barred && y > 40 && x > 97.5;
        data[j * width + i] = black ? -3 : 0.1 * Math.sin((2 * Math.PI * across) / 3);
      }
    }
    const flat = { width: width / 4, height: height / 4, data: new Float32Array(width * height) };
    const lab = { reduceBy: 4, lightness: flat, a: flat, b: flat };
    return { pxPerMm, logLuminance: { width, height, data }, lab };
  };
  const other = { x1Mm: 99, y1Mm: 40, x2Mm: 99, y2Mm: 80 };
  const wood = (barred: boolean) => seamWood(planes(barred), frame, 30, 30);
  const lastTurn = (read: ReturnType<typeof wood>) => {
    const { angleARad, angleBRad } = lineMeasures(read, 0, 10).windows.slice(-1)[0];
    return (Math.abs(angleBRad - angleARad) * 180) / Math.PI;
  };

  it('keeps a black bar at the end of a joint from turning the grain there', () => {
    expect(lastTurn(wood(true))).toBeGreaterThan(30);
    expect(lastTurn(closedCrossings(wood(true), [other]))).toBeLessThan(1);
  });

  it('leaves wood without a gap as it is', () => {
    const plain = wood(false);
    expect(closedCrossings(plain, [other])).toBe(plain);
  });
});
