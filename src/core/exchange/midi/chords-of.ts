import { C_MAJOR, type Key } from '../../theory';
import type { FoundChord } from '../reading/found';
import { metreBeat } from '../reading/metres';
import type { Remarks } from '../reading/remarks';
import type { FileChoice } from '../reading/score-read';
import { chordsByTriads, type SoundingNote, triadChoices, triadParts } from '../reading/triads';
import type { GridBar } from './quantise';
import type { FoundTexts } from './signs';
import type { MidiVoice } from './voices';

const TEXTS = 'texts';

/** A chord that is struck this much before a beat, in ticks, is struck on it. */
const EARLY = 60;

/** The notes of parts, bar by bar, each in every bar in which it sounds. */
function inBars(
  voices: readonly MidiVoice[],
  bars: readonly GridBar[],
): readonly (readonly SoundingNote[])[] {
  const lists = bars.map((): SoundingNote[] => []);
  for (const { start, end, key } of voices.flatMap(({ notes }) => notes)) {
    const first = Math.max(
      0,
      bars.findLastIndex((bar) => bar.start <= start + EARLY),
    );
    for (let bar = first; bar < bars.length; bar += 1) {
      const { start: begin = 0, length = 0 } = bars[bar] ?? {};
      if (begin + EARLY >= end) break;
      lists[bar]?.push({
        start: Math.max(0, start - begin),
        end: Math.min(length, end - begin),
        midi: key,
      });
    }
  }
  return lists;
}

/** Where the chords can come from: texts in the file, the triads of each part that plays some, or of all together. */
export function chordChoices(
  voices: readonly MidiVoice[],
  bars: readonly GridBar[],
  hasTexts: boolean,
  nameOf: (voice: MidiVoice) => string,
): readonly FileChoice[] {
  const parts = voices.map((voice) => ({
    id: voice.id,
    name: nameOf(voice),
    bars: inBars([voice], bars),
  }));
  return [...(hasTexts ? [{ id: TEXTS, name: 'Chord symbols in the file' }] : []), ...triadChoices(parts)];
}

interface ChordFile {
  readonly voices: readonly MidiVoice[];
  readonly bars: readonly GridBar[];
  /** Null where the file says nothing. */
  readonly keys: readonly (Key | null)[];
  readonly texts: FoundTexts;
}

/**
 * The chords of the file in ticks from its beginning, from where they are asked for.
 * @param source an id of {@link chordChoices}; null where there is none
 * @returns null without chords
 */
export function chordsFrom(
  source: string | null,
  { voices, bars, keys, texts }: ChordFile,
  nameOf: (voice: MidiVoice) => string,
  remarks: Remarks,
): readonly FoundChord[] | null {
  if (source === TEXTS) return texts.chords;
  const parts = triadParts(
    source,
    voices.map((voice) => ({ id: voice.id, name: nameOf(voice), voice })),
    remarks,
  );
  if (parts === null) {
    remarks.say('There are no chords in the file, so every bar has N.C.; they can be typed over the bars.');
    return null;
  }
  const notes = inBars(
    parts.map(({ voice }) => voice),
    bars,
  );
  const read = chordsByTriads(
    bars.map(({ length, metre }, bar) => ({
      notes: notes[bar] ?? [],
      length,
      beat: metreBeat(metre),
      key: keys[bar] ?? C_MAJOR,
    })),
  );
  return read.flatMap((chords, bar) =>
    chords.map(({ at, chord }) => ({ at: at + (bars[bar]?.start ?? 0), chord })),
  );
}
