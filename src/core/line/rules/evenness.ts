import { counted, countedInWords } from '../../base';
import { struck } from '../hearing';
import { type BarModel, barPhrase, barsNear, type LineModel } from '../model';
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

const countIn = ({ heard }: Whole, index: number): number => struck(heard[index] ?? []).length;

/** The bars before one that have too many notes beside its own, or too few. */
const unevenBefore = (line: Whole, bar: BarModel): readonly number[] =>
  bar.before.filter(
    (index) => !areEven(bar, countIn(line, bar.index), line.model.bars[index], countIn(line, index)),
  );

const places = (line: Whole, near?: ReadonlySet<number>): readonly number[] =>
  barsNear(line.model, near).flatMap((bar) => (unevenBefore(line, bar).length > 0 ? [bar.index] : []));

const isHammered = ({ request }: LineModel, tones: readonly Tone[]): boolean =>
  !request.feel.bassRole.mayHammer && mostEqual(tones) > MOST_EQUAL;

/** Which of the two it is, with its numbers: `it has 8 notes, more than twice the 3 of bar 2`. */
function heardIn(line: Whole, bar: BarModel): string {
  const tones = line.heard[bar.index] ?? [];
  const own = countIn(line, bar.index);
  const beside = unevenBefore(line, bar).map((index) => {
    const others = countIn(line, index);
    const notes = (count: number) => counted(count, 'note');
    const place = barPhrase(line.model, index);
    return own > others
      ? `it has ${notes(own)}, more than twice the ${others} of ${place}`
      : `it has ${notes(own)}, less than half the ${others} of ${place}`;
  });
  const hammered = isHammered(line.model, tones)
    ? [`one note is struck ${countedInWords(mostEqual(tones), 'time')}`]
    : [];
  return [...hammered, ...new Set(beside)].join('; ');
}

export const EVENNESS: Rule = {
  number: 12,
  rule: 'At most four equal pitches a bar, where the feel does not hammer one note; the numbers of notes in neighbouring bars stay within two to one.',
  source: TEACHERS_LIST,
  heard: 'one note is struck more than four times, or a bar has more than twice the notes of its neighbour',
  mend: 'even it out',
  caution: { own: 'it has more than twice or less than half the notes of a neighbour', entering: null },
  heardIn,
  alone: ({ model, tones }) => isHammered(model, tones),
  inParts: false,
  meeting: null,
  tied: null,
  whole: { places, concerns: (line, bar) => places(line, itselfAndNext(bar)).length > 0 },
};
