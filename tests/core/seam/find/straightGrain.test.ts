import { describe, expect, it } from 'vitest';
import type { Plane } from '../../../../src/core/image/plane.js';
import { createRandom } from '../../../../src/core/random/createRandom.js';
import { evenlyLit } from '../../../../src/core/seam/find/evenlyLit.js';
import { findSeams } from '../../../../src/core/seam/find/findSeams.js';
import { gratingPlanes } from '../gratingJoint.js';

const size = { widthMm: 400, heightMm: 200, pxPerMm: 3 };
const random = createRandom(3);
/** Rings of a stretch of wood: no two alike. */
const rings = Array.from({ length: 12 }, () => ({
  spacingMm: random.uniform(2, 11),
  phase: random.uniform(0, 2 * Math.PI),
}));

/** A board of straight uneven rings, sawn and glued at 90 mm, under a lamp to one side. */
function straightBoard({ angleDeg = 0, lostMm = 0, lamp = 0 }) {
  const planes = gratingPlanes({ ...size, angleDeg, spacingMm: 5, contrast: 0 });
  const { width, height, data } = planes.logLuminance;
  const angle = (angleDeg * Math.PI) / 180;
  for (let j = 0; j < height; j++) {
    for (let i = 0; i < width; i++) {
      const x = (i + 0.5) / size.pxPerMm;
      const below = (j + 0.5) / size.pxPerMm > 90 ? lostMm : 0;
      const u = ((j + 0.5) / size.pxPerMm + below) * Math.cos(angle) - x * Math.sin(angle);
      const figure = rings.reduce(
        (sum, { spacingMm, phase }) => sum + Math.sin((2 * Math.PI * u) / spacingMm + phase),
        0,
      );
      data[j * width + i] = -1 + 0.05 * figure + lamp * (i / width - 0.5);
    }
  }
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
