import type { Remarks } from './remarks';

/** Which of notes that sound together is read. */
export type End = 'lowest' | 'highest';

/** Two times closer than this, in ticks, are the same. */
export const CLOSE = 0.5;

/** How a reader's notes are told: when they sound, how high, in which bar. */
export interface NoteReading<Note> {
  /** Ticks, and the MIDI number. */
  spanOf(note: Note): { readonly start: number; readonly end: number; readonly key: number };
  /** The note, ending sooner. */
  cutOff(note: Note, end: number): Note;
  /** Index of its bar, for the remarks. */
  barOf(note: Note): number;
}

/** One note at a time: of several that begin together the lowest or highest, an earlier one cut off where the next begins. */
export function oneByOne<Note>(
  notes: readonly Note[],
  end: End,
  { spanOf, cutOff, barOf }: NoteReading<Note>,
  remarks: Remarks,
): readonly Note[] {
  const way = end === 'lowest' ? 1 : -1;
  const sorted = notes
    .map((note) => ({ note, span: spanOf(note) }))
    .sort(({ span: one }, { span: other }) => one.start - other.start || way * (one.key - other.key));
  const line: { note: Note; readonly span: ReturnType<typeof spanOf> }[] = [];
  for (const each of sorted) {
    const last = line.at(-1);
    if (last !== undefined && each.span.start - last.span.start < CLOSE) {
      remarks.inBar(`Of notes that sound together only the ${end} is kept`, barOf(each.note));
      continue;
    }
    if (last !== undefined && last.span.end > each.span.start + CLOSE) {
      remarks.inBar('A note that sounds on under the next one is cut off there', barOf(last.note));
      last.note = cutOff(last.note, each.span.start);
    }
    line.push({ ...each });
  }
  return line.map(({ note }) => note);
}
