import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { computeLayout } from '../../../src/core/shop/layout/computeLayout.js';
import { repeatFronts } from '../../../src/core/shop/layout/repeatFronts.js';
import { computeGap } from '../../../src/core/shop/movement/computeGap.js';
import { bytesFromBase64 } from '../../../src/report/pdf/bytesFromBase64.js';
import { sheetPdf } from '../../../src/report/pdf/sheetPdf.js';
import type { JpegPicture } from '../../../src/report/sheet/mark.js';
import { sheetCsv } from '../../../src/report/sheet/sheetCsv.js';
import { sheetHtml } from '../../../src/report/sheet/sheetHtml.js';
import type { SheetPage } from '../../../src/report/sheet/sheetPage.js';
import { sheetPages } from '../../../src/report/sheet/sheetPages.js';
import { sheetSvg } from '../../../src/report/sheet/sheetSvg.js';

const layout = computeLayout({
  panel: { lengthMm: 900, widthMm: 600 },
  fronts: repeatFronts({
    first: { lengthMm: 400, widthMm: 110, xMm: 250, yMm: 100 },
    rows: 2,
    columns: 1,
    railMm: 40,
    dividerMm: 0,
    kerfMm: 3.175,
    dressMm: 0.4,
    trimMm: 1.5,
    trimEndsMm: 1.5,
  }),
  dressMm: 0.4,
  trimMm: 1.5,
});
const gap = computeGap({
  species: 'white oak',
  acrossMm: 110,
  from: { kind: 'moisture', percent: 7 },
  to: { kind: 'moisture', percent: 11 },
});
const title = 'Low chest <“2”> for the hall';
/** Poppler is a second reader of PDF; where it is not installed the file's own structure is read. */
const hasPoppler = spawnSync('pdftotext', ['-v']).status === 0;

let folder = '';
let picture: JpegPicture;
let pages: SheetPage[];
let pdf: Uint8Array;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'seamgrain-sheet-'));
  const jpeg = await sharp({
    create: { width: 90, height: 60, channels: 3, background: '#c08040' },
  })
    .jpeg()
    .toBuffer();
  picture = { base64: jpeg.toString('base64'), widthPx: 90, heightPx: 60 };
  pages = sheetPages({ layout, gap, picture, paper: 'A4', title });
  pdf = sheetPdf(pages, title);
  writeFileSync(join(folder, 'sheet.pdf'), pdf);
});
afterAll(() => rmSync(folder, { recursive: true }));

describe('PDF', () => {
  it('has every object where its table says', () => {
    const text = Buffer.from(pdf).toString('latin1');
    const start = Number(/startxref\n(\d+)\n%%EOF\n$/.exec(text)![1]);
    const [, count, rows] = /^xref\n0 (\d+)\n((?:\d{10} \d{5} [nf] \n)+)trailer/.exec(
      text.slice(start),
    )!;
    const offsets = rows!.trim().split(/ ?\n/).slice(1);
    expect(offsets.length).toBe(Number(count) - 1);
    offsets.forEach((row, index) => {
      expect(text.slice(Number(row.slice(0, 10)))).toMatch(new RegExp(`^${index + 1} 0 obj\\n`));
    });
    for (const [, length, body] of text.matchAll(
      /\/Length (\d+) >>\nstream\n([\s\S]*?)\nendstream/g,
    )) {
      expect(body!.length).toBe(Number(length));
    }
  });

  it('is the same bytes for the same sheet', () => {
    expect(Buffer.from(sheetPdf(pages, title)).equals(Buffer.from(pdf))).toBe(true);
  });

  it('carries the photograph unchanged', () => {
    expect(Buffer.from(bytesFromBase64(picture.base64)).toString('base64')).toBe(picture.base64);
    expect(Buffer.from(pdf).includes(Buffer.from(picture.base64, 'base64'))).toBe(true);
  });

  it.runIf(hasPoppler)('is read by another program with every word on the paper', () => {
    const words = execFileSync('pdftotext', ['-bbox', join(folder, 'sheet.pdf'), '-'], {
      encoding: 'utf8',
    });
    const [, width, height] = /<page width="([\d.]+)" height="([\d.]+)"/.exec(words)!;
    // ISO 216 A4 in points.
    expect(Number(width)).toBeCloseTo((210 / 25.4) * 72, 2);
    expect(Number(height)).toBeCloseTo((297 / 25.4) * 72, 2);
    const boxes = [...words.matchAll(/xMin="(.*?)" yMin="(.*?)" xMax="(.*?)" yMax="(.*?)"/g)];
    expect(boxes.length).toBeGreaterThan(200);
    for (const [, xMin, yMin, xMax, yMax] of boxes) {
      expect(Number(xMin)).toBeGreaterThan(15);
      expect(Number(yMin)).toBeGreaterThan(10);
      expect(Number(xMax)).toBeLessThan(Number(width) - 15);
      expect(Number(yMax)).toBeLessThan(Number(height) - 10);
    }
    const plain = execFileSync('pdftotext', ['-layout', join(folder, 'sheet.pdf'), '-'], {
      encoding: 'utf8',
    });
    for (const { setting } of layout.cuts) expect(plain).toContain(setting.text);
    const info = execFileSync('pdfinfo', [join(folder, 'sheet.pdf')], { encoding: 'utf8' });
    expect(info).toContain(title);
  });
});

