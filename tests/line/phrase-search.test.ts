import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { composeLine } from '../../src/core/line';
import { type Column, cheapestWay } from '../../src/core/line/phrase/chain';
import { request } from './notation';

/** Every choice of one node a column. */
function* choices(sizes: readonly number[]): Generator<readonly number[]> {
  if (sizes.length === 0) yield [];
  else {
    for (const rest of choices(sizes.slice(1))) {
      for (let index = 0; index < (sizes[0] ?? 0); index += 1) yield [index, ...rest];
    }
  }
}

const price = fc.integer({ min: 0, max: 40 });

/** Columns of up to four nodes with up to three beginnings, and the prices between them and round the ring. */
const puzzles = fc
  .array(fc.array(fc.tuple(price, fc.nat(2)), { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 5 })
  .chain((columns) =>
    fc.record({
      columns: fc.constant(
        columns.map(
          (nodes): Column => ({
            costs: Float64Array.from(nodes, ([cost]) => cost),
            entryOf: Int32Array.from(nodes, ([, entry]) => entry),
            entries: 3,
          }),
        ),
      ),
      prices: fc.tuple(
        ...columns.map((nodes) =>
          fc.array(price, { minLength: nodes.length * 3, maxLength: nodes.length * 3 }),
        ),
      ),
      closed: fc.boolean(),
    }),
  );

describe('the search through the phrases', () => {
  test('finds what trying everything finds, closed to a ring or not', () => {
    fc.assert(
      fc.property(puzzles, ({ columns, prices, closed }) => {
        const tables = prices.map((list) => Float64Array.from(list));
        const ring = closed ? (tables.at(-1) ?? null) : null;
        const costOf = (choice: readonly number[]): number =>
          choice.reduce((sum, node, index) => {
            const next = index + 1 < columns.length ? index + 1 : closed ? 0 : -1;
            const to = columns[next]?.entryOf[choice[next] ?? 0];
            const join = to === undefined ? 0 : (tables[index]?.[node * 3 + to] ?? 0);
            return sum + (columns[index]?.costs[node] ?? 0) + join;
          }, 0);
        const best = Math.min(...[...choices(columns.map(({ costs }) => costs.length))].map(costOf));
        const way = cheapestWay(columns, tables.slice(0, -1), ring);
        expect(way?.cost).toBe(best);
        expect(costOf(way?.nodes ?? [])).toBe(best);
      }),
      { numRuns: 200, seed: 20260101 },
    );
  });

  test('gives the same line for the same request', () => {
    const asked = request('|: Am | F |1. G :|2. C | Am |', { feel: 'early-ska', seed: 3 });
    expect(composeLine(asked)).toEqual(composeLine(asked));
  });
});
