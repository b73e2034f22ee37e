import { readFile } from 'node:fs/promises';
import { expect, test } from 'vitest';
import { readPdf } from '../handout/pages';
import { openApp } from '../support/browser';

const NAME = 'Ferry queue';

test('a line is asked about by ear and on paper, with the same draw and the answers on a sheet of their own', async () => {
  const { page, expectClean } = await openApp({ width: 1440, height: 1000 });
  await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
  await page.getByText(`Questions about ${NAME}`).click();
  const list = page.getByRole('list', { name: `Questions about ${NAME}` });
  const items = list.getByRole('listitem');
  await expect.poll(() => items.count()).toBe(6);
  await page.getByRole('spinbutton', { name: 'How many questions' }).fill('3');
  await page.getByRole('spinbutton', { name: 'How many questions' }).press('Enter');
  await expect.poll(() => items.count()).toBe(3);
  await page.getByRole('combobox', { name: 'How hard the questions are' }).selectOption('3');

  // Played, and answered by tapping: every choice but one is told to be none, and one is right.
  const first = items.filter({ has: page.locator('[aria-pressed]') }).first();
  await first.getByRole('button', { name: /^Play / }).click();
  await first.getByRole('button', { name: /^Stop / }).waitFor();
  await first.getByRole('button', { name: /^Stop / }).click();
  await first.getByRole('button', { name: /^Play / }).waitFor();
  const choices = await first.locator('.asking__choices').getByRole('button').allTextContents();
  const said = [];
  for (const choice of choices) {
    await first.getByRole('button', { name: choice, exact: true }).click();
    said.push((await first.getByRole('status').textContent()) ?? '');
  }
  expect(said.filter((each) => each.startsWith('Yes: '))).toHaveLength(1);
  expect(said.filter((each) => each.startsWith('Not '))).toHaveLength(choices.length - 1);

  // The notes of a bar are tapped one after the other, and the last one is taken back.
  await page.getByRole('spinbutton', { name: 'How many questions' }).fill('20');
  await page.getByRole('spinbutton', { name: 'How many questions' }).press('Enter');
  const named = items.filter({ hasText: /^Tap the names of the notes in bar \d+/ }).first();
  const status = named.getByRole('status');
  const letters = named.locator('.asking__choices').getByRole('button');
  await letters.first().click();
  await expect.poll(() => status.textContent()).toMatch(/^[A-G][♭♯]?, and \d+ to go$/);
  await named.getByRole('button', { name: /^Take the last one back/ }).click();
  await expect.poll(() => status.textContent()).toBe('');
  await page.getByRole('spinbutton', { name: 'How many questions' }).fill('3');
  await page.getByRole('spinbutton', { name: 'How many questions' }).press('Enter');

  const asked = () => items.allTextContents();
  const before = await asked();
  await page.getByRole('button', { name: 'Other questions' }).click();
  await expect.poll(asked).not.toEqual(before);

  await page.getByRole('button', { name: 'Handout', exact: true }).click();
  const preview = page.getByRole('region', { name: 'Preview of the handout' });
  await preview.getByRole('img').first().waitFor();
  const parts = page.getByRole('list', { name: 'Parts of the handout' });
  await parts.getByRole('checkbox', { name: 'Questions, with blanks' }).check();
  await parts.getByRole('checkbox', { name: 'Answers to the questions, on a sheet of their own' }).check();
  await page.getByText(/^What would answer the questions stands on the answer sheet instead: /).waitFor();
  const print = async () => {
    const coming = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Download PDF' }).click();
    const file = await (await coming).path();
    const { pages } = await readPdf(new Uint8Array(await readFile(file)));
    return pages.map(({ texts }) => texts.map(({ text }) => text).join(' '));
  };
  const onPage = (await items.locator('p:first-child').allTextContents()).map(
    (text) => /\b(bars? \d+)/.exec(text)?.[1],
  );
  const [student = '', key = '', ...others] = await print();
  // The same questions as on the page, in their order, each about the same bars.
  for (const [index, bars] of onPage.entries())
    expect(student).toMatch(new RegExp(`${index + 1}\\. [^.?]*${bars}\\b`));
  expect(others).toEqual([]);
  expect(student).toContain('Questions');
  expect(student).not.toContain('Answers');
  expect(key).toContain('Answers: Ferry queue, week 3');

  // Left out of the student’s print.
  await parts.getByRole('checkbox', { name: 'Answers to the questions, on a sheet of their own' }).uncheck();
  const [alone = '', ...further] = await print();
  expect(further).toEqual([]);
  expect(alone).toContain('Questions');
  expect(alone).not.toContain('Answers');
  expectClean();
});

test('bars to read at sight stand behind the line, and blank bars ask for a line over its chords', async () => {
  const { page, expectClean } = await openApp({ width: 390, height: 844 });
  await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
  await page.getByText(`Questions about ${NAME}`).click();
  await page.getByRole('button', { name: `Add 4 bars to read at sight behind ${NAME}` }).click();
  await page.getByText(new RegExp(`^4 bars stand behind ${NAME} now\\.`)).waitFor({ timeout: 60_000 });
  await expect
    .poll(() => page.getByRole('textbox', { name: 'Name of piece 2' }).inputValue())
    .toBe(`At sight: ${NAME}`);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect
    .poll(() => page.getByRole('textbox', { name: 'Name of piece 2' }).inputValue())
    .not.toBe(`At sight: ${NAME}`);

  const asks = page.getByRole('combobox', { name: /^What the student’s line keeps to in / });
  await asks.selectOption('root and fifth only');
  await page
    .getByText('Write a line of your own over these chords: root and fifth only.', { exact: true })
    .waitFor();
  const blank = page.getByRole('figure', { name: /^Blank bars, / });
  await expect.poll(() => blank.locator('svg').first().textContent()).toContain('F');
  expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBe(0);
  await asks.selectOption('nothing, a line without chords');
  await page.getByText(/^Write a line of your own over these chords/).waitFor({ state: 'detached' });
  expectClean();
});
