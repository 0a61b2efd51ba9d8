import { endgrainPanel } from '../../src/core/pipeline/endgrainPanel.js';
import { drawEndGrain } from '../../src/core/wood/drawEndGrain.js';
import type { EndGrainSpec } from '../../src/core/wood/endGrainSpec.js';
import type { EndGrainTruth } from '../../src/core/wood/endGrainTruth.js';
import { type PithLimit, pithLimit } from './endgrainLimit.js';

/** One drawn end, read and held against the model. */
export interface EndgrainRow {
  readonly distanceMm: number;
  /** null where the answer was 'cannot tell'. */
  readonly pithErrorMm: number | null;
  readonly pithSeMm: number | null;
  /** From the middle of the end, as told. */
  readonly pithToldMm: number | null;
  readonly atLeastMm: number | null;
  /** What the rings' own waving leaves of a pith outside the end; null inside it. */
  readonly limit: PithLimit | null;
  /** Ring angle less the model's, and its stated error, deg; `nearMm` from the pith. */
  readonly angles: readonly {
    readonly off: number;
    readonly se: number;
    readonly nearMm: number;
  }[];
  readonly seconds: number;
  readonly sawMarks: boolean;
  /** Median ring width over the model's; null where none was read. */
  readonly widthRatio: number | null;
}

const pxPerMm = 7;
/** The angle is read over a few rings: the model's is averaged over a disc of this radius, mm. */
const overMm = 6;

export function endgrainRow(spec: EndGrainSpec): EndgrainRow {
  const { image, truth } = drawEndGrain(spec, { pxPerMm });
  const { widthMm, thicknessMm: heightMm, pith } = truth;
  const from = performance.now();
  const result = endgrainPanel({ image, pxPerMm, widthMm, heightMm, notes: [] });
  const seconds = (performance.now() - from) / 1000;
  const far = (p: { xMm: number; yMm: number }) => Math.hypot(p.xMm - pith.xMm, p.yMm - pith.yMm);
  return {
    distanceMm: far({ xMm: widthMm / 2, yMm: heightMm / 2 }),
    pithErrorMm: result.pith && far(result.pith),
    pithSeMm: result.pith?.seMm ?? null,
    pithToldMm:
      result.pith && Math.hypot(result.pith.xMm - widthMm / 2, result.pith.yMm - heightMm / 2),
    atLeastMm: result.pithAtLeastMm,
    limit: isInside(truth) ? null : pithLimit(widthMm, heightMm, pith, spec.board.seed),
    angles: result.ringAngle.map(({ xMm, angleDeg, seDeg }) => ({
      off: angleDeg - truth.ringAngleDeg(xMm, overMm),
      se: seDeg,
      nearMm: far({ xMm, yMm: heightMm / 2 }),
    })),
    seconds,
    sawMarks: result.sawMarks,
    widthRatio: result.ringWidthMm.median && result.ringWidthMm.median / medianRingMm(truth),
  };
}

const isInside = ({ widthMm, thicknessMm, pith }: EndGrainTruth) =>
  pith.xMm > 0 && pith.xMm < widthMm && pith.yMm > 0 && pith.yMm < thicknessMm;

/** The model's median ring, every ring counted once: places weigh by 1 / width. */
function medianRingMm({ widthMm, thicknessMm, ringWidthMm }: EndGrainTruth): number {
  const widths: number[] = [];
  for (let x = 2; x < widthMm; x += 0.7) {
    for (let y = 2; y < thicknessMm; y += 3) widths.push(ringWidthMm(x, y));
  }
  widths.sort((a, b) => a - b);
  let left = widths.reduce((sum, w) => sum + 1 / w, 0) / 2;
  for (const w of widths) {
    left -= 1 / w;
    if (left <= 0) return w;
  }
  return Number.NaN;
}
