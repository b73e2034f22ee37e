import {
  barName,
  beatGroups,
  beatsOf,
  beatTicks,
  capitalised,
  isUneven,
  type Metre,
  type SpelledName,
} from '../base';
import { type Chord, formatChordIn, formatNameIn, type Naming } from '../theory';
import type { Demands } from './demands';
import type { Stretch } from './harmony';
import type { LevelLimits } from './level-limits';
import type { Neck } from './neck';
import type { Freedom } from './techniques/freedoms';
import type { LineRequest } from './types';

export interface BarModel {
  readonly index: number;
  readonly metre: Metre;
  readonly ticks: number;
  readonly beat: number;
  readonly stretches: readonly Stretch[];
  readonly opensSection: boolean;
  /** It is only the end of a bar. */
  readonly pickup: boolean;
  /** Written bars that can sound just before or just after this one: repeats, and the way round to the start. */
  readonly before: readonly number[];
  readonly after: readonly number[];
  readonly demands: Demands;
  /** How long there is a chord to play over, in ticks. */
  readonly chordTicks: number;
  /** Whether any stretch has a chord to play over. */
  readonly playable: boolean;
}

/** The chart as the line sees it. */
export interface LineModel {
  readonly request: LineRequest;
  readonly bars: readonly BarModel[];
  /** Written bars in the order of one round. */
  readonly order: readonly number[];
  readonly limits: LevelLimits;
  readonly neck: Neck;
  /** What the techniques of the whole line allow. */
  readonly freedoms: ReadonlySet<Freedom>;
}

/** The harmony at a tick of a bar. */
export function stretchAt(bar: BarModel, tick: number): Stretch | null {
  for (const stretch of bar.stretches) if (tick < stretch.end) return stretch;
  return bar.stretches.at(-1) ?? null;
}

/** The bars of a set, in its order; all bars where there is none. */
export function barsNear(model: LineModel, near?: ReadonlySet<number>): readonly BarModel[] {
  if (!near) return model.bars;
  return [...near].flatMap((index) => model.bars[index] ?? []);
}

/** Whether the harmony changes on the way from one bar into another. */
export const changesBetween = (from: BarModel, to: BarModel): boolean =>
  from.stretches.at(-1)?.label !== to.stretches[0]?.label;

/** Whether a bar begins with another chord than any bar before it ended with. */
export const changesAtStart = (model: LineModel, bar: BarModel): boolean =>
  bar.before.some((index) => {
    const before = model.bars[index];
    return before !== undefined && changesBetween(before, bar);
  });

/**
 * Beats on which a fourth would grate: one and three in four, one and four in five (three and two), the long one in
 * 7/8, one elsewhere.
 */
export const isStrongBeat = (bar: BarModel, tick: number): boolean =>
  tick === 0 ||
  (bar.metre.count % 2 === 0 && tick === bar.ticks / 2 && bar.ticks >= bar.beat * 2) ||
  tick === secondGroup(bar.metre);

/** Where the second group of a bar begins that is divided unevenly; null elsewhere. */
function secondGroup(metre: Metre): number | null {
  if (isUneven(metre)) return beatsOf(metre).at(-1)?.start ?? null;
  const [first = 0, second] = beatGroups(metre);
  return second === undefined ? null : first * beatTicks(metre);
}

/** The number of a bar as the chart counts it. */
export const barNumber = (model: LineModel, index: number): number =>
  model.request.chart.bars[index]?.number ?? index + 1;

/** `bar 3`, or `the pickup`. */
export const barPhrase = (model: LineModel, index: number): string => barName(barNumber(model, index));

/** `Bar 3`, or `The pickup`: for the beginning of a sentence. */
export const barHeading = (model: LineModel, index: number): string => capitalised(barPhrase(model, index));

/** How what is said about the line names notes. */
export const namingOf = ({ request }: LineModel): Naming => request.noteNames ?? 'letters';

/** A note's name in what is said about the line. */
export const nameText = (model: LineModel, name: SpelledName): string => formatNameIn(namingOf(model), name);

/** A chord's symbol in what is said about the line. */
export const chordText = (model: LineModel, chord: Chord): string => formatChordIn(namingOf(model), chord);

/** Whether the level of the line knows only roots and fifths, and cannot help how the chords' roots lie. */
export const knowsRootsOnly = ({ limits }: LineModel): boolean => !limits.steps.has(3);
