import { type Fret, pitchClassOf, type SpelledName, sameName } from '../base';
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
  /** The chord's root, and those of its other tones that the line plays while it lasts, in the chord's order. */
  readonly played: readonly SpelledName[];
}

interface Found {
  readonly chord: Chord;
  readonly key: Key;
  readonly fingered: FingeredNote[];
  /** Pitch classes of all notes over the chord. */
  readonly classes: Set<number>;
}

/** Every chord of a chart once, in the order in which they first come. */
export function chordsOnNeck(sheet: LineSheet): readonly ChordOnNeck[] {
  const found = new Map<string, Found>();
  for (const { written, notes } of sheet.bars) {
    for (const { harmony, start, duration } of written.spans) {
      if (harmony.kind !== 'chord') continue;
      const { chord } = harmony;
      const key = written.key ?? sheet.key;
      const entry = found.get(chord.symbol) ?? { chord, key, fingered: [], classes: new Set() };
      found.set(chord.symbol, entry);
      for (const { note, fingered } of notes) {
        if (note.start < start || note.start >= start + duration) continue;
        entry.classes.add(pitchClassOf(note.pitch));
        if (fingered !== null) entry.fingered.push(fingered);
      }
    }
  }
  const home = homePosition(sheet.fingering.notes);
  return [...found.values()].map(({ chord, key, fingered, classes }) => ({
    chord,
    key,
    position: homePosition(fingered) ?? home,
    played: chord.tones
      .map(({ name }) => name)
      .filter((name) => sameName(name, chord.root) || classes.has(pitchClassOf(name))),
  }));
}
