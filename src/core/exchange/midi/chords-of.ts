import type { Key } from '../../theory';
import type { FoundChord } from '../reading/found';
import { metreBeat } from '../reading/metres';
import type { Remarks } from '../reading/remarks';
import type { FileChoice } from '../reading/score-read';
import { chordalBars, chordsByTriads, playsChords, type SoundingNote } from '../reading/triads';
import type { GridBar } from './quantise';
import type { FoundTexts } from './signs';
import type { MidiVoice } from './voices';

const TEXTS = 'texts';
const ALL_PARTS = 'all triads';
const triadsId = ({ id }: MidiVoice): string => `${id} triads`;

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
  const playing = voices
    .map((voice) => ({ voice, notes: inBars([voice], bars) }))
    .filter(({ notes }) => playsChords(notes))
    .sort((one, other) => chordalBars(other.notes) - chordalBars(one.notes));
  return [
    ...(hasTexts ? [{ id: TEXTS, name: 'Chord symbols in the file' }] : []),
    ...playing.map(({ voice }) => ({ id: triadsId(voice), name: `Triads of “${nameOf(voice)}”` })),
    ...(voices.length > 1 && playsChords(inBars(voices, bars))
      ? [{ id: ALL_PARTS, name: 'Triads of all parts together' }]
      : []),
  ];
}

interface ChordFile {
  readonly voices: readonly MidiVoice[];
  readonly bars: readonly GridBar[];
  /** Null where the file says nothing. */
  readonly keys: readonly (Key | null)[];
  readonly texts: FoundTexts;
}

const C_MAJOR: Key = { tonic: { letter: 'C', alteration: 0 }, mode: 'major' };

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
  const voice = voices.find((one) => triadsId(one) === source);
  if (source === null || (voice === undefined && source !== ALL_PARTS)) {
    remarks.say('There are no chords in the file, so every bar has N.C.; they can be typed over the bars.');
    return null;
  }
  remarks.say(
    `The chords are read from the notes of ${voice === undefined ? 'all parts together' : `the part “${nameOf(voice)}”`}: look them over.`,
  );
  const notes = inBars(voice === undefined ? voices : [voice], bars);
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
