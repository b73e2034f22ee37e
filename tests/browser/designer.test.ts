import { readFile } from 'node:fs/promises';
import axe from 'axe-core';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { readPdf } from '../handout/pages';
import { openApp } from '../support/browser';

/** Opens the designer and waits for its first drawing. */
async function openDesigner(page: Page) {
  await page.getByRole('button', { name: 'Handout', exact: true }).click();
  const preview = page.getByRole('region', { name: 'Preview of the handout' });
  await preview.getByRole('img').first().waitFor();
  return preview;
}

test('a teacher chooses parts and order, sees the page follow, and downloads it', async () => {
  const { page, expectClean } = await openApp();
  const preview = await openDesigner(page);
  const words = () => preview.getByRole('img').first().textContent();
  const parts = page.getByRole('list', { name: 'Parts of the handout' });

  await expect.poll(words).not.toContain('Shapes to learn');
  await parts.getByRole('checkbox', { name: 'Shapes to learn' }).check();
  await expect.poll(words).toContain('Shapes to learn');

  // The cautions pass the notes of the teacher, by the keys alone; the focus stays with what moves.
  const earlier = parts.getByRole('button', { name: 'Earlier: Hands and ears' });
  await earlier.focus();
  await page.keyboard.press('Enter');
  const places = async () => {
    const names = await parts.locator('label').allTextContents();
    return { cautions: names.indexOf('Hands and ears'), notes: names.indexOf('Notes') };
  };
  await expect.poll(async () => (await places()).cautions < (await places()).notes).toBe(true);
  await expect
    .poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label')))
    .toBe('Earlier: Hands and ears');

  await page.getByRole('combobox', { name: 'Paper' }).selectOption('Letter');
  await page.getByRole('textbox', { name: 'Class or student' }).fill('For Mira');
  await expect.poll(words).toContain('For Mira');
  await expect.poll(() => preview.getByRole('img').first().getAttribute('viewBox')).toBe('0 0 612 792');

  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Download PDF' }).click();
  const file = await (await coming).path();
  const { pages } = await readPdf(new Uint8Array(await readFile(file)));
  const printed = pages.flatMap(({ texts }) => texts.map(({ text }) => text)).join(' ');
  expect(pages[0]?.width).toBeCloseTo(612, 1);
  expect(printed).toContain('Shapes to learn');
  expect(printed).toContain('For Mira');
  expectClean();
});

test('on a phone the page begins below whatever is said of its size', async () => {
  const { page, expectClean } = await openApp({ width: 390, height: 844 });
  const preview = await openDesigner(page);
  const size = preview.getByRole('status', { name: 'Size of the handout' });
  await size.getByText('One page, A4').waitFor();
  // As much as is said where parts are left out to save a page.
  await size.evaluate((status) => {
    for (let more = 0; more < 3; more += 1) status.append(status.children[0]?.cloneNode(true) ?? '');
  });
  const endOf = async (each: Locator) => {
    const box = await each.boundingBox();
    return (box?.y ?? 0) + (box?.height ?? 0);
  };
  const said = await endOf(size.getByText('One page, A4').last());
  expect((await preview.getByRole('img').first().boundingBox())?.y).toBeGreaterThanOrEqual(said);
  expectClean();
});

test('a preset is one step that can be taken back, and tab alone leaves the staff out', async () => {
  const { page, expectClean } = await openApp({ width: 1024 });
  const preview = await openDesigner(page);
  const staves = () => preview.locator('.staff-line').count();
  const preset = page.getByRole('button', { name: 'Test', exact: true });

  await preset.click();
  await expect.poll(() => preset.getAttribute('aria-pressed')).toBe('true');
  await expect.poll(() => preview.locator('.degree').count()).toBe(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => preset.getAttribute('aria-pressed')).toBe('false');
  await expect.poll(() => preview.locator('.degree').count()).toBeGreaterThan(0);

  expect(await staves()).toBeGreaterThan(0);
  await page.getByRole('combobox', { name: 'The line on' }).selectOption('tab');
  await expect.poll(staves).toBe(0);

  await page.getByRole('button', { name: 'Back to the line' }).click();
  await page.getByRole('figure', { name: 'Score' }).waitFor();
  expectClean();
});

