import { barName, beatsOf, capitalised, counted, type LineNote, type Metre } from '../../../core/base';
import { type ChartBar, chordsIn, shownHarmony } from '../../../core/chart';
import {
  type ChartReading,
  handStatement,
  keyChanges,
  keyStatement,
  keysStatement,
  type LineSheet,
  tempoWords,
} from '../../../core/lesson';
import type { BarAnalysis, Technique } from '../../../core/line';
import {
  type Chord,
  describeKeyIn,
  formatChordIn,
  isForeignDominantOf,
  type Key,
  sameKey,
} from '../../../core/theory';

/** The chords of a bar as they are drawn, a chord that only goes on named once: `Gm C7`. */
export const chordsOf = (bar: ChartBar, noteNames?: LineSheet['noteNames']): string =>
  bar.spans
    .map((span) => shownHarmony(span.harmony, noteNames))
    .filter((symbol, index, symbols) => symbol !== symbols[index - 1])
    .join(' ');

/** The line under a piece's name: feel, tempo, key and hand, all computed. */
export const describePiece = (sheet: LineSheet): string =>
  [`${sheet.feel.name}, ${tempoWords(sheet, sheet.tempo)}`, keysStatement(sheet), handStatement(sheet)]
    .filter((part) => part !== '')
    .join(' · ');

interface PlacedChord {
  readonly chord: Chord;
  readonly bar: number;
  /** The key in which the bar stands. */
  readonly key: Key;
}

const chordsInOrder = (sheet: ChartReading): readonly PlacedChord[] =>
  sheet.chart.bars.flatMap((bar) =>
    chordsIn(bar).map((chord) => ({ chord, bar: bar.number, key: bar.key ?? sheet.key })),
  );

/** The first two dominants from outside the key that lead where they should: `F7 in bar 6 leads to B♭.` */
function describeDominants(sheet: ChartReading): string {
  const chords = chordsInOrder(sheet);
  const name = (chord: Chord) => formatChordIn(sheet.noteNames ?? 'letters', chord);
  return chords
    .flatMap((placed, index) => {
      const { chord, bar, key } = placed;
      const next = chords[index + 1];
      return next && isForeignDominantOf(chord, next.chord, key)
        ? [`${name(chord)} in ${barName(bar)} leads to ${name(next.chord)}.`]
        : [];
    })
    .slice(0, 2)
    .join(' ');
}

/** Chords are only ever taken for major or minor, which says nothing against a mode on the same tonic. */
const saysTheSame = (guess: Key, chosen: Key): boolean =>
  sameKey(guess, chosen) ||
  (chosen.mode !== 'major' && chosen.mode !== 'minor' && sameKey({ ...guess, mode: chosen.mode }, chosen));

/** What can be said about the chart without asking anyone, in a sentence or three. */
export function describeFacts(sheet: ChartReading): string {
  if (sheet.chart.bars.length === 0) {
    return 'Write chords between bar lines, for example | F | Dm | Gm | C7 |.';
  }
  const bars = counted(sheet.chart.bars.length, 'bar');
  const [best] = sheet.keyGuesses;
  const changes = keyChanges(sheet).join(', ');
  const keyName = (key: Key) => describeKeyIn(sheet.noteNames ?? 'letters', key);
  const doubt =
    best !== undefined && !saysTheSame(best.key, sheet.key) ? `The chords suggest ${keyName(best.key)}.` : '';
  return [
    `${bars}, ${keyStatement(sheet)}.`,
    changes === '' ? doubt : `${changes}.`,
    describeDominants(sheet),
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** `Space, chord tones`. */
export const describeTechniques = (techniques: readonly Technique[]): string =>
  techniques.length === 0 ? 'No technique' : capitalised(techniques.join(', '));

/** The degrees of a bar in order, with a dot for every beat in which nothing sounds: `· R R 5 ♭3`. */
export function degreesLine(
  notes: readonly Pick<LineNote, 'start' | 'duration'>[],
  analysis: BarAnalysis,
  metre: Metre,
): string {
  const marks = notes.map((note, index) => ({
    at: Number(note.start),
    text: analysis.notes[index]?.degreeText || '×',
  }));
  for (const { start: at, length } of beatsOf(metre)) {
    const silent = notes.every((note) => note.start >= at + length || note.start + note.duration <= at);
    if (silent) marks.push({ at, text: '·' });
  }
  return marks
    .sort((one, other) => one.at - other.at)
    .map((mark) => mark.text)
    .join(' ');
}

/** The text alternative of a whole score; the bars' own descriptions hold the notes. */
export const describeScore = (sheet: LineSheet): string =>
  sheet.bars.length === 0
    ? `${sheet.name}: no bars yet.`
    : `${sheet.name}: ${counted(sheet.bars.length, 'bar')} of bass line on staff and tab. ${describePiece(sheet)}.`;
