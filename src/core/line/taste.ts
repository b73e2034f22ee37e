import { TICKS_PER_QUARTER, unreachable } from '../base';
import { silenceOf } from './hearing';
import { type BarModel, changesBetween, isStrongBeat, type LineModel } from './model';
import { meetingBreaches } from './rules/check';
import type { Entry, Exit } from './rules/ends';
import { isDominantApproach, isHome, isLeap, type Tone } from './tones';
import type { Technique } from './types';

/**
 * The score of an idea for a bar, in points of displeasure: the sum of {@link pitchCost}, {@link figureCost},
 * {@link timeCost} and {@link handCost}, and of {@link meetingCost} with its neighbours. One point is about what a repeated note or a plain leap is worth; a breach of a rule costs so
 * much that it happens only where nothing else is possible. The weights are ours, tuned by reading lines.
 */
export const BREACH = 1000;

const WEIGHT = {
  /** A new chord that does not begin with its root, by what it begins with. */
  lateRoot: 3,
  /** A new chord whose root or fifth is not heard within two beats. */
  rootless: 12,
  /** A chord that goes on and begins its bar again with something other than root, third, fifth. */
  looseStart: 0.6,
  /** A half step of the whole range beyond an octave. */
  wide: 0.6,
  /** A leap beyond a fifth that is not turned back by step. */
  unturned: 0.7,
  /** A low third that lasts on a strong beat. */
  muddyThird: 0.8,
  /** A note outside the chord on a strong beat. */
  strongStep: 1.5,
  /** A bar that only repeats one note, from the level on that knows more. */
  monotone: 1.6,
  /** A bar whose steps lead round a single chord tone and never spell the chord. */
  thin: 1.8,
  /** A bar of three notes or more over one chord that never says whether it is major or minor, from level 2 on. */
  bare: 0.9,
  /** A note outside the chord that is left by a leap within the bar. */
  escape: 3,
  /** A third equal pitch in a row, and every one after it: the line marks time. */
  markingTime: 0.7,
  /** A figure that the feel is known by, whole or as the beginning of a walk. */
  ownFigure: -2.6,
  ownBeginning: -1,
  /** The hand's cost in the fretboard's unit, by note. */
  hand: 0.55,
  /** A note of the line above the octave over the lowest root, where the bass stops supporting. */
  high: 0.12,
  /** A leap over a bar line, by half step beyond a fifth. */
  farLanding: 0.35,
  /** A change reached by step, and by fourth or fifth. */
  stepLanding: -1.3,
  fifthLanding: -0.3,
  /** A tritone, where a level of few notes cannot help it. */
  tritone: 30,
  /** The next bar begins with the note that was just heard. */
  stuckLanding: 0.9,
  /** A step outside the chord at the end of a bar that does not go on by step. */
  brokenStep: BREACH / 2,
  /** A note of the next chord at the end of a bar, struck early without being asked for. */
  earlyRoot: 25,
  /** An anticipation that is tied over, which the teacher has asked for; more than a plain landing by step. */
  tied: -2.4,
  /** A technique that an aim asks of this bar, or hopes for in it, and that is not shown. */
  unmetAim: BREACH * 2,
  unmetHope: 4,
} as const;

const OCTAVE = 12;
const TRITONE = 6;
/** B1 and below: thirds here growl. */
const LOW_THIRD = 35;
/** The highest comfortable place for a line that should carry: D2 upwards begins to leave the bass. */
const HIGH = 40;

function startCost(bar: BarModel, tones: readonly Tone[], changed: boolean): number {
  let cost = 0;
  for (const stretch of bar.stretches) {
    if (!stretch.chord) continue;
    const first = tones.find((tone) => tone.stretch === stretch);
    const fresh = stretch.index > 0 || changed;
    if (fresh && (!first || !isHome(first))) cost += WEIGHT.lateRoot;
    if (!fresh && first && !first.member) cost += WEIGHT.looseStart;
    const grounded = tones.some(
      (tone) =>
        tone.stretch === stretch &&
        tone.start < stretch.start + 2 * bar.beat &&
        (isHome(tone) || tone.interval === 0 || (tone.member && tone.interval >= 6 && tone.interval <= 8)),
    );
    if (fresh && !grounded && stretch.end - stretch.start >= 2 * bar.beat) cost += WEIGHT.rootless;
  }
  return cost;
}

