import { barTicks, beatTicks, type Metre, midiOf, pitchClassOf, type SpelledName } from '../base';
import { playOrder } from '../chart';
import { type Chord, formatChordIn, formatNameIn, type Naming } from '../theory';
import { type Demands, demandsOf } from './demands';
import { mergedSpans, type Stretch, stretchOf } from './harmony';
import { type LevelLimits, levelLimits } from './level';
import { type Neck, neckOf } from './neck';
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
}

/** Lowest note of a beginner's line: the open E string (common practice, no source). */
const LOWEST_MIDI = 28;

function neighbours(order: readonly number[], count: number): { before: number[][]; after: number[][] } {
  const before: number[][] = Array.from({ length: count }, () => []);
  const after: number[][] = Array.from({ length: count }, () => []);
  order.forEach((bar, place) => {
    const next = order[(place + 1) % order.length] ?? bar;
    if (!after[bar]?.includes(next)) after[bar]?.push(next);
    if (!before[next]?.includes(bar)) before[next]?.push(bar);
  });
  return { before, after };
}

/** The pitch classes that a chord can begin with: its root or bass note, and its fifth where the level has fifths. */
function beginningsOf(chord: Chord, limits: LevelLimits): readonly number[] {
  const fifth = limits.steps.has(5) ? chord.tones.find(({ degree }) => degree.step === 5) : undefined;
  return [pitchClassOf(chord.bass), ...(fifth ? [pitchClassOf(fifth.name)] : [])];
}

/** Reads a request once, so that everything after works with plain numbers. */
export function modelOf(request: LineRequest): LineModel {
  const { chart, key } = request;
  const order = playOrder(chart);
  const { before, after } = neighbours(order, chart.bars.length);
  const starts = new Set(chart.sections.map((section) => section.start));
  const limits = levelLimits(request.level);
  const lowestOpen = Math.min(...request.instrument.openStrings.map((pitch) => midiOf(pitch)), 127);
  const low = Math.max(LOWEST_MIDI, lowestOpen);
  const high = Math.max(limits.highestMidi, low + 15);
  const neck = neckOf(request, limits.highestFret, low, high);
  return {
    request,
    order,
    limits,
    neck,
    bars: chart.bars.map((bar, index) => {
      const begins = bar.spans.flatMap(({ harmony }) =>
        harmony.kind === 'chord' ? [beginningsOf(harmony.chord, limits)] : [],
      );
      const demands = demandsOf(request, index, begins, { low, high, onNeck: neck.onNeck });
      const stretches = mergedSpans(bar.spans).map((span, place) =>
        stretchOf(span, place, bar.key ?? key, demands),
      );
      return {
        index,
        metre: bar.metre,
        ticks: barTicks(bar.metre),
        beat: beatTicks(bar.metre),
        stretches,
        opensSection: index === 0 || starts.has(index),
        pickup: bar.pickup,
        demands,
        before: before[index] ?? [],
        after: after[index] ?? [],
        playable: stretches.some((stretch) => stretch.chord !== null),
      };
    }),
  };
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

/** Beats on which a fourth would grate: one and three in four, one elsewhere, each dotted beat in compound time. */
export const isStrongBeat = (bar: BarModel, tick: number): boolean =>
  tick === 0 || (bar.metre.count % 2 === 0 && tick === bar.ticks / 2 && bar.ticks >= bar.beat * 2);

/** The number of a bar as the chart counts it. */
export const barNumber = (model: LineModel, index: number): number =>
  model.request.chart.bars[index]?.number ?? index + 1;

/** How what is said about the line names notes. */
export const namingOf = ({ request }: LineModel): Naming => request.noteNames ?? 'letters';

/** A note's name in what is said about the line. */
export const nameText = (model: LineModel, name: SpelledName): string => formatNameIn(namingOf(model), name);

/** A chord's symbol in what is said about the line. */
export const chordText = (model: LineModel, chord: Chord): string => formatChordIn(namingOf(model), chord);
