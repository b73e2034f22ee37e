import {
  type Bpm,
  barTicks,
  beatAt,
  beatGroups,
  beatTicks,
  type Metre,
  TICKS_PER_QUARTER,
  type Ticks,
} from '../base';
import type { Feel } from '../feel';
import { type LevelLimits, LIMITS } from './level-limits';
import type { Level } from './types';

/** Where the upper notes of pumped octaves end, by the frets of the level: C3 at fret 5, D3 at 7, E3 at 9 (common practice, no source). */
const HIGHEST_PUMPED: Readonly<Record<Level, number>> = { 0: 43, 1: 48, 2: 48, 3: 50, 4: 52, 5: 52 };

/** The level at which a feel whose figures have the chord's seventh asks for it. */
export const EARLY_SEVENTH = 2;

/** The limits of a level in a feel: what its own figures are made of comes a little earlier. */
export function limitsIn(level: Level, { mayPump, seventhsEarly }: Feel['bassRole']): LevelLimits {
  const plain = LIMITS[level];
  const { highestMidi, steps } = plain;
  return {
    ...plain,
    highestMidi: mayPump ? Math.max(highestMidi, HIGHEST_PUMPED[level]) : highestMidi,
    steps: seventhsEarly && level === EARLY_SEVENTH ? new Set([...steps, 7]) : steps,
  };
}

/** When the notes of a rhythm begin and how long they last, in ticks from the beginning of the bar. */
export interface Onset {
  readonly start: number;
  readonly duration: number;
}

const EIGHTH = TICKS_PER_QUARTER / 2;

/**
 * Values a note may have at a level without a dot: quarter, half, whole; in compound time the dotted ones, and what fills
 * a long beat, or a first group of beats.
 */
function isPlainValue({ start, duration }: Onset, metre: Metre): boolean {
  const beat = beatTicks(metre);
  const own = beatAt(metre, start);
  const [first = 0] = beatGroups(metre);
  return (
    duration === beat ||
    duration === beat * 2 ||
    duration === barTicks(metre) ||
    (start === own.start && duration === own.length) ||
    (start === 0 && duration === first * beat)
  );
}

function onsetLevel(onset: Onset, before: Onset | undefined, metre: Metre, beat: Ticks): Level {
  const offset = onset.start % beat;
  const onGrid = onset.start % EIGHTH === 0 && onset.duration % EIGHTH === 0;
  if (!onGrid) return fineLevel(onset, before);
  const end = onset.start + onset.duration;
  if (offset === 0) return isPlainValue(onset, metre) ? 0 : onset.duration < beat ? 1 : 2;
  if (!beforeEnds(before, onset)) return 3;
  if (end > onset.start - offset + beat) return 3;
  return before !== undefined && before.duration > beat ? 2 : 1;
}

/** Sixteenths that fill an eighth or follow one without a gap are plain; all others, and triplets, are not. */
function fineLevel(onset: Onset, before: Onset | undefined): Level {
  const sixteenth = EIGHTH / 2;
  if (onset.start % sixteenth !== 0 || onset.duration % sixteenth !== 0) return 5;
  if (onset.start % EIGHTH === 0)
    return onset.start % TICKS_PER_QUARTER === 0 || beforeEnds(before, onset) ? 4 : 5;
  return beforeEnds(before, onset) && onset.duration === sixteenth ? 4 : 5;
}

const beforeEnds = (before: Onset | undefined, onset: Onset): boolean =>
  before !== undefined && before.start + before.duration === onset.start;

/** The lowest level that has a note of a rhythm behind the one before it, in a feel: what {@link rhythmLevelIn} adds up. */
export function onsetLevelIn(
  onset: Onset,
  before: Onset | undefined,
  metre: Metre,
  bassRole: Feel['bassRole'],
): Level {
  return levelInFeel(onsetLevel(onset, before, metre, beatTicks(metre)), onset, bassRole);
}

/**
 * The lowest level whose rhythm column allows a rhythm: 0 quarters, halves and rests; 1 eighths in pairs on the
 * beat; 2 dotted values; 3 off-beats; 4 sixteenths on the beat; 5 syncopated sixteenths and triplets.
 */
export function rhythmLevel(onsets: readonly Onset[], metre: Metre): Level {
  const beat = beatTicks(metre);
  let level: Level = 0;
  onsets.forEach((onset, index) => {
    const one = onsetLevel(onset, onsets[index - 1], metre, beat);
    if (one > level) level = one;
  });
  return level;
}

/** The levels of the dotted values and of sixteenths; a feel that is made of them asks for them one level earlier. */
const DOTTED = 2;
const SIXTEENTHS = 4;

const onSixteenths = ({ start, duration }: Onset): boolean =>
  start % (EIGHTH / 2) === 0 && duration % (EIGHTH / 2) === 0;

function levelInFeel(level: Level, onset: Onset, { dotsEarly, sixteenthsEarly }: Feel['bassRole']): Level {
  if (dotsEarly && level === DOTTED) return 1;
  if (!sixteenthsEarly || level < SIXTEENTHS || !onSixteenths(onset)) return level;
  return level === SIXTEENTHS ? 3 : SIXTEENTHS;
}

/** The level of a rhythm in a feel. */
export function rhythmLevelIn(onsets: readonly Onset[], metre: Metre, bassRole: Feel['bassRole']): Level {
  let level: Level = 0;
  onsets.forEach((onset, index) => {
    const one = onsetLevelIn(onset, onsets[index - 1], metre, bassRole);
    if (one > level) level = one;
  });
  return level;
}

/** Notes a second, averaged over the bar; the tempo counts {@link beatTicks}. */
export const notesPerSecond = (count: number, metre: Metre, tempo: Bpm): number =>
  (count * tempo * beatTicks(metre)) / (60 * barTicks(metre));
