import type { LeadWish } from '../techniques/types';
import { type Ladder, scaleSteps } from './ladder';

/** What a level and the teacher's techniques let leads do. */
export interface LeadRules {
  readonly level: number;
  /** Scale notes outside the chord. */
  readonly steps: boolean;
  /** Half steps from outside the scale, and the target's dominant. */
  readonly approaches: boolean;
  /** Whether a chromatic note may last a beat. */
  readonly longChromatics: boolean;
  readonly walk: boolean;
  readonly low: number;
  readonly high: number;
  readonly onNeck: readonly boolean[];
  /** What the bar should show and a lead can bring. */
  readonly wants: ReadonlySet<LeadWish>;
  /** Whether a leap of an octave is allowed. */
  readonly octaves: boolean;
}

/** Where a lead goes: the first note of what comes next, and its chord. */
export interface Target {
  readonly midi: number;
  readonly ladder: Ladder;
  readonly changes: boolean;
  /** It begins after a rest, so nothing can be tied to it. */
  readonly late: boolean;
}

export type LeadKind =
  | 'step'
  | 'half step'
  | 'dominant'
  | 'chord tone'
  | 'run'
  | 'enclosure'
  | 'chromatic run'
  | 'dominant and step'
  | 'tone and step'
  | 'arpeggio and step'
  | 'early'
  | 'stay';

export interface LeadWay {
  readonly kind: LeadKind;
  readonly pitches: readonly number[];
  readonly cost: number;
}

/** What a short note outside the scale costs in a riff: once in a while it leads, in every bar it is a tic (hand-set). */
const CHROMATIC = 0.1;

const wrap = (midi: number): number => ((midi % 12) + 12) % 12;

/** What moving between two notes inside a bar costs, by half steps (hand-set). */
const MOTION = [1.6, 0, 0, 0.05, 0.1, 0.4, 1.9, 0.75, 2.6, 2.8, 3.4, 3.6, 3] as const;
const motionCost = (from: number, to: number): number => MOTION[Math.abs(to - from)] ?? 6;

/** What a lead costs that strikes the note before once more, beside the move itself (hand-set). */
const STRUCK_AGAIN = { walk: 1.8, riff: 1 } as const;

/** What a whole step into another chord costs beside a half step, which pulls (hand-set). */
const WHOLE_STEP = 0.2;

/**
 * What going from the last note into the next chord's first costs (hand-set): a half step is free, a dominant cheap, a
 * repeated note or a sixth dear.
 */
// biome-ignore lint/complexity/noExcessiveCognitiveComplexity: a table of cases, read from top to bottom
export function joinCost(from: number, target: Target, rests: boolean): number {
  const distance = Math.abs(target.midi - from);
  const dominant = wrap(from - target.ladder.home) === 7;
  const { changes } = target;
  let cost = 0;
  if (distance === 0) cost = changes ? 2.4 : 0.9;
  else if (distance <= 2) cost = changes && distance === 2 ? WHOLE_STEP : 0;
  else if (distance <= 4) cost = changes ? 1.4 : 0.35;
  else if (distance === 5) cost = dominant ? 1.2 : changes ? 1.8 : 0.8;
  else if (distance === 6) cost = changes ? 25 : 4;
  else if (distance === 7) cost = dominant ? 1.6 : changes ? 2.2 : 1;
  else if (distance <= 9) cost = 3;
  else if (distance <= 11) cost = 6;
  else if (distance === 12) cost = changes ? 3 : 1.8;
  else cost = 8;
  return rests ? cost * 0.7 : cost;
}

/** What a note outside the scale costs that leads into a rest: it pulls at nothing (hand-set). */
const HANGS = 1.6;

/** No lead costs less; none that comes early costs less than the second. */
export const LEAST_LEAD = -0.5;
export const LEAST_EARLY = -9;

/** An anticipation has no more notes than this. */
export const MOST_EARLY = 2;

interface Option {
  readonly kind: LeadKind;
  readonly pitches: readonly number[];
  readonly base: number;
}

