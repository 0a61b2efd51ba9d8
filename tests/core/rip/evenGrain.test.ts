import { describe, expect, it } from 'vitest';
import { forecastLines } from '../../../src/core/rip/forecastLines.js';
import { forecastRip } from '../../../src/core/rip/forecastRip.js';
import { joinedWood } from '../../../src/core/rip/joinedWood.js';
import { ripCost, ripCurve } from '../../../src/core/rip/ripCurve.js';
import { panelPlanes } from '../../../src/core/seam/panelPlanes.js';
import { seamFrame } from '../../../src/core/seam/seamFrame.js';
import { seamWood } from '../../../src/core/seam/seamWood.js';
import { meanOf } from '../../../src/core/statistics/meanOf.js';
import { closedFormBreak } from '../../../src/core/visibility/closedFormBreak.js';
import { type Grating, gratingPanel } from './gratingPanel.js';

const kerfMm = 3.175;
const distanceMm = 600;

function linesOf(grating: Grating) {
  const photo = gratingPanel(grating);
  return forecastLines(panelPlanes(photo), photo, distanceMm);
}

const panel = { widthMm: 200, heightMm: 90, contrast: 0.1 };

describe('a rip through even, straight grain', () => {
  // u* = k cot(theta): docs/method, section 5 (analytic). Spacings are chosen so that no other
  // slide within the spare inch lets the lines meet: s / sin(theta) is over an inch longer.
  it.each([
    { angleDeg: 8, spacingMm: 7 },
    { angleDeg: 10, spacingMm: 8 },
    { angleDeg: -12, spacingMm: 9 },
    { angleDeg: 20, spacingMm: 12 },
    { angleDeg: 35, spacingMm: 20 },
  ])('is cured by a slide of k cot(theta) at $angleDeg deg', ({ angleDeg, spacingMm }) => {
    const lines = linesOf({ ...panel, angleDeg, spacingMm });
    const { rip } = forecastRip(lines, 45, kerfMm, 25.4, 45 - kerfMm / 2);
    const wanted = kerfMm / Math.tan((angleDeg * Math.PI) / 180);
    expect(Math.abs((rip.bestSlideMm ?? 0) - wanted)).toBeLessThan(0.5);
    expect(Math.abs((rip.slidesByAngleMm[0] ?? 0) - wanted)).toBeLessThan(0.5);
    expect(rip.vAtBestSlide ?? 9).toBeLessThan(0.35 * (rip.visibility.v ?? 0));
  });

  it('puts the edges together where they lie between pixels', () => {
    const grating = { ...panel, angleDeg: 8, spacingMm: 4, pxPerMm: 4, noise: 0 };
    const frame = seamFrame({ x1Mm: 0, y1Mm: 0, x2Mm: panel.widthMm, y2Mm: 0 });
    const planes = panelPlanes(gratingPanel(grating));
    const wood = seamWood(planes, frame, 0, panel.heightMm, Number.POSITIVE_INFINITY);
    const [etaAMm, etaBMm] = [43.25, 46.375];
    const { strip } = joinedWood(wood, etaAMm, etaBMm);
    const { plane, pxPerMm, reachAMm } = strip;
    const angle = (8 * Math.PI) / 180;
    const lightAt = (x: number, y: number) =>
      Math.log(0.4) +
      0.1 * Math.cos((2 * Math.PI * (y * Math.cos(angle) - x * Math.sin(angle))) / 4);
    const level = meanOf(plane.data) - Math.log(0.4);
    for (let i = 8; i < plane.width - 8; i += 5) {
      for (const k of [-2, -1, 0, 1]) {
        const y = (k < 0 ? etaAMm : etaBMm) + (k + 0.5) / pxPerMm;
        const read = plane.data[(Math.round(reachAMm * pxPerMm) + k) * plane.width + i]!;
        // 8 bits of grey are 0.01; a pixel's half would be 0.02.
        expect(Math.abs(read - level - lightAt((i + 0.5) / pxPerMm, y))).toBeLessThan(0.012);
      }
    }
  });

  it('costs by angle what the closed form says', () => {
    const grating = { ...panel, angleDeg: 15, spacingMm: 5, contrast: 0.08 };
    const { vByAngle } = ripCost(linesOf(grating).rip, 43, kerfMm, panel.heightMm);
    const wanted = closedFormBreak({
      ...{ contrast: 0.08, spacingMm: 5, angleRad: (15 * Math.PI) / 180 },
      ...{ lostMm: kerfMm, slideMm: 0, distanceMm },
    });
    expect((vByAngle ?? 0) / wanted).toBeGreaterThan(0.85);
    expect((vByAngle ?? 0) / wanted).toBeLessThan(1.15);
  });

  it('costs by picture about the same, since even grain hides nothing within the kerf', () => {
    const grating = { ...panel, angleDeg: 15, spacingMm: 5 };
    const { v, vByAngle, cue } = ripCost(linesOf(grating).rip, 43, kerfMm, panel.heightMm);
    expect(cue).toBe('break');
    expect((v ?? 0) / (vByAngle ?? 1)).toBeGreaterThan(0.7);
    expect((v ?? 0) / (vByAngle ?? 1)).toBeLessThan(1.4);
  });

  it('costs nothing where the kerf is a whole line spacing', () => {
    // V is not monotone in the kerf: method, section 5 (analytic). delta = k cos(theta) = s.
    const spacingMm = kerfMm * Math.cos((12 * Math.PI) / 180);
    const whole = ripCost(linesOf({ ...panel, angleDeg: 12, spacingMm }).rip, 43, kerfMm, 90);
    const half = ripCost(
      linesOf({ ...panel, angleDeg: 12, spacingMm: 2 * spacingMm }).rip,
      ...([43, kerfMm, 90] as const),
    );
    expect(whole.v ?? 9).toBeLessThan(0.3 * (half.v ?? 0));
  });

  it('shows no break where the lines run along it', () => {
    // Lines parallel to the rip show no break, only missing rings: trade.md, arithmetic [D].
    const curve = ripCurve(linesOf({ ...panel, angleDeg: 0, spacingMm: 2.5 }), kerfMm);
    expect(curve.length).toBeGreaterThan(30);
    for (const { v, cue } of curve) if (cue === 'break') expect(v).toBeLessThan(1);
  });
});
