import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { openApp } from '../support/browser';
import { bar, open, PATIENCE, placeIn, says, told } from '../support/pencil';
import { pinnedPath } from '../support/pinned';

describe('the pencil', () => {
  test.each([
    { held: 'upright', width: 390, height: 844 },
    { held: 'sideways', width: 844, height: 390 },
  ])(
    'on a telephone held $held the neck lies under the keys, each place as large as a thumb',
    async ({ width, height }) => {
      const { page, expectClean } = await openApp({
        path: pinnedPath(),
        width,
        height,
        context: { hasTouch: true, reducedMotion: 'reduce' },
      });
      await open(page, 1);
      await page.getByRole('button', { name: 'Fretboard', exact: true }).tap();
      const neck = page.locator('.fretboard__picture');
      await neck.locator('svg').waitFor();
      const strip = page.getByRole('group', { name: 'Pencil in bar 1' });
      // The keys are not covered: a tap on the middle of one writes.
      await strip.getByRole('button', { name: /^5 C/ }).tap();
      await says(page, /^C\d, 5, .*bar 1/);
      const places = await neck.evaluate((element) => {
        const middles = (selector: string, side: 'top' | 'left') =>
          [...element.querySelectorAll(selector)].map((line) => line.getBoundingClientRect()[side]);
        return { strings: middles('path.string', 'top'), wires: middles('path.nut, path.fret', 'left') };
      });
      const apart = (all: readonly number[]) => all.slice(1).map((at, index) => at - (all[index] ?? 0));
      expect(places.strings).toHaveLength(4);
      expect(places.wires).toHaveLength(13);
      expect(Math.min(...apart(places.strings), ...apart(places.wires))).toBeGreaterThanOrEqual(44);
      const [, , a = 0] = places.strings;
      const [, , second = 0, third = 0] = places.wires;
      await page.touchscreen.tap((second + third) / 2, a);
      await says(page, /^C2, 5, .*A string, fret 3$/);
      // The score is a moment behind what is said.
      await expect.poll(() => told(page, 1)).toContain('5 on 2, C, quarter, A string fret 3');
      // Drawn sideways, the neck shows its other end, and nothing is written.
      const before = await told(page, 1);
      await neck.evaluate((element) => element.scrollBy(1000, 0));
      expect(await neck.evaluate((element) => element.scrollLeft)).toBeGreaterThan(0);
      expect(await told(page, 1)).toBe(before);
      expect(
        await page.evaluate(
          () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
        ),
      ).toBeLessThanOrEqual(0);
      expectClean();
    },
  );

  test.each([
    { width: 844, height: 390 },
    { width: 667, height: 340 },
    { width: 568, height: 320 },
    { width: 390, height: 667 },
    { width: 375, height: 553 },
  ])(
    'at $width by $height pixels the open neck leaves the staff, what is said, the value and the keys in view',
    async ({ width, height }) => {
      const { page, expectClean } = await openApp({
        width,
        height,
        context: { hasTouch: true, reducedMotion: 'reduce' },
      });
      await open(page, 2);
      // Whatever had been looked at below the keys.
      const drawn = await page.locator('.drawer').evaluate((drawer) => {
        drawer.scrollTo(0, 100);
        return drawer.scrollTop;
      });
      expect(drawn).toBe(100);
      await page.getByRole('button', { name: 'Fretboard', exact: true }).tap();
      const neck = page.locator('.fretboard__picture');
      await neck.locator('svg').waitFor();
      const strip = page.getByRole('group', { name: 'Pencil in bar 2' });
      const before = await told(page, 2);
      const third = await neck.evaluate((element) => {
        const at = (selector: string, index: number) =>
          [...element.querySelectorAll(selector)][index]?.getBoundingClientRect();
        const [from, to] = [at('path.fret', 1), at('path.fret', 2)];
        return { x: ((from?.left ?? 0) + (to?.left ?? 0)) / 2, y: at('path.string', 2)?.top ?? 0 };
      });
      await page.touchscreen.tap(third.x, third.y);
      await says(page, /^C2, ♭7, .*A string, fret 3$/);
      /** Whether the middle, the top and the foot of a part are what a finger there would meet. */
      const uncovered = (part: ReturnType<Page['locator']>) =>
        part.evaluate((element) => {
          const { left, right, top, bottom } = element.getBoundingClientRect();
          const inside = top >= 0 && bottom <= window.innerHeight;
          return (
            inside &&
            [top + 2, (top + bottom) / 2, bottom - 2].every((y) =>
              element.contains(document.elementFromPoint((left + right) / 2, y)),
            )
          );
        });
      for (const part of [
        strip.getByRole('combobox', { name: 'Note value' }),
        strip.getByRole('button', { name: /^R / }),
        strip.getByRole('button', { name: 'Put the pencil away' }),
        strip.locator('.strip__said'),
        page.getByRole('button', { name: 'Play', exact: true }),
      ])
        expect(await uncovered(part), String(part)).toBe(true);
      const staff = await page.getByRole('application').evaluate((surface) => {
        const drawn = surface.closest('.system')?.querySelectorAll('.system__drawing .staff-line') ?? [];
        const lines = [...drawn].map((line) => line.getBoundingClientRect());
        const { left, width: across } = surface.getBoundingClientRect();
        const ends = [
          Math.min(...lines.map(({ top }) => top)) - 20,
          Math.max(...lines.map(({ bottom }) => bottom)) - 1,
        ];
        return ends.map((y) => surface.contains(document.elementFromPoint(left + across / 2, y)));
      });
      // From the chord's name to the lowest line.
      expect(staff).toEqual([true, true]);
      await strip.getByRole('combobox', { name: 'Note value' }).selectOption({ label: 'whole' });
      await says(page, /^Bar 2 now holds too much\. /);
      expect(await uncovered(strip.getByRole('button', { name: /^Push on/ }))).toBe(true);
      const back = strip.getByRole('button', { name: 'Take the last step back' });
      await back.tap();
      await back.tap();
      await expect.poll(() => told(page, 2), PATIENCE).toBe(before);
      expect(await back.isDisabled()).toBe(true);
      expectClean();
    },
  );

  test('under the pointer stands which degree it would be, on staff, tab and neck', async () => {
    const { page, expectClean } = await openApp({ context: { reducedMotion: 'reduce' } });
    await open(page, 2);
    const under = page.locator('.pencil__under');
    const over = async (across: number, down: number) => {
      const { x, y } = await placeIn(page, across, down);
      await page.mouse.move(x, y);
    };
    await over(0.5, 0.4);
    await expect.poll(() => under.textContent(), PATIENCE).toMatch(/^(R|[♭♯]?[2-7]) [A-G][♭♯]?$/);
    await over(0.5, 0.62);
    await expect.poll(() => under.textContent(), PATIENCE).toMatch(/(^|, )\d+ is (R|♭3|5) [DFA]/);
    await page.getByRole('button', { name: 'Fretboard', exact: true }).click();
    const neck = page.locator('.fretboard__picture svg');
    await neck.waitFor();
    await neck.hover();
    const pointed = await expect
      .poll(() => under.textContent(), PATIENCE)
      .toMatch(/^(R|[♭♯]?[2-7]) [A-G][♭♯]?$/)
      .then(() => under.textContent());
    await neck.click();
    const [degree = '', name = ''] = (pointed ?? '').split(' ');
    await says(page, new RegExp(`^${name}\\d, ${degree}, .* string, `));
    expectClean();
  });

  test('says what was done once a hand rests, again where it is the same, and not each key of a run', async () => {
    const { page, expectClean } = await openApp({ context: { reducedMotion: 'reduce' } });
    await open(page, 2);
    await page.keyboard.press('Home');
    await says(page, /beat 1 of bar 2/);
    /** Presses keys one right behind the other; what is said then, with the time since the last of them. */
    const pressed = (keys: readonly string[]) =>
      page.evaluate(
        (all) =>
          new Promise<{ readonly text: string; readonly after: number }[]>((resolve) => {
            const said: { text: string; after: number }[] = [];
            const status = document.querySelector('#pencil-said');
            if (status === null) throw new Error('nothing says it');
            let last = 0;
            new MutationObserver(() => {
              said.push({ text: status.textContent ?? '', after: performance.now() - last });
            }).observe(status, { characterData: true, childList: true, subtree: true });
            for (const key of all) {
              const options = { key, bubbles: true, cancelable: true };
              document.activeElement?.dispatchEvent(new KeyboardEvent('keydown', options));
            }
            last = performance.now();
            window.setTimeout(() => resolve(said), 3000);
          }),
        keys,
      );
    const run = await pressed(Array(12).fill('ArrowRight'));
    expect(run).toHaveLength(1);
    expect(run[0]?.after).toBeGreaterThanOrEqual(140);
    expect(run[0]?.text).toMatch(/ of bar \d/);
    // The eye reads in the strip, which moves with the pencil, what the ear hears from where nothing moves.
    expect(await page.locator('.strip__said').textContent()).toBe(run[0]?.text);
    const written = await pressed(['Backspace', '5']);
    expect(written).toHaveLength(1);
    // Pitch, degree, length, beat, string and fret.
    expect(written[0]?.text).toMatch(
      /^[A-G][♭♯]?\d, (R|[♭♯]?\d), [a-z ]+, (beat \d|the .*) of bar \d, [EADG] string, (open|fret \d+)$/,
    );
    await page.keyboard.press('Shift+Backspace');
    await says(page, /silence now/);
    const refused = [await pressed(['>']), await pressed(['>'])].map((each) => each.map(({ text }) => text));
    expect(refused.map((each) => each[0]?.replace('\u200b', ''))).toEqual(
      Array(2).fill('There is no note here: write one first, or go to one.'),
    );
    expectClean();
  });

  test('a bar that was asked to become something says what it did, and what the lesson check would point out since', async () => {
    const { page, expectClean } = await openApp({
      path: pinnedPath(),
      context: { reducedMotion: 'reduce' },
    });
    await open(page, 6);
    const before = await told(page, 6);
    await page.keyboard.press('Shift+E');
    await says(page, /^Bar 6 is easier: root and fifth only\. (?!.*But)/);
    await page.keyboard.press('Control+z');
    await page.keyboard.press('PageUp');
    await says(
      page,
      /^Bar 6 is an octave up\. But: beat 1: fret 10 is beyond fret 7, the last of level 3\. \d further things? in the lesson check\.$/,
    );
    await page.keyboard.press('Control+z');
    await expect.poll(() => told(page, 6), PATIENCE).toBe(before);
    expectClean();
  });

  test('what was copied outlasts the pencil, and is pasted over other chords when it is taken out again', async () => {
    const { page, expectClean } = await openApp({
      path: pinnedPath(),
      context: { reducedMotion: 'reduce' },
    });
    await open(page, 3);
    await page.keyboard.press('Control+a');
    await page.keyboard.press('Control+c');
    await says(page, /^Copied 4 notes\. /);
    await page.keyboard.press('Escape');
    await open(page, 8);
    await page.keyboard.press('Control+v');
    await says(page, /^Pasted by degree\. /);
    await expect
      .poll(() => told(page, 8), PATIENCE)
      .toMatch(/^R on 1, F, .*; 2 on 2, G, .*; 3 on 3, A, .*; 5 on 4, C, /);
    expectClean();
  });

  test('Escape in the middle of a drag leaves all as it was, and nothing to undo', async () => {
    const { page, expectClean } = await openApp({ context: { reducedMotion: 'reduce' } });
    await open(page, 2);
    const before = await told(page, 2);
    await page.keyboard.press('Home');
    const note = await page.locator('.pencil__note').boundingBox();
    const there = await placeIn(page, 0.3, 0.4);
    if (note === null) throw new Error('no note is selected');
    const x = note.x + note.width / 2;
    await page.mouse.move(x, there.y);
    await page.mouse.down();
    await page.mouse.move(x, there.y - 20, { steps: 4 });
    await expect.poll(() => told(page, 2), PATIENCE).not.toBe(before);
    await page.keyboard.press('Escape');
    await page.mouse.up();
    await expect.poll(() => told(page, 2), PATIENCE).toBe(before);
    expect(await page.getByRole('button', { name: 'Undo' }).count()).toBe(0);
    expect(await page.getByRole('application').count()).toBeGreaterThan(0);
    expectClean();
  });

  test('ideas that open, an idea that is taken, undo, redo and a line that is composed are announced', async () => {
    const { page, expectClean } = await openApp({ context: { reducedMotion: 'reduce' } });
    const done = page.getByRole('status', { name: 'Done', exact: true });
    const announces = (what: string | RegExp) =>
      expect.poll(() => done.textContent(), PATIENCE).toMatch(what);
    await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
    await bar(page, 2).click();
    await expect
      .poll(() => page.getByRole('status', { name: 'Ideas', exact: true }).textContent(), PATIENCE)
      .toMatch(/^\d+ ideas for bar 2$/);
    await page
      .getByRole('list', { name: 'Ideas for bar 2' })
      .getByRole('button', { name: /Take it$/ })
      .first()
      .click();
    await announces(/^Done: take an idea for bar 2\.$/);
    await page.keyboard.press('Control+z');
    await announces(/^Taken back: take an idea for bar 2\.$/);
    await page.keyboard.press('Control+Shift+z');
    await announces(/^Brought back: take an idea for bar 2\.$/);
    await page
      .getByRole('button', { name: /^Compose/ })
      .first()
      .click();
    await announces(/^Done: compose/);
    expectClean();
  });
});
