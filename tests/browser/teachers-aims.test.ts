import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { lineComposed, openApp } from '../support/browser';

const scoreOf = (page: Page) => page.getByRole('figure', { name: 'Score', exact: true });

/** What a bar says of its notes, bar by bar. */
const told = (page: Page): Promise<readonly string[]> =>
  scoreOf(page)
    .getByRole('button', { name: /^Bar \d+, / })
    .evaluateAll((bars) => bars.map((bar) => bar.getAttribute('aria-description') ?? ''));

async function compose(page: Page): Promise<readonly string[]> {
  await page.getByRole('button', { name: 'Compose line' }).click();
  await page.waitForTimeout(300);
  await lineComposed(page);
  return told(page);
}

const restsOnOne = (bars: readonly string[]): readonly number[] =>
  bars.flatMap((words, bar) => (/(^|\. )rest on 1,/.test(words) ? [bar + 1] : []));

const degreesIn = (bars: readonly string[]): ReadonlySet<string> =>
  new Set(
    bars.flatMap((words) =>
      [...words.matchAll(/(\S+) on [^,;.]+, [A-G][♭♯]?, /g)].map(([, degree]) => degree ?? ''),
    ),
  );

async function opened() {
  const app = await openApp({ width: 1440, height: 1000 });
  await scoreOf(app.page).locator('svg').first().waitFor();
  return app;
}

test('what is to be shown and what may be used are two marks, beside each other and in the further aims', async () => {
  const { page, expectClean } = await opened();
  const shown = page.getByRole('checkbox', { name: 'Approach note', exact: true });
  const used = page.getByRole('checkbox', { name: 'Approach note may be used' });
  await used.check();
  expect(await shown.isChecked()).toBe(false);
  await page.getByText('Further aims').click();
  const inLine = page.getByRole('combobox', { name: 'Approach note in the line' });
  const chosen = () => inLine.evaluate((field: HTMLSelectElement) => field.selectedOptions[0]?.textContent);
  expect(await chosen()).toBe('may be used');
  await shown.check();
  await used.waitFor({ state: 'detached' });
  expect(await chosen()).toBe('is to be shown');
  await inLine.selectOption({ label: 'in every phrase' });
  expect(await shown.isChecked()).toBe(true);
  await shown.uncheck();
  expect(await chosen()).toBe('is not used');
  // Of beat one its own wish speaks, and the mark says the same.
  await page
    .getByRole('combobox', { name: 'Beat one, how often it is silent in the line' })
    .selectOption('most');
  expect(await page.getByRole('checkbox', { name: 'Beat one silent', exact: true }).isChecked()).toBe(true);
  await page.getByRole('button', { name: 'Undo', exact: true }).click();
  expect(await page.getByRole('checkbox', { name: 'Beat one silent', exact: true }).isChecked()).toBe(false);
  expectClean();
});

test('beat one is silent as often as is wished, and in several bars at once', async () => {
  const { page, expectClean } = await opened();
  await page.getByText('Further aims').click();
  const often = page.getByRole('combobox', { name: 'Beat one, how often it is silent in the line' });
  const silent = async (wish: string) => {
    await often.selectOption(wish);
    return restsOnOne(await compose(page));
  };
  expect(await silent('every second bar')).toEqual([2, 4, 6, 8]);
  expect((await silent('most')).length).toBeGreaterThan(4);
  const some = await silent('some bars');
  expect(some.length).toBeGreaterThan(0);
  expect(some.length).toBeLessThan(8);
  expect(await silent('never')).toEqual([]);
  await page.getByText('Aims for several bars at once').click();
  await page.getByRole('combobox', { name: 'From for several bars' }).selectOption({ label: 'bar 3' });
  await page.getByRole('combobox', { name: 'To for several bars' }).selectOption({ label: 'bar 7' });
  await page.getByRole('combobox', { name: 'Which of them' }).selectOption({ label: 'every second bar' });
  await page
    .getByRole('combobox', { name: 'Beat one silent in every second bar from 3 to 7' })
    .selectOption({ label: 'is to be shown' });
  expect(restsOnOne(await compose(page))).toEqual([3, 5, 7]);
  await page
    .getByRole('list', { name: 'Aims', exact: true })
    .getByText('Bar 5: beat one silent to be shown.')
    .waitFor();
  expectClean();
});

test('degrees are ticked for themselves, at the lowest level and at the highest', async () => {
  const { page, expectClean } = await opened();
  await page.getByText('Further aims').click();
  for (const degree of ['Second', 'Third', 'Fourth', 'Sixth', 'Seventh'])
    await page.getByRole('checkbox', { name: `${degree} in the line` }).uncheck();
  await page.getByText('root and fifth only').first().waitFor();
  for (const level of ['0', '5']) {
    await page.getByRole('combobox', { name: 'Level', exact: true }).selectOption(level);
    const degrees = degreesIn(await compose(page));
    expect(degrees.has('R')).toBe(true);
    expect([...degrees].filter((degree) => !['R', '5', '8'].includes(degree))).toEqual([]);
  }
  expectClean();
});
