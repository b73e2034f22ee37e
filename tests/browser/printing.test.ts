import type { Page } from 'playwright-core';
import { expect, test, vi } from 'vitest';
import { copyPiece, printLesson, sampleLesson, setTitle } from '../../src/core/lesson';
import { addVersion } from '../../src/core/versions';
import { readCurves, readPdf } from '../handout/pages';
import { openApp } from '../support/browser';

/** Each test prints some dozens of pages, in milliseconds. */
vi.setConfig({ testTimeout: 300_000 });

const PATIENT = { timeout: 30_000 };

/** Two lines, and a version for a second student. */
const LESSON = (() => {
  const lesson = setTitle(sampleLesson(1, 'printing'), 'Week 8');
  const two = copyPiece(lesson, lesson.pieces[0]?.id ?? '');
  return addVersion(addVersion(two, 'for Ada'), 'for Ben');
})();
const FILE = {
  name: 'week-8.lesson.json',
  mimeType: 'application/json',
  buffer: Buffer.from(printLesson(LESSON)),
};

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const score = (page: Page) => page.getByRole('figure', { name: 'Score', exact: true });

/** Words that stand alone on a button, a switch or a field; none belongs on paper. */
const LABELS = [
  ...[
    'Play',
    'Pause',
    'Stop',
    'Stopped',
    'Go on',
    'Large view',
    'Fretboard',
    'Open',
    'Practise this',
    'Close',
  ],
  ...['Change how', 'loop by two taps', 'Metronome', 'Tuning', 'Listen and tune', 'Metronome and tuning'],
  ...[
    'Practice diary',
    'On the sheet',
    'Export',
    'Versions',
    'Lessons',
    'Another take',
    'Lesson check',
    'Undo',
  ],
  ...['What is shown', 'In class', 'Compose line', 'Chord chart', 'Version on the page'],
];

/** What stands for drawn staves on paper: chord names, and fret numbers, which are words or outlines with curves. */
const LEAST_CHORDS = 4;
const LEAST_FRETS = 8;
const CHORD = /^[A-G][♭♯]?(m|maj|dim|°|ø)?7?$/u;
const LEAST_CURVES = 500;

/**
 * What the browser prints now: `one moment`, or `music`.
 * @throws Error when it is neither, or shows what belongs on the screen
 */
async function print(page: Page, title: string): Promise<'one moment' | 'music'> {
  const file = new Uint8Array(await page.pdf({ preferCSSPageSize: true }));
  const { pages } = await readPdf(file);
  const words = pages.flatMap(({ texts }) => texts.map(({ text }) => text.trim()));
  const shown = LABELS.filter((label) => words.includes(label));
  if (shown.length > 0) throw new Error(`On paper stands ${shown.join(', ')}.`);
  const all = words.join(' ');
  const chords = words.filter((word) => CHORD.test(word)).length;
  const frets = words.filter((word) => /^\d{1,2}$/.test(word)).length;
  const curves = await readCurves(file);
  if (/One moment: the printed/.test(all)) {
    if (chords > 0 || frets > 0 || curves > 0) throw new Error('Music stands beside “one moment”.');
    return 'one moment';
  }
  if (!all.includes(title)) throw new Error(`The title is missing: ${all.slice(0, 200)}`);
  if (chords < LEAST_CHORDS) throw new Error(`The staves are empty: ${chords} chords in ${all}.`);
  if (frets < LEAST_FRETS && curves < LEAST_CURVES)
    throw new Error(`The staves are empty: ${frets} frets, ${curves} curves.`);
  return 'music';
}

/** Prints at once after a change and then again and again: it is never anything else, and in the end the music. */
async function printThrough(page: Page, title: string, change: () => Promise<unknown>): Promise<void> {
  await change();
  for (let again = 0; again < 2; again += 1) await print(page, title);
  await expect.poll(() => print(page, title), PATIENT).toBe('music');
}

test('printed at any moment, the practice page is its music or says one moment', async () => {
  const { page, expectClean } = await openApp({ path: 'practice.html' });
  await page.getByRole('heading', { name: 'Practice page' }).waitFor();
  expect(await print(page, 'Week 8')).toBe('one moment');
  await printThrough(page, 'Week 8', async () => {
    await page.locator('input[type="file"]').setInputFiles(FILE);
    await page.getByRole('heading', { level: 1, name: 'Week 8' }).waitFor();
  });
  await score(page).locator('svg').first().waitFor();
  const sheet = page.getByRole('combobox', { name: 'On the sheet' });
  await printThrough(page, 'Week 8', () => sheet.selectOption({ index: 1 }));
  await printThrough(page, 'Week 8', () => sheet.selectOption({ index: 0 }));
  await printThrough(page, 'Week 8', () => button(page, 'Faster').click());
  await printThrough(page, 'Week 8', () => page.getByText('Metronome and tuning').click());
  await printThrough(page, 'Week 8', () => button(page, 'Fretboard').click());
  await printThrough(page, 'Week 8', () => page.getByText('in words, bar by bar').first().click());
  await printThrough(page, 'Week 8', () => button(page, 'Play').click());
  await printThrough(page, 'Week 8', () => button(page, 'Large view').click());
  await printThrough(page, 'Week 8', () => button(page, 'Close').click());
  expectClean();
});

test('printed at any moment, the writing page is its handout or says one moment, with versions and menus open too', async () => {
  const { page, expectClean } = await openApp();
  await score(page).locator('svg').first().waitFor();
  await printThrough(page, 'Week 8', async () => {
    await page.locator('input[type="file"]').first().setInputFiles(FILE);
    await expect
      .poll(() => page.getByRole('textbox', { name: 'Lesson title' }).inputValue(), PATIENT)
      .toBe('Week 8');
  });
  const versions = page.getByRole('combobox', { name: 'Version on the page' });
  await printThrough(page, 'Week 8', () => versions.selectOption({ label: 'for Ada' }));
  await printThrough(page, 'Week 8', () => button(page, 'Fretboard').click());
  await printThrough(page, 'Week 8', () => button(page, 'Export').click());
  await page.keyboard.press('Escape');
  await printThrough(page, 'Week 8', () =>
    page
      .getByRole('button', { name: /^Bar 2, / })
      .first()
      .click(),
  );
  await printThrough(page, 'Week 8', () => button(page, 'Another take').click());
  await printThrough(page, 'Week 8', () =>
    page.getByRole('textbox', { name: 'Chord chart' }).fill('| Am | Dm | E7 | Am |'),
  );
  expectClean();
});
