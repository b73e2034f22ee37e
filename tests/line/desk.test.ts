import { expect, test } from 'vitest';
import { composeLine } from '../../src/core/line';
import { request } from './notation';

const CHART = '|: F | C7 | Dm |1. B♭ C7 :|2. F ||';
const asked = request(CHART, { feel: 'rocksteady', level: 3 });
const another = request('| Am | Dm | E7 | Am |', { feel: 'disco' });

const seeds = [5, 1, 9, 2];

test('a line is the same wherever its seed comes among the takes of a request', () => {
  const alone = seeds.map((seed) => {
    composeLine(another);
    return composeLine({ ...asked, seed });
  });
  const inTurn = seeds.toReversed().map((seed) => composeLine({ ...asked, seed }));
  expect(inTurn.toReversed()).toEqual(alone);
});

test('a request that differs in one thing is not answered with what is known of another', () => {
  const [first, ...others] = [
    asked,
    { ...asked, level: 1 as const },
    { ...asked, techniques: new Set(['chord tones'] as const) },
    { ...asked, feel: another.feel },
    { ...asked, kept: [[], null, null, null, null] },
  ].map((one) => {
    const { bars } = composeLine({ ...one, seed: 3 });
    composeLine(another);
    const fresh = composeLine({ ...one, seed: 3 }).bars;
    expect(bars).toEqual(fresh);
    return JSON.stringify(bars);
  });
  expect(others).not.toContain(first);
});
