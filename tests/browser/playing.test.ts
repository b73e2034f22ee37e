import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { type LinePiece, parseLesson } from '../../src/core/lesson';
import { openApp } from '../support/browser';

/** The lesson as its file holds it. */
async function lineInFile(page: Page): Promise<LinePiece> {
  await page.getByRole('button', { name: 'Export', exact: true }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('menuitem', { name: 'Lesson file', exact: true }).click();
  const read = parseLesson(await readFile(await (await download).path(), 'utf8'));
  const piece = read.ok ? read.value.pieces[0] : undefined;
  if (piece?.kind !== 'line') throw new Error('The file holds no line.');
  return piece;
}

const playing = (page: Page) =>
  page
    .getByRole('status', { name: 'Playback' })
    .getByText(/^Playing bar \d+$/)
    .waitFor();

const stopped = (page: Page) =>
  page.getByRole('status', { name: 'Playback' }).getByText('Stopped', { exact: true }).waitFor();

const playButton = (page: Page) => page.getByRole('button', { name: 'Play', exact: true });

const ledgeOf = (page: Page) => page.getByRole('region', { name: 'Playing', exact: true });

describe('the playing sentence', () => {
  test('says every way of practising, keeps it in the lesson and plays it', async () => {
    const { page, expectClean } = await openApp();
    const ledge = ledgeOf(page);
    await ledge.getByRole('switch', { name: 'Loop' }).click();
    await ledge.getByRole('spinbutton', { name: 'Speed in bpm' }).fill('99');
    expect(await ledge.getByRole('spinbutton', { name: 'Speed in per cent' }).inputValue()).toBe('79');
    await ledge.getByRole('spinbutton', { name: 'Last bar' }).fill('2');
    await ledge.getByRole('combobox', { name: 'Bars of counting in' }).selectOption('two bars');

    await ledge.getByRole('button', { name: 'Say more' }).click();
    await ledge.getByRole('combobox', { name: 'When the bass plays' }).selectOption('call and response');
    await ledge.getByRole('spinbutton', { name: 'Bars of call and response' }).fill('1');
    await ledge.getByRole('combobox', { name: 'Where the click sounds' }).selectOption('off-beats');
    await ledge.getByRole('combobox', { name: 'Whether the click drops out' }).selectOption('by turns');
    await ledge.getByRole('spinbutton', { name: 'Bars without the click' }).fill('1');
    await ledge.getByRole('switch', { name: 'Empty bar between rounds' }).click();
    await ledge.getByRole('switch', { name: 'Humanised' }).click();
    await ledge.getByRole('switch', { name: 'Click' }).click();
    await ledge.getByText(/Keys: Space plays and stops/).waitFor();
    await ledge.getByRole('button', { name: 'Say less' }).click();
    await ledge
      .getByText(
        /The bass plays one bar, then rests for one bar; the click sounds on the & only, out for one bar after every 2 bars; an empty bar follows every round; everything falls exactly on the beat\./,
      )
      .waitFor();
    expect((await lineInFile(page)).playing).toMatchObject({
      loop: true,
      tempoShare: 78.57,
      passage: { first: 1, last: 2 },
      countIn: 2,
      bassPlan: { kind: 'call and response', bars: 1 },
      clickPlan: { beats: 'off-beats', dropOut: { sounding: 2, silent: 1 } },
      emptyBar: true,
      humanised: false,
      click: true,
    });

    await ledge.getByRole('button', { name: 'Say more' }).click();
    await ledge.getByRole('switch', { name: 'Tempo ladder' }).click();
    const rungs = ledge.getByRole('list', { name: 'Rungs of the ladder' }).getByRole('listitem');
    expect(await rungs.count()).toBe(5);
    for (let rung = 5; rung > 2; rung -= 1) {
      await ledge.getByRole('button', { name: `Take out rung ${rung}` }).click();
    }
    await ledge.getByRole('spinbutton', { name: 'Speed on rung 1' }).fill('200');
    await ledge.getByRole('spinbutton', { name: 'Rounds on rung 1' }).fill('1');
    await ledge.getByRole('spinbutton', { name: 'Speed on rung 2' }).fill('220');
    await ledge.getByRole('button', { name: 'Add a rung' }).click();
    await ledge.getByRole('switch', { name: 'Count-in' }).click();
    await ledge.getByRole('button', { name: 'Play', exact: true }).click();
    await playing(page);
    await ledge.getByText('Rung 1 of 3: 200 bpm, time 1 of 1').waitFor();
    await ledge.getByText(/^Rung 2 of 3: 220 bpm, time \d of 3$/).waitFor();
    // It goes on with other settings, and from the rung that is climbed.
    await ledge.getByRole('spinbutton', { name: 'Last bar' }).fill('1');
    await ledge.getByText(/^Rung 3 of 3: 220 bpm, time \d$/).waitFor();
    await ledge.getByRole('button', { name: 'propose from 50 %' }).click();
    await ledge.getByText(/^Rung [35] of 5/).waitFor();
    await ledge.getByRole('button', { name: 'Stop', exact: true }).click();
    await stopped(page);
    expectClean();
  });

  test('is led by keys, which leave fields alone', async () => {
    const { page, expectClean } = await openApp();
    const ledge = ledgeOf(page);
    await page.getByRole('figure', { name: 'Score' }).first().locator('svg').first().waitFor();
    await ledge.getByRole('switch', { name: 'Loop' }).click();
    await page.locator('body').click({ position: { x: 700, y: 66 } });
    await page.keyboard.press(' ');
    await playing(page);
    await page.keyboard.press(' ');
    await stopped(page);

    const notes = page.getByRole('textbox', { name: 'Notes for the student' });
    await notes.fill('');
    await notes.press('b');
    await notes.press(' ');
    await notes.press('c');
    expect(await notes.inputValue()).toBe('b c');
    expect(await page.getByRole('status', { name: 'Playback' }).textContent()).toBe('Stopped');
    expect(await ledge.getByRole('switch', { name: 'Bass' }).getAttribute('aria-checked')).toBe('true');

    const play = ledge.getByRole('button', { name: 'Play', exact: true });
    await play.focus();
    for (const key of ['ArrowDown', 'ArrowDown', 'b', 'c', 'r']) await page.keyboard.press(key);
    expect(await ledge.getByRole('spinbutton', { name: 'Speed in per cent' }).inputValue()).toBe('90');
    expect(await ledge.getByRole('switch', { name: 'Bass' }).getAttribute('aria-checked')).toBe('false');
    expect(await ledge.getByRole('switch', { name: 'Click' }).getAttribute('aria-checked')).toBe('true');
    expect(await ledge.getByRole('switch', { name: 'Loop' }).getAttribute('aria-checked')).toBe('false');
    expect(await ledge.locator('[aria-live]', { hasText: 'All bars, 113 bpm, without bass.' }).count()).toBe(
      1,
    );
    expectClean();
  });

  test('tells the tempo in one count everywhere', async () => {
    const { page, expectClean } = await openApp();
    const ledge = ledgeOf(page);
    const tempo = page.getByRole('spinbutton', { name: 'Tempo', exact: true });
    // The heading of the sheet, and the score's text alternative.
    const told = (words: string) => expect.poll(() => page.getByText(words).count()).toBe(2);
    await page.getByRole('combobox', { name: 'Feel' }).selectOption({ label: 'One drop' });
    await tempo.fill('140');
    await told('One drop, 140 bpm in the fast count');
    await ledge.getByRole('button', { name: 'Say more' }).click();
    await ledge.getByRole('combobox', { name: 'Count of the tempo' }).selectOption('slow');
    await told('One drop, 70 bpm in the slow count');
    expect(await tempo.inputValue()).toBe('70');
    expect(await ledge.getByRole('spinbutton', { name: 'Speed in bpm' }).inputValue()).toBe('70');
    await tempo.fill('66');
    expect(await ledge.getByRole('spinbutton', { name: 'Speed in bpm' }).inputValue()).toBe('66');
    await ledge.getByRole('switch', { name: 'Tempo ladder' }).click();
    expect(await ledge.getByRole('spinbutton', { name: 'Speed on rung 1' }).inputValue()).toBe('33');
    expect(await lineInFile(page)).toMatchObject({ tempo: 132, count: 'slow' });
    expectClean();
  });
});

test.each([
  ['the pointer that comes near', (page: Page) => playButton(page).hover()],
  ['the focus', (page: Page) => playButton(page).focus()],
])('%s has the sound made ready at once, on a page that never comes to rest', async (_, come) => {
  const { page } = await openApp({
    prepare: async (fresh) => {
      await fresh.addInitScript(() => Object.assign(window, { requestIdleCallback: () => 0 }));
    },
  });
  await playButton(page).waitFor();
  const rendering = () => page.workers().filter((worker) => worker.url().includes('render-worker'));
  await page.waitForTimeout(300);
  expect(rendering()).toHaveLength(0);
  await come(page);
  await expect.poll(() => rendering().length).toBe(1);
});
