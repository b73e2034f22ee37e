/** From the tap on Play to the first sound on the practice page: cold, at rest, and after that; on a slow telephone too. */
import type { Page } from 'playwright-core';
import { afterAll, describe, inject } from 'vitest';
import { composePiece } from '../../../src/core/composing';
import { type Lesson, printLesson, sampleLesson, setChartText } from '../../../src/core/lesson';
import { launchBrowser } from '../../support/launch';
import { listenIn } from '../../support/listening-in';
import { tellFigure } from '../told';
import { benchWithin, FEW } from '../within';

const browser = await launchBrowser();
afterAll(() => browser.close());

const { app } = inject('site');

const fileOf = (lesson: Lesson) => ({
  name: 'week-3.lesson.json',
  mimeType: 'application/json',
  buffer: Buffer.from(printLesson(lesson)),
});

const EIGHT_BARS = sampleLesson(0, 'first-sound');

/** As long as a song: 48 bars. */
const LONG = (() => {
  const { id } = EIGHT_BARS.pieces[0] ?? { id: '' };
  const chart = Array.from({ length: 6 }, () => '| F | Dm | Gm | C7 | F | F7 | Bb C | F |').join('\n');
  return composePiece(setChartText(EIGHT_BARS, id, chart), id).lesson;
})();

/** How many pages are tried; `TRIES` names another number. */
const TRIES = Number(process.env.TRIES ?? 5);

/** Milliseconds in which a page at rest has made its sounds ready. */
const REST = 8000;

/** How many times slower than this machine a telephone's main thread is taken for. */
const TELEPHONE = 4;

/** What is louder than this is a sound. */
const AUDIBLE = 1e-4;

/** `tapped` in the page is when Play was pressed, `sounded` when something was heard after that; in milliseconds. */
async function listen(page: Page): Promise<void> {
  // So few that what is heard is a few milliseconds old at most.
  await listenIn(page, 256);
  await page.addInitScript((audible) => {
    const times: { tapped: number; sounded: number | null } = { tapped: 0, sounded: null };
    Object.assign(window, { times });
    window.addEventListener(
      'click',
      (event) => {
        if (!(event.target instanceof Element) || event.target.closest('.play') === null) return;
        times.tapped = event.timeStamp;
        times.sounded = null;
      },
      { capture: true },
    );
    setInterval(() => {
      if (times.sounded !== null || times.tapped === 0) return;
      if (Reflect.get(window, 'loudestNow')() > audible) times.sounded = performance.now();
    }, 1);
  }, AUDIBLE);
}

/** A practice page with a lesson, at the moment its score is there; as a browser has it that was never here. */
async function openPage(lesson: Lesson, slower: number): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 } });
  const page = await context.newPage();
  await listen(page);
  await page.goto(`${app}practice.html`);
  if (slower > 1) {
    const session = await context.newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: slower });
  }
  await page.locator('input[type="file"]').setInputFiles(fileOf(lesson));
  await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
  return page;
}

/** Presses Play, waits for the sound, stops, and tells how long it took, in milliseconds. */
async function tapToSound(page: Page): Promise<number> {
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  const heard = await page.waitForFunction(() => {
    const { tapped, sounded } = Reflect.get(window, 'times');
    return sounded === null ? 0 : Number(sounded - tapped);
  });
  const after = Number(await heard.jsonValue());
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  await page.waitForTimeout(300);
  return after;
}

/** Milliseconds by the clock: as soon as the score is there much of what sounds is still to be fetched. */
const COLD = { most: 900 };
const READY = { most: 200 };

async function tellTimes(what: string, lesson: Lesson, slower = 1): Promise<void> {
  const cold: number[] = [];
  const rested: number[] = [];
  const again: number[] = [];
  for (let turn = 0; turn < TRIES; turn += 1) {
    const hasty = await openPage(lesson, slower);
    cold.push(await tapToSound(hasty));
    await hasty.context().close();
    const page = await openPage(lesson, slower);
    await page.waitForTimeout(REST);
    rested.push(await tapToSound(page));
    again.push(await tapToSound(page));
    await page.context().close();
  }
  const tap = `From the tap to the first sound of ${what}`;
  tellFigure(`${tap}, tapped as soon as the score is there`, 'ms', COLD, cold);
  tellFigure(`${tap}, on a page at rest`, 'ms', READY, rested);
  tellFigure(`${tap}, after that`, 'ms', READY, again);
}

await tellTimes('8 bars', EIGHT_BARS);
await tellTimes('48 bars', LONG);
await tellTimes(`8 bars with a main thread ${TELEPHONE} times slower`, EIGHT_BARS, TELEPHONE);

describe('the practice page', async () => {
  const page = await openPage(EIGHT_BARS, 1);
  const name = 'from the tap to the sound';
  benchWithin({ what: `Again and again ${name}`, name, budget: READY }, () => tapToSound(page), FEW);
});
