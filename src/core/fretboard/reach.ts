import { midiOf } from '../base';
import { gripsOf } from './grip';
import type { HandSettings, Instrument } from './types';

/** What a hand that keeps its position plays, by MIDI number. */
export interface UnderHand {
  /** The fret that sounds it there; 0 where no finger reaches one. */
  readonly frets: readonly number[];
  /** Open strings; none where they are to be avoided. */
  readonly open: readonly boolean[];
}

/**
 * The pitches under the hand in a position, each finger's reach included, up to the hand's highest fret.
 * @param position fret of the first finger
 */
export function underHand(position: number, instrument: Instrument, hand: HandSettings): UnderHand {
  const open = new Array<boolean>(128).fill(false);
  const frets = new Array<number>(128).fill(0);
  const grips = gripsOf(position, instrument, hand).map(({ fret }) => fret);
  for (const string of instrument.openStrings) {
    const lowest = midiOf(string);
    if (hand.openStrings !== 'avoid') open[lowest] = true;
    for (const fret of grips) if (fret <= hand.highestFret) frets[lowest + fret] = fret;
  }
  return { frets, open };
}
