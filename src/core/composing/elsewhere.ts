import { barNames, capitalised, counted, midiOf } from '../base';
import { writeTuning } from '../fretboard';
import type { InstrumentSettings, LineSheet, SheetBar } from '../lesson';
import { sameKey } from '../theory';
import type { KeyHand } from './keys-for';

/** What of key, tuning and hand is another one. */
export interface OtherHand {
  /** As they are to be. */
  readonly instrument: InstrumentSettings;
  /** How the hand is to play; null where that stays. */
  readonly how: KeyHand | null;
  readonly tuned: boolean;
  /** Whether it is for the other hand. */
  readonly turned: boolean;
}

/** What became of a line that keeps its notes, or moves as a whole. */
export interface PlayedElsewhere {
  /** Indices of bars with the same notes, some of them on another string or at another fret. */
  readonly bars: readonly number[];
  /** What is other than it was and why, a sentence each. */
  readonly words: readonly string[];
}

/** Where all of it is moved, or neither strings nor hand are others, nothing is told bar by bar. */
const NOTHING: PlayedElsewhere = { bars: [], words: [] };

/** How far most notes were moved, in half steps up. */
function movedBy(before: LineSheet, after: LineSheet): number {
  const counts = new Map<number, number>();
  before.bars.forEach(({ notes }, bar) => {
    const now = after.bars[bar]?.notes ?? [];
    if (now.length !== notes.length) return;
    notes.forEach(({ note }, place) => {
      const other = now[place]?.note;
      if (other === undefined) return;
      const by = midiOf(other.pitch) - midiOf(note.pitch);
      counts.set(by, (counts.get(by) ?? 0) + 1);
    });
  });
  return [...counts].reduce((most, each) => (each[1] > most[1] ? each : most), [0, 0] as const)[0];
}

/** Whether a bar has its notes, all of them on the neck, whatever they are played on. */
function keepsNotes({ notes }: SheetBar, now: SheetBar | undefined): boolean {
  return (
    now?.notes.length === notes.length &&
    notes.every(({ note }, place) => {
      const other = now.notes[place];
      return (
        other != null &&
        other.fingered !== null &&
        other.note.start === note.start &&
        midiOf(other.note.pitch) === midiOf(note.pitch)
      );
    })
  );
}

/** The same note at the same fret is on the same string, whatever its number is among more of them; from off the neck it comes from nowhere. */
const isElsewhere = ({ notes }: SheetBar, now: SheetBar | undefined): boolean =>
  notes.some(
    ({ fingered }, place) => fingered !== null && fingered.fret !== now?.notes[place]?.fingered?.fret,
  );

function causesOf({ instrument, how, tuned }: OtherHand, after: LineSheet): readonly string[] {
  const strings = writeTuning(instrument.openStrings, after.noteNames ?? 'letters');
  return [
    ...(tuned ? [`the strings are tuned to ${strings}`] : []),
    ...(how === 'by shape' ? ['the hand plays without open strings'] : []),
    ...(how === 'with open strings' ? ['the hand plays open strings wherever they help'] : []),
  ];
}

/** What of a line in its own key is played elsewhere, and why; nothing where neither strings nor hand are others. */
function inOwnKey(before: LineSheet, after: LineSheet, other: OtherHand): PlayedElsewhere {
  const causes = causesOf(other, after);
  const kept = before.bars.flatMap((bar, index) => (keepsNotes(bar, after.bars[index]) ? [index] : []));
  if (causes.length === 0 || kept.length === 0) return NOTHING;
  const bars = kept.filter((index) => {
    const bar = before.bars[index];
    return bar !== undefined && isElsewhere(bar, after.bars[index]);
  });
  const names = barNames(bars.map((bar) => before.bars[bar]?.written.number ?? bar + 1));
  // Within a bar that is changed, other notes may be played elsewhere, too.
  const every = kept.length === before.bars.length ? 'Every note' : 'Every note of the other bars';
  return {
    bars,
    words: [
      bars.length === 0
        ? `${every} keeps its place on the neck.`
        : `${capitalised(names)}: the same notes, elsewhere on the neck, for ${causes.join(' and ')}.`,
    ],
  };
}

/**
 * What another key, tuning or hand does to a line beside the notes that it changes: how far all of it is moved, or what is
 * played elsewhere on the neck and why.
 */
export function playedElsewhere(before: LineSheet, after: LineSheet, other: OtherHand): PlayedElsewhere {
  const by = sameKey(before.key, after.key) ? 0 : movedBy(before, after);
  const { bars, words } = by === 0 ? inOwnKey(before, after, other) : NOTHING;
  const half = counted(Math.abs(by), 'half step');
  return {
    bars,
    words: [
      ...(by === 0 ? [] : [`Chords and notes are ${half} ${by > 0 ? 'higher' : 'lower'}.`]),
      ...words,
      ...(other.turned
        ? ['Staff and tab are the same for either hand; pictures of the neck are drawn for the other one.']
        : []),
    ],
  };
}
