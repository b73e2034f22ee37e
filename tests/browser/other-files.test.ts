import { readFile } from 'node:fs/promises';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openApp } from '../support/browser';

const button = (page: Page | Locator, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });

const score = (page: Page): Locator => page.getByRole('figure', { name: 'Score', exact: true });

/** What a listener hears of every bar, kept or not: its chord, and its notes with degrees and places. */
const line = (page: Page): Promise<readonly string[]> =>
  score(page)
    .getByRole('button', { name: /^Bar \d/ })
    .evaluateAll((bars) =>
      bars.map((bar) =>
        `${bar.getAttribute('aria-label')}: ${bar.getAttribute('aria-description')}`.replace(/ Kept\.$/, ''),
      ),
    );

async function open(page: Page, name: string, buffer: Buffer): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await button(page, 'Open').click();
  await (await chooser).setFiles({ name, mimeType: 'application/octet-stream', buffer });
}

async function exported(page: Page, item: string): Promise<Buffer> {
  await button(page, 'Export').click();
  const download = page.waitForEvent('download');
  await page.getByRole('menuitem', { name: item, exact: true }).click();
  return readFile(await (await download).path());
}

test('a line that was saved as MusicXML is opened as the same line; a broken file changes nothing', async () => {
  const { page, expectClean } = await openApp();
  await score(page).locator('svg').first().waitFor();
  const before = await line(page);
  const title = page.getByRole('textbox', { name: 'Lesson title' });
  const name = await title.inputValue();
  const xml = await exported(page, 'MusicXML');
  const packed = await exported(page, 'MusicXML, compressed');

  await open(page, 'broken.musicxml', xml.subarray(0, xml.length / 2));
  await page
    .getByRole('alert')
    .getByText(/not well-formed XML: see line \d+/)
    .waitFor();
  await title.fill('Still here');

  for (const [file, content] of [
    ['line.musicxml', xml],
    ['line.mxl', packed],
  ] as const) {
    await title.fill('Still here');
    await open(page, file, content);
    await expect.poll(() => title.inputValue()).toBe(name);
    await page
      .getByRole('status', { name: 'Read from a file' })
      .getByText(/^Read from the file: \d+ bars/)
      .waitFor();
    await expect.poll(() => line(page)).toEqual(before);
  }
  await button(page.getByRole('status', { name: 'Read from a file' }), 'Understood').click();
  await button(page, 'Lessons').click();
  await page
    .getByRole('menuitem', { name: /^Still here/ })
    .first()
    .waitFor();
  expectClean();
});

test('a line that comes as MIDI keeps its notes when chords are typed over it', async () => {
  const { page, expectClean } = await openApp();
  await score(page).locator('svg').first().waitFor();
  const [first = ''] = await line(page);
  await open(page, 'line.mid', await exported(page, 'MIDI'));
  await page
    .getByRole('status', { name: 'Read from a file' })
    .getByText(/every bar has N\.C\.; they can be typed over the bars/)
    .waitFor();
  await button(page, 'Bar 1, N.C.').click();
  const chords = page.getByRole('textbox', { name: 'Chords of bar 1' });
  await chords.fill('F');
  await chords.press('Enter');
  // The same degrees on the same beats as before it went through the file; where they are played is the hand's choice.
  const degrees = (bar: string): string => bar.replace(/, [A-G]♭? string (?:open|fret \d+)/g, '');
  await expect.poll(async () => degrees((await line(page))[0] ?? '')).toBe(degrees(first));
  expectClean();
});
