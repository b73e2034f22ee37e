import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { parseLesson } from '../../src/core/lesson';
import { openApp } from '../support/browser';
import { faults } from '../support/faults';
import { addAll, addVersion, openStudents } from '../support/people';

const button = (page: Page | Locator, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });
const choice = (page: Page): Locator => page.getByRole('combobox', { name: 'Version on the page' });
const chosen = (page: Page): Promise<string | null> =>
  choice(page).evaluate((field) =>
    field instanceof HTMLSelectElement ? (field.selectedOptions[0]?.textContent ?? null) : null,
  );
const key = (page: Page): Locator => page.getByRole('combobox', { name: 'Key', exact: true });

async function inMenu(page: Page, menu: string, item: string): Promise<void> {
  await button(page, menu).click();
  await page.getByRole('menuitem', { name: item, exact: true }).click();
}

async function makeVersion(page: Page, name: string): Promise<void> {
  const field = page.getByRole('textbox', { name: 'Name of the version' });
  await expect.poll(() => field.evaluate((each) => each.matches(':focus'))).toBe(true);
  await page.keyboard.type(name);
  await page.keyboard.press('Enter');
  await expect.poll(() => chosen(page)).toBe(name);
}

async function saved(page: Page, work: () => Promise<void>): Promise<string> {
  const download = page.waitForEvent('download');
  await work();
  return readFile(await (await download).path(), 'utf8');
}

test('a version is made, changed, chosen, saved, sent alone and removed, and the tune stays as it is', async () => {
  const { page, expectClean } = await openApp({ width: 1440 });
  const level = page.getByRole('combobox', { name: 'Level', exact: true });
  const before = await level.inputValue();
  const other = before === '1' ? '2' : '1';
  const offer = await button(page, 'Make a version').boundingBox();
  const paper = await page.locator('.sheet figure').first().boundingBox();
  if (offer === null || paper === null) throw new Error('The page shows its line.');
  expect(offer.y).toBeGreaterThan(paper.y + paper.height);
  await button(page, 'Make a version').click();
  await makeVersion(page, 'for Ada');
  await level.selectOption(other);
  expect(await faults(page)).toEqual([]);

  await choice(page).selectOption({ label: 'the tune itself' });
  await expect.poll(() => level.inputValue()).toBe(before);
  await choice(page).selectOption({ label: 'for Ada' });
  await expect.poll(() => level.inputValue()).toBe(other);

  const alone = await saved(page, () => inMenu(page, 'Versions', 'Save as a lesson file'));
  expect(alone).not.toContain('for Ada');
  const whole = parseLesson(await saved(page, () => inMenu(page, 'Export', 'Lesson file')));
  expect(whole.ok && whole.value.versions?.map(({ name }) => name)).toEqual(['for Ada']);

  await page.getByText(/^saved/).waitFor();
  await page.reload();
  await expect.poll(() => chosen(page)).toBe('for Ada');
  await inMenu(page, 'Versions', 'Rename');
  await makeVersion(page, 'for Wednesday’s class');
  await inMenu(page, 'Versions', 'Remove');
  await button(page, 'Make a version').waitFor();
  expect(await level.inputValue()).toBe(before);
  await button(page, 'Undo').click();
  await expect.poll(() => chosen(page)).toBe('for Wednesday’s class');
  expect(await level.inputValue()).toBe(other);
  expect(await key(page).count()).toBe(1);
  expectClean();
});

