import type { Sign } from './marks';

/** Where and how a sign stands in MusicXML 4.0. */
export type SignXml =
  | {
      readonly in: 'articulations' | 'technical' | 'notations';
      readonly element: string;
      readonly text?: string;
    }
  /** A pair of elements, at the note that is left and at the one that is reached. */
  | {
      readonly in: 'pair';
      readonly within: 'notations' | 'technical';
      readonly element: 'slur' | 'slide' | 'hammer-on' | 'pull-off';
      readonly text?: string;
    }
  | { readonly in: 'notehead'; readonly text: string }
  | { readonly in: 'play'; readonly mute: string }
  | { readonly in: 'tied'; readonly type: 'let-ring' };

/** Where a sign stands in text tab: in the string's line, or in a row of its own over the strings. */
export type SignText =
  | { readonly place: 'instead' | 'before' | 'over'; readonly text: string }
  /** `down` where the line goes down, when that is another sign. */
  | { readonly place: 'after'; readonly text: string; readonly down?: string };

/** What a sign changes in the sound of its note; what is left out stays as it is. */
export interface SignSound {
  /** Times the strength. */
  readonly strength?: number;
  /** The part of the written length that sounds. */
  readonly share?: number;
  /** No longer than this, in ticks. */
  readonly longest?: number;
  readonly tone?: Tone;
  /** How the note that follows begins: without a pluck, or as the end of a glide. */
  readonly onwards?: 'joined' | 'hammered' | 'gliding';
  /** A glide at the note's beginning or end, in half steps away from its pitch. */
  readonly glide?: { readonly at: 'beginning' | 'end'; readonly halfSteps: number };
}

/** What the string is made to sound like, besides the plain pluck of a finger. */
export type Tone = 'dead' | 'palm muted' | 'slapped' | 'popped';

/** How a sign is drawn; glyphs by their SMuFL code points (SMuFL 1.4). */
export type SignDrawing =
  /** An x in place of the head and of the fret. */
  | { readonly as: 'head' }
  /** On the staff, at the side of the head that has no stem. */
  | { readonly as: 'at the head'; readonly above: number; readonly below: number }
  /** Over the staff whatever the stem. */
  | { readonly as: 'over the staff'; readonly glyph: number }
  /** A letter over the tab; over the staff where there is no tab. */
  | { readonly as: 'letter'; readonly text: string }
  /** A word and a broken line over all notes in a row that have the sign, where a letter would stand. */
  | { readonly as: 'stretch'; readonly text: string }
  /** A curve between the notes on staff and tab, its letter over the tab's. */
  | { readonly as: 'curve'; readonly letter?: string }
  /** A line between the notes on staff and tab. */
  | { readonly as: 'line' }
  /** A short line at the note on staff and tab. */
  | { readonly as: 'stub'; readonly side: 'before' | 'after'; readonly rises: boolean };

export interface SignRow {
  /** In a sentence and on a button. */
  readonly word: string;
  /** What the player does. */
  readonly meaning: string;
  readonly xml: SignXml;
  readonly text: SignText;
  readonly sound: SignSound;
  readonly drawn: SignDrawing;
}

const SIXTEENTH = 240;

/**
 * Everything about each sign, in one row. Elements: MusicXML 4.0 (W3C Music Notation Community Group, 2021);
 * glyphs: SMuFL 1.4; letters of text tab, and the numbers of the sound, which are heard within a line and not
 * measured: common practice, no source.
 */
