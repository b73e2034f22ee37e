import { barTicks, beatTicks, midiOf, pitchClassOf, remembered } from '../base';
import { type Chart, type HarmonySpan, neighboursOf, playOrder } from '../chart';
import type { Chord } from '../theory';
import { demandsOf } from './asked';
import type { Demands, Reach } from './demands';
import { mergedSpans, stretchOf } from './harmony';
import { limitsIn } from './level';
import type { LevelLimits } from './level-limits';
import type { LineModel } from './model';
import { neckOf } from './neck';
import { freedomsOf } from './techniques/table';
import type { LineRequest } from './types';

/** Lowest note of a beginner's line: the open E string (common practice, no source). */
const LOWEST_MIDI = 28;

/** The bars that can sound beside each bar of a line that is looped: from its end it goes round to the start. */
function neighboursRound(chart: Chart, order: readonly number[]) {
  const { before, after } = neighboursOf(chart);
  const [first, last] = [order[0], order.at(-1)];
  const round = (bars: readonly (number | null)[], end: number | undefined): readonly number[] => [
    ...new Set([
      ...bars.flatMap((bar) => bar ?? []),
      ...(bars.includes(null) && end !== undefined ? [end] : []),
    ]),
  ];
  return { before: before.map((bars) => round(bars, last)), after: after.map((bars) => round(bars, first)) };
}

/** The pitch classes that a chord can begin with: its root or bass note, and its fifth where the level has fifths. */
function beginningsOf(chord: Chord, limits: LevelLimits): readonly number[] {
  const fifth = limits.steps.has(5) ? chord.tones.find(({ degree }) => degree.step === 5) : undefined;
  return [pitchClassOf(chord.bass), ...(fifth ? [pitchClassOf(fifth.name)] : [])];
}

const chordOf = ({ harmony }: HarmonySpan): Chord | null => (harmony.kind === 'chord' ? harmony.chord : null);

/** Which chords around another one tell its scale, in the order of their weight: the next, the one before, one further. */
const NEAR = [1, -1, 2, -2] as const;

/** What the level and the instrument of a request leave of the notes: by step and speed, by pitch, and on the neck. */
export function boundsOf(
  request: LineRequest,
): Pick<LineModel, 'limits' | 'neck'> & Pick<Reach, 'low' | 'high'> {
  const limits = limitsIn(request.level, request.feel.bassRole);
  const lowestOpen = Math.min(...request.instrument.openStrings.map((pitch) => midiOf(pitch)), 127);
  const low = Math.max(LOWEST_MIDI, lowestOpen);
  const high = Math.max(limits.highestMidi, low + 15);
  return { limits, low, high, neck: neckOf(request, limits.highestFret, low, high) };
}

/** Reads a request once, so that everything after works with plain numbers. */
export function modelOf(request: LineRequest): LineModel {
  const { chart, key } = request;
  const order = playOrder(chart);
  const { before, after } = neighboursRound(chart, order);
  const starts = new Set(chart.sections.map((section) => section.start));
  const { limits, low, high, neck } = boundsOf(request);
  const merged = chart.bars.map((bar) => mergedSpans(bar.spans));
  const chords = merged.flat().map(chordOf);
  let placed = 0;
  const places = merged.map((spans) => {
    placed += spans.length;
    return placed - spans.length;
  });
  const whole = { low, high, onNeck: neck.onNeck };
  const known = new Map<string, Demands>();
  /** What is asked of a bar; without aims it depends on the beginnings of its chords alone. */
  const demandsIn = (bar: number, begins: readonly (readonly number[])[]): Demands => {
    const make = () => demandsOf(request, bar, begins, whole);
    return request.aims?.length
      ? make()
      : remembered(known, begins.map((each) => each.join()).join(';'), make);
  };
  return {
    request,
    order,
    limits,
    neck,
    freedoms: freedomsOf(request.techniques),
    bars: chart.bars.map((bar, index) => {
      const begins = bar.spans.flatMap(({ harmony }) =>
        harmony.kind === 'chord' ? [beginningsOf(harmony.chord, limits)] : [],
      );
      const demands = demandsIn(index, begins);
      const stretches = (merged[index] ?? []).map((span, place) => {
        const at = (places[index] ?? 0) + place;
        const near = NEAR.map((away) => chords[(at + away + 2 * chords.length) % chords.length] ?? null);
        return stretchOf(span, place, bar.key ?? key, demands, near);
      });
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
        chordTicks: stretches.reduce((sum, { start, end, chord }) => sum + (chord ? end - start : 0), 0),
        playable: stretches.some((stretch) => stretch.chord !== null),
      };
    }),
  };
}
