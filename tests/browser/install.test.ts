import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { printLesson, sampleLesson, setTitle } from '../../src/core/lesson';
import { EMPTY_RECORD } from '../../src/core/practising';
import { openApp } from '../support/browser';

const PATIENT = { timeout: 30_000 };
const titled = (title: string): string => printLesson(setTitle(sampleLesson(1, 'handed'), title));
const title = (page: Page) => page.getByRole('textbox', { name: 'Lesson title' });

test('a browser reads the manifest without a fault', async () => {
  const { page, expectClean } = await openApp();
  const devtools = await page.context().newCDPSession(page);
  const { errors, url } = await devtools.send('Page.getAppManifest');
  expect(url).toMatch(/manifest\.webmanifest$/);
  expect(errors).toEqual([]);
  expectClean();
});

/** Stands in for the queue in which the system hands files to an installed app. */
async function withLaunchQueue(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'launchQueue', {
      value: { setConsumer: (take: unknown) => Object.assign(window, { takeLaunch: take }) },
    });
  });
}

/** Hands files over, each as its name and text; a text that is null cannot be read any more. */
async function handOver(page: Page, files: readonly (readonly [string, string | null])[]): Promise<void> {
  await expect
    .poll(() => page.evaluate(() => typeof Reflect.get(window, 'takeLaunch')), PATIENT)
    .toBe('function');
  await page.evaluate((handed) => {
    Reflect.get(
      window,
      'takeLaunch',
    )({
      targetURL: window.location.href,
      files: handed.map(([name, text]) => ({
        getFile: async () => {
          if (text === null) throw new DOMException('gone', 'NotFoundError');
          return new File([text], name, { type: 'application/json' });
        },
      })),
    });
  }, files);
}

test('a file that the system hands over is opened; what cannot be opened, and what was left, gets a sentence', async () => {
  const { page, expectClean } = await openApp({ prepare: withLaunchQueue });
  await handOver(page, []);
  await handOver(page, [['week-5.lesson.json', titled('Handed over')]]);
  await expect.poll(() => title(page).inputValue(), PATIENT).toBe('Handed over');
  await handOver(page, [['shopping.json', '{"a": 1}']]);
  await page
    .getByText(/not a lesson/)
    .first()
    .waitFor();
  await handOver(page, [['gone.json', null]]);
  await page.getByText(/^The file that was handed over could not be read\./).waitFor();
  await handOver(page, [
    ['one.json', titled('The first of two')],
    ['two.json', titled('The second of two')],
  ]);
  await expect.poll(() => title(page).inputValue(), PATIENT).toBe('The first of two');
  await page
    .getByText('2 files were handed over, and only “one.json” was opened. Open the others one by one.')
    .waitFor();
  expectClean();
});

/**
 * Shares as an installed app's system does, by a form that the service worker answers.
 * @returns the address of the page that is to show it, below the app's own
 */
const share = (
  page: Page,
  entries: Readonly<Record<string, string>>,
  files: Readonly<Record<string, string>> = {},
) =>
  page.evaluate(
    async ([texts, named]) => {
      const form = new FormData();
      for (const [name, text] of Object.entries(texts)) form.append(name, text);
      for (const [name, text] of Object.entries(named)) form.append('file', new File([text], name));
      const response = await fetch('./share', { method: 'POST', body: form });
      return response.url.slice(new URL('./', window.location.href).href.length);
    },
    [entries, files] as const,
  );

test('what another app shares is opened: a lesson file, a link to the practice page; what is none gets a sentence', async () => {
  const { page, address, expectClean } = await openApp({ serviceWorker: true });
  await expect
    .poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state), { timeout: 90_000 })
    .toBe('activated');
  const open = async (path: string) => {
    await page.goto(address + path);
    await title(page).waitFor();
  };
  await open(await share(page, { title: 'For you' }, { 'Übung 3.lesson.json': titled('Shared') }));
  await expect.poll(() => title(page).inputValue(), PATIENT).toBe('Shared');
  expect(new URL(page.url()).search).toBe('');
  // The page is left below; what it opened has to be on the device by then.
  await page.getByText('saved on this device', { exact: true }).waitFor();

  await open(await share(page, {}, { 'shopping.txt': 'milk, bread' }));
  await page
    .getByText(/not a lesson|no lesson/)
    .first()
    .waitFor();
  await expect.poll(() => title(page).inputValue(), PATIENT).toBe('Shared');
  await open(await share(page, { text: 'See you on Tuesday' }));
  await page.getByText(/^Nothing was found in what the other app shared\./).waitFor();

  const { writeLessonLink } = await import('../../src/core/exchange');
  const link = writeLessonLink(setTitle(sampleLesson(1, 'link'), 'By a link'), `${address}practice.html`);
  const path = await share(page, { text: `Practise this: ${link}` });
  expect(path).toMatch(/^practice\.html/);
  await page.goto(link);
  await page.getByRole('heading', { level: 1, name: 'By a link' }).waitFor();
  expectClean();
});

/** What the page remembers of a student who has played week 6. */
const DIARY = JSON.stringify({
  ...EMPTY_RECORD,
  diary: [
    {
      day: '2026-03-02',
      lesson: 'Week 6',
      piece: 'Verse',
      bars: 'all bars',
      seconds: 95,
      rounds: 3,
      tempo: 84,
    },
  ],
});

test('the diary is handed to another app where there is sharing, and a share that fails says what to do', async () => {
  const { page, expectClean } = await openApp({
    path: 'practice.html',
    prepare: async (fresh) => {
      await fresh.addInitScript((record) => window.localStorage.setItem('practice-record', record), DIARY);
      await fresh.addInitScript(() => {
        const shared: ShareData[] = [];
        const faults: string[] = [];
        Object.assign(window, { shared, faults });
        Navigator.prototype.share = async (data) => {
          const fault = faults.shift();
          if (fault !== undefined) throw new DOMException('', fault);
          shared.push(data ?? {});
        };
      });
    },
  });
  await page.locator('input[type="file"]').setInputFiles({
    name: 'week-6.lesson.json',
    mimeType: 'application/json',
    buffer: Buffer.from(titled('Week 6')),
  });
  const send = page.getByRole('button', { name: 'Send the diary' });
  const said = page.getByRole('status', { name: 'Sending the diary' });
  await send.click();
  const shared = () => page.evaluate(() => Reflect.get(window, 'shared'));
  await expect.poll(shared).toEqual([{ title: 'Practice diary', text: expect.stringContaining('Week 6') }]);
  await page.evaluate(() => Reflect.get(window, 'faults').push('AbortError', 'NotAllowedError'));
  await send.click();
  expect(await said.textContent()).toBe('');
  await send.click();
  await expect.poll(() => said.textContent()).toMatch(/^The diary could not be handed to another app here\./);
  expectClean();
});
