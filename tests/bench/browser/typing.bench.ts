/**
 * Typing in long charts: 128 and 512 bars in sections with repeats, slash chords and a composed line, and 1,000 bars in
 * 300 sections, the lesson check in view. Aims: a key press is painted within 16 ms, in the longer charts within 50 ms,
 * and no task keeps the browser from a frame for more than 50 ms (a “long task”, W3C Long Tasks API). Tasks are timed by
 * the processor: by the clock, a task is as long as whatever else runs meanwhile lets it be.
 */
import type { CDPSession, Page } from 'playwright-core';
import { afterAll, bench, describe, inject } from 'vitest';
import { composePiece } from '../../../src/core/composing';
import { writeLessonLink } from '../../../src/core/exchange';
import { newLesson, setChartText } from '../../../src/core/lesson';
import { launchBrowser } from '../../support/launch';
import { tellFigure } from '../told';

/** Time between two key presses of someone who types with ease. */
const KEY_MS = 120;
/** A moment of thought between two chords: what waits for a rest in typing begins in it. */
const THOUGHT_MS = 700;
/** After this all that a change brings about has happened: saving, the check with its repairs, the printed pages. */
const REST_MS = 4000;
const RUNS = 2;
/** Key presses that are timed, and those before them. */
const PRESSES = 20;
const WARM_UP = 4;

const PARTS = [
  '| F | Dm7 | Gm7 | C7 |\n| F/A | Bb | Bdim | C7 |',
  '|: Bb | F/A | Gm7 | C7 :| x2\n| Dm | Am | Bb C7 | F |',
  '| D7 | % | Gm | G7 |\n| C7 / Bb/C / | Am7 D7 | Gm7 C7 | F |',
  '| F | F7 | Bb | Bbm |\n| F/C | D7/F# | Gm7 C7 | F |',
];

/** Short parts, three of three and four bars to ten. */
const SHORT_PARTS = ['| F | Dm7 | Gm7 |', '| Bb | F/A | C7 |', '| Am7 D7 | Gm7 | C7 | F |'];

const chartOf = (parts: readonly string[], sections: number): string =>
  Array.from({ length: sections }, (_, part) => `Part ${part + 1}:\n${parts[part % parts.length]}`).join(
    '\n',
  );

interface LongChart {
  readonly name: string;
  readonly text: string;
  readonly sections: number;
  /** Milliseconds within which a key press is to be painted. */
  readonly aim: number;
}

const USUAL: LongChart = { name: '128 bars', text: chartOf(PARTS, 16), sections: 16, aim: 16 };

const CHARTS: readonly LongChart[] = [
  USUAL,
  { name: '512 bars', text: chartOf(PARTS, 64), sections: 64, aim: 50 },
  { name: '1,000 bars in 300 sections', text: chartOf(SHORT_PARTS, 300), sections: 300, aim: 50 },
];

function lessonLink(page: string, chart: string): string {
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

declare global {
  interface Window {
    /** Milliseconds from the last press, as the browser got it, until it was painted; null while it is on its way. */
    pressPainted?: number | null;
  }
}

/** A long chart on a page of its own, at rest. */
async function openChart({ text }: LongChart): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.goto(lessonLink(app, text));
  const patient = { timeout: 120_000 };
  await page.getByRole('figure', { name: 'Score' }).first().locator('svg').first().waitFor(patient);
  await page.getByRole('list', { name: 'Lesson check' }).waitFor(patient);
  await page.waitForTimeout(2 * REST_MS);
  return page;
}

/**
 * Begins to note when what is pressed is painted: by the first task behind its frame. After a press the browser lets
 * posted messages wait until a later frame is seen, which is no part of its painting; what the user waits for it does not.
 */
const watch = (page: Page): Promise<void> =>
  page.evaluate(() => {
    window.addEventListener(
      'keydown',
      ({ timeStamp }) => {
        window.pressPainted = null;
        const tell = (): void => {
          window.pressPainted = performance.now() - timeStamp;
        };
        requestAnimationFrame(() => {
          Reflect.get(window, 'scheduler').postTask(tell, { priority: 'user-blocking' });
        });
      },
      { capture: true },
    );
  });

interface TraceEvent {
  readonly name: string;
  readonly pid: number;
  readonly tid: number;
  /** The thread's own time in microseconds. */
  readonly tdur?: number;
  readonly args?: { readonly name?: string };
}

