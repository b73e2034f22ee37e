import type { Ticks } from './units';

/**
 * The marks of a note by what they say about it. A note has at most one of each row, so marks of one row exclude
 * each other: a note is plucked by one thing, and left in one way. Across rows there is one exclusion more: what
 * rings on is neither dead nor muted (see {@link withMark}).
 */
export const MARK_CHOICES = {
  /** Louder than its neighbours; `strong accent` is the upright wedge, struck hard. */
  stress: ['accent', 'strong accent'],
  /** How much of its written length sounds; `let ring` goes on beyond it. */
  length: ['staccato', 'tenuto', 'portato', 'let ring'],
  /** How the string is damped: a ghost (dead) note has no pitch, a palm-muted one is dark and short. */
  damping: ['ghost', 'palm mute'],
  /** What plucks the string: index finger, middle finger, the thumb's slap, a finger's pop. */
  pluck: ['i', 'm', 'slap', 'pop'],
  /** How the finger comes to the note's fret. */
  entry: ['slide from below', 'slide from above'],
  /**
   * How the note is left. The first three lead to the note that follows without silence, which is not plucked
   * again: `hammer` by the fretting hand alone, a hammer-on to a higher note and a pull-off to a lower one; `slide`
   * along the string; `slur` in any way. The others lead to nothing. A note that is tied on goes on sounding, so
   * the tie goes first and these wait until it is taken away.
   */
  exit: ['hammer', 'slide', 'slur', 'slide down', 'slide up'],
  /** Held at will. */
  pause: ['fermata'],
} as const;

export type MarkRow = keyof typeof MARK_CHOICES;
export type Mark = (typeof MARK_CHOICES)[MarkRow][number];

/** At most one choice a row; see {@link MARK_CHOICES}. */
export type NoteMarks = { readonly [Row in MarkRow]?: (typeof MARK_CHOICES)[Row][number] };

/** The rows in the order in which marks are listed. */
const MARK_ROWS: readonly MarkRow[] = ['stress', 'length', 'damping', 'pluck', 'entry', 'exit', 'pause'];

/** Every mark, in the order in which they are listed. */
export const MARKS: readonly Mark[] = MARK_ROWS.flatMap((row): readonly Mark[] => MARK_CHOICES[row]);

interface Marked {
  readonly marks?: NoteMarks;
}

const rowOf = (mark: Mark): MarkRow =>
  MARK_ROWS.find((row) => MARK_CHOICES[row].some((choice) => choice === mark)) ?? 'stress';

/** A note's marks in their order. */
export const marksOf = ({ marks }: Marked): readonly Mark[] =>
  marks === undefined ? [] : MARK_ROWS.flatMap((row) => marks[row] ?? []);

export const hasMark = ({ marks }: Marked, mark: Mark): boolean =>
  marks !== undefined && MARK_ROWS.some((row) => marks[row] === mark);

/** Whether two marks cannot stand at one note. */
export function excludes(one: Mark, other: Mark): boolean {
  if (one === other) return false;
  if (rowOf(one) === rowOf(other)) return true;
  const rings = one === 'let ring' || other === 'let ring';
  return rings && (rowOf(one) === 'damping' || rowOf(other) === 'damping');
}

function setMarks<Note extends Marked>(note: Note, marks: readonly Mark[]): Note {
  const { marks: _, ...bare } = note;
  // A note without its marks and with new ones has the type that it had.
  if (marks.length === 0) return bare as Note;
  return { ...bare, marks: Object.fromEntries(marks.map((mark) => [rowOf(mark), mark])) } as unknown as Note;
}

/** The note with a mark; those that the mark excludes give way to it. */
export function withMark<Note extends Marked>(note: Note, mark: Mark): Note {
  if (hasMark(note, mark)) return note;
  const kept = marksOf(note).filter((other) => !excludes(mark, other));
  return setMarks(
    note,
    MARKS.filter((each) => each === mark || kept.includes(each)),
  );
}

/** The note without a mark; the same note where it has none. */
export const withoutMark = <Note extends Marked>(note: Note, mark: Mark): Note =>
  hasMark(note, mark)
    ? setMarks(
        note,
        marksOf(note).filter((other) => other !== mark),
      )
    : note;

/** A mark as it is read where the next note is known: `hammer` is a hammer-on or a pull-off. */
export type Sign = Exclude<Mark, 'hammer'> | 'hammer-on' | 'pull-off';

/** What a mark is read as at a note of MIDI number `from` that is followed by `to`, or by nothing (null). */
export const signOf = (mark: Mark, from: number, to: number | null): Sign =>
  mark !== 'hammer' ? mark : to !== null && to < from ? 'pull-off' : 'hammer-on';

/** Whether a mark leads to the note that follows, which is then not plucked. */
export const isLink = (mark: Mark | undefined): mark is 'hammer' | 'slide' | 'slur' =>
  mark === 'hammer' || mark === 'slide' || mark === 'slur';

/** How strong a line is played from some place on, softest first. */
export const DYNAMIC_LEVELS = ['ppp', 'pp', 'p', 'mp', 'mf', 'f', 'ff', 'fff'] as const;
export type DynamicLevel = (typeof DYNAMIC_LEVELS)[number];

/**
 * A sign under the staff. A hairpin runs from its sign to the next sign of the line, in this written bar or a later
 * one, or to the line's end: so hairpins cannot overlap. A sign with neither level nor hairpin ends one.
 */
export interface DynamicSign {
  /** From its bar's beginning; a bar's length is its end. At most one sign a place. */
  readonly at: Ticks;
  /** How loud it is from here on. */
  readonly level?: DynamicLevel;
  readonly hairpin?: 'crescendo' | 'diminuendo';
}
