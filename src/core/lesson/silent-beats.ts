import { beatsOf } from '../base';
import type { SheetBar } from './sheet-types';

/** The beats of a bar in which nothing sounds at all, by their index from 0. */
export const silentBeats = ({ notes, written }: SheetBar): readonly number[] =>
  beatsOf(written.metre)
    .filter(({ start, length }) =>
      notes.every(({ note }) => note.start + note.duration <= start || note.start >= start + length),
    )
    .map(({ index }) => index);
