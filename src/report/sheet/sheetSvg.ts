import { fontFamily } from '../draw/fontFamily.js';
import { px } from '../draw/px.js';
import { paperSizes } from './paperSizes.js';
import type { SheetPage } from './sheetPage.js';
import { svgOfMark } from './svgOfMark.js';

/** One page of the sheet as a self-contained SVG of the paper's size. */
export function sheetSvg(page: SheetPage): string {
  const { widthMm, heightMm } = paperSizes[page.paper];
  const box = `${px(page.widthPx)} ${px(page.heightPx)}`;
  const marks = page.marks.map(svgOfMark).join('');
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${widthMm}mm" height="${heightMm}mm" viewBox="0 0 ${box}" font-family="${fontFamily}" role="img" aria-label="Shop sheet"><rect width="${px(page.widthPx)}" height="${px(page.heightPx)}" fill="#fff"/>${marks}</svg>`;
}
