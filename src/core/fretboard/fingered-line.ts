import type { FingeredNote, Fingering, HandSettings, Instrument, LineContext, NoteToFinger } from './types';

/** A line with its fingering and everything that it was fingered for. */
export interface FingeredLine {
  readonly notes: readonly NoteToFinger[];
  readonly fingering: Fingering;
  readonly instrument: Instrument;
  readonly hand: HandSettings;
  readonly context: LineContext;
  /** Who says that the hand's highest fret is the last one, to be read on after "the last of ": `level 2`. */
  readonly limitOf: string;
}

/** A note that lies on the instrument. */
export interface Held {
  readonly index: number;
  readonly note: NoteToFinger;
  readonly at: FingeredNote;
}

export function heldAt(line: FingeredLine, index: number): Held | null {
  const note = line.notes[index];
  const at = line.fingering.notes[index] ?? null;
  return note === undefined || at === null ? null : { index, note, at };
}

/** The sounding note before a note; around the seam of a loop too. */
export function heldBefore(line: FingeredLine, index: number): Held | null {
  const before = line.fingering.notes.findLastIndex((at, note) => at !== null && note < index);
  if (before >= 0) return heldAt(line, before);
  const last = line.fingering.notes.findLastIndex((at) => at !== null);
  return line.context.loop === null || last <= index ? null : heldAt(line, last);
}

/** The sounding note after a note; around the seam of a loop too. */
export function heldAfter(line: FingeredLine, index: number): Held | null {
  const after = line.fingering.notes.findIndex((at, note) => at !== null && note > index);
  if (after >= 0) return heldAt(line, after);
  const first = line.fingering.notes.findIndex((at) => at !== null);
  return line.context.loop === null || first < 0 || first >= index ? null : heldAt(line, first);
}

/** Ticks from the start of one note to the start of the one after it, around the seam of a loop too. */
export const onsetGap = (line: FingeredLine, before: NoteToFinger, after: NoteToFinger): number =>
  after.start - before.start + (after.start <= before.start ? (line.context.loop ?? 0) : 0);
