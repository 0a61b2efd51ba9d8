import { SeamgrainError } from '../errors.js';
import { lengthWords } from '../units/lengthWords.js';
import { type CutLoss, ripLossMm } from './frontCut.js';
import type { PanelBox } from './panelBox.js';
import { leastEdgeMm } from './ripCurve.js';

/** What the search is to place, and where it may. */
export interface PlacementWish {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly loss: CutLoss;
  /** Wood to be left on every side of the front after the cuts, mm. */
  readonly marginMm: number;
  /** The front must lie within; null: anywhere on the panel. */
  readonly within: PanelBox | null;
}

/**
 * Where the front's upper left corner may lie.
 *
 * @returns x1..x2, y1..y2 of the corner.
 * @throws SeamgrainError `cannotDo` when the panel, the margins or the box leave no room, saying
 *   by how much.
 */
export function placementBox(
  panel: { readonly widthMm: number; readonly heightMm: number },
  wish: PlacementWish,
): PanelBox {
  const { widthMm, heightMm, loss, within } = wish;
  const marginMm = Math.max(leastEdgeMm, wish.marginMm);
  const besideMm = marginMm + loss.kerfMm;
  const aboveMm = marginMm + ripLossMm(loss);
  const box = {
    x1Mm: Math.max(besideMm, within?.x1Mm ?? 0),
    y1Mm: Math.max(aboveMm, within?.y1Mm ?? 0),
    x2Mm: Math.min(panel.widthMm - besideMm, within?.x2Mm ?? panel.widthMm) - widthMm,
    y2Mm: Math.min(panel.heightMm - aboveMm, within?.y2Mm ?? panel.heightMm) - heightMm,
  };
  const short = { length: box.x1Mm - box.x2Mm, width: box.y1Mm - box.y2Mm };
  const missing = Object.entries(short).filter(([, mm]) => mm > 1e-6);
  if (missing.length > 0) {
    const where = within ? 'The allowed box' : 'The panel';
    const much = missing.map(([name, mm]) => `${lengthWords(mm)} of ${name}`).join(' and ');
    throw new SeamgrainError(
      'cannotDo',
      `${where} is too small for a front of ${lengthWords(widthMm)} x ${lengthWords(heightMm)}: ${much} are missing.`,
      `The front needs ${lengthWords(besideMm)} beside it at either end and ${lengthWords(aboveMm)} above and below (margin, kerf and dressing); ask for a smaller front, margin or kerf.`,
    );
  }
  return box;
}
