import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { afterAll, describe, inject } from 'vitest';
import { launchBrowser } from '../../support/launch';
import { tellFigure } from '../told';
import { benchWithin, FEW } from '../within';

const browser = await launchBrowser();
afterAll(() => browser.close());

const { app } = inject('site');

/** A page nobody has been at before, with the chart to be seen and typed into. */
async function openNew(): Promise<Page> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.goto(app);
  await page.getByRole('textbox', { name: 'Chord chart' }).waitFor();
  return page;
}

/** Every file that a first visit asks for at once, and those it asks for after a moment, gzipped. */
async function sizesOfFirstVisit(): Promise<string> {
  const context = await browser.newContext();
  const page = await context.newPage();
  const lines: string[] = [];
  let total = 0;
  page.on('response', async (response) => {
    const body = await response.body().catch(() => Buffer.alloc(0));
    const size = gzipSync(body).length;
    total += size;
    lines.push(
      `${(size / 1000).toFixed(1).padStart(8)} kB  ${new URL(response.url()).pathname.split('/').at(-1)}`,
    );
  });
  await page.goto(app);
  await page.waitForLoadState('networkidle');
  await page.waitForTimeout(5000);
  await context.close();
  return [...lines, `${(total / 1000).toFixed(1).padStart(8)} kB  in all, fonts included`].join('\n');
}
process.stdout.write(`What a first visit loads, in this order, gzipped:\n${await sizesOfFirstVisit()}\n`);

/** Milliseconds in which a browser that has nothing of the page has painted the chart's field. */
async function firstLook(): Promise<number> {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  const page = await context.newPage();
  await page.addInitScript(() => {
    const watch = new MutationObserver(() => {
      if (document.querySelector('#note-pad textarea') === null) return;
      watch.disconnect();
      // The frame that shows it is painted by the time the next task begins.
      requestAnimationFrame(() => setTimeout(() => Object.assign(window, { seen: performance.now() })));
    });
    watch.observe(document, { subtree: true, childList: true });
  });
  await page.goto(app);
  const seen = await page.waitForFunction(() => Number(Reflect.get(window, 'seen') ?? 0));
  const milliseconds = Number(await seen.jsonValue());
  await context.close();
  return milliseconds;
}

/** Kilobytes (1,000 bytes) of script without which the page is not seen, compressed: what its HTML names. */
async function scriptOfFirstLook(): Promise<number> {
  const html = await (await fetch(app)).text();
  const named = [...html.matchAll(/(?:src|href)="(\.\/[^"]+\.js)"/g)].map(([, path = '']) => path);
  const files = await Promise.all(named.map(async (path) => (await fetch(new URL(path, app))).text()));
  return files.reduce((sum, text) => sum + gzipSync(text).length / 1000, 0);
}

/** In milliseconds. */
const LOOK = { most: 500 };

tellFigure('Script before the chart is seen, compressed', 'kB', { most: 150 }, [await scriptOfFirstLook()]);

describe('a first visit', () => {
  const name = 'until the chart is seen';
  benchWithin({ what: `A first visit ${name}`, name, budget: LOOK }, firstLook, FEW);
});

/** Without the count-in, so that the first bar is the first sound. */
async function readyToPlay(): Promise<Page> {
  const page = await openNew();
  await page.getByRole('figure', { name: 'Score' }).first().locator('svg').first().waitFor();
  await page
    .getByRole('switch', { name: 'Count-in' })
    .or(page.getByRole('checkbox', { name: 'Count-in' }))
    .click();
  await page.waitForTimeout(4000);
  return page;
}

/** Milliseconds from a click on Play until the page says which bar plays. */
async function clickToBar(page: Page): Promise<number> {
  const begin = performance.now();
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await page
    .getByRole('status', { name: 'Playback' })
    .getByText(/Playing bar/)
    .waitFor();
  const milliseconds = performance.now() - begin;
  await page.getByRole('button', { name: 'Stop', exact: true }).click();
  return milliseconds;
}

describe('from a click on Play', async () => {
  const page = await readyToPlay();
  const name = 'until the first bar plays';
  benchWithin(
    { what: `From a click on Play ${name}, the way into the page with it`, name, budget: { most: 200 } },
    () => clickToBar(page),
    FEW,
  );
});

/** Presses the button and waits until the browser has painted what came of it; milliseconds between. */
const takeAndPaint = (page: Page, index: number): Promise<number> =>
  page.evaluate(async (index) => {
    const takes = [...document.querySelectorAll('button')].filter(
      (button) => button.textContent === 'Take it',
    );
    const begin = performance.now();
    takes[index % takes.length]?.click();
    for (let frame = 0; frame < 2; frame += 1) await new Promise((done) => requestAnimationFrame(done));
    return performance.now() - begin;
  }, index);

describe('taking an idea', async () => {
  const page = await openNew();
  await page.getByRole('button', { name: /^Bar 2,/ }).click();
  await page.getByRole('list', { name: 'Ideas for bar 2' }).getByRole('button').first().waitFor();
  let turn = 0;
  const name = 'until the sheet is painted again';
  benchWithin({ what: `Taking an idea ${name}`, name, budget: { most: 50 } }, () => {
    turn += 1;
    return takeAndPaint(page, turn);
  });
});
