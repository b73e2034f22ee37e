import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Metre, metreName } from '../../src/core/base';
import { CHART_METRES } from '../../src/core/chart';
import { FEEL_IDS, feelsIn } from '../../src/core/feel';
import { analyseLine, checkLine, composeLine, LEVELS, type Level } from '../../src/core/line';
import { rhythmLevelIn } from '../../src/core/line/level';
import { LINE_PROPERTIES } from './line-properties';
import { request } from './notation';

/** Few and always the same here. */
const RUNS = { numRuns: 2, seed: 20260301 };

const CHARTS = [
  '| C | Am | Dm | G7 |',
  '| C Am | F | Dm G7 | C |',
  '|: Gm | Cm D7 :| Gm | Gm |',
  '| (1) D7 | G | C D | G |',
];

const NEW = CHART_METRES.filter((metre) => ['2/4', '5/4', '7/8', '9/8'].includes(metreName(metre)));

const rows = NEW.flatMap((metre) => feelsIn(metre).map(({ id }) => [id, metreName(metre), metre] as const));

/** At every level the line is within the level's rhythm and breaks no rule. */
test.each(rows)('%s is composed in %s', (feel, _, metre) => {
  for (const [place, level] of ([1, 3, 5] as const).entries()) {
    const chart = CHARTS[place] ?? '| C |';
    const asked = request(chart, { feel, metre, level });
    const { bars } = composeLine(asked);
    expect(checkLine(asked, bars).map(({ message }) => message)).toEqual([]);
    bars.forEach((notes, index) => {
      const own = asked.chart.bars[index]?.metre ?? metre;
      expect(rhythmLevelIn(notes, own, asked.feel.bassRole)).toBeLessThanOrEqual(level);
    });
    expect(analyseLine(asked, bars).every(({ reason }) => reason !== '')).toBe(true);
  }
});

const wishes = fc.record({
  chart: fc.constantFrom(...CHARTS, '| C |(4/4) F |(7/8) G | C F G |(5/4) C F |(2/4) G |(9/8) C | Am F |'),
  metre: fc.constantFrom(...CHART_METRES) as fc.Arbitrary<Metre>,
  feel: fc.constantFrom(...FEEL_IDS),
  level: fc.constantFrom(...LEVELS) as fc.Arbitrary<Level>,
  tempo: fc.constantFrom(80, 120),
  seed: fc.nat(1000),
  aims: fc.constant([]),
});

describe('any feel in any metre', () => {
  test.each(Object.entries(LINE_PROPERTIES))('%s', (_, holds) => {
    fc.assert(fc.property(wishes, holds), RUNS);
  });
});

test('a pickup of a ballad in six is played in eighths, and is one long note for beginners', () => {
  const lengths = (pickup: string, level: Level): readonly number[] => {
    const metre = { count: 6, unit: 8 } as const;
    const asked = request(`| (${pickup}) F7 | Bb | Gm | Cm7 | F7 |`, { feel: 'ballad', metre, level });
    const [notes = []] = composeLine(asked).bars;
    return notes.flatMap(({ start, duration }) => [start / 480, duration / 480]);
  };
  for (const level of LEVELS) {
    for (const pickup of ['1', '1/8', '2/8']) {
      const told = lengths(pickup, level);
      expect(told.length).toBeGreaterThan(0);
      expect(told.filter((each) => !Number.isInteger(each))).toEqual([]);
    }
  }
  expect(lengths('1', 0)).toEqual([0, 3]);
});
