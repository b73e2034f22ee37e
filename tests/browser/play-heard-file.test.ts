/**
 * The practice page listens to a file: the browser's own capture plays a student with known faults as its microphone, so
 * that asking, the audio thread, the clocks and the report are those of a real input.
 */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { deriveSheet, type Lesson, lineAtHand, printLesson, setPlaying } from '../../src/core/lesson';
import { type ExpectedNote, expectedOf } from '../../src/core/listening';
import { performanceOf } from '../../src/core/performance';
import { encodeWav } from '../../src/sound';
import { ownBass, RATE } from '../listening/studio';
import { openApp } from '../support/browser';
import { launchBrowser } from '../support/launch';
import { pinnedSample } from '../support/pinned';

const PATIENT = { timeout: 60_000 };

/** Half steps above the written note. */
const WRONG = 2;

/** The bass is the student's: the page plays the others, after two bars of counting in. */
function lessonToPlay(): Lesson {
  const lesson = pinnedSample(0, 'heard');
  return setPlaying(lesson, lesson.pieces[0]?.id ?? '', {
    ...{ bass: false, drums: false, chops: false, organ: false, click: true },
    ...{ loop: false, countIn: 2, passage: { first: 1, last: 4 } },
  });
}

/** What is to be played, in seconds after the count-in begins. */
function writtenIn(lesson: Lesson): readonly ExpectedNote[] {
  const piece = lineAtHand(lesson, lesson.pieces[0]?.id ?? '');
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (piece === null || sheet?.kind !== 'line') throw new Error('There is no line to play.');
  const told = { ...piece, playing: { ...piece.playing, bass: true } };
  return expectedOf([{ performance: performanceOf(told, sheet, 'sound'), round: 0, origin: 0 }]).notes;
}

/** Seconds after the count-in is seen to begin that the page is asked to listen; a file begins as the browser gives it. */
const ASKED = 1;
/** Seconds that a browser takes to give an input, as far as they need to be known: half a second is found out by the page. */
const GIVEN = 0.1;
/** How late this student's sound reaches the page, in seconds: the page finds it out. */
const LATE = 0.15;

const isOf = (note: ExpectedNote, bar: number, place: number, notes: readonly ExpectedNote[]): boolean =>
  notes.filter((each) => each.bar === bar)[place] === note;

/** A student plays the fourth note of bar 2 too high, and leaves out the second one of bar 4. */
function studentAt(notes: readonly ExpectedNote[]): Uint8Array<ArrayBuffer> {
  const moved = LATE - ASKED - GIVEN;
  const struck = notes
    .filter((note) => !isOf(note, 3, 1, notes))
    .map((note) => ({
      start: note.start + moved,
      end: note.end + moved,
      midi: note.midi + (isOf(note, 1, 3, notes) ? WRONG : 0),
      velocity: 92,
    }));
  const sound = ownBass(struck, (struck.at(-1)?.end ?? 0) + 2);
  return encodeWav({ left: sound, right: sound, sampleRate: RATE });
}

/** Presses a button so many seconds after the page is seen to count in, on the page's own clock. */
const pressWhileCounting = (page: Page, name: string, seconds: number): Promise<void> =>
  page.evaluate(
    ([text, wait]) => {
      const pressed = (): void => {
        const buttons = [...document.querySelectorAll('button')];
        buttons.find(({ textContent }) => textContent === text)?.click();
      };
      const status = document.querySelector('[role="status"][aria-label="Playback"]');
      return new Promise<void>((resolve) => {
        const look = (): void => {
          if (status?.textContent?.startsWith('Counting in') !== true) {
            requestAnimationFrame(look);
            return;
          }
          setTimeout(() => {
            pressed();
            resolve();
          }, wait * 1000);
        };
        look();
      });
    },
    [name, seconds] as const,
  );

async function openPractice(browser: Browser, lesson: Lesson) {
  const opened = await openApp({ path: 'practice.html', browser });
  const { page } = opened;
  await page
    .locator('input[type="file"]')
    .first()
    .setInputFiles({
      name: 'heard.lesson.json',
      mimeType: 'application/json',
      buffer: Buffer.from(printLesson(lesson)),
    });
  await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
  await page.getByText('Play, and be heard').click();
  return opened;
}

// Played in real time: on a machine whose sound stops and starts, once more is fair.
test('a student with known faults, played by the browser as the microphone, is told of them', {
  retry: 2,
}, async () => {
  const lesson = lessonToPlay();
  const folder = await mkdtemp(join(tmpdir(), 'student-'));
  const file = join(folder, 'student.wav');
  await writeFile(file, studentAt(writtenIn(lesson)));
  const browser = await launchBrowser([
    '--use-fake-device-for-media-stream',
    '--use-fake-ui-for-media-stream',
    `--use-file-for-fake-audio-capture=${file}%noloop`,
  ]);
  try {
    const { page, expectClean } = await openApp({ path: 'practice.html', browser });
    await page
      .locator('input[type="file"]')
      .first()
      .setInputFiles({
        name: 'heard.lesson.json',
        mimeType: 'application/json',
        buffer: Buffer.from(printLesson(lesson)),
      });
    await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
    await page.getByText('Play, and be heard').click();
    const listen = page.getByRole('button', { name: 'Listen to my playing' });
    // Once before, so that all that it takes is fetched.
    await listen.click();
    await page.getByRole('button', { name: 'Stop listening to me' }).click();
    await listen.waitFor();
    const pressed = pressWhileCounting(page, 'Listen to my playing', ASKED);
    await page.getByRole('button', { name: 'Play', exact: true }).click();
    await pressed;
    const said = page.getByRole('list', { name: 'What was heard' });
    await expect.poll(() => said.count(), PATIENT).toBe(1);
    await page.getByText('Round by round, bar by bar').click();
    expect(await page.locator('.listening__result details li').allTextContents()).toEqual([
      'Bar 1: as written.',
      'Bar 2: note 4 was another pitch, a whole step above the written one.',
      'Bar 3: as written.',
      'Bar 4: note 2 was left out.',
    ]);
    expect(await said.textContent()).toContain('16 of 18 notes were the written ones.');
    expect(await page.locator('.heard-mark').allTextContents()).toEqual([
      'as written',
      'once more',
      'as written',
      'once more',
    ]);
    expectClean();
  } finally {
    await browser.close();
    await rm(folder, { recursive: true });
  }
});

test('where the browser has a microphone and does not allow it, a sentence says so, and the page plays on', async () => {
  const browser = await launchBrowser([
    '--use-fake-device-for-media-stream',
    // Nobody can be asked where no window is: this is the answer of who says no.
    '--use-fake-ui-for-media-stream=deny',
  ]);
  try {
    const { page, expectClean } = await openPractice(browser, lessonToPlay());
    const answer = await page.evaluate(async () => {
      try {
        await navigator.mediaDevices.getUserMedia({ audio: true });
        return 'allowed';
      } catch (problem) {
        return problem instanceof DOMException ? problem.name : String(problem);
      }
    });
    expect(answer).toBe('NotAllowedError');
    await page.getByRole('button', { name: 'Listen to my playing' }).click();
    await page
      .getByRole('alert')
      .getByText('The browser was not allowed to listen. Allow the microphone for this page, and try again.')
      .waitFor();
    await page.getByRole('button', { name: 'Play', exact: true }).click();
    await expect
      .poll(() => page.getByRole('status', { name: 'Playback', exact: true }).textContent(), PATIENT)
      .toMatch(/^(Counting in to|Playing) bar/);
    expectClean();
  } finally {
    await browser.close();
  }
});
