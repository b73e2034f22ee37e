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

test('a line that was saved as MusicXML or text tab is opened as the same line; a broken file changes nothing', async () => {
  const { page, expectClean } = await openApp();
  await score(page).locator('svg').first().waitFor();
  const before = await line(page);
  const title = page.getByRole('textbox', { name: 'Lesson title' });
  const name = await title.inputValue();
  const xml = await exported(page, 'MusicXML');
  const packed = await exported(page, 'MusicXML, compressed');
  const tab = await exported(page, 'Text tab');

  await open(page, 'broken.musicxml', xml.subarray(0, xml.length / 2));
  await page
    .getByRole('alert')
    .getByText(/not well-formed XML: see line \d+/)
    .waitFor();
  await title.fill('Still here');

  for (const [file, content] of [
    ['line.musicxml', xml],
    ['line.mxl', packed],
    ['line.txt', tab],
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

/** A lead sheet of four bars: a tune in the treble clef, chords over it. */
const LEAD = `<score-partwise><work><work-title>Harbour air</work-title></work><part-list><score-part id="P1"><part-name>Voice</part-name></score-part></part-list><part id="P1">${[
  'C',
  'F',
  'G',
  'C',
]
  .map(
    (root, bar) =>
      `<measure number="${bar + 1}">${bar === 0 ? '<attributes><divisions>1</divisions><key><fifths>0</fifths></key><time><beats>4</beats><beat-type>4</beat-type></time><clef><sign>G</sign></clef></attributes>' : ''}<harmony><root><root-step>${root}</root-step></root><kind>major</kind></harmony>${['C', 'E', 'G', 'E'].map((step) => `<note><pitch><step>${step}</step><octave>5</octave></pitch><duration>1</duration></note>`).join('')}</measure>`,
  )
  .join('')}</part></score-partwise>`;

test('a lead sheet is asked about before it becomes a lesson: the tune an octave or two lower, or its chords, with the feel that is chosen', async () => {
  const { page, expectClean } = await openApp({ width: 390, height: 800 });
  await score(page).locator('svg').first().waitFor();
  const title = page.getByRole('textbox', { name: 'Lesson title' });
  const before = await title.inputValue();
  await open(page, 'air.musicxml', Buffer.from(LEAD));
  const question = page.getByRole('dialog', { name: 'What do you want of “air.musicxml”?' });
  await question
    .getByText(/^Harbour air: 4 bars in 4\/4, C major, no tempo, 4 chords, 16 notes\.$/)
    .waitFor();
  expect(await question.getByRole('combobox', { name: 'Notes', exact: true }).inputValue()).toBe('2');
  await question
    .getByText('In the file the notes sound C5 to G5; the line lies C3 to G3, all of it on the neck.')
    .waitFor();
  // The keyboard is enough, and the feel is not guessed.
  await page.keyboard.press('Enter');
  await question
    .getByRole('alert')
    .getByText(/Choose the feel/)
    .waitFor();
  await question.getByRole('combobox', { name: 'Feel' }).selectOption('rocksteady');
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
  await question.getByRole('radio', { name: 'The chords only' }).check();
  await question.getByText('Only the chords are taken; the notes stay in the file.').waitFor();
  await page.keyboard.press('Escape');
  await question.waitFor({ state: 'detached' });
  expect(await title.inputValue()).toBe(before);

  await open(page, 'air.musicxml', Buffer.from(LEAD));
  await question.getByRole('combobox', { name: 'Feel' }).selectOption('rocksteady');
  await button(question, 'Make the lesson').click();
  await expect.poll(() => title.inputValue()).toBe('Harbour air');
  await expect.poll(async () => (await line(page)).length).toBe(4);
  // One step for the whole line: nothing of it is off the neck.
  expect((await line(page)).join('\n')).not.toMatch(/cannot be/);
  await button(page.getByRole('status', { name: 'Read from a file' }), 'Read it otherwise').click();
  await question.getByRole('radio', { name: 'The chords only' }).check();
  await question.getByText('Only the chords are taken; the notes stay in the file.').waitFor();
  await button(question, 'Make the lesson').click();
  await expect.poll(async () => (await line(page)).filter((bar) => /[A-G] string/.test(bar)).length).toBe(0);
  await button(page, 'Undo').click();
  await expect.poll(async () => (await line(page)).filter((bar) => /[A-G] string/.test(bar)).length).toBe(4);
  expectClean();
});

test('a line that comes as MIDI keeps its notes when chords are typed over it', async () => {
  const { page, expectClean } = await openApp();
  await score(page).locator('svg').first().waitFor();
  const [first = ''] = await line(page);
  await open(page, 'line.mid', await exported(page, 'MIDI'));
  await page
    .getByRole('status', { name: 'Read from a file' })
    .getByText(/The chords are read from the notes of the part “Chops”/)
    .waitFor();
  await button(page, 'Bar 1, F').click();
  const chords = page.getByRole('textbox', { name: 'Chords of bar 1' });
  await chords.fill('F7');
  await chords.press('Enter');
  // The same degrees on the same beats as before it went through the file; where they are played is the hand's choice.
  const degrees = (bar: string): string => bar.replace(/, [A-G]♭? string (?:open|fret \d+)/g, '');
  await expect
    .poll(async () => degrees((await line(page))[0] ?? ''))
    .toBe(degrees(first).replace(/^Bar 1, F:/, 'Bar 1, F7:'));
  expectClean();
});
