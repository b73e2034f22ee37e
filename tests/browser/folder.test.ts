import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openApp } from '../support/browser';
import { addAll, openStudents } from '../support/people';

const button = (page: Page | Locator, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });
const title = (page: Page) => page.getByRole('textbox', { name: 'Lesson title' });
const PATIENT = { timeout: 20_000 };

/** A folder of the browser's own in place of one of the disk: its handles are the same (File System Standard). */
async function withFolder(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Object.assign(window, {
      showDirectoryPicker: async () =>
        (await navigator.storage.getDirectory()).getDirectoryHandle('lessons', { create: true }),
    });
  });
}

const openShelf = async (page: Page): Promise<Locator> => {
  await button(page, 'Lessons').click();
  await page.getByRole('menuitem', { name: /^The whole shelf/ }).click();
  const shelf = page.getByRole('dialog', { name: 'The shelf' });
  await shelf.waitFor();
  return shelf;
};

const filesIn = (page: Page): Promise<Record<string, string>> =>
  page.evaluate(async () => {
    const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('lessons');
    const found: Record<string, string> = {};
    for await (const [name, handle] of folder.entries())
      if (handle instanceof FileSystemFileHandle)
        found[name] = JSON.parse(await (await handle.getFile()).text()).title;
    return found;
  });

/** What someone does in the folder from outside: every title becomes another. */
const retitleFiles = (page: Page, to: string): Promise<void> =>
  page.evaluate(async (name) => {
    const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('lessons');
    for await (const handle of folder.values()) {
      if (!(handle instanceof FileSystemFileHandle)) continue;
      const lesson = JSON.parse(await (await handle.getFile()).text());
      const writable = await handle.createWritable();
      await writable.write(JSON.stringify({ ...lesson, title: name }));
      await writable.close();
    }
  }, to);

test('lessons live as files in a folder, and what is changed there or here reaches the other side', async () => {
  const { page, expectClean } = await openApp({ prepare: withFolder });
  await title(page).fill('Harbour');
  await page.getByText(/^saved/).waitFor();
  let shelf = await openShelf(page);
  await button(shelf, 'Keep the lessons in a folder').click();
  await shelf.getByText('1 lesson written into the folder.').waitFor();
  expect(await filesIn(page)).toEqual({ 'Harbour.lesson.json': 'Harbour' });
  await retitleFiles(page, 'Quay');
  await button(shelf, 'Look into the folder “lessons”').click();
  await shelf.getByText('1 lesson came from the folder.').waitFor();
  await button(shelf, 'Close the shelf').click();
  await expect.poll(() => title(page).inputValue(), PATIENT).toBe('Quay');

  // The page goes on with the folder after it was opened anew, by itself.
  await page.reload();
  await title(page).fill('Mole');
  await expect.poll(() => filesIn(page), PATIENT).toEqual({ 'Mole.lesson.json': 'Mole' });

  // Both sides changed: both states are kept, and told.
  await retitleFiles(page, 'Theirs');
  await title(page).fill('Mine');
  shelf = await openShelf(page);
  await shelf.getByText(/so both states are kept.*“Mine”/).waitFor(PATIENT);
  await shelf.getByText('Theirs (from the folder)').waitFor(PATIENT);

  // A folder that is taken away is said, and the lessons stay.
  await page.evaluate(async () =>
    (await navigator.storage.getDirectory()).removeEntry('lessons', { recursive: true }),
  );
  await button(shelf, 'Look into the folder “lessons”').click();
  await shelf.getByText(/^The folder is no longer where it was/).waitFor(PATIENT);
  await shelf.getByText('Theirs (from the folder)').waitFor();
  await button(shelf, 'Leave the folder').click();
  await shelf.getByText(/no longer kept in the folder/).waitFor();
  expectClean();
});

test('where a browser keeps no folder, nothing is offered', async () => {
  const { page } = await openApp({
    prepare: async (fresh) => {
      await fresh.addInitScript(() => Reflect.deleteProperty(window, 'showDirectoryPicker'));
    },
  });
  const shelf = await openShelf(page);
  await button(shelf, 'Save the shelf as a file').waitFor();
  expect(await button(shelf, 'Keep the lessons in a folder').count()).toBe(0);
});

const textsIn = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('lessons');
    const texts: string[] = [];
    for await (const [name, handle] of folder.entries())
      if (handle instanceof FileSystemFileHandle) texts.push(name, await (await handle.getFile()).text());
    return texts.join('\n');
  });

test('a student who is deleted is gone from the files of the folder, too, also of a lesson that is not open', async () => {
  const { page, expectClean } = await openApp({ prepare: withFolder });
  const students = await openStudents(page);
  await addAll(students, ['Adalind']);
  await students.getByRole('checkbox', { name: /^Write “Adalind” on the handout/ }).check();
  await button(students, 'New lesson for this student').click();
  await expect.poll(() => title(page).inputValue()).toBe('New lesson');
  await title(page).fill('For next week');
  await page.getByText(/^saved/).waitFor();
  const shelf = await openShelf(page);
  await button(shelf, 'Keep the lessons in a folder').click();
  await expect.poll(() => textsIn(page), PATIENT).toContain('Adalind');
  await button(shelf, 'Close the shelf').click();
  await button(page, 'Lessons').click();
  await page.getByRole('menuitem', { name: /^New lesson/ }).click();
  await expect.poll(() => title(page).inputValue()).toBe('New lesson');
  await openStudents(page);
  await students.getByRole('radio', { name: /^Adalind/ }).check();
  await button(students, 'Delete').click();
  await button(students, 'Delete Adalind').click();
  await students.getByText('The student is deleted, and nothing of them is left on this device.').waitFor();
  await expect.poll(() => textsIn(page), PATIENT).not.toContain('Adalind');
  expect(await textsIn(page)).toContain('For next week');
  expectClean();
}, 120_000);
