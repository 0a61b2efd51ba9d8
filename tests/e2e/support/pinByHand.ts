import type { Page } from 'playwright-core';

/** Brings a picture in and pins it: sizes typed, the guess of the corners taken. */
export async function pinByHand(
  page: Page,
  file: { readonly name: string; readonly mimeType: string; readonly buffer: Buffer },
  length: string,
  width: string,
): Promise<void> {
  await page.setInputFiles('input[data-part=choose]', file);
  await page.getByText('first guess from the photo').waitFor();
  await page.getByLabel('Length, left to right').fill(length);
  await page.getByLabel('Width, top to bottom').fill(width);
  await page.getByLabel('Width, top to bottom').press('Enter');
  await page.getByRole('button', { name: 'This is the panel' }).click();
  await page.getByRole('application', { name: /Photo of the panel/ }).waitFor();
}
