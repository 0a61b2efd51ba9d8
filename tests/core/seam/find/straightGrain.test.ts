import { describe, expect, it } from 'vitest';
import type { Plane } from '../../../../src/core/image/plane.js';
import { createRandom } from '../../../../src/core/random/createRandom.js';
import { evenlyLit } from '../../../../src/core/seam/find/evenlyLit.js';
import { findSeams } from '../../../../src/core/seam/find/findSeams.js';
import { gratingPlanes } from '../gratingJoint.js';

/** A board of straight uneven rings, sawn and glued at 90 mm, under a lamp to one side. */
function straightBoard({ angleDeg = 0, lostMm = 0, lamp = 0 }) {
  const size = { widthMm: 400, heightMm: 200, seamYMm: 90, pxPerMm: 3 };
  const figure = { spacingMm: 5, contrast: 0.1, uneven: true };
  const planes = gratingPlanes({ ...size, ...figure, angleDeg, lostMm });
  const { width, data } = planes.logLuminance;
  data.forEach((v, i) => {
    data[i] = v + lamp * ((i % width) / width - 0.5);
  });
  return planes;
}

describe('straight grain', () => {
  // Lines 4.5 to 10.5 deg off the saw's bear witness, and at these angles they lie on the rings.
  it.each([6, 8, 10])('at %i deg shows a kerf', (angleDeg) => {
    const found = findSeams(straightBoard({ angleDeg, lostMm: 3.175 }), createRandom(1));
    expect(found).toHaveLength(1);
    expect(Math.abs(found[0]!.line.y1Mm - 90)).toBeLessThan(1);
    expect(Math.abs(found[0]!.line.y2Mm - 90)).toBeLessThan(1);
  });

  it.each([0, 1, 3, 6, 8])('at %i deg is no joint by itself', (angleDeg) => {
    expect(findSeams(straightBoard({ angleDeg }), createRandom(1))).toEqual([]);
  });

  it.each([1, 3])('at %i deg is none under a lamp to one side', (angleDeg) => {
    expect(findSeams(straightBoard({ angleDeg, lamp: 1 }), createRandom(1))).toEqual([]);
  });
});

describe('evenlyLit', () => {
  const plane = (of: (x: number, y: number) => number): Plane => {
    const [width, height] = [120, 80];
    const data = Float32Array.from({ length: width * height }, (_, i) =>
      of((2 * (i % width) + 1) / width - 1, (2 * Math.floor(i / width) + 1) / height - 1),
    );
    return { width, height, data };
  };

  it('takes off what falls evenly, slope and bend', () => {
    const { data } = evenlyLit(plane((x, y) => -2 + 0.7 * x - 0.4 * y + 0.3 * x * y - 0.2 * x * x));
    for (const v of data) expect(Math.abs(v)).toBeLessThan(0.01);
  });

  it('leaves the figure', () => {
    const figure = (x: number, y: number) => Math.sin(40 * x + 55 * y);
    const { data } = evenlyLit(plane((x, y) => figure(x, y) + 0.7 * x));
    plane(figure).data.forEach((v, i) => {
      expect(Math.abs(data[i]! - v)).toBeLessThan(0.05);
    });
  });
});
