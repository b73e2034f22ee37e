/**
 * Typing in a long chart: 128 bars in sections with repeats, slash chords and a composed line, the lesson check in
 * view. Aim: no task that keeps the browser from a frame for more than 50 ms (a “long task”, W3C Long Tasks API).
 */
import type { Page } from 'playwright-core';
import { afterAll, bench, describe, inject } from 'vitest';
import { composePiece } from '../../../src/core/composing';
import { writeLessonLink } from '../../../src/core/exchange';
import { newLesson, setChartText } from '../../../src/core/lesson';
import { launchBrowser } from '../../support/launch';

/** Time between two key presses of someone who types with ease. */
const KEY_MS = 120;
/** A moment of thought between two chords: what waits for a rest in typing begins in it. */
const THOUGHT_MS = 700;
/** After this all that a change brings about has happened: saving, the check with its repairs, the printed pages. */
const REST_MS = 4000;
const RUNS = 3;

const PARTS = [
  '| F | Dm7 | Gm7 | C7 |\n| F/A | Bb | Bdim | C7 |',
  '|: Bb | F/A | Gm7 | C7 :| x2\n| Dm | Am | Bb C7 | F |',
  '| D7 | % | Gm | G7 |\n| C7 / Bb/C / | Am7 D7 | Gm7 C7 | F |',
  '| F | F7 | Bb | Bbm |\n| F/C | D7/F# | Gm7 C7 | F |',
];

const chart = Array.from(
  { length: 16 },
  (_, part) => `Part ${String.fromCharCode(65 + part)}:\n${PARTS[part % PARTS.length]}`,
).join('\n');

function lessonLink(page: string): string {
  const lesson = newLesson('typing', 'Long chart');
  const id = lesson.pieces[0]?.id ?? '';
  return writeLessonLink(composePiece(setChartText(lesson, id, chart), id).lesson, page);
}

/** Where a round of typing begins (right after this text's nth occurrence) and the keys, ¶ a moment of thought. */
const ROUNDS = [
  { name: 'in front', part: 1, keys: [' ', 'D', 'm', '7', ' ', '|', '¶', ' ', 'G', '7', ' ', '|'] },
  {
    name: 'in the middle',
    part: 8,
    keys: [' ', 'E', 'b', '¶', 'm', 'a', 'j', '7', ' ', '|', ',', 'Backspace'],
  },
  { name: 'deleting in the middle', part: 9, keys: Array<string>(12).fill('Backspace') },
  { name: 'a new section', part: 12, keys: ['Enter', ...'Bridge:', 'Enter', '|', ' ', 'F', '¶', ' ', '|'] },
] as const;

const browser = await launchBrowser();
afterAll(() => browser.close());
const { app } = inject('site');

interface Blocks {
  /** Durations of tasks over 50 ms. */
  readonly tasks: number[];
  /** From one frame to the next, a whole round. */
  readonly frames: number[];
}

declare global {
  interface Window {
    blocks?: Blocks;
  }
}

/** The long chart on a page of its own, at rest. */
async function openLongChart(): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.goto(lessonLink(app));
  await page.getByRole('figure', { name: 'Score' }).first().locator('svg').first().waitFor();
  await page.getByRole('list', { name: 'Lesson check' }).waitFor();
  await page.waitForTimeout(2 * REST_MS);
  return page;
}

/** Begins to note how long the page is kept from answering. */
const watch = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const blocks: Blocks = { tasks: [], frames: [] };
    window.blocks = blocks;
    new PerformanceObserver((list) => {
      blocks.tasks.push(...list.getEntries().map(({ duration }) => duration));
    }).observe({ type: 'longtask' });
    let before = performance.now();
    const look = () => {
      const now = performance.now();
      blocks.frames.push(now - before);
      before = now;
      requestAnimationFrame(look);
    };
    requestAnimationFrame(look);
  });

