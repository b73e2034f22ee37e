import {
  type Fret,
  fret,
  midiNumber,
  midiOf,
  pitchClassOf,
  type SpelledName,
  stringNumber,
  ticks,
} from '../base';
import { COST } from './costs';
import { gripsOf } from './grip';
import { type State, statesMeeting } from './states';
import { plainCost, urgentCost } from './transition';
import type { FingeredNote, HandSettings, Instrument } from './types';

export interface ShapeNote extends FingeredNote {
  readonly name: SpelledName;
}

/** An arpeggio or a scale that the hand plays without leaving its position. */
export interface Shape {
  readonly position: Fret;
  /** From the root up to its octave. */
  readonly notes: readonly ShapeNote[];
}

const NO_PINS = { pins: {}, position: null };

/**
 * All the shapes of one octave on the neck up to the hand's highest fret: from every root, in every hand
 * position that holds all its notes, each set of places once with its easiest fingers; the lowest position
 * first. Open strings belong to position I, unless they are to be avoided.
 * @param names the root first: the tones of a chord or of a scale, in any order after it
 */
export function octaveShapes(
  names: readonly SpelledName[],
  instrument: Instrument,
  hand: HandSettings,
): readonly Shape[] {
  const tones = rising(names);
  const root = tones[0];
  if (root === undefined) return [];
  const ways = waysByMidi(instrument, hand);
  const found = new Map<string, { readonly shape: Shape; readonly cost: number }>();
  for (let midi = 0; midi < ways.length - 12; midi += 1) {
    if (midi % 12 !== pitchClassOf(root.name)) continue;
    const octave = [...tones, { name: root.name, above: 12 }];
    for (let position = 1; position <= instrument.frets; position += 1) {
      const layers = octave.map(({ above }) =>
        (ways[midi + above] ?? []).filter((state) => belongs(state, position, hand)),
      );
      for (const start of layers[0] ?? []) {
        const path = easiest([[start], ...layers.slice(1)], hand);
        if (path === null) continue;
        const key = path.states.map((state) => `${state.string}:${state.fret}`).join(' ');
        if ((found.get(key)?.cost ?? Number.POSITIVE_INFINITY) <= path.cost) continue;
        const notes = path.states.map((state, index) => toShapeNote(state, octave[index]?.name ?? root.name));
        found.set(key, { shape: { position: fret(position), notes }, cost: path.cost });
      }
    }
  }
  return [...found.values()].map(({ shape }) => shape).sort(byPosition);
}

/** The names with their half steps above the root, upwards. */
function rising(
  names: readonly SpelledName[],
): readonly { readonly name: SpelledName; readonly above: number }[] {
  const root = names[0];
  if (root === undefined) return [];
  return names
    .map((name) => ({ name, above: (pitchClassOf(name) - pitchClassOf(root) + 12) % 12 }))
    .sort((one, other) => one.above - other.above);
}

/** All the ways to play each MIDI number. */
function waysByMidi(instrument: Instrument, hand: HandSettings): readonly (readonly State[])[] {
  return Array.from({ length: 128 }, (_, midi) =>
    statesMeeting(
      NO_PINS,
      { start: ticks(0), duration: ticks(1), midi: midiNumber(midi) },
      instrument,
      hand,
    ).filter((state) => state.fret <= hand.highestFret),
  );
}

const belongs = (state: State, position: number, hand: HandSettings): boolean =>
  state.position === position && (state.finger !== 0 || (position === 1 && hand.openStrings !== 'avoid'));

interface EasyPath {
  readonly states: readonly State[];
  readonly cost: number;
}

/** The easiest way through the layers at a calm pace; null where the hand does not reach. */
function easiest(layers: readonly (readonly State[])[], hand: HandSettings): EasyPath | null {
  let paths: readonly EasyPath[] = (layers[0] ?? []).map((state) => ({ states: [state], cost: state.own }));
  for (const layer of layers.slice(1)) {
    paths = layer.flatMap((state) => {
      const reached = paths.map((path) => extended(path, state, hand)).sort(byCost)[0];
      return reached === undefined ? [] : [reached];
    });
  }
  const best = [...paths].sort(byCost)[0];
  return best === undefined || best.cost >= COST.beyondReach ? null : best;
}

const byCost = (one: EasyPath, other: EasyPath): number => one.cost - other.cost;

function extended(path: EasyPath, state: State, hand: HandSettings): EasyPath {
  const from = path.states.at(-1) ?? state;
  const step =
    plainCost(from, state, false, hand.reach) + urgentCost(from, state, false, hand.comfortableSpan);
  return { states: [...path.states, state], cost: path.cost + step + state.own };
}

const toShapeNote = (state: State, name: SpelledName): ShapeNote => ({
  string: state.string,
  fret: state.fret,
  finger: state.finger,
  position: state.position,
  name,
});

function byPosition(one: Shape, other: Shape): number {
  const lower = one.position - other.position;
  return lower !== 0 ? lower : (other.notes[0]?.string ?? 0) - (one.notes[0]?.string ?? 0);
}

/**
 * Every note of a chord or scale that lies under the hand in a position, the lowest pitch first; in position I
 * the open strings too, unless they are to be avoided. No finger reaches out of its place.
 */
export function notesInPosition(
  names: readonly SpelledName[],
  position: Fret,
  instrument: Instrument,
  hand: HandSettings,
): readonly ShapeNote[] {
  const byClass = new Map(names.map((name) => [pitchClassOf(name), name]));
  const open =
    position === 1 && hand.openStrings !== 'avoid' ? [{ finger: 0 as const, fret: 0, extra: 0 }] : [];
  const grips = [...open, ...gripsOf(position, instrument, hand)].filter(
    ({ extra }) => extra < COST.extension,
  );
  const inOrder = grips.sort((one, other) => one.extra - other.extra);
  const notes = instrument.openStrings.flatMap((pitch, index) =>
    inOrder
      .filter((grip, order) => inOrder.findIndex((other) => other.fret === grip.fret) === order)
      .flatMap((grip) => {
        const midi = midiOf(pitch) + grip.fret;
        const name = byClass.get(midi % 12);
        if (name === undefined) return [];
        const place = { string: stringNumber(index + 1), fret: fret(grip.fret) };
        return [{ midi, note: { ...place, finger: grip.finger, position, name } }];
      }),
  );
  return notes.sort((one, other) => one.midi - other.midi).map(({ note }) => note);
}

/** The hand position of most of the fretted notes, the lowest of equals; null when all strings are open. */
export function homePosition(notes: readonly (FingeredNote | null)[]): Fret | null {
  const counts = new Map<Fret, number>();
  for (const note of notes) {
    if (note !== null && note.finger !== 0) counts.set(note.position, (counts.get(note.position) ?? 0) + 1);
  }
  const ranked = [...counts].sort(([one, often], [other, oftener]) => oftener - often || one - other);
  return ranked[0]?.[0] ?? null;
}
