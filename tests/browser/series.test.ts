import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openApp } from '../support/browser';
import { faults } from '../support/faults';
import { keepAs, openOtherSample, openSeries } from '../support/series';

const button = (page: Page | Locator, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });

test('a term is put in order, and tells what was shown, what is new and what could come next', async () => {
  const { page, expectClean } = await openApp({ width: 1440 });
  await keepAs(page, 'Harbour');
  const dialog = await openSeries(page);
  await dialog.getByRole('textbox', { name: 'Name of a new series' }).fill('Autumn');
  await page.keyboard.press('Enter');
  await button(dialog, 'Put the open lesson at the end').click();
  const weeks = dialog.getByRole('list', { name: 'Weeks' });
  await button(weeks, 'Harbour').waitFor();
  await button(dialog, 'Close the series').click();
  await openOtherSample(page);
  await keepAs(page, 'Tram');
  await openSeries(page);
  await dialog.getByRole('radio', { name: /^Autumn/ }).check();
  await button(dialog, 'Put the open lesson at the end').click();
  await button(weeks, 'Tram').waitFor();
  await button(dialog, 'R, week 1: new').waitFor();
  await button(dialog, 'R, week 2: again').waitFor();
  const curve = await dialog.getByRole('img', { name: /^Difficulty/ }).getAttribute('aria-label');
  expect(curve).toMatch(/week 1 level \d, [\d.]+ notes a second at most, \d+ bpm; week 2 level/);
  const next = dialog.getByRole('list', { name: 'What next week could bring' });
  expect(await next.getByRole('listitem').count()).toBeGreaterThan(2);

  // The teacher knows better than the notes, and goes by them again.
  await button(dialog, 'R, week 1: new').click();
  await button(dialog, 'R, week 2: new').waitFor();
  await button(dialog, 'R, week 1: not shown, as you said').click();
  await button(dialog, 'R, week 1: new').waitFor();

  await button(dialog, 'Compare with the shelf').click();
  await dialog.getByRole('list', { name: 'The nearest lessons' }).getByText('“Harbour”').waitFor();
  expect(await faults(page)).toEqual([]);

  await button(dialog, /^Earlier week 2/).click();
  await expect.poll(() => weeks.getByRole('listitem').first().textContent()).toContain('Tram');
  await page.reload();
  await openSeries(page);
  await dialog.getByRole('radio', { name: /^Autumn/ }).check();
  expect(await weeks.getByRole('listitem').first().textContent()).toContain('Tram');
  await next
    .getByRole('button', { name: /^New lesson with it/ })
    .first()
    .click();
  await expect
    .poll(() => page.getByRole('textbox', { name: 'Lesson title' }).inputValue())
    .toBe('New lesson');
  expectClean();
});

test('what went badly is proposed once more first, and nothing overflows on a phone', async () => {
  const { page, expectClean } = await openApp({ width: 390, height: 844 });
  await keepAs(page, 'Harbour');
  await button(page, 'Lessons').click();
  await page.getByRole('menuitem', { name: /^Students/ }).click();
  const students = page.getByRole('dialog', { name: 'Students' });
  await students.getByRole('textbox', { name: 'Name of a new student' }).fill('Adalind');
  await page.keyboard.press('Enter');
  await button(students, 'Give the open lesson').click();
  const given = students.getByRole('list', { name: 'Lessons given to Adalind' });
  await given.getByRole('textbox', { name: /^To mend next/ }).fill('the rest on one');
  await page.keyboard.press('Tab');
  await students.getByText('It is kept.').waitFor();
  await button(students, 'Close the students').click();
  const dialog = await openSeries(page);
  await dialog.getByRole('textbox', { name: 'Name of a new series' }).fill('Autumn');
  await page.keyboard.press('Enter');
  await dialog.getByRole('combobox', { name: 'For whom' }).selectOption({ label: 'Adalind' });
  await button(dialog, 'Put the open lesson at the end').click();
  const next = dialog.getByRole('list', { name: 'What next week could bring' });
  await expect
    .poll(() => next.getByRole('listitem').first().textContent())
    .toContain('Week 1, “Harbour” once more, with nothing new: to mend is: the rest on one.');
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(wide).toBeLessThanOrEqual(0);
  expect(await dialog.evaluate((each) => each.scrollWidth - each.clientWidth)).toBeLessThanOrEqual(0);
  expect(await faults(page)).toEqual([]);
  expectClean();
});
