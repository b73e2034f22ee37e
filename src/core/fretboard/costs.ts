/**
 * What makes a fingering uncomfortable, in one unit: 1 is about the trouble of a string crossing by three
 * strings. The order of the terms is the trade's (common practice, no source); the numbers are ours, set so
 * that the shapes that teachers print come out.
 *
 * Terms marked "urgent" are multiplied by {@link urgency}: they cost most inside running notes and least
 * across a silence.
 */
export const COST = {
  /** Urgent. Leaving a hand position at all: the eye leaves the page and the hand loses its place. */
  shift: 2,
  /** Urgent, a millimetre that the hand travels: far shifts miss more often than near ones. */
  shiftPerMillimetre: 0.03,
  /** Share of a shift's cost when one finger stays on its string and guides the hand. */
  guideFinger: 0.75,
  /** Share of a shift's cost on a repeated note, whose place the ear and the finger already know. */
  shiftOnRepeat: 0.6,
  /** Urgent, a millimetre beyond the comfortable span between two notes in one position. */
  stretchPerMillimetre: 0.08,
  /** A stretch beyond the hand's reach, taken only where pins leave no other way. */
  beyondReach: 1000,
  /** A finger outside the four frets of the position: the hand opens and has to come back. */
  extension: 1.2,
  /** Urgent. One finger on two strings at one fret in succession: it rolls or hops. */
  sameFingerAcross: 0.8,
  /** Urgent. One finger on another string and another fret: the sound breaks off. */
  sameFingerJump: 1.2,
  /** The plucking hand changes to the neighbouring string. */
  crossing: 0.15,
  /** Each further string in one crossing. */
  farCrossing: 0.25,
  /** A repeated note that moves to another place: it changes its colour. */
  repeatMoves: 2.5,
  /** A repeated note at its place with another finger. */
  repeatChangesFinger: 0.8,
  /** By finger 1 to 4: the ring and little fingers are the weaker ones. */
  finger: [0, 0, 0, 0.05, 0.1],
  /** A fret: low positions are what beginners know and where the strings sound fullest. */
  height: 0.03,
  /** An open string by policy. Avoid: it cannot be muted with the shape. Allow: it rings on. */
  openAvoided: 4,
  openAllowed: 0.3,
  /** A fretted note that could have been an open string, where open strings are preferred. */
  openPassedOver: 1.5,
  /** A fret of hand position above the fourth: an open string next to high notes sounds alien. */
  openHigh: 0.2,
} as const;

const MOST_URGENT = 2;
const LEAST_URGENT = 0.25;
/** At this time the urgency is halfway between its extremes. */
const HALFWAY_SECONDS = 0.15;

/** Share of a fretted note that a player may cut short in order to move. */
export const STOLEN = 0.25;

/** Factor of the urgent terms for the time in seconds in which the hand is free before the next note. */
export const urgency = (seconds: number): number =>
  LEAST_URGENT + ((MOST_URGENT - LEAST_URGENT) * HALFWAY_SECONDS) / (HALFWAY_SECONDS + Math.max(0, seconds));
