import { mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { copyPiece, printLesson, sampleLesson, setNotes, setTitle } from '../../src/core/lesson';
import { readPdf } from '../handout/pages';
import { type OpenPage, openApp } from '../support/browser';
import { listenIn } from '../support/listening-in';

/** A title and notes that would do harm if they became markup, and two lines to practise. */
const HOSTILE = '</script><script>document.title = "taken"</script><!--';
const LESSON = (() => {
  const lesson = setNotes(setTitle(sampleLesson(0, 'practice'), `Week 3 ${HOSTILE}`), HOSTILE);
  return copyPiece(lesson, lesson.pieces[0]?.id ?? '');
})();
const LESSON_FILE = {
  name: 'week-3.lesson.json',
  mimeType: 'application/json',
  buffer: Buffer.from(printLesson(LESSON)),
};

const PATIENT = { timeout: 30_000 };

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const playback = (page: Page) => page.getByRole('status', { name: 'Playback' });
const score = (page: Page) => page.getByRole('figure', { name: 'Score', exact: true });

/** Opens the app with the lesson as its lesson. */
async function openWithLesson(): Promise<OpenPage> {
  const opened = await openApp();
  const { page } = opened;
  // Only a page that has come to rest reads what is put into it at once.
  await score(page).locator('svg').first().waitFor();
  await page.locator('input[type="file"]').first().setInputFiles(LESSON_FILE);
  await expect
    .poll(() => page.getByRole('textbox', { name: 'Lesson title' }).inputValue(), PATIENT)
    .toContain('Week 3');
  return opened;
}

async function chooseExport(page: Page, name: string): Promise<void> {
  await button(page, 'Export').click();
  await page.getByRole('menuitem', { name, exact: true }).click();
}

/** Keeps the highest sample that was played so far in `loudest`. */
async function keepLoudest(page: Page): Promise<void> {
  await listenIn(page, 2048);
  await page.addInitScript(() => {
    const loudest = { value: 0 };
    Object.assign(window, { loudest });
    setInterval(() => {
      loudest.value = Math.max(loudest.value, Reflect.get(window, 'loudestNow')());
    }, 20);
  });
}

const loudest = (page: Page): Promise<number> => page.evaluate(() => Reflect.get(window, 'loudest').value);

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

/** Plays until the playhead has reached another bar, and has been heard. */
async function playsAndMoves(page: Page): Promise<void> {
  await button(page, 'Play').click();
  await expect.poll(() => playback(page).textContent(), PATIENT).toMatch(/^Playing bar [2-9]/);
  await expect.poll(() => loudest(page), PATIENT).toBeGreaterThan(0.01);
  await button(page, 'Stop').click();
  await expect.poll(() => playback(page).textContent(), PATIENT).toBe('Stopped');
}

test('the file plays from a folder of downloads, with no network and nothing from outside', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'downloads-'));
  try {
    const { page, expectClean } = await openWithLesson();
    const download = page.waitForEvent('download');
    await chooseExport(page, 'Practice page');
    const file = join(folder, (await download).suggestedFilename());
    await (await download).saveAs(file);
    expect(file).toMatch(/\.practice\.html$/);
    // 2.5 MB at the most; what nobody can do on this page, as writing and opening other files, is not in it.
    expect((await stat(file)).size).toBeLessThan(2_100_000);
    expectClean();

    const browser = page.context().browser();
    const context = await browser?.newContext({ offline: true, viewport: { width: 390, height: 844 } });
    if (!context) throw new Error('The browser is gone.');
    const phone = await context.newPage();
    const complaints: string[] = [];
    phone.on('console', (message) => complaints.push(`${message.type()}: ${message.text()}`));
    phone.on('pageerror', (problem) => complaints.push(problem.message));
    context.on('request', (request) => {
      if (!/^(data|blob):/.test(request.url()) && request.url() !== pathToFileURL(file).href)
        complaints.push(`asked for ${request.url()}`);
    });
    await keepLoudest(phone);
    await phone.goto(pathToFileURL(file).href);
    await score(phone).locator('svg').first().waitFor();
    expect(await phone.title()).toBe(`Week 3 ${HOSTILE}: practice page`);
    expect(await phone.getByText(HOSTILE, { exact: true }).count()).toBe(1);
    // The music font draws the clef: without it, a box would stand there.
    expect(await phone.evaluate(() => document.fonts.check('20px Bravura', '\ue062'))).toBe(true);
    await playsAndMoves(phone);
    expect(complaints).toEqual([]);
    await context.close();
  } finally {
    await rm(folder, { recursive: true });
  }
});

test('the file may run its own script and nothing that is put into it', async () => {
  const { address } = await openApp();
  const html = await (await fetch(new URL('practice-page.html', address))).text();
  const policy = /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)?.[1] ?? '';
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain("connect-src 'none'");
  expect(policy).not.toMatch(/unsafe|https?:|\*/);
  expect(html.match(/<script/g)).toHaveLength(3);
});

