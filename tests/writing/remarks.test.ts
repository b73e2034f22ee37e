import { expect, test } from 'vitest';
import { newPencil, stillSaid } from '../../src/core/writing';
import { Hand } from './hand';

const REMARKS = [
  'Bar 2 has no chord, so the bass rests.',
  'The pickup: the roots lie a tritone apart, and this level knows no way round it.',
  'Bar 12: one note is struck five times; even it out.',
  'A note in bars 1, 2 and 3 lies beyond fret 5, the last of this level.',
  'Bar 3: it has 8 notes, more than twice the 3 of bar 1; even it out.',
  'No bar of bars 1 to 3 can show octaves with these chords, level and range.',
] as const;

/** What is still said after a note was written at the beginning of a bar (index from 0). */
function after(bar: number): readonly string[] {
  const hand = new Hand('(1) F | F | N.C. | F |');
  const before = hand.lesson;
  hand.pencil = newPencil(hand.pencil.pieceId, bar);
  hand.press('1');
  expect(hand.lesson).not.toBe(before);
  return stillSaid(REMARKS, before, hand.lesson, hand.pencil);
}

test('what was said of a composed line goes with the notes of the bars that it names', () => {
  expect(after(2)).toEqual([REMARKS[1], REMARKS[2], REMARKS[4]]);
  expect(after(0)).toEqual(REMARKS.filter((each) => !each.startsWith('The pickup')));
  // The pickup's roots lead into the bar that is another now.
  expect(after(1)).toEqual([REMARKS[0], REMARKS[2]]);
});

test('nothing goes while no note is another', () => {
  const { lesson, pencil } = new Hand('| F | N.C. |');
  expect(stillSaid(REMARKS, lesson, lesson, pencil)).toEqual(REMARKS);
});
