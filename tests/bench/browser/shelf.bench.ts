/** Opening the shelf with 5,000 lessons on the device, from the choice in the menu until its rows are painted. */
import type { Locator, Page } from 'playwright-core';
import { afterAll, bench, describe, inject } from 'vitest';
import { fillShelf } from '../../support/full-shelf';
import { launchBrowser } from '../../support/launch';
import { tellFigure } from '../told';

const LESSONS = 5000;
const RUNS = 9;

/** For each step beside what is measured, in milliseconds: a busy machine is waited for, and measured all the same. */
const PATIENCE = 300_000;

const browser = await launchBrowser();
afterAll(() => browser.close());

/** Milliseconds from a click until something of a role is painted that begins with some words. */
const fromClick = (clicked: Locator, role: string, words: string): Promise<number> =>
  clicked.evaluate(
    (element: HTMLElement, awaited) =>
      new Promise<number>((resolve) => {
        const begun = performance.now();
        element.click();
        const look = () => {
          const found = [...document.querySelectorAll(`[role="${awaited.role}"]`)];
          if (!found.some((each) => each.textContent.startsWith(awaited.words))) requestAnimationFrame(look);
          else requestAnimationFrame(() => resolve(performance.now() - begun));
        };
        look();
      }),
    { role, words },
  );

/** Opens the menu, which lists the lessons used last, and then the shelf: milliseconds until each is painted. */
async function opening(page: Page): Promise<{ readonly menu: number; readonly shelf: number }> {
  const latest = `Week ${LESSONS}`;
  const menu = await fromClick(
    page.getByRole('button', { name: 'Lessons', exact: true }),
    'menuitem',
    latest,
  );
  // What the menu still does is not the shelf's.
  await page.evaluate(() => new Promise((rest) => requestIdleCallback(rest)));
  const shelf = await fromClick(page.getByRole('menuitem', { name: 'The whole shelf' }), 'option', latest);
  await page.keyboard.press('Escape');
  return { menu, shelf };
}

/** In milliseconds, by the clock. */
const BUDGET = { most: 500 };

describe('the shelf', () => {
  bench(
    `opens with ${LESSONS} lessons`,
    async () => {
      const page = await browser.newPage();
      page.setDefaultTimeout(PATIENCE);
      await page.goto(inject('site').app);
      await page.getByRole('textbox', { name: 'Lesson title' }).fill('Mine');
      await page.getByText(/^saved/).waitFor();
      await fillShelf(page, LESSONS);
      // The first opening fetches the shelf's own part of the app.
      const first = await opening(page);
      const times = [];
      while (times.length < RUNS) times.push(await opening(page));
      const tell = (what: string, milliseconds: readonly number[]): void =>
        tellFigure(`With ${LESSONS} lessons on the device, ${what}`, 'ms', BUDGET, milliseconds);
      tell('the shelf opened for the first time', [first.shelf]);
      tell(
        'the shelf opened',
        times.map(({ shelf }) => shelf),
      );
      tell(
        'the menu before it',
        times.map(({ menu }) => menu),
      );
      await page.close();
    },
    { iterations: 1, time: 0, warmupIterations: 0, warmupTime: 0 },
  );
});
