import { struck } from '../hearing';
import { type BarModel, barsNear } from '../model';
import type { Tone } from '../tones';
import { itselfAndNext, type Rule, TEACHERS_LIST, type Whole } from './types';

/** Most equal pitches in a bar. */
const MOST_EQUAL = 4;

function mostEqual(tones: readonly Tone[]): number {
  let most = 0;
  for (const one of tones) {
    let count = 0;
    for (const other of tones) if (!other.held && other.midi === one.midi) count += 1;
    most = Math.max(most, count);
  }
  return most;
}

/** Whether two bars' numbers of notes stay within two to one; empty bars are left out. */
const isEvenWith = (one: number, other: number): boolean =>
  one === 0 || other === 0 || Math.max(one, other) <= 2 * Math.min(one, other);

/**
 * Whether a bar is a part of one beside another: a pickup, as short as one where its section comes again, or without a chord
 * for half of its time or more.
 */
const isPartBeside = (one: BarModel, other: BarModel): boolean =>
  one.pickup || one.chordTicks * 2 <= other.ticks;

/** Whether neighbours are even; a part of a bar only is not held against a whole one. */
export const areEven = (one: BarModel, notes: number, next: BarModel | undefined, others: number): boolean =>
  next === undefined || isPartBeside(one, next) || isPartBeside(next, one) || isEvenWith(notes, others);

function places({ model, heard }: Whole, near?: ReadonlySet<number>): readonly number[] {
  const count = (index: number) => struck(heard[index] ?? []).length;
  return barsNear(model, near).flatMap((bar) =>
    bar.before.some((index) => !areEven(bar, count(bar.index), model.bars[index], count(index)))
      ? [bar.index]
      : [],
  );
}

export const EVENNESS: Rule = {
  number: 12,
  rule: 'At most four equal pitches a bar, where the feel does not hammer one note; the numbers of notes in neighbouring bars stay within two to one.',
  source: TEACHERS_LIST,
  heard: 'one note is struck more than four times, or a bar has more than twice the notes of its neighbour',
  mend: 'even it out',
  caution: { own: 'it has more than twice or less than half the notes of a neighbour', entering: null },
  alone: ({ model, tones }) => !model.request.feel.bassRole.mayHammer && mostEqual(tones) > MOST_EQUAL,
  inParts: false,
  meeting: null,
  tied: null,
  whole: { places, concerns: (line, bar) => places(line, itselfAndNext(bar)).length > 0 },
};
