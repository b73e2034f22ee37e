import { alike } from '../base';
import type { Lesson, LessonVersion, LineBar, LinePiece, Piece } from '../lesson';

/** An earlier state of a lesson, without its document. */
export interface KeptState {
  readonly key: string;
  /** Milliseconds since 1970. */
  readonly at: number;
  /** What it was kept before, as a person reads it; null where a new day began. */
  readonly before: string | null;
}

/** How many states are kept of a lesson: before large changes, and of days. */
const MOST = { changes: 20, days: 30 } as const;

/** The states that are let go when there are more than are kept: the oldest of their kind. */
export function statesToLetGo(states: readonly KeptState[]): readonly string[] {
  const latestFirst = [...states].sort((one, other) => other.at - one.at);
  return [
    ...latestFirst.filter(({ before }) => before !== null).slice(MOST.changes),
    ...latestFirst.filter(({ before }) => before === null).slice(MOST.days),
  ].map(({ key }) => key);
}

/** A change of more than this share of a line or a chart is a large one. */
const LARGE_SHARE = 0.5;

/** A line or chart of less than this can be written again in a moment. */
const LEAST = { bars: 2, characters: 8 } as const;

const sameNotes = (one: LineBar, other: LineBar | undefined): boolean =>
  other !== undefined &&
  (one.notes === other.notes ||
    (one.notes.length === other.notes.length &&
      one.notes.every((note, index) => {
        const there = other.notes[index];
        return (
          there !== undefined &&
          note.start === there.start &&
          note.duration === there.duration &&
          note.pitch.letter === there.pitch.letter &&
          note.pitch.alteration === there.pitch.alteration &&
          note.pitch.octave === there.pitch.octave
        );
      })));

/** Whether most of what a line had is other than it was. */
function lostLine(before: LinePiece, after: LinePiece): boolean {
  if (before.bars === after.bars) return false;
  const written = before.bars.filter(({ notes }) => notes.length > 0);
  const now = new Map([...after.bars, ...after.parked].map((bar) => [bar.id, bar]));
  const lost = written.filter((bar) => !sameNotes(bar, now.get(bar.id)));
  return lost.length >= LEAST.bars && lost.length > LARGE_SHARE * written.length;
}

/** Whether most of a text is gone: what stays is at its beginning and at its end. */
function lostText(before: string, after: string): boolean {
  const length = before.trim().length;
  if (before === after || length < LEAST.characters) return false;
  const most = Math.min(before.length, after.length);
  let head = 0;
  while (head < most && before[head] === after[head]) head += 1;
  let tail = 0;
  while (tail < most - head && before.at(-1 - tail) === after.at(-1 - tail)) tail += 1;
  return before.length - head - tail > LARGE_SHARE * before.length;
}

const holdsSomething = (piece: Piece): boolean =>
  piece.kind === 'line' &&
  (piece.chartText.trim() !== '' || piece.bars.some(({ notes }) => notes.length > 0));

/** Whether there is anything in a lesson that someone could want back. */
export const isWorthKeeping = (lesson: Lesson): boolean =>
  lesson.notes.trim() !== '' || lesson.pieces.some(holdsSomething);

/**
 * Whether so much of a lesson is changed that its state before is to be kept: a piece gone, most of a line other than
 * it was, most of a chart or of the notes for the student replaced.
 */
export function isLargeChange(before: Lesson, after: Lesson): boolean {
  if (before === after) return false;
  const now = new Map(after.pieces.map((piece) => [piece.id, piece]));
  return (
    lostText(before.notes, after.notes) ||
    before.pieces.some((piece) => {
      const there = now.get(piece.id);
      if (there === piece) return false;
      if (there === undefined) return holdsSomething(piece);
      return (
        piece.kind === 'line' &&
        (there.kind !== 'line' || lostLine(piece, there) || lostText(piece.chartText, there.chartText))
      );
    })
  );
}

/** A document and what of it is on the page: its open version as a plain lesson, or the document itself. */
export interface OnPage {
  readonly document: Lesson;
  readonly lesson: Lesson;
}

/** Whether two states of a version hold the same; how it is called is no part of that. */
const holdsSame = (one: LessonVersion, other: LessonVersion | undefined): boolean =>
  one === other || (other !== undefined && alike({ ...one, name: '' }, { ...other, name: '' }));

/**
 * Whether a change reaches what is not on the page: a version goes, or something is carried into the tune or into
 * versions that are not open. What follows the tune while the tune is edited was not carried anywhere.
 */
function reachesUnseen(before: Lesson, after: Lesson): boolean {
  const { versions = [], open } = before;
  if (versions.length === 0 && open === undefined) return false;
  const now = new Map((after.versions ?? []).map((version) => [version.id, version]));
  if (versions.some(({ id }) => !now.has(id))) return true;
  if (after.open !== open) return false;
  const isSameTune = before.pieces === after.pieces || alike(before.pieces, after.pieces);
  return isSameTune
    ? versions.some((version) => version.id !== open && !holdsSame(version, now.get(version.id)))
    : open !== undefined;
}

/**
 * Whether the state before a step is to be kept: what is on the page changes so much ({@link isLargeChange}), or
 * something changes that is not on the page. Where another version is opened, nothing changes at all.
 * @param elsewhere - the step is what another window made of the document, which keeps its own states of what it shows
 */
export function isLargeStep(before: OnPage, after: OnPage, elsewhere = false): boolean {
  if (before.document === after.document) return false;
  if (!elsewhere && reachesUnseen(before.document, after.document)) return true;
  return before.document.open === after.document.open
    ? isLargeChange(before.lesson, after.lesson)
    : isLargeChange(before.document, after.document);
}
