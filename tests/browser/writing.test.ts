import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { openApp } from '../support/browser';
import { bar, open, PATIENCE, placeIn, says, steady, told } from '../support/pencil';

/** For so long after a tapped bar a key is a tap that came late and no command. */
const TAPS_ON_MS = 600;

describe('writing by hand', () => {
  test('by keyboard alone: a bar is emptied, written, changed, repeated by degree and taken back', async () => {
    const { page, expectClean } = await openApp({ context: { reducedMotion: 'reduce' } });
    await open(page, 2);
    await page.keyboard.press('Shift+Backspace');
    await says(page, /notes? gone, silence now/);
    for (const key of ['1', '3', '5', '[', '3', ']']) await page.keyboard.press(key);
    await says(page, /^F\d, ♭3, quarter, the & of 3 of bar 2/);
    await page.evaluate(axe.source);
    const faults = await page.evaluate(async () => {
      const runner: typeof axe = Reflect.get(window, 'axe');
      const { violations } = await runner.run('.strip', { runOnly: ['wcag2a', 'wcag2aa', 'wcag22aa'] });
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`);
    });
    expect(faults).toEqual([]);
    await page.keyboard.press('Enter');
    await page.keyboard.press('r');
    await says(page, /Bar 3: repeated by degree/);
    await expect.poll(() => told(page, 3), PATIENCE).toMatch(/R .*♭3 .*5 .*♭3/);
    await page.keyboard.press('Control+z');
    await page.keyboard.press('Control+z');
    await expect
      .poll(() => page.getByRole('status', { name: 'Done', exact: true }).textContent(), PATIENCE)
      .toBe('Taken back: change the length in bar 2.');
    // What the pencil said of the step is no longer so.
    await says(page, /^(?!Bar 3: repeated)/);
    await page.keyboard.press('Home');
    await page.keyboard.press('Shift+G');
    await says(page, /^From here: f\. /);
    await page.keyboard.press('Shift+A');
    await page.getByRole('textbox', { name: /^Word above bar \d$/ }).fill('build');
    await page.keyboard.press('Enter');
    await says(page, /^Above bar \d: build\. /);
    await expect.poll(() => told(page, 3), PATIENCE).toMatch(/^Over the bar: build\. f on 1\. /);
    await page.keyboard.press('Escape');
    await expect.poll(() => page.getByRole('application').count(), PATIENCE).toBe(0);
    // Whoever came by the keyboard goes on from where the pencil stood.
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label'));
    expect(await focused()).toMatch(/^Bar 3, /);
    expectClean();
  });

  test('by mouse: a click on the staff writes, a drag moves in one step, the tab and the neck take frets', async () => {
    const { page, expectClean } = await openApp({ context: { reducedMotion: 'reduce' } });
    await open(page, 2);
    await page.keyboard.press('Shift+Backspace');
    const there = await placeIn(page, 0.3, 0.4);
    await page.mouse.click(there.x, there.y);
    await says(page, /quarter, beat \d of bar 2/);
    const note = page.locator('.pencil__note');
    const box = await note.boundingBox();
    if (box === null) throw new Error('no note is selected');
    // What is told of a bar follows its notes.
    await expect.poll(() => told(page, 2), PATIENCE).toMatch(/quarter/);
    const before = await told(page, 2);
    await page.mouse.move(box.x + box.width / 2, there.y);
    await page.mouse.down();
    await page.mouse.move(box.x + box.width / 2, there.y - 8, { steps: 3 });
    await page.mouse.move(box.x + box.width / 2, there.y - 20, { steps: 3 });
    await page.mouse.up();
    await expect.poll(() => told(page, 2), PATIENCE).not.toBe(before);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => told(page, 2), PATIENCE).toBe(before);
    await page.getByRole('button', { name: 'Fretboard', exact: true }).click();
    const neck = page.locator('.fretboard__picture svg');
    await neck.waitFor();
    const picture = await neck.boundingBox();
    if (picture === null) throw new Error('no neck');
    await neck.click({ position: { x: picture.width * 0.4, y: picture.height * 0.45 } });
    await says(page, /string, fret \d+$/);
    expectClean();
  });

  test('by mouse: it goes on in the next bar, takes frets on the tab, and copies bars over other chords', async () => {
    const { page, expectClean } = await openApp({ context: { reducedMotion: 'reduce' } });
    await open(page, 1);
    const strip = page.getByRole('group', { name: /^Pencil in bar/ });
    const key = (name: RegExp) => strip.getByRole('button', { name }).first().click();
    const pointIn = async (number: number, across: number, down: number, shift = false) => {
      await bar(page, number).scrollIntoViewIfNeeded();
      const box = await bar(page, number).boundingBox();
      if (box === null) throw new Error(`no bar ${number}`);
      if (shift) await page.keyboard.down('Shift');
      await page.mouse.click(box.x + box.width * across, box.y + box.height * down);
      if (shift) await page.keyboard.up('Shift');
    };
    await key(/^Whole bar/);
    await key(/^Whole bar/);
    await key(/^To silence/);
    await strip.getByRole('radio', { name: 'whole' }).click();
    await pointIn(1, 0.5, 0.35);
    // The first bar is full: a click on the staff of the second goes on there.
    await says(page, /whole, beat 1 of bar 1/);
    await pointIn(2, 0.5, 0.35);
    await says(page, /whole, beat 1 of bar 2/);
    // Where writing does not go on, a click only goes there, and says so.
    await pointIn(5, 0.5, 0.3);
    await says(page, /^Silence, beat 1 of bar 5$/);
    expect(await told(page, 5)).toMatch(/^No notes yet/);
    // In another system the first click goes to the bar, the next one onto its tab.
    await pointIn(3, 0.5, 0.62);
    await says(page, /^Silence, beat 1 of bar 3$/);
    await pointIn(3, 0.5, 0.62);
    // A fret's key says which degree and note it is here.
    await key(/^3 (R|[♭♯]?\d) [A-G]/);
    await says(page, /^(G1|C2|F2|B♭2), .*whole, beat 1 of bar 3, . string, fret 3$/);
    await expect.poll(() => told(page, 3), PATIENCE).toMatch(/ on 1, .*string fret 3/);
    await pointIn(1, 0.5, 0.1);
    await pointIn(3, 0.5, 0.1, true);
    await says(page, /^Selected from beat 1 of bar 1 to beat 1 of bar 3$/);
    await key(/^Copy/);
    await says(page, /^Copied 3 notes\./);
    const degrees = async (number: number) => (await told(page, number))?.split(' ')[0];
    const names = async (number: number) => / on 1, (\S+), whole/.exec((await told(page, number)) ?? '')?.[1];
    await pointIn(5, 0.5, 0.1);
    await key(/^Paste$/);
    await says(page, /^Pasted by degree\. /);
    await expect.poll(() => degrees(6), PATIENCE).toMatch(/^[♭♯]?\d|R$/);
    expect((await degrees(6))?.replace('♭', '')).toBe((await degrees(2))?.replace('♭', ''));
    await pointIn(6, 0.5, 0.1);
    await key(/^Paste as it is/);
    await says(page, /^Pasted as it was\. /);
    await expect.poll(() => names(6), PATIENCE).toBe(await names(1));
    expect([await names(1), await names(7)]).toEqual([expect.stringMatching(/^[A-G]/), await names(2)]);
    expectClean();
  });

  test('by thumb on a phone: large keys under the bar write and mend it', async () => {
    const { page, expectClean } = await openApp({
      width: 390,
      height: 844,
      context: { hasTouch: true, reducedMotion: 'reduce' },
    });
    await open(page, 1);
    const strip = page.getByRole('group', { name: 'Pencil in bar 1' });
    const key = (name: RegExp) => strip.getByRole('button', { name }).first();
    await key(/^Empty the bar/).tap();
    await says(page, /silence now/);
    for (const name of [/^R F/, /^3 A/, /^5 C/, /^R F/]) await key(name).tap();
    await strip.getByRole('radio', { name: 'half' }).tap();
    await says(page, /too much/);
    await strip.getByRole('button', { name: 'Shorten at the bar line' }).tap();
    await expect.poll(() => strip.getByText('too much.').count(), PATIENCE).toBe(0);
    const sizes = await strip
      .locator('.strip__key:visible')
      .evaluateAll((keys) =>
        keys.map((each) => each.getBoundingClientRect()).map(({ width, height }) => Math.min(width, height)),
      );
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(44);
    expect(
      await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth),
    ).toBeLessThanOrEqual(0);
    expectClean();
  });

  test('a rhythm is tapped in tempo after a bar of count-in, or taken from another bar', async () => {
    const { page, expectClean } = await openApp({ context: { reducedMotion: 'reduce' } });
    await open(page, 2);
    await page.getByRole('combobox', { name: 'Take another rhythm' }).selectOption({ index: 1 });
    await says(page, /^Bar 2 has the rhythm of bar \d+(, \d notes? fewer)?\. /);
    // An idea that is taken while the pencil is out is said as well.
    await page
      .getByRole('list', { name: 'Ideas for bar 2' })
      .getByRole('button', { name: /Take it$/ })
      .first()
      .click();
    await expect
      .poll(() => page.getByRole('status', { name: 'Done', exact: true }).textContent(), PATIENCE)
      .toBe('Done: take an idea for bar 2.');
    await page.getByRole('application').focus();
    await page.keyboard.press('q');
    const pad = page.getByRole('button', { name: /^Tap bar 2 now/ });
    await pad.waitFor();
    await pad.dispatchEvent('pointerdown');
    await page.waitForTimeout(120);
    await pad.dispatchEvent('pointerup');
    await says(page, /^Bar 2 has the rhythm that was tapped(, \d notes? fewer)?\. /);
    // One note was tapped; how late, depends on the machine.
    await expect
      .poll(async () => (await told(page, 2))?.split('; ').filter((each) => !each.startsWith('rest')).length)
      .toBe(1);
    // A key that is held beyond the end of the bar repeats itself, and means no command; Escape leaves all as it was.
    await page.waitForTimeout(TAPS_ON_MS);
    await page.keyboard.press('q');
    await pad.waitFor();
    await page.keyboard.down('j');
    await pad.waitFor({ state: 'detached' });
    const tapped = await steady(page, 2);
    for (let again = 0; again < 3; again += 1) await page.keyboard.down('j');
    await page.keyboard.up('j');
    await says(page, /^Bar 2 has the rhythm that was tapped/);
    expect(await steady(page, 2)).toBe(tapped);
    await page.waitForTimeout(TAPS_ON_MS);
    await page.keyboard.press('q');
    await page.getByRole('button', { name: /^Count-in; then tap bar 2/ }).waitFor();
    await page.keyboard.press('Escape');
    await pad.waitFor({ state: 'detached' });
    expect(await told(page, 2)).toBe(tapped);
    // Whoever goes to another bar leaves this one as it was, and taps nothing there.
    await page.keyboard.press('q');
    await page.getByRole('button', { name: /^Count-in; then tap bar 2/ }).waitFor();
    await bar(page, 6).click();
    await says(page, / of bar 6/);
    expect(await page.getByRole('button', { name: /tap bar/i }).count()).toBe(0);
    expectClean();
  });

  test('on a telephone held sideways staff, tab and keys are in view together', async () => {
    const { page, expectClean } = await openApp({
      width: 844,
      height: 390,
      context: { hasTouch: true, reducedMotion: 'reduce' },
    });
    await open(page, 6);
    const strip = page.getByRole('group', { name: 'Pencil in bar 6' });
    await strip.getByRole('button', { name: /^5 C/ }).tap();
    await says(page, /^C\d, 5, /);
    const inView = async (part: ReturnType<Page['locator']>) => {
      const box = await part.boundingBox();
      return box === null ? null : { top: box.y, bottom: box.y + box.height };
    };
    const [system, values, keys, groups, play] = await Promise.all([
      inView(page.locator('.system', { has: page.getByRole('application') })),
      inView(strip.getByRole('radiogroup', { name: 'Note value' })),
      inView(strip.locator('.strip__keys')),
      inView(strip.getByRole('combobox', { name: 'Keys shown' })),
      inView(page.getByRole('button', { name: 'Play', exact: true })),
    ]);
    // From the chords to the degrees, then the values, the keys beside their choice, and Play: one under the other.
    expect(system?.top).toBeGreaterThanOrEqual(0);
    expect(values?.top).toBeGreaterThanOrEqual((system?.bottom ?? Number.POSITIVE_INFINITY) - 1);
    expect(keys?.top).toBeGreaterThanOrEqual((values?.bottom ?? Number.POSITIVE_INFINITY) - 1);
    expect(groups?.top).toBeGreaterThanOrEqual((values?.bottom ?? Number.POSITIVE_INFINITY) - 1);
    expect(play?.top).toBeGreaterThanOrEqual((keys?.bottom ?? Number.POSITIVE_INFINITY) - 4);
    expect(play?.bottom).toBeLessThanOrEqual(390);
    await strip.getByRole('combobox', { name: 'Keys shown' }).selectOption('Marks');
    await strip.getByRole('button', { name: 'Accent', exact: true }).tap();
    await expect.poll(() => told(page, 6), PATIENCE).toContain(', accent');
    expectClean();
  });

  test.each([
    { by: 'mouse', width: 1440, height: 900, hasTouch: false },
    { by: 'thumb', width: 390, height: 844, hasTouch: true },
  ])(
    'loudness, a hairpin, a fermata and a word above the bar, by $by',
    async ({ by, width, height, hasTouch }) => {
      const { page, expectClean } = await openApp({
        width,
        height,
        context: { hasTouch, reducedMotion: 'reduce' },
      });
      await open(page, 2);
      const strip = page.getByRole('group', { name: 'Pencil in bar 2' });
      const press = async (part: ReturnType<Page['locator']>) => {
        if (by === 'thumb') await part.tap();
        else await part.click();
      };
      const key = async (group: string, name: string) => {
        if (by === 'thumb') await press(strip.getByRole('radio', { name: group, exact: true }));
        await press(strip.getByRole('button', { name, exact: true }));
      };
      await key('Loudness and words', 'Louder');
      await expect.poll(() => told(page, 2), PATIENCE).toMatch(/^f on 1\./);
      await key('Loudness and words', 'Fading');
      await expect.poll(() => told(page, 2), PATIENCE).toMatch(/^f on 1, fading\./);
      await key('Marks', 'Fermata');
      await expect.poll(() => told(page, 2), PATIENCE).toContain(', fermata');
      await key('Loudness and words', 'Word above');
      await page.getByRole('textbox', { name: 'Word above bar 2' }).fill('hold back');
      await press(page.getByRole('button', { name: 'Write it', exact: true }));
      await expect.poll(() => told(page, 2), PATIENCE).toMatch(/^Over the bar: hold back\./);
      const drawing = page.locator('.system__drawing').first();
      for (const sign of ['dynamic', 'hairpin', 'fermata', 'words'])
        expect(await drawing.locator(`.${sign}`).count(), sign).toBeGreaterThan(0);
      for (const left of ['Taken back: change the word in bar 2.', 'Taken back: mark a note in bar 2.']) {
        await page.keyboard.press('Control+z');
        await expect
          .poll(() => page.getByRole('status', { name: 'Done', exact: true }).textContent(), PATIENCE)
          .toBe(left);
      }
      await key('Loudness and words', 'No sign');
      await expect.poll(() => told(page, 2), PATIENCE).not.toContain('f on 1');
      expectClean();
    },
  );

  test('by a MIDI keyboard, asked for when first used; and by keys of one’s own', async () => {
    const { page, expectClean } = await openApp({
      context: { reducedMotion: 'reduce' },
      prepare: async (opened) => {
        await opened.addInitScript(() => {
          const input = { id: '1', name: 'Pads', onmidimessage: null };
          Reflect.set(window, 'pads', input);
          const access = { inputs: new Map([['1', input]]), onstatechange: null };
          Reflect.set(window, 'midi', access);
          Reflect.set(navigator, 'requestMIDIAccess', async () => access);
        });
      },
    });
    await open(page, 2);
    await page.getByRole('button', { name: 'Play it in by MIDI' }).click();
    await says(page, 'Listening to Pads.');
    await page.evaluate(() => {
      const pads: { onmidimessage: (event: { data: number[] }) => void } = Reflect.get(window, 'pads');
      pads.onmidimessage({ data: [0x90, 38, 100] });
    });
    await says(page, /^D2, R, /);
    // A keyboard that is connected later is heard as well, until nothing is to be heard any longer.
    const heard = await page.evaluate(() => {
      const midi = Reflect.get(window, 'midi');
      const keys: { id: string; name: string; onmidimessage: null | ((event: object) => void) } = {
        id: '2',
        name: 'Keys',
        onmidimessage: null,
      };
      midi.inputs.set('2', keys);
      midi.onstatechange();
      Reflect.set(window, 'keys', keys);
      return keys.onmidimessage !== null;
    });
    expect(heard).toBe(true);
    await says(page, 'Listening to Pads and Keys.');
    await page.evaluate(() => Reflect.get(window, 'keys').onmidimessage({ data: [0x93, 33, 1] }));
    await says(page, /^A1, 5, /);
    await page.getByRole('button', { name: 'Play it in by MIDI' }).click();
    await says(page, 'No longer listening to MIDI.');
    expect(await page.evaluate(() => Reflect.get(window, 'keys').onmidimessage)).toBeNull();
    await page.locator('summary', { hasText: 'All keys' }).click();
    await page
      .getByRole('button', { name: 'Key for: Write the fifth of the chord, nearest to the last note' })
      .click();
    await page.keyboard.press('q');
    await page.getByRole('application').focus();
    await page.keyboard.press('q');
    await says(page, /, 5, /);
    expectClean();
  });
});
