import { readFile } from 'node:fs/promises';
import { strFromU8, unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { readPdf, readStructure } from '../handout/pages';
import { lineComposed, openApp } from '../support/browser';
import { faults } from '../support/faults';
import { addVersion, giveToClass } from '../support/people';

const button = (page: Page, name: string | RegExp) => page.getByRole('button', { name });

async function setTempo(page: Page, tempo: string): Promise<void> {
  const field = page.getByRole('spinbutton', { name: 'Tempo', exact: true });
  await field.fill(tempo);
  await field.press('Tab');
}

/** A lesson with a version for Bartholomew, another one, and three students who were given them. */
async function openClass() {
  const opened = await openApp({ width: 1440 });
  const { page } = opened;
  await lineComposed(page);
  await page.getByRole('textbox', { name: 'Lesson title' }).fill('Harbour');
  await addVersion(page, 'for Bartholomew');
  await setTempo(page, '91');
  await addVersion(page, 'slower');
  await setTempo(page, '77');
  await page.getByRole('combobox', { name: 'Version on the page' }).selectOption('the tune itself');
  await giveToClass(page, 'Zephyrs', ['Adalind', 'Bartholomew', 'Cornelius']);
  return opened;
}

/** Makes the packet, and reads it back. */
async function packetOf(page: Page): Promise<Record<string, Uint8Array>> {
  await button(page, 'Make the packet').click();
  await page.getByText('The packet is ready.').waitFor({ timeout: 60_000 });
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    button(page, /^Save .*\.zip$/).click(),
  ]);
  expect(download.suggestedFilename()).toBe('harbour.zip');
  return unzipSync(new Uint8Array(await readFile(await download.path())));
}

test('a packet for a class has a folder for each version, and names a student only where it is ticked', async () => {
  const { page, expectClean } = await openClass();
  await button(page, 'Export').click();
  await page.getByRole('menuitem', { name: 'Packet', exact: true }).click();
  await page.getByRole('checkbox', { name: /^Tracks/ }).uncheck();
  const forWhom = page.getByRole('combobox', { name: 'For', exact: true });
  await expect.poll(() => forWhom.locator('option').allTextContents()).toContain('the class Zephyrs');
  await forWhom.selectOption('the class Zephyrs');
  const folders = page.getByRole('list', { name: 'Folders of the packet' }).getByRole('listitem');
  expect(await folders.allTextContents()).toEqual([
    'the-tune-itself: the tune itself, for Adalind and Cornelius',
    'for-a-student: for a student, for Bartholomew',
  ]);
  expect(await faults(page)).toEqual([]);

  const bare = await packetOf(page);
  const files = (folder: string, more: string, tempo: number) =>
    [
      'read-me-first.txt',
      `harbour-ferry-queue-f-major-${tempo}-bpm${more}.pdf`,
      `harbour${more}.practice.html`,
      `harbour-ferry-queue-f-major-${tempo}-bpm${more}.musicxml`,
      `harbour-ferry-queue-f-major-${tempo}-bpm${more}.mid`,
    ].map((name) => `${folder}/${name}`);
  expect(Object.keys(bare)).toEqual([
    'who-has-what.txt',
    ...files('the-tune-itself', '', 126),
    ...files('for-a-student', '-for-a-student', 91),
  ]);
  const text = (packet: Record<string, Uint8Array>, name: string) =>
    strFromU8(packet[name] ?? new Uint8Array());
  const inside = Object.entries(bare).map(
    ([name, bytes]) => `${name}\n${Buffer.from(bytes).toString('utf8')}`,
  );
  for (const said of ['Adalind', 'Bartholomew', 'Cornelius', 'Zephyrs'])
    expect(inside.some((file) => file.toLowerCase().includes(said.toLowerCase()))).toBe(false);
  const written = (packet: Record<string, Uint8Array>, folder: string) =>
    Object.keys(packet)
      .filter((name) => name.startsWith(`${folder}/`) && name.endsWith('.musicxml'))
      .map((name) => /tempo="(\d+)"/.exec(text(packet, name))?.[1]);
  expect(written(bare, 'for-a-student')).toEqual(['91']);

  await page.getByRole('checkbox', { name: 'With students’ names' }).check();
  expect(await folders.allTextContents()).toEqual([
    'adalind: the tune itself, for Adalind',
    'bartholomew: for Bartholomew, for Bartholomew',
    'cornelius: the tune itself, for Cornelius',
  ]);
  const named = await packetOf(page);
  expect([...new Set(Object.keys(named).map((name) => name.split('/')[0]))]).toEqual([
    'who-has-what.txt',
    'adalind',
    'bartholomew',
    'cornelius',
  ]);
  expect(text(named, 'who-has-what.txt')).toContain('  bartholomew: Bartholomew: for Bartholomew');
  expect(written(named, 'bartholomew')).toEqual(['91']);
  // What two students have is the very same.
  const [one, other] = ['adalind', 'cornelius'].map(
    (folder) => named[`${folder}/harbour-ferry-queue-f-major-126-bpm.pdf`],
  );
  expect(one?.length).toBeGreaterThan(10_000);
  expect(one).toEqual(other);

  await forWhom.selectOption('everyone: all versions');
  expect((await folders.allTextContents()).length).toBe(3);
  await button(page, 'Make the packet').click();
  await button(page, 'Stop making').click();
  await page.getByText('Packing was stopped. The lesson is as it was.').waitFor();
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBe(0);
  expectClean();
}, 180_000);

