/** The pencil on the page, as the browser tests find it. */
import type { Page } from 'playwright-core';
import { expect } from 'vitest';

export const bar = (page: Page, number: number) =>
  page.getByRole('button', { name: new RegExp(`^Bar ${number}, `) });
const pencil = (page: Page) => page.getByRole('status', { name: 'Pencil', exact: true });
/** The sheet follows a moment behind, on a busy machine a long one. */
export const PATIENCE = { timeout: 15_000 };
export const says = (page: Page, what: string | RegExp) =>
  expect.poll(() => pencil(page).textContent(), PATIENCE).toMatch(what);
/** Degrees of a bar as the page tells them to those who do not see the score. */
export const told = (page: Page, number: number) => bar(page, number).getAttribute('aria-description');

/** Waits this long between two looks at a bar that may still change, and looks so often before it is taken to stand. */
const LOOK_MS = 200;
const LOOKS = 6;

/** {@link told} once it stays: on a busy machine a bar's words follow its notes late. */
export async function steady(page: Page, number: number): Promise<string | null> {
  let [words, same] = [await told(page, number), 0];
  while (same < LOOKS) {
    await page.waitForTimeout(LOOK_MS);
    const now = await told(page, number);
    [words, same] = [now, now === words ? same + 1 : 0];
  }
  return words;
}

export async function open(page: Page, number: number): Promise<void> {
  await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
  await bar(page, number).click();
  await page.getByRole('button', { name: 'Write by hand' }).click();
  await page.getByRole('application', { name: `Writing in bar ${number}` }).waitFor();
}

/** A place of the bar that is open for writing: a share of its width, and of the height from staff to tab. */
export async function placeIn(page: Page, across: number, down: number) {
  const box = await page.getByRole('application').boundingBox();
  if (box === null) throw new Error('no bar is open');
  return { x: box.x + box.width * across, y: box.y + box.height * down };
}
