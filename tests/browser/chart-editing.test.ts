import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openApp } from '../support/browser';

const button = (page: Page, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });

const bars = (page: Page): Promise<readonly (string | null)[]> =>
  page
    .getByRole('figure', { name: 'Score', exact: true })
    .getByRole('button', { name: /^Bar \d+, / })
    .evaluateAll((buttons) => buttons.map((each) => each.getAttribute('aria-label')));

test('a teacher edits the chart on the sheet and in its text, and both show one chart', async () => {
  const opened = await openApp();
  const { page } = opened;
  const chart = page.getByRole('textbox', { name: 'Chord chart' });
  await button(page, /^Bar 2, /).waitFor();

  await chart.fill('| F | Gmni | C7 | F |');
  await button(page, /^Write Gm in line 1/).click();
  expect(await chart.inputValue()).toBe('| F | Gm | C7 | F |');
  await button(page, 'Bar 2, Gm').click();

  const chords = page.getByRole('textbox', { name: 'Chords of bar 2' });
  await chords.fill('Dm Gm');
  await chords.press('Enter');
  await button(page, 'Bar 2, Dm Gm').waitFor();
  expect(await chart.inputValue()).toBe('| F | Dm Gm | C7 | F |');

  await button(page, 'Split the bar').click();
  await button(page, 'Bar 5, F').waitFor();
  expect(await bars(page)).toEqual(['Bar 1, F', 'Bar 2, Dm', 'Bar 3, Gm', 'Bar 4, C7', 'Bar 5, F']);

  await button(page, 'Insert a bar after').click();
  const fresh = page.getByRole('textbox', { name: 'Chords of bar 3' });
  await fresh.waitFor();
  await expect.poll(() => fresh.evaluate((field) => field === document.activeElement)).toBe(true);
  await page.keyboard.type('Bb');
  await page.keyboard.press('Enter');
  await button(page, 'Bar 3, B♭').waitFor();
  expect(await chart.inputValue()).toBe('| F | Dm | Bb | Gm | C7 | F |');

  await button(page, 'Remove the bar').click();
  await button(page, 'Bar 3, Gm').waitFor();
  await button(page, 'Repeat the bar').click();
  await button(page, 'Bar 4, Gm').waitFor();
  expect(await chart.inputValue()).toBe('| F | Dm | Gm | % | C7 | F |');

  await page.getByText('Transpose, note names').click();
  await page.getByRole('combobox', { name: 'Note names' }).selectOption('fixed do');
  await button(page, 'Bar 2, Rem').waitFor();
  expect(await chart.inputValue()).toBe('| Fa | Rem | Solm | % | Do7 | Fa |');

  await page.getByText('What the chords do').click();
  const does = page.getByRole('list', { name: 'What the chords do' });
  await does.getByText('Fa (I) is home.').waitFor();
  await chart.fill('(1) Do7 | Fa | Do7 | Sib | Fa |');
  await does.getByText(/^Do7 .* The pickup and bar 2$/).waitFor();
  opened.expectClean();
});

const FULL = `; by heart
Verse: ; softly
(1) C7 |: F | Dm |1. Gm C7 :|2. Gm / / C7 | F | ; both endings
Waltz:
| (3/4) Bb | F |(6/8) Dm |(12/8) C7 |(2/2) F | (4/4) F |
Verse
End:
|: F | C7 :| x3 F | ; slower`;

/** What each bar holds, without its number: chords and notes, wherever the hand plays them. */
const held = async (page: Page): Promise<readonly string[]> =>
  page
    .getByRole('figure', { name: 'Score', exact: true })
    .getByRole('button', { name: /^(Bar \d+|The pickup), / })
    .evaluateAll((buttons) =>
      buttons.map(
        (each) =>
          `${each.getAttribute('aria-label')?.replace(/^(Bar \d+|The pickup)/, '')} ${each.getAttribute('aria-description')?.replace(/, \S+ string (open|fret \d+(, finger \d)?)/g, '')}`,
      ),
    );

/** The name of what has the focus; '' for a field. */
const focused = (page: Page): Promise<string | null> =>
  page.evaluate(
    () => document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent ?? null,
  );

