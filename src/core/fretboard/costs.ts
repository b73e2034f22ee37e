/**
 * What makes a fingering uncomfortable, in one unit: about 5 is a shift by one fret inside running eighths.
 * The order of the terms is the trade's (common practice, no source); the numbers are ours, set so that the
 * shapes that teachers print come out of the search.
 *
 * Terms marked "urgent" are multiplied by {@link urgency}: they cost most inside running notes and least
 * across a silence.
 */
export const COST = {
  /** Leaving a hand position, however much time there is: the eye leaves the page. */
  leaving: 2.2,
  /** Urgent. The same again by how little time there is: the hand loses its place. */
  shift: 2,
  /** Urgent, a millimetre that the hand travels: far shifts miss more often than near ones. */
  shiftPerMillimetre: 0.03,
  /** Share of a shift's cost when one finger stays on its string and guides the hand. */
  guideFinger: 0.75,
  /** Share of a shift's cost on a repeated note, whose place the ear and the finger already know. */
  shiftOnRepeat: 0.6,
  /**
   * Urgent, a square millimetre: the square of what two successive notes in one position need beyond the
   * comfortable span, so that a little more is nearly free and much more is felt.
   */
  stretchPerSquare: 0.0008,
  /** A stretch beyond the hand's reach, taken only where pins leave no other way. */
  beyondReach: 1000,
  /** A finger outside the frets of its position: the hand opens and has to come back. */
  extension: 1.2,
  /** In the automatic system low on the neck: the wide grip of one finger per fret instead of 1-2-4. */
  wideGrip: 0.3,
  /** Urgent. One finger on another fret of its string without a shift: it slides. */
  slide: 0.8,
  /** Urgent. One finger on two strings at one fret in succession: it rolls or hops. */
  sameFingerAcross: 0.5,
  /** Urgent. One finger on another string and another fret: the sound breaks off. */
  sameFingerJump: 1.2,
  /** The plucking hand changes to the neighbouring string. */
  crossing: 0.5,
  /** Each string skipped in a crossing. */
  skippedString: 0.3,
  /** A repeated note that moves to another place: it changes its colour. */
  repeatMoves: 2.5,
  /** A repeated note at its place with another finger. */
  repeatChangesFinger: 0.8,
  /** A note that is not plucked on another string than the one that leads to it, or slid to from an open one. */
  joinedApart: 20,
  /** A hammer-on or pull-off by one finger alone; a slide that changes the finger. */
  joinedFinger: 3,
  /** By finger 0 to 4: the ring and little fingers are the weaker ones. */
  finger: [0, 0, 0, 0.04, 0.1],
  /** A fret of the note's place: low places are what beginners know and where the strings sound fullest. */
  height: 0.02,
  /** An open string where they are to be avoided: it cannot be muted with the shape, and transposes badly. */
  openAvoided: 8,
  /** An open string where they are allowed: it rings on until someone stops it. */
  openAllowed: 0.4,
  /** An open string before a rest in a muted style: worse than where they are to be avoided, for it sounds into the silence. */
  openRings: 10,
  /** A fretted note that could have been an open string, where open strings are preferred. */
  openPassedOver: 1.5,
  /** A fret of hand position above the first: an open string next to high notes sounds alien. */
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
