import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { composePiece } from '../../src/core/composing';
import { writeLessonLink } from '../../src/core/exchange';
import { newLesson, setChartText } from '../../src/core/lesson';
import { openApp } from '../support/browser';

const button = (page: Page, name: string): Locator => page.getByRole('button', { name, exact: true });

/** B♭ major with a B minor chord in it, composed. */
const LESSON = composePiece(
  setChartText(newLesson('lesson', 'Two Bs'), 'piece-1', '| Bb | Eb | Bm7b5 E7 | F7 |'),
  'piece-1',
).lesson;

test('German names hold in the reason, on the neck, for the strings, in the text tab and on paper', async () => {
  const opened = await openApp({ path: new URL(writeLessonLink(LESSON, 'http://page/')).hash });
  const { page } = opened;
  await button(page, 'Bar 1, B♭').waitFor();
  expect(await page.getByText('Typed in German names').count()).toBe(0);

  await page.getByText('Transpose, note names').click();
  await page.getByRole('combobox', { name: 'Note names' }).selectOption('german');
  await button(page, 'Bar 3, Hm7♭5 E7').waitFor();
  await page.getByText('Typed in German names: H, B, Es, Fis. B is a half step below H.').waitFor();
  const chart = page.getByRole('textbox', { name: 'Chord chart' });
  expect(await chart.inputValue()).toBe('| B | Es | Hm7b5 E7 | F7 |');
  await page.getByText(/belongs? to B major/).waitFor();

  const tuning = page.getByRole('combobox', { name: 'Tuning' });
  expect(await tuning.locator('option').allTextContents()).toContain('H E A D G · Five strings, low H');
  await tuning.selectOption('five-strings');
  await page.getByText('Bass and hand', { exact: true }).click();
  const strings = page.getByRole('textbox', { name: 'Open strings, lowest first' });
  expect(await strings.inputValue()).toBe('H E A D G');
  await strings.fill('B Es As Des');
  await strings.press('Enter');
  await expect.poll(() => tuning.locator('option:checked').textContent()).toBe('B Es As Des');
  await tuning.selectOption('five-strings');

  await button(page, 'Bar 3, Hm7♭5 E7').click();
  const drawer = page.getByRole('group', { name: /^Ideas for bar 3/ });
  await expect.poll(() => drawer.locator('.drawer__now').textContent()).toMatch(/Fis on beat four|Hm7♭5/);
  expect(await drawer.getByRole('textbox', { name: 'Chords of bar 3' }).inputValue()).toBe('Hm7b5 E7');
  await drawer
    .getByRole('list', { name: 'Ideas for bar 3' })
    .getByText(/Hm7♭5|H on beat/)
    .first()
    .waitFor();
  await drawer.getByText('Fingering of bar 3').click();
  await drawer.getByRole('rowheader', { name: 'H on 1', exact: true }).waitFor();
  await button(page, 'Fretboard').click();
  const neck = page.getByRole('region', { name: 'Fretboard' });
  await neck.getByRole('combobox', { name: 'Written on the notes' }).selectOption('name');
  const onNeck = () => neck.locator('svg text').allTextContents();
  await expect.poll(async () => (await onNeck()).filter((text) => text === 'H').length).toBeGreaterThan(1);
  expect(await onNeck()).not.toContain('B');
  expect(await neck.locator('svg').getAttribute('aria-label')).toMatch(/fret 2 H, root/);

  await button(page, 'Handout').click();
  const preview = page.getByRole('region', { name: 'Preview of the handout' });
  await page.getByRole('checkbox', { name: 'Shapes to learn' }).check();
  const printed = async () => (await preview.getByRole('img').allTextContents()).join(' ');
  await expect.poll(printed).toMatch(/Hm7♭5, position/);
  expect(await printed()).toMatch(/B major: two flats \(B, Es\)/);
  expect(await printed()).not.toMatch(/B♭|Bm7|E♭/);
  await button(page, 'Back to the line').click();

  await chart.fill('| B | ');
  await chart.pressSequentially('Fismx7 |');
  await page
    .getByRole('list', { name: 'Chart problems' })
    .getByText(/“Fismx7” begins like a chord on Fis/)
    .waitFor();
  expect(await chart.inputValue()).toBe('| B | Fismx7 |');
  await button(page, 'Write Fism7 in line 1, column 7').click();
  expect(await chart.inputValue()).toBe('| B | Fism7 |');
  await chart.fill('| b7 |');
  await button(page, 'Write B7 in line 1, column 3').click();
  expect(await chart.inputValue()).toBe('| B7 |');
  await chart.fill('| B | H7 |');
  await button(page, 'Bar 2, H7').click();
  const chords = page.getByRole('textbox', { name: 'Chords of bar 2' });
  await chords.fill('Asmaj7 H7');
  await chords.press('Enter');
  await expect.poll(() => chart.inputValue()).toBe('| B | Asmaj7 H7 |');
  await chords.fill('Abmaj7 H7');
  await chords.press('Enter');
  await expect.poll(() => chords.inputValue()).toBe('Asmaj7 H7');
  expect(await chords.getAttribute('aria-invalid')).toBe('false');
  await button(page, 'Undo').click();
  await expect.poll(() => chart.inputValue()).toBe('| B | H7 |');
  await page.getByText('Transpose, note names').click();
  await page.getByRole('combobox', { name: 'Note names' }).selectOption('letters');
  await expect.poll(() => chart.inputValue()).toBe('| Bb | B7 |');
  await page.getByRole('combobox', { name: 'Note names' }).selectOption('german');

  const coming = page.waitForEvent('download');
  await button(page, 'Export').click();
  await page.getByRole('menuitem', { name: 'Text tab', exact: true }).click();
  const download = await coming;
  expect(download.suggestedFilename()).toBe('two-bs-line-b-major-126-bpm.txt');
  const tab = await readFile(await download.path(), 'utf8');
  expect(tab).toContain('Tuning, lowest string first: H E A D G.');
  expect(tab).toMatch(/^H ?\|/m);
  expect(tab).toMatch(/ H7/);
  opened.expectClean();
});
