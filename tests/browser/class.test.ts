import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { printLesson } from '../../src/core/lesson';
import { lineComposed, type OpenOptions, type OpenPage, openApp } from '../support/browser';
import { inkIn } from '../support/ink';
import { pinnedSample } from '../support/pinned';

const lit = (page: Page): Locator => page.getByRole('status', { name: 'What is lit up' });

test('before a class, keys and a presenter’s remote light up what to listen for, hide the music and show it again', async () => {
  const { page, expectClean } = await openApp();
  await lineComposed(page);
  await page.getByRole('button', { name: 'Export' }).click();
  await page.getByRole('menuitem', { name: 'Look at the practice page' }).click();
  await page.getByRole('button', { name: 'Large view' }).click();
  const view = page.getByRole('dialog').or(page.locator('.show')).first();
  await view.locator('svg').first().waitFor();
  expect(await lit(page).textContent()).toBe('');

  // A remote sends Page Down: one thing after the other, then nothing, and back.
  const told: string[] = [];
  for (let press = 0; press < 12; press += 1) {
    await page.keyboard.press('PageDown');
    const now = (await lit(page).textContent()) ?? '';
    if (now === '') break;
    told.push(now);
  }
  expect(told.length).toBeGreaterThanOrEqual(2);
  expect(new Set(told).size).toBe(told.length);
  await page.keyboard.press('PageUp');
  expect(await lit(page).textContent()).toBe(told.at(-1));

  await page.getByText('In class', { exact: true }).click();
  await page.keyboard.press('h');
  await page.getByText('Hidden: listen').waitFor();
  expect(await page.getByRole('switch', { name: 'Everything hidden' }).getAttribute('aria-checked')).toBe(
    'true',
  );
  await page.keyboard.press('h');
  await page.getByText('Hidden: listen').waitFor({ state: 'detached' });

  // Letters can be switched off (WCAG 2.2, 2.1.4 Character Key Shortcuts).
  await page.getByRole('switch', { name: 'Keys' }).click();
  await page.keyboard.press('h');
  expect(await page.getByText('Hidden: listen').count()).toBe(0);
  expectClean();
});

/** Opens the large view of the first sample's practice page. */
async function openLarge(options: OpenOptions): Promise<OpenPage> {
  const opened = await openApp({ ...options, path: 'practice.html' });
  const { page } = opened;
  await page.locator('input[type="file"]').setInputFiles({
    name: 'week-4.lesson.json',
    mimeType: 'application/json',
    buffer: Buffer.from(printLesson(pinnedSample(1, 'week-4'))),
  });
  await page.getByRole('button', { name: 'Large view' }).click();
  await page.locator('.show svg').first().waitFor();
  return opened;
}

test('the large view says from how far it is read on which screen, and offers what is read from three metres', async () => {
  const { page, expectClean } = await openLarge({ width: 1920, height: 1080 });
  const told = page.getByText(/^Read from [\d.]+ m/);
  // Two bars on a screen of 24 inches are read from three metres and farther.
  await expect.poll(() => told.textContent()).toMatch(/^Read from (3|[4-9])(\.\d)? m$/);
  await page.getByRole('switch', { name: 'Four bars' }).click();
  await page.getByRole('switch', { name: 'Degrees' }).click();
  // Four bars with everything, too; on a screen of 18 inches they are too small.
  await expect.poll(() => told.textContent()).toMatch(/^Read from (3|[4-9])(\.\d)? m$/);
  await told.click();
  await page.getByRole('spinbutton', { name: 'Inches of the screen' }).fill('18');
  await expect
    .poll(() => told.textContent())
    .toMatch(/^Read from [12](\.\d)? m: too small for three metres$/);
  await page.getByRole('button', { name: /^Read it from three metres: with/ }).click();
  await expect.poll(() => told.textContent()).toMatch(/^Read from (3|[4-9])(\.\d)? m$/);
  // On the same pixels as a picture of 80 inches, four bars are read from there as well.
  await page.getByRole('switch', { name: 'Four bars' }).click();
  await page.getByRole('spinbutton', { name: 'Inches of the screen' }).fill('80');
  await expect.poll(() => told.textContent()).toMatch(/^Read from (3|[4-9])(\.\d)? m$/);
  expectClean();
});

test('on a telephone the words of the large view stand over the music, which stays whole and in its place', async () => {
  const { page, expectClean } = await openLarge({ width: 844, height: 390, context: { hasTouch: true } });
  const tab = () => inkIn(page, '.show .fret');
  await page.locator('.show .fret').first().waitFor();
  const before = await tab();
  expect(before.length).toBeGreaterThan(4);
  await page.getByText('What is shown', { exact: true }).click();
  await page.getByRole('switch', { name: 'Dark' }).click();
  expect(await tab()).toEqual(before);
  expect(await page.locator('.show').evaluate((view) => view.scrollHeight - view.clientHeight)).toBe(0);
  for (const name of ['Four bars', 'Degrees', 'Neck']) await page.getByRole('switch', { name }).click();
  // Escape folds the words; the view stays open.
  await page.keyboard.press('Escape');
  expect(await page.getByRole('switch', { name: 'Neck' }).count()).toBe(0);
  await page.locator('.show .fretboard svg').waitFor();
  const lowest = async () => {
    const places = await page
      .locator('.show .counting')
      .evaluateAll((marks) => marks.map((mark) => mark.getBoundingClientRect().bottom));
    const foot = await page.locator('.show__foot').boundingBox();
    return (foot?.y ?? 0) - Math.max(...places);
  };
  // Both rows with their counting end above the foot.
  await expect.poll(lowest).toBeGreaterThanOrEqual(0);
  await page.keyboard.press('Escape');
  await expect.poll(() => page.locator('.show').count()).toBe(0);
  expectClean();
});

