import axe from 'axe-core';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { openApp } from '../support/browser';

const button = (page: Page | Locator, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });

async function openStudents(page: Page): Promise<Locator> {
  await button(page, 'Lessons').click();
  await page.getByRole('menuitem', { name: /^Students/ }).click();
  const dialog = page.getByRole('dialog', { name: 'Students' });
  await dialog.waitFor();
  return dialog;
}

async function faults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const runner: typeof axe = Reflect.get(window, 'axe');
    return (await runner.run(document)).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`);
  });
}

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
