// Photographs each page of the workbench at phone, tablet and desk width: `npm run gallery`.
// Needs the app's sources, the samples and a Chromium ($CHROMIUM, else /usr/bin/chromium).
import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';

const here = (name) => fileURLToPath(new URL(name, import.meta.url));
const server = spawn(process.execPath, [here('../../src/app/build/serve.mjs')], {
  env: { ...process.env, PORT: '0' },
  stdio: ['ignore', 'pipe', 'inherit'],
});
const url = await new Promise((resolve) => {
  let said = '';
  server.stdout.on('data', (chunk) => {
    said += chunk;
    const found = /http:\/\/localhost:\d+\//.exec(said)?.[0];
    if (found) resolve(found);
  });
});
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM || '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run'],
});

const widths = [
  { name: 'phone', width: 390, height: 844, colorScheme: 'light' },
  { name: 'tablet', width: 820, height: 1180, colorScheme: 'dark' },
  { name: 'desk', width: 1280, height: 900, colorScheme: 'light' },
];
const answered = (page) =>
  page.waitForFunction(
    () => {
      const answer = document.querySelector('h1.answer');
      const working = document.querySelector('.working progress');
      return answer && answer.getAttribute('aria-busy') !== 'true' && !working && !/…$/.test(answer.textContent);
    },
    { timeout: 120_000 },
  );
/** Page name, the sample that shows it, the link that leads there. */
const pages = [
  ['joints', 'Flatsawn oak', null],
  ['joints-drawer', 'Pine, with a drawer front', null],
  ['panel', 'Flatsawn oak', 'Panel'],
  ['rip', 'Maple, before the rip', null],
  ['candidates', 'Five boards', 'Candidates'],
  ['boards', 'Five boards', null],
  ['sheet', 'Maple, before the rip', 'Shop sheet'],
];

try {
  for (const { name: size, width, height, colorScheme } of widths) {
    const context = await browser.newContext({ viewport: { width, height }, colorScheme });
    const page = await context.newPage();
    const shoot = (name) =>
      page.screenshot({ path: here(`${name}-${size}.jpg`), type: 'jpeg', quality: 80, fullPage: true });
    await page.goto(url);
    await page.locator('button.card').first().waitFor();
    await page.waitForTimeout(800);
    await shoot('start');
    for (const [name, sample, link] of pages) {
      await page.goto(url);
      await page.locator('button.card').filter({ hasText: sample }).click();
      await page.locator('nav.pages').waitFor();
      if (link) await page.getByRole('link', { name: link, exact: true }).click();
      if (name === 'panel') await page.locator('.pin').first().waitFor();
      else {
      await answered(page);
      await page.waitForTimeout(500);
      await answered(page);
    }
      await page.waitForTimeout(900);
      await shoot(name);
      console.log(`${name}-${size}.jpg`);
    }
    await context.close();
  }
} finally {
  await browser.close();
  server.kill();
}
