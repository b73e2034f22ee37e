import { expect, test } from 'vitest';
import { ideaNames } from '../../src/app/pages/ideas/names';
import { COMMON_TIME, ticks } from '../../src/core/base';

/** Roots at beats of a bar of 4/4, each a quarter long, in an octave. */
const roots = (octave: number, ...beats: readonly number[]) => ({
  notes: beats.map((beat) => ({
    start: ticks((beat - 1) * 960),
    duration: ticks(960),
    pitch: { letter: 'C' as const, alteration: 0 as const, octave },
  })),
  analysis: {
    notes: beats.map(() => ({ degree: null, degreeText: 'R', function: null })),
    techniques: ['beat one silent', 'chord tones'] as const,
    reason: '',
  },
});

test('a name begins with the techniques', () => {
  expect(ideaNames([roots(2, 1, 4)], COMMON_TIME)).toEqual(['Beat one silent, chord tones: R · · R']);
});

test('of equal names each says what differs', () => {
  expect(ideaNames([roots(2, 1.5, 3.5), roots(2, 1.25, 3.25), roots(2, 2)], COMMON_TIME)).toEqual([
    'Beat one silent, chord tones: R R, on the & of 1 and the & of 3',
    'Beat one silent, chord tones: R R, on the e of 1 and the e of 3',
    'Beat one silent, chord tones: · R · ·',
  ]);
  expect(ideaNames([roots(2, 1), roots(1, 1)], COMMON_TIME)).toEqual([
    'Beat one silent, chord tones: R · · ·, with C2',
    'Beat one silent, chord tones: R · · ·, with C1',
  ]);
  expect(ideaNames([roots(2, 1), roots(1, 1)], COMMON_TIME, 'fixed do')).toEqual([
    'Beat one silent, chord tones: R · · ·, with Do2',
    'Beat one silent, chord tones: R · · ·, with Do1',
  ]);
  expect(ideaNames([roots(2, 1), roots(2, 1)], COMMON_TIME)).toEqual([
    'Beat one silent, chord tones: R · · ·',
    'Beat one silent, chord tones: R · · ·, number 2 of the list',
  ]);
});
