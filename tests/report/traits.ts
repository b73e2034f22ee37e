import { barTicks, pitchClassOf, TICKS_PER_QUARTER } from '../../src/core/base';
import type { ComposeRequest } from '../../src/core/line';
import { type Chord, scaleFor } from '../../src/core/theory';
import type { JuryNote } from '../jury/tasks';

type Bars = readonly (readonly JuryNote[])[];

/** What can be counted in a line of what readers hear; shares of 1 where nothing else is said. */
export interface Traits {
  /** Changes of chord into which the last note steps, a half or a whole step. */
  readonly led: number;
  /** Changes before which a pitch is struck twice. */
  readonly stutters: number;
  /** Chords with a seventh whose seventh is heard. */
  readonly sevenths: number;
  /** Bars of the second half that are those of the first, note for note. */
  readonly pasted: number;
  /** Where the highest note first sounds, of the line's length. */
  readonly highPoint: number;
  /** Bars that reach the highest note, in number. */
  readonly highBars: number;
  /** Different rhythms a bar. */
  readonly rhythms: number;
  /** Phrases of four bars with a silence of a beat or more. */
  readonly breath: number;
  /** Leaps of an octave or more from bar to bar. */
  readonly jolts: number;
  /** Notes outside the scale of their chord. */
  readonly chromatic: number;
  /** How long these last, in quarters. */
  readonly chromaticLength: number;
}

export const TRAITS: readonly (keyof Traits)[] = [
  'led',
  'stutters',
  'sevenths',
  'pasted',
  'highPoint',
  'highBars',
  'rhythms',
  'breath',
  'jolts',
  'chromatic',
  'chromaticLength',
];

interface Sounding extends JuryNote {
  readonly chord: Chord | null;
}

/** The mean; NaN of nothing, which {@link mean} of a table leaves out. */
export function mean(values: readonly number[]): number {
  const known = values.filter((value) => !Number.isNaN(value));
  return known.length === 0 ? Number.NaN : known.reduce((sum, value) => sum + value, 0) / known.length;
}

const share = <Item>(items: readonly Item[], holds: (item: Item, index: number) => boolean): number =>
  mean(items.map((item, index) => (holds(item, index) ? 1 : 0)));

const above = (midi: number, chord: Chord): number => (midi - pitchClassOf(chord.root) + 120) % 12;

/** The notes of each chord, in order. */
function segmentsOf({ chart }: ComposeRequest, bars: Bars): readonly (readonly Sounding[])[] {
  return chart.bars.flatMap((bar, index) =>
    bar.spans.map((span) =>
      (bars[index] ?? [])
        .filter(({ beat }) => {
          const start = (beat - 1) * TICKS_PER_QUARTER;
          return start >= span.start && start < span.start + span.duration;
        })
        .map((note) => ({ ...note, chord: span.harmony.kind === 'chord' ? span.harmony.chord : null })),
    ),
  );
}

/** Whether the four bars from one on hold a silence of a beat or more, between notes or at a bar's end. */
function breathes({ chart }: ComposeRequest, bars: Bars, first: number): boolean {
  return bars.slice(first, first + 4).some((notes, place) => {
    const metre = chart.bars[first + place]?.metre;
    const end = metre === undefined ? 4 : barTicks(metre) / TICKS_PER_QUARTER;
    const edges = [...notes.map(({ beat }) => beat - 1), end];
    return (
      notes.length === 0 ||
      edges.some((edge, index) => {
        const before = notes[index - 1];
        return edge - (before === undefined ? 0 : before.beat - 1 + before.len) >= 1;
      })
    );
  });
}

/** Counts a line's traits. */
export function traitsOf(asked: ComposeRequest, bars: Bars): Traits {
  const segments = segmentsOf(asked, bars);
  const played = segments.filter((notes) => notes.length > 0);
  const changes = played.flatMap((notes, index) => {
    const next = played[(index + 1) % played.length]?.[0];
    const [last, before] = [notes.at(-1), notes.at(-2)];
    return last && next && last.chord?.symbol !== next.chord?.symbol ? [{ before, last, next }] : [];
  });
  const seventhOf = (chord: Chord | null): number | null =>
    chord?.tones
      .map(({ name }) => (pitchClassOf(name) - pitchClassOf(chord.root) + 12) % 12)
      .find((step) => step >= 10) ?? null;
  const all = segments.flat();
  const highest = Math.max(...all.map(({ midi }) => midi));
  const reached = bars.flatMap((notes, index) => (notes.some(({ midi }) => midi === highest) ? [index] : []));
  const outside = all.filter(
    ({ midi, chord }) =>
      chord !== null && !scaleFor(chord, asked.key).names.some((name) => pitchClassOf(name) === midi % 12),
  );
  const text = bars.map((notes) => JSON.stringify(notes));
  const half = Math.floor(bars.length / 2);
  const sounding = bars.filter((notes) => notes.length > 0);
  return {
    led: share(changes, ({ last, next }) => [1, 2].includes(Math.abs(next.midi - last.midi))),
    stutters: share(changes, ({ before, last }) => before?.midi === last.midi),
    sevenths: share(
      played.filter(([note]) => seventhOf(note?.chord ?? null) !== null),
      (notes) => notes.some(({ midi, chord }) => chord !== null && above(midi, chord) === seventhOf(chord)),
    ),
    pasted: share(text.slice(half, half * 2), (bar, index) => bar === text[index]),
    highPoint: (reached[0] ?? 0) / Math.max(1, bars.length - 1),
    highBars: reached.length,
    rhythms: new Set(bars.map((notes) => notes.map(({ beat }) => beat).join(' '))).size / bars.length,
    breath: share(
      bars.flatMap((_, index) => (index % 4 === 0 ? [index] : [])),
      (first) => breathes(asked, bars, first),
    ),
    jolts: share(sounding.slice(1), (notes, index) => {
      const [last, first] = [sounding[index]?.at(-1), notes[0]];
      return last !== undefined && first !== undefined && Math.abs(first.midi - last.midi) >= 12;
    }),
    chromatic: outside.length / Math.max(1, all.length),
    chromaticLength: mean(outside.map(({ len }) => len)),
  };
}

/** The share of bars that two takes of a line play alike. */
export const sameness = (one: Bars, other: Bars): number =>
  share(one, (notes, index) => JSON.stringify(notes) === JSON.stringify(other[index]));
