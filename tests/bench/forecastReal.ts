import { existsSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import type { PanelPhoto } from '../../dist/core/image/panelPhoto.js';
import type { RgbImage } from '../../dist/core/image/rgbImage.js';
import { defaultScoreOptions } from '../../dist/core/pipeline/scoreOptions.js';
import { scorePanel } from '../../dist/core/pipeline/scorePanel.js';
import { forecastLines } from '../../dist/core/rip/forecastLines.js';
import { reglue } from '../../dist/core/rip/reglue.js';
import { reglueRips } from '../../dist/core/rip/reglueSpecs.js';
import { ripCost } from '../../dist/core/rip/ripCurve.js';
import { panelPlanes } from '../../dist/core/seam/panelPlanes.js';
import { compressed } from './forecastPhoto.js';
import { type Agreement, agreement } from './forecastStatistics.js';

/** Forecast, and a second copy's score, each against the score of the cut photograph. */
export interface RealResult {
  readonly forecast: Agreement;
  /** The curve's quick reading of the same rips. */
  readonly curve: Agreement;
  readonly again: Agreement;
}

/** Their scale is not known: an assumption. */
const pxPerMm = 4;
const kerfPx = 13;

/** Pieces of the photographs with no joint in them, px, grain turned to run along x. */
const pieces = [
  { file: 'oak-veneer-no-joint.jpg', turn: 90, left: 0, top: 0, width: 1024, height: 512 },
  { file: 'oak-veneer-no-joint.jpg', turn: 90, left: 0, top: 512, width: 1024, height: 512 },
  { file: 'softwood-rows.jpg', turn: 0, left: 0, top: 143, width: 1024, height: 110 },
  { file: 'softwood-rows.jpg', turn: 0, left: 0, top: 263, width: 1024, height: 115 },
  { file: 'softwood-rows.jpg', turn: 0, left: 0, top: 388, width: 1024, height: 120 },
] as const;

/**
 * Real wood: a strip of whole pixels cut out of a second copy of the photo, compressed anew, then
 * scored; against the forecast from the first copy.
 *
 * @returns null when the photographs are not there.
 */
export async function forecastReal(folder: string): Promise<RealResult | null> {
  if (!pieces.every(({ file }) => existsSync(join(folder, file)))) return null;
  const pairs: [number, number][] = [];
  const curve: [number, number][] = [];
  const again: [number, number][] = [];
  for (const piece of pieces) {
    const whole = await pieceOf(folder, piece);
    const uncut = panelOf(await compressed(whole, 92));
    const second = panelOf(await compressed(whole, 80));
    const lines = forecastLines(panelPlanes(uncut), uncut, 600);
    const lossMm = kerfPx / pxPerMm;
    // Places off the 8 px grid of the compression by every phase.
    for (let topPx = 32; topPx < piece.height - 45; topPx += 15) {
      const etaMm = topPx / pxPerMm;
      const cost = ripCost(lines.asScored.rip, etaMm, lossMm, uncut.heightMm);
      const quick = ripCost(lines.rip, etaMm, lossMm, uncut.heightMm);
      const loss = { kerfMm: lossMm, dressMm: 0 };
      const spec = reglueRips(second, [etaMm + lossMm / 2], loss);
      const glued = reglue(second.image, pxPerMm, spec);
      const scored = async (quality: number) => {
        const cut = panelOf(await compressed(glued, quality));
        const placed = { x1Mm: 0, y1Mm: etaMm, x2Mm: cut.widthMm, y2Mm: etaMm };
        const options = { ...defaultScoreOptions, find: false, placedSeams: [placed] };
        return scorePanel(cut, options).seams[0]?.visibility.v ?? 0;
      };
      const truth = await scored(85);
      pairs.push([cost.v ?? 0, truth]);
      curve.push([quick.v ?? 0, truth]);
      again.push([await scored(93), truth]);
    }
  }
  return { forecast: agreement(pairs), curve: agreement(curve), again: agreement(again) };
}

async function pieceOf(folder: string, piece: (typeof pieces)[number]): Promise<RgbImage> {
  const { file, turn, ...box } = piece;
  const turned = await sharp(join(folder, file)).rotate(turn).png().toBuffer();
  const data = await sharp(turned).removeAlpha().extract(box).raw().toBuffer();
  return { width: box.width, height: box.height, data };
}

function panelOf(image: RgbImage): PanelPhoto {
  const [widthMm, heightMm] = [image.width / pxPerMm, image.height / pxPerMm];
  return { image, pxPerMm, widthMm, heightMm, notes: [] };
}
