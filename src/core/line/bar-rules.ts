import { LETTERS, pitchClassOf, TICKS_PER_QUARTER } from '../base';
import { classAbove, type Stretch } from './harmony';
import { type BarModel, changesBetween, isStrongBeat, type LineModel } from './model';
import { isHome, isLeap, isStep, type Tone } from './tones';

/**
 * The rules of a teacher's list that can be heard in one bar or where one bar meets the next (common practice,
 * no source). Rules are kept as bits, so that the composer can ask thousands of times.
 */
export const ruleBit = (rule: number): number => 1 << rule;

export const rulesIn = (bits: number): readonly number[] =>
  Array.from({ length: 16 }, (_, rule) => rule).filter((rule) => (bits & ruleBit(rule)) !== 0);

const QUARTER = TICKS_PER_QUARTER;
const EIGHTH = TICKS_PER_QUARTER / 2;
const OCTAVE = 12;

/** Outside its chord and long enough to be heard as a note of its own. */
const isExposed = (tone: Tone): boolean =>
  tone.stretch?.chord !== null && tone.stretch !== null && !tone.member && tone.duration >= QUARTER;

const isDominantSeventh = (tone: Tone): boolean =>
  tone.stretch?.chord?.family === 'dominant' && tone.interval === 10 && !isHome(tone);

/** Over the key's fifth or seventh degree, where its seventh step pulls up to the tonic. */
function isLeadingTone(tone: Tone): boolean {
  const chord = tone.stretch?.chord;
  if (!tone.stretch || !chord) return false;
  const tonic = pitchClassOf(tone.stretch.key.tonic);
  const degree = classAbove(pitchClassOf(chord.root), tonic);
  const pulls =
    (degree === 7 && tone.interval === 4) ||
    (degree === 11 && (chord.family === 'diminished' || chord.family === 'half-diminished'));
  return pulls && classAbove(tone.midi, tonic) === 11;
}

const hasMajorThird = (stretch: Stretch): boolean =>
  stretch.members[4] === true && stretch.members[3] !== true;
const hasMinorThird = (stretch: Stretch): boolean =>
  stretch.members[3] === true && stretch.members[4] !== true;

function toneBreaches(bar: BarModel, tone: Tone): number {
  const { stretch } = tone;
  if (!stretch?.chord || tone.member) return 0;
  let bits = 0;
  if (hasMajorThird(stretch) && tone.interval === 5 && isStrongBeat(bar, tone.start)) bits |= ruleBit(2);
  const wrongThird =
    (hasMajorThird(stretch) && tone.interval === 3) || (hasMinorThird(stretch) && tone.interval === 4);
  if (wrongThird && tone.duration > EIGHTH) bits |= ruleBit(2);
  const { key } = stretch;
  const tonic = pitchClassOf(key.tonic);
  const majorFive = hasMajorThird(stretch) && classAbove(stretch.rootClass, tonic) === 7;
  if (key.mode === 'minor' && majorFive && classAbove(tone.midi, tonic) === 10) bits |= ruleBit(3);
  return bits;
}

/** The sixth and the raised seventh of a minor key side by side: an augmented second. */
function isAugmentedSecond(one: Tone, other: Tone): boolean {
  const key = one.stretch?.key;
  if (key?.mode !== 'minor') return false;
  const tonic = pitchClassOf(key.tonic);
  const classes = [classAbove(one.midi, tonic), classAbove(other.midi, tonic)];
  const letters = Math.abs(LETTERS.indexOf(one.name.letter) - LETTERS.indexOf(other.name.letter));
  return classes.includes(8) && classes.includes(11) && (letters === 1 || letters === 6);
}

const isTritone = (from: number, to: number): boolean => Math.abs(to - from) % OCTAVE === 6;

/** Whether a note that goes on into another chord belongs there too. */
function fitsInto(tone: Tone, stretch: Stretch): boolean {
  return stretch.chord === null || stretch.members[classAbove(tone.midi, stretch.rootClass)] === true;
}

/** Rule 4 inside a bar: a dominant's seventh falls by step within two onsets. */
const falls = (seventh: number, next: number | undefined): boolean =>
  next !== undefined && seventh - next >= 1 && seventh - next <= 2;

function stepBreaches(model: LineModel, before: Tone, tone: Tone): number {
  let bits = 0;
  if (isExposed(tone) && isLeap(before.midi, tone.midi)) bits |= ruleBit(1);
  if (isExposed(before) && isLeap(before.midi, tone.midi)) bits |= ruleBit(1);
  if (isAugmentedSecond(before, tone)) bits |= ruleBit(3);
  const changes = before.stretch?.label !== tone.stretch?.label;
  const rootsOnly = model.request.level <= 1 && isHome(before) && isHome(tone);
  if (changes && !rootsOnly && isTritone(before.midi, tone.midi)) bits |= ruleBit(5);
  if (Math.abs(tone.midi - before.midi) > OCTAVE) bits |= ruleBit(8);
  return bits;
}

