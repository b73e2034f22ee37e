import { readFile } from 'node:fs/promises';
import { unzipSync } from 'fflate';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { readPdf, readStructure } from '../handout/pages';
import { lineComposed, openApp } from '../support/browser';
import { openedUp } from '../support/opened-up';
import { addAll, openStudents } from '../support/people';

const button = (page: Page | Locator, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });

/** What is kept of a student, and must not leave the device: name, class, notes, what to mend, and the series. */
const PRIVATE = ['Adalind', 'Zephyrs', 'whistles', 'gallumphs', 'Quillterm'];

const told = (text: string): readonly string[] =>
  PRIVATE.filter((word) => text.toLowerCase().includes(word.toLowerCase()));

/** What a file says, the letters of a PDF included, which stand there by their places in a font. */
async function saidBy(bytes: Uint8Array): Promise<string> {
  const text = openedUp(bytes);
  if (!text.startsWith('%PDF')) return text;
  const { pages, info } = await readPdf(bytes);
  const { bookmarks } = await readStructure(bytes);
  const words = pages.flatMap(({ texts }) => texts.map((each) => each.text));
  return [text, JSON.stringify(info), ...bookmarks, ...words].join('\n');
}

async function saved(page: Page, start: () => Promise<void>): Promise<Uint8Array> {
  const [download] = await Promise.all([page.waitForEvent('download', { timeout: 120_000 }), start()]);
  expect(told(download.suggestedFilename())).toEqual([]);
  return new Uint8Array(await readFile(await download.path()));
}

const choose = async (page: Page, menu: string, name: string): Promise<void> => {
  await button(page, menu).click();
  await page.getByRole('menuitem', { name, exact: true }).click();
};

const FILES = [
  'Handout (PDF)',
  'Practice page',
  'MusicXML',
  'MusicXML, compressed',
  'Text tab',
  'MIDI',
  'Audio (WAV)',
  'Lesson file',
];

/** Everything that leaves the device: what each is called, and what it says. */
async function everything(page: Page): Promise<ReadonlyMap<string, string>> {
  const out = new Map<string, string>();
  for (const name of FILES)
    out.set(name, await saidBy(await saved(page, () => choose(page, 'Export', name))));
  for (const name of ['Copy a link', 'Copy a practice link']) {
    await page.evaluate(() => navigator.clipboard.writeText(''));
    await choose(page, 'Export', name);
    const read = () => page.evaluate(() => navigator.clipboard.readText());
    await expect.poll(read).toContain('#lesson=');
    out.set(name, openedUp(new Uint8Array(Buffer.from(await read()))));
  }
  await choose(page, 'Export', 'Packet');
  await page.getByRole('checkbox', { name: /^Tracks/ }).uncheck();
  await button(page, 'Make the packet').click();
  await page.getByText('The packet is ready.').waitFor({ timeout: 120_000 });
  const packet = unzipSync(await saved(page, () => button(page, /^Save .*\.zip$/).click()));
  for (const [name, bytes] of Object.entries(packet))
    out.set(`Packet${/\.[a-z]+$/.exec(name)?.[0]}`, `${name}\n${await saidBy(bytes)}`);
  await button(page, 'Put away').click();
  await choose(page, 'Lessons', 'The whole shelf');
  const shelf = page.getByRole('dialog', { name: 'The shelf' });
  out.set('Shelf', openedUp(await saved(page, () => button(shelf, 'Save the shelf as a file').click())));
  await button(shelf, 'Close the shelf').click();
  return out;
}

