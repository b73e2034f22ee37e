import { type LineNote, rememberedFor, samePitch, ticks } from '../base';
import type { LineBar } from '../lesson';

const joined = rememberedFor(withoutLine);

/**
 * The notes of a bar as they would be if the bar line were not there: in order, the crossing one in one piece. The
 * same list again for the same bar.
 */
export function unbroken(bar: LineBar): readonly LineNote[] {
  return bar.over === undefined ? bar.notes : joined(bar);
}

function withoutLine(bar: LineBar): readonly LineNote[] {
  const over = bar.over ?? [];
  const [first, ...others] = over;
  const last = bar.notes.at(-1);
  if (first === undefined) return bar.notes;
  if (last === undefined || !goesOver(bar)) return [...bar.notes, ...over];
  const { tiedOn: _, ...struck } = last;
  const whole: LineNote = {
    ...struck,
    duration: ticks(last.duration + first.duration),
    ...(first.tiedOn === true ? { tiedOn: true } : {}),
  };
  return [...bar.notes.slice(0, -1), whole, ...others];
}

/** Whether the bar's last note goes on in what is too much. */
function goesOver(bar: LineBar): boolean {
  const last = bar.notes.at(-1);
  const first = bar.over?.[0];
  return (
    last !== undefined &&
    first !== undefined &&
    last.tiedOn === true &&
    first.start === last.start + last.duration &&
    samePitch(first.pitch, last.pitch)
  );
}

/** Notes in order, each at its start or as soon as the one before has ended. Notes move on, never away. */
export function pushed(notes: readonly LineNote[]): readonly LineNote[] {
  let end = 0;
  return notes.map((note) => {
    const start = Math.max(note.start, end);
    end = start + note.duration;
    return start === note.start ? note : { ...note, start: ticks(start) };
  });
}

/**
 * A bar with these notes. What lies behind the bar line is held beside the bar as too much; a note that crosses it
 * is cut there and tied. A tie that no longer leads over the bar line goes.
 * @param notes - in order, without overlapping; they may end after the bar
 * @param length - of the bar in ticks
 */
export function withNotes(bar: LineBar, notes: readonly LineNote[], length: number): LineBar {
  const inside: LineNote[] = [];
  const over: LineNote[] = [];
  for (const note of notes) {
    const end = note.start + note.duration;
    if (end <= length) {
      inside.push(end < length ? untied(note) : note);
    } else if (note.start >= length) {
      over.push(untied(note));
    } else {
      inside.push({ ...note, duration: ticks(length - note.start), tiedOn: true });
      over.push({ ...untied(note), start: ticks(length), duration: ticks(end - length) });
    }
  }
  const { over: _, ...rest } = bar;
  return {
    ...rest,
    origin: 'hand',
    kept: true,
    notes: inside,
    ...(over.length === 0 ? {} : { over }),
  };
}

export function untied(note: LineNote): LineNote {
  if (note.tiedOn === undefined) return note;
  const { tiedOn: _, ...rest } = note;
  return rest;
}

/** Ticks by which a bar holds too much. */
export const tooMuchIn = (bar: LineBar, length: number): number => {
  const last = bar.over?.at(-1);
  return last === undefined ? 0 : last.start + last.duration - length;
};
