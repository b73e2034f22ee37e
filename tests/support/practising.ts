/** The lesson that the tests of the practice page practise, and how they get at it. */
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { copyPiece, printLesson, sampleLesson, setNotes, setTitle } from '../../src/core/lesson';
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
