import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { letterText } from '../../src/core/listening';
import { encodeWav } from '../../src/sound';
import { openApp } from '../support/browser';
import { faults } from '../support/faults';
import { addAll, addVersion, openStudents } from '../support/people';

const LETTER = {
  ...{ lesson: 'Harbour', piece: 'Ferry queue', day: '2026-11-29', tempo: 92, stuck: [3, 4] },
  ...{ rests: 6, kept: 5, notes: 20, right: 18 },
};

const silence = new Float32Array(8000);
const SECOND_OF_SILENCE = Buffer.from(encodeWav({ sampleRate: 8000, left: silence, right: silence }));

const button = (page: Page | Locator, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });

/** Everything that the browser keeps for the page, as text. */
const allKept = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const kept: unknown[] = [{ ...localStorage }];
    for (const { name = '' } of await indexedDB.databases()) {
      const database = await new Promise<IDBDatabase>((resolve, reject) => {
        const opening = indexedDB.open(name);
        opening.onsuccess = () => resolve(opening.result);
        opening.onerror = () => reject(opening.error);
      });
      for (const store of database.objectStoreNames)
        kept.push(
          await new Promise((resolve) => {
            const all = database.transaction(store).objectStore(store).getAll();
            all.onsuccess = () => resolve(all.result);
          }),
        );
      database.close();
    }
    return JSON.stringify(kept);
  });

test('by keyboard a student is added, given the open lesson, heard, and deleted with all of it', async () => {
  const { page, expectClean } = await openApp({ width: 1440 });
  await page.getByRole('textbox', { name: 'Lesson title' }).fill('Harbour');
  await page.getByText(/^saved/).waitFor();
  const dialog = await openStudents(page);
  await dialog.getByRole('textbox', { name: 'Name of a new student' }).focus();
  await page.keyboard.type('Adalind');
  await page.keyboard.press('Enter');
  await dialog.getByText('Adalind is kept on this device.').waitFor();
  expect(await dialog.getByRole('radio', { name: /^Adalind/ }).isChecked()).toBe(true);
  await button(dialog, 'Give the open lesson').press('Enter');
  const given = dialog.getByRole('list', { name: 'Lessons given to Adalind' });
  await given.getByRole('button', { name: 'Harbour', exact: true }).waitFor();
  await given.getByRole('textbox', { name: /^Tempo reached/ }).fill('84');
  await page.keyboard.press('Enter');
  await given.getByRole('textbox', { name: /^To mend next/ }).fill('the pickup rushes');
  await page.keyboard.press('Enter');
  await dialog.getByText('To mend next: the pickup rushes (“Harbour”).').waitFor();
  // What the student's practice page wrote comes through a message; what is none is refused.
  const report = given.getByRole('textbox', { name: /^Report from home/ });
  await report.fill('Dear teacher, it went well.');
  await report.blur();
  await given
    .getByRole('alert')
    .getByText(/^This is no report of a practice page/)
    .waitFor();
  await report.fill(`Here it is:\n> ${letterText(LETTER).replaceAll('\n', '\n> ')}`);
  await report.blur();
  await expect.poll(() => given.getByRole('textbox', { name: /^Tempo reached/ }).inputValue()).toBe('92');
  expect(await given.getByRole('textbox', { name: /^To mend next/ }).inputValue()).toBe(
    'the pickup rushes; Ferry queue: bars 3 and 4; rests (5 of 6 kept)',
  );
  // A recording beside it is listened to from its file, and what is none is told.
  const recordings = given.locator('input[type="file"]');
  await recordings.setInputFiles({
    name: 'heard-at-home.webm',
    mimeType: 'audio/webm',
    buffer: Buffer.from('none'),
  });
  await given
    .getByRole('alert')
    .getByText(/^This file is no recording that this browser can play/)
    .waitFor();
  await recordings.setInputFiles({
    name: 'heard-at-home.wav',
    mimeType: 'audio/wav',
    buffer: SECOND_OF_SILENCE,
  });
  await expect
    .poll(() => given.locator('audio').evaluate((audio: HTMLAudioElement) => audio.duration))
    .toBe(1);
  await given.getByRole('textbox', { name: /^To mend next/ }).fill('the pickup rushes');
  await page.keyboard.press('Enter');
  await given.getByRole('textbox', { name: /^Tempo reached/ }).fill('fast');
  await page.keyboard.press('Enter');
  await given.getByRole('alert').getByText('A tempo is a whole number from 20 to 400.').waitFor();
  await dialog.getByRole('combobox', { name: /^Level/ }).selectOption({ index: 1 });
  await dialog.getByRole('checkbox', { name: 'Left-handed student' }).check();
  await dialog.getByRole('checkbox', { name: /^Write “Adalind” on the handout/ }).check();
  expect(await faults(page)).toEqual([]);
  await button(dialog, 'New lesson for this student').press('Enter');
  await dialog.waitFor({ state: 'detached' });
  await expect
    .poll(() => page.getByRole('textbox', { name: 'Lesson title' }).inputValue())
    .toBe('New lesson');
  await page.getByRole('textbox', { name: 'Lesson title' }).fill('For next week');
  await page.getByText(/^saved/).waitFor();
  await page.waitForTimeout(1800);
  await page.reload();
  await button(page, 'Undo').waitFor();
  const kept = await allKept(page);
  expect(kept).toContain('Adalind');
  expect(kept).toMatch(/"title":"For next week".*"leftHanded":true.*"level":1/);

  await openStudents(page);
  await dialog.getByRole('radio', { name: /^Adalind/ }).press('Space');
  await button(dialog, 'Delete').press('Enter');
  // Enter on what has the focus keeps the student.
  await page.keyboard.press('Enter');
  await button(dialog, 'Delete').press('Enter');
  await button(dialog, 'Delete Adalind').press('Enter');
  await dialog.getByText('The student is deleted, and nothing of them is left on this device.').waitFor();
  await page.waitForTimeout(2000);
  expect(await allKept(page)).not.toContain('Adalind');
  await page.keyboard.press('Escape');
  await button(page, 'Undo').click();
  await page.waitForTimeout(2500);
  expect(await allKept(page)).not.toContain('Adalind');
  expectClean();
}, 120_000);

