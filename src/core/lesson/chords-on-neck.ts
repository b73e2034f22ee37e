import type { Fret } from '../base';
import { type FingeredNote, homePosition } from '../fretboard';
import type { Chord, Key } from '../theory';
import type { LineSheet } from './sheet-types';

/** A chord of the chart as the line plays it. */
export interface ChordOnNeck {
  readonly chord: Chord;
  /** The key in which it first comes. */
  readonly key: Key;
  /** Where the hand mostly stands while the chord lasts, else in the whole line; null where nothing is fretted. */
  readonly position: Fret | null;
}

/** Every chord of a chart once, in the order in which they first come. */
export function chordsOnNeck(sheet: LineSheet): readonly ChordOnNeck[] {
  const found = new Map<
    string,
    { readonly chord: Chord; readonly key: Key; readonly played: FingeredNote[] }
  >();
  for (const { written, notes } of sheet.bars) {
    for (const { harmony, start, duration } of written.spans) {
      if (harmony.kind !== 'chord') continue;
      const { chord } = harmony;
      const entry = found.get(chord.symbol) ?? { chord, key: written.key ?? sheet.key, played: [] };
      found.set(chord.symbol, entry);
      for (const { note, fingered } of notes) {
        if (fingered !== null && note.start >= start && note.start < start + duration)
          entry.played.push(fingered);
      }
    }
  }
  const home = homePosition(sheet.fingering.notes);
  return [...found.values()].map(({ chord, key, played }) => ({
    chord,
    key,
    position: homePosition(played) ?? home,
  }));
}
