import { halfStepsAboveC, LETTERS, midiOf, type SpelledPitch, type StringNumber } from '../base';
import { placesOf } from '../fretboard';
import { type Desk, harmonyAt, playable, refused } from './context';
import { type Harmony, nameFor } from './pitch';
import { onString, stringNow, toPitch } from './pitches';
import { atHand } from './places';
import type { Done, Gesture } from './types';
import { onLine, writeAt } from './write';

/** A pitch on a staff step (from C0, as it sounds), bent as the scale over the harmony has it. */
export function staffPitch(step: number, harmony: Harmony): SpelledPitch {
  const letter = LETTERS[((step % 7) + 7) % 7] ?? 'C';
  return { ...nameFor(letter, harmony), octave: Math.floor(step / 7) };
}

/** A note where the staff is touched. */
export const writeOnStaff = (step: number): Gesture =>
  writeAt((desk, at) => {
    const pitch = staffPitch(step, harmonyAt(desk, at));
    return isOn(desk, pitch) ? { pitch } : null;
  });

/** The note at hand on a staff step, as a drag moves it. */
export const toStaffStep = (step: number): Gesture =>
  onLine((desk) => {
    const pitch = staffPitch(step, harmonyAt(desk, desk.pencil));
    return isOn(desk, pitch) ? toPitch(pitch)(desk.lesson, desk.pencil) : refused(desk, 'off the instrument');
  });

const isOn = ({ instrument }: Desk, pitch: SpelledPitch): boolean =>
  playable(instrument, (pitch.octave + 1) * 12 + halfStepsAboveC(pitch));

/** The note at hand on a string at the same pitch; in silence, frets are written on that string from now on. */
export const ontoString = (string: StringNumber): Gesture =>
  onLine((desk) => {
    const held = atHand(desk);
    if (string > desk.instrument.openStrings.length) return refused(desk, 'no such string');
    const pencil = { ...desk.pencil, string, digits: 'frets' as const };
    if (held === null) return { lesson: desk.lesson, pencil, did: { kind: 'go', bars: [desk.pencil.bar] } };
    const place = placesOf(midiOf(held.note.pitch), desk.instrument).find((each) => each.string === string);
    if (place === undefined) return { lesson: desk.lesson, pencil, did: { kind: 'go', bars: [pencil.bar] } };
    return stringNow(desk, held.note) === string
      ? { lesson: desk.lesson, pencil, did: { kind: 'go', bars: [pencil.bar] } }
      : onString(desk, held, place, pencil);
  });

/** One gesture after the other, as one; where one is refused, none is done. */
export const inTurn =
  (...gestures: readonly Gesture[]): Gesture =>
  (lesson, pencil) => {
    let done: Done = { lesson, pencil, did: { kind: 'go', bars: [pencil.bar] } };
    for (const gesture of gestures) {
      const next = gesture(done.lesson, done.pencil);
      if (next.did.kind === 'refused') return { lesson, pencil, did: next.did };
      done = next;
    }
    return done;
  };
