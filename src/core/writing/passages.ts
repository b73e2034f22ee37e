import { type LineNote, ticks } from '../base';
import { pushed, untied } from './arrange';
import { byDegree } from './carry';
import { type Desk, harmonyAt, lengthOf, notesIn, playable, refused, rewritten } from './context';
import { midiOfAny } from './pitch';
import { onwards, selectedNotes, selectionOf } from './places';
import type { CopiedNote, Done, Gesture, Moment, Passage } from './types';
import { onLine, target } from './write';

/** Ticks from a moment of the line to a later one. */
function distance(desk: Desk, from: Moment, to: Moment): number {
  let ticksBetween = to.tick - from.tick;
  for (let bar = from.bar; bar < to.bar; bar += 1) ticksBetween += lengthOf(desk, bar);
  return ticksBetween;
}

/** The moment so many ticks after another; behind the last bar it stays in that bar. */
function momentAfter(desk: Desk, from: Moment, by: number): Moment {
  let { bar, tick } = from;
  tick += by;
  while (bar + 1 < desk.piece.bars.length && tick >= lengthOf(desk, bar)) {
    tick -= lengthOf(desk, bar);
    bar += 1;
  }
  return { bar, tick };
}

/** A stretch of the line as it can be written elsewhere. Notes that began before it are left out. */
function passageOf(desk: Desk, start: Moment, end: Moment): Passage {
  const notes: CopiedNote[] = [];
  for (let bar = start.bar; bar <= end.bar; bar += 1) {
    for (const note of notesIn(desk, bar)) {
      const at = distance(desk, start, { bar, tick: note.start });
      const outside = at < 0 || at >= distance(desk, start, end);
      if (outside) continue;
      const { chord, key } = harmonyAt(desk, { bar, tick: note.start });
      notes.push({ note, at, over: chord === null ? null : { chord, key } });
    }
  }
  return { length: distance(desk, start, end), notes };
}

type PasteWay = 'by degree' | 'as it is';

/** The notes of a passage as they would stand from a moment on; null where a note would leave the instrument. */
function placed(
  desk: Desk,
  passage: Passage,
  at: Moment,
  way: PasteWay,
): readonly { readonly moment: Moment; readonly note: LineNote }[] | null {
  const notes = passage.notes.map(({ note, at: offset, over }) => {
    const moment = momentAfter(desk, at, offset);
    const { chord, key } = harmonyAt(desk, moment);
    const carried = way === 'by degree' && over !== null && chord !== null;
    const pitch = carried ? byDegree(note.pitch, over, { chord, key }) : note.pitch;
    const { pins: _, ...free } = note;
    return { moment, note: carried ? { ...free, pitch } : note };
  });
  for (const octaves of [0, 1, -1]) {
    const moved = notes.map(({ moment, note }) => ({
      moment,
      note: octaves === 0 ? note : { ...note, pitch: { ...note.pitch, octave: note.pitch.octave + octaves } },
    }));
    if (moved.every(({ note }) => playable(desk.instrument, midiOfAny(note.pitch)))) return moved;
  }
  return null;
}

/** The notes of a bar without what sounds between two ticks; a note that began before is cut there. */
function cleared(notes: readonly LineNote[], from: number, to: number): readonly LineNote[] {
  return notes.flatMap((note): LineNote[] => {
    const end = note.start + note.duration;
    if (end <= from || note.start >= to) return [note];
    const before = note.start < from ? [untied({ ...note, duration: ticks(from - note.start) })] : [];
    const behind = end > to ? [{ ...note, start: ticks(to), duration: ticks(end - to) }] : [];
    return note.start < from ? [...before, ...behind] : behind;
  });
}

/** Empties a stretch of the line into a map of changed bars; `gone` counts the notes that went. */
function clearedBars(desk: Desk, start: Moment, end: Moment) {
  const changes = new Map<number, readonly LineNote[]>();
  let gone = 0;
  for (let bar = start.bar; bar <= end.bar; bar += 1) {
    const from = bar === start.bar ? start.tick : 0;
    const to = bar === end.bar ? end.tick : Number.POSITIVE_INFINITY;
    const notes = notesIn(desk, bar);
    const left = cleared(notes, from, to);
    gone += notes.filter((note) => note.start >= from && note.start < to).length;
    if (left.length !== notes.length || left.some((note, index) => note !== notes[index])) {
      changes.set(bar, left);
    }
  }
  return { changes, gone };
}

/** Writes a passage from a moment on, in the place of what is there. */
function pasted(desk: Desk, passage: Passage, at: Moment, way: PasteWay, kind: 'paste' | 'repeat'): Done {
  const notes = placed(desk, passage, at, way);
  if (notes === null) return refused(desk, 'off the instrument');
  const end = momentAfter(desk, at, passage.length);
  const { changes, gone } = clearedBars(desk, at, end);
  notes.forEach(({ moment, note }, index) => {
    const there = changes.get(moment.bar) ?? notesIn(desk, moment.bar);
    // The last note of a passage has left behind what it was tied to.
    const free = index === notes.length - 1 ? untied(note) : note;
    const all = [...there, { ...free, start: ticks(moment.tick) }];
    changes.set(moment.bar, pushed(all.sort((one, other) => one.start - other.start)));
  });
  const bars = [...new Set([...changes.keys()])].sort((one, other) => one - other);
  const last = onwards(desk, end.bar, end.tick);
  return rewritten(
    desk,
    changes,
    { bar: at.bar, tick: at.tick, next: last, from: null },
    {
      kind,
      bars: bars.length === 0 ? [at.bar] : bars,
      detail: way,
      ...(gone === 0 ? {} : { replaced: gone }),
    },
  );
}

