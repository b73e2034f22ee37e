import type { Contour } from '../../feel';
import type { Cell } from './cells';
import type { Ladder } from './ladder';
import { countMoves } from './moves';
import type { Segment } from './segments';

/** What the choice of nodes depends on beside the segment. */
export interface NodeRules {
  readonly level: number;
  readonly manner: 'walk' | 'riff';
  readonly blues: boolean;
  readonly longChromatics: boolean;
  /** Whether the feel leaves beat one empty by habit; elsewhere it is a last resort. */
  readonly restsOnOne: boolean;
  /** Whether the feel pumps octaves: a bar without any is for a chord whose octave lies out of reach. */
  readonly pumps: boolean;
  /** Least share of the time that a line of the feel leaves silent. */
  readonly silence: number;
}

/** What a bar without the silence of its feel costs, by the share that it lacks (hand-set). */
const FULL = 3;

/** What each octave costs that a bar lacks of two in a feel that pumps them (hand-set). */
const UNPUMPED = 1.5;

/**
 * What a bar costs that is silent on its last beat before another chord, where the beat would lead, and what a breath costs
 * that is (hand-set).
 */
const UNLED = 1.5;
const UNLED_EASY = 2.4;
const UNLED_BREATH = 0.6;

/** What a fifth or a third costs that is struck again in an easy line: filler (hand-set). */
const TONE_AGAIN = 0.7;

/** What the fall from the root through the seventh to the third costs, which every book has (hand-set). */
const FALL = 0.6;

/** What a walk costs that steps to the root's neighbour and back, and one that stays on one pitch (hand-set). */
const TREADING = 1.5;
const BACK_ON_THREE = 1.6;
const HAMMERED = 3;

/** What each seventh of a seventh chord is worth; it is what tells a blues from a march (hand-set). */
const SEVENTH = 1.1;
const SEVENTH_IN_BLUES = 1.5;

/** What a leap of a tritone costs that does not lie in the chord (hand-set). */
const TRITONE = 2.4;

/**
 * Below C2 a third is thick: what it costs to hold one for a beat, by the half step that it lies lower, and at most
 * (hand-set; low thirds are fine when short or passing).
 */
const LOW_THIRD = 36;
const LOW = 0.35;
const LOWEST = 1.6;

/** What a new chord costs whose bass note is not heard at all (hand-set). */
const UNROOTED = 3;

/** What going to and fro as root, fifth, third, fifth costs in a bar (hand-set). */
const DRILL = 0.7;

/** What a bar costs that leaps from note to note where its level has steps, and one that keeps its third from us (hand-set). */
const STEPLESS = 0.5;
const BARE = 0.5;

/** What a short note outside the chord costs that is leapt to, and a ♭6 once more (hand-set). */
const LEAPT_TO = 0.8;

/** What a riff's bar costs that begins on the third of a chord that goes on (hand-set). */
const ON_THIRD = 0.9;

/** What a raised fourth costs for a beat: over a plain chord it is a wrong note (hand-set). */
const RAISED_FOURTH = 1.4;

/** What a short flat second costs on a strong beat: readers of minor riffs heard it as a wrong note (hand-set). */
const FLAT_SECOND = 2.2;

/** The last of the easy levels. */
const EASY = 2;

const wrap = (midi: number): number => ((midi % 12) + 12) % 12;

const octavesIn = (offsets: readonly number[]): number =>
  offsets.filter((offset, index) => Math.abs(offset - (offsets[index - 1] ?? offset)) === 12).length;

/** From so many octaves on, a bar pumps them; fewer are hops. */
const PUMPING = 3;

/** Whether pitches pump octaves. */
export const isPumped = (pitches: readonly number[]): boolean => octavesIn(pitches) >= PUMPING;

/** Whether an octave from the first note to the second is all the contour does with octaves: a jolt. */
const joltsAtOnce = (offsets: readonly number[]): boolean =>
  octavesIn(offsets) === 1 && Math.abs((offsets[1] ?? 0) - (offsets[0] ?? 0)) === 12;

