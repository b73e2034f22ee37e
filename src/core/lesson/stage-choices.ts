import {
  barTicks,
  halfStepsAboveC,
  type LineNote,
  midiOf,
  type SpelledName,
  type SpelledPitch,
  samePitch,
  type Ticks,
  ticks,
} from '../base';
import type { ChartBar } from '../chart';
import { type Instrument, rangeOf } from '../fretboard';
import { degreeOf, formatDegree } from '../theory';
import type { BuiltStage } from './build-up';
import { instrumentOf } from './request';
import type { InstrumentSettings, LinePiece } from './types';

/** What can be played at a place of a stage's bar. */
export interface StageChoice {
  readonly pitch: SpelledPitch;
  /** `5`; '' without a chord. */
  readonly degree: string;
}

/** A place of a bar where a stage plays, or can play. */
export interface StagePlace {
  readonly start: Ticks;
  /** What stands there now; null for silence. */
  readonly note: LineNote | null;
  /** How long a note lasts that is put there. */
  readonly duration: Ticks;
  /** From low to high. */
  readonly choices: readonly StageChoice[];
}

/** How far beyond the bar's own notes a chord tone may lie, in half steps: as far as a hand reaches. */
const REACH = 5;

function pitchesOf(name: SpelledName, lowest: number, highest: number): readonly SpelledPitch[] {
  return [0, 1, 2, 3, 4].flatMap((octave) => {
    const midi = (octave + 1) * 12 + halfStepsAboveC(name);
    return midi >= lowest && midi <= highest ? [{ ...name, octave }] : [];
  });
}

const chordAt = (bar: ChartBar, tick: number) => {
  const span = bar.spans.findLast(({ start }) => start <= tick);
  return span?.harmony.kind === 'chord' ? span.harmony.chord : null;
};

function choicesAt(
  bar: ChartBar,
  start: number,
  own: readonly SpelledPitch[],
  near: readonly number[],
  instrument: Instrument,
): readonly StageChoice[] {
  const range = rangeOf(instrument);
  const lowest = Math.max(range.lowest, Math.min(...near) - REACH);
  const highest = Math.min(range.highest, Math.max(...near) + REACH);
  const chord = chordAt(bar, start);
  const tones = chord === null ? [] : chord.tones.flatMap(({ name }) => pitchesOf(name, lowest, highest));
  const all = [...tones, ...own];
  const different = all.filter((pitch, index) => all.findIndex((other) => samePitch(pitch, other)) === index);
  return different
    .map((pitch) => ({ pitch, degree: chord === null ? '' : formatDegree(degreeOf(pitch, chord.root)) }))
    .sort((one, other) => midiOf(one.pitch) - midiOf(other.pitch));
}

/**
 * The places of a stage's bar with what can be played there: the line's own places and those of the stage, with the tones
 * of the chord that lie near, the line's note and the stage's.
 */
export function stagePlaces(
  line: LinePiece,
  stage: BuiltStage,
  written: ChartBar,
  bar: number,
  settings: InstrumentSettings,
): readonly StagePlace[] {
  const own = line.bars[bar]?.notes ?? [];
  const derived = stage.derived[bar] ?? [];
  const now = stage.piece.bars[bar]?.notes ?? [];
  const sources = [...now, ...derived, ...own];
  const starts = [...new Set(sources.map(({ start }) => start))].sort((one, other) => one - other);
  const near = sources.map(({ pitch }) => midiOf(pitch));
  const length = barTicks(written.metre);
  return starts.map((start, index) => {
    const here = sources.filter((note) => note.start === start);
    const next = starts[index + 1] ?? length;
    const duration = ticks(Math.min(here[0]?.duration ?? length, next - start));
    return {
      start,
      note: now.find((note) => note.start === start) ?? null,
      duration,
      choices: choicesAt(
        written,
        start,
        here.map(({ pitch }) => pitch),
        near,
        instrumentOf(settings),
      ),
    };
  });
}

/** The notes of a bar with another pitch, or silence, at one of its places. */
export function withChoice(
  notes: readonly LineNote[],
  { start, duration }: StagePlace,
  pitch: SpelledPitch | null,
): readonly LineNote[] {
  const others = notes.filter((note) => note.start !== start);
  if (pitch === null) return others;
  // A note that sounded on into the place ends there, and is no longer tied to the next bar.
  const cut = others.map((note) => {
    if (note.start >= start || note.start + note.duration <= start) return note;
    const { tiedOn: _, ...ended } = note;
    return { ...ended, duration: ticks(start - note.start) };
  });
  return [...cut, { start, duration, pitch }].sort((one, other) => one.start - other.start);
}
