import type { Page } from 'playwright-core';
import { afterAll, describe, inject } from 'vitest';
import type { Player, PlayRequest } from '../../../src/sound';
import { sheetOf } from '../../performance/sheets';
import { SKA_LINE, skaTune } from '../../sound/tunes';
import { launchBrowser } from '../../support/launch';
import { tellFigure } from '../told';
import { benchWithin, FEW } from '../within';

const browser = await launchBrowser();
afterAll(() => browser.close());

const site = inject('site');

/** Seconds of a processor that each kind of the browser's processes has used. */
async function processorTime(): Promise<ReadonlyMap<string, number>> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  await session.detach();
  const times = new Map<string, number>();
  for (const { type, cpuTime } of processInfo) times.set(type, (times.get(type) ?? 0) + cpuTime);
  return times;
}

/** Seconds of a round in which the processes are watched, and how many rounds. */
const WATCHED = 8;
const ROUNDS = 3;

/** Tells the share of one processor that the browser takes, in percent, and of which of its processes it is. */
async function tellShare(what: string, most: number, page: Page): Promise<void> {
  const totals: number[] = [];
  const byKind = new Map<string, number>();
  for (let round = 0; round < ROUNDS; round += 1) {
    const before = await processorTime();
    await page.waitForTimeout(WATCHED * 1000);
    const rows = [...(await processorTime())].map(
      ([kind, time]) => [kind, ((time - (before.get(kind) ?? 0)) / WATCHED) * 100] as const,
    );
    totals.push(rows.reduce((sum, [, share]) => sum + share, 0));
    for (const [kind, share] of rows) byKind.set(kind, (byKind.get(kind) ?? 0) + share / ROUNDS);
  }
  const kinds = [...byKind].map(([kind, share]) => `${kind} ${share.toFixed(1)}`).join(', ');
  tellFigure(`The share of one processor, ${what} (${kinds})`, '%', { most }, totals);
}

/** The writing page at rest, and playing with everyone in a loop while the playhead moves. */
async function tellShares(): Promise<void> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.goto(site.app);
  await page.getByRole('figure', { name: 'Score' }).first().locator('svg').first().waitFor();
  await page.waitForTimeout(6000);
  await tellShare('the writing page at rest', 1, page);
  await page.getByRole('switch', { name: 'Loop' }).click();
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await page
    .getByRole('status', { name: 'Playback' })
    .getByText(/Playing bar/)
    .waitFor();
  await page.waitForTimeout(2000);
  await tellShare('the writing page playing in a loop', 30, page);
  await context.close();
}
await tellShares();

/** Opens a page without the app; `soundAfterPlay` in it plays and tells after how many milliseconds it is heard. */
async function openSilent(): Promise<Page> {
  const context = await browser.newContext();
  const page = await context.newPage();
  await page.goto(site.bench);
  await page.evaluate(() => {
    let onSound = (): void => {};
    window.listen(({ left }) => {
      if (left?.some((sample) => Math.abs(sample) > 1e-5) === true) onSound();
    });
    let player: Player | null = null;
    const soundAfterPlay = async (request: PlayRequest): Promise<number> => {
      const begin = performance.now();
      player ??= (await window.rooms.sound()).createPlayer();
      const sounded = new Promise<number>((resolve) => {
        onSound = () => resolve(performance.now() - begin);
      });
      await player.play(request);
      const after = await sounded;
      player.stop();
      await new Promise((resolve) => setTimeout(resolve, 200));
      return after;
    };
    Object.assign(window, { soundAfterPlay });
  });
  return page;
}

const REQUEST: PlayRequest = {
  steps: [{ performance: skaTune({ countIn: 0 }), rounds: 'endless' }],
  mix: { bass: true, drums: true, chops: true, organ: true, click: false },
};

const soundAfterPlay = (page: Page): Promise<number> =>
  page.evaluate((request): Promise<number> => Reflect.get(window, 'soundAfterPlay')(request), REQUEST);

/** In milliseconds; 60 of them are a lead that the player takes. */
const BUDGET = { most: 200 };

/** The very first sound of a page (code, worker, instruments and stems all come after the click), and the next ones. */
async function tellTimesToSound(): Promise<void> {
  const first: number[] = [];
  const later: number[] = [];
  for (let turn = 0; turn < 5; turn += 1) {
    const page = await openSilent();
    first.push(await soundAfterPlay(page));
    later.push(await soundAfterPlay(page));
    await page.context().close();
  }
  tellFigure('From the click to the first sound, with nothing fetched before', 'ms', BUDGET, first);
  tellFigure('From the click to the sound after that', 'ms', BUDGET, later);
}
await tellTimesToSound();

/** Beats a minute before a change, and a beat of it in milliseconds: what a change is to be heard within. */
const TEMPO = 120;
const A_BEAT = { most: 60_000 / TEMPO };

/**
 * From the wish for another tempo until it is heard, while a tune of so many bars plays: its performance is made, sent,
 * placed and taken over. It is asked for at any place in the beat.
 */
async function tellTempoChanges(bars: number): Promise<void> {
  const page = await openSilent();
  const sheet = sheetOf({
    chart: Array.from({ length: bars / 4 }, () => '| F | Dm | Gm | C7 |').join('\n'),
    feel: 'early-ska',
    bars: Array.from({ length: bars }, (_, bar) => SKA_LINE[bar % 4] ?? ''),
  });
  const times = await page.evaluate(
    async ({ sheet, mix, tempo }) => {
      const { buildPerformance } = await window.rooms.performance();
      const { bpm } = await window.rooms.base();
      const player = (await window.rooms.sound()).createPlayer();
      const wait = (time: number) => new Promise((resolve) => setTimeout(resolve, time));
      const made = (at: number) =>
        buildPerformance(sheet, {
          tempo: bpm(at),
          countIn: 0,
          passage: null,
          humaniseSeed: 1,
          drumSeed: 1,
        });
      const result = await player.play({ steps: [{ performance: made(tempo), rounds: 'endless' }], mix });
      if (!result.ok) throw new Error(result.problem);
      const times: { all: number; change: number }[] = [];
      for (let round = 0; round < 10; round += 1) {
        await wait(3000 + 53 * round);
        const begin = performance.now();
        const next = made(tempo + (round % 2 === 0 ? 0.01 : 0));
        const built = performance.now();
        await player.change([{ performance: next, rounds: 'endless' }]);
        while (player.position()?.performance !== next) await wait(4);
        const end = performance.now();
        times.push({ all: end - begin, change: end - built });
      }
      player.stop();
      return times;
    },
    { sheet, mix: REQUEST.mix, tempo: TEMPO },
  );
  await page.context().close();
  const what = `A change of the tempo at ${bars} bars until it is heard`;
  tellFigure(
    `${what}, its performance built anew before`,
    'ms',
    A_BEAT,
    times.map(({ all }) => all),
  );
  tellFigure(
    `${what}, from the performance on`,
    'ms',
    A_BEAT,
    times.map(({ change }) => change),
  );
}
for (const bars of [8, 64, 512]) await tellTempoChanges(bars);

describe('the sound of a page', async () => {
  const page = await openSilent();
  const name = 'from the call to the sound';
  benchWithin({ what: `Again and again ${name}`, name, budget: BUDGET }, () => soundAfterPlay(page), FEW);
});
