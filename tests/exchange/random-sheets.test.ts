import { describe, expect, it } from 'vitest';
import { CHART_METRES, playOrder } from '../../src/core/chart';
import { TUNINGS } from '../../src/core/fretboard';
import type { LineSheet } from '../../src/core/lesson';
import { tiesOverBarLines } from '../../src/core/lesson';
import { ALL_KEYS } from '../../src/core/theory';
import { randomSheets } from './random-sheets';

/** As many as the files are held to the schema with. */
const sheets: readonly LineSheet[] = randomSheets(60);

const count = (has: (sheet: LineSheet) => boolean): number => sheets.filter(has).length;

/** What a claim about "random lessons" rests on: a thing that never comes up is not checked. */
describe('the random lines that exports are checked on', () => {
  it('are in every metre a chart can have, 2/2, 6/8 and 12/8 among them', () => {
    const names = CHART_METRES.map((metre) => `${metre.count}/${metre.unit}`);
    expect(names).toEqual(expect.arrayContaining(['2/2', '6/8', '12/8']));
    const met = new Set(
      sheets.flatMap(({ chart }) => chart.bars.map(({ metre }) => `${metre.count}/${metre.unit}`)),
    );
    expect([...met]).toEqual(expect.arrayContaining(names));
  });

  it('are in most keys and on every tuning', () => {
    const keys = new Set(sheets.map(({ key }) => JSON.stringify(key)));
    expect(keys.size).toBeGreaterThan(ALL_KEYS.length / 2);
    const tunings = new Set(sheets.map(({ instrument }) => JSON.stringify(instrument.openStrings)));
    expect(tunings.size).toBe(new Set(TUNINGS.map(({ openStrings }) => JSON.stringify(openStrings))).size);
  });

  it('have repeats, endings, pickups, changes of key and metre, and ties over bar lines', () => {
    expect(count(({ chart }) => playOrder(chart).length > chart.bars.length)).toBeGreaterThan(10);
    expect(count(({ chart }) => chart.bars.some(({ ending }) => ending !== null))).toBeGreaterThan(10);
    expect(
      count(({ chart }) => chart.bars.some(({ key }) => key !== null && key !== undefined)),
    ).toBeGreaterThan(5);
    expect(
      count((sheet) => new Set(sheet.chart.bars.map(({ metre }) => metre.count)).size > 1),
    ).toBeGreaterThan(5);
    expect(count((sheet) => tiesOverBarLines(sheet).some(({ to }) => to !== 'none'))).toBeGreaterThan(10);
  });
});
