import { type LineNote, lengthWords, samePitch, type Ticks, ticks } from '../base';
import { pushed, untied } from './arrange';
import { beatOf, type Desk, lengthOf, notesIn, refused, rewritten } from './context';
import { followed } from './go';
import { atHand, onwards } from './places';
import type { DidKind, Done, Gesture, Refusal } from './types';
import { dottedValue, fillAfterDot, isDotted, longerValue, shorterValue, tripletValue } from './values';
import { onLine } from './write';

/**
 * The note at hand as long as asked. What follows stays where it is as long as there is silence for it, and is pushed
 * on where there is none; a shorter note leaves silence behind it.
 */
function lengthened(desk: Desk, duration: Ticks, kind: DidKind, running: Ticks, after: Ticks | null): Done {
  const held = atHand(desk);
  const { bar } = desk.pencil;
  if (held === null) {
    return {
      lesson: desk.lesson,
      pencil: { ...desk.pencil, ...followed(desk, running), value: running, after },
      did: { kind: 'go', bars: [bar], detail: lengthWords(running) },
    };
  }
  const note = { ...untied(held.note), duration };
  const notes = pushed(held.notes.map((each) => (each === held.note ? note : each)));
  return rewritten(
    desk,
    new Map([[bar, notes]]),
    { ...followed(desk, duration), value: running, after },
    { kind, bars: [bar], detail: lengthWords(duration) },
  );
}

/** The length that a change starts from: that of the note at hand, in silence the running value. */
const lengthNow = (desk: Desk): number => atHand(desk)?.note.duration ?? desk.pencil.value;

function byValue(change: (value: number, beat: number) => Ticks | null, why: Refusal): Gesture {
  return onLine((desk) => {
    const value = change(lengthNow(desk), beatOf(desk, desk.pencil.bar));
    return value === null ? refused(desk, why) : lengthened(desk, value, 'length', value, null);
  });
}

/** The note at hand, or the running value, to the next longer value. */
export const longer: Gesture = byValue(longerValue, 'no longer value');
/** To the next shorter value. */
export const shorter: Gesture = byValue(shorterValue, 'no shorter value');
/** As one of a triplet, or back. */
export const triplet: Gesture = byValue(tripletValue, 'cannot be a triplet');
/** To a value. */
export const toValue = (value: Ticks): Gesture => byValue(() => value, 'no longer value');

/**
 * With a dot, or without it. After a dotted note the next one is lent what fills its beat (an eighth after a dotted
 * quarter); then the value before runs on. Where the dotted note fills its beats by itself, as the dotted quarter does
 * in 12/8, it runs on.
 */
export const dot: Gesture = onLine((desk) => {
  const now = lengthNow(desk);
  const value = dottedValue(now);
  if (value === null) return refused(desk, 'cannot be dotted');
  if (atHand(desk) === null) return lengthened(desk, value, 'length', value, null);
  return isDotted(value) && !isWhole(desk, value)
    ? lengthened(desk, value, 'length', fillAfterDot(value), desk.pencil.after ?? ticks(now))
    : lengthened(desk, value, 'length', value, null);
});

/** Whether a dotted length is dotted beats, or the whole bar: nothing is left to be filled. */
function isWhole(desk: Desk, value: Ticks): boolean {
  const beat = beatOf(desk, desk.pencil.bar);
  return (isDotted(beat) && value % beat === 0) || value === lengthOf(desk, desk.pencil.bar);
}

/**
 * The note at hand goes on: into the next note, where that has the same pitch; else for another running value in the
 * silence behind it, over the bar line too, where it is tied. Already tied over the bar line, it is let go there.
 */
