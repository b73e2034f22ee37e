import { describe, expect, test } from 'vitest';
import { type ComposeRequest, checkLine } from '../../src/core/line';
import { hearLine } from '../../src/core/line/hearing';
import { modelOf } from '../../src/core/line/read-request';
import { entryOf, exitOf } from '../../src/core/line/rules/ends';
import type { RuleNumber } from '../../src/core/line/rules/numbers';
import { RULE_ROWS, RULES } from '../../src/core/line/rules/table';
import type { Rule } from '../../src/core/line/rules/types';
import { line, request, type Wish } from './notation';

const rulesOf = (chart: string, notes: string, wish: Wish = {}) => [
  ...new Set(
    checkLine(request(chart, { feel: 'early-ska', ...wish }), line(notes)).map((breach) => breach.rule),
  ),
];

interface Case {
  readonly chart: string;
  readonly broken: string;
  readonly mended: string;
  readonly wish?: Wish;
}

/**
 * For each rule lines that break it, alone or among others, and the same lines mended: one at least for each kind
 * of test that the rule has. The compiler asks for those of a new rule.
 */
const CASES: Readonly<Record<RuleNumber, readonly Case[]>> = {
  1: [
    {
      chart: '| C | F |',
      broken: 'C2 . E2 . A2 . E2 . | F2 . C2 . A1 . G1 .',
      mended: 'C2 . E2 . G2 . E2 . | F2 . C2 . A1 . C2 .',
      wish: { key: 'C' },
    },
    {
      chart: '| C | F |',
      broken: 'C2 . E2 . G2 . A2 . | F1 . A1 . C2 . A1 .',
      mended: 'C2 . E2 . G2 . E2 . | F1 . A1 . C2 . A1 .',
      wish: { key: 'C' },
    },
  ],
  2: [
    {
      chart: '| C | F |',
      broken: 'C2 . E2 . F2 . E2 . | F2 . C2 . A1 . C2 .',
      mended: 'C2 . E2 . G2 . E2 . | F2 . C2 . A1 . C2 .',
    },
  ],
  3: [
    {
      chart: '| Am | E7 |',
      broken: 'A1 . C2 . E2 . A1 . | E1 . G1 . E1 . G♯1 .',
      mended: 'A1 . C2 . E2 . C2 . | E1 . B1 . E1 . G♯1 .',
      wish: { key: 'Am' },
    },
    {
      chart: '| Am | E7 |',
      broken: 'A1 . C2 . E2 . C2 . | E1 . F1 . G♯1 . G♯1 .',
      mended: 'A1 . C2 . E2 . C2 . | E1 . B1 . G♯1 . G♯1 .',
      wish: { key: 'Am' },
    },
    {
      chart: '| Am | E7 |',
      broken: 'A1 . C2 . E2 . F1 . | G♯1 . B1 . E1 . G♯1 .',
      mended: 'A1 . C2 . E2 . E1 . | G♯1 . B1 . E1 . G♯1 .',
      wish: { key: 'Am' },
    },
  ],
  4: [
    {
      chart: '| G7 | C |',
      broken: 'G1 . B1 . D2 . F2 . | G2 . E2 . C2 . D2 .',
      mended: 'G1 . B1 . D2 . F2 . | E2 . C2 . G2 . E2 .',
      wish: { key: 'C' },
    },
    {
      chart: '| G7 | C |',
      broken: 'G1 . B1 . D2 . F2 . | G2 . E2 . C2 . D2 .',
      mended: 'G1 . F2 . D2 . F2 . | C2 . E2 . G2 . E2 .',
      wish: { key: 'C' },
    },
    {
      chart: '| G7 C | C |',
      broken: 'G1 . F2 . G2 . E2 . | C2 . E2 . G2 . E2 .',
      mended: 'G1 . F2 . E2 . C2 . | C2 . E2 . G2 . E2 .',
      wish: { key: 'C' },
    },
    {
      chart: '| G7 | C |',
      broken: 'G1 . D2 . G1 . B1 . | E2 . C2 . G2 . E2 .',
      mended: 'G1 . D2 . G1 . B1 . | C2 . E2 . G2 . E2 .',
      wish: { key: 'C' },
    },
  ],
  5: [
    {
      chart: '| F | B♭ |',
      broken: 'F1 . A1 . C2 . E2 . | B♭1 . D2 . F2 . D2 .',
      mended: 'F1 . A1 . C2 . A1 . | B♭1 . D2 . F2 . D2 .',
    },
    {
      chart: '| F B♭ | F |',
      broken: 'F1 . E2 . B♭1 . D2 . | F1 . A1 . C2 . A1 .',
      mended: 'F1 . A1 . B♭1 . D2 . | F1 . A1 . C2 . A1 .',
    },
  ],
  6: [
    {
      chart: '| C | G |',
      broken: 'C2 . E2 . C2 . G1 . | G1 . B1 . D2 . B1 .',
      mended: 'C2 . E2 . C2 . C2 . | G1 . B1 . D2 . B1 .',
      wish: { key: 'C' },
    },
  ],
  7: [
    {
      chart: '| C | F |',
      broken: 'C2 . G2 . C2 D2 E2 . | F1 . A1 . C2 . A1 .',
      mended: 'C2 . G2 . C2 D2 E2 . | F2 . C2 . A1 . C2 .',
    },
    {
      chart: '| C | C |',
      broken: 'C2 D2 E2 F2 C2 . E2 . | C2 . E2 . G2 . E2 .',
      mended: 'C2 D2 E2 F2 E2 . C2 . | C2 . E2 . G2 . E2 .',
      wish: { key: 'C' },
    },
  ],
  8: [
    {
      chart: '| F | G7 |',
      broken: 'F2 C3 F2 C3 F2 C3 F2 C3 | G1 G2 G1 G2 G1 G2 G1 B1',
      mended: 'F2 C3 F2 C3 F2 C3 F2 F2 | G1 G2 G1 G2 G1 G2 G1 B1',
      wish: { key: 'C', feel: 'disco' },
    },
    {
      chart: '| F | F |',
      broken: 'F1 . C2 . F2 . A2 . | F2 . C2 . A1 . C2 .',
      mended: 'F1 . C2 . F2 . C2 . | A1 . C2 . F2 . C2 .',
    },
    {
      chart: '| F | F |',
      broken: 'F2 . C2 . F1 . A1 . | C2 . F2 . A2 . F2 .',
      mended: 'F2 . C2 . F1 . A1 . | C2 . A1 . C2 . F2 .',
    },
  ],
  9: [
    {
      chart: '| C | F |',
      broken: '- - C2 . E2 . C2 . | F1 . A1 . C2 . A1 .',
      mended: 'C2 . E2 . G2 . E2 . | - - F1 . A1 . G1 .',
      wish: { key: 'F', techniques: ['chord tones', 'scale steps', 'beat one silent'] },
    },
    {
      chart: '| C | F | C | F |',
      broken: 'C2 . E2 . C2 . E2 . | - - F1 . A1 . F1 . | - - C2 . E2 . C2 . | F1 . A1 . C2 . A1 .',
      mended: 'C2 . E2 . C2 . E2 . | - - F1 . A1 . F1 . | C2 . E2 . C2 . E2 . | F1 . A1 . C2 . A1 .',
      wish: { techniques: ['chord tones', 'beat one silent'] },
    },
    {
      chart: '| C | F |',
      broken: 'C2 . E2 . G2 . E2 . | - - F1 . A1 . G1 .',
      mended: 'C2 . E2 . G2 . E2 . | F1 . F1 . A1 . G1 .',
      wish: { key: 'F', techniques: ['chord tones'] },
    },
  ],
  10: [
    {
      chart: '| C | C |',
      broken: 'C2 . E2 . G2 . E2 . | C2 . E2 . G2 . A2 .',
      mended: 'C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 .',
    },
  ],
  11: [
    {
      chart: '| C | F | C | F |',
      broken: 'G1 . C2 . E2 . C2 . | C2 . F2 . A2 . F2 . | G1 . C2 . E2 . C2 . | F1 . A1 . C2 . A1 .',
      mended: 'C2 . G1 . C2 . E2 . | F2 . C2 . F2 . A2 . | C2 . G1 . C2 . E2 . | F2 . C2 . A1 . C2 .',
    },
  ],
  12: [
    {
      chart: '| C | C |',
      broken: 'C2 C2 C2 C2 C2 . E2 . | C2 . E2 . G2 . E2 .',
      mended: 'C2 C2 C2 . G2 . E2 . | C2 . E2 . G2 . E2 .',
    },
    {
      chart: '| C | C |',
      broken: 'C2 C2 E2 E2 G2 . E2 . | C2 . . . G2 . . .',
      mended: 'C2 C2 E2 E2 G2 . E2 . | C2 . E2 . G2 . E2 .',
    },
  ],
  13: [
    {
      chart: '| C | C | C |',
      broken: 'C2 . E2 . G2 . E2 . | C2 . . E2 G2 . E2 . | C2 . . . G2 . E2 .',
      mended: 'C2 . E2 . G2 . E2 . | C2 . . E2 G2 . E2 . | C2 . E2 . G2 . D2 E2',
    },
    {
      chart: '| C | C | C | C | C | C | C | C |',
      broken:
        'C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 .',
      mended:
        'C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 . | C2 . E2 . G2 . D2 .',
    },
  ],
  14: [
    {
      chart: '| C | C |',
      broken: 'C2 . - - - - E2 . | C2 . - - - - E2 .',
      mended: 'C2 . - - C2 . E2 . | C2 . - - G2 . E2 .',
      wish: { feel: 'one-drop' },
    },
    {
      chart: '| C | C |',
      broken: 'C2 . - - C2 . E2 . | - - C2 . - - E2 .',
      mended: 'C2 . - - C2 . E2 . | - - C2 . E2 . - -',
      wish: { feel: 'one-drop' },
    },
  ],
  15: [
    {
      chart: '| C F | C |',
      broken: 'C2 . E2 . . . A1 . | C2 . E2 . G2 . E2 .',
      mended: 'C2 . E2 . F2 . A1 . | C2 . E2 . G2 . E2 .',
    },
    {
      chart: '| C | F |',
      broken: 'C2 . E2 . G2 . . E2~ | E2 . . F2 A1 . C2 .',
      mended: 'C2 . E2 . G2 . . C2~ | C2 . . F2 A1 . C2 .',
    },
  ],
  16: [
    {
      chart: '| Dm6 | Dm |',
      broken: 'D2 . F2 . C2 D2 E2 F2 | D2 . F2 . A2 . F2 .',
      mended: 'D2 . F2 . B1 D2 E2 F2 | D2 . F2 . A2 . F2 .',
    },
    {
      chart: '| Bdim | C |',
      broken: 'B1 . D2 . E2 . D2 . | C2 . E2 . G2 . E2 .',
      mended: 'B1 . D2 . F2 . D2 . | C2 . E2 . G2 . E2 .',
    },
    {
      chart: '| C | G |',
      broken: 'C2 . E2 . G2 F♯2 - - | G2 . D2 . B1 . D2 .',
      mended: 'C2 . E2 . G2 . . F♯2 | G2 . D2 . B1 . D2 .',
    },
    {
      chart: '| C | Dm |',
      broken: 'C2 . E2 . G2 . F♯2 . | A2 . F2 . D2 . B1 .',
      mended: 'C2 . E2 . G2 . F♯2 . | F2 . A2 . F2 . E2 .',
    },
    {
      chart: '| Dm | G7 |',
      broken: 'D2 . F2 . A2 . F2 . | G1 . B1 . D2 . B1 C2',
      mended: 'D2 . F2 . A2 . F2 . | G1 . B1 . D2 . B1 C♯2',
    },
  ],
};

