import { ciede2000 } from '../../src/core/colour/ciede2000.js';
import { logLuminancePlane } from '../../src/core/colour/logLuminancePlane.js';
import { amongLinesFactor } from '../../src/core/visibility/amongLinesFactor.js';
import { closedFormBreak } from '../../src/core/visibility/closedFormBreak.js';
import { cubicMean } from '../../src/core/visibility/cubicMean.js';
import { maskCue } from '../../src/core/visibility/maskCue.js';
import type { SeamSpec } from '../../src/core/wood/panelSpec.js';
import type { SeamTruth } from '../../src/core/wood/panelTruth.js';
import { ownBreakAmplitude } from './accuracyMask.js';
import type { BenchPanel } from './accuracyPanels.js';

const windowMm = 10;
const distanceMm = 600;
/** A wood colour of middling lightness, where colour steps are weighed (CIE L*a*b*). */
const middleWood = [65, 12, 25] as const;

/** Contrast of the ring lines about a point: amplitude of a sine of the same rms. */
export type RingContrast = (piece: number, xMm: number, yMm: number) => number;

/** Contrast of what the picture repeats along its true ring lines: means by age, then their rms. */
export function ringContrast({ photo, truth }: BenchPanel): RingContrast {
  const lines = logLuminancePlane(photo.image);
  return (piece, xMm, yMm) => {
    const byAge = new Map<number, { sum: number; n: number }>();
    for (let dy = -10; dy <= 10; dy += 0.4) {
      for (let dx = -10; dx <= 10; dx += 0.8) {
        const [x, y] = [xMm + dx, yMm + dy];
        if (truth.pieceAt(x, y) !== piece) continue;
        const age = Math.floor(truth.ringLineOfPiece(piece, x, y).ageMm / 0.25);
        const at = byAge.get(age) ?? { sum: 0, n: 0 };
        at.sum +=
          lines.data[Math.floor(y * photo.pxPerMm) * lines.width + Math.floor(x * photo.pxPerMm)];
        at.n++;
        byAge.set(age, at);
      }
    }
    const means = [...byAge.values()].filter(({ n }) => n >= 8).map(({ sum, n }) => sum / n);
    return Math.SQRT2 * spread(means);
  };
}

/** V of one seam by truth, and what it would be if the board's own figure hid nothing. */
export interface TrueV {
  readonly v: number;
  readonly unmasked: number;
  /** Middle of the 10 mm of it that are the most visible, mm along the line; null where none are told. */
  readonly worstAtMm: number | null;
  /** Median angle between the ring lines and the seam, deg: within 2 nothing crosses. */
  readonly crossingDeg: number;
}

/**
 * V of one seam by truth: the closed form of method section 5 in windows of 10 mm, from the
 * model's own ring lines on both sides, each masked by lines near the joint's direction
 * (`amongLinesFactor`), pooled by the cubic mean and masked by the board's own
 * figure (V = x / sqrt(1 + (2 m)^2), m from `ownBreakAmplitude`: the same closed form with what the
 * lines of uncut wood differ by); the colour step's V between different boards. Nothing here is
 * measured by the product.
 */
export function seamVByTruth(panel: BenchPanel, k: number, contrastAt: RingContrast): TrueV {
  const { truth, spec } = panel;
  const seam = truth.seams[k];
  const plain = (v: number) => ({ v, unmasked: v, worstAtMm: null, crossingDeg: 90 });
  if (seam.gapMm > 0) return plain(Number.POSITIVE_INFINITY);
  if (!seam.sameBoard || seam.lostMm === null || seam.slideMm === null) return plain(colourV(seam));
  const { line, lostMm, slideMm } = seam;
  const length = Math.hypot(line.x2Mm - line.x1Mm, line.y2Mm - line.y1Mm);
  const ownAmplitude = ownBreakAmplitude(panel, k) ?? 0;
  const [values, angles]: [number[], number[]] = [[], []];
  let ownSquares = 0;
  for (let at = windowMm / 2; at < length; at += windowMm) {
    const x = line.x1Mm + ((line.x2Mm - line.x1Mm) * at) / length;
    const y = line.y1Mm + ((line.y2Mm - line.y1Mm) * at) / length;
    const crossing = crossingAt(truth, spec.seams[k], x, y);
    const contrast = contrastAt(spec.seams[k].pieceA, x, y);
    const among = amongLinesFactor(crossing.angleRad);
    values.push(among * closedFormBreak({ ...crossing, contrast, lostMm, slideMm, distanceMm }));
    angles.push(Math.asin(Math.abs(Math.sin(crossing.angleRad))));
    const halfOut = crossing.spacingMm / 2 / Math.cos(crossing.angleRad);
    const most = closedFormBreak({
      ...crossing,
      contrast,
      lostMm: halfOut,
      slideMm: 0,
      distanceMm,
    });
    ownSquares += (most * Math.min(1, ownAmplitude / (2 * contrast + 1e-9))) ** 2;
  }
  const unmasked = cubicMean(values) ?? 0;
  const worst = values.indexOf(Math.max(...values));
  const middle = angles.sort((a, b) => a - b)[angles.length >> 1] ?? 0;
  return {
    v: maskCue(unmasked, Math.sqrt(ownSquares / values.length)),
    unmasked,
    worstAtMm: (worst + 0.5) * windowMm,
    crossingDeg: (middle * 180) / Math.PI,
  };
}