test('the handouts of a class come in one PDF and out of the printer in one go, in the class’s order', async () => {
  const { page, expectClean } = await openClass();
  await button(page, 'Export').click();
  await page.getByRole('menuitem', { name: 'Packet', exact: true }).click();
  const forWhom = page.getByRole('combobox', { name: 'For', exact: true });
  await expect.poll(() => forWhom.locator('option').allTextContents()).toContain('the class Zephyrs');
  await forWhom.selectOption('the class Zephyrs');
  await page.getByText('3 copies, in this order: the tune itself, for a student, the tune itself.').waitFor();
  const pdf = async () => {
    await button(page, 'One PDF of the handouts').click();
    await page.getByText('The PDF is ready.').waitFor({ timeout: 60_000 });
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      button(page, 'Save harbour-handouts.pdf').click(),
    ]);
    const bytes = new Uint8Array(await readFile(await download.path()));
    const { pages } = await readPdf(bytes);
    const { bookmarks } = await readStructure(bytes);
    return { bookmarks, texts: pages.map(({ texts }) => texts.map(({ text }) => text).join(' ')) };
  };
  const tempos = (texts: readonly string[]) => texts.map((text) => /=\s*(\d{2,3})\b/.exec(text)?.[1]);
  const bare = await pdf();
  expect(tempos(bare.texts)).toEqual(['126', '91', '126']);
  expect(bare.bookmarks.filter((words) => /tune itself|a student/.test(words))).toEqual([
    'the tune itself',
    'for a student',
    'the tune itself',
  ]);
  for (const name of ['Adalind', 'Bartholomew', 'Cornelius']) {
    expect(bare.texts.join()).not.toContain(name);
    expect(bare.bookmarks.join()).not.toContain(name);
  }

  await page.getByRole('checkbox', { name: 'With students’ names' }).check();
  await page.getByRole('checkbox', { name: 'Each begins on a sheet of its own' }).check();
  const named = await pdf();
  expect(tempos(named.texts)).toEqual(['126', undefined, '91', undefined, '126', undefined]);
  for (const [index, name] of ['Adalind', 'Bartholomew', 'Cornelius'].entries()) {
    expect(named.texts[index * 2]).toContain(name);
    expect(named.bookmarks).toContain(name);
  }
  await page.evaluate(() => {
    window.print = () => {
      document.documentElement.dataset.printing = '';
    };
  });
  await button(page, 'Print the handouts').click();
  // The page keeps the sheet at hand ready for the printer, too: what is asked for here lies before it by now.
  await page.locator('html[data-printing]').waitFor();
  const { pages } = await readPdf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
  expect(tempos(pages.map(({ texts }) => texts.map(({ text }) => text).join(' ')))).toEqual(
    tempos(named.texts),
  );
  await page.getByText('The handouts went to the printer.').waitFor();
  expect(await faults(page)).toEqual([]);
  expectClean();
}, 120_000);

