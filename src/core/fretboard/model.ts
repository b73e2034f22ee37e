import { type Fret, type MidiNumber, remembered } from '../base';
import { COST, STOLEN, urgency } from './costs';
import { type State, statesOf } from './states';
import { createLink, type Link } from './transition';
import type { HandSettings, Instrument, Joint, LineContext, NoteToFinger } from './types';

/** All the ways to play one note. */
export interface Layer {
  readonly states: readonly State[];
  /** What each way costs by itself. */
  readonly own: Float64Array;
  readonly midi: MidiNumber;
  /** Fixed notes have ways of their own, which no other note of the pitch shares. */
  readonly fixed: boolean;
}

/** What the moment between two notes asks: factors of the urgent costs after a fretted note and an open string. */
export interface Haste {
  readonly fretted: number;
  readonly open: number;
  /** Cost of leaving an open string that must not ring on; 0 where nothing forbids it. */
  readonly ringing: number;
}

/** What of the context counts between two notes. */
export type Pace = Pick<LineContext, 'ticksPerSecond' | 'muted'>;

/** The ways and costs for one instrument and one hand, each computed when first asked for. */
export interface HandModel {
  /** @param position where the teacher keeps the hand for this note, or null */
  layerOf(note: NoteToFinger, position: Fret | null): Layer;
  linkOf(before: Layer, after: Layer, joint: Joint | null): Link;
}

/** @param onset of the second note, in the ticks of the first */
export function hasteBetween(before: NoteToFinger, onset: number, pace: Pace): Haste {
  const silence = onset - before.start - before.duration;
  return {
    fretted: urgency((silence + STOLEN * before.duration) / pace.ticksPerSecond),
    open: urgency((onset - before.start) / pace.ticksPerSecond),
    ringing: silence > 0 && mayNotRing(before, pace) ? COST.openRings : 0,
  };
}

/** Whether a note must end in silence, and nothing on the page tells the plucking hand to see to it. */
export const mayNotRing = (note: NoteToFinger, { muted }: Pick<LineContext, 'muted'>): boolean =>
  muted === true && note.short !== true;

export function createHandModel(instrument: Instrument, hand: HandSettings): HandModel {
  const layers = new Map<MidiNumber, Layer>();
  const links = new Map<number, Link>();
  return {
    layerOf: (note, position) => {
      const create = (): Layer => createLayer(note, position, instrument, hand);
      return isFixed(note, position) ? create() : remembered(layers, note.midi, create);
    },
    linkOf: (before, after, joint) => {
      const create = (): Link =>
        createLink(before.states, after.states, before.midi === after.midi, hand, joint);
      if (before.fixed || after.fixed) return create();
      return remembered(links, (JOINTS.indexOf(joint) * 128 + before.midi) * 128 + after.midi, create);
    },
  };
}

const JOINTS: readonly (Joint | null)[] = [null, 'by hand', 'by slide'];

/** How a note leads to another one that begins at `onset`: across a silence the other is plucked. */
export const jointOf = (before: NoteToFinger, onset: number): Joint | null =>
  onset === before.start + before.duration ? (before.joined ?? null) : null;

const isFixed = (note: NoteToFinger, position: Fret | null): boolean =>
  note.pins !== undefined || position !== null;

function createLayer(
  note: NoteToFinger,
  position: Fret | null,
  instrument: Instrument,
  hand: HandSettings,
): Layer {
  const states = statesOf(note, instrument, hand, position);
  return {
    states,
    own: Float64Array.from(states, (state) => state.own),
    midi: note.midi,
    fixed: isFixed(note, position),
  };
}
