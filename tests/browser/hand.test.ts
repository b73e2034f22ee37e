import axe from 'axe-core';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { fret } from '../../src/core/base';
import { writeLessonLink } from '../../src/core/exchange';
import { deriveSheet, keepPosition, linePiece, setHand, setLevel, setPlaying } from '../../src/core/lesson';
import { formatName } from '../../src/core/theory';
import { lineComposed, openApp } from '../support/browser';
import { pinnedPath, pinnedSample } from '../support/pinned';

const WIDTHS = [
  { width: 1440, height: 900 },
  { width: 390, height: 844 },
] as const;

const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** @param part what is looked at: where the pad is scrolled half over a field, the field is no smaller for it */
async function expectAccessible(page: Page, part = 'html'): Promise<void> {
  await page.evaluate(() => Promise.all(document.getAnimations().map((animation) => animation.finished)));
  await page.evaluate(axe.source);
  const found = await page.evaluate(
    async ({ tags, root }) => {
      const runner: typeof axe = Reflect.get(window, 'axe');
      // What a head or ledge that sticks covers half, as the page happens to be scrolled, is no smaller for it.
      const sticking = [...document.querySelectorAll<HTMLElement>('body *')].filter((element) =>
        ['sticky', 'fixed'].includes(getComputedStyle(element).position),
      );
      for (const element of sticking) element.style.position = 'relative';
      const { violations } = await runner.run(root, { runOnly: tags });
      for (const element of sticking) element.style.position = '';
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`);
    },
    { tags: RULES, root: part },
  );
  expect(found).toEqual([]);
}

const expectNoSidewaysScroll = async (page: Page): Promise<void> =>
  expect(
    await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
  ).toBeLessThanOrEqual(0);

const button = (page: Page | Locator, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });

async function withPad(page: Page, work: () => Promise<void>): Promise<void> {
  const opener = button(page, 'Chart and aims');
  if ((await opener.count()) > 0) await opener.click();
  await work();
  const back = button(page, 'Back to the sheet');
  if ((await back.count()) > 0) await back.click();
}

async function openFingering(page: Page): Promise<void> {
  await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
  await button(page, 'Bar 3, Gm').click();
  await page.locator('summary', { hasText: 'Fingering of bar 3' }).click();
  await page.getByRole('list', { name: 'Ways to play the bar' }).waitFor();
}

const described = (page: Page) => button(page, 'Bar 3, Gm').getAttribute('aria-description');

const ways = (page: Page): Locator => page.getByRole('list', { name: /^Ways to play/ }).getByRole('listitem');

describe.each(WIDTHS)('the hand at $width pixels', ({ width, height }) => {
  test('a bar is played elsewhere by keyboard, stays so through another take, and is let go', async () => {
    const { page, expectClean } = await openApp({ width, height, path: pinnedPath() });
    await openFingering(page);
    const before = await described(page);
    expect(await ways(page).count()).toBeGreaterThan(1);
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);

    await button(ways(page), /^Play it there/)
      .first()
      .focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => described(page)).not.toBe(before);
    const taken = await described(page);
    expect(taken).toMatch(/Kept\.$/);
    await page.keyboard.press('Control+z');
    await expect.poll(() => described(page)).toBe(before);
    await page.keyboard.press('Control+Shift+z');
    await expect.poll(() => described(page)).toBe(taken);

    await withPad(page, () => button(page, 'Another take').click());
    await lineComposed(page);
    await expect.poll(() => described(page)).toBe(taken);

    await page.getByRole('combobox', { name: 'Elsewhere on the neck' }).selectOption('The whole line');
    await expect.poll(() => ways(page).count()).toBeGreaterThan(1);
    await button(page, 'Let the pins of this bar go').click();
    await expect.poll(() => described(page)).not.toMatch(/Kept/);
    expectClean();
  });

  test('what cannot be played is said with its place and mended by one button and one undo', async () => {
    const { page, expectClean } = await openApp({ width, height, path: pinnedPath() });
    await openFingering(page);
    const before = await described(page);
    // A fretted place with the open string's finger: no hand can do that.
    const place = page.getByRole('combobox', { name: /^Place of / }).first();
    const fretted = place.locator('option', { hasText: /fret \d+, pinned$/ }).first();
    await place.selectOption((await fretted.textContent()) ?? '');
    await page
      .getByRole('combobox', { name: /^Finger for / })
      .first()
      .selectOption('0, pinned');
    await withPad(page, async () => {
      const findings = page.getByRole('list', { name: 'Lesson check' });
      const finding = button(findings, /^Bar 3, (after )?beat \d: /);
      await finding.waitFor();
      const repair = button(findings, /^Let the hand choose Bar 3, /);
      await repair.waitFor();
      await expectAccessible(page, '.check-list');
      await repair.click();
      await expect.poll(() => finding.count()).toBe(0);
      await page.keyboard.press('Control+z');
      await expect.poll(() => finding.count()).toBe(1);
      await page.keyboard.press('Control+Shift+z');
      await expect.poll(() => finding.count()).toBe(0);
    });
    expect(await described(page)).toBe(before);
    expectClean();
  });

  test('the neck follows the instrument: own tuning, left-handed, shapes of the chord', async () => {
    const { page, expectClean } = await openApp({ width, height });
    await openFingering(page);
    await withPad(page, async () => {
      await page.locator('summary', { hasText: 'Bass and hand' }).click();
      const strings = page.getByRole('textbox', { name: 'Open strings, lowest first' });
      await strings.fill('D A D');
      await strings.press('Enter');
      await page.getByText(/^Write the open strings from the lowest/).waitFor();
      await strings.fill('C G D G');
      await strings.press('Enter');
      await page.getByRole('spinbutton', { name: 'Frets', exact: true }).fill('24');
      await page.getByRole('combobox', { name: 'Hand system' }).selectOption('1-2-4');
      await page.getByRole('combobox', { name: 'Hand size' }).selectOption('Own measure');
      await page.getByRole('spinbutton', { name: 'Reach in mm' }).fill('120');
      await page.getByRole('checkbox', { name: 'Left-handed' }).check();
      await expectAccessible(page);
      await expectNoSidewaysScroll(page);
    });
    await button(page, 'Fretboard').click();
    const neck = page.getByRole('region', { name: 'Fretboard' });
    const picture = neck.getByRole('img');
    await picture.waitFor();
    expect(await picture.getAttribute('aria-label')).toMatch(/^Bar 3, Gm, hand position/);
    const name = await neck.locator('.string-name').first().boundingBox();
    expect(name?.x).toBeGreaterThan(width / 2);

    const shown = neck.getByRole('combobox', { name: 'Shown on the neck' });
    const octave = await shown
      .locator('option', { hasText: /^octave of chord tones in position/ })
      .first()
      .textContent();
    await shown.selectOption(octave ?? '');
    await neck.getByRole('combobox', { name: 'Written on the notes' }).selectOption('name');
    await expect.poll(() => picture.getAttribute('aria-label')).toMatch(/octave of chord tones in position/);
    expect(await neck.locator('.plate-text').allTextContents()).toContain('B♭');
    await expectAccessible(page, '.fretboard');
    await expectNoSidewaysScroll(page);
    expectClean();
  });
});

/** What the neck says at one moment of playing. */
interface Moment {
  readonly says: string;
  readonly sounding: readonly string[];
  readonly coming: string;
}

/** Writes down every picture of the neck from now on. */
const watchNeck = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const moments: Moment[] = [];
    Object.assign(window, { moments });
    const neck = document.querySelector('.fretboard');
    if (neck === null) throw new Error('no neck');
    new MutationObserver(() => {
      const texts = (marks: string) =>
        [...neck.querySelectorAll(marks)].map(({ textContent }) => textContent ?? '');
      moments.push({
        says: neck.querySelector('svg')?.getAttribute('aria-label') ?? '',
        sounding: texts('.plate-text.sounding'),
        coming: texts('.next-position').join(''),
      });
    }).observe(neck, { childList: true, subtree: true });
  });

/** Without what follows on itself. */
const changes = (texts: readonly string[]): readonly string[] =>
  texts.filter((text, index) => text !== texts[index - 1]);

/** Whether all of one list come in another, in their order. */
function comesWithin(part: readonly string[], whole: readonly string[]): boolean {
  let found = -1;
  return part.every((text) => {
    found = whole.indexOf(text, found + 1);
    return found >= 0;
  });
}

test('the neck shows the note that sounds, and announces the shift before it comes', async () => {
  const ID = 'piece-1';
  const kept = keepPosition(pinnedSample(0, 'test'), ID, { first: 4, last: 4 }, fret(1));
  const shifted = setHand(setLevel(keepPosition(kept, ID, { first: 5, last: 5 }, fret(5)), ID, 5), ID, {
    openStrings: 'avoid',
  });
  const lesson = setPlaying(shifted, ID, {
    loop: false,
    countIn: 0,
    passage: { first: 5, last: 6 },
    tempoShare: 70,
  });
  const piece = linePiece(lesson, ID);
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (sheet?.kind !== 'line') throw new Error('not a line');
  const inBars = sheet.bars
    .slice(4, 6)
    .flatMap((bar) => bar.notes.map(({ note }) => `Bar ${bar.written.number} ${formatName(note.pitch)}`));

  const { page, expectClean } = await openApp({
    path: new URL(writeLessonLink(lesson, 'http://page/')).hash,
  });
  await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
  await button(page, 'Fretboard').click();
  const neck = page.getByRole('region', { name: 'Fretboard' });
  await neck.getByRole('img').waitFor();
  await neck.getByRole('combobox', { name: 'Written on the notes' }).selectOption('name');
  await watchNeck(page);
  await button(page, 'Play').click();
  await button(page, 'Stop').waitFor();
  await button(page, 'Play').waitFor();
  const moments = await page.evaluate((): Moment[] => Reflect.get(window, 'moments'));

  const heard = moments.flatMap(({ says, sounding }) => {
    const [, bar] = /^(Bar \d+),/.exec(says) ?? [];
    const [, name] = /Sounding now: (.+?)\./.exec(says) ?? [];
    // What is drawn in reverse is what the words say.
    expect(sounding).toEqual(name === undefined ? [] : [name]);
    return bar === undefined || name === undefined ? [] : [`${bar} ${name}`];
  });
  expect(comesWithin(changes(heard), inBars)).toBe(true);
  expect(new Set(heard).size).toBeGreaterThan(new Set(inBars).size / 2);

  const announced = moments.findIndex(({ coming }) => coming === 'then V');
  const shift = moments.findIndex(({ says }) => /^Bar 6,.*hand position V\..*Sounding now/.test(says));
  expect(announced).toBeGreaterThanOrEqual(0);
  expect(shift).toBeGreaterThan(announced);
  for (const { says, coming } of moments.slice(announced, shift)) {
    if (says.startsWith('Bar 5,') && says.includes('hand position I.')) {
      expect(coming).toBe('then V');
      expect(says).toMatch(/Then the hand moves to position V\.$/);
    }
  }
  // Out of play, the neck shows the chosen bar again and nothing sounds.
  expect(moments.at(-1)?.sounding).toEqual([]);
  expectClean();
});

describe.each(WIDTHS)('the shapes of the chords at $width pixels', ({ width, height }) => {
  test('lie all at once under the score, and those of one chord along the neck', async () => {
    const { page, expectClean } = await openApp({ width, height });
    await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
    const fold = page.locator('summary', { hasText: 'Shapes of the chords' });
    expect(await fold.textContent()).toMatch(/F · Dm · Gm · C7 · F7 · B♭ · C$/);
    await fold.click();
    const all = page.getByRole('list', { name: 'Shapes of the chords' });
    await all.getByRole('listitem').nth(6).scrollIntoViewIfNeeded();
    await expect.poll(() => all.getByRole('img').count()).toBe(7);
    const said = await all.getByRole('img').evaluateAll((pictures) => pictures.map((each) => each.ariaLabel));
    expect(said[2]).toMatch(/^Gm: chord tones in position I, hand position I\. .*G, root, finger 3/);
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);

    await page.getByRole('combobox', { name: 'Notes of the shapes' }).selectOption('scale');
    await page.getByRole('combobox', { name: 'Written on the shapes' }).selectOption('name');
    await expect.poll(() => all.locator('.plate-text').allTextContents()).toContain('E♭');
    await button(page, 'All shapes of Gm').click();
    const octaves = page.getByRole('list', { name: 'All shapes of Gm' });
    await octaves.getByRole('img').first().waitFor();
    expect(await octaves.getByRole('listitem').count()).toBeGreaterThan(3);
    expect(await octaves.locator('svg').first().locator('.plate').count()).toBe(8);
    await expectAccessible(page);
    await expectNoSidewaysScroll(page);
    await button(page, 'Back to all chords').click();
    await all.waitFor();
    expectClean();
  });
});
