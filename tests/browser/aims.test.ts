import { expect, test } from 'vitest';
import { openApp } from '../support/browser';

test('takes are compared and recalled, and an aim that a bar does not keep is said and mended in a click', async () => {
  const { page, expectClean } = await openApp({ width: 1440, height: 1000 });
  const score = page.getByRole('figure', { name: 'Score', exact: true });
  await score.locator('svg').first().waitFor();
  const line = () =>
    score
      .getByRole('button', { name: /^Bar \d+, / })
      .evaluateAll((bars) => bars.map((bar) => bar.getAttribute('aria-description')).join(' | '));
  const lineChanges = (from: string) => expect.poll(line, { timeout: 30_000 }).not.toBe(from);
  const check = page.getByRole('list', { name: 'Lesson check' });

  const before = await line();
  await page.getByText('Takes to compare').click();
  await page.getByRole('button', { name: 'Compose several to compare' }).click();
  const takes = page.getByRole('list', { name: 'Takes' }).getByRole('listitem');
  await takes.nth(3).waitFor();
  expect(await line(), 'composing to compare leaves the line alone').toBe(before);
  await takes
    .getByRole('button', { name: /^Recall/ })
    .first()
    .click();
  await lineChanges(before);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect.poll(line, { timeout: 30_000 }).toBe(before);

  await check.getByText('Nothing to mend.').waitFor();
  await page.getByRole('button', { name: 'Bar 3, Gm' }).click();
  await page.getByText('Aims for bar 3').click();
  await page
    .getByRole('combobox', { name: 'Long silences in bar 3' })
    .selectOption({ label: 'is to be shown' });
  await check.getByText('Bar 3 does not keep its aim: long silences to be shown.').waitFor();
  await check.getByRole('button', { name: /bar 3/ }).last().click();
  await lineChanges(before);
  await expect.poll(() => check.textContent()).not.toContain('long silences to be shown');
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  await expect.poll(line, { timeout: 30_000 }).toBe(before);
  expectClean();
});

test('what a technique is keeps clear of the box behind it where the note pad is narrow', async () => {
  const { page, expectClean } = await openApp({ width: 1024, height: 768 });
  await page.getByRole('button', { name: 'Chart and aims' }).click();
  const rows = page.locator('.techniques__row', {
    has: page.getByRole('checkbox', { name: /may be used$/ }),
  });
  await rows.first().waitFor();
  const gaps = await rows.evaluateAll((all) =>
    all.map((row) => {
      const words = document.createRange();
      words.selectNodeContents(row.querySelector('label') ?? row);
      const box = row.querySelector('[aria-label$="may be used"]')?.getBoundingClientRect();
      return (box?.left ?? 0) - words.getBoundingClientRect().right;
    }),
  );
  expect(gaps.length).toBeGreaterThan(2);
  expect(Math.min(...gaps)).toBeGreaterThanOrEqual(8);
  expectClean();
});