/** Mean direction against the seam (rips: from +x, crosscuts: the frame turned) and spacing. */
function crossingAt(truth: BenchPanel['truth'], seam: SeamSpec, x: number, y: number) {
  const a = truth.ringLineOfPiece(seam.pieceA, x, y);
  const b = truth.ringLineOfPiece(seam.pieceB, x, y);
  const half = Math.atan2(
    Math.sin(2 * a.angleRad) + Math.sin(2 * b.angleRad),
    Math.cos(2 * a.angleRad) + Math.cos(2 * b.angleRad),
  );
  const { x1Mm, y1Mm, x2Mm, y2Mm } = seam.line;
  const along = Math.atan2(y2Mm - y1Mm, x2Mm - x1Mm);
  const turned = half / 2 - along;
  return {
    // A crosscut's frame is mirrored: its slide is +y, its loss +x.
    angleRad: seam.kind === 'rip' ? turned : -turned,
    spacingMm: Math.sqrt(a.spacingMm * b.spacingMm),
  };
}

/**
 * True offset of the lines at a seam point, mm across the grain: how far side B's wood lies from
 * side A's (`offsetMm`, from the difference of ring ages over their slope), and how far each line
 * of A lies from the nearest line of B (`wrappedMm`, from the part of a ring that the two differ
 * by: rings are not all of one width, so the first modulo a spacing is not the second).
 */
export function trueOffset({ truth, spec }: BenchPanel, k: number, atMm: number) {
  const { pieceA, pieceB, line } = spec.seams[k];
  const length = Math.hypot(line.x2Mm - line.x1Mm, line.y2Mm - line.y1Mm);
  const x = line.x1Mm + ((line.x2Mm - line.x1Mm) * atMm) / length;
  const y = line.y1Mm + ((line.y2Mm - line.y1Mm) * atMm) / length;
  const a = truth.ringLineOfPiece(pieceA, x, y);
  const b = truth.ringLineOfPiece(pieceB, x, y);
  const [nx, ny] = [-Math.sin(a.angleRad), Math.cos(a.angleRad)];
  const h = 0.05;
  const age = (sign: number) =>
    truth.ringLineOfPiece(pieceA, x + sign * h * nx, y + sign * h * ny).ageMm;
  const slope = (age(1) - age(-1)) / (2 * h);
  const spacingMm = Math.sqrt(a.spacingMm * b.spacingMm);
  const rings = b.ring - a.ring;
  return {
    offsetMm: (b.ageMm - a.ageMm) / slope,
    wrappedMm: Math.sign(slope) * (rings - Math.round(rings)) * spacingMm,
    spacingMm,
    angleRad: a.angleRad,
    turnRad: Math.abs(Math.sin(b.angleRad - a.angleRad)),
  };
}

function colourV({ colourStep: { dL, da, db } }: SeamTruth): number {
  const [l, a, b] = middleWood;
  return ciede2000([l, a, b], [l + dL, a + da, b + db]) / 0.8;
}

function spread(values: readonly number[]): number {
  if (values.length < 2) return 0;
  const mean = values.reduce((s, v) => s + v, 0) / values.length;
  return Math.sqrt(values.reduce((s, v) => s + (v - mean) ** 2, 0) / values.length);
}
