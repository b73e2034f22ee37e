import { TICKS_PER_QUARTER } from '../../base';
import { type Counted, share, sum } from './counted';
import { countMoves } from './moves';

/** What the habits of a feel are told by: shares from 0 to 1 unless said otherwise, from the notes alone. */
export const HABITS = {
  stepwise: 'moves that are a step or half step',
  thirds: 'moves that are a third',
  fourths: 'moves that are a fourth or fifth',
  octaves: 'moves that are an octave',
  leaps: 'moves of a fifth and more, octaves apart',
  struckAgain: 'moves that strike the note before once more',
  onward: 'moves that go on the same way as the one before',
  arpeggiated: 'bars of three notes and more without a step',
  root: 'notes that are the root of their chord',
  second: 'notes that are a second over the root',
  third: 'notes that are a third over the root',
  fifth: 'notes that are a fifth over the root',
  sixth: 'notes that are a sixth over the root',
  seventh: 'notes that are a seventh over the root',
  shortChromatic: 'notes outside the scale that last an eighth at most',
  longChromatic: 'notes outside the scale that last longer',
  density: 'notes a quarter',
  off: 'notes off the quarters',
  short: 'notes that last less than a quarter',
  rhythms: 'different rhythms a bar',
  breaths: 'bars that hold or rest for a beat and a half',
  seamPickup: '1 where the last beat holds two notes or a short one',
} as const;

export type Habit = keyof typeof HABITS;
export type Habits = Readonly<Record<Habit, number>>;

export const HABIT_NAMES = Object.keys(HABITS) as readonly Habit[];

/** Habits that are features of a line as well, and are counted there. */
export type CountedElsewhere = Pick<
  Habits,
  | 'stepwise'
  | 'leaps'
  | 'struckAgain'
  | 'onward'
  | 'shortChromatic'
  | 'longChromatic'
  | 'rhythms'
  | 'breaths'
  | 'seamPickup'
>;

/** Half steps over the root that are each degree. */
const DEGREES = {
  root: [0],
  second: [1, 2],
  third: [3, 4],
  fifth: [7],
  sixth: [8, 9],
  seventh: [10, 11],
} as const;

const OCTAVE = 12;

/** Counts the habits of a line. */
export function habitsOf({ bars, lists, flat }: Counted, features: CountedElsewhere): Habits {
  const moves = flat.length - 1;
  const [sizes, degrees] = [new Array<number>(128).fill(0), new Array<number>(OCTAVE).fill(0)];
  let [chorded, off, short] = [0, 0, 0];
  flat.forEach(({ start, duration, interval, midi }, index) => {
    if (index > 0) {
      const size = Math.abs(midi - (flat[index - 1]?.midi ?? midi));
      sizes[size] = (sizes[size] ?? 0) + 1;
    }
    if (start % TICKS_PER_QUARTER !== 0) off += 1;
    if (duration < TICKS_PER_QUARTER) short += 1;
    if (interval < 0) return;
    chorded += 1;
    degrees[interval] = (degrees[interval] ?? 0) + 1;
  });
  const moved = (...by: readonly number[]) => share(sum(by.map((size) => sizes[size] ?? 0)), moves);
  const on = (halfSteps: readonly number[]) => share(sum(halfSteps.map((at) => degrees[at] ?? 0)), chorded);
  const arpeggiated = lists.filter(
    (tones) => tones.length > 2 && countMoves(tones.map(({ midi }) => midi)).stepwise === 0,
  );
  const { stepwise, leaps, struckAgain, onward } = features;
  const { shortChromatic, longChromatic, rhythms, breaths, seamPickup } = features;
  return {
    stepwise,
    thirds: moved(3, 4),
    fourths: moved(5, 7),
    octaves: moved(OCTAVE),
    leaps,
    struckAgain,
    onward,
    arpeggiated: share(arpeggiated.length, bars.length),
    root: on(DEGREES.root),
    second: on(DEGREES.second),
    third: on(DEGREES.third),
    fifth: on(DEGREES.fifth),
    sixth: on(DEGREES.sixth),
    seventh: on(DEGREES.seventh),
    shortChromatic,
    longChromatic,
    density: share(flat.length * TICKS_PER_QUARTER, sum(bars.map(({ ticks }) => ticks))),
    off: share(off, flat.length),
    short: share(short, flat.length),
    rhythms,
    breaths,
    seamPickup,
  };
}
