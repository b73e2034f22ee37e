import type { Finger, Fret, MidiNumber, Pins, SpelledPitch, StringNumber, Ticks } from '../base';

export interface Instrument {
  /** Open strings, the highest (string 1) first: G2 D2 A1 E1 for the standard bass. */
  readonly openStrings: readonly SpelledPitch[];
  readonly frets: Fret;
  /** Nut to bridge in millimetres: 864 for a 34-inch neck, 762 for a 30-inch one. */
  readonly scaleLength: number;
  /** Diagrams of the neck are mirrored for a left-handed player; staff and tab stay as they are. */
  readonly leftHanded?: boolean;
}

export interface Place {
  readonly string: StringNumber;
  readonly fret: Fret;
}

/**
 * How the fingers share the frets. One finger per fret: four fingers, four frets. 1-2-4: the hand spans a whole
 * step and the ring finger helps the little one. Automatic: where four frets are wider than the comfortable
 * span, 1-2-4 is preferred and one finger per fret taken where it saves a shift.
 */
export type HandSystem = 'one finger per fret' | '1-2-4' | 'automatic';

export interface HandSettings {
  readonly openStrings: 'avoid' | 'allow' | 'prefer';
  /** Distance between the outer fretting fingers in millimetres beyond which a stretch costs. */
  readonly comfortableSpan: number;
  /** Distance in millimetres beyond which a stretch is refused. */
  readonly reach: number;
  readonly highestFret: Fret;
  /** One finger per fret unless said otherwise. */
  readonly system?: HandSystem;
  /** 1-2-4 is used in positions below this fret and one finger per fret above; the whole neck unless said otherwise. */
  readonly oneTwoFourBelow?: Fret;
}

/** A note as the hand meets it: starts count from the beginning of the line as played once through. */
export interface NoteToFinger {
  readonly start: Ticks;
  readonly duration: Ticks;
  readonly midi: MidiNumber;
  readonly pins?: Pins;
  /** Marked short: the plucking hand stops it, so that even an open string does not ring on. */
  readonly short?: boolean;
  /** Leads to the note that follows at once, which is not plucked. */
  readonly joined?: Joint;
}

/** How the fretting hand sounds a note that is not plucked: by another finger on the string, or by sliding to it. */
export type Joint = 'by hand' | 'by slide';

/** How the line is played: what makes a shift easy or hard. */
export interface LineContext {
  /** See {@link ticksPerSecond}. */
  readonly ticksPerSecond: number;
  /** Length of the round when the line is played round and round; null when it is played once. */
  readonly loop: Ticks | null;
  /** The style wants silence in its rests: an open string must not ring on into one. */
  readonly muted?: boolean;
  /** Stretches of the line in which the teacher keeps the hand in a position. */
  readonly positions?: readonly PositionPin[];
  /** The bars of the line, in order; where they are given, equal bars are fingered alike. */
  readonly bars?: readonly { readonly start: Ticks; readonly end: Ticks }[];
}

/** The hand stays in a position for the notes that start in a stretch of the line. */
export interface PositionPin {
  readonly start: Ticks;
  /** The first tick after the stretch. */
  readonly end: Ticks;
  readonly position: Fret;
}

export interface FingeredNote extends Place {
  readonly finger: Finger;
  /** Hand position: the fret under the first finger (the position kept, for an open string). */
  readonly position: Fret;
}

export interface Fingering {
  /** One entry a note, in the same order; null where the pitch does not lie on the instrument. */
  readonly notes: readonly (FingeredNote | null)[];
  /** The whole cost in the search's own unit, documented there; lower is more comfortable. */
  readonly cost: number;
  /** Changes of hand position between sounding notes. */
  readonly shifts: number;
}
