import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type BarEdit,
  barSignature,
  editBar,
  parseChart,
  rewritePlace,
  typedBar,
} from '../../src/core/chart';
import { harmony, metre } from './read';

const changed = (text: string, edit: BarEdit) => editBar(text, metre(), edit)?.text ?? null;

describe('editing a chart bar by bar', () => {
  it.each<[string, BarEdit, string]>([
    ['| C | F | G |', { kind: 'write', bar: 1, text: 'Dm7 G7' }, '| C | Dm7 G7 | G |'],
    ['|: C  |1. F :|2. G |', { kind: 'write', bar: 1, text: '%' }, '|: C  |1. % :|2. G |'],
    ['C | % ; twice\nG', { kind: 'write', bar: 0, text: 'Am' }, 'Am | C ; twice\nG'],
    ['| C | F |', { kind: 'insert', bar: 0, text: 'Am' }, '| Am | C | F |'],
    ['| C | % |', { kind: 'insert', bar: 1, text: 'Am' }, '| C | Am | C |'],
    ['| C | / / G / |', { kind: 'insert', bar: 1, text: 'Am' }, '| C | Am | C G |'],
    ['| C | F |', { kind: 'insert', bar: 2, text: 'Am' }, '| C | F | Am |'],
    ['|: C | F :|', { kind: 'insert', bar: 2, text: 'Am' }, '|: C | F | Am :|'],
    ['', { kind: 'insert', bar: 0, text: 'Am' }, '| Am |'],
    ['| C | F |', { kind: 'append', bar: 0, text: 'Am' }, '| C | Am | F |'],
    ['A:\n| C |\nB:\n| % |', { kind: 'append', bar: 0, text: 'Am' }, 'A:\n| C | Am |\nB:\n| C |'],
    ['|: C | F :| G |', { kind: 'append', bar: 1, text: '%' }, '|: C | F | % :| G |'],
    ['| C | F | G |', { kind: 'remove', bar: 1 }, '| C | G |'],
    ['| C | F | G |', { kind: 'remove', bar: 2 }, '| C | F |'],
    ['| C | % |', { kind: 'remove', bar: 0 }, '| C |'],
    ['| C |: F :| G |', { kind: 'remove', bar: 1 }, '| C | G |'],
    ['|: C | F :|', { kind: 'remove', bar: 1 }, '|: C :|'],
    ['|: C :|: F :| x3 G |', { kind: 'remove', bar: 1 }, '|: C :| G |'],
    ['|: C |\n| F :| x3 ; hi\n| G |', { kind: 'remove', bar: 1 }, '|: C :| x3\n; hi\n| G |'],
    ['|: F | ; hi\n| G :|', { kind: 'remove', bar: 0 }, '; hi\n|: G :|'],
    ['|: C |1. F :|2. G | A |', { kind: 'remove', bar: 1 }, '|: C :| G | A |'],
    ['|: C |1. F :|2. G | A |', { kind: 'remove', bar: 2 }, '|: C |1. F :| A |'],
    ['|: C |1. F :|2. G :|3. A | D |', { kind: 'remove', bar: 2 }, '|: C |1. F :|2. A | D |'],
    ['|: C |1.-3. F :|4. A |', { kind: 'remove', bar: 1 }, '|: C :| x4 A |'],
    ['|: C |1. F :|2. G | A |', { kind: 'append', bar: 1, text: 'E' }, '|: C |1. F | E :|2. G || A |'],
    ['(1) C | F | G |', { kind: 'remove', bar: 0 }, 'F | G |'],
    ['| C |(3/4) F | G |', { kind: 'remove', bar: 1 }, '| C |(3/4) G |'],
    ['| C |(3/4) F |\nB:\n| G | ; c', { kind: 'remove', bar: 1 }, '| C |\nB:\n| (3/4) G | ; c'],
    ['| C |(3/4) F |\n| (4/4) G |', { kind: 'remove', bar: 1 }, '| C |\n| (4/4) G |'],
    ['| C | (3/4) F | (4/4) G |', { kind: 'remove', bar: 1 }, '| C | (4/4) G |'],
    ['|: C |1. F :|2. (key: D) G | (key: F) A |', { kind: 'remove', bar: 2 }, '|: C |1. F :| (key: F) A |'],
    [
      'A: ; intro\n| C |\n\nB:\n| F |\n\nA\n| G |',
      { kind: 'remove', bar: 0 },
      '; intro\n\nB:\n| F |\n\n| G |',
    ],
    ['A:\n| C | F |\nA\n| % |', { kind: 'write', bar: 1, text: 'E' }, 'A:\n| C | E |\nA\n| F |'],
    ['| C | F ; hi | there', { kind: 'remove', bar: 1 }, '| C ; hi | there'],
    ['| C |\n\n| F |\n\n| G |', { kind: 'remove', bar: 1 }, '| C |\n\n| G |'],
    ['|C|F|', { kind: 'insert', bar: 1, text: 'E' }, '|C|E|F|'],
    ['| C | | F |', { kind: 'write', bar: 1, text: 'E' }, '| C | E | F |'],
    ['| Bb | % |', { kind: 'append', bar: 0, text: 'E' }, '| Bb | E | Bb |'],
    [
      '| (key: C) I | I | (key: G) % |',
      { kind: 'write', bar: 1, text: 'IV' },
      '| (key: C) I | IV | (key: G) C |',
    ],
  ])('%j, %j', (text, edit, expected) => {
    expect(changed(text, edit)).toBe(expected);
  });

  it.each<[string, BarEdit]>([
    ['| C |', { kind: 'write', bar: 1, text: 'F' }],
    ['| C |', { kind: 'write', bar: 0, text: 'F | G' }],
    ['| C |', { kind: 'write', bar: 0, text: ' ' }],
    ['A:\nC\nA', { kind: 'remove', bar: 1 }],
    ['(1) C | F |', { kind: 'insert', bar: 0, text: 'G' }],
    ['|C|F|', { kind: 'write', bar: 0, text: 'G:' }],
    ['|C|F|', { kind: 'write', bar: 0, text: 'x3' }],
    ['|C|F|', { kind: 'write', bar: 0, text: '(3/4) G' }],
    ['F\nG', { kind: 'write', bar: 0, text: 'Intro' }],
  ])('%j, %j cannot be said', (text, edit) => {
    expect(changed(text, edit)).toBeNull();
  });

  it('gives what is typed in a bar, and nothing for a section that is only named', () => {
    const text = 'A:\r\n|: C / G7 / | % :|\r\nA';
    const { chart } = parseChart(text, metre());
    expect([0, 1, 2, 9].map((bar) => typedBar(text, chart, bar))).toEqual(['C / G7 /', '%', null, null]);
  });

  it('puts the suggestion of a problem in its place', () => {
    const text = '| C |\n| F | Gmni |';
    const [problem] = parseChart(text, metre()).problems;
    expect(problem && rewritePlace(text, problem, problem.suggestion ?? '')).toBe('| C |\n| F | Gm |');
  });

  it('changes the bar it means and no other', () => {
    const words = fc.constantFrom('C', 'Am F', '%', 'G / / E7', '/ / F /', 'Bb');
    const lines = fc.array(fc.array(words, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 4 });
    const kinds = fc.constantFrom('write' as const, 'insert' as const, 'remove' as const);
    fc.assert(
      fc.property(lines, kinds, fc.nat(), (rows, kind, where) => {
        const text = rows.map((row) => `| ${['C', ...row].join(' | ')} |`).join('\n');
        const before = parseChart(text, metre()).chart.bars.map(barSignature);
        const bar = where % before.length;
        const edited = changed(text, kind === 'remove' ? { kind, bar } : { kind, bar, text: 'Dm' }) ?? '';
        const expected = [...before];
        expected.splice(bar, kind === 'insert' ? 0 : 1, ...(kind === 'remove' ? [] : ['Dm@3840']));
        expect(parseChart(edited, metre()).chart.bars.map(barSignature)).toEqual(expected);
      }),
      { seed: 41, numRuns: 200 },
    );
  }, 60_000);

  it('reads numerals in the key of the piece', () => {
    const key = { tonic: { letter: 'G', alteration: 0 }, mode: 'major' } as const;
    const edited = editBar('I | %', metre(), { kind: 'insert', bar: 1, text: 'V7' }, key);
    expect(edited && harmony(parseChart(edited.text, metre(), key).chart)).toBe('G·4 | D7·4 | G·4');
  });
});
