import { midiOf, samePitch } from '../base';
import type { ChartBar } from '../chart';
import { type Key, spellMidi } from '../theory';
import type { LineBar } from './types';

/**
 * A bar whose notes are spelled by the chords that they stand over and by its key; what sounds stays. Notes over no
 * chord, or one that cannot be read, keep the names they have. The same bar where nothing changes.
 */
export const spelledByChords = (bar: LineBar, written: ChartBar, key: Key): LineBar =>
  spelled(bar, written, key, false);

/** As {@link spelledByChords} for a bar that stands in another key now: what stands over no chord is spelled by the key. */
export const spelledInKey = (bar: LineBar, written: ChartBar, key: Key): LineBar =>
  spelled(bar, written, key, true);

function spelled(bar: LineBar, written: ChartBar, key: Key, byKeyAlone: boolean): LineBar {
  const { over = [] } = bar;
  // What is too much in the bar still stands over its last chord.
  const all = [...bar.notes, ...over];
  const named = all.map((note, index) => {
    const harmony = written.spans.findLast(({ start }) => start <= note.start)?.harmony;
    const chord = harmony?.kind === 'chord' ? harmony.chord : null;
    if (chord === null && !(byKeyAlone && harmony?.kind === 'no chord')) return note;
    const next = all[index + 1];
    const way = next === undefined ? 0 : midiOf(next.pitch) - midiOf(note.pitch);
    const pitch = spellMidi(midiOf(note.pitch), {
      key: written.key ?? key,
      ...(chord === null ? {} : { chord }),
      ...(way === 0 ? {} : { direction: way > 0 ? 'up' : 'down' }),
    });
    return samePitch(pitch, note.pitch) ? note : { ...note, pitch };
  });
  if (named.every((note, index) => note === all[index])) return bar;
  const notes = named.slice(0, bar.notes.length);
  return over.length === 0 ? { ...bar, notes } : { ...bar, notes, over: named.slice(notes.length) };
}

/** A note that goes on over a bar line keeps its name, whatever the chords there are. */
export function tiesSpelledAlike(bars: readonly LineBar[]): readonly LineBar[] {
  let before = bars[0]?.notes.at(-1);
  return bars.map((bar, index) => {
    const [first, ...others] = bar.notes;
    const from = index === 0 ? undefined : before;
    const goesOn =
      from?.tiedOn === true &&
      first?.start === 0 &&
      midiOf(from.pitch) === midiOf(first.pitch) &&
      !samePitch(from.pitch, first.pitch);
    const spelled = goesOn ? { ...bar, notes: [{ ...first, pitch: from.pitch }, ...others] } : bar;
    before = spelled.notes.at(-1);
    return spelled;
  });
}
