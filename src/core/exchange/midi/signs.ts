import { midiNumber } from '../../base';
import {
  ALL_KEYS,
  C_MAJOR,
  type Chord,
  findKey,
  type Key,
  keySignature,
  parseChord,
  spellMidi,
} from '../../theory';
import type { FoundChord } from '../reading/found';
import { lastUpTo } from './last-up-to';
import type { GridBar } from './quantise';
import type { MidiEvent, TextKind } from './read-file';
import type { PlayedNote } from './voices';

type Sign<Kind extends MidiEvent['kind']> = Extract<MidiEvent, { kind: Kind }>;

const ofKind = <Kind extends MidiEvent['kind']>(
  events: readonly MidiEvent[],
  kind: Kind,
): readonly Sign<Kind>[] =>
  events.filter((event): event is Sign<Kind> => event.kind === kind).sort((one, other) => one.at - other.at);

/** What happened at a bar or a little before it, in ticks, holds in it. */
const EARLY = 60;

/** The key of each bar by the file's signatures; null before the first. */
export function keysOf(events: readonly MidiEvent[], bars: readonly GridBar[]): readonly (Key | null)[] {
  const signatures = ofKind(events, 'key');
  return bars.map(({ start }) => {
    const sign = signatures[lastUpTo(signatures, ({ at }) => at, start + EARLY)];
    if (sign === undefined) return null;
    const mode = sign.minor ? 'minor' : 'major';
    return ALL_KEYS.find((key) => key.mode === mode && keySignature(key) === sign.fifths) ?? null;
  });
}

/** The key that the chords and the notes tell, where the file has no signature. */
export function keyByEar(chords: readonly (Chord | null)[], notes: readonly PlayedNote[]): Key | null {
  const lengths = new Map<number, number>();
  for (const { key, start, end } of notes) lengths.set(key, (lengths.get(key) ?? 0) + end - start);
  const guesses = findKey(
    chords.flatMap((chord) => (chord === null ? [] : [{ chord, weight: 1 }])),
    {
      notes: [...lengths].map(([key, weight]) => ({
        name: spellMidi(midiNumber(key), { key: C_MAJOR }),
        weight,
      })),
    },
  );
  return guesses[0]?.key ?? null;
}

const NO_CHORD = /^n\.?\s?c\.?$/i;

function chordOf(text: string): Chord | null | undefined {
  if (NO_CHORD.test(text)) return null;
  const chord = parseChord(text);
  return chord.ok ? chord.value : undefined;
}

/** Letters alone, in the order of the alphabet, name sections rather than chords. */
function isAlphabet(texts: readonly string[]): boolean {
  const distinct = [...new Set(texts)];
  return distinct.every((text, index) => text === 'ABCDEFGH'[index]);
}

/** Where most texts of a kind are chord symbols, they are the chords; the same texts are not sections then. */
const MOSTLY = 0.7;
const FEWEST = 2;

export interface FoundTexts {
  /** In ticks from the beginning of the file; null where there are none. */
  readonly chords: readonly FoundChord[] | null;
  readonly sections: readonly { readonly at: number; readonly name: string }[];
}

/** Reads the texts of all tracks for chord symbols, and the markers for names of sections. */
export function readTexts(events: readonly MidiEvent[]): FoundTexts {
  const kinds: readonly TextKind[] = ['marker', 'text', 'cue', 'lyric'];
  const texts = ofKind(events, 'text');
  let chords: readonly FoundChord[] | null = null;
  let chordKind: TextKind | null = null;
  for (const kind of kinds) {
    const own = texts.filter(({ what, text }) => what === kind && text !== '');
    const read = own.flatMap(({ at, text }) => {
      const chord = chordOf(text);
      return chord === undefined ? [] : [{ at, chord }];
    });
    const enough = read.length >= FEWEST && read.length >= own.length * MOSTLY;
    if (chords === null && enough && !isAlphabet(own.map(({ text }) => text))) {
      chords = read;
      chordKind = kind;
    }
  }
  const sections =
    chordKind === 'marker'
      ? []
      : texts
          .filter(({ what, text }) => what === 'marker' && text !== '')
          .map(({ at, text }) => ({ at, name: text }));
  return { chords, sections };
}
