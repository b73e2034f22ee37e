import { fret, type MidiNumber, midiNumber, midiOf, stringNumber } from '../base';
import type { Instrument, Place } from './types';

/** Every place where the pitch can be played, the highest string (lowest fret) first; empty off the neck. */
export function placesOf(midi: MidiNumber, instrument: Instrument): readonly Place[] {
  return instrument.openStrings.flatMap((open, index) => {
    const above = midi - midiOf(open);
    return above < 0 || above > instrument.frets
      ? []
      : [{ string: stringNumber(index + 1), fret: fret(above) }];
  });
}

/** @throws RangeError when the instrument has no such string or fret. */
export function pitchAt(place: Place, instrument: Instrument): MidiNumber {
  const open = instrument.openStrings[place.string - 1];
  if (open === undefined || place.fret > instrument.frets) {
    throw new RangeError(`No string ${place.string}, fret ${place.fret} on this instrument`);
  }
  return midiNumber(midiOf(open) + place.fret);
}

/**
 * Millimetres from the nut to a fret: d = L · (1 − 2^(−n/12)), the rule of equal temperament for a vibrating
 * length L.
 */
export const fretDistance = (at: number, scaleLength: number): number => scaleLength * (1 - 2 ** (-at / 12));

/** Millimetres between two frets, in either order: what a hand must span to hold both. */
export const handSpan = (one: number, other: number, scaleLength: number): number =>
  Math.abs(fretDistance(one, scaleLength) - fretDistance(other, scaleLength));
