import type { Finger, Fret, Pins } from '../base';
import { fret } from '../base';
import { COST } from './costs';
import { fretDistance, handSpan, placesOf } from './neck';
import type { FingeredNote, HandSettings, Instrument, NoteToFinger, Place } from './types';

/**
 * One way to play one note: where, with which finger, from which hand position. An open string has one way for
 * each position, because the hand stays where it was.
 */
export interface State extends FingeredNote {
  /** What the way costs whatever comes before and after. */
  readonly own: number;
  /** Millimetres from the nut to the note's fret and to the first finger's. */
  readonly fretAt: number;
  readonly handAt: number;
}

const FINGERS = [1, 2, 3, 4] as const;

/** One finger per fret: in position n finger k plays fret n + k − 1. */
const homeFret = (position: number, finger: number): number => position + finger - 1;

/**
 * The ways to play a note. Pins that cannot be met are let go one by one, the finger first, then all: a line
 * must not fall silent because of a pin that an edit left behind.
 */
export function statesOf(note: NoteToFinger, instrument: Instrument, hand: HandSettings): readonly State[] {
  const places = placesOf(note.midi, instrument);
  const { pins } = note;
  if (pins !== undefined) {
    const pinned = places.filter((place) => meetsPlace(place, pins));
    const fingered = allStates(pinned, instrument, hand).filter(
      (state) => pins.finger === undefined || state.finger === pins.finger,
    );
    if (fingered.length > 0) return fingered;
    if (pinned.length > 0) return allStates(pinned, instrument, hand);
  }
  return allStates(withinLimit(places, hand.highestFret), instrument, hand);
}

const meetsPlace = (place: Place, pins: Pins): boolean =>
  (pins.string === undefined || pins.string === place.string) &&
  (pins.fret === undefined || pins.fret === place.fret);

/** Places up to the highest fret allowed; a note that lies only above it keeps its lowest place. */
function withinLimit(places: readonly Place[], limit: Fret): readonly Place[] {
  const within = places.filter((place) => place.fret <= limit);
  if (within.length > 0 || places.length === 0) return within;
  const lowest = Math.min(...places.map((place) => place.fret));
  return places.filter((place) => place.fret === lowest);
}

function allStates(places: readonly Place[], instrument: Instrument, hand: HandSettings): readonly State[] {
  const hasOpen = places.some((place) => place.fret === 0);
  return places.flatMap((place) =>
    place.fret === 0 ? openStates(place, instrument, hand) : frettedStates(place, hasOpen, instrument, hand),
  );
}

/** One factory, so that all states have one shape in memory: the search reads millions of them. */
function createState(
  place: Place,
  finger: Finger,
  position: number,
  own: number,
  scaleLength: number,
): State {
  return {
    string: place.string,
    fret: place.fret,
    finger,
    position: fret(position),
    own,
    fretAt: fretDistance(place.fret, scaleLength),
    handAt: fretDistance(position, scaleLength),
  };
}

function openStates(place: Place, instrument: Instrument, hand: HandSettings): readonly State[] {
  const policy = { avoid: COST.openAvoided, allow: COST.openAllowed, prefer: 0 }[hand.openStrings];
  return Array.from({ length: instrument.frets }, (_, index) => {
    const position = index + 1;
    const own = policy + COST.openHigh * Math.max(0, position - 2);
    return createState(place, 0, position, own, instrument.scaleLength);
  });
}

function frettedStates(
  place: Place,
  hasOpen: boolean,
  instrument: Instrument,
  hand: HandSettings,
): readonly State[] {
  const passedOver = hasOpen && hand.openStrings === 'prefer' ? COST.openPassedOver : 0;
  const state = (finger: (typeof FINGERS)[number], position: number, extra: number): State => {
    const own = passedOver + COST.height * place.fret + COST.finger[finger] + extra;
    return createState(place, finger, position, own, instrument.scaleLength);
  };
  const states = FINGERS.filter((finger) => place.fret >= finger).map((finger) =>
    state(finger, place.fret - finger + 1, 0),
  );
  for (const [finger, position] of [
    [1, place.fret + 1],
    [4, place.fret - 4],
  ] as const) {
    if (reachesOut(place.fret, position, instrument, hand)) {
      states.push(state(finger, position, COST.extension));
    }
  }
  return states;
}

/** Whether the hand in its position can hold the fret next to its four together with its far finger. */
function reachesOut(at: Fret, position: number, instrument: Instrument, hand: HandSettings): boolean {
  if (position < 1 || position > instrument.frets) return false;
  const far = at < position ? homeFret(position, 4) : position;
  return far <= instrument.frets && handSpan(at, fret(far), instrument.scaleLength) <= hand.reach;
}
