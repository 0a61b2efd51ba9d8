import { describe, expect, it } from 'vitest';
import { forecastLines } from '../../../src/core/rip/forecastLines.js';
import { forecastRip } from '../../../src/core/rip/forecastRip.js';
import { ripCost, ripCurve } from '../../../src/core/rip/ripCurve.js';
import { panelPlanes } from '../../../src/core/seam/panelPlanes.js';
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

  it('is so too as a score reads it, where the kerf is no whole number of pixels', () => {
    const lines = linesOf({ ...panel, angleDeg: 8, spacingMm: 7, pxPerMm: 4 });
    const { rip } = forecastRip(lines.asScored, 45, kerfMm, 25.4, 45 - kerfMm / 2);
    const wanted = kerfMm / Math.tan((8 * Math.PI) / 180);
    expect(Math.abs((rip.bestSlideMm ?? 0) - wanted)).toBeLessThan(0.5);
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