/** Sum of the leaps in one direction that end at an index, signed. */
function leapsUpTo(tones: readonly Tone[], index: number): number {
  let sum = 0;
  for (let place = index; place > 0; place -= 1) {
    const distance = (tones[place]?.midi ?? 0) - (tones[place - 1]?.midi ?? 0);
    if (Math.abs(distance) <= 2 || sum * distance < 0) break;
    sum += distance;
  }
  return sum;
}

/** Direction of a run of three or more notes by step that ends at an index; 0 where there is none. */
function runUpTo(tones: readonly Tone[], index: number): number {
  const [one, two, three] = [tones[index - 2], tones[index - 1], tones[index]];
  if (!one || !two || !three || !isStep(one.midi, two.midi) || !isStep(two.midi, three.midi)) return 0;
  const direction = Math.sign(two.midi - one.midi);
  return Math.sign(three.midi - two.midi) === direction ? direction : 0;
}

/** A run must not break off into another register. */
const breaksRun = (run: number, last: Tone, next: number): boolean => {
  const distance = Math.abs(next - last.midi);
  return run !== 0 && (distance === 10 || distance === 11 || (!last.member && distance > 2));
};

function mostEqual(tones: readonly Tone[]): number {
  let most = 0;
  for (const one of tones) {
    let count = 0;
    for (const other of tones) if (!other.held && other.midi === one.midi) count += 1;
    most = Math.max(most, count);
  }
  return most;
}

/** Whether a dominant's seventh is left hanging by both of the notes after it. */
const hangs = (tone: Tone, second: Tone | undefined, third: Tone | undefined): boolean =>
  isDominantSeventh(tone) &&
  second !== undefined &&
  third !== undefined &&
  !falls(tone.midi, second.midi) &&
  !falls(tone.midi, third.midi);

const ringsOver = (bar: BarModel, tone: Tone): boolean =>
  bar.stretches.some(
    (stretch) =>
      tone.start < stretch.start && tone.start + tone.duration > stretch.start && !fitsInto(tone, stretch),
  );

/** Breaches that one bar commits by itself, as bits. */
export function soloBreaches(model: LineModel, bar: BarModel, tones: readonly Tone[]): number {
  let bits = 0;
  tones.forEach((tone, index) => {
    bits |= toneBreaches(bar, tone);
    const before = tones[index - 1];
    if (before) {
      bits |= stepBreaches(model, before, tone);
      if (Math.abs(leapsUpTo(tones, index)) > OCTAVE) bits |= ruleBit(8);
      if (breaksRun(runUpTo(tones, index - 1), before, tone.midi)) bits |= ruleBit(7);
    }
    if (hangs(tone, tones[index + 1], tones[index + 2])) bits |= ruleBit(4);
    if (ringsOver(bar, tone)) bits |= ruleBit(15);
  });
  if (mostEqual(tones) > 4 && model.request.feel.id !== STEPPERS) bits |= ruleBit(12);
  if (model.request.feel.id === 'one-drop' && onlyDoublesChops(bar, tones)) bits |= ruleBit(14);
  return bits;
}

/** The feel in which the bass may hammer one note (by name, as feels are data). */
const STEPPERS: string = 'steppers';

/** Fast-count chops fall on 2 and 4. */
const onlyDoublesChops = (bar: BarModel, tones: readonly Tone[]): boolean =>
  tones.length > 0 &&
  tones.every((tone) => tone.start === QUARTER || tone.start === QUARTER * 3) &&
  bar.metre.count === 4;

/** What the rules ask about the end of a bar. */
export interface Exit {
  readonly last: Tone;
  readonly exposed: boolean;
  /** Pitches of sevenths that still have to fall: now, or at the onset after the next. */
  readonly dueNow: number | null;
  readonly dueSoon: number | null;
  readonly leadingTone: boolean;
  readonly leaps: number;
  readonly run: number;
}

/** What the rules ask about the beginning of a bar. */
export interface Entry {
  readonly first: Tone;
  readonly second: number | null;
  readonly exposed: boolean;
  /** Signed sum of the leaps in one direction that the bar begins with. */
  readonly leaps: number;
}

/** Equal for ends that no rule and no term of the score can tell apart. */
export const exitKey = ({ last, exposed, dueNow, dueSoon, leadingTone, leaps, run }: Exit): string =>
  `${last.midi} ${exposed} ${dueNow} ${dueSoon} ${leadingTone} ${leaps} ${run} ${last.member} ${last.tiedOn}`;

/** As {@link exitKey}, for beginnings. */
export const entryKey = ({ first, second, exposed, leaps }: Entry): string =>
  `${first.midi} ${second} ${exposed} ${leaps} ${first.start === 0}`;

