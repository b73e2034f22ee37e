import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { lineComposed, openApp } from '../support/browser';

const lit = (page: Page): Locator => page.getByRole('status', { name: 'What is lit up' });

test('before a class, keys and a presenter’s remote light up what to listen for, hide the music and show it again', async () => {
  const { page, expectClean } = await openApp();
  await lineComposed(page);
  await page.getByRole('button', { name: 'Export' }).click();
  await page.getByRole('menuitem', { name: 'Look at the practice page' }).click();
  await page.getByRole('button', { name: 'Large view' }).click();
  const view = page.getByRole('dialog').or(page.locator('.show')).first();
  await view.locator('svg').first().waitFor();
  expect(await lit(page).textContent()).toBe('');

  // A remote sends Page Down: one thing after the other, then nothing, and back.
  const told: string[] = [];
  for (let press = 0; press < 12; press += 1) {
    await page.keyboard.press('PageDown');
    const now = (await lit(page).textContent()) ?? '';
    if (now === '') break;
    told.push(now);
  }
  expect(told.length).toBeGreaterThanOrEqual(2);
  expect(new Set(told).size).toBe(told.length);
  await page.keyboard.press('PageUp');
  expect(await lit(page).textContent()).toBe(told.at(-1));

  await page.keyboard.press('h');
  await page.getByText('Hidden: listen').waitFor();
  expect(await page.getByRole('switch', { name: 'Everything hidden' }).getAttribute('aria-checked')).toBe(
    'true',
  );
  await page.keyboard.press('h');
  await page.getByText('Hidden: listen').waitFor({ state: 'detached' });

  // Letters can be switched off (WCAG 2.2, 2.1.4 Character Key Shortcuts).
  await page.getByRole('switch', { name: 'Keys' }).click();
  await page.keyboard.press('h');
  expect(await page.getByText('Hidden: listen').count()).toBe(0);
  expectClean();
});