type Kind = 'alone' | 'meeting' | 'tied' | 'whole';

/** The kinds of test by which a line breaks a rule. */
function brokenBy(rule: Rule, { chart, wish }: Case, notes: string): ReadonlySet<Kind> {
  const model = modelOf(request(chart, { feel: 'early-ska', ...wish }));
  const heard = hearLine(model, line(notes));
  const found = new Set<Kind>();
  for (const bar of model.bars) {
    const tones = heard[bar.index] ?? [];
    if (rule.alone?.({ model, bar, tones })) found.add('alone');
    for (const index of bar.after) {
      const to = model.bars[index];
      const [exit, entry] = [exitOf(tones), entryOf(heard[index] ?? [])];
      if (!to || !exit || !entry) continue;
      const kind = exit.last.tiedOn ? 'tied' : 'meeting';
      if (rule[kind]?.({ model, from: bar, exit, to, entry })) found.add(kind);
    }
  }
  if (rule.whole && rule.whole.places({ model, heard }).length > 0) found.add('whole');
  return found;
}

describe.each(RULE_ROWS.map((rule) => ({ rule, number: rule.number })))(
  'rule $number',
  ({ rule, number }) => {
    test('has its row, its source and its words', () => {
      expect(RULES[number]).toBe(rule);
      expect(rule.rule).toMatch(/^[A-Z].*\.$/u);
      expect(rule.source).not.toBe('');
      for (const words of [
        rule.heard,
        rule.mend,
        rule.caution.own ?? 'none',
        rule.caution.entering ?? 'none',
      ])
        expect(words).toMatch(/^[a-z][^.;]*$/u);
    });

    test.each(CASES[number])('$broken', ({ chart, broken, mended, wish }) => {
      expect(rulesOf(chart, broken, wish)).toContain(number);
      expect(rulesOf(chart, mended, wish)).not.toContain(number);
    });

    test('each of its tests finds a line that breaks it', () => {
      const kinds = (['alone', 'meeting', 'tied', 'whole'] as const).filter((kind) => rule[kind] !== null);
      const found = new Set(CASES[number].flatMap((each) => [...brokenBy(rule, each, each.broken)]));
      expect(kinds.filter((kind) => !found.has(kind))).toEqual([]);
      expect(kinds.length).toBeGreaterThan(0);
    });
  },
);

