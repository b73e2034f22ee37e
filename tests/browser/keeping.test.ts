import { readFile } from 'node:fs/promises';
import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { openApp } from '../support/browser';

const PATIENT = { timeout: 20_000 };

const title = (page: Page) => page.getByRole('textbox', { name: 'Lesson title' });
const notes = (page: Page) => page.getByRole('textbox', { name: 'Chord chart' });
const saved = (page: Page) => page.getByText('saved on this device', { exact: true });
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });

/** What stands in the browser's database: title and chart of every lesson. */
const stored = (page: Page): Promise<readonly { title: string; chart: string }[]> =>
  page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open('ground-bass');
        // Only the app itself makes the database.
        opening.onupgradeneeded = () => opening.transaction?.abort();
        opening.onerror = () => (opening.error?.name === 'AbortError' ? resolve([]) : reject(opening.error));
        opening.onsuccess = () => {
          const database = opening.result;
          const reading = database.transaction('lessons').objectStore('lessons').getAll();
          reading.onsuccess = () => {
            database.close();
            resolve(
              reading.result.map(({ document }) => ({
                title: document.title,
                chart: document.pieces[0].chartText,
              })),
            );
          };
        };
      }),
  );

/** What the page hands out as a file when this is chosen in Export. */
async function exported(page: Page, item: string): Promise<Buffer> {
  await button(page, 'Export').click();
  const download = page.waitForEvent('download');
  await page.getByRole('menuitem', { name: item, exact: true }).click();
  return readFile(await (await download).path());
}

/** Puts a record into the browser's database. */
const put = (page: Page, record: unknown, opened: string | null = null): Promise<void> =>
  page.evaluate(
    ([each, name]) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('ground-bass');
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const database = opening.result;
          const writing = database.transaction(['lessons', 'settings'], 'readwrite');
          writing.objectStore('lessons').put(each);
          if (name !== null) writing.objectStore('settings').put(name, 'last opened');
          writing.oncomplete = () => {
            database.close();
            resolve();
          };
        };
      }),
    [record, opened] as const,
  );

/** Another window of the same browser. */
async function another(context: BrowserContext, address: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  await title(page).waitFor();
  return page;
}

/** Ends a page as a crash does: nothing of it runs any more. */
async function crash(page: Page): Promise<void> {
  const session = await page.context().newCDPSession(page);
  const gone = page.waitForEvent('crash');
  void session.send('Page.crash').catch(() => {});
  await gone;
  await page.close();
}

describe('two windows on one lesson', () => {
  test('one follows the other at once, and while both type both states are kept', async () => {
    const { page, address, expectClean } = await openApp();
    await title(page).fill('Ferry queue');
    await saved(page).waitFor();
    const other = await another(page.context(), address);
    expect(await title(other).inputValue()).toBe('Ferry queue');

    await title(page).fill('Changed in one');
    await expect.poll(() => title(other).inputValue(), PATIENT).toBe('Changed in one');
    await saved(other).waitFor();

    await Promise.all([
      notes(page).pressSequentially(' | C7 F7 | C7 |', { delay: 70 }),
      notes(other).pressSequentially(' | Dm Gm | A7 |', { delay: 70 }),
    ]);
    await Promise.all([saved(page).waitFor(), saved(other).waitFor()]);
    await expect.poll(async () => (await stored(page)).length, PATIENT).toBe(2);
    const kept = await stored(page);
    expect(kept.map((lesson) => lesson.title).sort()).toEqual([
      'Changed in one',
      'Changed in one (second window)',
    ]);
    expect(kept.filter(({ chart }) => chart.includes('C7 F7 | C7'))).toHaveLength(1);
    expect(kept.filter(({ chart }) => chart.includes('Dm Gm | A7'))).toHaveLength(1);
    const told = await Promise.all([page, other].map((each) => each.getByText(/Both are kept/).count()));
    expect(told.sort()).toEqual([0, 1]);
    // Whoever went on apart was typing, and still is: nothing under the hands was built anew.
    expect(await notes(page).inputValue()).toContain('C7 F7 | C7 |');
    expect(await notes(other).inputValue()).toContain('Dm Gm | A7 |');
    expectClean();
  });
});

