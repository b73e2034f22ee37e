import { expect, test } from 'vitest';
import { TUNINGS } from '../../src/core/fretboard';
import { changeLine, newLesson, printLesson, setChartText, setInstrument } from '../../src/core/lesson';
import { line } from '../line/notation';
import { openApp } from '../support/browser';

test('a line is made easier for another student, a change of it refused, moved by shape, and kept as a version', async () => {
  const { page, expectClean } = await openApp({ width: 1440, height: 1000 });
  await page.getByText(/ for another student$/).click();
  await page.getByRole('button', { name: /^Make .* easier: level \d$/ }).click();
  const changes = page.getByRole('list', { name: /^Changes of/ });
  const ticks = changes.getByRole('checkbox');
  await ticks.first().waitFor({ timeout: 60_000 });
  expect(await changes.textContent()).toMatch(/Bar \d+: .*\. (?:Its rhythm was|.* comes later|It had)/);
  await page
    .getByRole('status', { name: /^The other line of/ })
    .getByText(/notes on strong beats/)
    .waitFor();
  const figures = page.getByRole('figure', {
    name: / (?:as it stands|for the other student), on staff and tab$/,
  });
  await figures.nth(1).locator('svg').first().waitFor();

  const marked = page.locator('.regrade__lines section').nth(1).locator('.regrade__mark');
  const all = await marked.count();
  expect(all).toBe(await ticks.count());
  // The words of the frames stand clear of the music, below it.
  const overMusic = () =>
    page.locator('.regrade__mark b, .study__mark b').evaluateAll(
      (words) =>
        words.filter((word) => {
          // The line of a frame is two pixels.
          const frame = 2.5;
          const { bottom = 0 } = word.closest('.system')?.getBoundingClientRect() ?? {};
          return word.getBoundingClientRect().top < bottom - frame;
        }).length,
    );
  expect(await overMusic()).toBe(0);
  await ticks.first().uncheck();
  await expect.poll(() => marked.count()).toBe(all - 1);

  await page.getByRole('combobox', { name: /^Another key/ }).selectOption('by shape');
  const keys = page.getByRole('combobox', { name: /^Key, the easiest by shape first/ });
  await keys.waitFor({ timeout: 60_000 });
  await keys.selectOption({ label: 'A♭ major' });
  await page.getByText(/A♭ major, to read: four flats .*for the hand: /).waitFor();

  await page.getByText(/^What is in /).click();
  await page.getByRole('button', { name: /^Show on the score: Leaps/ }).click();
  await page.locator('.study__mark b').first().waitFor();
  expect(await overMusic()).toBe(0);

  await page.getByRole('textbox', { name: 'For whom' }).fill('for Wednesday');
  await page.getByRole('button', { name: 'Make it a version' }).click();
  const open = page.getByRole('combobox', { name: 'Version on the page' });
  await open.waitFor({ timeout: 30_000 });
  expect(await open.locator('option:checked').textContent()).toBe('for Wednesday');
  expectClean();
});

/** A line for five strings that goes below the lowest of four. */
function lowLesson(): string {
  const fiveStrings = TUNINGS.find(({ id }) => id === 'five-strings')?.openStrings;
  if (fiveStrings === undefined) throw new Error('There is a bass of five strings.');
  const charted = setChartText(newLesson('low-steps', 'Low steps'), 'piece-1', '| Cm | Fm | G7 | Cm |');
  const notes = line(
    'C1 . D1 E♭1 G1 . F1 . | F1 . A♭1 . C2 . A♭1 . | G1 . B0 . D2 . B1 . | C2 . . . . . . .',
  );
  const written = changeLine(charted, 'piece-1', (piece) => ({
    ...piece,
    bars: piece.bars.map((bar, index) => ({ ...bar, notes: notes[index] ?? [], origin: 'hand' as const })),
  }));
  return printLesson(setInstrument(written, { openStrings: fiveStrings }));
}

test('a line for five strings goes to a left hand on four: what they do not have moves by octaves, and can be refused', async () => {
  const { page, expectClean } = await openApp({ width: 1440, height: 1000 });
  await page
    .locator('input[type="file"]')
    .first()
    .setInputFiles({
      name: 'low-steps.json',
      mimeType: 'application/json',
      buffer: Buffer.from(lowLesson()),
    });
  await expect.poll(() => page.getByRole('textbox', { name: 'Lesson title' }).inputValue()).toBe('Low steps');
  await page.getByText(/ for another student$/).click();
  await page.getByRole('combobox', { name: /^Another tuning/ }).selectOption('standard');
  const changes = page.getByRole('list', { name: /^Changes of/ });
  expect(await changes.getByRole('listitem').allTextContents()).toEqual([
    'Bar 1: 5 notes an octave higher. C1 lies below the lowest string. What stands beside it goes along, so that the tune keeps its shape.',
    'Bar 3: 1 note an octave higher. B0 lies below the lowest string.',
  ]);
  await page.getByText('Every note of the other bars keeps its place on the neck.').waitFor();
  const other = page.getByRole('figure', { name: / for the other student, on staff and tab$/ });
  await other.locator('svg').first().waitFor();
  const marks = page.locator('.regrade__lines section').nth(1).locator('.regrade__mark');
  await expect.poll(() => marks.count()).toBe(2);
  await changes.getByRole('checkbox').nth(1).uncheck();
  await expect.poll(() => marks.count()).toBe(1);
  await page.getByRole('button', { name: 'Take every change' }).click();

  await page.getByRole('combobox', { name: /^Another tuning/ }).selectOption('half-step-down');
  await page
    .getByText(/^Bars 2 and 4: the same notes, elsewhere on the neck, for the strings are tuned to /)
    .waitFor();
  await expect.poll(() => marks.allTextContents()).toEqual(['changed', 'elsewhere', 'changed', 'elsewhere']);

  await page.getByRole('checkbox', { name: 'For a left-handed bass' }).check();
  await page.getByText(/^Staff and tab are the same for either hand; /).waitFor();
  await page.getByRole('button', { name: 'Make it a version' }).click();
  const open = page.getByRole('combobox', { name: 'Version on the page' });
  await open.waitFor({ timeout: 30_000 });
  expectClean();
});
