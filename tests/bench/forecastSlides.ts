import { defaultScoreOptions } from '../../dist/core/pipeline/scoreOptions.js';
import { scorePanel } from '../../dist/core/pipeline/scorePanel.js';
import { createRandom } from '../../dist/core/random/createRandom.js';
import { forecastLines } from '../../dist/core/rip/forecastLines.js';
import { forecastRip } from '../../dist/core/rip/forecastRip.js';
import { panelPlanes } from '../../dist/core/seam/panelPlanes.js';
import { onePiecePanel } from '../../dist/core/wood/onePiecePanel.js';
import { ripPanel } from '../../dist/core/wood/ripPanel.js';
import { photographed } from './forecastPhoto.js';
import { median } from './forecastStatistics.js';

const size = { widthMm: 400, heightMm: 150 };
const lossMm = 3.175;
const settings = ['ring-porous', 'diffuse-porous', 'softwood'] as const;

/** How often the advised slide made the true joint better. */
export interface SlideResult {
  readonly rips: number;
  readonly claims: number;
  readonly kept: number;
  /** Median of true V^3 after over before, where a slide was advised. */
  readonly left: number;
}

/** Advised slides on drawn flatsawn boards, carried out in the model, photographed and scored. */
export async function forecastSlides(boards: number, firstSeed: number): Promise<SlideResult> {
  let [rips, claims, kept] = [0, 0, 0];
  const left: number[] = [];
  for (let b = 0; b < boards; b++) {
    const seed = firstSeed + b;
    const random = createRandom(seed);
    const board = {
      seed,
      setting: settings[b % 3]!,
      cut: 'flatsawn',
      lengthMm: 460,
      widthMm: 190,
    } as const;
    const base = { board, vMm: 20 };
    const uncut = await photographed(onePiecePanel({ ...base, ...size, uMm: 40 }), seed);
    const lines = forecastLines(panelPlanes(uncut), uncut, 600);
    for (const middle of [45, 105]) {
      rips++;
      const yMm = middle + random.uniform(-8, 8);
      const atMm = yMm - lossMm / 2;
      const { rip } = forecastRip(lines.asScored, yMm, lossMm, 25.4, atMm);
      const advised = rip.bestSlideMm ?? 0;
      if (advised === 0) continue;
      claims++;
      // The panel is trimmed flush: only what both pieces cover is left.
      const scored = async (slideMm: number) => {
        const widthMm = size.widthMm - Math.abs(slideMm);
        const cuts = [{ atMm, lostMm: lossMm, slideMm }];
        const spec = ripPanel({
          ...{ ...base, widthMm, heightMm: size.heightMm - lossMm, cuts },
          uMm: 40 + Math.max(0, -slideMm),
        });
        const placedSeams = [{ x1Mm: 0, y1Mm: atMm, x2Mm: widthMm, y2Mm: atMm }];
        const options = { ...defaultScoreOptions, find: false, placedSeams };
        return (
          scorePanel(await photographed(spec, seed + 100_000), options).seams[0]?.visibility.v ?? 0
        );
      };
      const [before, after] = [await scored(0), await scored(advised)];
      if (after < before) kept++;
      left.push((after / Math.max(1e-9, before)) ** 3);
    }
    process.stderr.write(`slides ${b + 1}/${boards}\r`);
  }
  return { rips, claims, kept, left: median(left) };
}
