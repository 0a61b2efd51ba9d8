import { escapeXml } from '../draw/escapeXml.js';
import type { SheetPage } from './sheetPage.js';
import { sheetSvg } from './sheetSvg.js';

/** The sheet as a page that prints on its paper without margins of its own. */
export function sheetHtml(pages: readonly SheetPage[], title: string): string {
  const paper = pages[0]!.paper;
  const css = `@page{size:${paper} portrait;margin:0}body{margin:0;background:#fff}svg{display:block;break-after:page}svg:last-child{break-after:auto}@media screen{svg{max-width:100%;height:auto;margin:0 auto}}`;
  const policy = "default-src 'none'; img-src data:; style-src 'unsafe-inline'";
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1"><meta http-equiv="Content-Security-Policy" content="${policy}"><title>${escapeXml(title)}</title><style>${css}</style></head><body>${pages.map(sheetSvg).join('')}</body></html>\n`;
}
