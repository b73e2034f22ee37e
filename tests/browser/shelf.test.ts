import { readFile } from 'node:fs/promises';
import { strFromU8, unzipSync } from 'fflate';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openApp } from '../support/browser';
import { faults } from '../support/faults';
import { fillShelf } from '../support/full-shelf';
import { addAll, openStudents } from '../support/people';

const button = (page: Page | Locator, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });
const title = (page: Page): Locator => page.getByRole('textbox', { name: 'Lesson title' });

async function openShelf(page: Page): Promise<Locator> {
  await button(page, 'Lessons').click();
  await page.getByRole('menuitem', { name: 'The whole shelf' }).click();
  const shelf = page.getByRole('dialog', { name: 'The shelf' });
  await shelf.waitFor();
  return shelf;
}

async function withLessons(count: number, width = 1440) {
  const opened = await openApp({ width });
  await title(opened.page).fill('Mine');
  await opened.page.getByText(/^saved/).waitFor();
  await fillShelf(opened.page, count);
  return opened;
}

test('by keyboard a lesson among thousands is found, renamed, copied, removed and brought back', async () => {
  const { page, expectClean } = await withLessons(3000);
  const shelf = await openShelf(page);
  await shelf.getByText('3001 lessons', { exact: true }).waitFor();
  expect(await shelf.getByRole('listbox').getByRole('option').count()).toBeLessThan(60);
  const list = shelf.getByRole('listbox', { name: 'Lessons on the shelf' });
  await list.focus();
  await page.keyboard.press('End');
  await expect.poll(() => list.getAttribute('aria-activedescendant')).toBe('on-shelf-week-1');
  const last = list.getByRole('option', { selected: true });
  expect(await last.getAttribute('aria-posinset')).toBe('3001');
  expect(await last.getAttribute('aria-setsize')).toBe('3001');
  await expect.poll(() => last.isVisible()).toBe(true);

  // What is typed over the lesson is no part of it.
  await shelf.getByRole('searchbox').press('Control+z');
  expect(await page.locator('.header__title').inputValue()).toBe('Mine');
  await shelf.getByRole('searchbox').fill('week 17');
  await shelf.getByRole('combobox', { name: /^Student/ }).selectOption('Ben');
  await shelf.getByRole('combobox', { name: /^Order/ }).selectOption('By title');
  await expect.poll(() => list.getByRole('option').first().textContent()).toMatch(/^Week 17(?!\d)/);
  expect(await list.evaluate((each) => each.scrollTop)).toBe(0);
  await list.focus();
  await page.keyboard.press('Home');
  expect(await faults(page)).toEqual([]);
  await button(shelf, 'Rename').focus();
  await page.keyboard.press('Enter');
  await page.keyboard.type('Harbour');
  await page.keyboard.press('Enter');
  await shelf.getByText('It is called “Harbour” now.').waitFor();
  await shelf.getByRole('combobox', { name: /^Student/ }).selectOption('Anyone');
  await shelf.getByRole('searchbox').fill('harbour');
  await shelf.getByText('1 lesson of 3001').waitFor();
  await button(shelf, 'Copy').click();
  await shelf.getByText('A copy of “Harbour” stands on the shelf.').waitFor();
  await shelf.getByText('2 lessons of 3002').waitFor();
  await button(shelf, 'Remove').click();
  await shelf.getByText(/^“Harbour \(copy\)” is removed/).waitFor();
  await shelf.getByText('1 lesson of 3001').waitFor();
  await expect
    .poll(() => button(shelf, 'Bring the removed lesson back').evaluate((each) => each.matches(':focus')))
    .toBe(true);
  // Also after the shelf was closed it can be brought back.
  await page.keyboard.press('Escape');
  await openShelf(page);
  await shelf.getByText(/^“Harbour \(copy\)” is removed/).waitFor();
  await shelf.getByRole('searchbox').fill('harbour');
  await shelf.getByText('1 lesson of 3001').waitFor();
  await button(shelf, 'Bring the removed lesson back').focus();
  await page.keyboard.press('Enter');
  await shelf.getByText('2 lessons of 3002').waitFor();
  await list.focus();
  await page.keyboard.press('Home');
  await page.keyboard.press('Enter');
  await expect.poll(() => title(page).inputValue()).toMatch(/^Harbour/);
  expectClean();
}, 120_000);