describe('saving', () => {
  test('a browser that dies while someone types without a pause loses a second at most', async () => {
    const { page, address } = await openApp();
    await title(page).fill('');
    await page.evaluate(() => {
      const field = document.querySelector<HTMLInputElement>('.header__title');
      const write = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
      setInterval(() => {
        if (field === null) return;
        write?.call(field, String(Date.now()));
        field.dispatchEvent(new Event('input', { bubbles: true }));
      }, 60);
    });
    await page.waitForTimeout(3500);
    const context = page.context();
    const lastWritten = Number(await title(page).inputValue());
    await crash(page);
    const after = await another(context, address);
    const kept = Number(await title(after).inputValue());
    expect(lastWritten - kept).toBeLessThan(1000);
  });

  test('what was typed just before the page was left is there when it is opened again', async () => {
    const { page, expectClean } = await openApp();
    await title(page).fill('First words');
    await saved(page).waitFor();
    await expect.poll(async () => (await stored(page))[0]?.title, PATIENT).toBe('First words');
    for (const last of ['Last words', 'The very last words']) {
      await title(page).fill(last);
      await page.reload();
      await expect.poll(() => title(page).inputValue(), PATIENT).toBe(last);
      await expect.poll(async () => (await stored(page))[0]?.title, PATIENT).toBe(last);
    }
    const notes = () => page.evaluate(() => Object.keys(localStorage).filter((name) => / left /.test(name)));
    await expect.poll(notes, PATIENT).toEqual([]);
    expectClean();
  });

  test('begins again by itself after the site’s data were cleared', async () => {
    const { page, address, expectClean } = await openApp();
    await title(page).fill('Stays');
    await saved(page).waitFor();
    const session = await page.context().newCDPSession(page);
    await session.send('Storage.clearDataForOrigin', {
      origin: new URL(address).origin,
      storageTypes: 'indexeddb,local_storage',
    });
    await expect
      .poll(async () => (await stored(page)).map((lesson) => lesson.title), PATIENT)
      .toEqual(['Stays']);
    await saved(page).waitFor();
    await page.reload();
    await expect.poll(() => title(page).inputValue(), PATIENT).toBe('Stays');
    expectClean();
  });

  test('the lessons’ menu says whether the browser has agreed to keep them, once one was saved', async () => {
    const { page } = await openApp({
      prepare: async (fresh) => {
        await fresh.addInitScript(() => {
          let granted = false;
          Object.assign(StorageManager.prototype, {
            persisted: async () => granted,
            persist: async () => {
              granted = true;
              return true;
            },
          });
        });
      },
    });
    await button(page, 'Lessons').click();
    await page.getByRole('menu').waitFor();
    expect(await page.getByText(/browser has agreed|browser may clear/).count()).toBe(0);
    await page.keyboard.press('Escape');
    await title(page).fill('Mine');
    await saved(page).waitFor();
    await button(page, 'Lessons').click();
    await page.getByText('The browser has agreed to keep them until you remove them.').waitFor();
  });
});

test('a record that cannot be read is listed, saved as a file and removed; the others stay', async () => {
  const { page, expectClean } = await openApp();
  await title(page).fill('Good');
  await saved(page).waitFor();
  const bad = {
    id: 'bad',
    title: { a: 1 },
    savedAt: 1e300,
    document: { title: 'Was once a lesson', pieces: 7 },
  };
  await put(page, bad);
  await button(page, 'Lessons').click();
  await page.getByRole('menuitem', { name: 'Was once a lesson' }).click();
  await page
    .getByRole('alert')
    .getByText(/stays on this device/)
    .waitFor();
  const download = page.waitForEvent('download');
  await button(page, 'Save it as a file').click();
  expect((await download).suggestedFilename()).toBe('was-once-a-lesson.lesson.json');
  expect(JSON.parse(await readFile(await (await download).path(), 'utf8'))).toEqual(bad.document);

  await button(page, 'Lessons').click();
  await page.getByRole('menuitem', { name: 'The whole shelf' }).click();
  await page.getByRole('option', { name: 'Was once a lesson' }).click();
  await button(page, 'Remove').click();
  await page.getByText('“Was once a lesson” is removed.').waitFor();
  await page.keyboard.press('Escape');
  expect(await stored(page)).toMatchObject([{ title: 'Good' }]);
  expectClean();
});

/**
 * Keeps in `waited` of the page how many milliseconds its timers have waited one after the other: waiting for the storage
 * step by step adds up, and what a busy machine takes does not count.
 */
const countWaiting = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    let waited = 0;
    const later = window.setTimeout.bind(window);
    const counting = (run: TimerHandler, delay = 0, ...given: unknown[]): number => {
      const due = waited + delay;
      const ring = () => {
        waited = Math.max(waited, due);
        if (typeof run === 'function') run(...given);
      };
      return later(ring, delay);
    };
    Object.assign(window, { setTimeout: counting });
    Object.defineProperty(window, 'waited', { get: () => waited });
  });

