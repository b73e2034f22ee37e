import { midiOf } from '../base';
import type { LineRequest } from './types';

function pitchesWithin(request: LineRequest, highestFret: number): boolean[] {
  const onNeck = Array.from({ length: 128 }, () => false);
  for (const string of request.instrument.openStrings) {
    const open = midiOf(string);
    for (let fret = 0; fret <= highestFret; fret += 1) onNeck[open + fret] = true;
  }
  return onNeck;
}

/** The pitches of the instrument that a level uses. */
export interface Neck {
  /** By MIDI number. */
  readonly onNeck: readonly boolean[];
  /** The last fret of the level on this instrument and for this hand. */
  readonly highestFret: number;
  /** Pitch classes that have no place up to that fret and are taken higher up. */
  readonly beyond: ReadonlySet<number>;
}

/** The level's frets; a note that has no place there at all (C♯ up to fret 3) gets its lowest one. */
export function neckOf(request: LineRequest, levelFret: number, low: number, high: number): Neck {
  const most = Math.min(request.hand.highestFret, request.instrument.frets);
  const highestFret = Math.min(levelFret, most);
  const onNeck = pitchesWithin(request, highestFret);
  const whole = pitchesWithin(request, most);
  const beyond = new Set<number>();
  for (let pitchClass = 0; pitchClass < 12; pitchClass += 1) {
    const inRange = (neck: readonly boolean[]) =>
      neck.findIndex((there, midi) => there && midi >= low && midi <= high && midi % 12 === pitchClass);
    const lowest = inRange(whole);
    if (inRange(onNeck) >= 0 || lowest < 0) continue;
    onNeck[lowest] = true;
    beyond.add(pitchClass);
  }
  return { onNeck, highestFret, beyond };
}