const LONG = 'Maximiliane-Wilhelmina-'.repeat(8);

/** The disk is slow: for a while nothing can be saved. */
const slowDisk = (page: Page, milliseconds: number): Promise<void> =>
  page.evaluate(
    (time) =>
      new Promise((busy) => {
        const opening = indexedDB.open('ground-bass');
        opening.onsuccess = () => {
          const transaction = opening.result.transaction('lessons', 'readwrite');
          const end = performance.now() + time;
          const read = () => {
            if (performance.now() > end) return;
            transaction.objectStore('lessons').get('none').onsuccess = read;
          };
          transaction.oncomplete = () => opening.result.close();
          read();
          busy();
        };
      }),
    milliseconds,
  );

test('a lesson for a student can be typed into as soon as it is seen, however slow the disk', async () => {
  const { page, expectClean } = await openApp();
  const dialog = await openStudents(page);
  await addAll(dialog, ['Adalind']);
  await slowDisk(page, 2000);
  const seen = page.evaluate(
    () =>
      new Promise<boolean>((resolve) => {
        const look = () => {
          const title = document.querySelector<HTMLInputElement>('[aria-label="Lesson title"]');
          if (title?.value === 'New lesson') resolve(document.querySelector('dialog') !== null);
          else requestAnimationFrame(look);
        };
        look();
      }),
  );
  await button(dialog, 'New lesson for this student').click();
  expect(await seen).toBe(false);
  const title = page.getByRole('textbox', { name: 'Lesson title' });
  await title.fill('For next week');
  await page.getByText(/^saved/).waitFor();
  expect(await title.inputValue()).toBe('For next week');
  expect(await title.evaluate((field) => field === document.activeElement)).toBe(true);
  expectClean();
});