/** What held thirds cost that lie low. */
export function lowCost(cell: Cell, ladder: Ladder, unit: number, pitches: readonly number[]): number {
  return pitches.reduce((cost, pitch, index) => {
    const interval = wrap(pitch - ladder.root);
    const held = (cell.notes[index]?.duration ?? 0) >= unit;
    const again = pitch === pitches[index - 1];
    if ((interval !== 3 && interval !== 4) || pitch >= LOW_THIRD || !(held || again)) return cost;
    return cost + Math.min(LOWEST, LOW * (LOW_THIRD - pitch));
  }, 0);
}

/** What the pitches cost by themselves (hand-set; the reasons stand beside the terms). */
export function ownCost(
  rules: NodeRules,
  segment: Segment,
  cell: Cell,
  ladder: Ladder,
  offsets: readonly number[],
): number {
  const beat = segment.unit;
  let cost = rules.pumps && rules.level > 0 ? UNPUMPED * Math.max(0, 2 - octavesIn(offsets)) : 0;
  const { roles } = cell.contour;
  // biome-ignore lint/complexity/noExcessiveCognitiveComplexity: a table of prices, read from top to bottom
  offsets.forEach((offset, index) => {
    const note = cell.notes[index];
    const role = roles[index];
    if (!note || !role) return;
    const pitchClass = wrap(ladder.home + offset);
    const beats = note.duration / beat;
    const before = offsets[index - 1];
    const next = offsets[index + 1];
    const interval = wrap(pitchClass - ladder.root);
    if (before !== undefined && role.kind !== 'repeat') {
      const leap = Math.abs(offset - before);
      // Two roles on one note, a tritone inside a bar, sevenths and sixths by leap.
      if (leap === 0 && roles[index - 1]?.kind !== role.kind) cost += 1.2;
      const within = ladder.tones[wrap(ladder.home + before)] && ladder.tones[pitchClass];
      if (leap === 6 && !ladder.altered && !within) cost += TRITONE;
      else if (leap === 6) cost += 0.4;
      if (leap >= 10 && leap !== 12) cost += 2.5;
      else if (leap === 8 || leap === 9) cost += rules.manner === 'walk' ? 1.4 : 0.8;
      const prior = offsets[index - 2];
      if (
        prior !== undefined &&
        leap >= 5 &&
        Math.abs(before - prior) >= 5 &&
        (offset - before) * (before - prior) > 0
      )
        cost += 0.7;
      // An augmented second between neighbours of the scale.
      const prevRole = roles[index - 1];
      if (
        leap === 3 &&
        role.kind === 'step' &&
        prevRole?.kind === 'step' &&
        Math.abs(role.step - prevRole.step) === 1
      )
        cost += 1.2;
    }
    if (!ladder.tones[pitchClass]) {
      const entered = before === undefined ? 9 : Math.abs(offset - before);
      const left = next === undefined ? (cell.contour.leads > 0 ? 2 : 3) : Math.abs(next - offset);
      const soft = interval === 9 && !ladder.minorThird;
      // Rule 1 and beyond: a long note outside the chord comes and goes by step; the major sixth is softer.
      if (beats >= 1)
        cost +=
          (entered > 2 ? (soft && entered <= 4 ? 0.5 : 2.2) : 0) +
          (left > 2 ? (soft && left <= 4 ? 0.4 : 1.2) : 0);
      else if (entered > 2 && left > 2) cost += 0.9;
      if (beats >= 1.5) cost += soft ? 0.8 : 2;
      // By leap in, by step out is an approach note: only where those are wanted.
      if (entered > 2 && !segment.bar.demands.freedoms.has('notes outside the scale')) cost += 1;
      const strong = (note.start / beat) % 2 === 0;
      if (strong && beats >= 0.5 && index > 0) cost += soft ? (rules.manner === 'riff' ? 0.15 : 0) : 0.9;
      // ♭6 on minor, ♭2, and the fourth over a major third grind.
      // Leapt to, it is heard as another chord.
      if (entered > 2 && beats < 1) cost += LEAPT_TO;
      if (interval === 8 && !ladder.altered && entered > 2) cost += LEAPT_TO;
      if (interval === 8 && !ladder.altered)
        cost += (beats <= 0.5 ? 0.5 : 1.3) * (rules.longChromatics ? 0.75 : 1);
      if (interval === 6 && beats >= 1) cost += RAISED_FOURTH;
      if (interval === 1) cost += beats > 0.5 ? 3.6 : strong ? FLAT_SECOND : 0.5;
      if (interval === 5 && !ladder.minorThird && beats >= 1) cost += 0.5;
      if (interval === 11 && beats >= 1 && left > 1 && !rules.longChromatics) cost += 0.5;
    } else if (ladder.ownSeventh && interval === wrap((ladder.colour ?? 0) + ladder.home - ladder.root))
      cost -= rules.blues ? SEVENTH_IN_BLUES : SEVENTH;
  });
  // The bent fifth is what tells a half-diminished chord from a minor one.
  const bent = ladder.fifth !== null && wrap(ladder.fifth - ladder.root) === 6 && segment.whole;
  if (bent && offsets.every((offset) => wrap(ladder.home + offset) !== ladder.fifth)) cost += 0.8;
  if (segment.fresh && offsets.every((offset) => wrap(offset) !== 0))
    cost += segment.whole ? UNROOTED : UNROOTED / 2;
  const silent = cell.silence / (segment.end - segment.start);
  cost += FULL * Math.max(0, rules.silence - silent) + onThird(rules, segment, ladder, offsets[0] ?? 0);
  return (
    cost +
    beginCost(rules, segment, cell, ladder, offsets) +
    shapeCost(rules, segment, cell, ladder, offsets) +
    movedCost(offsets)
  );
}

