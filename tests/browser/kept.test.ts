import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { type LineNote, type SpelledPitch, ticks } from '../../src/core/base';
import { writeLessonLink } from '../../src/core/exchange';
import { changeLine, type Lesson, newLesson, setChartText, setFeel } from '../../src/core/lesson';
import { openApp } from '../support/browser';
import { inkIn, meets } from '../support/ink';
import { bar, open } from '../support/pencil';

const QUARTER = 960;
/** As written an octave higher: over the staff, and in its middle. */
const HIGH: SpelledPitch = { letter: 'C', alteration: 0, octave: 3 };
const LOW: SpelledPitch = { letter: 'G', alteration: 0, octave: 1 };

const note = (start: number, quarters: number, pitch: SpelledPitch, tiedOn = false): LineNote => ({
  start: ticks(start * QUARTER),
  duration: ticks(quarters * QUARTER),
  pitch,
  ...(tiedOn ? { tiedOn } : {}),
});

/** Eight bars, all kept: high notes held over every bar line, and beams over the staff at the ends of bars. */
function keptAndTied(): Lesson {
  const fresh = newLesson('kept', 'Held over');
  const id = fresh.pieces[0]?.id ?? '';
  const held = [note(0, 2, HIGH), note(2, 2, HIGH, true)];
  const beamed = [note(0, 2, HIGH), note(2, 1, LOW), note(3, 0.5, LOW), note(3.5, 0.5, HIGH, true)];
  return changeLine(setChartText(fresh, id, '| C | Am7 | Fmaj7 | G7 |\n| C | F | G7 | C |'), id, (piece) => ({
    ...piece,
    bars: piece.bars.map((bar, index) => ({
      ...bar,
      origin: 'hand' as const,
      kept: true,
      notes: index % 2 === 0 ? held : beamed,
    })),
  }));
}

const openKept = (lesson: Lesson, width: number) =>
  openApp({ width, path: new URL(writeLessonLink(lesson, 'http://page/')).hash });

/** What lies uppermost where it is said that the second bar is kept. */
const uppermost = (page: Page): Promise<string | null> =>
  page
    .locator('.kept')
    .nth(1)
    .evaluate((label: HTMLElement) => {
      label.scrollIntoView({ block: 'center', behavior: 'instant' });
      const { left, right, top, bottom } = label.getBoundingClientRect();
      label.style.pointerEvents = 'auto';
      const found = document.elementFromPoint((left + right) / 2, (top + bottom) / 2 + 1);
      label.style.pointerEvents = '';
      return found === null ? null : found.className;
    });

test.each([1440, 390])(
  'no frame crosses what says that a bar is kept, of the keyboard or of the pencil, %i px wide',
  async (width) => {
    const lesson = keptAndTied();
    const { page, expectClean } = await openKept(
      setFeel(lesson, lesson.pieces[0]?.id ?? '', 'shuffle-blues'),
      width,
    );
    await page.locator('.kept').last().waitFor();
    await bar(page, 1).focus();
    await page.keyboard.press('ArrowRight');
    expect(await bar(page, 2).evaluate((button) => button.matches(':focus-visible'))).toBe(true);
    expect(await uppermost(page)).toBe('kept');
    await open(page, 2);
    await page.keyboard.press('ArrowRight');
    expect(
      await page
        .getByRole('application')
        .first()
        .evaluate((frame) => frame.matches(':focus-visible')),
    ).toBe(true);
    expect(await uppermost(page)).toBe('kept');
    expectClean();
  },
);

test.each([1440, 1024, 390])(
  'what says that a bar is kept covers no tie, nor other ink, %i px wide',
  async (width) => {
    const { page, expectClean } = await openKept(keptAndTied(), width);
    await page.locator('.kept').last().waitFor();
    const labels = await page.locator('.kept').evaluateAll((shown) =>
      shown.map((label) => {
        const { left, right, top, bottom } = label.getBoundingClientRect();
        return { left, right, top, bottom };
      }),
    );
    const ink = await inkIn(page, '.score :is(.tie, .beam, .stem, .note, .chord, .degree, .finger)');
    expect(labels).toHaveLength(8);
    expect(ink.filter(({ role }) => role === 'tie').length).toBeGreaterThan(6);
    expect(ink.filter((one) => labels.some((label) => meets(one, label)))).toEqual([]);
    expectClean();
  },
);
