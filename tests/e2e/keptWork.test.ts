import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawnPanel } from './support/drawnPanel.js';
import { keptFor } from './support/keptFor.js';
import { type Bench, browserOrSkip, openBench, watchErrors } from './support/openBench.js';
import { pinByHand } from './support/pinByHand.js';

let bench: Bench;
let picture: { name: string; mimeType: string; buffer: Buffer };

const lengthField = (page: Page) => page.getByLabel('Front along the grain');

async function openSheet(page: Page) {
  await page.goto(bench.app.url);
  await pinByHand(page, picture, '24', '15');
  await page.getByRole('link', { name: 'Shop sheet' }).click();
  await lengthField(page).waitFor();
}

describe.skipIf(!browserOrSkip())('kept work', () => {
  beforeAll(async () => {
    bench = await openBench();
    const drawn = await drawnPanel({ width: 1000, height: 700 });
    picture = { name: 'rails.png', mimeType: 'image/png', buffer: drawn.png };
  });
  afterAll(() => bench?.close());

  it('survives a reload, is undone and done again', async () => {
    const page = await (await bench.freshContext()).newPage();
    const errors = watchErrors(page);
    await openSheet(page);
    await lengthField(page).fill('7 1/2');
    await lengthField(page).press('Enter');
    await keptFor(page, 'rails kept');
    await page.reload();
    expect(await lengthField(page).inputValue()).toBe('7 1/2 in');
    await lengthField(page).fill('8 in');
    await lengthField(page).press('Enter');
    await page.getByRole('button', { name: 'Undo: Change the front' }).click();
    expect(await lengthField(page).inputValue()).toBe('7 1/2 in');
    await page.getByRole('button', { name: 'Redo: Change the front' }).click();
    expect(await lengthField(page).inputValue()).toBe('8 in');
    expect(errors).toEqual([]);
    await page.context().close();
  });

  it('stays at the last good save when the browser dies in the middle of a save', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'seamgrain-'));
    const first = await bench.persistentContext(folder);
    const page = await first.context.newPage();
    await openSheet(page);
    await keptFor(page, 'first name');
    const address = page.url();
    // The record of the next save is put, then the tab hangs so that nothing commits, then all dies.
    await page.evaluate(() => {
      const put = IDBObjectStore.prototype.put;
      IDBObjectStore.prototype.put = function (value, key) {
        const request = put.call(this, value, key);
        if (this.name === 'projects') {
          const end = performance.now() + 20_000;
          while (performance.now() < end);
        }
        return request;
      };
    });
    await page.getByLabel('Name of the project').fill('second name');
    await new Promise((resolve) => setTimeout(resolve, 1500));
    first.kill();

    const second = await bench.persistentContext(folder);
    const again = await second.context.newPage();
    await again.goto(address);
    const name = again.getByLabel('Name of the project');
    await name.waitFor();
    expect(await name.inputValue()).toBe('first name');
    await again.getByText('upper rail').first().waitFor();
    await second.context.close();
    await rm(folder, { recursive: true, force: true });
  });

  it('goes out as one file and comes back as it was, a known one as a copy', async () => {
    const page = await (await bench.freshContext()).newPage();
    await openSheet(page);
    await lengthField(page).fill('9 1/4');
    await lengthField(page).press('Enter');
    const coming = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save as a file' }).click();
    const download = await coming;
    expect(download.suggestedFilename()).toBe('rails.seamgrain');
    const path = await download.path();

    const elsewhere = await (await bench.freshContext()).newPage();
    await elsewhere.goto(bench.app.url);
    const file = { name: 'rails.seamgrain', mimeType: '', buffer: await readFile(path) };
    await elsewhere.setInputFiles('input[data-part=choose]', file);
    await elsewhere.getByRole('link', { name: 'Shop sheet' }).click();
    expect(await lengthField(elsewhere).inputValue()).toBe('9 1/4 in');
    await elsewhere.getByText('upper rail').first().waitFor();

    await elsewhere.getByRole('link', { name: 'Panel', exact: true }).click();
    await elsewhere.setInputFiles('input[data-part=choose]', file);
    await elsewhere.getByText('opened as a copy').waitFor();
    await elsewhere.getByRole('link', { name: 'Seamgrain' }).click();
    await elsewhere.getByRole('link', { name: 'Open rails (copy)' }).waitFor();
    await elsewhere.getByRole('link', { name: 'Open rails', exact: true }).waitFor();

    const damaged = { ...file, buffer: file.buffer.subarray(0, file.buffer.length - 400) };
    await elsewhere.setInputFiles('input[data-part=choose]', damaged);
    await elsewhere.getByText('damaged or cut short').waitFor();
    await page.context().close();
    await elsewhere.context().close();
  });

  it('says so when the device is full, and loses nothing', async () => {
    const context = await bench.freshContext();
    const page = await context.newPage();
    await page.goto(bench.app.url);
    const session = await context.newCDPSession(page);
    const origin = new URL(bench.app.url).origin;
    await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1000 });
    await pinByHand(page, picture, '24', '15');
    await page.getByText('no room left on this device').waitFor();
    await page.getByText('Not kept yet', { exact: true }).waitFor();
    await page.getByRole('link', { name: 'Shop sheet' }).click();
    await lengthField(page).fill('6 in');
    await lengthField(page).press('Enter');
    expect(await lengthField(page).inputValue()).toBe('6 in');
    await session.send('Storage.overrideQuotaForOrigin', { origin });
    await page.getByRole('button', { name: 'Try again' }).click();
    await keptFor(page, 'rails');
    await page.reload();
    expect(await lengthField(page).inputValue()).toBe('6 in');
    await context.close();
  });

  it('is worked on in one tab at a time', async () => {
    const context = await bench.freshContext();
    const first = await context.newPage();
    await openSheet(first);
    await lengthField(first).fill('11 in');
    await lengthField(first).press('Enter');
    await keptFor(first, 'rails kept');
    const second = await context.newPage();
    await second.goto(first.url());
    await second.getByText('being worked on in another tab').waitFor();
    await lengthField(second).fill('2 in');
    await lengthField(second).press('Enter');
    expect(await lengthField(second).inputValue()).toBe('11 in');

    await lengthField(first).fill('12 in');
    await lengthField(first).press('Enter');
    await second.getByRole('button', { name: 'Work on it here' }).click();
    await second.getByText('now worked on in this tab').waitFor();
    // What the first tab had not kept yet was kept before it let go.
    expect(await lengthField(second).inputValue()).toBe('12 in');
    await first.getByText('being worked on in another tab').waitFor();
    await context.close();
  });
});