test('what is changed in a version is carried to the others or left, and what was changed in both is asked', async () => {
  const { page, expectClean } = await openApp({ width: 1024 });
  const tempo = page.getByRole('spinbutton', { name: 'Tempo', exact: true });
  const setTempo = async (value: string) => {
    if (!(await tempo.isVisible())) await button(page, 'Chart and aims').click();
    await tempo.fill(value);
    await tempo.press('Tab');
  };
  await button(page, 'Make a version').click();
  await makeVersion(page, 'for Ada');
  await inMenu(page, 'Versions', 'New version');
  await makeVersion(page, 'for Ben');
  await setTempo('111');
  await page.getByText('1 thing not as in the tune').click();
  await page.getByText(/^The tempo\. In the tune: \d+ bpm/).waitFor();
  await button(page, 'Carry it to the tune and the others: the tempo').click();
  await page.getByText('The tempo: the tune and the others have it too now.').waitFor();
  await choice(page).selectOption({ label: 'for Ada' });
  await expect.poll(() => tempo.inputValue()).toBe('111');

  await button(page, 'Another take').click();
  await page.getByText(/^\d+ things? not as in the tune$/).waitFor();
  await choice(page).selectOption({ label: 'the tune itself' });
  await page.getByRole('combobox', { name: 'Level', exact: true }).selectOption('0');
  await button(page, 'Compose line').click();
  const mends = page.getByRole('list', { name: 'Mended in the tune' }).getByRole('listitem');
  await mends
    .getByText(/^Bar \d+ was changed in the tune since; “for Ada” has notes of its own there/)
    .first()
    .waitFor();
  expect(await faults(page)).toEqual([]);
  const all = await mends.count();
  await mends
    .getByRole('button', { name: /^Keep its own: bar \d+, for Ada$/ })
    .first()
    .click();
  await page.getByText(/^“for Ada” keeps its own notes in bar/).waitFor();
  expect(await mends.count()).toBe(all - 1);
  await button(page, 'Undo').click();
  await expect.poll(() => mends.count()).toBe(all);
  await mends
    .getByRole('button', { name: /^Take the tune’s notes: bar \d+, for Ada$/ })
    .first()
    .click();
  await expect.poll(() => mends.count()).toBe(all - 1);
  expectClean();
});

test.each([1440, 390])(
  'a lesson without versions has no empty ground over its sheet, %i px wide',
  async (width) => {
    const { page } = await openApp({ width });
    const over = () =>
      page.evaluate(() => {
        window.scrollTo(0, 0);
        const at = (name: string) => document.querySelector(name)?.getBoundingClientRect();
        return (at('.sheet')?.top ?? Number.NaN) - (at('.header')?.bottom ?? 0);
      });
    await button(page, 'Make a version').waitFor();
    expect(await over()).toBeLessThan(32);
    await button(page, 'Make a version').click();
    await makeVersion(page, 'for Ada');
    expect(await over()).toBeGreaterThan(40);
  },
);

test('a practice page of all versions lets the student choose theirs, on a phone too', async () => {
  const { page, address, expectClean } = await openApp({ width: 390, height: 844 });
  await button(page, 'Make a version').click();
  await makeVersion(page, 'for Ben');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await page.getByRole('textbox', { name: 'Lesson title' }).fill('Ben’s own');
  const html = await saved(page, () => inMenu(page, 'Versions', 'Practice page of all'));
  await page.route(`${address}all.html`, (route) => route.fulfill({ body: html, contentType: 'text/html' }));
  await page.goto(`${address}all.html`);
  const version = page.getByRole('combobox', { name: 'Version' });
  await page.getByRole('heading', { level: 1, name: 'Ben’s own' }).waitFor();
  await version.selectOption({ label: 'the tune itself' });
  await expect.poll(() => page.getByRole('heading', { level: 1 }).textContent()).not.toBe('Ben’s own');
  expectClean();
});

test('the files of two versions and of the tune have names of their own, in which no student is named', async () => {
  const { page, expectClean } = await openApp({ width: 1440 });
  await page.getByRole('textbox', { name: 'Lesson title' }).fill('Harbour');
  for (const name of ['for Adalind', 'for Bo']) await addVersion(page, name);
  const students = await openStudents(page);
  await addAll(students, ['Adalind', 'Bo']);
  await page.keyboard.press('Escape');
  const names: string[] = [];
  for (const version of ['the tune itself', 'for Adalind', 'for Bo']) {
    await choice(page).selectOption({ label: version });
    await expect.poll(() => chosen(page)).toBe(version);
    for (const item of ['Practice page', 'Text tab', 'MIDI', 'Handout (PDF)']) {
      const [download] = await Promise.all([page.waitForEvent('download'), inMenu(page, 'Export', item)]);
      names.push(download.suggestedFilename());
    }
  }
  expect(names.filter((name) => name.endsWith('.html'))).toEqual([
    'harbour.practice.html',
    'harbour-for-a-student.practice.html',
    'harbour-for-a-student-2.practice.html',
  ]);
  expect(new Set(names).size).toBe(names.length);
  expect(names.join()).not.toMatch(/adalind|bo\b/i);
  expectClean();
}, 240_000);