/** The longest task of the page's main thread while something is done, in milliseconds of the processor's time. */
async function longestTask(page: Page, during: () => Promise<void>): Promise<number> {
  await browser.startTracing(page, { categories: ['toplevel'] });
  await during();
  const trace: { readonly traceEvents: readonly TraceEvent[] } = JSON.parse(
    (await browser.stopTracing()).toString(),
  );
  const thread = ({ pid, tid }: TraceEvent) => `${pid} ${tid}`;
  const main = new Set(
    trace.traceEvents.flatMap((event) =>
      event.name === 'thread_name' && event.args?.name === 'CrRendererMain' ? [thread(event)] : [],
    ),
  );
  const tasks = trace.traceEvents.flatMap((event) =>
    event.name.endsWith('RunTask') && main.has(thread(event)) ? [(event.tdur ?? 0) / 1000] : [],
  );
  if (tasks.length === 0) throw new Error('The trace holds no task of the page.');
  return tasks.reduce((most, task) => Math.max(most, task), 0);
}

/** Puts the caret behind the first line of a part. */
const goTo = (page: Page, part: number): Promise<void> =>
  page.getByRole('textbox', { name: 'Chord chart' }).evaluate((field, heading) => {
    if (!(field instanceof HTMLTextAreaElement)) throw new Error('The chart is no text field.');
    const firstLine = field.value.indexOf('\n', field.value.indexOf(heading)) + 1;
    const end = field.value.indexOf('\n', firstLine);
    field.focus();
    field.setSelectionRange(end, end);
  }, `Part ${part}:`);

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

/** The longest tasks of a round of typing and of the rest after it, by the round's name. */
async function typeRounds(chart: LongChart): Promise<ReadonlyMap<string, number>> {
  const page = await openChart(chart);
  const found = new Map<string, number>();
  for (const { name, part, keys } of ROUNDS) {
    // The rounds' places are those of sixteen sections.
    await goTo(page, Math.ceil((part * chart.sections) / 16));
    await page.waitForTimeout(KEY_MS);
    found.set(name, await longestTask(page, () => press(page, keys)));
    found.set(`${name}, the rest after it`, await longestTask(page, () => page.waitForTimeout(REST_MS)));
  }
  await page.context().close();
  return found;
}

/** Milliseconds that the page's main thread has worked so far; what other programs take is not counted. */
async function workedMs(session: CDPSession): Promise<number> {
  const { metrics } = await session.send('Performance.getMetrics');
  return (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? 0) * 1000;
}

interface Presses {
  /** By the clock, from a press until it was painted. */
  readonly painted: readonly number[];
  /** What the main thread worked until then. */
  readonly work: readonly number[];
}

/** Presses keys in the middle of a chart, each when the one before has come to rest. */
async function timePresses(chart: LongChart): Promise<Presses> {
  const page = await openChart(chart);
  await watch(page);
  await goTo(page, chart.sections / 2);
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  const painted: number[] = [];
  const work: number[] = [];
  for (let turn = 0; turn < WARM_UP + PRESSES; turn += 1) {
    const begun = await workedMs(session);
    const key = turn % 2 === 0 ? 'Backspace' : 'm';
    await page.keyboard.down(key);
    const time = await page.waitForFunction(() => window.pressPainted ?? false, null, { polling: 20 });
    const worked = (await workedMs(session)) - begun;
    if (turn >= WARM_UP) {
      painted.push(Number(await time.jsonValue()));
      work.push(worked);
    }
    // A finger leaves the key later than its sign is there.
    await page.keyboard.up(key);
    await page.waitForTimeout(THOUGHT_MS);
  }
  await page.context().close();
  return { painted, work };
}

async function tellAll(): Promise<void> {
  for (const chart of CHARTS) {
    const { painted, work } = await timePresses(chart);
    tellFigure(`${chart.name}: a key press until it is painted`, 'ms', { most: chart.aim }, painted);
    tellFigure(`${chart.name}: work of the main thread for it`, 'ms', { most: chart.aim }, work);
    const runs: ReadonlyMap<string, number>[] = [];
    for (let run = 0; run < RUNS; run += 1) runs.push(await typeRounds(chart));
    for (const name of runs[0]?.keys() ?? []) {
      const longest = runs.flatMap((run) => run.get(name) ?? []);
      tellFigure(`${chart.name}: longest task, ${name}`, 'ms', { most: 50 }, longest);
    }
  }
}
await tellAll();

describe('a key press in a chart of 128 bars', async () => {
  const page = await openChart(USUAL);
  await goTo(page, 8);
  let turn = 0;
  bench(
    'until the next frame is painted, with the way there and back',
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