describe('the rules', () => {
  const vamp = (bars: number) => Array.from({ length: bars }, () => '| C ').join('');
  const again = (bars: number) => Array.from({ length: bars }, () => 'C2 . E2 . G2 . E2 .').join(' | ');

  test('a figure may go on for eight bars and no longer', () => {
    expect(rulesOf(`${vamp(7)}|`, again(7))).not.toContain(13);
    expect(rulesOf(`${vamp(9)}|`, again(9))).toContain(13);
  });

  test('a statement of two bars that comes back is a shared rhythm', () => {
    const statement = 'C2 . E2 . G2 . E2 . | C2 . . E2 G2 . E2 .';
    const others = 'C2 . . . G2 . E2 . | C2 C2 E2 . G2 . E2 . | C2 . E2 E2 G2 . E2 . | C2 . E2 . G2 G2 E2 .';
    expect(rulesOf(`${vamp(8)}|`, `${statement} | ${statement} | ${others}`)).not.toContain(13);
    expect(rulesOf(`${vamp(6)}|`, `${statement} | ${others}`)).toContain(13);
  });

  test('a new chord may begin empty where the feel leaves beat one, and throughout a line that does so by habit', () => {
    const dry = { key: 'C', techniques: ['chord tones'] } as const;
    const answered = 'C2 . E2 . G2 . E2 . | - - F1 . A1 . C2 .';
    expect(rulesOf('| C | F |', answered, { ...dry, feel: 'rocksteady' })).not.toContain(9);
    expect(rulesOf('| C | F |', answered, { ...dry, feel: 'soul-backbeat' })).toContain(9);
    const habit = '- - C2 . E2 . G2 . | - - F1 . A1 . C2 .';
    expect(rulesOf('| C | F |', habit, { ...dry, feel: 'one-drop' })).not.toContain(9);
  });

  test('a silent beat one that the teacher wants in a bar is no fault there', () => {
    const asked = request('| C | F |', { feel: 'early-ska', techniques: ['chord tones'], key: 'C' });
    const aims = [{ where: { kind: 'bar', bar: 0 }, wanted: ['beat one silent'] }] as const;
    const notes = line('- - C2 . E2 . G2 . | F1 . A1 . C2 . E2 .');
    const rules = (wish: ComposeRequest) => checkLine(wish, notes).map(({ rule }) => rule);
    expect(rules(asked)).toContain(9);
    expect(rules({ ...asked, aims })).not.toContain(9);
  });

  test('an unwritten line breaks nothing', () => {
    expect(checkLine(request('| C | F |'), [[], []])).toEqual([]);
  });
});

