import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openApp } from '../support/browser';

const button = (page: Page, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });

const bars = (page: Page): Promise<readonly (string | null)[]> =>
  page
    .getByRole('figure', { name: 'Score', exact: true })
    .getByRole('button', { name: /^Bar \d+, / })
    .evaluateAll((buttons) => buttons.map((each) => each.getAttribute('aria-label')));

test('a teacher edits the chart on the sheet and in its text, and both show one chart', async () => {
  const opened = await openApp();
  const { page } = opened;
  const chart = page.getByRole('textbox', { name: 'Chord chart' });
  await button(page, /^Bar 2, /).waitFor();

  await chart.fill('| F | Gmni | C7 | F |');
  await button(page, /^Write Gm in line 1/).click();
  expect(await chart.inputValue()).toBe('| F | Gm | C7 | F |');
  await button(page, 'Bar 2, Gm').click();

  const chords = page.getByRole('textbox', { name: 'Chords of bar 2' });
  await chords.fill('Dm Gm');
  await chords.press('Enter');
  await button(page, 'Bar 2, Dm Gm').waitFor();
  expect(await chart.inputValue()).toBe('| F | Dm Gm | C7 | F |');

  await button(page, 'Split the bar').click();
  await button(page, 'Bar 5, F').waitFor();
  expect(await bars(page)).toEqual(['Bar 1, F', 'Bar 2, Dm', 'Bar 3, Gm', 'Bar 4, C7', 'Bar 5, F']);

  await button(page, 'Insert a bar after').click();
  const fresh = page.getByRole('textbox', { name: 'Chords of bar 3' });
  await fresh.waitFor();
  await expect.poll(() => fresh.evaluate((field) => field === document.activeElement)).toBe(true);
  await page.keyboard.type('Bb');
  await page.keyboard.press('Enter');
  await button(page, 'Bar 3, B♭').waitFor();
  expect(await chart.inputValue()).toBe('| F | Dm | Bb | Gm | C7 | F |');

  await button(page, 'Remove the bar').click();
  await button(page, 'Bar 3, Gm').waitFor();
  await button(page, 'Repeat the bar').click();
  await button(page, 'Bar 4, Gm').waitFor();
  expect(await chart.inputValue()).toBe('| F | Dm | Gm | % | C7 | F |');

  await page.getByText('Transpose, note names').click();
  await page.getByRole('combobox', { name: 'Note names' }).selectOption('fixed do');
  await button(page, 'Bar 2, Rem').waitFor();
  expect(await chart.inputValue()).toBe('| F | Dm | Gm | % | C7 | F |');

  await page.getByText('What the chords do').click();
  await page.getByRole('list', { name: 'What the chords do' }).getByText('Fa (I) is home.').waitFor();
  opened.expectClean();
});
