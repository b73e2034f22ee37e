/** Practising is led by fingers and keys, shows where it is, and is remembered. */
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openApp } from '../support/browser';
import { button, LESSON_FILE, PATIENT, playback, score } from '../support/practising';

/** Collects what the status of the playback says from now on. */
async function saidBy(page: Page): Promise<() => Promise<readonly string[]>> {
  const seen = await playback(page).evaluateHandle((status) => {
    const words: string[] = [];
    new MutationObserver(() => words.push(status.textContent)).observe(status, {
      ...{ childList: true, characterData: true, subtree: true },
    });
    return words;
  });
  return () => seen.jsonValue();
}

test('bars are tapped to start, dragged over to loop; Space pauses and goes on, wherever the focus is', async () => {
  const { page, expectClean } = await openApp({ path: '?practice', width: 390, height: 844 });
  await page.locator('input[type="file"]').setInputFiles(LESSON_FILE);
  await score(page).locator('svg').first().waitFor();
  const bar = (number: number) => page.getByRole('button', { name: new RegExp(`^Bar ${number}, `) });
  const middle = async (number: number) => {
    const box = await bar(number).boundingBox();
    if (box === null) throw new Error(`Bar ${number} is not on the page.`);
    return [box.x + box.width / 2, box.y + box.height / 3] as const;
  };
  await bar(2).scrollIntoViewIfNeeded();
  await page.mouse.move(...(await middle(1)));
  await page.mouse.down();
  await page.mouse.move(...(await middle(2)), { steps: 4 });
  await page.mouse.up();
  await page.getByRole('status', { name: 'Loop' }).getByText('Bars 1 to 2 round and round.').waitFor();
  expect(await bar(2).getAttribute('aria-pressed')).toBe('true');
  expect(await playback(page).textContent()).toBe('Stopped');

  const said = await saidBy(page);
  await button(page, 'Slower').focus();
  await page.keyboard.press('Space');
  await expect.poll(() => playback(page).textContent(), PATIENT).toMatch(/^Playing bar [12]/);
  // While it gets ready it is not said to be stopped.
  expect((await said()).slice(0, 2)).toEqual(['Getting ready', 'Counting in to bar 1']);
  await page.keyboard.press('Space');
  await expect.poll(() => playback(page).textContent()).toMatch(/^Paused at bar [12]/);
  // The pause is said, and so is its end.
  expect(await playback(page).getAttribute('aria-live')).toBe('polite');
  await button(page, 'Go on').click();
  await expect.poll(() => playback(page).textContent(), PATIENT).toMatch(/^Playing bar [12]/);

  await bar(4).click();
  await expect.poll(() => playback(page).textContent(), PATIENT).toMatch(/^Playing bar 4/);
  expect(await page.getByRole('status', { name: 'Loop' }).textContent()).toBe('');
  await button(page, 'Pause').click();
  await button(page, 'Stop').click();
  expect(await playback(page).textContent()).toBe('Stopped');
  expect(await playback(page).getAttribute('aria-live')).toBe('polite');

  // The large view stands before the rest of the page, so it has a status of its own.
  await button(page, 'Large view').click();
  const large = page.getByRole('dialog', { name: /, large$/ });
  await large.getByRole('status', { name: 'Playback' }).getByText('Stopped').waitFor({ state: 'attached' });
  expect(await playback(page).count()).toBe(1);
  await large.getByRole('button', { name: 'Close' }).click();
  // The view goes a moment before its place on the page is taken again, by a live region of the same kind.
  await expect.poll(() => playback(page).count()).toBe(1);
  expect(await page.locator('.ledge__words').getByRole('status', { name: 'Playback' }).textContent()).toBe(
    'Stopped',
  );
  expect(await playback(page).getAttribute('aria-live')).toBe('polite');
  // Nothing that is touched is smaller than a thumb, and no field so small that a telephone enlarges the page.
  await button(page, 'Change how').click();
  await button(page, 'Fretboard').click();
  await page.locator('.fretboard svg').waitFor();
  const small = await page.locator('.page :is(button, input, select, summary)').evaluateAll((controls) =>
    controls.flatMap((control) => {
      if (control.closest('.bar, .skip, [hidden]') !== null) return [];
      const { width, height } = control.getBoundingClientRect();
      const type = Number.parseFloat(getComputedStyle(control).fontSize);
      const isField = control.matches('input, select');
      return width < 43.9 || height < 43.9 || (isField && type < 16) ? [control.outerHTML] : [];
    }),
  );
  expect(small).toEqual([]);
  // The neck is whole, the numbers of its frets too.
  const below = await page.locator('.fretboard').evaluate((neck) => {
    const picture = neck.querySelector('svg');
    return neck.getBoundingClientRect().bottom - (picture?.getBoundingClientRect().bottom ?? 0);
  });
  expect(below).toBeGreaterThanOrEqual(0);
  expectClean();
});

