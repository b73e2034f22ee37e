import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { openApp } from '../support/browser';
import { plugIn, pullOut, send, withInputs } from '../support/midi-input';
import { open, PATIENCE, says, told } from '../support/pencil';
import { pinnedPath } from '../support/pinned';

const word = (page: Page) => page.getByRole('button', { name: 'Play it in by MIDI' });

const writingWith = async (prepare: (page: Page) => Promise<unknown>, width = 1440, height = 900) => {
  const opened = await openApp({
    path: pinnedPath(),
    width,
    height,
    context: { reducedMotion: 'reduce', hasTouch: width < 500 },
    prepare: async (page) => void (await prepare(page)),
  });
  await open(opened.page, 2);
  return opened;
};

describe('a line that is played in by MIDI', () => {
  test('lands where the pencil is, spelled by its chord, a key at a time, each a step of its own', async () => {
    const { page, expectClean } = await writingWith(withInputs);
    await page.keyboard.press('Shift+Backspace');
    await word(page).click();
    await says(page, /^No MIDI keyboard or pad is connected\./);
    await plugIn(page, 'Pads');
    await says(page, 'Listening to Pads.');
    await send(page, 'Pads', [0x90, 38, 100]);
    await says(page, /^D2, R, quarter, beat 1 of bar 2, D string, open$/);
    // Let go in both ways, and a clock between them: nothing is written.
    await send(page, 'Pads', [0x80, 38, 0], [0x90, 38, 0], [0xf8], [0xfe]);
    await send(page, 'Pads', [0x90, 38, 0]);
    // The status byte runs on.
    await send(page, 'Pads', [41, 90]);
    await says(page, /^F2, ♭3, quarter, beat 2 of bar 2,/);
    // Of a chord the lowest is written, in whatever order its keys go down.
    await send(page, 'Pads', [0x93, 45, 70], [0x93, 38, 70], [0x93, 50, 70]);
    await says(page, /^The lowest of what was struck together\. D2, R, quarter, beat 3 of bar 2,/);
    await send(page, 'Pads', [0x90, 90, 90]);
    await says(page, /^That is higher than the neck goes: play it lower,/);
    await send(page, 'Pads', [0x90, 20, 90]);
    await says(page, /^That is lower than the neck goes: play it higher,/);
    await expect
      .poll(() => told(page, 2), PATIENCE)
      .toMatch(/^R on 1, D, .*; ♭3 on 2, F, .*; R on 3, D, .*; rest on 4, quarter\./);
    for (const left of [/; ♭3 on 2, F, .*; rest on 3, half/, /^R on 1, D, [^;]*; rest on 2/]) {
      await page.keyboard.press('Control+z');
      await expect
        .poll(() => page.getByRole('status', { name: 'Done', exact: true }).textContent(), PATIENCE)
        .toBe('Taken back: write a note in bar 2.');
      await expect.poll(() => told(page, 2), PATIENCE).toMatch(left);
    }
    expectClean();
  });

  test('goes on in the next system and in the next bar that is opened, until it is told to end', async () => {
    const { page, expectClean } = await writingWith(withInputs);
    await plugIn(page, 'Keys');
    await word(page).click();
    await says(page, 'Listening to Keys.');
    const first = await page.getByRole('application').boundingBox();
    for (let note = 0; note < 15; note += 1) await send(page, 'Keys', [0x90, 36 + (note % 5), 90]);
    await says(page, / of bar 5, /);
    const there = await page.getByRole('application').boundingBox();
    expect(there?.y).not.toBe(first?.y);
    await send(page, 'Keys', [0x90, 43, 90]);
    await says(page, /^G2, .* of bar 5, /);
    expect(await word(page).getAttribute('aria-pressed')).toBe('true');
    await page.keyboard.press('Escape');
    await send(page, 'Keys', [0x90, 36, 90]);
    await open(page, 7);
    const before = await told(page, 7);
    await send(page, 'Keys', [0x90, 38, 90]);
    await says(page, /^D2, 3, .*beat 1 of bar 7, /);
    await pullOut(page, 'Keys');
    await says(page, /^Keys is no longer connected\. What was written stays;/);
    await plugIn(page, 'Keys');
    await says(page, 'Listening to Keys.');
    await word(page).click();
    await says(page, 'No longer listening to MIDI.');
    await send(page, 'Keys', [0x90, 36, 90]);
    // Nothing was written since the one note, so that a single step takes all of it back.
    await expect.poll(() => told(page, 7), PATIENCE).not.toBe(before);
    await page.keyboard.press('Control+z');
    await expect.poll(() => told(page, 7), PATIENCE).toBe(before);
    expectClean();
  });

  test('on a telephone it goes on while another row of keys is shown', async () => {
    const { page, expectClean } = await writingWith(withInputs, 390, 844);
    await plugIn(page, 'Pads');
    await page.getByRole('radio', { name: 'The way of writing' }).tap();
    await word(page).tap();
    await says(page, 'Listening to Pads.');
    await page.getByRole('radio', { name: 'Write', exact: true }).tap();
    await send(page, 'Pads', [0x99, 41, 90]);
    await says(page, /^F2, ♭3, /);
    expectClean();
  });

  test('where the browser says no, or has none, a sentence says so', async () => {
    const refusing = await writingWith((page) =>
      page.addInitScript(() => {
        Reflect.set(navigator, 'requestMIDIAccess', () => Promise.reject(new DOMException('no')));
      }),
    );
    await word(refusing.page).click();
    await says(refusing.page, /^The browser does not let the page listen to MIDI\./);
    expect(await word(refusing.page).getAttribute('aria-pressed')).toBe('false');
    refusing.expectClean();
    const without = await writingWith((page) =>
      page.addInitScript(() =>
        Object.defineProperty(Navigator.prototype, 'requestMIDIAccess', { value: undefined }),
      ),
    );
    await without.page
      .getByText('This browser has no Web MIDI: no keyboard or pad can be played in.')
      .waitFor();
    expect(await word(without.page).count()).toBe(0);
    without.expectClean();
  });
});
