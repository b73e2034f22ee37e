import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openApp } from '../support/browser';

const BEHIND = /\/behind-[^/]*\.js/;

const chart = (page: Page) => page.getByRole('textbox', { name: 'Chord chart' });

test('what is typed before the checker is there is held against it, and saved as ever', async () => {
  let arrive = (): void => {};
  const held = new Promise<void>((resolve) => {
    arrive = resolve;
  });
  const { page } = await openApp({
    prepare: async (page) => {
      await page.route(BEHIND, async (route) => {
        await held;
        await route.continue();
      });
    },
  });
  await chart(page).waitFor();
  const before = await chart(page).inputValue();
  await chart(page).fill(`| C | F |${' '.repeat(20_000)}`);
  await expect.poll(() => chart(page).inputValue()).not.toBe(before);
  arrive();
  await page.getByText(/A chart has at most .* The lesson is as it was\./).waitFor();
  await expect.poll(() => chart(page).inputValue()).toBe(before);
  await chart(page).fill('| C | F | G7 | C |');
  await page.getByText('saved on this device', { exact: true }).waitFor();
  await page.reload();
  await expect.poll(() => chart(page).inputValue()).toBe('| C | F | G7 | C |');
});

test('where what saves cannot be fetched, that is said, and what was typed goes into a file', async () => {
  const { page } = await openApp({
    prepare: async (page) => {
      await page.route(BEHIND, (route) => route.abort());
    },
  });
  await chart(page).fill('| C | F | G7 | C |');
  await page
    .getByText(/^What saves lessons could not be loaded, .* Save the lesson as a file; .* load it again\.$/)
    .waitFor();
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the lesson file', exact: true }).click();
  const file = await readFile(await (await download).path(), 'utf8');
  expect(file).toContain('| C | F | G7 | C |');
});

test.each([1440, 1024, 390])('nothing that comes later moves the aims, %i px wide', async (width) => {
  let arrive = (): void => {};
  const held = new Promise<void>((resolve) => {
    arrive = resolve;
  });
  const late = ['harmony', 'parked-bars', 'pasted', 'signs'];
  const { page } = await openApp({
    width,
    prepare: async (page) => {
      await page.route(/\/(harmony|parked-bars|pasted|signs)-[^/]*\.js/, async (route) => {
        await held;
        await route.continue();
      });
    },
  });
  const come = late.map((name) => page.waitForResponse((response) => response.url().includes(`/${name}-`)));
  if (width < 1440) await page.getByRole('button', { name: 'Chart and aims' }).click();
  const feel = page.getByRole('combobox', { name: 'Feel', exact: true });
  const under = async () => {
    const [from, to] = [await chart(page).boundingBox(), await feel.boundingBox()];
    return from && to && Math.round(to.y - from.y);
  };
  await expect.poll(under).toBeGreaterThan(0);
  await page.evaluate(() => document.fonts.ready);
  const before = await under();
  arrive();
  for (const response of await Promise.all(come)) await response.finished();
  await page.getByText('What the chords do', { exact: true }).waitFor();
  await page.locator('.parked-bars').waitFor({ state: 'attached' });
  expect(await under()).toBe(before);
});
