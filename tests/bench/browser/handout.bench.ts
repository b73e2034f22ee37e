/** From a click to the PDF of two pages: from the Export menu of a page at rest, and from the designer. */
import type { Page } from 'playwright-core';
import { afterAll, describe, inject } from 'vitest';
import { composePiece } from '../../../src/core/composing';
import { newLesson, printLesson, setChartText } from '../../../src/core/lesson';
import { launchBrowser } from '../../support/launch';
import { benchWithin } from '../within';

const browser = await launchBrowser();
afterAll(() => browser.close());

/** The chart of two pages. */
const CHART = Array.from({ length: 9 }, () => '| C | Am | Dm | G7 |').join('\n');

const FILE = (() => {
  const fresh = newLesson('bench', 'Bench');
  const id = fresh.pieces[0]?.id ?? '';
  const { lesson } = composePiece(setChartText(fresh, id, CHART), id);
  return {
    name: 'bench.lesson.json',
    mimeType: 'application/json',
    buffer: Buffer.from(printLesson(lesson)),
  };
})();

/** Milliseconds in which a page that was opened comes to rest. */
const REST = 3000;

/** Keeps in the page when the first PDF was handed over to be saved, and the file. */
async function watchForPdf(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const addressOf = URL.createObjectURL.bind(URL);
    URL.createObjectURL = (made) => {
      if (made instanceof Blob && made.type === 'application/pdf')
        Object.assign(window, { pdf: made, madeAt: performance.now() });
      return addressOf(made);
    };
  });
}

/**
 * Opens a lesson in a page that was never here, clicks on *Export*, and on its entry in the next frame: nobody is
 * quicker, and all that a PDF takes, fonts and all, is fetched after the first of the two clicks.
 * @returns milliseconds from the first click to the file
 */
async function fromTheMenu(): Promise<number> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await watchForPdf(page);
  await page.goto(inject('site').app);
  await page.locator('input[type="file"]').first().setInputFiles(FILE);
  await page.getByRole('textbox', { name: 'Chart' }).getByText('| C | Am | Dm | G7 |').first().waitFor();
  await page.getByRole('figure', { name: 'Score' }).first().locator('svg').first().waitFor();
  await page.waitForTimeout(REST);
  const { milliseconds, pages } = await page.evaluate(async () => {
    const nextFrame = () => new Promise((resolve) => requestAnimationFrame(resolve));
    const click = (words: string): boolean => {
      const button = [...document.querySelectorAll<HTMLElement>('button, [role="menuitem"]')].find(
        ({ textContent }) => textContent?.trim().startsWith(words),
      );
      button?.click();
      return button !== undefined;
    };
    const begin = performance.now();
    click('Export');
    do await nextFrame();
    while (!click('Handout (PDF)'));
    while (!('madeAt' in window)) await nextFrame();
    const file = await (Reflect.get(window, 'pdf') as Blob).text();
    return {
      milliseconds: Number(window.madeAt) - begin,
      pages: file.match(/\/Type \/Page\b/g)?.length ?? 0,
    };
  });
  await context.close();
  if (pages !== 2) throw new Error(`The handout has ${pages} pages`);
  return milliseconds;
}

/** The designer has drawn its preview, and fetched what a PDF is written with, before anything can be clicked. */
async function fromTheDesigner(): Promise<number> {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(inject('site').bench);
  const milliseconds = await page.evaluate(async (chart) => {
    const { deriveSheets, newLesson, setChartText } = await window.rooms.lesson();
    const { composePiece } = await window.rooms.composing();
    const { buildHandout, handoutPdf, preparePdf } = await window.rooms.handout();
    const fresh = newLesson('bench', 'Bench');
    const id = fresh.pieces[0]?.id ?? '';
    const { lesson } = composePiece(setChartText(fresh, id, chart), id);
    const sheets = deriveSheets(lesson);
    await Promise.all([buildHandout(lesson, sheets), preparePdf()]);
    const start = performance.now();
    const handout = await buildHandout(lesson, sheets);
    await handoutPdf(handout);
    const time = performance.now() - start;
    if (handout.pages.length !== 2) throw new Error(`The handout has ${handout.pages.length} pages`);
    return time;
  }, CHART);
  await context.close();
  return milliseconds;
}

/** In milliseconds, in the page alone. */
const BUDGET = { most: 400 };

const rounds = { iterations: 5, warmupIterations: 0, time: 0, warmupTime: 0 };

describe('the first PDF of two pages', () => {
  for (const [name, firstPdf] of [
    ['from the Export menu, everything still to be fetched', fromTheMenu],
    ['from the designer', fromTheDesigner],
  ] as const)
    benchWithin({ what: `The first PDF of two pages ${name}`, name, budget: BUDGET }, firstPdf, rounds);
});
