import type { MidiNumber, Pins } from '../base';
import { placesOf } from './neck';
import type { FingeredNote, Instrument, NoteToFinger } from './types';

/** The pins that hold a note just as it is fingered. */
export const pinsOf = ({ string, fret, finger }: FingeredNote): Pins => ({ string, fret, finger });

/** The note as the hand would play it by its own choice. */
export const withoutPins = ({ pins: _, ...note }: NoteToFinger): NoteToFinger => note;

/**
 * What becomes of a note's pins when its pitch changes: the string stays and the fret moves along, as a shape
 * is moved along the neck. Null where the new pitch has no such place; a finger is let go where an open string
 * becomes a fretted one or the other way round.
 */
export function transposePins(
  pins: Pins,
  from: MidiNumber,
  to: MidiNumber,
  instrument: Instrument,
): Pins | null {
  const { string, finger } = pins;
  const fret = pins.fret === undefined ? undefined : pins.fret + to - from;
  const places = placesOf(to, instrument).filter(
    (place) =>
      (string === undefined || place.string === string) && (fret === undefined || place.fret === fret),
  );
  const place =
    places.find((each) => finger === undefined || (each.fret === 0) === (finger === 0)) ?? places[0];
  if (place === undefined) return null;
  const keepsFinger = finger !== undefined && (place.fret === 0) === (finger === 0);
  return {
    ...(string === undefined ? {} : { string }),
    ...(fret === undefined ? {} : { fret: place.fret }),
    ...(keepsFinger ? { finger } : {}),
  };
}