export function exitOf(tones: readonly Tone[]): Exit | null {
  const last = tones.at(-1);
  if (!last) return null;
  const before = tones.at(-2);
  const exit: Exit = {
    last,
    exposed: isExposed(last),
    dueNow: before && isDominantSeventh(before) && !falls(before.midi, last.midi) ? before.midi : null,
    dueSoon: isDominantSeventh(last) ? last.midi : null,
    leadingTone: isLeadingTone(last),
    leaps: leapsUpTo(tones, tones.length - 1),
    run: runUpTo(tones, tones.length - 1),
  };
  return exit;
}

/**
 * @param sees `one` leaves the second note out: then a seventh before the bar has to fall at once, and more
 * beginnings are equal
 */
export function entryOf(tones: readonly Tone[], sees: 'one' | 'two' = 'two'): Entry | null {
  const first = tones[0];
  if (!first) return null;
  let leaps = 0;
  for (let index = 1; index < tones.length; index += 1) {
    const distance = (tones[index]?.midi ?? 0) - (tones[index - 1]?.midi ?? 0);
    if (Math.abs(distance) <= 2 || leaps * distance < 0) break;
    leaps += distance;
  }
  const second = sees === 'one' ? null : (tones[1]?.midi ?? null);
  const exposed = isExposed(first);
  return { first, second, exposed, leaps };
}

/** Rule 4 over the bar line: what still has to resolve, and the first notes that come. */
function leavesHanging(exit: Exit, entry: Entry): boolean {
  const { first, second } = entry;
  const distance = first.midi - exit.last.midi;
  if (exit.dueNow !== null && !falls(exit.dueNow, first.midi)) return true;
  if (
    exit.dueSoon !== null &&
    !falls(exit.dueSoon, first.midi) &&
    !falls(exit.dueSoon, second ?? undefined)
  ) {
    return true;
  }
  return exit.leadingTone && !(distance >= 1 && distance <= 2);
}

/**
 * Rules 5 and 6: how a new chord is reached. Levels that know only roots and fifths cannot help a tritone of roots,
 * and a chord on the same root does not come early when that root sounds last.
 */
function changeBreaches(model: LineModel, last: Tone, first: Tone): number {
  const rootsOnly = model.request.level <= 1 && isHome(last) && isHome(first);
  const tritone = isTritone(last.midi, first.midi) && !rootsOnly ? ruleBit(5) : 0;
  const own = isHome(last) || last.interval === 0;
  const struckAgain = !own && first.start === 0 && isHome(first) && (first.midi - last.midi) % OCTAVE === 0;
  return struckAgain && !model.request.techniques.has('anticipation') ? tritone | ruleBit(6) : tritone;
}

/** Breaches where one bar goes over into another, as bits. */
export function meetingBreaches(
  model: LineModel,
  from: BarModel,
  exit: Exit,
  to: BarModel,
  entry: Entry,
): number {
  const { last } = exit;
  const { first } = entry;
  if (last.tiedOn && first.start === 0 && first.midi === last.midi) {
    const stretch = to.stretches[0];
    return stretch && !fitsInto(last, stretch) ? ruleBit(15) : 0;
  }
  const distance = first.midi - last.midi;
  let bits = changesBetween(from, to) ? changeBreaches(model, last, first) : 0;
  if ((exit.exposed || entry.exposed) && isLeap(last.midi, first.midi)) bits |= ruleBit(1);
  if (isAugmentedSecond(last, first)) bits |= ruleBit(3);
  if (leavesHanging(exit, entry)) bits |= ruleBit(4);
  if (breaksRun(exit.run, last, first.midi)) bits |= ruleBit(7);
  if (Math.abs(distance) > OCTAVE || leapsAcross(exit, entry, distance)) bits |= ruleBit(8);
  return bits;
}

/** Leaps that go on in one direction over the bar line and add up to more than an octave. */
function leapsAcross(exit: Exit, entry: Entry, distance: number): boolean {
  if (Math.abs(distance) <= 2) return false;
  const before = exit.leaps * distance > 0 ? exit.leaps : 0;
  const after = entry.leaps * distance > 0 ? entry.leaps : 0;
  return Math.abs(before + distance + after) > OCTAVE;
}

/** Half steps above the roots that lead home from the end of a line that loops: 2, 3, 5 and 7 (rule 10). */
const LEADS_HOME = new Set([1, 2, 3, 4, 7, 10, 11]);

/** Whether a line that ends on this note leads back into the bar that follows at the seam (rule 10). */
export function leadsHome(last: Tone, start: Stretch | null): boolean {
  if (last.interval < 0 || (last.member && last.interval > 0)) return true;
  if (LEADS_HOME.has(last.interval)) return true;
  return start?.chord !== null && start !== null && LEADS_HOME.has(classAbove(last.midi, start.rootClass));
}
