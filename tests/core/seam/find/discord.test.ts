import { describe, expect, it } from 'vitest';
import { createPlane, type Plane } from '../../../../src/core/image/plane.js';
import { createRandom } from '../../../../src/core/random/createRandom.js';
import { carriedBlocks } from '../../../../src/core/seam/carriedBlocks.js';
import { discordMap } from '../../../../src/core/seam/find/discordMap.js';
import { excessMap } from '../../../../src/core/seam/find/excessMap.js';
import { sideDirections } from '../../../../src/core/seam/find/sideDirections.js';
import { withoutLine } from '../../../../src/core/seam/find/withoutLine.js';

const pxPerMm = 3;
const columnPx = 16;

/** Straight lines at an angle, 100 x 60 mm; below row `at` moved by `shiftMm` across the grain. */
function grating(angleRad: number, at: number, shiftMm: number): Plane {
  const plane = createPlane(300, 180);
  const random = createRandom(1);
  for (let y = 0; y < plane.height; y++) {
    for (let x = 0; x < plane.width; x++) {
      const across = (y * Math.cos(angleRad) - x * Math.sin(angleRad)) / pxPerMm;
      const u = across + (y >= at ? shiftMm : 0);
      plane.data[y * plane.width + x] =
        0.1 * Math.sin((2 * Math.PI * u) / 2.5) + 0.01 * random.normal();
    }
  }
  return plane;
}

/** Log likelihood ratio of every row, summed over its cells. */
function rowRatios(plane: Plane, reading: 'strangers' | 'stepped' = 'strangers'): number[] {
  const columns = Math.floor(plane.width / columnPx);
  const bands = discordMap(plane, pxPerMm, carriedBlocks(plane, pxPerMm), columnPx, columns);
  const excess = bands.map((band) => excessMap(band, columns, pxPerMm)[reading]);
  return Array.from({ length: plane.height }, (_, y) =>
    excess.reduce((sum, e) => {
      for (let c = 0; c < columns; c++) sum += e[c * plane.height + y]!;
      return sum;
    }, 0),
  );
}

describe('discord', () => {
  const steep = (20 * Math.PI) / 180;

  it.each(['strangers', 'stepped'] as const)(
    'speaks against a joint wherever lines run through (%s)',
    (reading) => {
      const ratios = rowRatios(grating(steep, 90, 0), reading).slice(24, -24);
      expect(Math.max(...ratios)).toBeLessThan(0);
    },
  );

  it('knows lines a little out of step from strangers', () => {
    const plane = grating(steep, 90, 0.3);
    const top = (reading: 'strangers' | 'stepped') =>
      Math.max(...rowRatios(plane, reading).slice(84, 97));
    expect(top('strangers')).toBeLessThan(0);
    expect(top('stepped')).toBeGreaterThan(top('strangers') + 1);
  });

  it('speaks for a joint where lines step by half a spacing, and only there', () => {
    const ratios = rowRatios(grating(steep, 90, 1.25));
    const top = ratios.indexOf(Math.max(...ratios));
    expect(ratios[top]!).toBeGreaterThan(3);
    expect(Math.abs(top - 90)).toBeLessThanOrEqual(pxPerMm);
    const away = ratios.filter((_, y) => Math.abs(y - 90) > 3 * pxPerMm && y > 24 && y < 156);
    expect(Math.max(...away)).toBeLessThan(0);
  });

  it('says nothing either way where no line crosses', () => {
    const ratios = rowRatios(grating(0, 90, 1.25)).slice(24, -24);
    expect(Math.max(...ratios.map(Math.abs))).toBeLessThan(1);
  });
});

describe('sideDirections', () => {
  it('reads each side for itself: 10 deg above, -10 deg below', () => {
    const angle = (10 * Math.PI) / 180;
    const [up, down] = [grating(angle, 999, 0), grating(-angle, 999, 0)];
    up.data.set(down.data.subarray(90 * 300), 90 * 300);
    const blocks = carriedBlocks(up, pxPerMm);
    const edge = Math.round(90 / pxPerMm / blocks.stepMm);
    const { above, below } = sideDirections(blocks);
    for (const [side, { cos, sin, columns }] of [
      [-1, above],
      [1, below],
    ] as const) {
      const i = edge * columns + (columns >> 1);
      const read = Math.atan2(sin[i]! * Math.sign(cos[i]!), Math.abs(cos[i]!));
      expect(Math.abs(read + side * angle)).toBeLessThan((1.5 * Math.PI) / 180);
    }
  });
});

describe('withoutLine', () => {
  it('shows what lies beside the line in its place and leaves the rest', () => {
    const value = new Float32Array(4 * 60);
    for (let c = 0; c < 4; c++) value[60 * c + 30] = 7;
    const maps = {
      columns: 4,
      rows: 60,
      columnMm: 5,
      rowsPerMm: 3,
      cues: [{ cue: 'ridge', value }],
    };
    const region = { col0: 0, col1: 3, row0: 0, row1: 60 };
    const rest = withoutLine(maps as never, region, 30, 0, 2).cues[0]!.value;
    // The last column lies outside the region.
    expect([0, 1, 2, 3].map((c) => rest[60 * c + 30])).toEqual([0, 0, 0, 7]);
  });
});
