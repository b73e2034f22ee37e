import { rememberedAmong } from '../base';
import { type Chord, type ChordFunction, chordFunction, describeKey, type Key, type Naming } from '../theory';
import type { Chart } from './types';

/**
 * What every chord of the chart does, one list a bar and one entry a span; null for a span without a chord.
 * A bar is read in the key its directive names, else in that of its section, else in `key`. What a chord leads
 * to is the next other chord as written, and the first for the last, because charts go round.
 */
export function chordFunctions(
  chart: Chart,
  key: Key,
  sectionKeys: readonly (Key | null)[] = [],
  naming: Naming = 'letters',
): readonly (readonly (ChordFunction | null)[])[] {
  const spans = chart.bars.flatMap((bar) =>
    bar.spans.map((span) => ({ bar, chord: span.harmony.kind === 'chord' ? span.harmony.chord : null })),
  );
  const functionOf = rememberingFunctions(naming);
  const nexts = nextChords(spans.map(({ chord }) => chord));
  const functions = spans.map(({ bar, chord }, index) => {
    const where = bar.key ?? sectionKeys[bar.section] ?? key;
    return chord ? functionOf(chord, where, nexts[index] ?? undefined) : null;
  });
  let done = 0;
  return chart.bars.map((bar) => {
    done += bar.spans.length;
    return functions.slice(done - bar.spans.length, done);
  });
}

const MOST_FUNCTIONS = 2000;
const functionsKnown = new Map<string, ChordFunction>();

/** {@link chordFunction}, worked out once for each chord, key and next chord: a chart is asked about at every keystroke. */
function rememberingFunctions(naming: Naming): typeof chordFunction {
  return (chord, key, next) => {
    const id = `${naming} ${chord.symbol} ${describeKey(key)} ${next?.symbol ?? ''}`;
    return rememberedAmong(functionsKnown, MOST_FUNCTIONS, id, () => chordFunction(chord, key, next, naming));
  };
}

/** For each chord the next that is another one, round to the beginning; null before a gap in the harmony. */
function nextChords(chords: readonly (Chord | null)[]): readonly (Chord | null)[] {
  const nexts: (Chord | null)[] = chords.map(() => null);
  let following = chords.find((chord) => chord !== null) ?? null;
  let after: Chord | null = following;
  for (let index = chords.length - 1; index >= 0; index -= 1) {
    const chord = chords[index] ?? null;
    if (chord && following && chord.symbol !== following.symbol) after = following;
    nexts[index] = chord ? after : null;
    following = chord;
    if (!chord) after = null;
  }
  return nexts;
}
