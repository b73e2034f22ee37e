import { afterAll, bench, describe, inject } from 'vitest';
import { launchBrowser } from '../../support/launch';
import { tellFigure } from '../told';

const browser = await launchBrowser();
afterAll(() => browser.close());

/** Makes a PDF of two pages in a page that nothing has been asked of, library and fonts to be fetched and all. */
async function firstPdf(prepared: boolean): Promise<number> {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(inject('site').bench);
  const milliseconds = await page.evaluate(async (prepared) => {
    const { deriveSheets, newLesson, setChartText } = await window.rooms.lesson();
    const { composePiece } = await window.rooms.composing();
    const { buildHandout, handoutPdf, preparePdf } = await window.rooms.handout();
    const fresh = newLesson('bench', 'Bench');
    const id = fresh.pieces[0]?.id ?? '';
    const chart = Array.from({ length: 9 }, () => '| C | Am | Dm | G7 |').join('\n');
    const { lesson } = composePiece(setChartText(fresh, id, chart), id);
    const sheets = deriveSheets(lesson);
    // The designer has drawn its preview, and fetched what a PDF is written with, before anything can be clicked.
    if (prepared) await Promise.all([buildHandout(lesson, sheets), preparePdf()]);
    const start = performance.now();
    const handout = await buildHandout(lesson, sheets);
    await handoutPdf(handout);
    const time = performance.now() - start;
    if (handout.pages.length !== 2) throw new Error(`The handout has ${handout.pages.length} pages`);
    return time;
  }, prepared);
  await context.close();
  return milliseconds;
}

const ROUNDS = 5;

/** In milliseconds, in the page alone. */
const BUDGET = { most: 400 };

for (const [prepared, from] of [
  [false, 'from the Export menu, everything still to be fetched'],
  [true, 'from the designer'],
] as const) {
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) times.push(await firstPdf(prepared));
  tellFigure(`The first PDF of two pages ${from}`, 'ms', BUDGET, times);
}

const once = { iterations: 3, warmupIterations: 0, time: 0, warmupTime: 0 };

describe('a page opened, and its first PDF of two pages', () => {
  bench(
    'from the Export menu, everything still to be fetched',
    async () => void (await firstPdf(false)),
    once,
  );
  bench('from the designer', async () => void (await firstPdf(true)), once);
});
