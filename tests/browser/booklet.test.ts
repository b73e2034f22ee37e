import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { readPdf, readStructure } from '../handout/pages';
import { openApp } from '../support/browser';
import { faults } from '../support/faults';
import { keepAs, openOtherSample, openSeries } from '../support/series';

const button = (page: Page | Locator, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });

test('a term is printed as a booklet: contents with page numbers, bookmarks, and nobody named unless ticked', async () => {
  const { page, expectClean } = await openApp({ width: 1440 });
  await keepAs(page, 'Harbour');
  await button(page, 'Lessons').click();
  await page.getByRole('menuitem', { name: /^Students/ }).click();
  const students = page.getByRole('dialog', { name: 'Students' });
  await students.getByRole('textbox', { name: 'Name of a new student' }).fill('Adalind');
  await page.keyboard.press('Enter');
  await button(students, 'Close the students').click();
  const dialog = await openSeries(page);
  await dialog.getByRole('textbox', { name: 'Name of a new series' }).fill('Autumn');
  await page.keyboard.press('Enter');
  await dialog.getByRole('combobox', { name: 'For whom' }).selectOption({ label: 'Adalind' });
  await button(dialog, 'Put the open lesson at the end').click();
  await button(dialog, 'Close the series').click();
  await openOtherSample(page);
  await keepAs(page, 'Tram');
  await openSeries(page);
  await dialog.getByRole('radio', { name: /^Autumn/ }).check();
  await button(dialog, 'Put the open lesson at the end').click();
  const pdf = async () => {
    await button(dialog, 'One PDF of the booklet').click();
    await dialog.getByText('The PDF is ready.').waitFor({ timeout: 120_000 });
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      button(dialog, 'Save autumn.pdf').click(),
    ]);
    const bytes = new Uint8Array(await readFile(await download.path()));
    const { pages } = await readPdf(bytes);
    const { bookmarks } = await readStructure(bytes);
    return { bookmarks, texts: pages.map(({ texts }) => texts.map(({ text }) => text).join(' ')) };
  };
  const bare = await pdf();
  expect(bare.bookmarks).toContain('Contents');
  const starts = ['Week 1: Harbour', 'Week 2: Tram'].map((words) => bare.bookmarks.indexOf(words));
  expect(starts[0]).toBeGreaterThan(-1);
  expect(starts[1]).toBeGreaterThan(starts[0] ?? 0);
  const [contents = '', ...lessons] = bare.texts;
  for (const title of ['Harbour', 'Tram']) {
    const number = Number(new RegExp(`${title}\\D* (\\d+)`).exec(contents)?.[1]);
    expect(bare.texts[number - 1]).toContain(title);
  }
  expect(bare.texts.map((text) => /Page \d+ of \d+/.exec(text)?.[0])).toEqual(
    bare.texts.map((_, index) => `Page ${index + 1} of ${bare.texts.length}`),
  );
  expect(contents).toContain('Hands and ears');
  expect(lessons.join()).not.toContain('Hands and ears');
  expect([...bare.texts, ...bare.bookmarks].join()).not.toContain('Adalind');
  await dialog.getByRole('checkbox', { name: 'With the name Adalind' }).check();
  expect((await pdf()).texts[0]).toContain('Adalind');
  expect(await faults(page)).toEqual([]);
  expectClean();
}, 240_000);

test('chosen lessons of the shelf are put in order and printed as a booklet', async () => {
  const { page, expectClean } = await openApp({ width: 390, height: 844 });
  await keepAs(page, 'Harbour');
  await openOtherSample(page);
  await keepAs(page, 'Tram');
  await button(page, 'Lessons').click();
  await page.getByRole('menuitem', { name: /^The whole shelf/ }).click();
  const shelf = page.getByRole('dialog', { name: 'The shelf' });
  await shelf.getByRole('option', { name: /^Harbour/ }).click();
  await button(shelf, 'Put into the booklet').click();
  await shelf.getByText('Booklet of chosen lessons: 1 lesson').click();
  await button(shelf, 'Put in the one listed').click();
  const chapters = shelf.getByRole('list', { name: 'Lessons of the booklet' }).getByRole('listitem');
  await expect.poll(() => chapters.count()).toBe(2);
  await button(shelf, /^Earlier/).click();
  await expect.poll(() => chapters.first().textContent()).toContain('Tram');
  await shelf.getByRole('textbox', { name: 'Title of the booklet' }).fill('Two songs');
  await page.evaluate(() => {
    window.print = () => {
      document.documentElement.dataset.printing = '';
    };
  });
  await button(shelf, 'Print the booklet').click();
  await page.locator('html[data-printing]').waitFor({ timeout: 120_000 });
  const { pages } = await readPdf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
  const texts = pages.map(({ texts: own }) => own.map(({ text }) => text).join(' '));
  expect(texts[0]).toMatch(/Two songs.*Contents.*Tram.*Harbour/);
  expect(texts.length).toBeGreaterThan(2);
  expect(texts.at(-1)).toContain(`Page ${texts.length} of ${texts.length}`);
  expect(await shelf.evaluate((each) => each.scrollWidth - each.clientWidth)).toBeLessThanOrEqual(0);
  expect(await faults(page)).toEqual([]);
  expectClean();
}, 180_000);
