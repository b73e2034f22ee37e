import { describe, expect, test } from 'vitest';
import { openApp } from '../support/browser';

describe('the build-up of a line', () => {
  test('is put on the sheet, shown, changed, played and taken to the practice page', async () => {
    const { page, expectClean } = await openApp();
    await page.getByRole('button', { name: /^Build it up in stages/ }).click();
    const stages = page.getByRole('region', { name: /^Build-up of/ });
    await stages.getByRole('heading', { name: 'Stage 1 of 4: roots in the line’s places' }).waitFor();

    await stages.getByRole('button', { name: /^Next stage/ }).click();
    await stages.getByRole('heading', { name: 'Stage 2 of 4: its rhythm' }).waitFor();
    await stages.getByRole('button', { name: /stage 2, bar 3 / }).click();
    await stages.getByRole('combobox', { name: /^Beat 1 in bar 3/ }).selectOption('silent');
    await stages.getByText('Changed by hand: bar 3.').waitFor();

    await stages.getByRole('combobox', { name: /^How the stages/ }).selectOption('one under the other');
    await stages.getByRole('heading', { name: /^Stage 4 of 4/ }).waitFor();
    expect(await stages.getByRole('figure').count()).toBe(4);
    await stages.getByText('Which stages, and in which order').click();
    await stages.getByRole('checkbox', { name: /^its rhythm/ }).uncheck();
    await stages.getByRole('heading', { name: 'Stage 2 of 3: its rhythm and its chord tones' }).waitFor();

    await stages.getByRole('button', { name: /^Play one stage after the other/ }).click();
    await page.getByText('Stage 1 of 3: roots in the line’s places', { exact: true }).nth(1).waitFor();
    await stages.getByRole('button', { name: /^Stop the stages/ }).click();

    await page.getByRole('button', { name: 'Export' }).click();
    await page.getByRole('menuitem', { name: 'Look at the practice page' }).click();
    await page
      .getByRole('combobox', { name: 'On the sheet' })
      .selectOption({ label: 'Only the build-up of Ferry queue' });
    const practised = page.getByRole('region', { name: 'Build-up of Ferry queue' });
    await practised.getByRole('heading', { name: /^Stage 3 of 3/ }).waitFor();
    expect(await practised.getByRole('figure').count()).toBe(3);
    expect(await page.getByRole('figure', { name: 'Score' }).count()).toBe(0);
    expectClean();
  });
});