function oneNote(
  rules: LeadRules,
  to: number,
  up: number,
  down: number,
  tones: readonly number[],
  dominants: readonly number[],
): Option[] {
  return [
    { kind: 'step', pitches: [up], base: 0 },
    { kind: 'step', pitches: [down], base: 0 },
    ...dominants.map((pitch): Option => ({ kind: 'dominant', pitches: [pitch], base: 0.7 })),
    ...tones
      .filter((pitch) => pitch !== to && Math.abs(pitch - to) <= 7)
      .map(
        (pitch): Option => ({
          kind: 'chord tone',
          pitches: [pitch],
          base: Math.abs(pitch - to) > 2 ? 0.6 : 0,
        }),
      ),
    ...(rules.approaches
      ? [
          { kind: 'half step' as const, pitches: [to - 1], base: 0 },
          { kind: 'half step' as const, pitches: [to + 1], base: 0.15 },
        ]
      : []),
  ];
}

// biome-ignore lint/complexity/noExcessiveCognitiveComplexity: a table of cases, read from top to bottom
function options(rules: LeadRules, count: number, cur: Ladder, to: number): Option[] {
  const scale = cur.scale.map((there, place) => there || place === wrap(to));
  const near = (steps: number): number => scaleSteps(scale, to, steps);
  const [up, down, up2, down2, up3, down3] = [near(1), near(-1), near(2), near(-2), near(3), near(-3)];
  const tones: number[] = [];
  for (let pitch = to - 9; pitch <= to + 9; pitch += 1) if (cur.tones[wrap(pitch)]) tones.push(pitch);
  const dominants = [to - 5, to + 7, to - 7, to + 5];
  if (count === 1) return oneNote(rules, to, up, down, tones, dominants);
  const both = [down, up];
  if (count === 2) {
    const found: Option[] = [
      { kind: 'run', pitches: [down2, down], base: 0 },
      { kind: 'run', pitches: [up2, up], base: 0 },
      { kind: 'enclosure', pitches: [up, down], base: 0.2 },
      { kind: 'enclosure', pitches: [down, up], base: 0.3 },
    ];
    for (const last of both) {
      for (const pitch of dominants.slice(0, 2))
        found.push({ kind: 'dominant and step', pitches: [pitch, last], base: 0.5 });
      for (const pitch of tones)
        if (Math.abs(pitch - to) >= 3 && Math.abs(pitch - to) <= 7)
          found.push({ kind: 'tone and step', pitches: [pitch, last], base: 0.3 });
    }
    for (const first of tones)
      for (const last of tones)
        if (last !== to && Math.abs(last - to) <= 5 && Math.abs(first - last) <= 7)
          found.push({
            kind: 'chord tone',
            pitches: [first, last],
            base: Math.abs(last - to) <= 2 ? 0.25 : 0.7,
          });
    if (rules.approaches) {
      found.push({ kind: 'chromatic run', pitches: [to - 2, to - 1], base: 0.1 });
      found.push({ kind: 'chromatic run', pitches: [to + 2, to + 1], base: 0.2 });
      found.push({ kind: 'enclosure', pitches: [up, to - 1], base: 0.2 });
      for (const pitch of tones)
        if (Math.abs(pitch - to) >= 3 && Math.abs(pitch - to) <= 7)
          found.push({ kind: 'half step', pitches: [pitch, to - 1], base: 0.35 });
    }
    return found;
  }
  const found: Option[] = [
    { kind: 'run', pitches: [down3, down2, down], base: 0 },
    { kind: 'run', pitches: [up3, up2, up], base: 0 },
    { kind: 'enclosure', pitches: [up2, up, down], base: 0.35 },
    { kind: 'enclosure', pitches: [down2, down, up], base: 0.45 },
  ];
  for (const one of tones)
    for (const two of tones)
      if (one !== two && Math.abs(one - two) >= 3 && Math.abs(one - two) <= 5 && Math.abs(two - to) <= 5)
        for (const last of [
          ...both,
          ...tones.filter((pitch) => pitch !== two && pitch !== to && Math.abs(pitch - to) <= 4),
        ])
          found.push({ kind: 'arpeggio and step', pitches: [one, two, last], base: 0.45 });
  if (rules.approaches) {
    found.push({ kind: 'chromatic run', pitches: [down3, to - 2, to - 1], base: 0.15 });
    found.push({ kind: 'chromatic run', pitches: [up3, to + 2, to + 1], base: 0.25 });
    found.push({ kind: 'enclosure', pitches: [up2, up, to - 1], base: 0.3 });
  }
  return found;
}

