import type { MidiNumber } from '../base';
import { STOLEN, urgency } from './costs';
import { type State, statesOf } from './states';
import { createLink, type Link } from './transition';
import type { HandSettings, Instrument, NoteToFinger } from './types';

/** All the ways to play one note. */
export interface Layer {
  readonly states: readonly State[];
  /** What each way costs by itself. */
  readonly own: Float64Array;
  readonly midi: MidiNumber;
  /** Pinned notes have ways of their own, which no other note of the pitch shares. */
  readonly pinned: boolean;
}

/** Factors of the urgent costs between two notes: after a fretted note, and after an open string. */
export interface Haste {
  readonly fretted: number;
  readonly open: number;
}

/** The ways and costs for one instrument and one hand, each computed when first asked for. */
export interface HandModel {
  layerOf(note: NoteToFinger): Layer;
  linkOf(before: Layer, after: Layer): Link;
}

/** @param onset of the second note, in the ticks of the first */
export function hasteBetween(before: NoteToFinger, onset: number, ticksPerSecond: number): Haste {
  const silence = onset - before.start - before.duration;
  return {
    fretted: urgency((silence + STOLEN * before.duration) / ticksPerSecond),
    open: urgency((onset - before.start) / ticksPerSecond),
  };
}

export function createHandModel(instrument: Instrument, hand: HandSettings): HandModel {
  const layers = new Map<MidiNumber, Layer>();
  const links = new Map<number, Link>();
  return {
    layerOf: (note) => {
      if (note.pins !== undefined) return createLayer(note, instrument, hand);
      return remembered(layers, note.midi, () => createLayer(note, instrument, hand));
    },
    linkOf: (before, after) => {
      const create = (): Link => createLink(before.states, after.states, before.midi === after.midi, hand);
      if (before.pinned || after.pinned) return create();
      return remembered(links, before.midi * 128 + after.midi, create);
    },
  };
}

function remembered<Key, Value>(known: Map<Key, Value>, key: Key, create: () => Value): Value {
  const found = known.get(key);
  if (found !== undefined) return found;
  const made = create();
  known.set(key, made);
  return made;
}

function createLayer(note: NoteToFinger, instrument: Instrument, hand: HandSettings): Layer {
  const states = statesOf(note, instrument, hand);
  return {
    states,
    own: Float64Array.from(states, (state) => state.own),
    midi: note.midi,
    pinned: note.pins !== undefined,
  };
}
