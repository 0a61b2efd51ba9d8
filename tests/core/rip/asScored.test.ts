import { beforeAll, describe, expect, it } from 'vitest';
import type { PanelPhoto } from '../../../src/core/image/panelPhoto.js';
import { defaultForecastOptions } from '../../../src/core/pipeline/forecastOptions.js';
import { forecastPanel } from '../../../src/core/pipeline/forecastPanel.js';
import { defaultScoreOptions } from '../../../src/core/pipeline/scoreOptions.js';
import { scorePanel } from '../../../src/core/pipeline/scorePanel.js';
import { confirmCurve } from '../../../src/core/rip/confirmCurve.js';
import { type ForecastLines, forecastLines } from '../../../src/core/rip/forecastLines.js';
import { forecastRip } from '../../../src/core/rip/forecastRip.js';
import { reglue } from '../../../src/core/rip/reglue.js';
import { reglueRips } from '../../../src/core/rip/reglueSpecs.js';
import { ripCost, ripCurve } from '../../../src/core/rip/ripCurve.js';
import { panelPlanes } from '../../../src/core/seam/panelPlanes.js';
import { drawPanel } from '../../../src/core/wood/drawPanel.js';
import { onePiecePanel } from '../../../src/core/wood/onePiecePanel.js';
import { transposedPhoto } from '../seam/gratingJoint.js';

const size = { widthMm: 160, heightMm: 100 };
const pxPerMm = 5;
/** Whole pixels, so that a picture can be put together exactly. */
const lossMm = 16 / pxPerMm;
let photo: PanelPhoto;
let lines: ForecastLines;

beforeAll(() => {
  const board = { seed: 9, setting: 'softwood', cut: 'flatsawn', lengthMm: 160, widthMm: 100 };
  const { image } = drawPanel(onePiecePanel({ board: board as never, ...size }), { pxPerMm });
  photo = { image, pxPerMm, ...size, notes: [] };
  lines = forecastLines(panelPlanes(photo), photo, 600);
});

/** The strip taken out of the photo, what is left joined, and that scored: the other way to V. */
function scoreOfRejoined(edgeMm: number) {
  const spec = reglueRips(photo, [edgeMm + lossMm / 2], { kerfMm: lossMm, dressMm: 0 });
  const image = reglue(photo.image, pxPerMm, spec);
  const joined = { ...photo, image, heightMm: spec.heightMm };
  const line = { x1Mm: 0, y1Mm: edgeMm, x2Mm: size.widthMm, y2Mm: edgeMm };
  const options = { ...defaultScoreOptions, find: false, placedSeams: [line] };
  return scorePanel(joined, options).seams[0]!;
}

describe('a rip that was asked for', () => {
  it.each([30, 37, 44, 52, 61, 68])('at %s mm is what the re-joined picture scores', (edgeMm) => {
    const seam = scoreOfRejoined(edgeMm);
    const { rip } = forecastRip(lines.asScored, edgeMm + lossMm / 2, lossMm, 2, edgeMm);
    // Colour is read in patches of a millimetre, whose borders lie elsewhere on the joined picture.
    expect(Math.abs((rip.visibility.v ?? 9) - (seam.visibility.v ?? 99))).toBeLessThan(0.03);
    expect(rip.windows).toHaveLength(seam.windows.length);
  });
});

describe('a crosscut that counts', () => {
  it('is read as the rip of the same panel turned over its diagonal', () => {
    const turned = transposedPhoto(photo);
    const rips = forecastLines(panelPlanes(turned), turned, 600).asScored.rip;
    for (const edgeMm of [44, 80, 112]) {
      const crosscut = ripCost(lines.asScored.crosscut, edgeMm, lossMm, size.widthMm);
      const rip = ripCost(rips, edgeMm, lossMm, size.widthMm);
      expect(crosscut.v!).toBeCloseTo(rip.v!, 2);
      expect(crosscut.v).not.toBe(ripCost(lines.crosscut, edgeMm, lossMm, size.widthMm).v);
    }
  });
});

describe('the curve', () => {
  it('has the score’s reading at its best rip and at every rip asked for', () => {
    const quick = ripCurve(lines, lossMm);
    const { yMm: askedMm } = quick[12]!;
    const { curve, best } = confirmCurve(lines, quick, lossMm, [askedMm]);
    expect(curve.map(({ yMm }) => yMm)).toEqual(quick.map(({ yMm }) => yMm));
    for (const at of [askedMm, best!.yMm]) {
      const point = curve.find(({ yMm }) => yMm === at);
      const exact = ripCost(lines.asScored.rip, at - lossMm / 2, lossMm, size.heightMm);
      expect(point?.v).toBe(exact.v);
    }
  });

  it('has it everywhere when it is asked to be thorough', () => {
    const options = { ...defaultForecastOptions, kerfMm: lossMm, withDepth: false, thorough: true };
    const { curve } = forecastPanel(photo, options);
    for (const { yMm, v } of curve.filter((_, i) => i % 6 === 0)) {
      const exact = ripCost(lines.asScored.rip, yMm - lossMm / 2, lossMm, size.heightMm);
      expect(v).toBe(exact.v);
    }
  });
});
