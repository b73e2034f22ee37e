import {
  fret,
  type Letter,
  type LineNote,
  type MidiNumber,
  midiNumber,
  midiOf,
  type Pins,
  type SpelledPitch,
  type StringNumber,
  samePitch,
  ticks,
} from '../base';
import { pitchAt, rangeOf } from '../fretboard';
import type { Lesson } from '../lesson';
import { untied } from './arrange';
import { type Desk, deskOf, harmonyAt, lengthOf, notesIn, refused, rewritten } from './context';
import { nameFor, nearest, spell, stepsOver } from './pitch';
import { atHand, noteBefore, noteIndexAt, onwards } from './places';
import { retied } from './ties';
import type { Done, Gesture, Moment, Pencil } from './types';

/** Runs a gesture on a line that has bars. */
export const onLine =
  (gesture: (desk: Desk) => Done): Gesture =>
  (lesson: Lesson, pencil: Pencil) => {
    const desk = deskOf(lesson, pencil);
    return desk === null ? refused({ lesson, pencil }, 'no line') : gesture(desk);
  };

/** Where the next note goes. */
export const target = ({ pencil }: Pick<Desk, 'pencil'>): Moment =>
  pencil.next ?? { bar: pencil.bar, tick: pencil.tick };

/** Whether a moment lies behind the last bar. */
const isEnd = (desk: Desk, at: Moment): boolean =>
  at.tick >= lengthOf(desk, at.bar) && noteIndexAt(notesIn(desk, at.bar), at.tick) === -1;

/** The running value after a note was written: a value that was lent for one note goes back. */
const valueAfter = ({ pencil }: Desk): Pick<Pencil, 'value' | 'after'> =>
  pencil.after === null ? { value: pencil.value, after: null } : { value: pencil.after, after: null };

/**
 * Writes a pitch where the pencil stands: over the note there, which keeps its length, or in the silence there, as
 * long as the running value, or shorter where the next note begins earlier. The pencil goes on behind it.
 */
function write(desk: Desk, at: Moment, pitch: SpelledPitch, pins?: Pins): Done {
  const notes = notesIn(desk, at.bar);
  const index = noteIndexAt(notes, at.tick);
  const there = notes[index];
  if (there !== undefined && there.start === at.tick) {
    const { pins: _, ...kept } = there;
    const note: LineNote = { ...kept, pitch, ...(pins === undefined ? {} : { pins }) };
    const changed = samePitch(there.pitch, pitch) && pins === undefined ? there : note;
    return rewritten(
      desk,
      retied(desk, at.bar, withNote(notes, index, changed), there, changed),
      { bar: at.bar, tick: at.tick, next: noteBehind(desk, at, there), from: null },
      { kind: 'write', bars: [at.bar] },
    );
  }
  const before = notes.map((note) =>
    note === there ? untied({ ...note, duration: ticks(at.tick - note.start) }) : note,
  );
  const next = notes.find((note) => note.start > at.tick);
  const duration = Math.min(desk.pencil.value, (next?.start ?? Number.POSITIVE_INFINITY) - at.tick);
  const note: LineNote = {
    start: ticks(at.tick),
    duration: ticks(duration),
    pitch,
    ...(pins === undefined ? {} : { pins }),
  };
  const all = inserted(before, note);
  return rewritten(
    desk,
    new Map([[at.bar, all]]),
    { ...behind(desk, at, duration, all[0]?.start ?? 0), ...valueAfter(desk) },
    { kind: 'write', bars: [at.bar] },
  );
}

/**
 * Whoever writes over notes keeps their rhythm: it goes on with the next note of the bar, then with the first of the
 * next bar, or at its beginning where that is silent.
 */
function noteBehind(desk: Desk, at: Moment, there: LineNote): Moment {
  const following = notesIn(desk, at.bar).find(({ start }) => start > there.start);
  if (following !== undefined) return { bar: at.bar, tick: following.start };
  const last = at.bar + 1 >= desk.piece.bars.length;
  if (last) return onwards(desk, at.bar, there.start + there.duration);
  return { bar: at.bar + 1, tick: notesIn(desk, at.bar + 1)[0]?.start ?? 0 };
}

