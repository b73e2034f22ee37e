import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { newLesson, printLesson, setChartText } from '../../src/core/lesson';
import { openApp } from '../support/browser';

const SECTIONS = 1000;

/** A lesson whose chart has a thousand sections. */
function longLesson(): string {
  const lesson = newLesson('long', 'A thousand sections');
  const chart = Array.from({ length: SECTIONS }, (_, index) => `S${index}:\n| ${'CFGA'[index % 4]} |`);
  return printLesson(setChartText(lesson, lesson.pieces[0]?.id ?? '', chart.join('\n')));
}

declare global {
  interface Window {
    /** Turns of the page's thread while the score was in the making. */
    turns?: number;
  }
}

/** Counts the turns that other work gets while a score on the page is in the making. */
const countTurns = (page: Page): Promise<void> =>
  page.evaluate(() => {
    window.turns = 0;
    const take = () => {
      if (document.querySelector('figure.score[aria-busy="true"]') !== null)
        window.turns = (window.turns ?? 0) + 1;
      setTimeout(take);
    };
    take();
  });

const turns = (page: Page): Promise<number> => page.evaluate(() => window.turns ?? 0);

test('the page answers while a thousand sections are laid out on the sheet and on paper', async () => {
  const { page, expectClean } = await openApp();
  await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
  await countTurns(page);
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open', exact: true }).click();
  await (await chooser).setFiles({
    name: 'long.lesson.json',
    mimeType: 'application/json',
    buffer: Buffer.from(longLesson()),
  });
  await page.getByRole('button', { name: `Bar ${SECTIONS}, A`, exact: true }).waitFor({ state: 'attached' });
  const chart = page.getByRole('textbox', { name: 'Chord chart' });
  await chart.evaluate((field) => {
    if (!(field instanceof HTMLTextAreaElement)) throw new Error('no field of text');
    field.focus();
    field.setSelectionRange(field.value.length - 3, field.value.length - 2);
  });
  await page.keyboard.press('D');
  await page.getByRole('button', { name: `Bar ${SECTIONS}, D`, exact: true }).waitFor({ state: 'attached' });
  // Where it is laid out at once, it is never seen in the making.
  expect(await turns(page)).toBeGreaterThan(1);

  await page.getByRole('button', { name: 'Handout', exact: true }).click();
  const preview = page.getByRole('region', { name: 'Preview of the handout' });
  await preview.waitFor();
  await preview.getByRole('img', { name: /^Page 1 of/ }).waitFor();
  expectClean();
});