/** Over the same chord a bar may begin on another tone; on the third it sounds like a wrong entrance in a riff. */
const onThird = ({ manner }: NodeRules, { fresh }: Segment, { third }: Ladder, first: number): number =>
  !fresh && manner === 'riff' && third !== null && wrap(first) === third ? ON_THIRD : 0;

/** How a chord begins: on its bass note, on the beat, unless it goes on. */
function beginCost(
  rules: NodeRules,
  segment: Segment,
  cell: Cell,
  ladder: Ladder,
  offsets: readonly number[],
): number {
  const first = offsets[0] ?? 0;
  const onHome = wrap(first) === 0;
  let cost = 0;
  if (!onHome && segment.fresh) {
    const third = ladder.third !== null && wrap(first) === ladder.third;
    const silent = cell.notes[0]?.start !== segment.start;
    cost += (third ? 1.4 : 2) * (silent ? (rules.level > 2 ? 0.5 : 2) : 1) + 0.6;
  }
  if (segment.opensSection && (!onHome || cell.notes[0]?.start !== 0)) cost += onHome ? 0.6 : 1.6;
  if (segment.half === 'second' && cell.notes[0]?.start !== segment.start && segment.fresh) cost += 1.2;
  if (rules.manner === 'walk' && segment.whole && segment.fresh && first < 0) cost += 1;
  return cost;
}

/** What a walk does not like: notes struck again, the root on one and three, worst with its neighbour between. */
function walkCost({ level }: NodeRules, segment: Segment, cell: Cell, offsets: readonly number[]): number {
  const cost = 0.35 * cell.contour.roles.filter(({ kind }) => kind === 'repeat').length;
  if (level < 2) return cost;
  const at = (beats: number) => offsets[cell.notes.findIndex((note) => note.start === beats * segment.unit)];
  const [one, two, three] = [at(0), at(1), at(2)];
  if (one === undefined || one !== three) return cost;
  return cost + (two !== undefined && Math.abs(two - one) <= 2 ? TREADING : BACK_ON_THREE);
}

/** There and back between the second pitch and two others, as in root, fifth, third, fifth. */
export function isDrill([first, second, third, fourth]: readonly number[]): boolean {
  if (first === undefined || second === undefined || second !== fourth) return false;
  return second !== first && second !== third && Math.abs(second - first) !== 12;
}

/** Whether a cell is silent on the last beat of its bar, and another chord comes. */
function leavesOff({ bar, end, unit, changes }: Segment, { notes }: Cell): boolean {
  const last = notes.at(-1);
  return changes && end === bar.ticks && (last ? last.start + last.duration : 0) <= end - unit;
}

/**
 * What moves within a bar are worth or cost: a step, going on the same way, a leap of a fifth and more that is no octave
 * (hand-set, after what readers marked high and low: `counted-motion.ts`).
 */
