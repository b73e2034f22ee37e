import { createServer } from 'node:http';
import type { Page } from 'playwright-core';
import { describe, expect, inject, onTestFinished, test } from 'vitest';
import { writeLessonLink } from '../../src/core/exchange';
import { sampleLesson, setTitle } from '../../src/core/lesson';
import { openApp, openBench } from '../support/browser';
import { readExampleHeaders } from '../support/headers';

const LESSON = setTitle(sampleLesson(0, 'embedded'), 'Week 3');

/** A host on a free port of this machine: another origin for every one. */
async function startHost(answer: (path: string) => Promise<{ headers: object; body: Buffer | string }>) {
  const server = createServer(async (request, response) => {
    const { headers, body } = await answer(request.url ?? '/');
    response.writeHead(200, { ...headers }).end(body);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const place = server.address();
  if (place === null || typeof place === 'string') throw new Error('The host has no port.');
  onTestFinished(async () => {
    server.closeAllConnections();
    await new Promise((resolve) => server.close(resolve));
  });
  return `http://127.0.0.1:${place.port}/`;
}

/** The app below `/a/folder/` with the headers of the example. */
async function startExampleHost(): Promise<string> {
  const headers = await readExampleHeaders();
  const host = await startHost(async (path) => {
    const found = await fetch(new URL(path.replace(/^\/a\/folder\//, ''), inject('site').app));
    return { headers: headers.of(path), body: Buffer.from(await found.arrayBuffer()) };
  });
  return `${host}a/folder/`;
}

/** A page of another site with the frames in it. */
const startCourse = (...frames: readonly string[]): Promise<string> =>
  startHost(async () => ({
    headers: { 'Content-Type': 'text/html' },
    body: `<!doctype html><title>Course</title>${frames.map((each) => `<iframe src="${each}" width="900" height="700"></iframe>`).join('')}`,
  }));

/** Opens a page of a course in a browser that never saw the app; `openBench` only lends it. */
async function openCourse(address: string): Promise<Page> {
  const { page } = await openBench();
  const context = await page.context().browser()?.newContext();
  if (!context) throw new Error('The browser is gone.');
  onTestFinished(() => context.close());
  const course = await context.newPage();
  await course.goto(address);
  return course;
}

describe('within a page of another site', () => {
  test('the writing page offers to open itself, and touches nothing; the practice page works and keeps nothing', async () => {
    const { app } = inject('site');
    const course = await openCourse(
      await startCourse(
        writeLessonLink(LESSON, app),
        writeLessonLink(LESSON, `${app}practice.html`),
        writeLessonLink(LESSON, `${app}?practice`),
      ),
    );
    const [writing, practice, linked] = [0, 1, 2].map((index) => course.frameLocator('iframe').nth(index));
    const opener = writing?.getByRole('link', { name: 'Open Ground Bass' });
    await opener?.waitFor();
    expect(await opener?.getAttribute('href')).toBe(writeLessonLink(LESSON, app));
    expect(await opener?.getAttribute('target')).toBe('_blank');
    expect(await writing?.getByRole('textbox').count()).toBe(0);
    for (const each of [practice, linked]) {
      await each?.getByRole('heading', { level: 1, name: 'Week 3' }).waitFor();
      await each?.getByText(/^Nothing is kept here/).waitFor();
    }
    for (const frame of course.frames().slice(1))
      expect(
        await frame.evaluate(async () => [(await indexedDB.databases()).length, localStorage.length]),
      ).toEqual([0, 0]);
  });

  test('the headers of the example keep the writing page out of the frame altogether, and let the practice page in', async () => {
    const host = await startExampleHost();
    const course = await openCourse(await startCourse(host, `${host}practice.html`, `${host}?practice`));
    for (const index of [1, 2])
      await course
        .frameLocator('iframe')
        .nth(index)
        .getByRole('heading', { name: 'Practice page' })
        .waitFor();
    // Where a browser refuses a frame it shows a page of its own, without an address of the host.
    expect(
      course
        .frames()
        .slice(1)
        .map((frame) => frame.url().startsWith(host)),
    ).toEqual([false, true, true]);
  });
});

test('with the headers of the example everything loads, and is kept for the time without a network', async () => {
  const host = await startExampleHost();
  const { page, expectClean } = await openApp({ host, serviceWorker: true });
  await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
  await expect
    .poll(() => page.evaluate(() => navigator.serviceWorker.controller?.state), { timeout: 30_000 })
    .toBe('activated');
  expectClean();
});

test('every file of the app has a content type in the example, and only named files may be kept unasked', async () => {
  const headers = await readExampleHeaders();
  const worker = await (await fetch(new URL('sw.js', inject('site').app))).text();
  const files: readonly string[] = JSON.parse(/groundBassBuild = (.*);/.exec(worker)?.[1] ?? '{}').files;
  expect(files.length).toBeGreaterThan(20);
  for (const file of [...files, 'sw.js']) {
    const of = headers.of(`/a/folder/${file}`);
    expect(of['Content-Type'], file).not.toBe('application/octet-stream');
    expect(of['Cache-Control'], file).toMatch(file.startsWith('assets/') ? /immutable/ : /^no-cache$/);
  }
});

test('an earlier link to the practice page leads to its own address, the lesson with it', async () => {
  const { page, address } = await openApp({ path: '?practice' });
  await page.waitForURL(`${address}practice.html`);
  await page.goto(writeLessonLink(LESSON, `${address}?practice`));
  await page.waitForURL(writeLessonLink(LESSON, `${address}practice.html`));
  await page.getByRole('heading', { level: 1, name: 'Week 3' }).waitFor();
});
