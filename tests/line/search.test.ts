import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type FeelId, phraseBookOf, type Theme } from '../../src/core/feel';
import { composeLine } from '../../src/core/line';
import { type Column, NO_WAY_OUT, type Prices, restOf } from '../../src/core/line/phrase/chain';
import type { Way } from '../../src/core/line/phrase/edges';
import { layoutOf } from '../../src/core/line/phrase/layout';
import { planOf } from '../../src/core/line/phrase/plan';
import { searchOver } from '../../src/core/line/phrase/search';
import type { Segment } from '../../src/core/line/phrase/segments';
import { themesFor } from '../../src/core/line/phrase/themes';
import { cheapestWay, cheapestWithin } from '../../src/core/line/phrase/ways';
import { openWorkshop, type Workshop } from '../../src/core/line/phrase/workshop';
import { modelOf } from '../../src/core/line/read-request';
import { request } from './notation';

/** Every choice of one number below each size. */
function* choices(sizes: readonly number[]): Generator<readonly number[]> {
  if (sizes.length === 0) yield [];
  else {
    for (const rest of choices(sizes.slice(1))) {
      for (let index = 0; index < (sizes[0] ?? 0); index += 1) yield [index, ...rest];
    }
  }
}

const price = fc.integer({ min: 0, max: 40 });
const aside = fc.integer({ min: -12, max: 20 });
const columnSize = (nodes: number) => ({ minLength: nodes, maxLength: nodes });

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
      asides: fc.tuple(...columns.map((nodes) => fc.array(aside, columnSize(nodes.length)))),
      settled: fc.tuple(...columns.map(() => fc.option(fc.nat(2), { freq: 3 }))),
    }),
  );

const CHARTS = [
  '| C |',
  '| C | F |',
  '| C | F | G7 | C |',
  '| Dm7 G7 | C |',
  '|: C | F :| G7 | C |',
  '| C | N.C. | F |',
  '|: Am | F |1. G :|2. C |',
];

const JUMPS = CHARTS.filter((chart) => chart.includes(':|'));

/** From every bar that a repeat or ending follows, the ways to each beginning of the bar where that leads. */
function waysBack({ segments, pools, edges, route }: Workshop, theme: Theme): readonly Way[] {
  const place = { theme, slot: 'S', models: null, tuneBar: null, asks: 0, wide: false, lends: true } as const;
  const poolOf = (segment: Segment) => pools.poolOf(segment, place);
  return route.onward.flatMap(({ next, back }, index) => {
    const [from, to, following] = [segments[index], segments[back[0] ?? -1], segments[index + 1]];
    if (!from || !to) return [];
    const main = (next && following) || null;
    return poolOf(to).entries.map((begins): Way => {
      const goal = edges.goalOf(to, begins, from);
      const extras = goal ? [goal] : [];
      return { from, pool: poolOf(from), to: main, into: main && poolOf(main), extras, asks: 0 };
    });
  });
}

/** By node and beginning, what a way costs. */
const pricesOf = ({ pool, into }: Way, prices: Prices) =>
  pool.nodes.map((_, node) => (into?.entries ?? [null]).map((_, entry) => prices.at(node, entry, 1e9)));