/** Leaps beyond a fifth that are not answered by a step the other way; an octave may go back where it came from. */
function unturnedLeaps(tones: readonly Tone[]): number {
  let count = 0;
  for (let index = 1; index < tones.length; index += 1) {
    const leap = (tones[index]?.midi ?? 0) - (tones[index - 1]?.midi ?? 0);
    if (Math.abs(leap) <= 7) continue;
    const next = tones[index + 1];
    if (!next) continue;
    const back = next.midi - (tones[index]?.midi ?? 0);
    const thereAndBack = Math.abs(leap) === OCTAVE && back === -leap;
    if (!thereAndBack && (back * leap >= 0 || Math.abs(back) > 5)) count += 1;
  }
  return count;
}

function toneCost(bar: BarModel, tone: Tone): number {
  let cost = 0;
  const third = tone.member && (tone.interval === 3 || tone.interval === 4);
  const strong = isStrongBeat(bar, tone.start);
  if (third && strong && tone.midi < LOW_THIRD && tone.duration > TICKS_PER_QUARTER)
    cost += WEIGHT.muddyThird;
  if (!tone.member && strong) cost += WEIGHT.strongStep;
  return cost;
}

/** The level whose notes have thirds (see the levels' table). */
const THIRDS_FROM = 2;

/** Three notes or more over one chord with a third, none of them that third. */
function isBare(tones: readonly Tone[]): boolean {
  const stretch = tones[0]?.stretch;
  if (tones.length < 3 || !stretch?.chord || tones.at(-1)?.stretch !== stretch) return false;
  const third = stretch.members[3] === true ? 3 : 4;
  return stretch.members[third] === true && tones.every((tone) => tone.interval !== third);
}

/** Notes that are the third or a later one of the same pitch in a row. */
const markedTime = (tones: readonly Tone[]): number =>
  tones.filter((tone, index) => tone.midi === tones[index - 1]?.midi && tone.midi === tones[index - 2]?.midi)
    .length;

const escapes = (tones: readonly Tone[]): number =>
  tones.filter((tone, index) => {
    const next = tones[index + 1];
    return tone.stretch?.chord && !tone.member && next !== undefined && isLeap(tone.midi, next.midi);
  }).length;

/** What the pitches of a bar cost the ear by themselves, whatever their rhythm. */
export function pitchCost(model: LineModel, tones: readonly Tone[]): number {
  if (tones.length === 0) return 0;
  let [lowest, highest, steps, members] = [127, 0, 0, 0];
  let cost = unturnedLeaps(tones) * WEIGHT.unturned;
  for (const { midi, member, interval } of tones) {
    lowest = Math.min(lowest, midi);
    highest = Math.max(highest, midi);
    if (member) members |= 1 << interval;
    else steps += 1;
    cost += Math.max(0, midi - HIGH) * WEIGHT.high;
  }
  const range = highest - lowest;
  cost += Math.max(0, range - OCTAVE) * WEIGHT.wide;
  if (range === 0 && tones.length > 1 && model.request.level > 0) cost += WEIGHT.monotone;
  if (model.request.level >= THIRDS_FROM && isBare(tones)) cost += WEIGHT.bare;
  cost += markedTime(tones) * WEIGHT.markingTime + escapes(tones) * WEIGHT.escape;
  const single = (members & (members - 1)) === 0;
  return single && steps > 0 ? cost + WEIGHT.thin : cost;
}

/** What a shape is worth in a feel: its own figures are liked. */
export function figureCost(model: LineModel, shape: string): number {
  let cost = 0;
  for (const figure of model.request.feel.figures) {
    if (shape === figure.shape) return WEIGHT.ownFigure;
    if (shape.startsWith(`${figure.shape} `)) cost = WEIGHT.ownBeginning;
  }
  return cost;
}

/**
 * What the notes of a bar cost by where they fall.
 * @param changed whether the bar begins with a new chord
 */
