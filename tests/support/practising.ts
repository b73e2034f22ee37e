/** The lesson that the tests of the practice page practise, and how they get at it. */
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { fillPracticePage } from '../../src/core/exchange/practice/embed';
import { copyPiece, type Lesson, printLesson, sampleLesson, setNotes, setTitle } from '../../src/core/lesson';
import { type OpenPage, openApp } from './browser';

/** A title and notes that would do harm if they became markup, and two lines to practise. */
export const HOSTILE = '</script><script>document.title = "taken"</script><!--';
export const LESSON = (() => {
  const lesson = setNotes(setTitle(sampleLesson(0, 'practice'), `Week 3 ${HOSTILE}`), HOSTILE);
  return copyPiece(lesson, lesson.pieces[0]?.id ?? '');
})();
export const LESSON_FILE = {
  name: 'week-3.lesson.json',
  mimeType: 'application/json',
  buffer: Buffer.from(printLesson(LESSON)),
};

/** For what a busy machine may keep waiting. */
export const PATIENT = { timeout: 30_000 };

export const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
export const playback = (page: Page) => page.getByRole('status', { name: 'Playback' });
export const score = (page: Page) => page.getByRole('figure', { name: 'Score', exact: true });

/** The practice page without a lesson, as the export fills it. @param address - of the app */
export const practiceTemplate = async (address: string): Promise<string> =>
  (await fetch(new URL('practice-page.html', address))).text();

/** Writes the practice page of a lesson as a file into a folder. @returns its path */
export async function practiceFile(address: string, lesson: Lesson, folder: string): Promise<string> {
  const html = fillPracticePage(await practiceTemplate(address), lesson);
  if (html === null) throw new Error('The lesson found no place in the page.');
  const file = join(folder, 'lesson.practice.html');
  await writeFile(file, html);
  return file;
}

/** Opens the app with the lesson as its lesson. */
export async function openWithLesson(): Promise<OpenPage> {
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

export async function chooseExport(page: Page, name: string): Promise<void> {
  await button(page, 'Export').click();
  await page.getByRole('menuitem', { name, exact: true }).click();
}