test('with the keyboard alone, a chart of every kind of bar is edited on the sheet and nothing else moves', async () => {
  const opened = await openApp({ width: 1024, height: 800, context: { reducedMotion: 'reduce' } });
  const { page } = opened;
  const chart = page.getByRole('textbox', { name: 'Chord chart' });
  const status = page
    .getByRole('group', { name: /^Ideas for bar/ })
    .getByRole('status')
    .and(page.locator(':not([aria-label])'));
  await button(page, 'Chart and aims').click();
  await chart.fill(FULL);
  await button(page, 'Bar 20, F').waitFor();
  await button(page, 'Compose line').click();
  await expect
    .poll(async () => (await held(page)).filter((bar) => bar.endsWith('No notes yet.')), { timeout: 20_000 })
    .toEqual([]);
  const before = await held(page);
  const undone = async () => {
    await page.keyboard.press('Control+z');
    await expect.poll(() => chart.inputValue()).toBe(FULL);
    await expect.poll(() => held(page)).toEqual(before);
  };
  const choose = async (name: string) => {
    await button(page, name).focus();
    await page.keyboard.press('Enter');
  };
  const press = async (name: string) => {
    await button(page, name).focus();
    await page.keyboard.press('Enter');
  };

  // The only bar of the first ending, in a section that is used again: both its uses go, and are parked.
  await choose('Bar 3, Gm C7');
  await page.getByText('What you change here changes bar 15 too, where “Verse” is used again.').waitFor();
  await press('Remove the bar');
  await button(page, 'Bar 3, Gm C7').waitFor();
  await expect
    .poll(() => chart.inputValue())
    .toBe(FULL.replace('|1. Gm C7 :|2. Gm / / C7 |', ':| Gm / / C7 |'));
  await expect.poll(() => held(page)).toEqual(before.filter((_, index) => index !== 3 && index !== 15));
  await expect
    .poll(() => status.textContent())
    .toMatch(/^2 bars are parked, kept outside the line, .*Undo brings them back/);
  expect(await focused(page)).toBe('Remove the bar');
  await undone();
  await expect.poll(() => status.textContent()).toBe('');

  // A bar alone in its line of the score: the drawer goes with what is chosen, and the focus goes with the drawer.
  await page.keyboard.press('Escape');
  expect(await focused(page)).toBe('Bar 3, Gm C7');
  await choose('Bar 6, B♭');
  await press('Insert a bar before');
  await expect.poll(() => focused(page)).toBe('');
  await page.keyboard.type('Eb');
  await page.keyboard.press('Enter');
  await button(page, 'Bar 6, E♭').waitFor();
  expect(await chart.inputValue()).toBe(FULL.replace('(3/4) Bb', '(3/4) Eb | Bb'));
  const [, ...after] = (await held(page)).slice(6);
  expect([...(await held(page)).slice(0, 6), ...after]).toEqual(before);
  await page.keyboard.press('Control+z');
  await undone();

  // What was parked comes back behind a bar of its length.
  await choose('Bar 11, F');
  await press('Remove the bar');
  await button(page, 'Bar 19, F').waitFor();
  await page.keyboard.press('Escape');
  await choose('Bar 1, F');
  await page.getByText(/^Parked bars: \d/).click();
  await page
    .getByRole('button', { name: /^Put F \(.*\) back behind bar 1$/ })
    .last()
    .focus();
  await page.keyboard.press('Enter');
  await expect.poll(async () => (await held(page))[2]).toBe(before[11]);
  expect(await chart.inputValue()).toContain('(1) C7 |: F | F | Dm |1.');

  opened.expectClean();
});

