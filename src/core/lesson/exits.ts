import { barTicks, isLink, type LineNote, midiOf, type Sign, signOf } from '../base';
import type { NotePlace } from './fingering';
import type { SheetBar } from './sheet-types';

/** How a written note is left, by a mark of its own. */
export interface Exit {
  readonly sign: Sign;
  /** The written note that it leads to; null for what leads to nothing, and where silence follows. */
  readonly to: NotePlace | null;
}

type Bars = readonly Pick<SheetBar, 'written' | 'notes'>[];

/** The note that follows without silence, in its bar or first in the next one; never in another ending. */
function following(bars: Bars, bar: number, note: number): (NotePlace & { readonly next: LineNote }) | null {
  const here = bars[bar];
  const now = here?.notes[note]?.note;
  if (!here || !now) return null;
  const end = now.start + now.duration;
  const next = here.notes[note + 1]?.note;
  if (next) return next.start === end ? { bar, note: note + 1, next } : null;
  const behind = bars[bar + 1];
  const first = behind?.notes[0]?.note;
  const leads =
    first?.start === 0 &&
    end >= barTicks(here.written.metre) &&
    !(here.written.ending !== null && here.written.repeatEnd !== null && behind?.written.ending !== null);
  return leads ? { bar: bar + 1, note: 0, next: first } : null;
}

/** How the notes of a written line are left, bar by bar and note by note; null for most. A tie goes first. */
export const exitsOf = (bars: Bars): readonly (readonly (Exit | null)[])[] =>
  bars.map(({ notes }, bar) =>
    notes.map(({ note }, index): Exit | null => {
      const mark = note.marks?.exit;
      if (mark === undefined || note.tiedOn === true) return null;
      const to = isLink(mark) ? following(bars, bar, index) : null;
      const sign = signOf(mark, midiOf(note.pitch), to && midiOf(to.next.pitch));
      return { sign, to: to && { bar: to.bar, note: to.note } };
    }),
  );
