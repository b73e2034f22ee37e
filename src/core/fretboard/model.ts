import type { MidiNumber } from '../base';
import { COST, STOLEN, urgency } from './costs';
import { fretDistance } from './neck';
import { type State, statesOf } from './states';
import type { HandSettings, Instrument, NoteToFinger } from './types';

/** The ways to play one note as flat columns, which the search's inner loop reads. */
export interface Layer {
  readonly states: readonly State[];
  readonly strings: Uint8Array;
  readonly frets: Uint8Array;
  readonly fingers: Uint8Array;
  readonly positions: Uint8Array;
  readonly own: Float64Array;
}

/** Factors of the urgent costs between two notes: after a fretted note, and after an open string. */
export interface Haste {
  readonly fretted: number;
  readonly open: number;
}

/** Tables for one instrument and one hand. */
export interface HandModel {
  layerOf(note: NoteToFinger): Layer;
  /** Cost of going from one way to another, the urgent parts weighted by haste; Infinity if impossible. */
  step(before: Layer, from: number, after: Layer, to: number, samePitch: boolean, haste: Haste): number;
}

export function hasteBetween(before: NoteToFinger, onset: number, ticksPerSecond: number): Haste {
  const silence = onset - before.start - before.duration;
  return {
    fretted: urgency((silence + STOLEN * before.duration) / ticksPerSecond),
    open: urgency((onset - before.start) / ticksPerSecond),
  };
}

function toLayer(states: readonly State[]): Layer {
  return {
    states,
    strings: Uint8Array.from(states, (state) => state.string),
    frets: Uint8Array.from(states, (state) => state.fret),
    fingers: Uint8Array.from(states, (state) => state.finger),
    positions: Uint8Array.from(states, (state) => state.position),
    own: Float64Array.from(states, (state) => state.own),
  };
}

export function createHandModel(instrument: Instrument, hand: HandSettings): HandModel {
  const size = instrument.frets + 1;
  const distances = Array.from({ length: size }, (_, at) => fretDistance(at, instrument.scaleLength));
  const table = (cost: (millimetres: number) => number): Float64Array =>
    Float64Array.from({ length: size * size }, (_, index) => {
      const one = distances[Math.floor(index / size)] ?? 0;
      const other = distances[index % size] ?? 0;
      return cost(Math.abs(one - other));
    });
  const shifts = table((span) => COST.shift + COST.shiftPerMillimetre * span);
  const stretches = table((span) => COST.stretchPerMillimetre * Math.max(0, span - hand.comfortableSpan));
  const refusals = table((span) => (span > hand.reach ? COST.beyondReach : 0));
  const crossings = Float64Array.from({ length: 13 }, (_, strings) =>
    strings === 0 ? 0 : COST.crossing + COST.farCrossing * (strings - 1),
  );
  const layers = new Map<MidiNumber, Layer>();

  return {
    layerOf: (note) => {
      if (note.pins !== undefined) return toLayer(statesOf(note, instrument, hand));
      const known = layers.get(note.midi);
      if (known !== undefined) return known;
      const layer = toLayer(statesOf(note, instrument, hand));
      layers.set(note.midi, layer);
      return layer;
    },
    step: (before, from, after, to, samePitch, haste) => {
      const fromFinger = before.fingers[from] ?? 0;
      const toFinger = after.fingers[to] ?? 0;
      const fromPosition = before.positions[from] ?? 0;
      const toPosition = after.positions[to] ?? 0;
      const stays = fromPosition === toPosition;
      if (toFinger === 0 && !stays) return Number.POSITIVE_INFINITY;
      const fromFret = before.frets[from] ?? 0;
      const toFret = after.frets[to] ?? 0;
      const strings = Math.abs((before.strings[from] ?? 0) - (after.strings[to] ?? 0));
      const sameFinger = fromFinger === toFinger && fromFinger !== 0;
      let plain = crossings[strings] ?? 0;
      let urgent = 0;
      if (samePitch) {
        if (strings !== 0) plain += COST.repeatMoves;
        else if (!sameFinger) plain += COST.repeatChangesFinger;
      }
      if (!stays) {
        const shift = shifts[fromPosition * size + toPosition] ?? 0;
        const ease =
          samePitch && strings === 0
            ? COST.shiftOnRepeat
            : sameFinger && strings === 0
              ? COST.guideFinger
              : 1;
        urgent += shift * ease;
      } else if (fromFinger !== 0 && toFinger !== 0) {
        const pair = fromFret * size + toFret;
        urgent += stretches[pair] ?? 0;
        plain += refusals[pair] ?? 0;
      }
      if (sameFinger && strings !== 0) {
        urgent += fromFret === toFret ? COST.sameFingerAcross : COST.sameFingerJump;
      }
      return plain + urgent * (fromFinger === 0 ? haste.open : haste.fretted);
    },
  };
}
