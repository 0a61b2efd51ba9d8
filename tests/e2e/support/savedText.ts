import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';

/** Presses a button that saves a file, and reads the file. */
export async function savedText(page: Page, button: string): Promise<string> {
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: button, exact: true }).click();
  return readFile(await (await coming).path(), 'utf8');
}