test('by keyboard a class is made, and each member is given the version that is meant for them', async () => {
  const { page, expectClean } = await openApp({ width: 1440 });
  await page.getByRole('textbox', { name: 'Lesson title' }).fill('Harbour');
  await addVersion(page, 'for Bo');
  await addVersion(page, 'in E flat');
  const dialog = await openStudents(page);
  await addAll(dialog, ['Adalind', 'Bo', LONG]);
  await addAll(dialog, ['Wednesday'], 'class');
  await dialog.getByText('Nobody is in this class yet: tick its students below.').waitFor();
  for (const name of ['Bo', 'Adalind', LONG])
    await dialog.getByRole('checkbox', { name: `${name} in this class` }).press('Space');
  const gets = (name: string) => dialog.getByRole('combobox', { name: `${name} gets` });
  await expect
    .poll(() => gets(LONG).evaluate((each: HTMLSelectElement) => each.selectedOptions[0]?.text))
    .toBe('in E flat');
  await gets('Adalind').selectOption('the tune itself');
  expect(await faults(page)).toEqual([]);
  await button(dialog, 'Give the open lesson to the class').press('Enter');
  await dialog.getByText(/^“Harbour” is noted as given to 3 students of Wednesday, /).waitFor();
  for (const [name, title] of [
    ['Adalind', 'Harbour'],
    ['Bo', 'Harbour, for Bo'],
    [LONG, 'Harbour, in E flat'],
  ] as const) {
    await dialog.getByRole('radio', { name: new RegExp(`^${name}`) }).press('Space');
    const given = dialog.getByRole('list', { name: `Lessons given to ${name}` });
    await given.getByRole('button', { name: title, exact: true }).waitFor();
  }
  await page.setViewportSize({ width: 390, height: 844 });
  await dialog.getByRole('radio', { name: /^Wednesday/ }).press('Space');
  await dialog.getByRole('textbox', { name: 'Name of the class' }).fill(LONG);
  await page.keyboard.press('Enter');
  await dialog.getByRole('radio', { name: `${LONG} 3 students` }).waitFor();
  expect(await dialog.evaluate((each) => each.scrollWidth - each.clientWidth)).toBeLessThanOrEqual(0);
  expect(await faults(page)).toEqual([]);
  await dialog.getByRole('checkbox', { name: 'Bo in this class' }).press('Space');
  await dialog.getByRole('radio', { name: `${LONG} 2 students` }).waitFor();
  await button(dialog, 'Delete').press('Enter');
  expect(await dialog.evaluate((each) => each.scrollWidth - each.clientWidth)).toBeLessThanOrEqual(0);
  await button(dialog, `Delete ${LONG}`).press('Enter');
  await dialog.getByText(`${LONG} is deleted. Its students stay, with what they were given.`).waitFor();
  await dialog.getByRole('radio', { name: /^Bo level/ }).waitFor();
  expectClean();
}, 120_000);

test('two windows keep one class in step, and an entry that cannot be read stays', async () => {
  const { page, expectClean } = await openApp({ width: 1024 });
  const dialog = await openStudents(page);
  await addAll(dialog, ['Ada', 'Bo']);
  await addAll(dialog, ['Wednesday'], 'class');
  const other = await page.context().newPage();
  await other.goto(page.url());
  const there = await openStudents(other);
  await there.getByRole('radio', { name: /^Wednesday/ }).press('Space');
  await there.getByRole('checkbox', { name: 'Ada in this class' }).check();
  await dialog.getByRole('radio', { name: 'Wednesday 1 student' }).waitFor();
  await dialog.getByRole('checkbox', { name: 'Bo in this class' }).check();
  await there.getByRole('radio', { name: 'Wednesday 2 students' }).waitFor();
  await other.close();
  // A newer copy of the app has kept Ada in a shape that this one does not know.
  await page.evaluate(async () => {
    const database = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open('ground-bass students');
      opening.onsuccess = () => resolve(opening.result);
    });
    const store = database.transaction('entries', 'readwrite').objectStore('entries');
    const all = await new Promise<{ id: string; document: { name: string } }[]>((resolve) => {
      const asked = store.getAll();
      asked.onsuccess = () => resolve(asked.result);
    });
    const ada = all.find(({ document }) => document.name === 'Ada');
    if (ada === undefined) throw new Error('Ada is kept.');
    await new Promise((resolve) => {
      store.put({ ...ada, document: { ...ada.document, version: 9 } }).onsuccess = resolve;
    });
    database.close();
  });
  await page.keyboard.press('Escape');
  await openStudents(page);
  await dialog.getByText(/^“Ada”: It was kept by a newer Ground Bass/).waitFor();
  await dialog.getByRole('radio', { name: 'Wednesday 1 student' }).press('Space');
  await dialog.getByText('1 member cannot be read here and stays in the class as before.').waitFor();
  await button(dialog, 'Give the open lesson to the class').click();
  await dialog.getByText(/is noted as given to 1 student of Wednesday/).waitFor();
  await button(dialog, 'Delete “Ada”').click();
  // What has the focus keeps it.
  await page.keyboard.press('Enter');
  await button(dialog, 'Delete “Ada”').click();
  await button(dialog, 'Delete what cannot be read').click();
  await dialog.getByText('“Ada” is deleted.').waitFor();
  expect(await allKept(page)).not.toContain('"Ada"');
  expectClean();
}, 120_000);

test('at 390 px nothing of the students is cut off', async () => {
  const { page, expectClean } = await openApp({ width: 390 });
  const dialog = await openStudents(page);
  await dialog.getByRole('textbox', { name: 'Name of a new student' }).fill('Bo');
  await button(dialog, 'Add the student').click();
  await button(dialog, 'Give the open lesson').click();
  await dialog.getByRole('list', { name: 'Lessons given to Bo' }).waitFor();
  expect(await dialog.evaluate((each) => each.scrollWidth - each.clientWidth)).toBeLessThanOrEqual(0);
  expect(await faults(page)).toEqual([]);
  expectClean();
}, 60_000);
