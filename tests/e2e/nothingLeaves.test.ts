import { readFile } from 'node:fs/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { drawnPanel } from './support/drawnPanel.js';
import { keepRequests } from './support/keepRequests.js';
import { keptFor } from './support/keptFor.js';
import { type Bench, browserOrSkip, openBench, watchErrors } from './support/openBench.js';
import { pinByHand } from './support/pinByHand.js';

let bench: Bench;
let picture: { name: string; mimeType: string; buffer: Buffer };
const pages = ['Panel', 'Joints', 'Before the rip', 'Candidates', 'Boards', 'Shop sheet'];

describe.skipIf(!browserOrSkip())('the page', () => {
  beforeAll(async () => {
    bench = await openBench();
    const drawn = await drawnPanel({ width: 1000, height: 700 });
    picture = { name: 'rails.png', mimeType: 'image/png', buffer: drawn.png };
  });
  afterAll(() => bench?.close());

  it('asks only its own origin, on every page, and breaks none of its policies', async () => {
    const context = await bench.freshContext();
    const requests = keepRequests(context);
    const page = await context.newPage();
    const errors = watchErrors(page);
    await page.goto(bench.app.url);
    await pinByHand(page, picture, '24', '15');
    for (const name of pages) {
      await page.getByRole('link', { name, exact: true }).click();
      await page.waitForTimeout(700);
    }
    const heic = await readFile(new URL('../app/fixtures/quadrants.heic', import.meta.url));
    await page.setInputFiles('input[data-part=choose]', {
      name: 'q.heic',
      mimeType: '',
      buffer: heic,
    });
    await page.getByRole('heading', { name: 'Put a pin on each corner' }).waitFor();
    const { origin } = new URL(bench.app.url);
    const elsewhere = requests.filter((address) => {
      const { protocol } = new URL(address);
      return protocol !== 'blob:' && protocol !== 'data:' && new URL(address).origin !== origin;
    });
    expect(elsewhere).toEqual([]);
    // The record is no empty one: the page, its worker and OpenCV's wasm are in it.
    expect(requests.some((address) => address.endsWith('.wasm'))).toBe(true);
    expect(errors).toEqual([]);
    await context.close();
  });

  it('cannot reach another origin even if its code tried', async () => {
    const page = await (await bench.freshContext()).newPage();
    await page.goto(bench.app.url);
    const refused = await page.evaluate(async () => {
      const violations: string[] = [];
      document.addEventListener('securitypolicyviolation', ({ effectiveDirective }) => {
        violations.push(effectiveDirective);
      });
      await fetch('http://127.0.0.1:9/').catch(() => {});
      new Image().src = 'http://127.0.0.1:9/dot.png';
      const script = document.createElement('script');
      script.textContent = 'document.title = "an inline script ran"';
      document.head.append(script);
      await new Promise((resolve) => setTimeout(resolve, 200));
      return { violations, title: document.title };
    });
    expect(refused.violations.sort()).toEqual(['connect-src', 'img-src', 'script-src-elem']);
    expect(refused.title).toBe('Seamgrain');
    await page.context().close();
  });

  it('works without a network after the first visit', async () => {
    const context = await bench.freshContext();
    const page = await context.newPage();
    await page.goto(bench.app.url);
    await page.getByText('works without a network').waitFor();
    await context.setOffline(true);
    await page.reload();
    await pinByHand(page, picture, '600 mm', '375 mm');
    await page.getByRole('link', { name: 'Shop sheet' }).click();
    await page.getByText('upper rail').first().waitFor();
    await context.close();
  });

  it('says so when a part of it cannot be loaded, and goes on when it can', async () => {
    const context = await bench.freshContext({ serviceWorkers: 'block' });
    await context.route('**/*.wasm', (route) => route.abort());
    const page = await context.newPage();
    await page.goto(bench.app.url);
    await page.setInputFiles('input[data-part=choose]', picture);
    await page.getByText('No outline stood out').waitFor();
    await page.getByLabel('Length, left to right').fill('24');
    await page.getByLabel('Width, top to bottom').fill('15');
    await page.getByLabel('Width, top to bottom').press('Enter');
    await page.getByRole('button', { name: 'This is the panel' }).click();
    await page.getByText('Squaring the panel up did not work. Nothing you did is lost.').waitFor();
    await keptFor(page, 'rails kept');
    await context.unroute('**/*.wasm');
    await page.reload();
    await page.getByRole('application').waitFor();
    await context.close();
  });

  it('paints within two seconds on a cold load', async () => {
    const page = await (await bench.freshContext()).newPage();
    await page.goto(bench.app.url);
    await page.getByRole('heading', { level: 1 }).waitFor();
    const paintedMs = await page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          new PerformanceObserver((list) => resolve(list.getEntries().at(-1)!.startTime)).observe({
            type: 'largest-contentful-paint',
            buffered: true,
          });
        }),
    );
    expect(paintedMs).toBeLessThan(2000);
    await page.context().close();
  });
});
