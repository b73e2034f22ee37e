import type { Bpm, Metre } from '../base';

/** Every feel's name in a lesson, in the order in which a teacher is offered them. */
export const FEEL_IDS = [
  'early-ska',
  'rocksteady',
  'one-drop',
  'rockers',
  'steppers',
  'revival-ska',
  'soul-backbeat',
  'two-beat',
  'shuffle-blues',
  'walking-swing',
  'bossa',
  'disco',
  'waltz',
  'ballad',
  'funk',
  'calypso',
] as const;

export type FeelId = (typeof FEEL_IDS)[number];

/**
 * A rhythm in text, one character a step, the steps sharing the bar evenly: `x` a hit or the start of a
 * note, `X` an accented one, `s` a soft and `g` a ghost stroke, `o` an open hi-hat, `=` the note goes on, `-` silence.
 */
export type Grid = string;

export type DrumSound = 'kick' | 'snare' | 'rim' | 'closed hat' | 'open hat' | 'ride' | 'crash' | 'foot hat';

/**
 * Where a value comes from, in one of three kinds: a publication that states it, by its title; what musicians do without
 * a publication being named; or this program's own making. A remark follows the colon.
 */
export type Source = `published: ${string}` | `common practice${string}` | `ours${string}`;

/** A row of a grid with its source. */
export interface SourcedGrid {
  readonly grid: Grid;
  readonly source: Source;
}

export interface DrumRow extends SourcedGrid {
  readonly sound: DrumSound;
}

/** Patterns of the drums that a teacher can choose where publications disagree about a feel's; `usual` is its own. */
export const DRUM_WAYS = [
  'usual',
  'snare on two and four',
  'kick on every eighth',
  'snare on three',
  'rim on three, swung',
  'snare on three, swung',
] as const;
export type DrumWay = (typeof DRUM_WAYS)[number];

/** A one-bar rhythm for the bass. */
export interface RhythmCell extends SourcedGrid {
  /** The lowest teaching level (0–5) whose rhythm column allows it. */
  readonly level: number;
}

/** Everything a feel says about one metre. */
export interface FeelMetre {
  readonly metre: Metre;
  /**
   * How many of the beats that the feel's tempo counts one beat of the metre holds; 1 when left out. In 2/2 the beat is
   * a half note: two of the quarters of 4/4.
   */
  readonly beats?: number;
  readonly drums: readonly DrumRow[];
  /** Takes the drums' place in every second bar, for patterns of two bars. */
  readonly evenBars?: readonly DrumRow[];
  /** Replaces the drums in the last bar of a phrase; others are made of it (see the drummer). */
  readonly fill: readonly DrumRow[];
  /**
   * What a drummer adds here and there, softly, so that hardly a bar is like the last: in tenths of a chance a step,
   * `-` never.
   */
  readonly dressing?: readonly DrumRow[];
  /**
   * What a drummer does with the same pattern elsewhere in the form: other hats, which take the place of hats and ride
   * (of the foot's where they have one), and another kick or snare.
   */
  readonly variants?: {
    readonly hats: readonly (readonly DrumRow[])[];
    readonly strokes: readonly DrumRow[];
  };
  /** Where publications disagree about the pattern, the others': they take the place of the drums for who chooses them. */
  readonly ways?: {
    /** The feel's own pattern in words. */
    readonly usual: string;
    readonly others: readonly {
      readonly name: DrumWay;
      readonly drums: readonly DrumRow[];
      /** Long to short within a pair of eighths, for the whole band, where it differs from the feel's. */
      readonly swing?: { readonly ratio: number; readonly source: Source };
    }[];
  };
  readonly chops: SourcedGrid;
  readonly organ: { readonly left: SourcedGrid; readonly right: SourcedGrid };
}

export interface Feel {
  readonly id: FeelId;
  readonly name: string;
  /** One sentence for the teacher: where the bass plays and what to listen for. */
  readonly description: string;
  readonly tempo: {
    readonly least: Bpm;
    readonly usual: Bpm;
    readonly most: Bpm;
    /** Which way of counting the numbers use, for feels counted both ways. */
    readonly count: 'one way' | 'fast' | 'slow';
    readonly source: Source;
  };
  /** Long to short within a pair of eighths, by tempo; linear in between. One entry is a constant. */
  readonly swing: readonly { readonly bpm: Bpm; readonly ratio: number }[];
  /** Bars a phrase: 2 or 4. */
  readonly phraseLength: number;
  /** Least share of the time (0–1) that a whole line leaves silent in this feel. */
  readonly silence: { readonly least: number; readonly source: Source };
  /** How much of each technique belongs to the feel, from 0 (hardly) to 1 (it lives on it). */
  readonly weights: {
    readonly chordTones: number;
    readonly scaleSteps: number;
    readonly space: number;
    readonly source: Source;
  };
  /**
   * Figures that the feel is known by, in steps above the root (`R 5,` is root and fifth below); the composer
   * likes them better than others.
   */
  readonly figures: readonly { readonly shape: string; readonly source: Source }[];
  /**
   * Whether the bass is played muted and short: notes stop where they are written to, so an open string may not
   * ring on into a rest.
   */
  readonly bassTouch: { readonly muted: boolean; readonly source: Source };
  /** Whether a crash opens the section after a fill. */
  readonly crash?: { readonly source: Source };
  /** The last hit of a line that ends: what the drummer strikes, and whether everybody holds it. */
  readonly ending: { readonly drums: readonly DrumSound[]; readonly held: boolean; readonly source: Source };
  /** How many milliseconds each part lies behind the drummer, who keeps the time. */
  readonly layBack: {
    readonly bass: number;
    readonly chops: number;
    readonly organ: number;
    readonly source: Source;
  };
  /** What the musical rules grant the bass in this feel, and what they ask of it beyond the rules for all. */
  readonly bassRole: {
    /** A new chord may begin with an empty beat one, as an answer or by the habit of the line. */
    readonly mayRestOnOne: boolean;
    /** One note may be struck more than four times a bar. */
    readonly mayHammer: boolean;
    /** Octaves are pumped: the ear follows the low notes, and the upper ones leap from and to them as they like. */
    readonly mayPump: boolean;
    /** The drums drop on beat three: the bass sounds there in most bars and does not only double the chops. */
    readonly carriesThree: boolean;
    /** Its own rhythm is a dotted one, which its students read a level before others do. */
    readonly dotsEarly: boolean;
    /** Sixteenths are what it is made of, which its students read a level before others do. */
    readonly sixteenthsEarly: boolean;
    /** The chord's seventh belongs to its plainest figures, a level before others have it. */
    readonly seventhsEarly: boolean;
    readonly source: Source;
  };
  /** The metres it is played in; the first is the one it is at home in. */
  readonly metres: readonly FeelMetre[];
}
