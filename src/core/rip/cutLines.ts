import { asFigure } from '../seam/asFigure.js';
import type { LineMeasures } from '../seam/lineMeasures.js';
import { keptWindows, ownDistancesMm } from '../seam/ownLines.js';
import type { SeamReach } from '../seam/seamReach.js';
import { type LineSums, lineSums, withoutThinLine } from './lineSums.js';
import { besideMm, type PanelRows } from './panelRows.js';
import { type LocalGrain, localGrain } from './windowByAngle.js';

/** A joint that would be, ready to be summed over any part of it. */
export interface JointLine {
  readonly sums: LineSums;
  /** The same where the joint stays open, a reveal: a thin line along it is meant to be there. */
  readonly openSums: LineSums;
  readonly grain: readonly (LocalGrain | null)[];
  /** Middle of each stretch, mm along the line. */
  readonly atMm: readonly number[];
}

/** Joints and uncut lines that run one way over the panel, each read once and kept as sums. */
export interface CutLines {
  readonly distanceMm: number;
  /** The joint of the edges at etaA and etaB, side A moved by slideMm. */
  joint(etaAMm: number, etaBMm: number, slideMm: number): JointLine;
  /** The same with all that was measured; not kept. */
  measured(etaAMm: number, etaBMm: number, slideMm: number): LineMeasures;
  /** The boards' own lines that the joint is judged against. */
  own(etaAMm: number, etaBMm: number, reach: SeamReach): LineSums[];
  /** The same with all that was measured; not kept. */
  ownMeasured(etaAMm: number, etaBMm: number, reach: SeamReach): LineMeasures[];
}

/** @param rows how lines are read. @param keep which places count (not a marked knot). */
export function cutLines(
  rows: PanelRows,
  distanceMm: number,
  keep: (atMm: number, etaMm: number) => boolean,
): CutLines {
  const joints = new Map<string, JointLine>();
  const beside = new Map<string, LineSums>();
  const owns = new Map<string, LineSums[]>();
  const ownAt = (a: number, b: number, awayMm: number) => {
    const key = rows.besideName(a, b, awayMm);
    const known = beside.get(key);
    if (known) return known;
    const eta = besideMm(a, b, awayMm);
    const sums = lineSums(asFigure(rows.beside(a, b, awayMm)), distanceMm, (at) => keep(at, eta));
    beside.set(key, sums);
    return sums;
  };
  const awayOf = (reach: SeamReach) => {
    const { a, b } = ownDistancesMm(reach);
    return [...a.map((mm) => -mm), ...b];
  };
  return {
    distanceMm,
    joint(a, b, slideMm) {
      const key = `${a.toFixed(4)} ${b.toFixed(4)} ${slideMm.toFixed(4)}`;
      const known = joints.get(key);
      if (known) return known;
      const line = rows.joint(a, b, slideMm);
      const uncut = rows.uncutAngles(line, a, b);
      const sums = lineSums(line, distanceMm, (at) => keep(at, (a + b) / 2));
      const joint = {
        sums,
        openSums: withoutThinLine(sums),
        grain: line.windows.map((window, i) => localGrain({ ...window, ...uncut[i] }, distanceMm)),
        atMm: line.windows.map((window) => window.atMm),
      };
      joints.set(key, joint);
      return joint;
    },
    measured(a, b, slideMm) {
      const line = rows.joint(a, b, slideMm);
      return keptWindows(line, (at) => keep(at, (a + b) / 2)) ?? line;
    },
    own(a, b, reach) {
      const key = `${a} ${b} ${reach.aMm} ${reach.bMm}`;
      const lines = owns.get(key) ?? awayOf(reach).map((mm) => ownAt(a, b, mm));
      owns.set(key, lines);
      return lines;
    },
    ownMeasured: (a, b, reach) =>
      awayOf(reach)
        .map((mm) =>
          keptWindows(asFigure(rows.beside(a, b, mm)), (at) => keep(at, besideMm(a, b, mm))),
        )
        .filter((line) => line !== null),
  };
}
