import axe from 'axe-core';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { lineComposed, openApp } from '../support/browser';

/** Conformance levels of WCAG 2.2 A and AA as axe-core tags them, and its good practice. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

async function findings(page: Page): Promise<readonly string[]> {
  // A quiet moment first: a colour is measured wrongly while something fades in.
  await page.evaluate(() => Promise.all(document.getAnimations().map((animation) => animation.finished)));
  await page.evaluate(axe.source);
  return page.evaluate(async (tags) => {
    const runner: typeof axe = Reflect.get(window, 'axe');
    const { violations } = await runner.run(document, { runOnly: tags });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).join(' ')}`);
  }, RULES);
}

const button = (page: Page, name: string | RegExp): Locator =>
  page.getByRole('button', { name, exact: true });

async function drawn(page: Page): Promise<void> {
  await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
}

describe.each([
  { width: 1440, height: 900, colorScheme: 'light' },
  { width: 1440, height: 900, colorScheme: 'dark' },
  { width: 1024, height: 768, colorScheme: 'light' },
  { width: 390, height: 844, colorScheme: 'dark' },
] as const)('at $width pixels, $colorScheme', ({ width, height, colorScheme }) => {
  test('axe finds nothing in any state of the page', async () => {
    // So high that nothing lies half under the header or the ledge, which scrolling would bring out.
    const { page } = await openApp({
      width,
      height: 2400,
      context: { colorScheme, reducedMotion: 'reduce' },
    });
    await drawn(page);
    expect(await findings(page), 'at the start').toEqual([]);

    await button(page, /^Bar 2, /).click();
    await page.getByRole('list', { name: 'Ideas for bar 2' }).locator('svg').first().waitFor();
    await page.getByRole('checkbox', { name: 'Keep this bar' }).check();
    expect(await findings(page), 'with ideas').toEqual([]);
    await page.keyboard.press('Escape');

    const opener = button(page, 'Chart and aims');
    if ((await opener.count()) > 0) await opener.click();
    await page.getByRole('textbox', { name: 'Chord chart' }).fill('| F | Qx | C7 | F |');
    await page.getByRole('list', { name: 'Chart problems' }).waitFor();
    expect(await findings(page), 'with a problem in the chart').toEqual([]);
    const back = button(page, 'Back to the sheet');
    if ((await back.count()) > 0) await back.click();

    for (const menu of ['Export', 'Lessons', 'Copy or move Ferry queue']) {
      await button(page, menu).click();
      await page.getByRole('menu').waitFor();
      expect(await findings(page), menu).toEqual([]);
      await page.keyboard.press('Escape');
    }
    const how = button(page, 'Change how');
    if ((await how.count()) > 0) await how.click();
    await button(page, 'Say more').click();
    await page.getByRole('switch', { name: 'Tempo ladder' }).click();
    expect(await findings(page), 'with the whole sentence').toEqual([]);
    await button(page, 'Say less').click();

    await button(page, 'Export').click();
    await page.getByRole('menuitem', { name: 'Look at the practice page' }).click();
    await button(page, 'Back to the lesson').waitFor();
    await drawn(page);
    expect(await findings(page), 'the practice page').toEqual([]);
  });

  test('everything that is pressed is at least 24 pixels wide and high', async () => {
    // WCAG 2.2, 2.5.8 Target Size (Minimum).
    const { page } = await openApp({ width, height });
    await drawn(page);
    await button(page, /^Bar 1, /).click();
    await page.getByRole('list', { name: 'Ideas for bar 1' }).waitFor();
    const small = await page.evaluate(() =>
      [...document.querySelectorAll('button, select, textarea, input:not([type="checkbox"], [type="file"])')]
        .map((element) => ({ element, box: element.getBoundingClientRect() }))
        .filter(({ box }) => box.width > 0 && (box.width < 24 || box.height < 24))
        .map(({ element, box }) => `${element.outerHTML.slice(0, 120)} ${box.width} × ${box.height}`),
    );
    expect(small).toEqual([]);
  });
});

describe('by keyboard alone', () => {
  /** Presses Tab until the wanted control has the focus. */
  async function tabTo(page: Page, wanted: Locator): Promise<void> {
    for (let presses = 0; presses < 120; presses += 1) {
      if (
        (await wanted.count()) > 0 &&
        (await wanted.evaluate((element) => element === document.activeElement))
      )
        return;
      await page.keyboard.press('Tab');
    }
    throw new Error('The Tab key does not lead there.');
  }

  const focusedName = (page: Page): Promise<string> =>
    page.evaluate(
      () => document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.textContent ?? '',
    );

  test('a line is composed, a bar chosen, an idea taken, played and stopped', async () => {
    const { page, expectClean } = await openApp();
    await drawn(page);
    await tabTo(page, page.getByRole('textbox', { name: 'Chord chart' }));
    await page.keyboard.press('Control+a');
    await page.keyboard.type('| C | Am | F | G7 | C | Am | Dm G7 | C |');
    await tabTo(page, button(page, 'Compose line'));
    await page.keyboard.press('Enter');
    await lineComposed(page);
    await button(page, 'Bar 7, Dm G7').waitFor();

    await tabTo(page, button(page, 'Bar 1, C'));
    await page.keyboard.press('ArrowRight');
    expect(await focusedName(page)).toBe('Bar 2, Am');
    await page.keyboard.press('ArrowDown');
    expect(await focusedName(page)).toBe('Bar 6, Am');
    await page.keyboard.press('End');
    expect(await focusedName(page)).toBe('Bar 8, C');
    await page.keyboard.press('Home');
    expect(await focusedName(page)).toBe('Bar 5, C');
    await page.keyboard.press('ArrowUp');
    expect(await focusedName(page)).toBe('Bar 1, C');

    await page.keyboard.press('Enter');
    const ideas = page.getByRole('list', { name: 'Ideas for bar 1' });
    await ideas.waitFor();
    const take = ideas.getByRole('button', { name: /take it$/i }).first();
    await tabTo(page, take);
    const before = await button(page, 'Bar 1, C').getAttribute('aria-description');
    await page.keyboard.press('Enter');
    await expect.poll(() => button(page, 'Bar 1, C').getAttribute('aria-description')).not.toBe(before);
    await page.keyboard.press('Escape');
    expect(await ideas.count()).toBe(0);
    expect(await focusedName(page)).toBe('Bar 1, C');

    await tabTo(page, page.getByRole('switch', { name: 'Drums' }));
    await page.keyboard.press('Space');
    expect(await page.getByRole('switch', { name: 'Drums' }).getAttribute('aria-checked')).toBe('false');
    expect(await focusedName(page)).toBe('Drums');
    await page.keyboard.down('Shift');
    await tabTo(page, button(page, 'Play'));
    await page.keyboard.up('Shift');
    await page.keyboard.press('Enter');
    await button(page, 'Stop').waitFor();
    expect(await focusedName(page)).toContain('Stop');
    await page.keyboard.press('Enter');
    await button(page, 'Play').waitFor();
    expect(await focusedName(page)).toContain('Play');
    expectClean();
  });

  test('a menu opens, moves, closes and gives the focus back', async () => {
    const { page } = await openApp();
    await drawn(page);
    await tabTo(page, button(page, 'Export'));
    await page.keyboard.press('ArrowDown');
    const items = page.getByRole('menuitem');
    expect(await items.first().evaluate((item) => item === document.activeElement)).toBe(true);
    await page.keyboard.press('End');
    expect(await items.last().evaluate((item) => item === document.activeElement)).toBe(true);
    await page.keyboard.press('ArrowDown');
    expect(await items.first().evaluate((item) => item === document.activeElement)).toBe(true);
    await page.keyboard.press('Escape');
    expect(await items.count()).toBe(0);
    expect(await focusedName(page)).toBe('Export');
  });

  test('the page stays where it is when something on the ledge or the header takes the focus', async () => {
    const { page } = await openApp({ context: { reducedMotion: 'reduce' } });
    await drawn(page);
    const place = () => page.evaluate(() => window.scrollY);
    await page.evaluate(() => window.scrollTo(0, 200));
    for (const name of ['Play', 'Export', 'Fretboard', 'Compose line']) {
      await button(page, name).evaluate((element) => element.focus());
      expect(await place(), name).toBe(200);
    }
    await button(page, 'Play').click();
    await button(page, 'Stop').waitFor();
    await button(page, 'Stop').click();
    expect(await place(), 'after playing').toBe(200);
  });

  test('whatever has the focus is seen: neither header nor ledge covers it', async () => {
    const { page } = await openApp({ context: { reducedMotion: 'reduce' } });
    await drawn(page);
    const covered: string[] = [];
    for (let presses = 0; presses < 70; presses += 1) {
      await page.keyboard.press('Tab');
      const hidden = await page.evaluate(() => {
        const focused = document.activeElement;
        if (focused === null || focused === document.body) return null;
        const box = focused.getBoundingClientRect();
        const top = document.elementFromPoint(
          box.left + box.width / 2,
          box.top + Math.min(box.height / 2, 60),
        );
        return top !== null && (focused.contains(top) || top.contains(focused))
          ? null
          : `${focused.outerHTML.slice(0, 100)} under ${top?.outerHTML.slice(0, 100)}`;
      });
      if (hidden !== null) covered.push(hidden);
    }
    expect(covered).toEqual([]);
  });
});

test('where the person’s own colours are forced, the score has their ink and the chosen bar an edge', async () => {
  const { page, expectClean } = await openApp({ context: { forcedColors: 'active', colorScheme: 'dark' } });
  await drawn(page);
  await button(page, /^Bar 2, /).click();
  const colours = await page.evaluate(() => {
    const styleOf = (selector: string) => getComputedStyle(document.querySelector(selector) ?? document.body);
    return {
      ink: styleOf('.score svg').fill,
      text: styleOf('.sheet').color,
      chosen: styleOf('.chosen-bar').borderTopWidth,
    };
  });
  expect(colours.ink).toBe(colours.text);
  expect(colours.chosen).toBe('3px');
  expectClean();
});
