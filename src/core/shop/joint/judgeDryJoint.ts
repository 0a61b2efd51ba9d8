import type { DryClampResult, JointGapReading } from '../../results/dryClampResult.js';
import { tidyNumbers } from '../../units/tidyNumbers.js';
import { dryJointWords } from './dryJointWords.js';
import { jointShape } from './jointShape.js';

/** Thickness of a slip of writing paper, mm [M]. */
const usualPaperMm = 0.1;
/** Two pixels across the paper: then its width is measured and not guessed [derived]. */
const pxPerPaper = 2;

/** One of the two pieces at a joint. */
export interface JointSide {
  readonly name: string;
  /** Width that it may still lose, mm; null when not known. */
  readonly spareMm: number | null;
  /** A front's strip gives nothing if the other side can. */
  readonly isStrip?: boolean;
}

/** A joint to judge: gaps from a photo, or from feeler gauges. */
export interface DryJoint {
  readonly readings: readonly JointGapReading[];
  readonly sides: readonly [JointSide, JointSide];
  /** Default 0.1. */
  readonly paperMm?: number;
  /** Of the photo; null for feeler gauges. */
  readonly pxPerMm?: number | null;
  readonly limitMm?: number | null;
}

/**
 * Judges a dry-clamped joint: what closes under light pressure, what must be dressed, where, on
 * which piece, and whether its width allows it.
 * A gap thinner than paper clamps out; a wider one is jointed again, on the piece with width to
 * spare, the strip last [common practice, no published source]. The gap alone does not say which of
 * the two edges is off: a straightedge does.
 */
export function judgeDryJoint(joint: DryJoint): DryClampResult {
  const { readings, paperMm = usualPaperMm, pxPerMm = null, limitMm = null } = joint;
  const told = readings.flatMap(({ atMm, gapMm }) => (gapMm === null ? [] : [{ atMm, gapMm }]));
  const worst = told.reduce<{ atMm: number; gapMm: number } | null>(
    (most, reading) => (!most || reading.gapMm > most.gapMm ? reading : most),
    null,
  );
  const isOpen =
    worst !== null &&
    readings.some(({ gapMm, gapSeMm }) => gapMm !== null && gapMm - (gapSeMm ?? 0) > paperMm);
  // A photo that cannot see paper cannot call a joint closed; a wide gap it still sees.
  const isBlind = readings.some(({ gapMm, atMostMm }) => gapMm === null && atMostMm > paperMm);
  const verdict = isOpen ? 'dress' : isBlind || readings.length === 0 ? 'cannot tell' : 'closes';
  const shape = verdict === 'cannot tell' ? null : jointShape(readings, paperMm);
  const dress = isOpen ? dressing(joint.sides, worst.gapMm) : null;
  const neededPxPerMm =
    isBlind && pxPerMm !== null && pxPerMm < pxPerPaper / paperMm ? pxPerPaper / paperMm : null;
  return tidyNumbers<DryClampResult>({
    schema: 'seamgrain/dryClamp@1',
    pxPerMm,
    limitMm,
    neededPxPerMm,
    paperMm,
    readings,
    verdict,
    shape,
    worst,
    dress,
    words: dryJointWords({ verdict, shape, worst, dress, paperMm }),
    notes: notesOf(isBlind, neededPxPerMm, pxPerMm),
  });
}

function dressing(sides: DryJoint['sides'], takeMm: number): NonNullable<DryClampResult['dress']> {
  const [first, second] = [...sides].sort(
    (a, b) =>
      Number(a.isStrip ?? false) - Number(b.isStrip ?? false) ||
      (b.spareMm ?? 0) - (a.spareMm ?? 0),
  ) as [JointSide, JointSide];
  const has = ({ spareMm }: JointSide) => spareMm === null || spareMm >= takeMm;
  const side = has(first) || !has(second) ? first : second;
  return {
    piece: side.name,
    takeMm,
    spareLeftMm: side.spareMm === null ? null : side.spareMm - takeMm,
    isEnough: side.spareMm === null ? null : side.spareMm >= takeMm,
  };
}

function notesOf(isBlind: boolean, needed: number | null, pxPerMm: number | null): string[] {
  if (pxPerMm === null) return [];
  const notes = [
    'The gap is the width of a dark line: a dark streak of the wood along the joint reads as one. Hold a lamp behind the joint to be sure.',
  ];
  if (needed !== null) {
    notes.push(
      `${pxPerMm.toFixed(1)} px/mm do not show a slip of paper: take the photo at ${needed} px/mm or more, about ${Math.round(4000 / needed)} mm of joint across a 4000 px frame.`,
    );
  } else if (isBlind) {
    notes.push('This wood draws darker lines by itself than a slip of paper would: use the paper.');
  }
  return notes;
}
