import { fret } from '../base';
import type { Chart } from '../chart';
import { feelById } from '../feel';
import type { Instrument } from '../fretboard';
import type { LineRequest } from '../line';
import { findKey, type Key, type KeyGuess, type WeightedChord } from '../theory';
import type { InstrumentSettings, LinePiece } from './types';

export const instrumentOf = (settings: InstrumentSettings): Instrument => ({
  openStrings: settings.openStrings,
  frets: fret(settings.frets),
  scaleLength: settings.scaleLength,
  ...(settings.leftHanded === undefined ? {} : { leftHanded: settings.leftHanded }),
});

/** What is assumed while a chart has no chord yet. */
const KEY_WITHOUT_CHORDS: Key = { tonic: { letter: 'C', alteration: 0 }, mode: 'major' };

/** Guesses at the key from the chords of the chart, weighted by how long each sounds. */
export function guessKey(chart: Chart): readonly KeyGuess[] {
  const chords = chart.bars.flatMap((bar) =>
    bar.spans.flatMap((span): WeightedChord[] =>
      span.harmony.kind === 'chord' ? [{ chord: span.harmony.chord, weight: span.duration }] : [],
    ),
  );
  return chords.length === 0 ? [] : findKey(chords);
}

/** The teacher's key where one is set, else the best guess. */
export const keyOf = (piece: LinePiece, guesses: readonly KeyGuess[]): Key =>
  piece.key ?? guesses[0]?.key ?? KEY_WITHOUT_CHORDS;

/** Everything about a piece that shapes its line. */
export function lineRequest(
  piece: LinePiece,
  chart: Chart,
  key: Key,
  instrument: InstrumentSettings,
): LineRequest {
  return {
    chart,
    key,
    feel: feelById(piece.feel),
    tempo: piece.tempo,
    level: piece.level,
    techniques: new Set(piece.techniques),
    instrument: instrumentOf(instrument),
    hand: piece.hand,
  };
}