const isWithin = (desk: Desk, at: Moment): boolean => at.tick < lengthOf(desk, at.bar);

/** Remembers what is selected. */
export const copy: Gesture = onLine((desk) => {
  const { start, end } = selectionOf(desk);
  const copied = passageOf(desk, start, end);
  return {
    lesson: desk.lesson,
    pencil: { ...desk.pencil, copied },
    did: { kind: 'copy', bars: barsBetween(start, end), detail: String(copied.notes.length) },
  };
});

const barsBetween = (start: Moment, end: Moment): readonly number[] =>
  Array.from({ length: end.bar - start.bar + 1 }, (_, index) => start.bar + index);

/** Makes what is selected silence. */
function silenced(desk: Desk, kind: 'cut' | 'empty' | 'take out', more: Partial<Desk['pencil']>): Done {
  if (selectedNotes(desk).size === 0) return refused(desk, 'nothing selected');
  const { start, end } = selectionOf(desk);
  const { changes, gone } = clearedBars(desk, start, end);
  return rewritten(
    desk,
    withoutLooseTies(desk, changes, start),
    { bar: start.bar, tick: start.tick, next: null, from: null, ...more },
    { kind, bars: barsBetween(start, end), replaced: gone },
  );
}

/** A tie from the bar before into a note that went has nothing to go on in. */
function withoutLooseTies(
  desk: Desk,
  changes: Map<number, readonly LineNote[]>,
  start: Moment,
): Map<number, readonly LineNote[]> {
  const before = notesIn(desk, start.bar - 1);
  const last = before.at(-1);
  if (start.tick === 0 && last?.tiedOn === true && desk.piece.bars[start.bar - 1]?.over === undefined) {
    changes.set(start.bar - 1, [...before.slice(0, -1), untied(last)]);
  }
  return changes;
}

/** What is selected becomes silence, and is remembered. */
export const cut: Gesture = onLine((desk) => {
  const { start, end } = selectionOf(desk);
  return silenced(desk, 'cut', { copied: passageOf(desk, start, end) });
});

/** What is selected becomes silence; the pencil stays there, so that what was wrong can be written anew. */
export const erase: Gesture = onLine((desk) => {
  if (selectedNotes(desk).size > 0) return silenced(desk, 'empty', {});
  // In silence that was just written, the pencil goes back to its beginning.
  return desk.pencil.next === null
    ? refused(desk, 'nothing selected')
    : {
        lesson: desk.lesson,
        pencil: { ...desk.pencil, next: null },
        did: { kind: 'go', bars: [desk.pencil.bar] },
      };
});

/** The note at hand goes and what follows in its bar moves up. */
export const takeOut: Gesture = onLine((desk) => {
  const { start, end } = selectionOf(desk);
  if (start.bar !== end.bar) return silenced(desk, 'take out', {});
  const gap = end.tick - start.tick;
  const notes = cleared(notesIn(desk, start.bar), start.tick, end.tick).map((note) =>
    note.start >= end.tick ? { ...untied(note), start: ticks(note.start - gap) } : note,
  );
  return rewritten(
    desk,
    withoutLooseTies(desk, new Map([[start.bar, notes]]), start),
    { bar: start.bar, tick: start.tick, next: null, from: null },
    { kind: 'take out', bars: [start.bar] },
  );
});

/** What was copied is written where the pencil stands, in the place of what is there. */
export const paste = (way: PasteWay): Gesture =>
  onLine((desk) => {
    const { copied } = desk.pencil;
    if (copied === null) return refused(desk, 'nothing copied');
    const at = desk.pencil.from === null ? target(desk) : selectionOf(desk).start;
    return isWithin(desk, at) ? pasted(desk, copied, at, way, 'paste') : refused(desk, 'end of the line');
  });

/** What is selected is written again right behind itself. */
export const repeatSelection = (way: PasteWay): Gesture =>
  onLine((desk) => {
    const { start, end } = selectionOf(desk);
    const passage = passageOf(desk, start, end);
    if (passage.notes.length === 0) return refused(desk, 'nothing selected');
    const at = onwards(desk, end.bar, end.tick);
    return isWithin(desk, at) ? pasted(desk, passage, at, way, 'repeat') : refused(desk, 'end of the line');
  });

/** The bar in which the next note goes. */
export const barAhead = (desk: Desk): number => target(desk).bar;

/** The bar before is written again in the bar at hand, over its chords by degree or as it is. */
export const repeatBar = (way: PasteWay): Gesture =>
  onLine((desk) => {
    const bar = barAhead(desk);
    if (bar === 0) return refused(desk, 'no bar before');
    const length = lengthOf(desk, bar - 1);
    const whole = passageOf(desk, { bar: bar - 1, tick: 0 }, { bar: bar - 1, tick: length });
    if (whole.notes.length === 0) return refused(desk, 'bar before is silent');
    const room = lengthOf(desk, bar);
    const fitting = { length: room, notes: whole.notes.filter(({ at }) => at < room) };
    return pasted(desk, fitting, { bar, tick: 0 }, way, 'repeat');
  });

/** All notes of the bar at hand go. */
export const emptyBar: Gesture = onLine((desk) => {
  const { bar } = desk.pencil;
  const notes = notesIn(desk, bar);
  return notes.length === 0
    ? refused(desk, 'bar is silent')
    : rewritten(
        desk,
        withoutLooseTies(desk, new Map([[bar, []]]), { bar, tick: 0 }),
        { bar, tick: 0, next: null, from: null },
        { kind: 'empty', bars: [bar], replaced: notes.length },
      );
});
