/**
 * Numbers that must not be mixed, told apart by the compiler. A branded number is a plain number at run time;
 * arithmetic gives back a plain number, which the constructor of the unit checks and brands again.
 */

declare const unit: unique symbol;
type Unit<Name extends string> = number & { readonly [unit]: Name };

/** Musical time in whole ticks, {@link TICKS_PER_QUARTER} a quarter note. */
export type Ticks = Unit<'Ticks'>;
/** A MIDI note number, 0–127; 60 is middle C (C4), 28 the open E string of a bass. */
export type MidiNumber = Unit<'MidiNumber'>;
/** A fret counted from the nut; 0 is the open string. */
export type Fret = Unit<'Fret'>;
/** A string counted as the trade does: 1 is the highest (the G string of a four-string bass). */
export type StringNumber = Unit<'StringNumber'>;
/** Frequency in hertz. */
export type Hz = Unit<'Hz'>;
/** Quarter notes a minute unless a metre says otherwise (see `beatTicks` in metre). */
export type Bpm = Unit<'Bpm'>;

/** Divisible by 2, 3, 4, 5 and their common products, so triplets and sixteenths are whole ticks. */
export const TICKS_PER_QUARTER = 960;

function wholeNumber(value: number, least: number, most: number, what: string): number {
  if (!Number.isInteger(value) || value < least || value > most) {
    throw new RangeError(`${what} must be a whole number from ${least} to ${most}, not ${value}`);
  }
  return value;
}

/** @throws RangeError unless `value` is a whole number, 0 or more. */
export const ticks = (value: number): Ticks =>
  wholeNumber(value, 0, Number.MAX_SAFE_INTEGER, 'A time in ticks') as Ticks;

/** @throws RangeError unless `value` is a whole number from 0 to 127. */
export const midiNumber = (value: number): MidiNumber =>
  wholeNumber(value, 0, 127, 'A MIDI note number') as MidiNumber;

/** @throws RangeError unless `value` is a whole number from 0 to 36. */
export const fret = (value: number): Fret => wholeNumber(value, 0, 36, 'A fret') as Fret;

/** @throws RangeError unless `value` is a whole number from 1 to 12. */
export const stringNumber = (value: number): StringNumber =>
  wholeNumber(value, 1, 12, 'A string number') as StringNumber;

/** @throws RangeError unless `value` is finite and above 0. */
export function hz(value: number): Hz {
  if (!(value > 0) || !Number.isFinite(value)) {
    throw new RangeError(`A frequency must be above 0 Hz, not ${value}`);
  }
  return value as Hz;
}

/** @throws RangeError unless `value` is finite and above 0. */
export function bpm(value: number): Bpm {
  if (!(value > 0) || !Number.isFinite(value)) {
    throw new RangeError(`A tempo must be above 0 bpm, not ${value}`);
  }
  return value as Bpm;
}

/** Equal temperament at A4 = 440 Hz (ISO 16:1975): 440 · 2^((n − 69) / 12). */
export const frequencyOf = (midi: MidiNumber): Hz => hz(440 * 2 ** ((midi - 69) / 12));
