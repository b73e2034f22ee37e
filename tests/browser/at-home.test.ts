/** The practice page as a file, beside the lesson, from a student's device and on paper. */
import { mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { printLesson, sampleLesson, setTitle } from '../../src/core/lesson';
import { readPdf } from '../handout/pages';
import { openApp } from '../support/browser';
import { listenIn } from '../support/listening-in';
import {
  button,
  chooseExport,
  HOSTILE,
  LESSON,
  LESSON_FILE,
  openWithLesson,
  PATIENT,
  playback,
  practiceTemplate,
  score,
} from '../support/practising';

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
  const html = await practiceTemplate(address);
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
