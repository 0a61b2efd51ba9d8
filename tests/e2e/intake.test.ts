import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawnPanel } from './support/drawnPanel.js';
import { type Bench, browserOrSkip, openBench } from './support/openBench.js';

let bench: Bench;
let page: Page;
let png: Buffer;

const bring = (name: string, buffer: Buffer) =>
  page.setInputFiles('input[data-part=choose]', { name, mimeType: '', buffer });
const pinPage = () => page.getByRole('heading', { name: 'Put a pin on each corner' });

describe.skipIf(!browserOrSkip())('bringing a photo in', () => {
  beforeAll(async () => {
    bench = await openBench();
    png = (await drawnPanel({ width: 800, height: 600 })).png;
    page = await (await bench.freshContext()).newPage();
  });
  afterAll(() => bench?.close());

  it.each([
    ['jpeg', () => sharp(png).jpeg().toBuffer()],
    ['webp', () => sharp(png).webp().toBuffer()],
    ['avif', () => sharp(png).avif({ effort: 0 }).toBuffer()],
    ['heic', () => readFile(new URL('../app/fixtures/quadrants.heic', import.meta.url))],
  ])('takes %s', async (kind, make) => {
    await page.goto(bench.app.url);
    await bring(`photo.${kind}`, await make());
    await pinPage().waitFor();
  });

  it('turns a phone photo upright as its EXIF says', async () => {
    await page.goto(bench.app.url);
    await bring('turned.jpg', await sharp(png).withMetadata({ orientation: 6 }).jpeg().toBuffer());
    await page.getByText('first guess from the photo').waitFor();
    // 800 x 600 pixels, turned by a quarter, stand 600 wide and 800 high.
    const ratio = await page
      .locator('.pin-stage svg polygon')
      .first()
      .evaluate((outline) => {
        const box = (outline as SVGGraphicsElement).getBBox();
        return box.width / box.height;
      });
    expect(ratio).toBeCloseTo(300 / 400, 1);
  });

  it('takes a pasted and a dropped photo', async () => {
    for (const kind of ['paste', 'drop'] as const) {
      await page.goto(bench.app.url);
      await page.evaluate(
        ([how, base64]) => {
          const bytes = Uint8Array.from(atob(base64!), (letter) => letter.charCodeAt(0));
          const transfer = new DataTransfer();
          transfer.items.add(new File([bytes], 'given.png', { type: 'image/png' }));
          const event =
            how === 'paste'
              ? new ClipboardEvent('paste', { clipboardData: transfer })
              : new DragEvent('drop', { dataTransfer: transfer, cancelable: true });
          window.dispatchEvent(event);
        },
        [kind, png.toString('base64')],
      );
      await pinPage().waitFor();
    }
  });

  it.each([
    ['an empty file', Buffer.alloc(0), 'The file is empty'],
    ['a TIFF', Buffer.from('II*\0aaaaaaaaaaaaaaaaaaaaaaaaaaaa'), 'Browsers cannot read TIFF'],
    ['a letter', Buffer.from('Dear Sir, the panel is enclosed.'), 'no photo that the page can'],
    ['half a HEIC', null, 'HEIC photo could not be read'],
    ['half a PNG', undefined, 'damaged or cut short'],
  ])('refuses %s in words', async (_name, given, words) => {
    await page.goto(bench.app.url);
    const heic = await readFile(new URL('../app/fixtures/quadrants.heic', import.meta.url));
    const buffer = given ?? (given === null ? heic.subarray(0, 700) : png.subarray(0, 60));
    await bring('given', buffer);
    await page.getByText(words).waitFor();
    await page.getByRole('heading', { level: 1, name: 'See where the joints' }).waitFor();
  });
});