const withNote = (notes: readonly LineNote[], index: number, note: LineNote): readonly LineNote[] =>
  notes.map((each, place) => (place === index ? note : each));

const inserted = (notes: readonly LineNote[], note: LineNote): readonly LineNote[] =>
  [...notes, note].sort((one, other) => one.start - other.start);

/**
 * The pencil on what was just written, and where it goes on. In *rhythm first*, a bar that is full of new notes and
 * silences is gone through again from its first note.
 * @param first - where the bar's first note then stands; null where nothing new was written
 */
function behind(desk: Desk, at: Moment, duration: number, first: number | null): Partial<Pencil> {
  const end = at.tick + duration;
  if (desk.pencil.way === 'rhythm first' && first !== null && end >= lengthOf(desk, at.bar)) {
    return { bar: at.bar, tick: first, next: null, from: null };
  }
  return { bar: at.bar, tick: at.tick, next: onwards(desk, at.bar, end), from: null };
}

/** Writes what is chosen for the place where the next note goes. */
export function writeAt(
  choose: (desk: Desk, at: Moment) => { pitch: SpelledPitch; pins?: Pins } | null,
): Gesture {
  return onLine((desk) => {
    const at = target(desk);
    if (isEnd(desk, at)) return refused(desk, 'end of the line');
    const chosen = choose(desk, at);
    return chosen === null ? refused(desk, 'off the instrument') : write(desk, at, chosen.pitch, chosen.pins);
  });
}

/** The pitch that a degree would be written as; null where the instrument has none. Step 8 is the next root above. */
export function degreePitch(desk: Desk, at: Moment, step: number): SpelledPitch | null {
  const names = stepsOver(harmonyAt(desk, at));
  const name = names[(step - 1) % 7];
  if (name === undefined) return null;
  const before = noteBefore(desk, at);
  const around = before === null ? null : midiOf(before.pitch);
  // Whatever is nearest to the middle of the octave above is the next one above.
  return nearest(name, step < 8 || around === null ? around : around + 6.5, desk.instrument);
}

/** A degree over the sounding chord (1 to 7; 8 is the next root above), in the octave nearest to the last note. */
export const writeDegree = (step: number): Gesture =>
  writeAt((desk, at) => {
    const pitch = degreePitch(desk, at, step);
    return pitch === null ? null : { pitch };
  });

/** A note by its letter as the scale has it, nearest to the last note. */
export const writeName = (letter: Letter): Gesture =>
  writeAt((desk, at) => {
    const before = noteBefore(desk, at);
    const around = before === null ? null : midiOf(before.pitch);
    const pitch = nearest(nameFor(letter, harmonyAt(desk, at)), around, desk.instrument);
    return pitch === null ? null : { pitch };
  });

/** The pitch that a place of the neck would be written as; null where the neck has no such place. */
export function placePitch(
  desk: Desk,
  moment: Moment,
  string: StringNumber,
  at: number,
): SpelledPitch | null {
  const { openStrings, frets } = desk.instrument;
  if (openStrings[string - 1] === undefined || at > frets) return null;
  return spell(pitchAt({ string, fret: fret(at) }, desk.instrument), harmonyAt(desk, moment));
}

/** A note where the fretboard is touched: it is held at that string and fret. */
export const writePlace = (string: StringNumber, at: number): Gesture =>
  onLine((desk) => {
    if (desk.instrument.openStrings[string - 1] === undefined) return refused(desk, 'no such string');
    const place = { string, fret: fret(at) };
    const done = writeAt((own, moment) => {
      const pitch = placePitch(own, moment, string, at);
      return pitch === null ? null : { pitch, pins: place };
    })(desk.lesson, desk.pencil);
    return { ...done, pencil: { ...done.pencil, string } };
  });

/** A fret on the string at hand. */
export const writeFret =
  (at: number): Gesture =>
  (lesson, pencil) =>
    writePlace(pencil.string, at)(lesson, pencil);

