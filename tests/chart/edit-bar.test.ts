import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BarEdit, barSignature, editBar, parseChart } from '../../src/core/chart';
import { harmony, metre } from './read';

const changed = (text: string, edit: BarEdit) => editBar(text, metre(), edit);

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
    ['| C | F | G |', { kind: 'remove', bar: 1 }, '| C | G |'],
    ['| C | F | G |', { kind: 'remove', bar: 2 }, '| C | F | '],
    ['| C | % |', { kind: 'remove', bar: 0 }, '| C |'],
    ['| C |: F :| G |', { kind: 'remove', bar: 1 }, '| C | G |'],
    ['|: C | F :|', { kind: 'remove', bar: 1 }, '|: C :|'],
  ])('%j, %j', (text, edit, expected) => {
    expect(changed(text, edit)).toBe(expected);
  });

  it.each<[string, BarEdit]>([
    ['| C |', { kind: 'write', bar: 1, text: 'F' }],
    ['| C |', { kind: 'write', bar: 0, text: 'F | G' }],
    ['| C |', { kind: 'write', bar: 0, text: ' ' }],
    ['A:\nC\nA', { kind: 'remove', bar: 1 }],
  ])('%j, %j cannot be said', (text, edit) => {
    expect(changed(text, edit)).toBeNull();
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
    expect(edited && harmony(parseChart(edited, metre(), key).chart)).toBe('G·4 | D7·4 | G·4');
  });
});
