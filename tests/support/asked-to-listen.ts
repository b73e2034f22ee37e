/** The practice page of a lesson that is asked to listen. */
import type { Page } from 'playwright-core';
import { type Lesson, printLesson, setHandout, setPlaying } from '../../src/core/lesson';
import { openApp } from './browser';
import { pinnedSample } from './pinned';

/** For what a busy machine may keep waiting. */
export const PATIENT = { timeout: 60_000 };

/** @param bass - whether the page plays the bass, or its click */
export const lessonWith = (bass: boolean): Lesson => {
  const lesson = setHandout(pinnedSample(0, 'heard'), { student: 'Adalind' });
  return setPlaying(lesson, lesson.pieces[0]?.id ?? '', {
    ...{ bass, drums: false, chops: false, organ: false, click: !bass },
    ...{ loop: false, countIn: 1, passage: { first: 1, last: 4 } },
  });
};

export async function openPractice(lesson: Lesson, prepare: (page: Page) => Promise<void>) {
  const opened = await openApp({ path: 'practice.html', prepare });
  const { page } = opened;
  await page
    .locator('input[type="file"]')
    .first()
    .setInputFiles({
      name: 'heard.lesson.json',
      mimeType: 'application/json',
      buffer: Buffer.from(printLesson(lesson)),
    });
  await askToListen(page);
  return opened;
}

export async function askToListen(page: Page): Promise<void> {
  await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
  await page.getByText('Play, and be heard').click();
  await page.getByRole('button', { name: 'Listen to my playing' }).click();
}

export const status = (page: Page, name: string) => page.getByRole('status', { name, exact: true });
