import { readdirSync, readFileSync } from 'node:fs';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { browserFlags } from './browserFlags.js';
import { findBrowser } from './findBrowser.js';
import { type ServedApp, serveApp } from './serveApp.js';

/** A served app and a browser to look at it with. */
export interface Bench {
  readonly browser: Browser;
  readonly app: ServedApp;
  /** A fresh profile: no kept projects, no service worker. */
  freshContext(options?: Parameters<Browser['newContext']>[0]): Promise<BrowserContext>;
  /** A browser on a profile folder of its own, which can be ended as by a power cut. */
  persistentContext(
    folder: string,
  ): Promise<{ readonly context: BrowserContext; readonly kill: () => void }>;
  close(): Promise<void>;
}

const viewport = { width: 1280, height: 900 };
const stepMs = 10_000;

/** Serves the built app and starts the browser. */
export async function openBench(): Promise<Bench> {
  const executablePath = findBrowser();
  if (!executablePath) throw new Error('No Chromium was found: set CHROMIUM to its path.');
  const app = await serveApp();
  const browser = await chromium.launch({ executablePath, args: browserFlags });
  return {
    browser,
    app,
    async freshContext(options) {
      const context = await browser.newContext({ viewport, ...options });
      context.setDefaultTimeout(stepMs);
      return context;
    },
    async persistentContext(folder) {
      const context = await chromium.launchPersistentContext(folder, {
        executablePath,
        args: browserFlags,
        viewport,
      });
      context.setDefaultTimeout(stepMs);
      return { context, kill: () => killBrowserOf(folder) };
    },
    async close() {
      await browser.close();
      app.stop();
    },
  };
}

/** Ends, as a power cut would, the browser that was started on this profile folder. */
function killBrowserOf(folder: string): void {
  for (const pid of readdirSync('/proc').filter((name) => /^\d+$/.test(name))) {
    try {
      const command = readFileSync(`/proc/${pid}/cmdline`, 'utf8');
      const isMain = !command.includes('--type=');
      if (isMain && command.includes(`--user-data-dir=${folder}`)) process.kill(Number(pid), 9);
    } catch {
      // The process ended while the list was read.
    }
  }
}

/** Whether these tests can run; they may only be skipped where nobody asked for them. */
export function browserOrSkip(): boolean {
  if (findBrowser()) return true;
  if (process.env.CI) throw new Error('No Chromium was found and CI is set: set CHROMIUM.');
  console.warn('Skipped: no Chromium was found. Set CHROMIUM to its path to run the page tests.');
  return false;
}

/** Fails the test for every error that the page reports, blocked policy or thrown. */
export function watchErrors(page: Page): string[] {
  const errors: string[] = [];
  page.on('pageerror', (error) => errors.push(error.message));
  page.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  return errors;
}