/** Whether a level's notes hold a pitch that leads. */
function allowed(rules: LeadRules, cur: Ladder, pitch: number): boolean {
  if (pitch < rules.low || pitch > rules.high || rules.onNeck[pitch] !== true) return false;
  const pitchClass = wrap(pitch);
  if (cur.tones[pitchClass]) {
    if (rules.level >= 3) return true;
    // Level 2 has the triad: no sixth, no seventh.
    if (rules.level === 2) return pitchClass === cur.home || wrap(pitchClass - cur.root) < 9;
    return (
      pitchClass === cur.home || (rules.level >= 1 && (pitchClass === cur.fifth || pitchClass === cur.root))
    );
  }
  if (rules.level < 3 || !rules.steps) return rules.approaches && cur.scale[pitchClass] !== true;
  return cur.scale[pitchClass] === true || rules.approaches;
}

/** A note outside the scale, or outside the chord where a leap enters it: what lasts, and what it may cost. */
// biome-ignore lint/complexity/noExcessiveCognitiveComplexity: a table of cases, read from top to bottom
function pitchCost(
  rules: LeadRules,
  cur: Ladder,
  target: Target,
  before: number,
  pitch: number,
  beats: number,
): number {
  const pitchClass = wrap(pitch);
  if (cur.tones[pitchClass]) return 0;
  let cost = !rules.approaches && Math.abs(pitch - before) > 2 ? 7 : 0;
  const outside = !cur.scale[pitchClass];
  // The other third of a chord rubs, of this one or of the one that comes.
  const thirdOf = (ladder: Ladder) => wrap(pitch - ladder.root) === (ladder.minorThird ? 4 : 3);
  if (outside && (thirdOf(cur) || thirdOf(target.ladder))) cost += 0.7;
  if (wrap(pitch - cur.root) === 8 && cur.minorThird && !rules.longChromatics) cost += 0.35;
  if (outside) {
    const borrowed = target.ladder.scale[pitchClass] === true;
    if (!rules.approaches) cost += 8;
    cost += rules.longChromatics ? 0.15 : beats <= 0.5 ? CHROMATIC : borrowed ? 0.8 : 2;
  }
  if (beats >= 1 && !(outside && rules.longChromatics)) {
    // Rule 1: entered and left by step. A half step above a chord tone grinds longest.
    if (Math.abs(pitch - before) > 2) cost += 2.4;
    if (!rules.longChromatics && (cur.tones[wrap(pitch - 1)] ?? false)) cost += 0.4;
    if (wrap(pitch - cur.root) === 6) cost += 0.6;
  } else if (beats >= 1 && Math.abs(pitch - before) > 5) cost += 0.6;
  if (beats >= 1.5) cost += 4;
  return cost;
}

/** Where the line stands before the lead: its last two different notes. */
export interface Standing {
  readonly last: number;
  readonly before: number | null;
}