const STEPPED = 0.6;
const ONWARD = 0.54;
const LEAPT = 0.8;

function movedCost(offsets: readonly number[]): number {
  const { stepwise, onward, leaps } = countMoves(offsets);
  return leaps * LEAPT - stepwise * STEPPED - onward * ONWARD;
}

/** Root, seventh, fifth and third on their way down. */
const isFall = (ladder: Ladder, offsets: readonly number[]): boolean => {
  const degrees = offsets.slice(0, 4).map((offset) => wrap(ladder.home + offset - ladder.root));
  const falls = offsets.slice(1, 4).every((offset, index) => offset < (offsets[index] ?? 0));
  return (
    falls &&
    degrees[0] === 0 &&
    (degrees[1] ?? 0) >= 10 &&
    degrees[2] === 7 &&
    [3, 4].includes(degrees[3] ?? 0)
  );
};

/** What tones other than the root cost that are struck again, which is filler; a push before the bar's middle is none. */
const struckAgain = (
  { unit }: Segment,
  { notes }: Cell,
  ladder: Ladder,
  offsets: readonly number[],
): number =>
  TONE_AGAIN *
  offsets.filter((offset, index) => {
    const again =
      offset === offsets[index - 1] && wrap(offset) !== 0 && ladder.tones[wrap(ladder.home + offset)];
    const pushed = ((notes[index - 1]?.start ?? 0) / unit) % 1 !== 0 && index === 2;
    return again && !pushed;
  }).length;

/** What is heard too often costs: drills, the fall through the seventh, filler. */
function wornCost(
  { level }: NodeRules,
  segment: Segment,
  cell: Cell,
  ladder: Ladder,
  offsets: readonly number[],
): number {
  const filler = level === 1 || level === 2 ? struckAgain(segment, cell, ladder, offsets) : 0;
  return (isDrill(offsets) ? DRILL : 0) + (isFall(ladder, offsets) ? FALL : 0) + filler;
}

/** What a bar costs that nobody would sing: no step in it, no third; a note that leads may still bring either. */
function unsungCost({ level }: NodeRules, { contour }: Cell, ladder: Ladder, offsets: readonly number[]) {
  const open = contour.leads > 0 ? 0.5 : 1;
  if (offsets.length + contour.leads < 3 || isPumped(offsets)) return 0;
  const moves = offsets.slice(1).map((offset, index) => Math.abs(offset - (offsets[index] ?? offset)));
  const steps = level < 3 || moves.some((move) => move === 1 || move === 2);
  const third = level < 2 || ladder.third === null;
  const told = third || offsets.some((offset) => wrap(offset) === ladder.third);
  return open * ((steps ? 0 : STEPLESS) + (told ? 0 : BARE));
}

/** An easy line has few ways to lead beside that beat. */
const unledCost = ({ level }: NodeRules, { slot }: Contour): number =>
  slot === 'C' ? UNLED_BREATH : level <= EASY ? UNLED_EASY : UNLED;

function shapeCost(
  rules: NodeRules,
  segment: Segment,
  cell: Cell,
  ladder: Ladder,
  offsets: readonly number[],
): number {
  let cost = 0;
  const { contour } = cell;
  if (leavesOff(segment, cell)) cost += unledCost(rules, contour);
  if (!segment.whole) return cost;
  cost += wornCost(rules, segment, cell, ladder, offsets) + unsungCost(rules, cell, ladder, offsets);
  if (joltsAtOnce(offsets)) cost += 1.1;
  if (rules.level <= 2 && octavesIn(offsets) > 0 && octavesIn(offsets) < PUMPING) cost += 0.8;
  if (rules.manner === 'walk') cost += walkCost(rules, segment, cell, offsets);
  if (rules.level >= 1 && offsets.length > 1 && offsets.every((offset) => offset === offsets[0]))
    cost += rules.manner === 'walk' && offsets.length > 2 ? HAMMERED : contour.leads === 0 ? 1.8 : 0.4;
  // Early lines are as rich as their level allows.
  if (rules.level <= 2) cost += 0.5 * Math.max(0, rules.level - cell.level);
  else if (cell.level < 2) cost += 0.5;
  return cost;
}
