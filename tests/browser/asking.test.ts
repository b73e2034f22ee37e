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
  const first = items.first();
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
  const [student = '', key = '', ...others] = await print();
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
