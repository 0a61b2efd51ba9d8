import { describe, expect, it } from 'vitest';
import { createPlane, type Plane } from '../../../../src/core/image/plane.js';
import { createRandom } from '../../../../src/core/random/createRandom.js';
import { colourStepMaps } from '../../../../src/core/seam/find/colourStepMaps.js';
import { columnMeans } from '../../../../src/core/seam/find/columnMeans.js';
import { lineScan } from '../../../../src/core/seam/find/lineScan.js';
import { ridgeMap } from '../../../../src/core/seam/find/ridgeMap.js';
import { shiftedColumns } from '../../../../src/core/seam/find/shiftedColumns.js';
import { maxTiltRad, strongestLine } from '../../../../src/core/seam/find/strongestLine.js';
import { gratingPlanes } from '../gratingJoint.js';
import { noisyMaps } from './noisyMaps.js';

describe('lineScan', () => {
  const maps = noisyMaps(5, 100, 0.25, 1);
  const region = { col0: 0, col1: 40, row0: 20, row1: 260 };

  it('adds a tilted line up where it lies', () => {
    const { sum, rows } = lineScan(maps, region, [-0.25, 0, 0.25]);
    const ridge = sum[2]!;
    let top = 0;
    ridge.forEach((v, i) => {
      if (v > ridge[top]! || Number.isNaN(ridge[top]!)) top = i;
    });
    expect([Math.floor(top / rows), top % rows]).toEqual([2, 80]);
    // Signed cues are means: a line of height 5 comes out as 5 within the noise's 1 / sqrt(40).
    expect(Math.abs(ridge[top]! - 5)).toBeLessThan(4 / Math.sqrt(40));
  });

  it('does not tell of lines that leave the region', () => {
    const { sum, rows } = lineScan(maps, region, [3]);
    expect(sum[2]![0]).toBeNaN();
    expect(sum[2]![rows >> 1]).not.toBeNaN();
  });

  it('keeps clear of the edge all along', () => {
    const { sum } = lineScan(maps, region, [0.25], 24);
    const told = [...sum[2]!.keys()].filter((i) => !Number.isNaN(sum[2]![i]!));
    // 40 columns at 0.25 rows each lean by 5 rows to either side of the middle.
    expect(Math.min(...told)).toBe(24 + 5);
    expect(Math.max(...told)).toBe(239 - 24 - 5);
  });

  it('of columns shifted round together is the scan shifted', () => {
    const shift = new Int32Array(40).fill(30);
    const still = lineScan(maps, region, [0]).sum[0]!;
    const moved = lineScan(shiftedColumns(maps, region, shift), region, [0]).sum[0]!;
    for (let r = 0; r < 200; r++) expect(moved[r]).toBeCloseTo(still[r + 30]!, 5);
  });
});

describe('strongestLine', () => {
  const region = { col0: 0, col1: 40, row0: 0, row1: 300 };

  it('finds a tilted line and is sure of it', () => {
    const line = strongestLine(noisyMaps(3, 140, 0.4, 7), region, maxTiltRad, createRandom(1))!;
    expect(Math.abs(line.row - 140)).toBeLessThanOrEqual(1);
    expect(Math.abs(line.slope - 0.4)).toBeLessThan(0.1);
    expect(line.p).toBeLessThan(0.003);
    expect(line.weakestQuarter).toBeGreaterThan(0);
  });

  it('finds nothing to be sure of in noise', () => {
    for (let seed = 0; seed < 6; seed++) {
      const line = strongestLine(
        noisyMaps(0, 140, 0, 20 + seed),
        region,
        maxTiltRad,
        createRandom(1),
      );
      expect(line?.p ?? 1).toBeGreaterThan(0.003);
    }
  });

  it('does not try a region too small to hold a joint', () => {
    const tiny = { col0: 0, col1: 2, row0: 0, row1: 300 };
    const low = { col0: 0, col1: 40, row0: 0, row1: 20 };
    expect(strongestLine(noisyMaps(3, 140, 0, 1), tiny, maxTiltRad, createRandom(1))).toBeNull();
    expect(strongestLine(noisyMaps(3, 10, 0, 1), low, maxTiltRad, createRandom(1))).toBeNull();
  });
});

/** A plane of zeros down to row `at`, `below` from there, `line` at the step itself. */
function stepped(width: number, height: number, at: number, below: number, line = 0): Plane {
  const plane = createPlane(width, height);
  for (let y = 0; y < height; y++) {
    plane.data.fill(y >= at ? below : 0, y * width, (y + 1) * width);
    if (Math.abs(y - at) < 1) plane.data.fill(line, y * width, (y + 1) * width);
  }
  return plane;
}

describe('cue maps', () => {
  it('columnMeans averages stretches and leaves a rest out', () => {
    const plane = createPlane(7, 1);
    plane.data.set([1, 3, 5, 7, 9, 11, 100]);
    expect([...columnMeans(plane, 2, 3).data]).toEqual([2, 6, 10]);
  });

  it('ridgeMap sees a dark line and not a step', () => {
    const dark = ridgeMap(stepped(4, 60, 30, 0, -0.2), 3.5);
    expect(Math.min(...dark)).toBeLessThan(-0.2);
    expect(dark.indexOf(Math.min(...dark)) >> 2).toBe(30);
    const step = ridgeMap(stepped(4, 60, 30, 0.3, 0.3), 3.5);
    expect(step.every((v) => Math.abs(v) < 1e-6)).toBe(true);
  });

  it('colourStepMaps sees a step with its sign, and nothing on one board', () => {
    const { lab, logLuminance } = gratingPlanes({
      angleDeg: 0,
      spacingMm: 4,
      contrast: 0,
      pxPerMm: 4,
      colourStep: [4, 0, -1],
    });
    const planes = { pxPerMm: 4, logLuminance, lab };
    const [lightness, a, b] = colourStepMaps(planes, 20, 10, 160, 2);
    const strongest = lightness.reduce((m, v, i) => (v > lightness[m]! ? i : m), 0);
    expect(Math.abs((strongest % 160) / 2 - 40)).toBeLessThan(1.1);
    expect(lightness[strongest]).toBeCloseTo(2, 5);
    expect(b[strongest]).toBeCloseTo(-1, 5);
    expect(a.every((v) => v === 0)).toBe(true);
  });
});