export function timeCost(bar: BarModel, tones: readonly Tone[], changed: boolean): number {
  let cost = tones.length === 0 ? 0 : startCost(bar, tones, changed);
  for (const tone of tones) cost += toneCost(bar, tone);
  return cost;
}

/** Whether the notes show a technique, as far as a bar alone can tell. */
function shows(bar: BarModel, tones: readonly Tone[], technique: Technique): boolean {
  const inScale = (tone: Tone) =>
    tone.stretch?.steps.some((step) => step?.halfSteps === tone.interval) === true;
  const entered = (index: number) => tones[index - 1]?.midi ?? 0;
  switch (technique) {
    case 'chord tones':
      return new Set(tones.filter((tone) => tone.member).map((tone) => tone.interval)).size > 1;
    case 'scale steps':
      return tones.some((tone, index) => !tone.member && inScale(tone) && !isLeap(entered(index), tone.midi));
    case 'beat one silent':
      return tones[0]?.start !== 0;
    case 'long silences':
      return silenceOf(tones, bar.ticks).longest * 2 >= bar.ticks;
    case 'octave':
      return tones.some((tone, index) => Math.abs(tone.midi - entered(index)) === OCTAVE);
    case 'approach note':
      return tones.some(
        (tone, index) =>
          !tone.member && !tone.tiedOn && (!inScale(tone) || isLeap(entered(index), tone.midi)),
      );
    case 'anticipation':
      return tones.some((tone) => !tone.member && tone.tiedOn);
    default:
      return unreachable(technique);
  }
}

/** What the teacher's aims for a bar miss in its notes. */
export function demandCost(bar: BarModel, tones: readonly Tone[]): number {
  let cost = 0;
  for (const technique of bar.demands.wanted) if (!shows(bar, tones, technique)) cost += WEIGHT.unmetAim;
  for (const technique of bar.demands.hoped) if (!shows(bar, tones, technique)) cost += WEIGHT.unmetHope;
  return cost;
}

/**
 * What a bar costs the hand.
 * @param playing the cost of its notes in the unit of the fingering search
 */
export const handCost = (tones: readonly Tone[], playing: number): number =>
  tones.length === 0 ? 0 : (playing / tones.length) * WEIGHT.hand;

function landingCost(from: BarModel, exit: Exit, to: BarModel, entry: Entry): number {
  const distance = entry.first.midi - exit.last.midi;
  const size = Math.abs(distance);
  const changes = changesBetween(from, to);
  if (size === 0) return changes ? WEIGHT.stuckLanding : WEIGHT.stuckLanding / 3;
  const far = Math.max(0, size - 7) * WEIGHT.farLanding + (size === TRITONE ? WEIGHT.tritone : 0);
  if (!changes) return far;
  if (size <= 2) return WEIGHT.stepLanding;
  return size === 5 || size === 7 ? WEIGHT.fifthLanding : far;
}

/** A tie needs its note on the other side of the bar line. */
const tieCost = (last: Tone, first: Tone): number =>
  first.start === 0 && first.midi === last.midi ? WEIGHT.tied : BREACH;

/** What the way from one bar into another costs, breaches of the rules included. */
export function meetingCost(
  model: LineModel,
  from: BarModel,
  exit: Exit,
  to: BarModel,
  entry: Entry,
): number {
  const bits = meetingBreaches(model, from, exit, to, entry);
  let cost = landingCost(from, exit, to, entry);
  for (let rest = bits; rest !== 0; rest &= rest - 1) cost += BREACH;
  const { last } = exit;
  const outside = last.stretch?.chord !== null && last.stretch !== null && !last.member;
  const dominant =
    from.demands.freedoms.has('notes outside the scale') && isDominantApproach(last, entry.first);
  if (outside && !dominant && isLeap(last.midi, entry.first.midi)) cost += WEIGHT.brokenStep;
  const ahead = to.stretches[0];
  const early = ahead?.chord && changesBetween(from, to) && last.midi % OCTAVE === ahead.homeClass;
  if (last.tiedOn) return cost + tieCost(last, entry.first);
  if (early && (last.member || entry.first.start === 0)) {
    cost += last.member ? WEIGHT.earlyRoot / 10 : WEIGHT.earlyRoot;
  }
  return cost;
}
