import { type Finger, type Fret, fret, type Pins } from '../base';
import { COST } from './costs';
import { gripsOf } from './grip';
import { fretDistance, placesOf } from './neck';
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

/** What the teacher has fixed about a note: its own pins, and the position of its stretch of the line. */
export interface Fixed {
  readonly pins: Pins;
  readonly position: Fret | null;
}

/**
 * The ways to play a note. What is fixed and cannot be met is let go, the position of the stretch first, then
 * the finger, then the place: a line must not fall silent because of a pin that an edit left behind.
 */
export function statesOf(
  note: NoteToFinger,
  instrument: Instrument,
  hand: HandSettings,
  position: Fret | null = null,
): readonly State[] {
  const pins = note.pins ?? {};
  const { string, fret: at } = pins;
  for (const fixed of [
    { pins, position },
    { pins, position: null },
    { pins: withoutUndefined(string, at), position },
    { pins: withoutUndefined(string, at), position: null },
    { pins: {}, position },
  ]) {
    const states = statesMeeting(fixed, note, instrument, hand);
    if (states.length > 0) return states;
  }
  return statesMeeting({ pins: {}, position: null }, note, instrument, hand);
}

const withoutUndefined = (string: Pins['string'], at: Pins['fret']): Pins => ({
  ...(string === undefined ? {} : { string }),
  ...(at === undefined ? {} : { fret: at }),
});

/** The ways to play a note that meet all that is fixed; empty if there is none. */
export function statesMeeting(
  fixed: Fixed,
  note: NoteToFinger,
  instrument: Instrument,
  hand: HandSettings,
): readonly State[] {
  const { pins, position } = fixed;
  const everywhere = placesOf(note.midi, instrument);
  const places =
    pins.string === undefined && pins.fret === undefined && position === null
      ? withinLimit(everywhere, hand.highestFret)
      : everywhere.filter((place) => meetsPlace(place, pins));
  const hasOpen = everywhere.some((place) => place.fret === 0);
  return places
    .flatMap((place) =>
      place.fret === 0
        ? openStates(place, instrument, hand)
        : frettedStates(place, hasOpen, instrument, hand),
    )
    .filter(
      (state) =>
        (pins.finger === undefined || state.finger === pins.finger) &&
        (position === null || state.position === position),
    );
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
    const own = policy + COST.openHigh * (position - 1);
    return createState(place, 0, position, own, instrument.scaleLength);
  });
}

/** The positions from which a fret can be played lie at most this far below it, and one above. */
const FURTHEST_BELOW = 4;

function frettedStates(
  place: Place,
  hasOpen: boolean,
  instrument: Instrument,
  hand: HandSettings,
): readonly State[] {
  const passedOver = hasOpen && hand.openStrings === 'prefer' ? COST.openPassedOver : 0;
  const states: State[] = [];
  const highest = Math.min(place.fret + 1, instrument.frets);
  for (let position = Math.max(1, place.fret - FURTHEST_BELOW); position <= highest; position += 1) {
    for (const grip of gripsOf(position, instrument, hand)) {
      if (grip.fret !== place.fret) continue;
      const own = passedOver + COST.height * place.fret + COST.finger[grip.finger] + grip.extra;
      states.push(createState(place, grip.finger, position, own, instrument.scaleLength));
    }
  }
  return states;
}
