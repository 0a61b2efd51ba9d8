import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bandAmplitudes, bandFrequenciesPerMm } from '../../../src/core/seam/bandAmplitudes.js';
import type { WindowMeasures } from '../../../src/core/seam/lineMeasures.js';
import { spacingMm } from '../../../src/core/seam/spacingMm.js';
import { windowCues } from '../../../src/core/seam/windowCues.js';
import { windowOffset } from '../../../src/core/seam/windowOffset.js';
import { closedFormBreak } from '../../../src/core/visibility/closedFormBreak.js';
import { cubicSum } from '../../../src/core/visibility/cubicSum.js';

const stepMm = 0.05;
const u = Float64Array.from({ length: 2000 }, (_, n) => (n + 0.5) * stepMm);
const lines = (spacing: number, amplitude: number, deltaMm = 0) =>
  u.map((t) => -1 + amplitude * Math.cos((2 * Math.PI * (t + deltaMm)) / spacing));
const wrapped = (d: number, s: number) => d - s * Math.round(d / s);

/** One stretch whose lines stand at angleRad and step by deltaMm. */
function stretch(
  spacing: number,
  amplitude: number,
  deltaMm: number,
  angleRad = Math.PI / 2,
): WindowMeasures {
  // Growing u runs against the normal of lines at a positive angle: B's phase is ahead by -delta.
  const b = lines(spacing, amplitude, -deltaMm);
  return {
    atMm: 50,
    angleARad: angleRad,
    angleBRad: angleRad,
    angleSeRad: 0.005,
    turnRad: 0,
    doubtRad: 0,
    bands: bandAmplitudes(lines(spacing, amplitude), b, u, 50),
    spacingRatio: 1,
    colourStep: () => ({ deltaE: 0, alongDeltaE: 0, besideDeltaE: 0 }),
    ridge: { areaMm: 0, peak: 0 },
  };
}

describe('bandAmplitudes', () => {
  it.each([...bandFrequenciesPerMm].slice(1))('answers lines at %d per mm with 1', (nu) => {
    const p = lines(1 / nu, 0.1);
    const band = bandAmplitudes(p, p, u, 50).find((b) => b.bandPerMm === nu)!;
    expect(band.amplitudeA).toBeCloseTo(0.1, 2);
    expect(band.frequencyAPerMm / nu).toBeCloseTo(1, 1);
    expect(band.difference).toBeCloseTo(0, 9);
  });

  it('scales with contrast, and is linear in it', () => {
    const one = bandAmplitudes(lines(4, 0.1), lines(4, 0.1, 1), u, 50);
    const three = bandAmplitudes(lines(4, 0.3), lines(4, 0.3, 1), u, 50);
    one.forEach((b, k) => {
      expect(three[k]!.amplitudeA).toBeCloseTo(3 * b.amplitudeA, 9);
      expect(three[k]!.difference).toBeCloseTo(3 * b.difference, 9);
    });
  });

  it('leaves out octaves whose window the joint is too short for', () => {
    const short = u.subarray(0, 60);
    const p = lines(1, 0.1).subarray(0, 60);
    const told = bandAmplitudes(p, p, short, 1.5).map((b) => b.bandPerMm);
    expect(told).not.toContain(1 / 16);
    expect(told).toContain(2);
  });

  it('skips what was not read', () => {
    const holes = lines(4, 0.1).map((v, n) => (n % 7 === 0 ? Number.NaN : v));
    for (const band of bandAmplitudes(holes, lines(4, 0.1), u, 50)) {
      for (const v of Object.values(band)) expect(Number.isFinite(v)).toBe(true);
    }
    const none = u.map(() => Number.NaN);
    expect(bandAmplitudes(none, none, u, 50)).toEqual([]);
  });
});

describe('windowOffset', () => {
  it('is the step of the lines, wrapped', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1.2, max: 7, noNaN: true }),
        fc.double({ min: -0.45, max: 0.45, noNaN: true }),
        fc.integer({ min: -3, max: 3 }),
        (s, part, cycles) => {
          const d = (part + cycles) * s;
          const offset = windowOffset(stretch(s, 0.1, d))!;
          expect(offset.spacingMm / s).toBeCloseTo(1, 1);
          expect(Math.abs(wrapped(offset.offsetMm - d, s))).toBeLessThan(0.04 * s);
          expect(offset.agreement).toBeGreaterThan(0.95);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('changes sign with the side that the lines lean to', () => {
    const right = windowOffset(stretch(4, 0.1, 0.8, 1))!;
    const left = windowOffset(stretch(4, 0.1, 0.8, -1))!;
    expect(left.offsetMm).toBeCloseTo(-right.offsetMm, 9);
  });

  it('cannot tell where no lines cross', () => {
    expect(windowOffset({ ...stretch(4, 0.1, 1), bands: [] })).toBeNull();
    expect(windowOffset(stretch(4, 0, 0))).toBeNull();
  });
});

describe('windowCues', () => {
  it('of even lines that miss by delta is near the closed form, octaves pooled', () => {
    for (const spacing of [2, 3, 4, 5, 8]) {
      for (const part of [0.1, 0.25, 0.5]) {
        for (const deg of [20, 60, 90]) {
          const angleRad = (deg * Math.PI) / 180;
          const window = stretch(spacing, 0.1, part * spacing, angleRad);
          const found = cubicSum([...windowCues(window, 600).breaks])!;
          // A loss of d / cos(theta) steps lines at theta by d; at 90 deg only a slide of -d does.
          const expected = closedFormBreak({
            contrast: 0.1,
            spacingMm: spacing,
            angleRad,
            distanceMm: 600,
            lostMm: deg === 90 ? 0 : (part * spacing) / Math.cos(angleRad),
            slideMm: deg === 90 ? -part * spacing : 0,
          });
          expect(found / expected).toBeGreaterThan(0.8);
          expect(found / expected).toBeLessThan(1.2);
        }
      }
    }
  });

  it('is 0 in every cue where everything runs through', () => {
    const cues = windowCues(stretch(4, 0.1, 0), 600);
    for (const x of cues.breaks) expect(x ?? 0).toBeCloseTo(0, 6);
    expect(cues.direction).toBe(0);
    expect(cues.spacing).toBeCloseTo(0, 6);
    expect(cues.colours).toEqual([0, 0]);
    expect(cues.glueLine).toBe(0);
  });

  it('counts colour by its threshold of 0.8 (Paravina et al. 2015) at close range', () => {
    const step = { deltaE: 2, alongDeltaE: 1.6, besideDeltaE: 1.2 };
    const window = { ...stretch(4, 0.1, 0), colourStep: () => step };
    const [along, beside] = windowCues(window, 600).colours;
    expect(along).toBeCloseTo(2, 9);
    expect(beside).toBeCloseTo(1.5, 9);
    expect(windowCues(window, 15_000).colours[0]).toBeLessThan(1);
  });

  it('says nothing of direction and spacing where no lines cross', () => {
    const cues = windowCues({ ...stretch(4, 0.1, 0), bands: [] }, 600);
    expect([cues.direction, cues.spacing]).toEqual([null, null]);
    expect(cues.breaks.every((x) => x === null)).toBe(true);
  });

  it('finds the spacing of even lines to a tenth, whichever octaves share them', () => {
    for (let s = 1.5; s < 9; s += 0.7) {
      const { bands } = stretch(s, 0.1, 0);
      expect(Math.abs(Math.log(spacingMm(bands, 'A') / s))).toBeLessThan(0.1);
    }
  });
});
