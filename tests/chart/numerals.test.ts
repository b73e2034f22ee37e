import { describe, expect, it } from 'vitest';
import { parseChart } from '../../src/core/chart';
import { key } from '../theory/read';
import { harmony, metre, read } from './read';

describe('charts in numerals', () => {
  it('take their chords from the key of the piece, or from the one the chart names', () => {
    expect(harmony(parseChart('I | vi IV | V7', metre(), key('F')).chart)).toBe('F·4 | Dm·2 B♭·2 | C7·4');
    expect(harmony(read('(key: D) 1 | 6- | 4 5 |').chart)).toBe('D·4 | Bm·4 | G·2 A·2');
    expect(harmony(parseChart('I | (key: G) I', metre(), key('F')).chart)).toBe('F·4 | G·4');
  });

  it('say what they lack without a key', () => {
    const { problems } = read('I | vi');
    expect(problems.map((problem) => problem.message)[0]).toMatch(/count from a key/);
  });
});

describe('a problem with a chord', () => {
  it('comes with what was probably meant', () => {
    const { problems } = read('am | Cmja7 | Xyz');
    expect(problems.map((problem) => problem.suggestion)).toEqual(['Am', 'Cmaj7', undefined]);
  });
});
