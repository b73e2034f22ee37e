import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { composeLine } from '../../src/core/line';
import { fieldOf, rememberPrices } from '../../src/core/line/compose/field';
import { cheapest } from '../../src/core/line/compose/search';
import { openWorkshop } from '../../src/core/line/options';
import { modelOf } from '../../src/core/line/read-request';
import { meetingCost } from '../../src/core/line/taste';
import { request } from './notation';

const CHARTS = [
  '| C | F |',
  '| C | F | G7 |',
  '|: C | F :| G7 | C |',
  '|: Am | F |1. G :|2. C | Am |',
  '| Dm7 G7 | C |',
  '| C |',
];

/** Every choice of one candidate a bar. */
function* choices(sizes: readonly number[]): Generator<readonly number[]> {
  if (sizes.length === 0) yield [];
  else {
    for (const rest of choices(sizes.slice(1))) {
      for (let index = 0; index < (sizes[0] ?? 0); index += 1) yield [index, ...rest];
    }
  }
}

describe('the search', () => {
  test.each(CHARTS)('finds what trying everything finds: %s', (chart) => {
    fc.assert(
      fc.property(fc.nat(50), fc.constantFrom(1, 2, 3, 4), (pick, level) => {
        const model = modelOf(request(chart, { level: level === 1 ? 1 : 4, feel: 'early-ska' }));
        const shop = openWorkshop(model);
        const fields = model.bars.map((bar) => {
          const rhythms = shop.rhythms(bar);
          const rhythm = rhythms[pick % rhythms.length];
          const options = rhythm ? shop.options(bar, rhythm) : [];
          return fieldOf(
            bar.index,
            options.map((option) => ({ option, cost: option.cost })),
            5,
          );
        });
        const price = rememberPrices((from, one, to, other) =>
          one.exit && other.entry ? meetingCost(model, from, one.exit, to, other.entry) : 0,
        );
        const costOf = (choice: readonly number[]): number => {
          let cost = 0;
          for (const bar of model.bars) {
            const own = fields[bar.index]?.candidates[choice[bar.index] ?? 0];
            cost += own?.cost ?? 0;
            for (const index of bar.after) {
              const next = model.bars[index];
              const other = fields[index]?.candidates[choice[index] ?? 0];
              if (!own?.option.exit || !next || !other?.option.entry) continue;
              cost += meetingCost(model, bar, own.option.exit, next, other.option.entry);
            }
          }
          return cost;
        };
        const found = cheapest(model, fields, price);
        let least = Number.POSITIVE_INFINITY;
        for (const choice of choices(fields.map((field) => field.candidates.length))) {
          least = Math.min(least, costOf(choice));
        }
        expect(found.cost).toBeCloseTo(least, 6);
        expect(costOf(found.choice)).toBeCloseTo(least, 6);
      }),
      { numRuns: 8, seed: 20260103 },
    );
  });

  test('a one-bar chart meets itself at the seam', () => {
    const { bars } = composeLine(request('| D |'));
    expect(bars[0]?.length).toBeGreaterThan(0);
  });
});
