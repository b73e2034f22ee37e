import { type LineNote, midiOf, type SpelledPitch } from '../base';
import { type Place, placesOf } from '../fretboard';
import { deriveSheet } from '../lesson';
import { type Desk, harmonyAt, notesIn, refused, rewritten } from './context';
import { type Harmony, HOME, halfStepFrom, octaveFrom, scaleStepFrom } from './pitch';
import { atHand, noteBefore, noteIndexAt, selectedNotes } from './places';
import { retied } from './ties';
import type { DidKind, Done, Gesture } from './types';
import { onLine } from './write';

/** Gives each selected note another pitch; all of them or none. */
function repitched(
  desk: Desk,
  kind: DidKind,
  change: (pitch: SpelledPitch, harmony: Harmony) => SpelledPitch | null,
): Done {
  const chosen = selectedNotes(desk);
  if (chosen.size === 0) return refused(desk, 'no note at hand');
  const changes = new Map<number, readonly LineNote[]>();
  for (const [bar, selected] of chosen) {
    for (const note of selected) {
      const pitch = change(note.pitch, harmonyAt(desk, { bar, tick: note.start }));
      if (pitch === null) return refused(desk, 'off the instrument');
      const { pins: _, ...free } = note;
      const notes = (changes.get(bar) ?? notesIn(desk, bar)).map((each) =>
        each === note ? { ...free, pitch } : each,
      );
      for (const [at, list] of retied(desk, bar, notes, note, { ...free, pitch })) {
        // Both halves of a tie inside the selection move by themselves.
        if (at === bar || !chosen.has(at)) changes.set(at, list);
      }
    }
  }
  return rewritten(desk, changes, {}, { kind, bars: [...chosen.keys()] });
}

/** The selected notes a step of the scale up or down, each in the scale of its chord. */
export const byScaleStep = (way: 1 | -1): Gesture =>
  onLine((desk) =>
    repitched(desk, 'pitch', (pitch, harmony) => scaleStepFrom(pitch, way, harmony, desk.instrument)),
  );

export const byHalfStep = (way: 1 | -1): Gesture =>
  onLine((desk) =>
    repitched(desk, 'pitch', (pitch, harmony) => halfStepFrom(pitch, way, harmony, desk.instrument)),
  );

export const byOctave = (way: 1 | -1): Gesture =>
  onLine((desk) => repitched(desk, 'octave', (pitch) => octaveFrom(pitch, way, desk.instrument)));

/** The note at hand in the octave on the other side of the note before it: below where it is above, and the other way. */
export const otherSide: Gesture = onLine((desk) => {
  const held = atHand(desk);
  if (held === null) return refused(desk, 'no note at hand');
  const before = noteBefore(desk, desk.pencil);
  const around = before === null ? HOME : midiOf(before.pitch);
  return byOctave(midiOf(held.note.pitch) < around ? 1 : -1)(desk.lesson, { ...desk.pencil, from: null });
});

/** The note at hand at a pitch, however it was found: the end of a drag. */
export const toPitch = (pitch: SpelledPitch): Gesture =>
  onLine((desk) => repitched({ ...desk, pencil: { ...desk.pencil, from: null } }, 'pitch', () => pitch));

/** The string on which the note at hand is played now, by the teacher's choice or by the fingering. */
export function stringNow(desk: Desk, note: LineNote): number | null {
  if (note.pins?.string !== undefined) return note.pins.string;
  const sheet = deriveSheet(desk.piece, desk.lesson.instrument, desk.lesson.noteNames);
  if (sheet.kind !== 'line') return null;
  const notes = sheet.bars[desk.pencil.bar]?.notes ?? [];
  const index = noteIndexAt(
    notes.map((each) => each.note),
    note.start,
  );
  return notes[index]?.fingered?.string ?? null;
}

/** The note at hand on another string at the same pitch: the next one it lies on, going down and round. */
export const otherString: Gesture = onLine((desk) => {
  const held = atHand(desk);
  if (held === null) return refused(desk, 'no note at hand');
  const places = placesOf(midiOf(held.note.pitch), desk.instrument);
  const now = places.findIndex(({ string }) => string === stringNow(desk, held.note));
  const place = places[(now + 1) % places.length];
  if (place === undefined || places.length < 2) return refused(desk, 'no other string');
  return onString(desk, held, place, {});
});

/** The note at hand played at a place of its pitch. */
export function onString(
  desk: Desk,
  held: NonNullable<ReturnType<typeof atHand>>,
  place: Place,
  pencil: Partial<Desk['pencil']>,
): Done {
  const note: LineNote = { ...held.note, pins: { string: place.string, fret: place.fret } };
  return rewritten(
    desk,
    new Map([[desk.pencil.bar, held.notes.map((each) => (each === held.note ? note : each))]]),
    { string: place.string, ...pencil },
    { kind: 'string', bars: [desk.pencil.bar] },
  );
}
