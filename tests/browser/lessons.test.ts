import axe from 'axe-core';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openApp } from '../support/browser';

const button = (page: Page | Locator, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });

const title = (page: Page): Locator => page.getByRole('textbox', { name: 'Lesson title' });

async function choose(page: Page, item: string): Promise<void> {
  await button(page, 'Lessons').click();
  await page.getByRole('menuitem', { name: item, exact: true }).click();
}

test('every lesson is listed, and one is removed by keyboard after being asked once more', async () => {
  const { page, expectClean } = await openApp();
  await title(page).waitFor();
  for (let count = 1; count <= 15; count += 1) {
    await choose(page, 'New lesson');
    await expect.poll(() => title(page).inputValue()).toBe('New lesson');
    await title(page).fill(`Week ${count}`);
    await page.getByText(/^saved/).waitFor();
  }
  await button(page, 'Lessons').click();
  await expect.poll(() => page.getByRole('menuitem', { name: /^Week/ }).count()).toBe(14);
  await page.getByRole('menuitem', { name: 'Remove a lesson', exact: true }).focus();
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog', { name: 'Remove a lesson from this device' });
  await button(dialog, /^Remove Week 3 /).focus();
  await page.keyboard.press('Enter');
  await dialog.getByText('Remove “Week 3” for good?').waitFor();
  await page.evaluate(axe.source);
  const found = await page.evaluate(async () => {
    const runner: typeof axe = Reflect.get(window, 'axe');
    return (await runner.run(document)).violations.map(({ id }) => id);
  });
  expect(found).toEqual([]);
  await expect.poll(() => button(dialog, 'Keep it').evaluate((each) => each.matches(':focus'))).toBe(true);
  await page.keyboard.press('Shift+Tab');
  await page.keyboard.press('Enter');
  await dialog.getByText('“Week 3” is removed.').waitFor();
  await expect.poll(() => dialog.getByRole('listitem').count()).toBe(13);
  await page.keyboard.press('Escape');
  await expect.poll(() => dialog.count()).toBe(0);
  expectClean();
}, 60_000);

test('a file too large for a lesson is refused with a sentence', async () => {
  const { page, expectClean } = await openApp();
  await title(page).waitFor();
  const chooser = page.waitForEvent('filechooser');
  await button(page, 'Open').click();
  await (await chooser).setFiles({
    name: 'large.json',
    mimeType: 'application/json',
    buffer: Buffer.alloc(5_000_001, 32),
  });
  await page.getByText(/larger than 5 MB/).waitFor();
  expectClean();
});

test('undo in a field with a draft takes the typing back, not a step of the lesson', async () => {
  const { page } = await openApp();
  await title(page).fill('Changed before');
  await button(page, /^Bar 2, /).click();
  const chords = page.getByRole('textbox', { name: 'Chords of bar 2' });
  const before = await chords.inputValue();
  await chords.press('End');
  await chords.pressSequentially(' Gm7');
  await chords.press('Control+z');
  expect(await title(page).inputValue()).toBe('Changed before');
  expect(await chords.inputValue()).not.toBe(`${before} Gm7`);
});
