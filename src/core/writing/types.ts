import type { LineNote, StringNumber, Ticks } from '../base';
import type { Lesson } from '../lesson';
import type { Chord, Key } from '../theory';

/** A moment of the written line: bar by index from 0, ticks from the bar's beginning. */
export interface Moment {
  readonly bar: number;
  readonly tick: number;
}

/** A note cut or copied, with the chord it stood over, so that it can be written over another one by its degree. */
export interface CopiedNote {
  readonly note: LineNote;
  /** Ticks from the beginning of the passage. */
  readonly at: number;
  /** Null where there was no chord: then it can only be written as it is. */
  readonly over: { readonly chord: Chord; readonly key: Key } | null;
}

/** What was cut or copied. */
export interface Passage {
  readonly length: number;
  readonly notes: readonly CopiedNote[];
}

/** What the digits mean: degrees over the sounding chord, or frets on the string at hand. */
export type Digits = 'degrees' | 'frets';

/**
 * Where someone is writing. It is no part of the lesson: it is neither saved nor undone, only fitted to what the
 * lesson has become (see `fitPencil`).
 */
export interface Pencil {
  readonly pieceId: string;
  readonly bar: number;
  /** Where the note or silence at hand begins. */
  readonly tick: number;
  /** Where the next note goes when the one at hand was just written; null: what is at hand is written over. */
  readonly next: Moment | null;
  /** The running note value: how long the next note in a silence is. */
  readonly value: Ticks;
  /** The value that runs again after the next note; a dotted note lends the next one what fills its beat. */
  readonly after: Ticks | null;
  /** The other end of what is selected; null selects what is at hand alone. */
  readonly from: Moment | null;
  /** *Rhythm first*: a bar that has got its rhythm is gone through again from its first note, for its degrees. */
  readonly way: 'note by note' | 'rhythm first';
  readonly digits: Digits;
  /** The string that frets are written on. */
  readonly string: StringNumber;
  readonly copied: Passage | null;
}

/** Why a gesture could not be done; each has its sentence in `refusalWords`. */
export type Refusal =
  | 'no line'
  | 'end of the line'
  | 'no note at hand'
  | 'off the instrument'
  | 'above the neck'
  | 'below the neck'
  | 'no other string'
  | 'no such string'
  | 'no longer value'
  | 'no shorter value'
  | 'cannot be dotted'
  | 'cannot be a triplet'
  | 'nothing to tie to'
  | 'no room before'
  | 'no room behind'
  | 'not to be split'
  | 'nothing to join'
  | 'no bar before'
  | 'bar before is silent'
  | 'nothing copied'
  | 'nothing selected'
  | 'bar is silent'
  | 'no chord'
  | 'easy already'
  | 'easy without chords'
  | 'busy already'
  | 'sparse already'
  | 'silent on one already'
  | 'one beat only'
  | 'same rhythm already'
  | 'turns on itself'
  | 'too much in the bar'
  | 'idea is used up'
  | 'nothing to mend'
  | 'too many notes'
  | 'feel has no rhythm'
  | 'nothing tapped'
  | 'no louder sign'
  | 'no softer sign'
  | 'no sign here'
  | 'same word already';

/** What a gesture did, as data; `didWords` makes the sentence, `stepName` the name of the step for *Undo*. */
export interface Did {
  readonly kind: DidKind;
  /** The bars it touched, by index from 0. */
  readonly bars: readonly number[];
  /** Particulars that the sentence tells, where there are any. */
  readonly detail?: string;
  /** Notes that were there before and are not any more. */
  readonly replaced?: number;
  /** Taps that got no note of their own. */
  readonly leftOut?: number;
  /** Bars that now hold too much. */
  readonly tooMuch?: readonly number[];
}

/** Before the number of a bar whose rhythm is longer than the bar that takes it. */
export const BEGINNING = 'beginning of ';

export type DidKind =
  | 'write'
  | 'silence'
  | 'pitch'
  | 'octave'
  | 'string'
  | 'length'
  | 'tie'
  | 'move'
  | 'split'
  | 'join'
  | 'take out'
  | 'empty'
  | 'copy'
  | 'cut'
  | 'paste'
  | 'repeat'
  | 'rhythm'
  | 'fill'
  | 'mend'
  | 'easier'
  | 'busier'
  | 'sparser'
  | 'silent on one'
  | 'inverted'
  | 'leading'
  | 'mark'
  | 'dynamics'
  | 'word'
  | 'go';

/** A gesture's outcome. A lesson that did not change is the very same object. */
export interface Done {
  readonly lesson: Lesson;
  readonly pencil: Pencil;
  readonly did: Did | { readonly kind: 'refused'; readonly why: Refusal };
}

/** Something that can be done with the pencil. Pure: the same lesson and pencil give the same outcome. */
export type Gesture = (lesson: Lesson, pencil: Pencil) => Done;
