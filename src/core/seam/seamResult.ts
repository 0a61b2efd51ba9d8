import { halfTurnRad } from '../geometry/halfTurnRad.js';
import type { LineMm, SeamResult, SeamWindow } from '../results/scoreResult.js';
import type { VisibilityResult } from '../results/visibilityResult.js';
import { probabilitySeen } from '../visibility/probabilitySeen.js';
import { vanishingDistanceMm } from '../visibility/vanishingDistanceMm.js';
import { visibilityWord } from '../visibility/visibilityWord.js';
import { type GrainChange, grainChange } from './grainChange.js';
import type { LineMeasures } from './lineMeasures.js';
import { lostResult } from './lostResult.js';
import { panelAngleDeg, type SeamFrame } from './seamFrame.js';
import { seamGlueLine } from './seamGlueLine.js';
import { seamOffset } from './seamOffset.js';
import { type SeamVisibility, seamVisibility, vOfSeam } from './seamVisibility.js';
import { toldOffsets } from './toldOffsets.js';

/** A measured seam and what it is compared with. */
export interface MeasuredSeam {
  readonly id: string;
  readonly found: 'photo' | 'placed';
  readonly p: number | null;
  /** Not shown by the photo, but by the opening beside it and the joint at its other end. */
  readonly implied: boolean;
  readonly line: LineMm;
  readonly frame: SeamFrame;
  readonly seam: LineMeasures;
  readonly own: readonly LineMeasures[];
  /** The dark of an open gap, where `seam` and `own` are read from the wood beside it (`closedGap`). */
  readonly openGap?: SeamResult['glueLine'];
}

/** Nothing to speak of crosses a seam that passes less than this across the grain, mm. */
const leastCrossedMm = 4;
const farthestMm = 20_000;
/** The contract's account of one seam for an eye at distanceMm. */
export function seamResult(measured: MeasuredSeam, distanceMm: number): SeamResult {
  const { id, found, p, line, frame, seam, own } = measured;
  const notes: string[] = [];
  const crossedMm = seam.u.at(-1) ?? 0;
  if (measured.implied) {
    notes.push(
      'The photo does not show this joint. The opening was cut on its line, and the joint beyond the ' +
        'opening shows, so the saw is taken to have gone through here too.',
    );
  }
  if (crossedMm < leastCrossedMm) {
    notes.push(
      'The grain runs along this joint: no grain lines cross it, so only colour and the glue line can tell it.',
    );
  }
  if (own.length === 0) {
    notes.push(
      'The boards beside this joint are too narrow to know their own figure; the score may be too high.',
    );
  }
  if (measured.openGap) {
    notes.push(
      'The dark line along it is an open gap or a reveal, not a glue line: it is meant to be seen and ' +
        'does not count. The grain on its two sides is compared as if they were pushed together.',
    );
  }
  const seen = seamVisibility(seam, own, distanceMm);
  const change = grainChange(seam, own);
  const lost = lostResult(seam, own);
  notes.push(...lost.notes);
  return {
    id,
    found,
    line,
    p,
    visibility: visibilityResult(seen, (mm) => vOfSeam(seam, own, mm)),
    grain: anglesOf(frame, change),
    offset: seamOffset(seam, own),
    lost: lost.lost,
    colourStep: { deltaE00: change && roundTo(change.deltaE00, 3) },
    glueLine: measured.openGap ?? seamGlueLine(seam, own),
    windows: windowsOf(seam, own, seen),
    notes,
  };
}

/** The contract's visibility, with the distance where it vanishes. */
export function visibilityResult(
  seen: SeamVisibility,
  vAt: (mm: number) => number,
): VisibilityResult {
  const { v, cue } = seen;
  if (v === null) return { v, pSeen: null, vanishesAtMm: null, cue, word: null };
  const vanishesAtMm = vanishingDistanceMm(vAt, { nearestMm: 150, farthestMm, steps: 24 });
  return { v, pSeen: probabilitySeen(v), vanishesAtMm, cue, word: visibilityWord(v) };
}

function anglesOf(frame: SeamFrame, change: GrainChange | null): SeamResult['grain'] {
  if (!change) return { angleADeg: null, angleBDeg: null, changeDeg: null, changeSeDeg: null };
  const deg = 180 / Math.PI;
  const sign = frame.kind === 'rip' ? 1 : -1;
  return {
    angleADeg: panelAngleDeg(frame, change.angleARad),
    angleBDeg: panelAngleDeg(frame, change.angleBRad),
    changeDeg: sign * change.changeRad * deg,
    changeSeDeg: change.changeSeRad * deg,
  };
}

/** The contract's windows of a line. */
export function windowsOf(
  seam: LineMeasures,
  own: readonly LineMeasures[],
  seen: SeamVisibility,
): SeamWindow[] {
  const offsets = toldOffsets(seam, own);
  return seam.windows.map((window, k) => {
    const turn = halfTurnRad(window.angleBRad - window.angleARad);
    return {
      atMm: window.atMm,
      v: seen.windows[k].v,
      cue: seen.windows[k].cue,
      offsetMm: offsets[k]?.offsetMm ?? null,
      changeDeg: (turn * 180) / Math.PI,
    };
  });
}

const roundTo = (value: number, digits: number) => Number(value.toFixed(digits));