test('practising changes nothing of the lesson, and leads back to it', async () => {
  const { page, expectClean } = await openWithLesson();
  const before = await page.getByRole('switch', { name: 'Loop' }).getAttribute('aria-checked');
  await chooseExport(page, 'Look at the practice page');
  await page.getByRole('heading', { level: 1, name: 'Week 3' }).waitFor();
  expect(await page.getByRole('textbox').count()).toBe(0);
  await page.getByRole('heading', { name: 'Hands and ears' }).waitFor();
  await page.getByText('Pain means stop.').waitFor();
  await page.getByRole('switch', { name: 'Loop' }).click();
  await page.getByRole('switch', { name: 'Bass', exact: true }).click();
  await button(page, 'Back to the lesson').click();
  await page.getByRole('textbox', { name: 'Chord chart' }).waitFor();
  expect(await page.getByRole('switch', { name: 'Loop' }).getAttribute('aria-checked')).toBe(before);
  expect(await page.getByRole('switch', { name: 'Bass', exact: true }).getAttribute('aria-checked')).toBe(
    'true',
  );
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Export');
  await chooseExport(page, 'Look at the practice page');
  await button(page, 'Back to the lesson').waitFor();
  await page.goBack();
  await page.getByRole('textbox', { name: 'Chord chart' }).waitFor();
  expectClean();
});

test('a student opens a lesson file, drops another, and follows a link; no lesson is kept on the device', async () => {
  const { page, address, expectClean } = await openApp({ path: '?practice', prepare: keepLoudest });
  await page.getByRole('heading', { name: 'Practice page' }).waitFor();
  await page.locator('input[type="file"]').setInputFiles({
    name: 'holiday.json',
    mimeType: 'application/json',
    buffer: Buffer.from('{"a": 1}'),
  });
  await page.getByRole('alert').getByText('not a lesson').waitFor();
  await page.locator('input[type="file"]').setInputFiles(LESSON_FILE);
  await score(page).locator('svg').first().waitFor();
  expect(await page.getByRole('alert').textContent()).toBe('');

  await page.getByRole('combobox', { name: 'On the sheet' }).selectOption({ index: 2 });
  expect(await page.getByRole('figure').count()).toBe(1);
  await score(page).locator('svg').first().waitFor();
  await playsAndMoves(page);

  const other = printLesson(setTitle(sampleLesson(1, 'other'), 'Dropped'));
  await page.evaluate((text) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([text], 'other.lesson.json', { type: 'application/json' }));
    document.body.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
  }, other);
  await page.getByRole('heading', { level: 1, name: 'Dropped' }).waitFor();

  const { writeLessonLink } = await import('../../src/core/exchange');
  await page.goto(writeLessonLink(LESSON, `${address}?practice`));
  await page.getByRole('heading', { level: 1, name: 'Week 3' }).waitFor();
  expect(await page.evaluate(async () => (await indexedDB.databases()).length)).toBe(0);
  expectClean();
});

test('printed by the browser it is the sheet in ink with its cautions, without the ledge', async () => {
  const { page } = await openWithLesson();
  await chooseExport(page, 'Look at the practice page');
  // The writing page has a score, too: this is not before the practice page.
  await page.getByRole('heading', { name: 'Hands and ears' }).waitFor();
  await score(page).locator('svg').first().waitFor();
  const { pages } = await readPdf(new Uint8Array(await page.pdf({ format: 'A4' })));
  const words = pages.flatMap(({ texts }) => texts.map(({ text }) => text.trim()));
  const printed = words.join(' ');
  expect(printed).toContain('Dm');
  expect(printed).toContain('Hands and ears');
  // Labels of buttons stand by themselves; in a sentence the word may come.
  for (const label of ['Play', 'Stopped', 'Large view']) expect(words).not.toContain(label);
  // The widest thing on paper ends inside the margin of 14 mm, 40 points.
  const furthest = Math.max(...pages.flatMap(({ width, texts }) => texts.map(({ x }) => x - width)));
  expect(furthest).toBeLessThan(-40);
});

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

test('printed at any moment, the page prints the handout or says one moment, and never its own buttons', async () => {
  const { page, expectClean } = await openApp();
  const printed = async () => {
    const { pages } = await readPdf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
    return pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
  };
  const seen: string[] = [];
  await expect.poll(printed, { timeout: 30_000 }).not.toContain('One moment');
  // What was made of the title before is gone with the change, before the page shows it.
  await page.getByRole('textbox', { name: 'Lesson title' }).fill('Tuesday, week 9');
  for (let print = 0; print < 8; print += 1) {
    const text = await printed();
    const waits = text.includes('One moment');
    seen.push(waits ? 'one moment' : 'handout');
    if (!waits) expect(text).toContain('Tuesday, week 9');
    expect(text).not.toMatch(/Another take|Lesson check/);
    await page.waitForTimeout(300);
  }
  expect(seen[0]).toBe('one moment');
  await expect.poll(printed, { timeout: 30_000 }).toContain('Tuesday, week 9');
  expectClean();
});
