import { describe, expect, it } from 'vitest';
import type { Lab } from '../../../src/core/colour/lab.js';
import { colourSteps } from '../../../src/core/seam/colourSteps.js';
import { figureColour } from '../../../src/core/seam/figureColour.js';
import type { SeamWood } from '../../../src/core/seam/seamWood.js';

const size = { width: 60, height: 40 };
const pxPerMm = 1;
const stretches = [{ fromMm: 0, toMm: 60 }];
/** Early to late: darker and browner, a unit vector. */
const figure: Lab = [-0.8, 0.36, 0.48];

/** Two boards, their line at row 20, of a ground colour with lines of the figure in them. */
function wood(lineAt: (x: number, y: number) => number, step: Lab): SeamWood['lab'] {
  const lab = [0, 1, 2].map((c) => {
    const data = Float32Array.from({ length: size.width * size.height }, (_, i) => {
      const [x, y] = [i % size.width, Math.floor(i / size.width)];
      return [70, 10, 25][c] + lineAt(x, y) * figure[c] + (y >= 20 ? step[c] : 0);
    });
    return { plane: { ...size, data }, pxPerMm, reachAMm: 20, reachBMm: 20 };
  });
  return lab as unknown as SeamWood['lab'];
}

const rings = (x: number, y: number) => 6 * Math.sin(0.9 * y + 0.1 * x);

describe('figureColour', () => {
  it('is the one direction in which the rings differ, whatever the step between the boards', () => {
    for (const step of [[0, 0, 0] as Lab, [9, -3, 2] as Lab]) {
      const boards = wood(rings, step);
      const axis = figureColour(boards, boards);
      const cos = axis.reduce((sum, x, c) => sum + x * figure[c], 0);
      expect(Math.abs(cos)).toBeCloseTo(1, 6);
    }
  });

  it('is lightness where nothing differs', () => {
    const plain = wood(() => 0, [0, 0, 0]);
    expect(figureColour(plain, plain)).toEqual([1, 0, 0]);
  });
});

describe('colourSteps', () => {
  const stepOf = (lab: SeamWood['lab']) =>
    colourSteps({ lab, etaMm: 0 }, { lab, etaMm: 0 }, stretches, 0)(0, 1);

  it('puts what the figure could do along it, and leaves nothing beside', () => {
    const step: Lab = [-0.8 * 2, 0.36 * 2, 0.48 * 2];
    const along = stepOf(wood(rings, step));
    expect(along.besideDeltaE).toBeLessThan(1e-4);
    // Read closer to the line, over other rings: the same step but for what the rings leave.
    expect(Math.abs(along.alongDeltaE - along.deltaE)).toBeLessThan(0.05);
    const alikeAtAnyDepth = stepOf(wood((x) => rings(x, 0), step));
    expect(alikeAtAnyDepth.alongDeltaE).toBeCloseTo(alikeAtAnyDepth.deltaE, 6);
  });

  it('puts a colour that the figure never takes beside the figure', () => {
    // (0.6, 0.48, 0.64) is square to the figure.
    const beside = stepOf(wood(rings, [1.2, 0.96, 1.28]));
    expect(beside.besideDeltaE).toBeGreaterThan(1);
    const nothing = stepOf(wood(rings, [0, 0, 0]));
    expect(nothing.besideDeltaE).toBeLessThan(1e-4);
  });
});
