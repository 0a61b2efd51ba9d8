import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ScoreResult } from '../../src/core/results/scoreResult.js';
import { drawnPanel } from './support/drawnPanel.js';
import { type Bench, browserOrSkip, openBench } from './support/openBench.js';
import { savedText } from './support/savedText.js';

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

  it('reads a panel that stands on its end as the same panel lying', async () => {
    const scoreOf = async (photo: Buffer, turn: boolean) => {
      await page.goto(bench.app.url);
      await bring('panel.png', photo);
      await page.getByText(/first guess from the photo|No outline stood out/).waitFor();
      await page.getByRole('button', { name: 'The panel fills the photo' }).click();
      if (turn) await page.getByRole('button', { name: 'Turn it a quarter' }).click();
      await page.getByLabel('Length, left to right').fill('250 mm');
      await page.getByLabel('Width, top to bottom').fill('150 mm');
      await page.getByLabel('Width, top to bottom').press('Enter');
      await page.getByRole('button', { name: 'This is the panel' }).click();
      await page.locator('h1.answer[aria-busy=false]').waitFor();
      await page.getByRole('button', { name: 'Place a joint along' }).click();
      await page.getByRole('application').press('Enter');
      await page.getByText('placed by hand').first().waitFor();
      await page.locator('h1.answer[aria-busy=false]').waitFor();
      return JSON.parse(await savedText(page, 'Save the numbers')) as ScoreResult;
    };
    const drawn = await drawnPanel({ width: 1400, height: 900 });
    const { left, top, right, bottom } = drawn;
    const whole = { left, top, width: right - left, height: bottom - top };
    const lying = await sharp(drawn.png).extract(whole).png().toBuffer();
    const standing = await sharp(lying).rotate(270).png().toBuffer();
    const [seam] = (await scoreOf(lying, false)).seams;
    const [turned] = (await scoreOf(standing, true)).seams;
    expect(seam!.line).toEqual({ x1Mm: 0, y1Mm: 75, x2Mm: 250, y2Mm: 75 });
    expect(turned!.line).toEqual(seam!.line);
    expect(turned!.offset.mm).toBeCloseTo(seam!.offset.mm!, 2);
    expect(turned!.visibility.v).toBeCloseTo(seam!.visibility.v!, 1);
  }, 60_000);

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