test('the practice steps take the teacher’s words, and a piece goes without a part', async () => {
  const { page, expectClean } = await openApp();
  const preview = await openDesigner(page);
  const words = async () => (await preview.getByRole('img').allTextContents()).join(' ');
  const parts = page.getByRole('list', { name: 'Parts of the handout' });
  await parts.getByRole('checkbox', { name: 'Practice steps' }).check();
  await parts.getByRole('checkbox', { name: 'Chord chart' }).check();
  await expect.poll(words).toContain('whisper the rests');

  await page.getByRole('textbox', { name: 'Step 1' }).fill('Sing the roots first.');
  await page.getByRole('button', { name: 'Remove step 2' }).click();
  await page.getByRole('button', { name: 'Add a step' }).click();
  await page.getByRole('textbox', { name: 'Step 4' }).fill('Then play it to someone.');
  await expect.poll(words).toContain('Sing the roots first.');
  await expect.poll(words).toContain('Then play it to someone.');
  expect(await words()).not.toContain('Loop one or two bars');
  await page.getByRole('button', { name: 'The usual steps' }).click();
  await expect.poll(words).toContain('Loop one or two bars');

  await expect.poll(words).toContain('Chords');
  await page.locator('.pieces summary').first().click();
  await page.getByRole('checkbox', { name: /^Chord chart of / }).uncheck();
  await expect.poll(words).not.toContain('Chords');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(words).toContain('Chords');
  expectClean();
});

const TOO_WIDE =
  '<svg xmlns="http://www.w3.org/2000/svg" width="9000" height="10"><rect width="9000" height="10"/></svg>';
const SCRIPTED =
  '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><script>document.title = 1</script></svg>';
const PLAIN =
  '<svg xmlns="http://www.w3.org/2000/svg" width="90" height="90"><rect width="90" height="90"/></svg>';

/** A PNG of one pixel. */
const PIXEL =
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';

test('a logo that is too large, broken or more than a drawing is refused with a sentence', async () => {
  const { page, expectClean } = await openApp();
  const preview = await openDesigner(page);
  const pictures = () => preview.locator('image').count();
  const choose = async (mimeType: string, content: string | Buffer, name = 'Choose a logo') => {
    const coming = page.waitForEvent('filechooser');
    await page.getByRole('button', { name }).click();
    await (await coming).setFiles({ name: 'logo', mimeType, buffer: Buffer.from(content) });
  };
  const refusal = page.locator('.designer__refusal');
  const svg = 'image/svg+xml';

  await choose(svg, SCRIPTED);
  await expect.poll(() => refusal.textContent()).toContain('script, links or embedded pages');
  await choose(svg, TOO_WIDE);
  await expect.poll(() => refusal.textContent()).toContain('8,000 pixels a side');
  await choose('image/png', 'not a picture');
  await expect.poll(() => refusal.textContent()).toContain('could not be read as a picture');
  await choose('image/png', Buffer.alloc(5_000_001));
  await expect.poll(() => refusal.textContent()).toContain('larger than 5 MB');
  expect(await pictures()).toBe(0);

  await choose(svg, PLAIN);
  await expect.poll(pictures).toBe(1);
  expect(await refusal.textContent()).toBe('');
  // Large pictures hold up whichever thread decodes them: that is never the page's.
  await page.evaluate(() => {
    window.createImageBitmap = () =>
      Promise.reject(new Error('A picture is decoded on the thread of the page.'));
  });
  const before = await preview.locator('image').getAttribute('href');
  await choose('image/png', Buffer.from(PIXEL, 'base64'), 'Choose another logo');
  await expect.poll(() => preview.locator('image').getAttribute('href')).not.toBe(before);
  expect(await refusal.textContent()).toBe('');
  await choose('image/png', 'torn', 'Choose another logo');
  await expect.poll(() => refusal.textContent()).toContain('could not be read');
  expect(await pictures()).toBe(1);
  await page.getByRole('button', { name: 'Remove the logo' }).click();
  await expect.poll(pictures).toBe(0);
  expectClean();
});

test.each([1440, 390])(
  'at %i px the designer has no fault that axe finds, and nothing is cut off',
  async (width) => {
    const { page } = await openApp({ width });
    await openDesigner(page);
    await page.evaluate(axe.source);
    const violations = await page.evaluate(async () => {
      const runner: typeof axe = Reflect.get(window, 'axe');
      const { violations } = await runner.run();
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
    });
    expect(violations).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBe(0);
  },
);