describe('SVG and HTML', () => {
  it('stand alone, keep words from becoming markup and have the paper’s size', () => {
    const svg = sheetSvg(pages[0]!);
    expect(svg).toMatch(/^<svg [^>]*width="210mm" height="297mm"/);
    expect(svg).not.toContain('<“2”>');
    expect(svg).toContain('Low chest &lt;');
    const addresses = [...svg.matchAll(/href="([^"]{0,12})/g)].map(([, start]) => start);
    expect(addresses.every((start) => start!.startsWith('data:image/'))).toBe(true);
    const html = sheetHtml(pages, title);
    expect(html).toContain('@page{size:A4 portrait;margin:0}');
    expect(html).not.toMatch(/<script|https?:\/\/(?!www\.w3\.org)/);
    expect(html.match(/<svg/g)!.length).toBe(pages.length);
  });

  it('is drawn by another program in black and greys, photograph apart', async () => {
    const [page] = sheetPages({ layout, gap, paper: 'Letter' });
    const image = sharp(Buffer.from(sheetSvg(page!)), { density: 72 });
    const { data, info } = await image.removeAlpha().raw().toBuffer({ resolveWithObject: true });
    expect(info.width).toBe(Math.round(8.5 * 72));
    let ink = 0;
    let coloured = 0;
    for (let i = 0; i < data.length; i += 3) {
      if (data[i] !== data[i + 1] || data[i] !== data[i + 2]) coloured++;
      if (data[i]! < 128) ink++;
    }
    expect(coloured).toBe(0);
    const share = ink / (info.width * info.height);
    expect(share).toBeGreaterThan(0.02);
    expect(share).toBeLessThan(0.25);
  });
});

describe('CSV', () => {
  it('has a row for each cut and piece, and equal columns', () => {
    const rows = sheetCsv(layout, gap).trim().split('\r\n').map(readRow);
    expect(rows.length).toBe(1 + layout.cuts.length + layout.pieces.length + 1);
    expect(new Set(rows.map(({ length }) => length)).size).toBe(1);
    const at = rows[0]!.indexOf('exact mm');
    expect(rows.slice(1, 1 + layout.cuts.length).map((row) => Number(row[at]))).toEqual(
      layout.cuts.map(({ fenceMm }) => fenceMm),
    );
  });

  it('hands no formula to a spreadsheet', () => {
    const bad = { ...layout, cuts: [{ ...layout.cuts[0]!, keeps: '=1+1', workpiece: 'a "b", c' }] };
    const csv = sheetCsv(bad);
    expect(csv).toContain("'=1+1");
    expect(csv).toContain('"a ""b"", c"');
  });
});

/** RFC 4180 as far as these files need it. */
function readRow(row: string): string[] {
  return [...row.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
    ([, quoted, plain]) => quoted?.replaceAll('""', '"') ?? plain ?? '',
  );
}
