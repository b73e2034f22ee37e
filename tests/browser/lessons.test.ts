import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openApp } from '../support/browser';

const button = (page: Page | Locator, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });

const title = (page: Page): Locator => page.getByRole('textbox', { name: 'Lesson title' });

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