describe('a storage that never answers', () => {
  test.each([
    [
      'whose opening has no event',
      `IDBFactory.prototype.open = () => Object.create(IDBOpenDBRequest.prototype, {
         addEventListener: { value() {} }, removeEventListener: { value() {} },
       });`,
    ],
    [
      'whose transactions never end',
      `for (const name of ['oncomplete', 'onerror', 'onabort']) Object.defineProperty(IDBTransaction.prototype, name, { set() {} });
       const listen = EventTarget.prototype.addEventListener;
       EventTarget.prototype.addEventListener = function (...args) {
         if (!(this instanceof IDBTransaction) && !(this instanceof IDBRequest && this.transaction?.mode !== 'versionchange' && this.source !== null))
           return listen.apply(this, args);
       };`,
    ],
  ])('%s: the page is there, works in memory, offers the file, and never says saved', async (_, script) => {
    const { page } = await openApp({
      prepare: async (fresh) => {
        await fresh.addInitScript(script);
        await countWaiting(fresh);
        await fresh.addInitScript(() => {
          const said: string[] = [];
          Object.assign(window, { said });
          setInterval(() => said.push(document.querySelector('#saving')?.textContent ?? ''), 20);
        });
      },
    });
    await title(page).waitFor();
    expect(await page.evaluate(() => Reflect.get(window, 'waited'))).toBeLessThan(8000);
    await page
      .getByRole('alert')
      .getByText(/has not answered for three seconds/)
      .waitFor();
    // The meter counts: those three seconds are in it.
    expect(await page.evaluate(() => Reflect.get(window, 'waited'))).toBeGreaterThanOrEqual(3000);
    await title(page).fill('In memory');
    const download = page.waitForEvent('download');
    await button(page, 'Save the lesson file').click();
    expect((await download).suggestedFilename()).toBe('in-memory.lesson.json');
    await page.waitForTimeout(1500);
    const said: string[] = await page.evaluate(() => Reflect.get(window, 'said'));
    expect(new Set(said.filter((each) => each !== ''))).toEqual(new Set(['not saved']));
  });

  test('a database of a newer copy has a sentence of its own', async () => {
    const { page } = await openApp({
      prepare: async (fresh) => {
        await fresh.addInitScript(() => {
          const open = IDBFactory.prototype.open;
          IDBFactory.prototype.open = function (name: string, version?: number) {
            if (version === undefined) return open.call(this, name);
            throw new DOMException('', 'VersionError');
          };
        });
      },
    });
    await page
      .getByRole('alert')
      .getByText(/kept by a newer Ground Bass/)
      .waitFor();
    await page.getByText('not saved', { exact: true }).waitFor();
  });
});