export const tie: Gesture = onLine((desk) => {
  const held = atHand(desk);
  if (held === null) return refused(desk, 'no note at hand');
  const { bar } = desk.pencil;
  const { note, index, notes } = held;
  const end = note.start + note.duration;
  const following = notes[index + 1];
  if (following !== undefined && following.start === end) {
    if (!samePitch(following.pitch, note.pitch)) return refused(desk, 'nothing to tie to');
    return joinedWith(desk, note, following, 'tie');
  }
  if (end < lengthOf(desk, bar)) {
    const room = (following?.start ?? lengthOf(desk, bar)) - end;
    const longerNote = { ...note, duration: ticks(note.duration + Math.min(room, desk.pencil.value)) };
    return rewritten(
      desk,
      new Map([[bar, notes.map((each) => (each === note ? longerNote : each))]]),
      followed(desk, longerNote.duration),
      { kind: 'tie', bars: [bar] },
    );
  }
  return end > lengthOf(desk, bar) ? refused(desk, 'nothing to tie to') : overTheLine(desk, note, notes);
});

function overTheLine(desk: Desk, note: LineNote, notes: readonly LineNote[]): Done {
  const { bar } = desk.pencil;
  const letGo = note.tiedOn === true;
  const next = bar + 1;
  const changed = letGo ? untied(note) : { ...note, tiedOn: true };
  const changes = new Map([[bar, notes.map((each) => (each === note ? changed : each))]]);
  if (letGo) return rewritten(desk, changes, {}, { kind: 'tie', bars: [bar] });
  if (next >= desk.piece.bars.length) return refused(desk, 'end of the line');
  const following = notesIn(desk, next);
  const first = following[0];
  if (first !== undefined && first.start === 0) {
    if (!samePitch(first.pitch, note.pitch)) return refused(desk, 'nothing to tie to');
    return rewritten(desk, changes, {}, { kind: 'tie', bars: [bar, next] });
  }
  const room = first?.start ?? lengthOf(desk, next);
  const held: LineNote = {
    start: ticks(0),
    duration: ticks(Math.min(room, desk.pencil.value)),
    pitch: note.pitch,
  };
  return rewritten(
    desk,
    changes.set(next, [held, ...following]),
    { bar: next, tick: 0, next: onwards(desk, next, held.duration) },
    { kind: 'tie', bars: [bar, next] },
  );
}

function joinedWith(desk: Desk, note: LineNote, following: LineNote, kind: 'tie' | 'join'): Done {
  const { bar } = desk.pencil;
  const { tiedOn } = following;
  const whole: LineNote = {
    ...untied(note),
    duration: ticks(following.start + following.duration - note.start),
    ...(tiedOn === true && samePitch(following.pitch, note.pitch) ? { tiedOn } : {}),
  };
  const notes = notesIn(desk, bar).flatMap((each) =>
    each === note ? [whole] : each === following ? [] : [each],
  );
  return rewritten(desk, new Map([[bar, notes]]), followed(desk, whole.duration), { kind, bars: [bar] });
}

/** The note at hand and the next one of its bar become one, at the pitch of the first. */
export const join: Gesture = onLine((desk) => {
  const held = atHand(desk);
  if (held === null) return refused(desk, 'no note at hand');
  const following = held.notes[held.index + 1];
  return following === undefined
    ? refused(desk, 'nothing to join')
    : joinedWith(desk, held.note, following, 'join');
});

/** The note at hand struck twice in its time: halves, or a third more and the rest of what is dotted. */
export const split: Gesture = onLine((desk) => {
  const held = atHand(desk);
  if (held === null) return refused(desk, 'no note at hand');
  const { note, notes } = held;
  const first = isDotted(note.duration) ? (note.duration / 3) * 2 : note.duration / 2;
  if (!Number.isInteger(first) || first < 240) return refused(desk, 'not to be split');
  const [one, other]: [LineNote, LineNote] = [
    { ...untied(note), duration: ticks(first) },
    { ...note, start: ticks(note.start + first), duration: ticks(note.duration - first) },
  ];
  const { bar } = desk.pencil;
  return rewritten(
    desk,
    new Map([[bar, notes.flatMap((each) => (each === note ? [one, other] : [each]))]]),
    desk.pencil.next === null ? {} : followed(desk, first),
    { kind: 'split', bars: [bar] },
  );
});