test('on a phone and at 400 % zoom, the drawer of a bar begins within the window, Close beside its name', async () => {
  for (const [width, height] of [
    [390, 844],
    [320, 256],
  ] as const) {
    const opened = await openApp({ width, height });
    const { page } = opened;
    await button(page, /^Bar 2, /).press('Enter');
    const drawer = page.getByRole('group', { name: /^Ideas for bar 2/ });
    const placeOf = async (each: Locator) => {
      const box = await each.boundingBox();
      if (box === null) throw new Error('It is not on the page.');
      return box;
    };
    const name = drawer.getByRole('heading', { name: /^Ideas for bar 2/ });
    await expect.poll(async () => (await placeOf(drawer)).y).toBeGreaterThanOrEqual(0);
    await expect.poll(async () => (await placeOf(drawer)).y).toBeLessThan(height - 100);
    const [title, close] = [await placeOf(name), await placeOf(button(page, 'Close'))];
    expect(Math.abs(title.y + title.height / 2 - close.y - close.height / 2)).toBeLessThan(12);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    opened.expectClean();
  }
});

test('on a phone, the keys of sections are written into the chart one after the other', async () => {
  const opened = await openApp({ width: 390, height: 844 });
  const { page } = opened;
  const chart = page.getByRole('textbox', { name: 'Chord chart' });
  await button(page, 'Chart and aims').click();
  await chart.fill(
    'Verse:\n| C | F | G7 | C |\nMiddle: ; brighter\n| E | A | B7 | E |\nTurn:\n| Bb | Eb | F7 | Bb |\nVerse',
  );
  await page.getByRole('combobox', { name: 'Key', exact: true }).selectOption({ label: 'C major' });
  const selected = () =>
    chart.evaluate((field: HTMLTextAreaElement) =>
      field === document.activeElement ? field.value.slice(field.selectionStart, field.selectionEnd) : null,
    );
  await button(page, 'Write E major over Middle').focus();
  await page.keyboard.press('Enter');
  await expect.poll(selected).toBe('(key: E)');
  await button(page, 'Write B♭ major over Turn').focus();
  await page.keyboard.press('Enter');
  await expect
    .poll(() => chart.inputValue())
    .toBe(
      'Verse:\n| C | F | G7 | C |\nMiddle: ; brighter\n| (key: E) E | A | B7 | E |\nTurn:\n| (key: Bb) Bb | Eb | F7 | Bb |\nVerse',
    );
  await button(page, 'Back to the sheet').click();
  await page
    .getByText(' · C major: no sharps or flats, E major from bar 5, B♭ major from bar 9, C major from bar 13')
    .first()
    .waitFor();
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  opened.expectClean();
});

/** What on the page reaches over the right edge of the window, whether it makes the page wider or is cut off there. */
const tooWide = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const page = document.documentElement.scrollWidth > innerWidth ? ['the page scrolls'] : [];
    const over = [...document.querySelectorAll('body *')].filter(
      (each) => each.getBoundingClientRect().right > innerWidth + 0.5,
    );
    return [...page, ...over.map((each) => `${each.tagName} ${each.getAttribute('class')}`)];
  });

test('on a phone, a word and a name of 500 letters stay inside the window, on the pad and on the sheet', async () => {
  const opened = await openApp({ width: 390, height: 844 });
  const { page } = opened;
  await button(page, 'Chart and aims').click();
  const word = 'Zz'.repeat(250);
  const name = 'Verse'.repeat(100);
  const chart = page.getByRole('textbox', { name: 'Chord chart' });
  await chart.fill(`${name}:\n| F | ${word} | C | F |\nTempo ${word}`);
  const problems = page.getByRole('list', { name: 'Chart problems' });
  await problems.getByText('is too long for the name of a section (500 characters; 60 at most).').waitFor();
  await problems.getByText('is too long for a chord symbol (500 characters; 80 at most).').waitFor();
  expect(await tooWide(page)).toEqual([]);
  for (const words of await problems.getByRole('button').allTextContents())
    expect(words.length).toBeLessThan(200);

  // As much of the name as a section can have is suggested, and is its name then.
  await button(page, /^Write VerseVerse.*: in line 1, column 1$/).click();
  expect(await chart.inputValue()).toMatch(new RegExp(`^${name.slice(0, 60)}:\n\\| F \\| ${word} \\|`));
  await button(page, 'Back to the sheet').click();
  await button(page, `Bar 2, ${word.slice(0, 20)}…`).waitFor();
  expect(await tooWide(page)).toEqual([]);
  opened.expectClean();
});
