import { describe, expect, test } from 'vitest';
import { finish } from '../../src/core/base';
import { anotherTake, composeLine, isAnotherTake, rankedTakes } from '../../src/core/line';
import { request } from './notation';

const CHART = '| Am | F | C | G | Am | F | E7 | Am |';

describe('takes', () => {
  test.each(['early-ska', 'one-drop', 'walking-swing', 'disco'] as const)(
    '%s: another take changes the rhythm or a quarter of the bars, every time',
    (feel) => {
      let asked = request(CHART, { feel });
      let before = composeLine(asked).bars;
      for (let step = 0; step < 4; step += 1) {
        const take = anotherTake(asked, before);
        expect(isAnotherTake(before, take.bars, [])).toBe(true);
        expect(composeLine({ ...asked, seed: take.seed }).bars).toEqual(take.bars);
        asked = { ...asked, seed: take.seed };
        before = take.bars;
      }
    },
  );

  test('kept bars stay, and when all are kept there is nothing else', () => {
    const asked = request(CHART);
    const { bars } = composeLine(asked);
    const take = anotherTake({ ...asked, kept: bars }, bars);
    expect(take.bars).toEqual(bars);
    expect(take.remarks.at(-1)).toBe('There is no other line for this chart, level and these kept bars.');
  });

  test('are ranked by their cost, the best first, and come back from their seed', () => {
    const asked = request(CHART);
    const takes = finish(rankedTakes(asked, 5));
    const costs = takes.map((take) => take.cost);
    expect([...costs].sort((one, other) => one - other)).toEqual(costs);
    expect(new Set(takes.map((take) => take.seed)).size).toBe(5);
    for (const take of takes) expect(composeLine({ ...asked, seed: take.seed }).bars).toEqual(take.bars);
  });
});