export const SIGNS: Readonly<Record<Sign, SignRow>> = {
  accent: {
    word: 'accent',
    meaning: 'Louder than the notes around it.',
    xml: { in: 'articulations', element: 'accent' },
    text: { place: 'over', text: '>' },
    sound: { strength: 116 / 92 },
    drawn: { as: 'at the head', above: 0xe4a0, below: 0xe4a1 },
  },
  'strong accent': {
    word: 'strong accent',
    meaning: 'Struck hard: clearly louder than an accent.',
    xml: { in: 'articulations', element: 'strong-accent' },
    text: { place: 'over', text: '^' },
    sound: { strength: 125 / 92 },
    drawn: { as: 'at the head', above: 0xe4ac, below: 0xe4ad },
  },
  staccato: {
    word: 'staccato',
    meaning: 'Short: half its length sounds.',
    xml: { in: 'articulations', element: 'staccato' },
    text: { place: 'over', text: '.' },
    sound: { share: 0.5 },
    drawn: { as: 'at the head', above: 0xe4a2, below: 0xe4a3 },
  },
  tenuto: {
    word: 'tenuto',
    meaning: 'Held for its full length, and leaned on a little.',
    xml: { in: 'articulations', element: 'tenuto' },
    text: { place: 'over', text: '-' },
    sound: { strength: 1.05 },
    drawn: { as: 'at the head', above: 0xe4a4, below: 0xe4a5 },
  },
  portato: {
    word: 'portato',
    meaning: 'Each note leaned on and let go a little before the next.',
    xml: { in: 'articulations', element: 'detached-legato' },
    text: { place: 'over', text: '-.' },
    sound: { strength: 1.03, share: 0.8 },
    drawn: { as: 'at the head', above: 0xe4b2, below: 0xe4b3 },
  },
  'let ring': {
    word: 'let ring',
    meaning: 'The string rings on under the notes that follow on other strings.',
    xml: { in: 'tied', type: 'let-ring' },
    text: { place: 'over', text: 'lr' },
    sound: {},
    drawn: { as: 'stretch', text: 'let ring' },
  },
  ghost: {
    word: 'ghost note',
    meaning: 'A tap on a damped string, without a pitch.',
    xml: { in: 'notehead', text: 'x' },
    text: { place: 'instead', text: 'x' },
    sound: { strength: 50 / 92, longest: SIXTEENTH, tone: 'dead' },
    drawn: { as: 'head' },
  },
  'palm mute': {
    word: 'palm mute',
    meaning: 'Damped by the palm beside the bridge: dark and short.',
    xml: { in: 'play', mute: 'palm' },
    text: { place: 'over', text: 'pm' },
    sound: { strength: 0.9, tone: 'palm muted' },
    drawn: { as: 'stretch', text: 'P.M.' },
  },
  i: {
    word: 'index finger',
    meaning: 'Plucked with the index finger (i).',
    xml: { in: 'technical', element: 'pluck', text: 'i' },
    text: { place: 'over', text: 'i' },
    sound: {},
    drawn: { as: 'letter', text: 'i' },
  },
  m: {
    word: 'middle finger',
    meaning: 'Plucked with the middle finger (m).',
    xml: { in: 'technical', element: 'pluck', text: 'm' },
    text: { place: 'over', text: 'm' },
    sound: {},
    drawn: { as: 'letter', text: 'm' },
  },
  slap: {
    word: 'slap',
    meaning: 'Struck with the thumb against the end of the fingerboard.',
    xml: { in: 'technical', element: 'other-technical', text: 'slap' },
    text: { place: 'over', text: 'S' },
    sound: { strength: 1.1, tone: 'slapped' },
    drawn: { as: 'letter', text: 'S' },
  },
  pop: {
    word: 'pop',
    meaning: 'Pulled away from the fingerboard and let snap back.',
    xml: { in: 'technical', element: 'other-technical', text: 'pop' },
    text: { place: 'over', text: 'P' },
    sound: { strength: 1.15, tone: 'popped' },
    drawn: { as: 'letter', text: 'P' },
  },
  'slide from below': {
    word: 'slide in from below',
    meaning: 'The finger slides up into the note from a fret or two below.',
    xml: { in: 'articulations', element: 'scoop' },
    text: { place: 'before', text: '/' },
    sound: { glide: { at: 'beginning', halfSteps: -2 } },
    drawn: { as: 'stub', side: 'before', rises: true },
  },
  'slide from above': {
    word: 'slide in from above',
    meaning: 'The finger slides down into the note from a fret or two above.',
    xml: { in: 'articulations', element: 'plop' },
    text: { place: 'before', text: '\\' },
    sound: { glide: { at: 'beginning', halfSteps: 2 } },
    drawn: { as: 'stub', side: 'before', rises: false },
  },
  'hammer-on': {
    word: 'hammer-on',
    meaning: 'The next, higher note is sounded by the fretting finger alone.',
    xml: { in: 'pair', within: 'technical', element: 'hammer-on', text: 'H' },
    text: { place: 'after', text: 'h' },
    sound: { onwards: 'hammered' },
    drawn: { as: 'curve', letter: 'H' },
  },
  'pull-off': {
    word: 'pull-off',
    meaning: 'The next, lower note is sounded by pulling the fretting finger off.',
    xml: { in: 'pair', within: 'technical', element: 'pull-off', text: 'P' },
    text: { place: 'after', text: 'p' },
    sound: { onwards: 'hammered' },
    drawn: { as: 'curve', letter: 'P' },
  },
  slide: {
    word: 'slide to the next note',
    meaning: 'The finger slides along the string to the next note, which is not plucked.',
    xml: { in: 'pair', within: 'notations', element: 'slide' },
    text: { place: 'after', text: '/', down: '\\' },
    sound: { onwards: 'gliding' },
    drawn: { as: 'line' },
  },
  slur: {
    word: 'slur',
    meaning: 'Joined to the next note without a new pluck.',
    xml: { in: 'pair', within: 'notations', element: 'slur' },
    text: { place: 'after', text: '_' },
    sound: { onwards: 'joined' },
    drawn: { as: 'curve' },
  },
  'slide down': {
    word: 'slide out downwards',
    meaning: 'The finger slides down the string as the note ends.',
    xml: { in: 'articulations', element: 'falloff' },
    text: { place: 'after', text: '\\' },
    sound: { glide: { at: 'end', halfSteps: -5 } },
    drawn: { as: 'stub', side: 'after', rises: false },
  },
  'slide up': {
    word: 'slide out upwards',
    meaning: 'The finger slides up the string as the note ends.',
    xml: { in: 'articulations', element: 'doit' },
    text: { place: 'after', text: '/' },
    sound: { glide: { at: 'end', halfSteps: 5 } },
    drawn: { as: 'stub', side: 'after', rises: true },
  },
  fermata: {
    word: 'fermata',
    meaning: 'Held at will; the rhythm section here keeps its time.',
    xml: { in: 'notations', element: 'fermata' },
    text: { place: 'over', text: '(.)' },
    sound: {},
    drawn: { as: 'over the staff', glyph: 0xe4c0 },
  },
};