test('the word of a loop covers no number of a bar, and on a stand it is seen where it is played', async () => {
  const { page, expectClean } = await openApp({ path: '?practice', width: 844, height: 390 });
  await page.locator('input[type="file"]').setInputFiles(LESSON_FILE);
  await score(page).locator('svg').first().waitFor();
  await button(page, 'loop by two taps').press('Enter');
  // The keyboard stays where it was, and what is asked for is said.
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('leave it as it is');
  await page
    .locator('[aria-live="polite"]')
    .getByText('Tap the first bar of the loop.')
    .waitFor({ state: 'attached' });
  for (const name of [/^Bar 5, /, /^Bar 6, /]) await page.getByRole('button', { name }).click();
  const covered = await page.locator('.loop-mark__word').evaluate((word) => {
    const tag = word.getBoundingClientRect();
    const numbers = [...(word.closest('.system')?.querySelectorAll('svg .bar-number') ?? [])];
    return numbers.map((number) => {
      const { left, right, top, bottom } = number.getBoundingClientRect();
      return left < tag.right && right > tag.left && top < tag.bottom && bottom > tag.top;
    });
  });
  expect(covered).toEqual([false]);
  // Nor is it covered by the frame of the next system, where the loop goes on there.
  expect(
    await page.locator('.loop-mark__word').evaluate((word) => {
      const frame = word.closest('.loop-mark')?.getBoundingClientRect();
      return frame !== undefined && word.getBoundingClientRect().bottom <= frame.bottom + 0.5;
    }),
  ).toBe(true);
  await page.keyboard.press('Space');
  await expect.poll(() => playback(page).textContent(), PATIENT).toMatch(/^Counting in to bar 5/);
  const place = async (one: Locator) => {
    const box = await one.boundingBox();
    if (box === null) throw new Error('It is not on the page.');
    return box;
  };
  const status = await place(playback(page));
  const how = await place(button(page, 'Change how'));
  expect(status.width).toBeGreaterThan(50);
  expect(status.x + status.width).toBeLessThanOrEqual(how.x);
  expect(how.x + how.width).toBeLessThanOrEqual((await place(button(page, 'Large view'))).x);
  expectClean();
});

test('at 400 % zoom, and on a stand, what is played is in view as soon as Space has begun it', async () => {
  for (const [width, height] of [
    [320, 256],
    [844, 390],
  ] as const) {
    const { page, expectClean } = await openApp({ path: '?practice', width, height });
    await page.locator('input[type="file"]').setInputFiles(LESSON_FILE);
    await score(page).locator('svg').first().waitFor();
    // The first beat of the count-in finds its number in view, from the end of the page, too.
    await page.evaluate(() => {
      const counted: number[] = [];
      Object.assign(window, { counted });
      new MutationObserver((changes) => {
        for (const { target } of changes)
          if (target instanceof HTMLElement && target.dataset.count === '2')
            counted.push(
              target.getBoundingClientRect().top +
                Number.parseFloat(getComputedStyle(target, '::before').top),
            );
      }).observe(document.body, { attributeFilter: ['data-count'], subtree: true });
    });
    await button(page, 'Play').focus();
    await page.keyboard.press('Space');
    await expect.poll(() => playback(page).textContent(), PATIENT).toMatch(/^Playing bar/);
    const [counted = -1] = await page.evaluate((): readonly number[] => Reflect.get(window, 'counted'));
    expect(counted).toBeGreaterThanOrEqual(0);
    expect(counted).toBeLessThan(height - 20);
    const unseen = () =>
      page.locator('.playhead--on').evaluateAll((heads) =>
        heads.map((head) => {
          const { top, bottom } = head.getBoundingClientRect();
          const ledge = document.querySelector('.ledge')?.getBoundingClientRect().top ?? 0;
          return Math.max(0, -top) + Math.max(0, bottom - Math.min(window.innerHeight, ledge));
        }),
      );
    // Its ends may be cut by a few pixels.
    await expect.poll(unseen).toEqual([expect.closeTo(0, -1)]);
    // On a stand the button is not behind the ellipsis of the sentence before it.
    if (width === 844) {
      await button(page, 'Change how').click();
      // Unfolded, the sentence has the whole width, and leaves half of the window to the music.
      const ledge = await page.locator('.ledge').boundingBox();
      expect(ledge?.height).toBeLessThan(height / 2);
    }
    expectClean();
  }
});

test('the page remembers where the student was, on the device alone, and forgets it when told', async () => {
  const { page, expectClean } = await openApp({ path: '?practice' });
  const open = async () => {
    await page.locator('input[type="file"]').setInputFiles(LESSON_FILE);
    await score(page).locator('svg').first().waitFor();
  };
  await open();
  await page.getByRole('switch', { name: 'Bass', exact: true }).click();
  await page.getByRole('spinbutton', { name: 'Last bar' }).fill('4');
  await button(page, 'Play').click();
  await expect.poll(() => playback(page).textContent(), PATIENT).toMatch(/^Playing bar 4/);
  await button(page, 'Stop').click();
  await page.getByText(/, bars 1 to 4: \d+ seconds/).waitFor();

  await page.reload();
  await open();
  await page.getByText(/^You practised .*, bars 1 to 4, .* without the bass, on /).waitFor();
  await button(page, 'Go on where you were').click();
  expect(await page.getByRole('switch', { name: 'Bass', exact: true }).getAttribute('aria-checked')).toBe(
    'false',
  );
  expect(await page.getByRole('spinbutton', { name: 'Last bar' }).inputValue()).toBe('4');
  await button(page, 'Clear the diary').click();
  await button(page, 'Clear it').click();
  await page.getByText(/^Nothing yet\. What you play is written down here/).waitFor();
  expect(await page.evaluate(() => window.localStorage.length)).toBe(0);
  expectClean();
});
