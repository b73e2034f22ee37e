import { describe, expect, test } from 'vitest';
import type { FeelId } from '../../src/core/feel';
import { checkLine } from '../../src/core/line';
import { openDesk } from '../../src/core/line/compose/desk';
import { draftOf, withNeighbours } from '../../src/core/line/compose/draft';
import { mended } from '../../src/core/line/compose/mend';
import { request } from './notation';

const TURNS = [
  'C | G7 | C | G7',
  'C | F | G7 | C',
  'C | Am | F | G7',
  'Dm7 | G7 | C | Am',
  'C | C | F | G7',
] as const;

/** Sixteen turns in an order of their own. */
const longChart = (order: number): string =>
  `| ${Array.from({ length: 16 }, (_, place) => TURNS[(place * 7 + order * 3 + place * place) % TURNS.length]).join(' | ')} |`;

/** Roots alone over 64 bars, whose few plans leave a bar at odds with a rule. */
const LEFT_OPEN: readonly (readonly [FeelId, number])[] = [
  ['walking-swing', 0],
  ['walking-swing', 1],
  ['walking-swing', 4],
  ['soul-backbeat', 2],
  ['two-beat', 3],
];

describe('a draft with faults', () => {
  test.each(LEFT_OPEN)(
    '%s over chart %i: only the bars round a fault change, and no rule is broken then',
    (feel, order) => {
      const asked = request(longChart(order), { feel, level: 0, seed: order });
      const desk = openDesk(asked);
      const draft = draftOf(desk, asked.seed);
      expect(checkLine(asked, draft.bars)).not.toEqual([]);
      const { bars, trouble, cost } = mended(desk, asked.seed, draft);
      expect(checkLine(asked, bars)).toEqual([]);
      expect(trouble).toBe(0);
      expect(cost).toBeLessThan(draft.cost);
      const near = withNeighbours(desk.model, withNeighbours(desk.model, draft.faults));
      bars.forEach((notes, bar) => {
        if (!near.has(bar)) expect(notes).toEqual(draft.bars[bar]);
      });
    },
  );

  test('a bar that is kept stays, though a rule breaks on it', () => {
    const plain = request(longChart(0), { feel: 'walking-swing', level: 0, seed: 0 });
    const { bars: before, faults } = draftOf(openDesk(plain), 0);
    const asked = { ...plain, kept: before.map((notes, bar) => (faults.has(bar) ? notes : null)) };
    const desk = openDesk(asked);
    const { bars } = mended(desk, 0, draftOf(desk, 0));
    for (const bar of faults) expect(bars[bar]).toEqual(before[bar]);
  });

  test('what cannot be mended is left as it was', () => {
    const chart = '| C | F | G7 | C | C | F | G7 | C |';
    const asked = {
      ...request(chart, { feel: 'two-beat', level: 0 }),
      aims: [{ where: { kind: 'bar', bar: 2 }, wanted: ['scale steps'], silence: 0.9 }] as const,
    };
    const desk = openDesk(asked);
    const draft = draftOf(desk, asked.seed);
    expect(draft.trouble).toBeGreaterThan(0);
    expect(mended(desk, asked.seed, draft).trouble).toBeLessThanOrEqual(draft.trouble);
  });
});