/** What was noted since the last look. */
const takeBlocks = (page: Page): Promise<Blocks> =>
  page.evaluate(() => {
    const { tasks, frames } = window.blocks ?? { tasks: [], frames: [] };
    return { tasks: tasks.splice(0), frames: frames.splice(0) };
  });

/** Puts the caret behind the first line of a part. */
const goTo = (page: Page, part: number): Promise<void> =>
  page.getByRole('textbox', { name: 'Chord chart' }).evaluate(
    (field, heading) => {
      if (!(field instanceof HTMLTextAreaElement)) throw new Error('The chart is no text field.');
      const firstLine = field.value.indexOf('\n', field.value.indexOf(heading)) + 1;
      const end = field.value.indexOf('\n', firstLine);
      field.focus();
      field.setSelectionRange(end, end);
    },
    `Part ${String.fromCharCode(64 + part)}:`,
  );

async function press(page: Page, keys: readonly string[]): Promise<void> {
  for (const key of keys) {
    if (key === '¶') {
      await page.waitForTimeout(THOUGHT_MS);
      continue;
    }
    await page.keyboard.press(key);
    await page.waitForTimeout(KEY_MS);
  }
}

const median = (values: readonly number[]): number =>
  [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)] ?? 0;

interface Figures {
  readonly longestTask: number;
  readonly longestFrame: number;
  readonly frame95: number;
  readonly over50: number;
}

function figuresOf({ tasks, frames }: Blocks): Figures {
  const sorted = [...frames].sort((one, other) => one - other);
  return {
    longestTask: Math.max(0, ...tasks),
    longestFrame: sorted.at(-1) ?? 0,
    frame95: sorted[Math.floor(sorted.length * 0.95)] ?? 0,
    over50: tasks.length,
  };
}

const inWords = ({ longestTask, longestFrame, frame95, over50 }: Figures): string =>
  [
    longestTask === 0
      ? 'no task over 50 ms'
      : `${over50} tasks over 50 ms, the longest ${longestTask.toFixed(0)} ms`,
    `longest frame ${longestFrame.toFixed(0)} ms`,
    `95 % of frames within ${frame95.toFixed(0)} ms`,
  ].join('; ');

async function measure(): Promise<ReadonlyMap<string, Figures>> {
  const page = await openLongChart();
  await watch(page);
  const found = new Map<string, Figures>();
  for (const { name, part, keys } of ROUNDS) {
    await goTo(page, part);
    await page.waitForTimeout(KEY_MS);
    await takeBlocks(page);
    await press(page, keys);
    found.set(name, figuresOf(await takeBlocks(page)));
    await page.waitForTimeout(REST_MS);
    found.set(`${name}, the rest after it`, figuresOf(await takeBlocks(page)));
  }
  await page.context().close();
  return found;
}

async function report(): Promise<string> {
  const runs: ReadonlyMap<string, Figures>[] = [];
  for (let run = 0; run < RUNS; run += 1) runs.push(await measure());
  const names = [...(runs[0]?.keys() ?? [])];
  return names
    .map((name) => {
      const all = runs.flatMap((run) => run.get(name) ?? []);
      const of = (figure: keyof Figures) => median(all.map((each) => each[figure]));
      return `  ${name}: ${inWords({
        longestTask: of('longestTask'),
        longestFrame: of('longestFrame'),
        frame95: of('frame95'),
        over50: of('over50'),
      })}`;
    })
    .join('\n');
}
process.stdout.write(`Typing in a chart of 128 bars, medians of ${RUNS} runs:\n${await report()}\n`);

describe('a key press in a chart of 128 bars', async () => {
  const page = await openLongChart();
  await goTo(page, 8);
  let turn = 0;
  bench(
    'until what is typed is painted',
    async () => {
      turn += 1;
      await page.keyboard.press(turn % 2 === 0 ? 'Backspace' : 'm');
      await page.evaluate(
        () => new Promise((done) => requestAnimationFrame(() => setTimeout(() => done(null)))),
      );
    },
    { iterations: 20, warmupIterations: 2, time: 0, warmupTime: 0 },
  );
});
