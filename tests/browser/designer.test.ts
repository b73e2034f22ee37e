import { readFile } from 'node:fs/promises';
import axe from 'axe-core';
import type { Page } from 'playwright-core';
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
