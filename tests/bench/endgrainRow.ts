import { referenceFor } from '../../src/core/board/endGrain/coarsePith.js';
import { fitRings } from '../../src/core/board/endGrain/fitRings.js';
import { acrossRings, familyAbout, pithOf } from '../../src/core/board/endGrain/ringFamily.js';
import { endgrainPanel } from '../../src/core/pipeline/endgrainPanel.js';
import { drawEndGrain } from '../../src/core/wood/drawEndGrain.js';
import type { EndGrainSpec } from '../../src/core/wood/endGrainSpec.js';
import type { EndGrainTruth } from '../../src/core/wood/endGrainTruth.js';

/** One drawn end, read and held against the model. */
export interface EndgrainRow {
  readonly distanceMm: number;
  /** null where the answer was 'cannot tell'. */
  readonly pithErrorMm: number | null;
  readonly pithSeMm: number | null;
  readonly atLeastMm: number | null;
  /** What the same fit gives from the model's exact directions: the wood's own limit. */
  readonly exactPithErrorMm: number;
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
    atLeastMm: result.pithAtLeastMm,
    exactPithErrorMm: far(exactPith(truth)),
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

/** The pith by the same least squares from exact directions on a 5 mm grid. */
function exactPith({ widthMm, thicknessMm, pith, ringLineRad }: EndGrainTruth) {
  const family = familyAbout(pith, ...referenceFor(pith, widthMm / 2, thicknessMm / 2, widthMm));
  const cells = [];
  for (let yMm = 3; yMm < thicknessMm; yMm += 5) {
    for (let xMm = 3; xMm < widthMm; xMm += 5) {
      if (Math.hypot(xMm - pith.xMm, yMm - pith.yMm) < 6) continue;
      const [vx, vy] = acrossRings(family, xMm, yMm);
      const off = ringLineRad(xMm, yMm) + Math.PI / 2 - Math.atan2(vy, vx);
      const offRad = off - Math.PI * Math.round(off / Math.PI);
      cells.push({ xMm, yMm, offRad, seRad: 0.005, share: 1 });
    }
  }
  const fitted = fitRings(cells, family);
  return pithOf((fitted ?? { family }).family);
}
