import { expect, test } from 'vitest';
import { openApp } from '../support/browser';

test('a line is made easier for another student, a change of it refused, moved by shape, and kept as a version', async () => {
  const { page, expectClean } = await openApp({ width: 1440, height: 1000 });
  await page.getByText(/ for another student$/).click();
  await page.getByRole('button', { name: /^Make .* easier: level \d$/ }).click();
  const changes = page.getByRole('list', { name: /^Changes of/ });
  const ticks = changes.getByRole('checkbox');
  await ticks.first().waitFor({ timeout: 60_000 });
  expect(await changes.textContent()).toMatch(/Bar \d+: .*\. (?:Its rhythm was|.* comes later|It had)/);
  await page
    .getByRole('status', { name: /^The other line of/ })
    .getByText(/notes on strong beats/)
    .waitFor();
  const figures = page.getByRole('figure', {
    name: / (?:as it stands|for the other student), on staff and tab$/,
  });
  await figures.nth(1).locator('svg').first().waitFor();

  const marked = page.locator('.regrade__lines section').nth(1).locator('.regrade__mark');
  const all = await marked.count();
  expect(all).toBe(await ticks.count());
  // The words of the frames stand clear of the music, below it.
  const overMusic = () =>
    page.locator('.regrade__mark b, .study__mark b').evaluateAll(
      (words) =>
        words.filter((word) => {
          // The line of a frame is two pixels.
          const frame = 2.5;
          const { bottom = 0 } = word.closest('.system')?.getBoundingClientRect() ?? {};
          return word.getBoundingClientRect().top < bottom - frame;
        }).length,
    );
  expect(await overMusic()).toBe(0);
  await ticks.first().uncheck();
  await expect.poll(() => marked.count()).toBe(all - 1);

  await page.getByRole('combobox', { name: /^Another key/ }).selectOption('by shape');
  const keys = page.getByRole('combobox', { name: /^Key, the easiest by shape first/ });
  await keys.waitFor({ timeout: 60_000 });
  await keys.selectOption({ label: 'A♭ major' });
  await page.getByText(/A♭ major, to read: four flats .*for the hand: /).waitFor();

  await page.getByText(/^What is in /).click();
  await page.getByRole('button', { name: /^Show on the score: Leaps/ }).click();
  await page.locator('.study__mark b').first().waitFor();
  expect(await overMusic()).toBe(0);

  await page.getByRole('textbox', { name: 'For whom' }).fill('for Wednesday');
  await page.getByRole('button', { name: 'Make it a version' }).click();
  const open = page.getByRole('combobox', { name: 'Version on the page' });
  await open.waitFor({ timeout: 30_000 });
  expect(await open.locator('option:checked').textContent()).toBe('for Wednesday');
  expectClean();
});