test('a pickup of one note is not held against the bars around it', () => {
  expect(rulesOf('(1) G7 | C | C |', 'G1 . | C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 .')).not.toContain(12);
});

test('pairs of bars that share a rhythm are counted from the first whole bar', () => {
  const chart = `(1) G7 ${Array.from({ length: 8 }, () => '| C ').join('')}|`;
  const statement = 'C2 . E2 . G2 . E2 . | C2 . . E2 G2 . E2 .';
  const others = 'C2 . . . G2 . E2 . | C2 C2 E2 . G2 . E2 . | C2 . E2 E2 G2 . E2 . | C2 . E2 . G2 G2 E2 .';
  expect(rulesOf(chart, `G1 . | ${statement} | ${statement} | ${others}`)).not.toContain(13);
});

test('a pickup is no whole bar where its section comes again either', () => {
  const chart = 'Verse:\n| (1) G7 | C | C |\nBridge:\n| F |\nVerse';
  const quarters = 'C2 . E2 . G2 . E2 .';
  const line = ['G1 .', quarters, quarters, 'F1 . A1 . C2 . A1 .', 'G1 .', quarters, quarters].join(' | ');
  expect(rulesOf(chart, line)).not.toContain(12);
});

test('a bar that has no chord for half of its time or more is not held against its neighbours', () => {
  const full = 'C2 C2 E2 . G2 G2 E2 .';
  expect(rulesOf('| C | C N.C. | C |', `${full} | C2 . E2 . . . . . | ${full}`)).not.toContain(12);
  expect(rulesOf('| C | N.C. | C |', `${full} | C2 . . . . . . . | ${full}`)).not.toContain(12);
  expect(rulesOf('| C | C F | C |', `${full} | C2 . E2 . . . . . | ${full}`)).toContain(12);
});

test('a pickup is called by its name, not bar 0', () => {
  const [breach] = checkLine(
    request('(2) C | F |', { key: 'C', feel: 'early-ska' }),
    line('C2 . F2 . | F2 . C2 . A1 . C2 .'),
  );
  expect(breach?.message).toMatch(/^The pickup: /);
});