/** The note at hand lasts until the next one begins, or to the end of the bar. */
export const fill: Gesture = onLine((desk) => {
  const held = atHand(desk);
  if (held === null) return refused(desk, 'no note at hand');
  const { bar } = desk.pencil;
  const end = held.notes[held.index + 1]?.start ?? lengthOf(desk, bar);
  const duration = end - held.note.start;
  if (duration <= held.note.duration) return refused(desk, 'no room behind');
  const note = { ...held.note, duration: ticks(duration) };
  return rewritten(
    desk,
    new Map([[bar, held.notes.map((each) => (each === held.note ? note : each))]]),
    followed(desk, duration),
    { kind: 'fill', bars: [bar] },
  );
});

/** Ticks by which a note is moved: an eighth, a sixteenth where it stands on one, a triplet eighth among triplets. */
function stride(note: LineNote): number {
  if (note.duration % 320 === 0 && note.duration % 240 !== 0) return 320;
  return note.start % 480 !== 0 || note.duration < 480 ? 240 : 480;
}

/**
 * The note at hand earlier or later. Silence beside it makes room; else the neighbour gives of its length, as long as
 * some of it is left.
 */
export const moveNote = (way: 1 | -1): Gesture =>
  onLine((desk) => {
    const held = atHand(desk);
    if (held === null) return refused(desk, 'no note at hand');
    const { bar } = desk.pencil;
    const { note, index, notes } = held;
    const by = stride(note) * way;
    const start = note.start + by;
    const end = start + note.duration;
    const why: Refusal = way === 1 ? 'no room behind' : 'no room before';
    if (start < 0 || (way === 1 && end > lengthOf(desk, bar))) return refused(desk, why);
    const moved: LineNote = { ...untied(note), start: ticks(start) };
    const before = notes[index - 1];
    const behind = notes[index + 1];
    const given = (each: LineNote): LineNote | null => {
      if (each === before && each.start + each.duration > start) {
        return start - each.start < 240 ? null : { ...untied(each), duration: ticks(start - each.start) };
      }
      if (each === behind && each.start < end) {
        const left = each.start + each.duration - end;
        return left < 240 ? null : { ...each, start: ticks(end), duration: ticks(left) };
      }
      return each;
    };
    const changed = notes.map((each) => (each === note ? moved : given(each)));
    if (!changed.every((each) => each !== null)) return refused(desk, why);
    return rewritten(
      desk,
      new Map([[bar, changed]]),
      { tick: start, ...(desk.pencil.next === null ? {} : { next: onwards(desk, bar, end) }), from: null },
      { kind: 'move', bars: [bar] },
    );
  });

/** The note at hand and all that follows in its bar, later by a stride, or earlier where there is silence before it. */
export const moveRest = (way: 1 | -1): Gesture =>
  onLine((desk) => {
    const held = atHand(desk);
    if (held === null) return refused(desk, 'no note at hand');
    const { bar } = desk.pencil;
    const { note, index, notes } = held;
    const by = stride(note) * way;
    const before = notes[index - 1];
    const floor = before === undefined ? 0 : before.start + before.duration;
    if (note.start + by < floor) return refused(desk, 'no room before');
    const changed = notes.map((each, place) =>
      place < index ? each : { ...untied(each), start: ticks(each.start + by) },
    );
    return rewritten(
      desk,
      new Map([[bar, changed]]),
      { tick: note.start + by, next: null, from: null },
      { kind: 'move', bars: [bar] },
    );
  });

/** Moves the note at hand to a tick of its bar, as a drag does: it stays between its neighbours. */
export const moveTo = (tick: number): Gesture =>
  onLine((desk) => {
    const held = atHand(desk);
    if (held === null) return refused(desk, 'no note at hand');
    const { bar } = desk.pencil;
    const { note, index, notes } = held;
    const before = notes[index - 1];
    const behind = notes[index + 1];
    const least = before === undefined ? 0 : before.start + before.duration;
    const most = (behind?.start ?? lengthOf(desk, bar)) - note.duration;
    const start = Math.max(least, Math.min(most, tick));
    if (start < least || start === note.start) return refused(desk, 'no room behind');
    const moved: LineNote = { ...untied(note), start: ticks(start) };
    return rewritten(
      desk,
      new Map([[bar, notes.map((each) => (each === note ? moved : each))]]),
      { tick: start, next: null, from: null },
      { kind: 'move', bars: [bar] },
    );
  });