test('at 390 px nothing is cut off, and an earlier state is looked at and brought back after a reload', async () => {
  const { page, expectClean } = await withLessons(30, 390);
  await button(page, 'Lessons').click();
  await page.getByText(/31 changes in 31 lessons, and the shelf was never saved as a file\./).waitFor();
  await page.keyboard.press('Escape');
  await title(page).fill('Changed since');
  await page.getByText(/^saved/).waitFor();
  await page.waitForTimeout(1800);
  await page.reload();
  await button(page, 'Undo').waitFor();
  const shelf = await openShelf(page);
  await shelf.getByRole('option', { name: /^Changed since/ }).click();
  expect(await shelf.evaluate((each) => each.scrollWidth - each.clientWidth)).toBeLessThanOrEqual(0);
  await shelf.getByText('Earlier states').click();
  await shelf.getByRole('list', { name: 'Earlier states of Changed since' }).getByRole('button').click();
  await page.getByText(/as it was on .* It is only shown/).waitFor();
  expect(await title(page).inputValue()).toMatch(/^Ferry queue/);
  await button(page, 'Bring it back').click();
  await page.getByText(/^saved/).waitFor();
  expect(await title(page).inputValue()).toMatch(/^Ferry queue/);
  await button(page, 'Undo').click();
  await expect.poll(() => title(page).inputValue()).toBe('Changed since');
  expectClean();
}, 120_000);

test('students go into the one file only where that is ticked, and come back beside those that stand here', async () => {
  const { page, expectClean } = await openApp({ width: 1440 });
  await title(page).fill('Mine');
  await page.getByText(/^saved/).waitFor();
  const students = await openStudents(page);
  await addAll(students, ['Adalind', 'Bo']);
  await addAll(students, ['Wednesday'], 'class');
  await page.keyboard.press('Escape');
  const shelf = await openShelf(page);
  const saved = async (sentence: RegExp) => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      button(shelf, 'Save the shelf as a file').click(),
    ]);
    await shelf.getByText(sentence).waitFor();
    return readFile(await download.path());
  };
  const bare = await saved(/^1 lesson is in the file\. Students, classes and series are not in it\./);
  const words = Object.entries(unzipSync(new Uint8Array(bare)))
    .map(([name, bytes]) => `${name} ${strFromU8(bytes)}`)
    .join(' ');
  expect(words).toContain('Mine');
  expect(words).not.toMatch(/adalind|wednesday/i);
  await shelf.getByRole('checkbox', { name: 'With students, classes and series' }).check();
  const full = await saved(/3 students, classes and series are in it, too, with your notes of them\./);
  await page.keyboard.press('Escape');

  await openStudents(page);
  await students.getByRole('radio', { name: /^Adalind/ }).check();
  await button(students, 'Delete').click();
  await button(students, 'Delete Adalind').click();
  await students.getByText(/^The student is deleted/).waitFor();
  await students.getByRole('radio', { name: /^Bo/ }).check();
  await students.getByRole('combobox', { name: /^Level/ }).selectOption({ index: 4 });
  await students.getByText('It is kept.').waitFor();
  await page.keyboard.press('Escape');
  await openShelf(page);
  const bringIn = async (sentence: string) => {
    await shelf
      .locator('input[type=file]')
      .setInputFiles({ name: 'shelf.zip', mimeType: 'application/zip', buffer: full });
    await shelf.getByText(sentence).waitFor();
  };
  await bringIn(
    '2 students, classes and series came, too. 1 student, class or series stood here already, as in the file.',
  );
  await bringIn('3 students, classes and series stood here already, as in the file.');
  await page.keyboard.press('Escape');
  await openStudents(page);
  for (const name of [/^Adalind/, /^Bo level 4/, /^Bo \(from the file\)/, /^Wednesday \d/])
    await students.getByRole('radio', { name }).waitFor();
  expectClean();
}, 120_000);