/** Ten frets higher than the note at hand was written: 2 becomes 12. */
export const tenFretsUp: Gesture = onLine((desk) => {
  const held = atHand(desk);
  const pins = held?.note.pins;
  if (pins?.string === undefined || pins.fret === undefined) return refused(desk, 'no note at hand');
  if (pins.fret + 10 > desk.instrument.frets) return refused(desk, 'off the instrument');
  const again = { ...desk.pencil, next: null };
  const done = writePlace(pins.string, pins.fret + 10)(desk.lesson, again);
  return done.did.kind === 'refused' ? refused(desk, done.did.why) : done;
});

/**
 * What is played in, as a MIDI keyboard sends it. A bass line is one note at a time: of keys that were struck together
 * the lowest one is written that the neck has, and that is said.
 */
export const writeMidi = (...together: readonly [MidiNumber, ...MidiNumber[]]): Gesture =>
  onLine((desk) => {
    const { lowest, highest } = rangeOf(desk.instrument);
    const onNeck = together.filter((midi) => midi >= lowest && midi <= highest);
    if (onNeck.length === 0)
      return refused(desk, together.every((midi) => midi > highest) ? 'above the neck' : 'below the neck');
    const midi = midiNumber(Math.min(...onNeck));
    const done = writeAt((own, at) => ({ pitch: spell(midi, harmonyAt(own, at)) }))(desk.lesson, desk.pencil);
    return together.length === 1 || done.did.kind === 'refused'
      ? done
      : { ...done, did: { ...done.did, detail: 'The lowest of what was struck together' } };
  });

/** The last note again. */
export const writeAgain: Gesture = onLine((desk) => {
  const at = target(desk);
  const before = noteBefore(desk, at);
  if (before === null) return writeDegree(1)(desk.lesson, desk.pencil);
  return writeAt(() => ({ pitch: before.pitch }))(desk.lesson, desk.pencil);
});

/** Silence of the running value, or in the place of a note. The pencil goes on behind it. */
export const writeSilence: Gesture = onLine((desk) => {
  const at = target(desk);
  if (isEnd(desk, at)) return refused(desk, 'end of the line');
  const notes = notesIn(desk, at.bar);
  const there = notes[noteIndexAt(notes, at.tick)];
  if (there !== undefined) {
    const rest = there.start + there.duration - at.tick;
    const left = notes.flatMap((note) =>
      note !== there
        ? [note]
        : note.start === at.tick
          ? []
          : [untied({ ...note, duration: ticks(at.tick - note.start) })],
    );
    return rewritten(desk, retied(desk, at.bar, left, there, null), behind(desk, at, rest, null), {
      kind: 'silence',
      bars: [at.bar],
    });
  }
  const next = notes.find((note) => note.start > at.tick)?.start ?? lengthOf(desk, at.bar);
  const duration = Math.min(desk.pencil.value, next - at.tick);
  return {
    lesson: desk.lesson,
    pencil: { ...desk.pencil, ...behind(desk, at, duration, notes[0]?.start ?? null), ...valueAfter(desk) },
    did: { kind: 'silence', bars: [at.bar] },
  };
});

/**
 * The next note of an idea where and as long as the idea has it, in the place of what sounds there. It is an idea for
 * one bar, over its chords: where writing has gone on in the next one, it is used up.
 * @param bar - index of the bar that the idea is for
 */
export const writeFromIdea = (idea: readonly LineNote[], bar: number): Gesture =>
  onLine((desk) => {
    const at = target(desk);
    const next = at.bar === bar ? idea.find(({ start }) => start >= at.tick) : undefined;
    if (next === undefined) return refused(desk, 'idea is used up');
    const end = next.start + next.duration;
    const kept = notesIn(desk, at.bar).flatMap((note): LineNote[] => {
      if (note.start >= next.start && note.start < end) return [];
      return note.start < next.start && note.start + note.duration > next.start
        ? [untied({ ...note, duration: ticks(next.start - note.start) })]
        : [note];
    });
    return rewritten(
      desk,
      new Map([[at.bar, inserted(kept, untied(next))]]),
      behind(desk, { bar: at.bar, tick: next.start }, next.duration, null),
      { kind: 'write', bars: [at.bar] },
    );
  });