/** What a screen reader would say by itself from now on: every change of a live region, in order. */
async function saidFromNow(page: Page): Promise<() => Promise<readonly string[]>> {
  const heard = await page.evaluateHandle(() => {
    const words: string[] = [];
    new MutationObserver((changes) => {
      for (const { target } of changes) {
        const element = target instanceof Element ? target : target.parentElement;
        const live = element?.closest('[aria-live], [role="status"], [role="alert"], output');
        if (live && live.getAttribute('aria-live') !== 'off') words.push(live.textContent);
      }
    }).observe(document, { childList: true, characterData: true, subtree: true });
    return words;
  });
  return () => heard.jsonValue();
}

test('the large view is read bar by bar as the page is, says where one turns to, and nothing of what it plays', async () => {
  const { page, expectClean } = await openApp({ path: 'practice.html' });
  await page.locator('input[type="file"]').setInputFiles({
    name: 'week-4.lesson.json',
    mimeType: 'application/json',
    buffer: Buffer.from(printLesson(pinnedSample(1, 'week-4'))),
  });
  await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
  const onPage = await page
    .getByRole('button', { name: /^Bar \d+, / })
    .evaluateAll((bars) => bars.map((bar) => `${bar.ariaLabel}: ${bar.getAttribute('aria-description')}`));
  expect(onPage.length).toBeGreaterThanOrEqual(8);
  await page.getByRole('button', { name: 'Large view' }).click();
  const items = page.getByRole('list', { name: 'Bars shown' }).getByRole('listitem');
  const read = async () => items.allTextContents();
  await expect.poll(read).toEqual(onPage.slice(0, 2));
  expect(onPage[0]).toMatch(/ on 1, [A-G].*, .*string (open|fret \d+, finger \d)/);

  const turnedTo = page.getByRole('status', { name: 'Turned to' });
  expect(await turnedTo.textContent()).toBe('');
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => turnedTo.textContent()).toBe('Bars 3 and 4');
  expect(await read()).toEqual(onPage.slice(2, 4));
  await page.getByRole('button', { name: 'Earlier bars' }).click();
  await expect.poll(read).toEqual(onPage.slice(0, 2));
  await page.getByRole('switch', { name: 'Four bars' }).click();
  await expect.poll(read).toEqual(onPage.slice(0, 4));
  await page.getByRole('button', { name: 'Later bars' }).click();
  await expect.poll(read).toEqual(onPage.slice(4, 8));
  await page.getByRole('switch', { name: 'Four bars' }).click();

  // What a class is to hear only is not read either.
  await page.keyboard.press('h');
  await expect.poll(() => items.count()).toBe(0);
  await page.keyboard.press('h');

  const said = await saidFromNow(page);
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await expect.poll(read, { timeout: 30_000 }).toEqual(onPage.slice(2, 4));
  await expect.poll(read, { timeout: 30_000 }).toEqual(onPage.slice(0, 2));
  expect((await said()).filter((words) => /^(Bar|Playing bar [2-9])/.test(words))).toEqual([]);
  await page.getByRole('button', { name: 'Pause', exact: true }).click();
  await expect.poll(async () => (await said()).at(-1)).toMatch(/^Paused at bar/);
  // From where it was paused it turns on.
  const here = await read();
  await page.getByText('In class', { exact: true }).focus();
  await page.keyboard.press('ArrowRight');
  await expect.poll(read).not.toEqual(here);
  const at = onPage.indexOf(here[0] ?? '');
  expect(await read()).toEqual(onPage.slice(at + 2, at + 4));
  expectClean();
});

test('on a telephone that stands upright the words for a class leave the music in view', async () => {
  const { page, expectClean } = await openLarge({ width: 390, height: 844 });
  await page.getByText('In class', { exact: true }).click();
  await page.keyboard.press('PageDown');
  await expect.poll(() => lit(page).textContent()).not.toBe('');
  const edge = (selector: string, side: 'top' | 'bottom') =>
    page
      .locator(selector)
      .evaluateAll(
        (all, at) => all.map((each) => each.getBoundingClientRect()[at]).filter((place) => place > 0),
        side,
      );
  await expect
    .poll(async () => {
      const words = Math.min(...(await edge('.show__fold[open] .show__unfolded', 'top')));
      return (await edge('.show__row .system', 'bottom')).every((bottom) => bottom <= words + 1);
    })
    .toBe(true);
  expectClean();
});