/** A lesson that was given to a student of whom all is noted that can be, in a class and with a series. */
async function openKept() {
  const opened = await openApp({ width: 1440 });
  const { page } = opened;
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await lineComposed(page);
  await page.getByRole('textbox', { name: 'Lesson title' }).fill('Harbour');
  const dialog = await openStudents(page);
  await addAll(dialog, ['Adalind']);
  const notes = dialog.getByRole('textbox', { name: /^(Your )?notes/i });
  await notes.fill('whistles to herself');
  await button(dialog, 'Give the open lesson').click();
  const given = dialog.getByRole('list', { name: 'Lessons given to Adalind' });
  await given.getByRole('textbox', { name: /^To mend next/ }).fill('gallumphs over the pickup');
  await page.keyboard.press('Tab');
  await dialog.getByText('To mend next: gallumphs over the pickup (“Harbour”).').waitFor();
  await addAll(dialog, ['Zephyrs'], 'class');
  await dialog.getByRole('checkbox', { name: 'Adalind in this class' }).press('Space');
  await button(dialog, 'Close the students').click();
  await choose(page, 'Lessons', 'Series');
  const series = page.getByRole('dialog', { name: 'Series' });
  await series.getByRole('textbox', { name: 'Name of a new series' }).fill('Quillterm');
  await page.keyboard.press('Enter');
  await series.getByRole('combobox', { name: 'For whom' }).selectOption({ label: 'Adalind' });
  await button(series, 'Put the open lesson at the end').click();
  await button(series, 'Close the series').click();
  return opened;
}

test('nothing of a student, a class or a series is in anything that leaves the device', async () => {
  const { page, expectClean } = await openKept();
  const out = await everything(page);
  expect([...out.keys()].filter((name) => name.startsWith('Packet')).length).toBeGreaterThan(4);
  expect(out.size).toBeGreaterThan(FILES.length + 6);
  for (const [name, text] of out) {
    expect(told(text), name).toEqual([]);
    // What was looked into is the lesson, and was read.
    if (name !== 'Audio (WAV)') expect(text, name).toContain('Harbour');
  }
  expectClean();
}, 400_000);

test('a name typed for the paper is on the paper and in the lesson’s own file, and nowhere else', async () => {
  const { page, expectClean } = await openApp({ width: 1440 });
  await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await lineComposed(page);
  await page.getByRole('textbox', { name: 'Lesson title' }).fill('Harbour');
  await button(page, 'Handout').click();
  const field = page.getByRole('textbox', { name: 'Class or student' });
  await field.fill('Adalind');
  await page.keyboard.press('Tab');
  await button(page, 'Back to the line').click();
  const names: string[] = [];
  for (const [name, text] of await everything(page)) if (told(text).length > 0) names.push(name);
  expect(names).toEqual(['Handout (PDF)', 'Lesson file', 'Packet.pdf', 'Shelf']);
  await choose(page, 'Export', 'Lesson file');
  await page.getByText('The file names Adalind.').waitFor();
  expectClean();
}, 400_000);

/** Two bars of the line as its maker makes them: what each file is called, and what it says. */
async function madeOf(page: Page, maker: 'Tracks' | 'Clip'): Promise<ReadonlyMap<string, string>> {
  await choose(page, 'Export', maker);
  await page.getByRole('spinbutton', { name: `Last bar of the ${maker.toLowerCase()}` }).fill('2');
  if (maker === 'Tracks') await page.getByRole('spinbutton', { name: 'Rounds of the tracks' }).fill('1');
  await button(page, /^Make (the clip|\d+ tracks?)$/).click();
  const saves = button(page, /^Save .*\.(mp3|webm|mp4)$/);
  await saves.first().waitFor({ timeout: 120_000 });
  const out = new Map<string, string>();
  for (const save of await saves.all())
    out.set((await save.textContent()) ?? '', await saidBy(await saved(page, () => save.click())));
  await button(page, 'Put away').click();
  return out;
}

test('nothing of a student, and no name typed for the paper, is in a track or a clip', async () => {
  const { page, expectClean } = await openKept();
  await button(page, 'Handout').click();
  await page.getByRole('textbox', { name: 'Class or student' }).fill('Adalind');
  await page.keyboard.press('Tab');
  await button(page, 'Back to the line').click();
  const made = [...(await madeOf(page, 'Tracks')), ...(await madeOf(page, 'Clip'))];
  const names = made.map(([name]) => name).join('\n');
  expect(names).toMatch(/\.mp3$/m);
  expect(names).toMatch(/\.(webm|mp4)$/m);
  for (const [name, text] of made) {
    expect(told(text), name).toEqual([]);
    expect(text, name).toContain('Harbour');
  }
  expectClean();
}, 400_000);
