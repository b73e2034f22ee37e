import {
  barTicks,
  beatTicks,
  halfStepsAboveC,
  type Metre,
  midiOf,
  pitchClassOf,
  type SpelledName,
  type SpelledPitch,
} from '../base';
import { type Chart, type Harmony, type HarmonySpan, playOrder } from '../chart';
import { type Chord, degreeOf, type Key, scaleFor } from '../theory';
import { type Demands, demandsOf } from './demands';
import { type LevelLimits, levelLimits } from './level';
import type { LineRequest } from './types';

/** A step of the scale above a chord's root. */
export interface StepTone {
  readonly name: SpelledName;
  /** Half steps above the root, 0–11. */
  readonly halfSteps: number;
  readonly member: boolean;
}

/** A stretch of one harmony inside a bar, with everything that is asked about it often. */
export interface Stretch {
  readonly index: number;
  readonly start: number;
  readonly end: number;
  /** Tells harmonies apart: the chord's symbol, or what was written. */
  readonly label: string;
  readonly chord: Chord | null;
  /** Tonic and mode of the key in force. */
  readonly key: Key;
  readonly rootClass: number;
  /** The note that belongs under the chord: the slash bass, else the root. */
  readonly homeClass: number;
  readonly home: SpelledName | null;
  readonly demands: Demands;
  /** Seven steps up from the root, null where the scale leaves one out; empty without a chord. */
  readonly steps: readonly (StepTone | null)[];
  /** By half steps above the root: whether the note belongs to the chord (the slash bass does). */
  readonly members: readonly boolean[];
}

export interface BarModel {
  readonly index: number;
  readonly metre: Metre;
  readonly ticks: number;
  readonly beat: number;
  readonly stretches: readonly Stretch[];
  readonly opensSection: boolean;
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
  /** Pitch classes that have no place within the level's frets and are taken higher up. */
  readonly beyondFrets: ReadonlySet<number>;
}

/** Lowest note of a beginner's line: the open E string (common practice, no source). */
const LOWEST_MIDI = 28;

export const classAbove = (midi: number, rootClass: number): number => (((midi - rootClass) % 12) + 12) % 12;

/** A name as a pitch at a MIDI number of its class; null when the number belongs to another name. */
export function pitchAt(name: SpelledName, midi: number): SpelledPitch | null {
  const octaves = (midi - halfStepsAboveC(name)) / 12 - 1;
  return Number.isInteger(octaves)
    ? { letter: name.letter, alteration: name.alteration, octave: octaves }
    : null;
}

const labelOf = (harmony: Harmony): string =>
  harmony.kind === 'chord' ? harmony.chord.symbol : harmony.kind === 'unknown' ? `? ${harmony.text}` : 'N.C.';

const STEPS = [1, 2, 3, 4, 5, 6, 7] as const;

function stepsOf(chord: Chord, key: Key): readonly (StepTone | null)[] {
  const root = pitchClassOf(chord.root);
  const names = scaleFor(chord, key).names;
  return STEPS.map((step) => {
    const tone = chord.tones.find(({ degree }) => degree.step === step);
    const name = tone?.name ?? names.find((other) => degreeOf(other, chord.root).step === step);
    return name
      ? { name, halfSteps: classAbove(pitchClassOf(name), root), member: tone !== undefined }
      : null;
  });
}

/** Steps by chord and key for charts that are still in use: a chart is asked about again and again. */
const stepsByChart = new WeakMap<Chart, Map<string, readonly (StepTone | null)[]>>();

function rememberedSteps(chart: Chart): typeof stepsOf {
  const known = stepsByChart.get(chart) ?? new Map<string, readonly (StepTone | null)[]>();
  stepsByChart.set(chart, known);
  return (chord, key) => {
    const text = `${chord.symbol} ${key.tonic.letter}${key.tonic.alteration}${key.mode}`;
    const steps = known.get(text) ?? stepsOf(chord, key);
    known.set(text, steps);
    return steps;
  };
}

