import { describe, expect, test } from 'vitest';
import {
  barName,
  barNames,
  barRange,
  capitalised,
  counted,
  countedInWords,
  listed,
  numberWord,
} from '../../src/core/base';

describe('words', () => {
  // Oxford comma: left out in British usage but for clarity (The Guardian style guide, “commas”; from memory). The
  // pattern itself is CLDR's for en-GB, which the runtime brings.
  test('list things as British English does', () => {
    expect(['', 'a', 'a b', 'a b c'].map((words) => listed(words.split(' ').filter(Boolean)))).toEqual([
      '',
      'a',
      'a and b',
      'a, b and c',
    ]);
    expect(listed([1, 2])).toBe('1 and 2');
  });

  test('call bars by their number, and the pickup by its name', () => {
    expect([0, 1, 12].map(barName)).toEqual(['the pickup', 'bar 1', 'bar 12']);
    expect([[], [0], [3], [0, 3], [0, 3, 4], [3, 5, 8]].map(barNames)).toEqual([
      '',
      'the pickup',
      'bar 3',
      'the pickup and bar 3',
      'the pickup and bars 3 and 4',
      'bars 3, 5 and 8',
    ]);
    expect([barRange(0, 0), barRange(2, 2), barRange(0, 4), barRange(2, 4)]).toEqual([
      'the pickup',
      'bar 2',
      'the pickup to bar 4',
      'bars 2 to 4',
    ]);
  });

  test('count', () => {
    expect([0, 1, 2, 12, 13].map(numberWord)).toEqual(['no', 'one', 'two', 'twelve', '13']);
    expect([0, 1, 2].map((count) => counted(count, 'bar'))).toEqual(['0 bars', '1 bar', '2 bars']);
    expect([0, 1, 2].map((count) => countedInWords(count, 'stretch', 'stretches'))).toEqual([
      'no stretch',
      'one stretch',
      'two stretches',
    ]);
    expect(counted(2, 'stretch', 'stretches')).toBe('2 stretches');
    expect(capitalised('é')).toBe('É');
    expect(capitalised('')).toBe('');
  });
});
