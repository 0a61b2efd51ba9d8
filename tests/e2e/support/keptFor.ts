import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** Changes the project's name and waits until that is kept, and with it all before. */
export async function keptFor(page: Page, name: string): Promise<void> {
  await page.getByLabel('Name of the project').fill(name);
  await expect.poll(() => keptNames(page), { timeout: 10_000 }).toContain(name);
}

/** Names of the projects that lie in the page's database. */
function keptNames(page: Page): Promise<string[]> {
  return page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open('seamgrain');
      opening.onsuccess = () => resolve(opening.result);
    });
    const reading = database.transaction('projects').objectStore('projects').getAll();
    const all = await new Promise<{ project: { name: string } }[]>((resolve) => {
      reading.onsuccess = () => resolve(reading.result);
    });
    database.close();
    return all.map(({ project }) => project.name);
  });
}
