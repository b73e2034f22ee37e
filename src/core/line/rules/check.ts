import { type HeardLine, hearLine } from '../hearing';
import { type BarModel, barHeading, type LineModel } from '../model';
import { modelOf } from '../read-request';
import type { Tone } from '../tones';
import type { Breach, LineNotes, LineRequest } from '../types';
import { type Entry, type Exit, entryOf, exitOf } from './ends';
import type { RuleNumber } from './numbers';
import { RULE_ROWS, RULES } from './table';
import type { Meeting, Rule, Whole } from './types';

/** Broken rules are kept as bits, so that the composer can ask thousands of times. */
const bitOf = (rule: Rule): number => 1 << rule.number;

const rulesIn = (bits: number): readonly Rule[] => RULE_ROWS.filter((rule) => (bits & bitOf(rule)) !== 0);

type Test = 'alone' | 'meeting' | 'tied' | 'whole';

/** The rows that have a test of a kind, with that test at hand. */
const testsOf = <Kind extends Test>(kind: Kind) =>
  RULE_ROWS.flatMap((rule) => {
    const test = rule[kind];
    return test === null ? [] : [{ bit: bitOf(rule), rule, test }];
  });

const ALONE = testsOf('alone');
const MEETING = testsOf('meeting');
const TIED = testsOf('tied');
const WHOLE = testsOf('whole');

/** Breaches that one bar commits by itself, as bits. */
export function soloBreaches(model: LineModel, bar: BarModel, tones: readonly Tone[]): number {
  const at = { model, bar, tones };
  let bits = 0;
  for (const { bit, test } of ALONE) if (test(at)) bits |= bit;
  return bits;
}

/** The rules that part of a bar is held to, as bits. */
export const HELD_IN_PARTS = ALONE.reduce((bits, { bit, rule }) => (rule.inParts ? bits | bit : bits), 0);

/** Breaches where one bar goes over into another, as bits. */
export function meetingBreaches(
  model: LineModel,
  from: BarModel,
  exit: Exit,
  to: BarModel,
  entry: Entry,
): number {
  const at: Meeting = { model, from, exit, to, entry };
  const isTied = exit.last.tiedOn && entry.first.start === 0 && entry.first.midi === exit.last.midi;
  let bits = 0;
  for (const { bit, test } of isTied ? TIED : MEETING) if (test(at)) bits |= bit;
  return bits;
}

function meetingBits(model: LineModel, heard: HeardLine, from: number, to: number): number {
  const [one, other] = [model.bars[from], model.bars[to]];
  const exit = exitOf(heard[from] ?? []);
  const entry = entryOf(heard[to] ?? []);
  return one && other && exit && entry ? meetingBreaches(model, one, exit, other, entry) : 0;
}

/** Every breach of the rules in a heard line, each rule once a bar, in order of bars. */
export function findBreaches(model: LineModel, heard: HeardLine): readonly Breach[] {
  const byBar = model.bars.map((bar) =>
    bar.after.reduce(
      (bits, next) => bits | meetingBits(model, heard, bar.index, next),
      soloBreaches(model, bar, heard[bar.index] ?? []),
    ),
  );
  for (const { bit, test } of WHOLE) {
    for (const place of test.places({ model, heard })) byBar[place] = (byBar[place] ?? 0) | bit;
  }
  return byBar.flatMap((bits, bar) => rulesIn(bits).map((rule) => breachOf({ model, heard }, rule, bar)));
}

/** How many times a bar and those beside it break rules: what other notes in this bar can change. */
export function breachesNear(model: LineModel, heard: HeardLine, index: number): number {
  const bar = model.bars[index];
  if (!bar) return 0;
  let count = bitCount(soloBreaches(model, bar, heard[index] ?? []));
  for (const next of bar.after) count += bitCount(meetingBits(model, heard, index, next));
  for (const other of bar.before) count += bitCount(meetingBits(model, heard, other, index));
  const near = new Set([index, ...bar.before, ...bar.after]);
  for (const { test } of WHOLE) count += test.places({ model, heard }, near).length;
  return count;
}

function bitCount(bits: number): number {
  let count = 0;
  for (let left = bits; left !== 0; left &= left - 1) count += 1;
  return count;
}

function breachOf(line: Whole, rule: Rule, bar: number): Breach {
  const { heard, mend } = wordsInBar(line, rule.number, bar);
  return { rule: rule.number, bar, message: `${barHeading(line.model, bar)}: ${heard}; ${mend}.` };
}

/** Every rule over a whole line: empty when a good teacher would not wince. */
export function checkLine(request: LineRequest, line: LineNotes): readonly Breach[] {
  const model = modelOf(request);
  const heard = hearLine(model, line);
  return heard.every((bar) => bar.length === 0) ? [] : findBreaches(model, heard);
}

/** The rules about a single bar only, whatever its neighbours play. */
export function barBreaches(request: LineRequest, line: LineNotes, barIndex: number): readonly Breach[] {
  const model = modelOf(request);
  const bar = model.bars[barIndex];
  if (!bar) return [];
  const heard = hearLine(model, line);
  const bits = soloBreaches(model, bar, heard[barIndex] ?? []);
  return rulesIn(bits).map((rule) => breachOf({ model, heard }, rule, barIndex));
}

/** What is heard where a rule is broken, and what mends it, as parts of a sentence. */
export const wordsOfRule = (rule: RuleNumber): Pick<Rule, 'heard' | 'mend'> => RULES[rule];

/** The same of a bar where the rule is broken: of a rule that holds several things, which of them it is. */
export function wordsInBar(line: Whole, rule: RuleNumber, bar: number): Pick<Rule, 'heard' | 'mend'> {
  const { heard, heardIn, mend } = RULES[rule];
  const at = line.model.bars[bar];
  return { heard: heardIn === undefined || at === undefined ? heard : heardIn(line, at), mend };
}

/**
 * What an idea has to own up to beside its neighbours, one part of a sentence for each rule that it breaks: those
 * broken in the bar and on the way out of it first, then those on the way in.
 */
export function cautionsAround(model: LineModel, heard: HeardLine, index: number): readonly string[] {
  const bar = model.bars[index];
  if (!bar) return [];
  let own = soloBreaches(model, bar, heard[index] ?? []);
  let entering = 0;
  for (const other of bar.after) own |= meetingBits(model, heard, index, other);
  for (const other of bar.before) entering |= meetingBits(model, heard, other, index);
  for (const { bit, test } of WHOLE) if (test.concerns({ model, heard }, bar)) own |= bit;
  return [
    ...rulesIn(own).flatMap(({ caution }) => caution.own ?? []),
    ...rulesIn(entering).flatMap(({ caution }) => caution.entering ?? caution.own ?? []),
  ];
}
