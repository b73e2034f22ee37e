import { afterAll, describe, inject } from 'vitest';
import type { LineSheet } from '../../../src/core/lesson';
import { launchBrowser } from '../../support/launch';
import { sheetOf } from '../../support/score-sheets';
import { workedIn } from '../page-work';
import { SCORE_OPTIONS } from '../score-options';
import { tellFigure } from '../told';
import { AT_ONCE, benchWithin } from '../within';

const FOUR =
  'F1/1 A1/1 C2/.5 C2/.5 A1/1 | r/1 D2/.5 D2/.5 A1/1 F1/1 | G1/1 B♭1/1 D2/.5 D2/.5 B♭1/1 | r/1 C2/.5 C2/.5 G1/1 E1/1';

const lineOf = (bars: number, last = FOUR) =>
  sheetOf({
    key: 'F',
    chart: Array(bars / 4)
      .fill('| F | Dm | Gm | C7 |')
      .join('\n'),
    notes: [...Array(bars / 4 - 1).fill(FOUR), last].join(' | '),
  });

const browser = await launchBrowser();
afterAll(() => browser.close());
const page = await browser.newPage({ viewport: { width: 1000, height: 900 } });
await page.goto(inject('site').bench);
await page.evaluate(async () => {
  const score = await window.rooms.score();
  await score.loadScoreFonts();
});

/** The sheet lives in the page, so that a round measures the score and not the way there. */
const inPage = (sheet: LineSheet) => page.evaluateHandle((given) => given, sheet);

/** Milliseconds of the main thread's work for one changed note in 32 bars, until its system stands in the page. */
const CHANGE_BUDGET = { most: 8 };
const WARM_UP = 20;

/** Each version of the line differs in its last bar, and comes once: nothing of it can have been remembered. */
const versions = ['E1', 'F1', 'F♯1', 'G1', 'A1', 'B♭1', 'C2', 'C♯2', 'D2', 'E2'].flatMap((one) =>
  ['F1', 'G1', 'B♭1', 'D2', 'F2', 'G2'].map((other) =>
    lineOf(32, FOUR.replace('G1/1 E1/1', `${other}/1 ${one}/1`)),
  ),
);

async function changeWork(): Promise<readonly number[]> {
  await page.evaluate(
    async ({ versions, options }) => {
      const score = await window.rooms.score();
      const layoutOf = (sheet: LineSheet | undefined) => {
        if (sheet === undefined) throw new Error('There is no such version.');
        return score.layoutScore(sheet, options);
      };
      const first = layoutOf(versions[0]);
      document.body.replaceChildren(...first.systems.map(({ index }) => score.drawSystem(first, index)));
      let shown = first.systems.map(({ fingerprint }) => fingerprint);
      Object.assign(window, {
        change: (version: number) => {
          const layout = layoutOf(versions[version]);
          const changed = layout.systems.filter(({ index, fingerprint }) => shown[index] !== fingerprint);
          for (const { index } of changed) {
            const picture = document.body.children[index];
            if (picture === undefined || !score.redrawSystem(picture, layout, index))
              throw new Error('A system cannot be redrawn.');
          }
          document.body.getBoundingClientRect();
          shown = layout.systems.map(({ fingerprint }) => fingerprint);
          return changed.length;
        },
      });
    },
    { versions, options: SCORE_OPTIONS },
  );
  const worked = await workedIn(page);
  const times: number[] = [];
  for (let version = 1; version < versions.length; version += 1) {
    const before = await worked();
    const redrawn = await page.evaluate((version) => Reflect.get(window, 'change')(version), version);
    if (redrawn !== 1) throw new Error(`One note redraws ${redrawn} systems.`);
    times.push((await worked()) - before);
  }
  return times.slice(WARM_UP);
}

tellFigure('One changed note in 32 bars', 'ms of work', CHANGE_BUDGET, await changeWork());

const worked = await workedIn(page);

/** Milliseconds that the page's main thread works for something. */
async function workFor(something: () => Promise<void>): Promise<number> {
  const before = await worked();
  await something();
  return (await worked()) - before;
}

/** Lays out, draws every system anew and lets the browser place it. */
describe('layout and drawing of the whole score in the browser', async () => {
  for (const bars of [8, 32, 128]) {
    const sheet = await inPage(lineOf(bars));
    let width = 700;
    const drawAnew = () =>
      page.evaluate(
        async ([sheet, options]) => {
          const score = await window.rooms.score();
          const layout = score.layoutScore(sheet, options);
          document.body.replaceChildren(
            ...layout.systems.map(({ index }) => score.drawSystem(layout, index)),
          );
          document.body.getBoundingClientRect();
        },
        [sheet, { ...SCORE_OPTIONS, width }] as const,
      );
    const what = `The score of ${bars} bars laid out and drawn at a new width, work of the main thread`;
    benchWithin({ what, name: `${bars} bars`, budget: AT_ONCE }, () => {
      width += 0.37;
      return workFor(drawAnew);
    });
  }
});

/** Two versions of a line by turns: only the system whose fingerprint changed is drawn. */
describe('redrawing after one bar changed, in the browser', async () => {
  for (const bars of [8, 32, 128]) {
    const sheets = [
      await inPage(lineOf(bars)),
      await inPage(lineOf(bars, FOUR.replace('E1/1', 'G1/1'))),
    ] as const;
    const thereAndBack = () =>
      page.evaluate(
        async ({ sheets, options }) => {
          const score = await window.rooms.score();
          let shown: readonly string[] = [];
          for (const sheet of sheets) {
            const layout = score.layoutScore(sheet, options);
            layout.systems.forEach(({ index, fingerprint }) => {
              if (shown[index] === fingerprint) return;
              const drawn = score.drawSystem(layout, index);
              const old = document.body.children[index];
              if (old) old.replaceWith(drawn);
              else document.body.append(drawn);
            });
            shown = layout.systems.map(({ fingerprint }) => fingerprint);
          }
          document.body.getBoundingClientRect();
        },
        { sheets, options: SCORE_OPTIONS },
      );
    const name = `${bars} bars, there and back`;
    const what = `The score redrawn after one bar changed, ${name}, work of the main thread`;
    benchWithin({ what, name, budget: AT_ONCE }, () => workFor(thereAndBack));
  }
});
