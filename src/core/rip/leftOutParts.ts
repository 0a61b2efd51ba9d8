import type { ForecastCutPart } from '../results/forecastResult.js';
import type { ForecastLines } from './forecastLines.js';
import { type CutLoss, type FrontPlace, ripLossMm } from './frontCut.js';
import { outlineTouchesBox } from './outlineTouchesBox.js';
import type { PanelBox } from './panelBox.js';

/** Wood this near to a cut is read for its joint (`defaultCarryReach`), mm. */
const readBesideMm = 2.2;

/** What of a front and its cuts lies on an area that was left out (a knot, glare). */
export function leftOutParts(
  lines: ForecastLines,
  front: FrontPlace,
  loss: CutLoss,
): ForecastCutPart[] {
  if (lines.leftOut.length === 0) return [];
  return Object.entries(boxesOf(lines, front, loss))
    .filter(([, box]) => lines.leftOut.some((region) => outlineTouchesBox(region, box)))
    .map(([part]) => part as ForecastCutPart);
}

/** Whether a rip over the whole length runs through an area that was left out. */
export function ripIsLeftOut(
  { leftOut, widthMm }: Pick<ForecastLines, 'leftOut' | 'widthMm'>,
  etaAMm: number,
  etaBMm: number,
): boolean {
  const band = ripBand(etaAMm, etaBMm, widthMm);
  return leftOut.some((region) => outlineTouchesBox(region, band));
}

/** The front's face, and what each cut takes together with the wood read beside it. */
function boxesOf(
  { widthMm: lengthMm }: ForecastLines,
  { xMm, yMm, widthMm, heightMm }: FrontPlace,
  loss: CutLoss,
): Readonly<Record<ForecastCutPart, PanelBox>> {
  const lossMm = ripLossMm(loss);
  const [endMm, bottomMm] = [xMm + widthMm, yMm + heightMm];
  const crosscut = (fromMm: number) => ({
    ...{ x1Mm: fromMm - readBesideMm, x2Mm: fromMm + loss.kerfMm + readBesideMm },
    ...{ y1Mm: yMm, y2Mm: bottomMm },
  });
  return {
    front: { x1Mm: xMm, y1Mm: yMm, x2Mm: endMm, y2Mm: bottomMm },
    'upper rip': ripBand(yMm - lossMm, yMm, lengthMm),
    'lower rip': ripBand(bottomMm, bottomMm + lossMm, lengthMm),
    'left crosscut': crosscut(xMm - loss.kerfMm),
    'right crosscut': crosscut(endMm),
  };
}

function ripBand(fromMm: number, toMm: number, lengthMm: number): PanelBox {
  return { x1Mm: 0, y1Mm: fromMm - readBesideMm, x2Mm: lengthMm, y2Mm: toMm + readBesideMm };
}
