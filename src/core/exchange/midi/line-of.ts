import { midiNumber, type SpelledPitch } from '../../base';
import { C_MAJOR, type Chord, type Key, spellMidi } from '../../theory';
import type { FoundNote } from '../reading/found';
import { type End, oneByOne } from '../reading/one-by-one';
import type { Remarks } from '../reading/remarks';
import type { Chosen } from '../reading/score-read';
import { barAt } from './grid';
import type { GridBar } from './quantise';
import { isForBass, type MidiVoice, type PlayedNote } from './voices';

/** The choices, by their ids. */
const ENDS: readonly End[] = ['lowest', 'highest'];

/** The end that is asked for, by its id; else the one that suits the part. */
export const endOf = (voice: MidiVoice, asked: string | null): End =>
  ENDS.find((end) => end === asked) ?? (isForBass(voice) ? 'lowest' : 'highest');

/** The highest and the lowest notes of a part of which some begin together; all of them else. */
export function endChoices(voice: MidiVoice, read: End): Chosen {
  const together = new Set(voice.notes.map(({ start }) => start)).size < voice.notes.length;
  const all = (together ? ENDS : [read]).map((end) => ({
    id: end,
    name: together ? `Its ${end} notes` : 'All its notes',
  }));
  return { all, read };
}

/** The notes of a part one at a time. */
export const lineAlone = (
  notes: readonly PlayedNote[],
  end: End,
  bars: readonly GridBar[],
  remarks: Remarks,
): readonly PlayedNote[] =>
  oneByOne(
    notes,
    end,
    {
      spanOf: (note) => note,
      cutOff: (note, until) => ({ ...note, end: until }),
      barOf: ({ start }) => barAt(bars, start),
    },
    remarks,
  );

/** The notes bar by bar; one that goes on over a bar line is tied. */
export function byBars(
  notes: readonly PlayedNote[],
  bars: readonly GridBar[],
): readonly (readonly (PlayedNote & { readonly tiedOn: boolean })[])[] {
  const lists = bars.map((): (PlayedNote & { readonly tiedOn: boolean })[] => []);
  for (const note of notes) {
    let { start } = note;
    for (let bar = barAt(bars, start); bar < bars.length && start < note.end; bar += 1) {
      const { start: from = 0, length = 0 } = bars[bar] ?? {};
      const end = Math.min(note.end, from + length);
      if (end > start) {
        lists[bar]?.push({ start: start - from, end: end - from, key: note.key, tiedOn: note.end > end });
      }
      start = Math.max(start, end);
    }
  }
  return lists;
}

/** Notes spelled by chord and key, chromatic ones by the way the line goes. */
export function spelled(
  lists: ReturnType<typeof byBars>,
  keys: readonly Key[],
  chordAt: (bar: number, tick: number) => Chord | null,
): readonly (readonly FoundNote[])[] {
  const order = lists.flat();
  const nexts = order.map(() => 0);
  for (let index = order.length - 1; index >= 0; index -= 1) {
    const following = order[index + 1];
    const own = order[index]?.key ?? 0;
    nexts[index] =
      following === undefined || following.key !== own ? (following?.key ?? own) : (nexts[index + 1] ?? own);
  }
  let place = -1;
  /** What a note is tied from: it keeps its name under the next chord. */
  let tiedFrom: { readonly key: number; readonly pitch: SpelledPitch } | null = null;
  return lists.map((notes, bar) =>
    notes.map(({ start, end, key, tiedOn }): FoundNote => {
      place += 1;
      const next = nexts[place] ?? key;
      const chord = chordAt(bar, start);
      const spelling: SpelledPitch = spellMidi(midiNumber(key), {
        key: keys[bar] ?? C_MAJOR,
        ...(chord === null ? {} : { chord }),
        ...(next === key ? {} : { direction: next > key ? 'up' : 'down' }),
      });
      const pitch: SpelledPitch = start === 0 && tiedFrom?.key === key ? tiedFrom.pitch : spelling;
      tiedFrom = tiedOn ? { key, pitch } : null;
      return { start, duration: end - start, pitch, tiedOn, marks: null, pins: {} };
    }),
  );
}
