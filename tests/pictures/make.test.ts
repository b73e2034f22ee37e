/** Makes the pictures of the README from the built app: `npm run pictures`. */
import { fileURLToPath } from 'node:url';
import { test } from 'vitest';
import { openApp, openBench } from '../support/browser';

/** Pictures that the manifest names. */
const screen = (name: string): string =>
  fileURLToPath(new URL(`../../public/screens/${name}.png`, import.meta.url));

const picture = (name: string): string => fileURLToPath(new URL(`./${name}.png`, import.meta.url));

test('the writing page, with the ideas for a bar', async () => {
  const { page, expectClean } = await openApp({ width: 1440, height: 960 });
  await page.getByRole('button', { name: /^Bar 2,/ }).click();
  await page.getByRole('list', { name: 'Ideas for bar 2' }).waitFor();
  await page.waitForTimeout(1500);
  await page.screenshot({ path: picture('app') });
  expectClean();
});

test('the screens of the manifest: the writing page, and the practice page on a phone', async () => {
  const wide = await openApp({ width: 1280, height: 800 });
  await wide.page.getByRole('button', { name: /^Bar 2,/ }).waitFor();
  await wide.page.waitForTimeout(1500);
  await wide.page.screenshot({ path: screen('wide') });
  const narrow = await openApp({ width: 390, height: 844, context: { deviceScaleFactor: 2 } });
  await narrow.page.getByRole('button', { name: 'Export' }).click();
  await narrow.page.getByRole('menuitem', { name: 'Look at the practice page' }).click();
  await narrow.page.locator('figure svg').first().waitFor();
  await narrow.page.waitForTimeout(1500);
  await narrow.page.screenshot({ path: screen('narrow') });
});

test('the first page of a handout', async () => {
  const { page } = await openBench({ width: 800, height: 1130 });
  await page.evaluate(async () => {
    const { deriveSheets, sampleLesson } = await window.rooms.lesson();
    const { buildHandout } = await window.rooms.handout();
    const lesson = sampleLesson(0, 'picture');
    const svg = (await buildHandout(lesson, deriveSheets(lesson))).pages[0]?.svg;
    if (svg === undefined) throw new Error('the handout has no page');
    svg.setAttribute('width', '794');
    svg.setAttribute('height', '1123');
    document.body.replaceChildren(svg);
  });
  await page
    .locator('svg')
    .first()
    .screenshot({ path: picture('handout') });
});
