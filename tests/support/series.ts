/** Series as a teacher comes to them on the page, and lessons to put into them. */
import type { Locator, Page } from 'playwright-core';

const button = (page: Page, name: string): Locator => page.getByRole('button', { name, exact: true });

export async function openSeries(page: Page): Promise<Locator> {
  await button(page, 'Lessons').click();
  await page.getByRole('menuitem', { name: /^Series/ }).click();
  const dialog = page.getByRole('dialog', { name: 'Series' });
  await dialog.waitFor();
  return dialog;
}

/** Waits until the lesson at hand is kept under this title. */
export async function keepAs(page: Page, title: string): Promise<void> {
  await page.getByRole('textbox', { name: 'Lesson title' }).fill(title);
  await page.getByText(/^saved/).waitFor();
}

/** The middle sample is another tune than the one that the page begins with. */
export async function openOtherSample(page: Page): Promise<void> {
  await button(page, 'Lessons').click();
  await page.getByRole('menuitem', { name: 'Last tram home' }).click();
}