describe('the search', () => {
  test('finds what trying everything finds, closed to a ring or not', () => {
    fc.assert(
      fc.property(puzzles, ({ columns, prices, closed }) => {
        const tables = prices.map(
          (list): Prices => ({ least: new Float64Array(), at: (node, to) => list[node * 3 + to] ?? 0 }),
        );
        const ring = closed ? (tables.at(-1) ?? null) : null;
        const costOf = (choice: readonly number[]): number =>
          choice.reduce((sum, node, index) => {
            const next = index + 1 < columns.length ? index + 1 : closed ? 0 : -1;
            const to = columns[next]?.entryOf[choice[next] ?? 0];
            const join = to === undefined ? 0 : (tables[index]?.at(node, to, 99) ?? 0);
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

  test('finds below a limit what trying everything finds, with beginnings settled and costs beside the nodes', () => {
    fc.assert(
      fc.property(puzzles, ({ columns, prices, asides, settled }) => {
        const tables = prices.map(
          (list): Prices => ({ least: new Float64Array(), at: (node, to) => list[node * 3 + to] ?? 0 }),
        );
        const only = new Map(settled.flatMap((entry, index) => (entry === null ? [] : [[index, entry]])));
        const dear = columns.map((column, index): Column => {
          const least = Float64Array.from(asides[index] ?? []);
          return { ...column, aside: { least, at: (node) => least[node] ?? 0 } };
        });
        const costOf = (choice: readonly number[]): number =>
          choice.reduce((sum, node, index) => {
            const entry = columns[index]?.entryOf[node];
            if (only.has(index) && only.get(index) !== entry) return Number.POSITIVE_INFINITY;
            const to = columns[index + 1]?.entryOf[choice[index + 1] ?? 0];
            const join = to === undefined ? 0 : (tables[index]?.at(node, to, 99) ?? 0);
            return sum + (columns[index]?.costs[node] ?? 0) + (asides[index]?.[node] ?? 0) + join;
          }, 0);
        const best = Math.min(...[...choices(columns.map(({ costs }) => costs.length))].map(costOf));
        const bounds = restOf(dear, tables.slice(0, -1), NO_WAY_OUT);
        const task = { columns: dear, prices: tables.slice(0, -1), out: NO_WAY_OUT, bounds, only };
        const way = cheapestWithin(task, best);
        if (best === Number.POSITIVE_INFINITY) expect(way).toBe(null);
        else {
          expect(way?.cost).toBe(best);
          expect(costOf(way?.nodes ?? [])).toBe(best);
          expect(cheapestWithin(task, best - 1)).toBe(null);
        }
      }),
      { numRuns: 300, seed: 20260105 },
    );
  });

  test.each(CHARTS)('finds the cheapest of all ways to play a plan: %s', (chart) => {
    fc.assert(
      fc.property(fc.nat(50), fc.constantFrom<FeelId>('early-ska', 'one-drop'), (seed, feel) => {
        const asked = request(chart, { level: 4, feel });
        const model = modelOf(asked);
        const book = phraseBookOf(feel);
        const [metre] = book.metres;
        const [theme] = themesFor(metre, model, seed);
        if (!theme) throw new Error('a book has themes');
        const nothing = model.bars.map(() => null);
        const search = searchOver(model, openWorkshop(model, book, metre, nothing, 4), theme, new Set());
        const wishes = {
          manner: book.manner,
          theme,
          figures: search.figures,
          low: 28,
          high: 48,
          level: 4,
          asks: [],
          insists: false,
          restsOnOne: model.request.feel.bassRole.mayRestOnOne,
        };
        const plan = planOf(wishes, layoutOf(model, wishes, seed), seed);
        let least = Number.POSITIVE_INFINITY;
        for (const choice of choices(search.choices(plan)))
          least = Math.min(least, search.costOf(plan, choice));
        const found = search.best(plan);
        if (least >= 1e6) expect(found).toBe(null);
        else expect(found?.cost).toBeCloseTo(least, 6);
      }),
      { numRuns: 6, seed: 20260103 },
    );
  });

  test.each(JUMPS)('prices a bar by where repeats lead, whatever was asked before: %s', (chart) => {
    const feel = fc.constantFrom<FeelId>('early-ska', 'one-drop', 'rocksteady');
    fc.assert(
      fc.property(fc.nat(50), feel, (seed, id) => {
        const model = modelOf(request(chart, { level: 5, feel: id }));
        const book = phraseBookOf(id);
        const [metre] = book.metres;
        const [theme] = themesFor(metre, model, seed);
        if (!theme) throw new Error('a book has themes');
        const nothing = model.bars.map(() => null);
        const opened = () => openWorkshop(model, book, metre, nothing, 8);
        const workshop = opened();
        for (const way of waysBack(workshop, theme)) {
          const alone = opened().edges.between(way);
          expect(pricesOf(way, workshop.edges.between(way))).toEqual(pricesOf(way, alone));
        }
      }),
      { numRuns: 4, seed: 20260107 },
    );
  });

  test('a one-bar chart meets itself at the seam', () => {
    const { bars } = composeLine(request('| D |'));
    expect(bars[0]?.length).toBeGreaterThan(0);
  });
});
