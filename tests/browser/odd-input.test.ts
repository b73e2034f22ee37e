import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { newLesson, printLesson } from '../../src/core/lesson';
import { openApp } from '../support/browser';

const button = (page: Page, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });

/** Lets go of files over the page, as a hand does; says whether the browser would have left the page for them. */
const drop = (page: Page, files: Readonly<Record<string, string>>): Promise<boolean> =>
  page.evaluate((texts) => {
    const dataTransfer = new DataTransfer();
    for (const [name, text] of Object.entries(texts)) dataTransfer.items.add(new File([text], name));
    const event = new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true });
    return document.body.dispatchEvent(event);
  }, files);

test('a file that is dropped on the page is opened, or told why not, and the page is never left for it', async () => {
  const { page, expectClean } = await openApp();
  const title = page.getByRole('textbox', { name: 'Lesson title' });
  await button(page, /^Bar 1, /).waitFor();
  const before = await title.inputValue();
  const told = page.getByRole('alert');

  expect(await drop(page, { 'beach.png': '\u0089PNG' })).toBe(false);
  await told.getByText('Nothing was changed.').waitFor();
  const lesson = printLesson(newLesson('dropped', 'Dropped'));
  expect(await drop(page, { 'a.lesson.json': lesson, 'b.lesson.json': lesson })).toBe(false);
  await told.getByText('One file is opened at a time. Nothing was changed.').waitFor();
  expect(await title.inputValue()).toBe(before);

  // Under a dialog nothing is opened, and the page is not left either.
  await button(page, 'Lessons').click();
  await page.getByRole('menuitem', { name: 'The whole shelf' }).click();
  const shelf = page.getByRole('dialog');
  await shelf.waitFor();
  const under = printLesson(newLesson('under', 'Under a dialog'));
  expect(await drop(page, { 'under.lesson.json': under })).toBe(false);
  await page.keyboard.press('Escape');
  await shelf.waitFor({ state: 'detached' });
  expect(await title.inputValue()).toBe(before);

  expect(await drop(page, { 'a.lesson.json': lesson })).toBe(false);
  await expect.poll(() => title.inputValue()).toBe('Dropped');
  await button(page, 'Lessons').click();
  await page.getByRole('menuitem', { name: 'The whole shelf' }).click();
  await shelf.getByText('Dropped').first().waitFor();
  expect(await shelf.getByText('Under a dialog').count()).toBe(0);
  expectClean();
});

/** What a field says of itself, as the browser shows it beside the field. */
const saidAt = (field: Locator): Promise<string> =>
  field.evaluate((each: HTMLInputElement | HTMLTextAreaElement) => each.validationMessage);

test('what does not fit into a field is not cut in half but told, there and in its number', async () => {
  let fetched: Promise<unknown> = Promise.resolve();
  const { page, expectClean } = await openApp({
    prepare: async (opened) => {
      fetched = opened.waitForEvent('requestfinished', (request) => request.url().includes('full-fields'));
    },
  });
  await fetched;
  const title = page.getByRole('textbox', { name: 'Lesson title' });
  const notes = page.getByRole('textbox', { name: 'Notes for the student' });
  for (const [field, most] of [
    [title, '500'],
    [notes, '20,000'],
  ] as const) {
    const before = await field.inputValue();
    await field.focus();
    await page.keyboard.press('End');
    await page.keyboard.insertText('x'.repeat(20_001));
    expect(await saidAt(field)).toBe(
      `At most ${most} characters have room here, and 20,001 more do not fit, so none of them was put in.`,
    );
    expect(await field.inputValue()).toBe(before);
    // It is said for as long as nothing else is done.
    await page.keyboard.type('!');
    expect(await saidAt(field)).toBe('');
    expect(await field.inputValue()).toHaveLength(before.length + 1);
  }
  await title.fill('x'.repeat(500));
  await title.focus();
  await page.keyboard.type('y');
  expect(await saidAt(title)).toBe('At most 500 characters have room here.');
  expect(await title.inputValue()).toBe('x'.repeat(500));
  expectClean();
});

test('a student without a name is asked for one, and a name turns no sentence round', async () => {
  const { page, expectClean } = await openApp();
  await button(page, 'Lessons').click();
  await page.getByRole('menuitem', { name: 'Students' }).click();
  const name = page.getByRole('textbox', { name: 'Name of a new student' });
  await name.fill('  ');
  await button(page, 'Add the student').click();
  expect(await saidAt(name)).toBe('Write a name first: a student is found by it again.');
  await name.fill('\u202eMia');
  await button(page, 'Add the student').click();
  await page.getByRole('status').getByText('Mia is kept on this device.', { exact: true }).waitFor();
  expectClean();
});

test('a number outside its bounds is moved to the nearest one with a sentence', async () => {
  const { page, expectClean } = await openApp();
  const tempo = page.getByRole('spinbutton', { name: 'Tempo', exact: true });
  await tempo.fill('999');
  await tempo.press('Enter');
  const most = (await tempo.getAttribute('max')) ?? '';
  await page
    .locator('#note-pad')
    .getByText(/^999 lies outside \d+ to \d+\.$/)
    .waitFor();
  expect(await tempo.inputValue()).toBe(most);
  await tempo.fill('120');
  await page.getByText('lies outside').waitFor({ state: 'detached' });
  const first = page.getByRole('spinbutton', { name: 'First bar' });
  await first.fill('0');
  await first.press('Enter');
  await page.getByText('(0 lies outside 1 to 8)').waitFor();
  expect(await first.inputValue()).toBe('1');
  expectClean();
});
