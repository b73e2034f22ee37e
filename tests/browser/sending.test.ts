import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { lineComposed, type OpenOptions, openApp } from '../support/browser';

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

async function openSending(item: 'Tracks' | 'Packet', options: OpenOptions = {}) {
  const opened = await openApp(options);
  const { page } = opened;
  await lineComposed(page);
  await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
  await button(page, 'Export').click();
  await page.getByRole('menuitem', { name: item, exact: true }).click();
  await page.getByRole('heading', { name: new RegExp(`^${item} of`) }).waitFor();
  return opened;
}

/** The names in a ZIP file, by its central directory (PKWARE, APPNOTE 4.3.12). */
function namesIn(zip: Buffer): string[] {
  const names: string[] = [];
  for (
    let at = zip.indexOf('PK\u0001\u0002', 0, 'latin1');
    at >= 0;
    at = zip.indexOf('PK\u0001\u0002', at + 4, 'latin1')
  ) {
    const length = zip.readUInt16LE(at + 28);
    names.push(zip.toString('utf8', at + 46, at + 46 + length));
  }
  return names;
}

describe('what is sent home', () => {
  test('one step makes tracks; it can be stopped, and the page is used on meanwhile', async () => {
    const { page, expectClean } = await openSending('Tracks');
    // Whoever chose it is led there, and goes on by the keyboard.
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('sending-heading');
    await button(page, 'Make 4 tracks').click();
    await page.getByRole('progressbar', { name: 'Making the tracks' }).waitFor();
    await page.getByRole('textbox', { name: 'Lesson title' }).fill('Typed meanwhile');
    await button(page, 'Stop making').click();
    await page.getByText('Making the tracks was stopped. The lesson is as it was.').waitFor();
    await page.getByRole('spinbutton', { name: 'Last bar of the tracks' }).fill('1');
    await page.getByRole('spinbutton', { name: 'Rounds of the tracks' }).fill('1');
    await page.getByRole('combobox', { name: 'Bass in the tracks' }).selectOption('without bass');
    await page.getByRole('checkbox', { name: /^95 bpm/ }).uncheck();
    await button(page, 'Make 1 track').click();
    const list = page.getByRole('list', { name: 'Tracks that are ready' });
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      button(page, /^Save typed-meanwhile/).click(),
    ]);
    expect(download.suggestedFilename()).toBe(
      'typed-meanwhile-ferry-queue-f-major-126-bpm-without-bass-bar-1.mp3',
    );
    expect(await list.getByRole('listitem').count()).toBe(1);
    await button(page, 'Put away').click();
    expect(await page.getByRole('heading', { name: /^Tracks of/ }).count()).toBe(0);
    expectClean();
  });

  test('a packet holds what is ticked, with plain names and a short text, on a telephone', async () => {
    const shared = () => {
      Object.assign(navigator, { canShare: () => true, share: async () => undefined });
      // A browser that writes no films makes pictures instead.
      Object.defineProperty(window, 'VideoEncoder', { value: undefined });
    };
    const { page, expectClean } = await openSending('Packet', {
      width: 390,
      height: 844,
      prepare: async (page) => {
        await page.addInitScript(shared);
      },
    });
    await page.getByRole('checkbox', { name: /^Tracks/ }).uncheck();
    await page.getByRole('checkbox', { name: /^Clip/ }).check();
    await button(page, 'Make the packet').click();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      button(page, /^Save .*\.zip$/).click(),
    ]);
    const names = namesIn(await readFile(await download.path()));
    expect(names).toEqual([
      'read-me-first.txt',
      'ferry-queue-week-3-f-major-126-bpm.pdf',
      'ferry-queue-week-3.practice.html',
      // Of each pair of systems.
      'ferry-queue-week-3-f-major-126-bpm-wide-01.png',
      'ferry-queue-week-3-f-major-126-bpm-wide-02.png',
      'ferry-queue-week-3-f-major-126-bpm.musicxml',
      'ferry-queue-week-3-f-major-126-bpm.mid',
    ]);
    await button(page, 'Send it').click();
    await page.getByText('Handed over to be sent.').waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBe(0);
    expectClean();
  });
});