function stretchOf(
  span: HarmonySpan,
  index: number,
  key: Key,
  demands: Demands,
  stepsFor: typeof stepsOf,
): Stretch {
  const chord = span.harmony.kind === 'chord' ? span.harmony.chord : null;
  const rootClass = chord ? pitchClassOf(chord.root) : 0;
  const members = Array.from({ length: 12 }, () => false);
  for (const tone of chord?.tones ?? []) members[classAbove(pitchClassOf(tone.name), rootClass)] = true;
  if (chord) members[classAbove(pitchClassOf(chord.bass), rootClass)] = true;
  return {
    index,
    start: span.start,
    end: span.start + span.duration,
    label: labelOf(span.harmony),
    chord,
    key,
    demands,
    rootClass,
    homeClass: chord ? pitchClassOf(chord.bass) : 0,
    home: chord?.bass ?? null,
    steps: chord ? stepsFor(chord, key) : [],
    members,
  };
}

/** Joins neighbouring spans of the same harmony: a chord written twice in a bar is one chord to the line. */
function mergedSpans(spans: readonly HarmonySpan[]): readonly HarmonySpan[] {
  const merged: HarmonySpan[] = [];
  for (const span of spans) {
    const last = merged.at(-1);
    if (last && labelOf(last.harmony) === labelOf(span.harmony)) {
      merged[merged.length - 1] = {
        ...last,
        duration: (last.duration + span.duration) as HarmonySpan['duration'],
      };
    } else merged.push(span);
  }
  return merged;
}

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

function pitchesWithin(request: LineRequest, highestFret: number): boolean[] {
  const onNeck = Array.from({ length: 128 }, () => false);
  for (const string of request.instrument.openStrings) {
    const open = midiOf(string);
    for (let fret = 0; fret <= highestFret; fret += 1) onNeck[open + fret] = true;
  }
  return onNeck;
}

interface Neck {
  readonly onNeck: readonly boolean[];
  readonly beyond: ReadonlySet<number>;
}

/** The level's frets; a note that has no place there at all (C♯ up to fret 3) gets its lowest one. */
function neckOf(request: LineRequest, levelFret: number, low: number, high: number): Neck {
  const most = Math.min(request.hand.highestFret, request.instrument.frets);
  const onNeck = pitchesWithin(request, Math.min(levelFret, most));
  const whole = pitchesWithin(request, most);
  const beyond = new Set<number>();
  for (let pitchClass = 0; pitchClass < 12; pitchClass += 1) {
    const inRange = (neck: readonly boolean[]) =>
      neck.findIndex((there, midi) => there && midi >= low && midi <= high && midi % 12 === pitchClass);
    const lowest = inRange(whole);
    if (inRange(onNeck) >= 0 || lowest < 0) continue;
    onNeck[lowest] = true;
    beyond.add(pitchClass);
  }
  return { onNeck, beyond };
}

/** Reads a request once, so that everything after works with plain numbers. */
export function modelOf(request: LineRequest): LineModel {
  const { chart, key } = request;
  const stepsFor = rememberedSteps(chart);
  const order = playOrder(chart);
  const { before, after } = neighbours(order, chart.bars.length);
  const starts = new Set(chart.sections.map((section) => section.start));
  const limits = levelLimits(request.level);
  const lowestOpen = Math.min(...request.instrument.openStrings.map((pitch) => midiOf(pitch)), 127);
  const low = Math.max(LOWEST_MIDI, lowestOpen);
  const high = Math.max(limits.highestMidi, low + 15);
  const { onNeck, beyond } = neckOf(request, limits.highestFret, low, high);
  return {
    request,
    order,
    limits,
    beyondFrets: beyond,
    bars: chart.bars.map((bar, index) => {
      const homes = bar.spans.flatMap(({ harmony }) =>
        harmony.kind === 'chord' ? [pitchClassOf(harmony.chord.bass)] : [],
      );
      const demands = demandsOf(request, index, homes, { low, high, onNeck });
      const stretches = mergedSpans(bar.spans).map((span, place) =>
        stretchOf(span, place, bar.key ?? key, demands, stepsFor),
      );
      return {
        index,
        metre: bar.metre,
        ticks: barTicks(bar.metre),
        beat: beatTicks(bar.metre),
        stretches,
        opensSection: index === 0 || starts.has(index),
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