test('the answers to a lesson’s questions stay out of what students get, and come to the teacher where they are ticked', async () => {
  const { page, expectClean } = await openApp({ width: 1440 });
  await lineComposed(page);
  await page.getByRole('textbox', { name: 'Lesson title' }).fill('Harbour');
  await addVersion(page, 'slower');
  await page.getByRole('button', { name: 'Handout', exact: true }).click();
  const parts = page.getByRole('list', { name: 'Parts of the handout' });
  await parts.getByRole('checkbox', { name: 'Questions, with blanks' }).check();
  await parts.getByRole('checkbox', { name: 'Answers to the questions, on a sheet of their own' }).check();
  await page.keyboard.press('Escape');
  await button(page, 'Export').click();
  await page.getByRole('menuitem', { name: 'Packet', exact: true }).click();
  const untick = async (...names: RegExp[]) => {
    for (const name of names) await page.getByRole('checkbox', { name }).uncheck();
  };
  await untick(/^Practice page/, /^Tracks/, /^MusicXML/, /^MIDI/);
  const read = async (bytes: Uint8Array = new Uint8Array()) => {
    const { pages } = await readPdf(bytes);
    return pages.map(({ texts }) => texts.map(({ text }) => text).join(' '));
  };
  const packet = async () => {
    await button(page, 'Make the packet').click();
    await page.getByText('The packet is ready.').waitFor({ timeout: 60_000 });
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      button(page, /^Save .*\.zip$/).click(),
    ]);
    return unzipSync(new Uint8Array(await readFile(await download.path())));
  };
  const kept = await packet();
  const pdfs = Object.keys(kept).filter((name) => name.endsWith('.pdf'));
  expect(pdfs).toHaveLength(1);
  const [student = '', ...more] = await read(kept[pdfs[0] ?? '']);
  expect(more).toEqual([]);
  expect(student).toContain('Questions');
  expect(student).toContain('Page 1 of 1');
  expect(student).not.toContain('Answers');

  await page.getByRole('checkbox', { name: /^Answers to its questions/ }).check();
  const both = await packet();
  const key = Object.keys(both).find((name) => name.endsWith('-answers-slower.pdf'));
  expect(key).toBeDefined();
  expect((await read(both[key ?? ''])).join(' ')).toContain('Answers: Harbour');
  expect(
    strFromU8(both['read-me-first-slower.txt'] ?? both['read-me-first.txt'] ?? new Uint8Array()),
  ).toContain('The answers to its questions, for the teacher.');

  // Of all versions, the copies first, and behind them the answers of the version that has questions.
  await page.getByRole('combobox', { name: 'For', exact: true }).selectOption('everyone: all versions');
  await page.getByText(/The answers come once, behind all copies, for you\.$/).waitFor();
  await button(page, 'One PDF of the handouts').click();
  await page.getByText('The PDF is ready.').waitFor({ timeout: 60_000 });
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    button(page, 'Save harbour-handouts.pdf').click(),
  ]);
  const texts = await read(new Uint8Array(await readFile(await download.path())));
  const answers = texts.map((text) => text.includes('Answers: Harbour'));
  expect(answers.slice(0, 2)).toEqual([false, false]);
  expect(answers.filter(Boolean)).toHaveLength(1);
  expect(answers.at(-1)).toBe(true);
  expect(await faults(page)).toEqual([]);
  expectClean();
}, 120_000);