test('a lesson of a newer copy is only shown until a copy of it is made', async () => {
  const { page, expectClean } = await openApp();
  await title(page).fill('From tomorrow');
  await saved(page).waitFor();
  await page.evaluate(
    () =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open('ground-bass');
        opening.onsuccess = () => {
          const lessons = opening.result.transaction('lessons', 'readwrite').objectStore('lessons');
          const all = lessons.getAll();
          all.onsuccess = () => {
            for (const record of all.result)
              lessons.put({
                ...record,
                revision: 'newer',
                document: { ...record.document, version: 99, mood: 'calm' },
              });
          };
          lessons.transaction.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
  );
  await page.reload();
  await page.getByText('only shown', { exact: true }).waitFor();
  await page.getByText(/Left out here.*mood/).waitFor();
  await title(page).press('End');
  await title(page).press('!');
  await page
    .getByRole('alert')
    .getByText(/only shown here, so it was not changed/)
    .waitFor();
  expect(await title(page).inputValue()).toBe('From tomorrow');

  const whole = JSON.parse((await exported(page, 'Lesson file')).toString());
  expect(whole).toMatchObject({ title: 'From tomorrow', version: 99, mood: 'calm' });
  await page
    .getByRole('alert')
    .getByText(/as the newer Ground Bass saved it/)
    .waitFor();
  for (const made of ['Practice page', 'Text tab', 'MIDI']) {
    await exported(page, made);
    await page
      .getByRole('alert')
      .getByText(/left out is not in it. Export, Lesson file gives the whole lesson/)
      .waitFor();
  }
  await button(page, 'Make a copy').click();
  await saved(page).waitFor();
  await title(page).fill('My copy');
  await saved(page).waitFor();
  expect((await stored(page)).map((each) => each.title).sort()).toEqual(['From tomorrow', 'My copy']);
  expectClean();
});

test('a lesson with which a start froze is not opened again, and is offered as a file', async () => {
  const { page, address } = await openApp();
  await title(page).fill('Freezes');
  await saved(page).waitFor();
  const context = page.context();
  await page.close();

  const frozen = await context.newPage();
  await frozen.addInitScript(() => {
    const append = Element.prototype.appendChild;
    Element.prototype.appendChild = function <Child extends Node>(child: Child): Child {
      while (this.id === 'app' && child instanceof Element && child.querySelector('.header__title') !== null);
      return append.call(this, child) as Child;
    };
  });
  await frozen.goto(address, { waitUntil: 'commit' });
  await frozen.waitForTimeout(1500);
  await frozen.close();

  const after = await another(context, address);
  await after
    .getByRole('alert')
    .getByText(/did not come to its end.*not opened again/)
    .waitFor();
  expect(await title(after).inputValue()).not.toBe('Freezes');
  const download = after.waitForEvent('download');
  await button(after, 'Save it as a file').click();
  expect((await download).suggestedFilename()).toBe('freezes.lesson.json');
  await button(after, 'Put away').click();
  await after.waitForTimeout(2500);
  await after.reload();
  await title(after).waitFor();
  expect(await after.getByText(/did not come to its end/).count()).toBe(0);
});

/** A page whose workers hear nothing as long as it says so: those whose address has this in it. */
async function withDeafWorkers(named: string) {
  const opened = await openApp({
    prepare: async (fresh) => {
      await fresh.addInitScript((name) => {
        Object.assign(window, { deaf: true });
        const Own = window.Worker;
        window.Worker = class extends Own {
          readonly #hears: boolean;
          constructor(address: string | URL, options?: WorkerOptions) {
            super(address, options);
            this.#hears = !String(address).includes(name);
          }
          override postMessage(...message: unknown[]): void {
            if (this.#hears || Reflect.get(window, 'deaf') !== true)
              Reflect.apply(super.postMessage, this, message);
          }
        };
      }, named);
      await fresh.clock.install();
    },
  });
  return { ...opened, hearAgain: () => opened.page.evaluate(() => Object.assign(window, { deaf: false })) };
}

test('a composer that falls silent is ended with a sentence, and the next question starts another', async () => {
  const { page, hearAgain } = await withDeafWorkers('composing');
  await button(page, 'Compose line').click();
  await page.locator('figure[aria-busy="true"]').waitFor();
  await page.clock.runFor(61_000);
  await page.getByText(/composer no longer answered/).waitFor();
  await page.locator('figure[aria-busy="true"]').waitFor({ state: 'detached' });
  await button(page, 'Understood').click();
  await hearAgain();
  await button(page, 'Compose line').click();
  await page.locator('figure[aria-busy="true"]').waitFor({ state: 'detached' });
  expect(await page.getByText(/composer no longer answered/).count()).toBe(0);
});

test('a sound that falls silent is said to get ready until it is ended with a sentence, and the next begins afresh', async () => {
  const { page, hearAgain } = await withDeafWorkers('render');
  const status = page.getByRole('status', { name: 'Playback' });
  const play = page.getByRole('button', { name: 'Play', exact: true });
  await play.click();
  await expect.poll(() => status.textContent()).toBe('Getting ready');
  await page.clock.runFor(20_000);
  expect(await status.textContent()).toBe('Getting ready');
  // What asks the worker is fetched by a clock of its own, so that it may begin to wait only now.
  const said = page.getByRole('alert').getByText(/computes the sound no longer answered/);
  await expect
    .poll(async () => {
      await page.clock.runFor(5_000);
      return said.count();
    }, PATIENT)
    .toBe(1);
  expect(await status.textContent()).toBe('Stopped');
  await hearAgain();
  await play.click();
  await expect.poll(() => status.textContent(), PATIENT).toMatch(/^(Counting in to|Playing)/);
  await expect.poll(() => page.getByText(/no longer answered/).count(), PATIENT).toBe(0);
});

test('a reader that falls silent is given up with a sentence, which goes when the next file is read', async () => {
  const { page, hearAgain } = await withDeafWorkers('reading');
  await title(page).fill('Under way');
  const file = {
    name: 'quay.tab',
    mimeType: 'text/plain',
    buffer: Buffer.from(
      'G|----------------|\nD|----------------|\nA|0-2-3-------3-2-|\nE|----------------|\n',
    ),
  };
  const choose = () => page.locator('input[type="file"]').first().setInputFiles(file);
  await choose();
  await page.clock.runFor(1000);
  await page.getByText('Reading “quay.tab”. You can go on meanwhile.').waitFor();
  // The page is not waiting with it.
  await title(page).fill('Went on');
  await page.clock.runFor(121_000);
  await page.getByText(/came to no end, so it was given up/).waitFor();
  expect(await title(page).inputValue()).toBe('Went on');
  await hearAgain();
  await choose();
  await page.getByRole('dialog', { name: /What do you want of “quay\.tab”/ }).waitFor();
  expect(await page.getByText(/came to no end/).count()).toBe(0);
});