/** The cheapest way to lead from where the line stands into every one of the targets. */
// biome-ignore lint/complexity/noExcessiveCognitiveComplexity: a table of cases, read from top to bottom
export function solveLead(
  rules: LeadRules,
  cur: Ladder,
  from: Standing,
  beats: readonly number[],
  targets: readonly Target[],
): LeadWay {
  const stay: LeadWay = { kind: 'stay', pitches: beats.map(() => from.last), cost: 6 };
  const [main] = targets;
  if (!main) return stay;
  let best: LeadWay = stay;
  const home = nearestHome(rules, cur, from.last);
  const found = options(rules, beats.length, cur, main.midi);
  if (home !== null) {
    found.push({
      kind: 'chord tone',
      pitches: beats.map((_, place) => (place === beats.length - 1 ? home : from.last)),
      base: 1.4,
    });
  }
  if (
    rules.wants.has('early') &&
    targets.length === 1 &&
    main.changes &&
    !main.late &&
    (rules.level >= 4 || cur.scale[wrap(main.midi)] === true)
  ) {
    for (const first of beats.length > 1
      ? [from.last, scaleSteps(cur.scale, main.midi, 1), scaleSteps(cur.scale, main.midi, -1)]
      : [0])
      if (beats.length <= MOST_EARLY)
        found.push({ kind: 'early', pitches: beats.length > 1 ? [first, main.midi] : [main.midi], base: -8 });
  }
  for (const option of found) {
    let cost = option.base + wantCost(rules, cur, from, option);
    let [last, before] = [from.last, from.before];
    for (let place = 0; place < option.pitches.length && cost < best.cost; place += 1) {
      const pitch = option.pitches[place] ?? last;
      const early = option.kind === 'early' && place === option.pitches.length - 1;
      if (!allowed(rules, cur, pitch) && !(early && rules.onNeck[pitch] === true))
        cost = Number.POSITIVE_INFINITY;
      const move = pitch - last;
      cost +=
        motionCost(last, pitch) + (early ? 0 : pitchCost(rules, cur, main, last, pitch, beats[place] ?? 1));
      if (before !== null) {
        if (Math.abs(last - before) >= 5 && Math.abs(move) >= 5 && move * (last - before) > 0) cost += 0.8;
        if (before === pitch) cost += rules.walk ? 0.9 : 1;
      }
      if (move === 0) cost += STRUCK_AGAIN[rules.walk ? 'walk' : 'riff'];
      if (Math.abs(move) === 12 && !rules.octaves) cost += 6;
      if (!cur.tones[wrap(last)] && place > 0 && Math.abs(move) > 4) cost += 1;
      [before, last] = [last, pitch];
    }
    if (cost >= best.cost) continue;
    for (const target of option.kind === 'early' ? [] : targets) {
      const step = Math.abs(target.midi - last);
      cost += joinCost(last, target, false) / (target === main ? 1 : 2);
      if (last === target.midi) cost += 1.5;
      if (target.late && !cur.tones[wrap(last)] && !cur.scale[wrap(last)]) cost += HANGS;
      if (wrap(last) === target.ladder.home && target.changes && last !== target.midi) cost += 2;
      if (!cur.tones[wrap(last)] && step > 2)
        cost += cur.scale[wrap(last)] || wrap(last - target.ladder.home) === 7 ? 1.2 : 4;
    }
    const prior = option.pitches.length > 1 ? (option.pitches.at(-2) ?? from.last) : from.last;
    if (option.pitches.length > 1 && last === from.last) cost += 0.6;
    if ((prior - last) * (last - main.midi) > 0 && Math.abs(prior - last) <= 4) cost -= 0.35;
    if (cost < best.cost) best = { kind: option.kind, pitches: option.pitches, cost };
  }
  return best;
}

/** What an option costs that shows nothing of what its bar should show. */
function wantCost(rules: LeadRules, cur: Ladder, from: Standing, option: Option): number {
  const [step, approach] = [rules.wants.has('step'), rules.wants.has('approach')];
  if (!step && !approach) return 0;
  let [stepping, approaching] = [false, false];
  option.pitches.forEach((pitch, place) => {
    const before = option.pitches[place - 1] ?? from.last;
    if (cur.tones[wrap(pitch)]) return;
    if (!cur.scale[wrap(pitch)] || Math.abs(pitch - before) > 2) approaching = true;
    else stepping = true;
  });
  return (step && !stepping ? 4 : 0) + (approach && !approaching ? 4 : 0);
}

function nearestHome(rules: LeadRules, cur: Ladder, from: number): number | null {
  let best: number | null = null;
  for (let pitch = from - 12; pitch <= from + 12; pitch += 1) {
    if (wrap(pitch) !== cur.home || pitch === from || !allowed(rules, cur, pitch)) continue;
    if (best === null || Math.abs(pitch - from) < Math.abs(best - from)) best = pitch;
  }
  return best;
}
