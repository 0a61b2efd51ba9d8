import sharp from 'sharp';
import type { PanelPhoto } from '../../core/image/panelPhoto.js';
import type { GapResult } from '../../core/results/gapResult.js';
import type { LayoutResult } from '../../core/results/layoutResult.js';
import { sheetPdf } from '../../report/pdf/sheetPdf.js';
import type { JpegPicture } from '../../report/sheet/mark.js';
import type { Paper } from '../../report/sheet/paperSizes.js';
import { sheetCsv } from '../../report/sheet/sheetCsv.js';
import { sheetHtml } from '../../report/sheet/sheetHtml.js';
import { sheetPages } from '../../report/sheet/sheetPages.js';
import { sheetSvg } from '../../report/sheet/sheetSvg.js';
import type { OutputFile } from '../io/writeOutput.js';

/** 1500 px over the third of a page that the photograph takes is 600 dots to the inch. */
const widestPx = 1500;

/** What `layout --out` writes: the sheet for paper and screen, and its numbers. */
export async function sheetFiles(sheet: {
  readonly layout: LayoutResult;
  readonly gap: GapResult | null;
  readonly paper: Paper;
  readonly title: string | undefined;
  readonly panel: PanelPhoto | null;
}): Promise<OutputFile[]> {
  const { layout, gap, paper, title, panel } = sheet;
  const picture = panel ? await jpegOf(panel) : null;
  const pages = sheetPages({ layout, gap, paper, picture, ...(title && { title }) });
  const name = title ?? 'Shop sheet';
  return [
    { name: 'sheet.pdf', data: sheetPdf(pages, name) },
    { name: 'sheet.html', data: sheetHtml(pages, name) },
    ...pages.map((page, index) => ({
      name: index === 0 ? 'sheet.svg' : `sheet-${index + 1}.svg`,
      data: sheetSvg(page),
    })),
    { name: 'layout.json', data: `${JSON.stringify(layout, null, 2)}\n` },
    { name: 'layout.csv', data: sheetCsv(layout, gap) },
    ...(gap ? [{ name: 'gap.json', data: `${JSON.stringify(gap, null, 2)}\n` }] : []),
  ];
}

async function jpegOf({ image }: PanelPhoto): Promise<JpegPicture> {
  const { width, height, data } = image;
  const { data: jpeg, info } = await sharp(data, { raw: { width, height, channels: 3 } })
    .resize({ width: widestPx, withoutEnlargement: true })
    .jpeg({ quality: 86 })
    .toBuffer({ resolveWithObject: true });
  return { base64: jpeg.toString('base64'), widthPx: info.width, heightPx: info.height };
}
