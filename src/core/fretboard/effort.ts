import { countedInWords, type Fret, listed } from '../base';
import { handSpan } from './neck';
import { romanNumeral } from './roman';
import type { FingeredNote, HandSettings, Instrument } from './types';

/** What a stretch of fingering asks of the hand, in things that can be counted. */
export interface Effort {
  /** Hand positions of the fretted notes, each once, in the order they come. */
  readonly positions: readonly Fret[];
  /** Changes of position, those into and out of the stretch included. */
  readonly shifts: number;
  /** Pairs of notes in one position wider apart than the comfortable span. */
  readonly stretches: number;
  readonly openStrings: number;
  /** Strings crossed, all in all. */
  readonly crossings: number;
}

/** A stretch of fingering with the notes around it, null at the ends of a line that is played once. */
export interface Passage {
  readonly before: FingeredNote | null;
  readonly notes: readonly FingeredNote[];
  readonly after: FingeredNote | null;
}

export function effortOf(passage: Passage, instrument: Instrument, hand: HandSettings): Effort {
  const { before, notes: inside, after } = passage;
  const around = [before, ...inside, after].filter((note) => note !== null);
  const pairs = around.slice(1).flatMap((to, index) => {
    const from = around[index];
    return from === undefined ? [] : [{ from, to }];
  });
  const isStretch = (from: FingeredNote, to: FingeredNote): boolean =>
    from.finger !== 0 &&
    to.finger !== 0 &&
    from.position === to.position &&
    handSpan(from.fret, to.fret, instrument.scaleLength) > hand.comfortableSpan;
  return {
    positions: [...new Set(inside.filter(({ finger }) => finger !== 0).map(({ position }) => position))],
    shifts: pairs.filter(({ from, to }) => from.position !== to.position).length,
    stretches: pairs.filter(({ from, to }) => isStretch(from, to)).length,
    openStrings: inside.filter(({ finger }) => finger === 0).length,
    crossings: pairs.reduce((sum, { from, to }) => sum + Math.abs(from.string - to.string), 0),
  };
}

const shiftCount = (count: number): string => countedInWords(count, 'shift');
const stretchCount = (count: number): string => countedInWords(count, 'stretch', 'stretches');
const openCount = (count: number): string => countedInWords(count, 'open string');

/** One sentence: `Stays in position V: no shift, one stretch.` */
export function describeEffort(effort: Effort): string {
  const parts = [shiftCount(effort.shifts), stretchCount(effort.stretches)];
  if (effort.openStrings > 0 && effort.positions.length > 0) parts.push(openCount(effort.openStrings));
  return `${whereabouts(effort)}: ${parts.join(', ')}.`;
}

function whereabouts({ positions, openStrings, shifts }: Effort): string {
  const numerals = positions.map(romanNumeral);
  if (numerals.length === 0) return openStrings === 1 ? 'The open string' : 'Open strings only';
  if (numerals.length > 1) return `Positions ${listed(numerals)}`;
  return `${shifts === 0 ? 'Stays in' : 'In'} position ${numerals.join()}`;
}

/** One sentence: what this way saves and costs against another one; '' where every count is the same. */
export function compareEfforts(effort: Effort, against: Effort): string {
  const saved: string[] = [];
  const spent: string[] = [];
  for (const [difference, words] of [
    [effort.shifts - against.shifts, shiftCount],
    [effort.stretches - against.stretches, stretchCount],
    [effort.openStrings - against.openStrings, openCount],
    [effort.crossings - against.crossings, (count: number) => countedInWords(count, 'string crossing')],
  ] as const) {
    if (difference < 0) saved.push(words(-difference));
    if (difference > 0) spent.push(words(difference));
  }
  if (saved.length === 0 && spent.length === 0) return '';
  if (spent.length === 0) return `Saves ${listed(saved)}.`;
  if (saved.length === 0) return `Costs ${listed(spent)}.`;
  return `Saves ${listed(saved)}; costs ${listed(spent)}.`;
}
