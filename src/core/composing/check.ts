import { barNames, capitalised } from '../base';
import { chordsIn } from '../chart';
import {
  deriveSheet,
  isMeant,
  isOwn,
  type Lesson,
  type LinePiece,
  type LineSheet,
  linePiece,
} from '../lesson';
import { checkAims } from './aim-check';
import { checkHand, type Repair } from './hand-check';
import { checkMusic } from './music-check';

/** Something a careful colleague would point out about a lesson. */
export interface Finding {
  readonly pieceId: string;
  /** Which side of the lesson it is about: notes that are missing or parked, the aims, the hand or the music. */
  readonly about: 'notes' | 'aims' | 'hand' | 'music';
  /** Index of the written bar it is about, or null for the piece as a whole. */
  readonly bar: number | null;
  /**
   * What it finds, of data alone: it stays the same however it is worded and whatever stands before its bar. With
   * side and bar it names the finding, for those that are remembered as meant.
   */
  readonly id: string;
  /** One sentence: what, where and why. */
  readonly message: string;
  /** Looks for a repair when it is asked for; left out where there is none to look for. */
  readonly repair?: () => Repair | null;
}

/** A line that no one has begun. An empty bar among others is no finding: it may be silent, or not yet written. */
function withoutNotes(sheet: LineSheet): Finding[] {
  if (sheet.bars.some(({ notes, kept }) => notes.length > 0 || kept)) return [];
  const empty = sheet.bars.flatMap((bar, index) =>
    bar.notes.length === 0 && chordsIn(bar.written).length > 0 ? [{ index, number: bar.written.number }] : [],
  );
  const [first] = empty;
  if (first === undefined) {
    return [];
  }
  const which = `${capitalised(barNames(empty.map(({ number }) => number)))} ${empty.length === 1 ? 'has' : 'have'}`;
  return [
    {
      pieceId: sheet.id,
      about: 'notes',
      bar: first.index,
      id: 'no notes',
      message: `${which} no notes yet: compose the line, take an idea or write by hand.`,
    },
  ];
}

function parkedBars({ id, parked: all, parkedSections, aims }: LinePiece): Finding[] {
  const waiting = new Set([...all, ...parkedSections].map((part) => part.id));
  // What was only composed is composed again, and need not trouble anyone.
  const parked = all.filter(isOwn);
  const waitingAims = aims.filter(({ where }) => where.kind !== 'line' && waiting.has(where.id)).length;
  const bars = parked.length === 1 ? 'One bar of the line is' : `${parked.length} bars of the line are`;
  const found: Finding[] = [];
  if (parked.length > 0) {
    found.push({
      pieceId: id,
      about: 'notes',
      bar: null,
      id: 'parked bars',
      message: `${bars} parked, because the chart no longer has a place for ${parked.length === 1 ? 'it; write its chords again and it comes back' : 'them; write their chords again and they come back'}.`,
    });
  }
  if (waitingAims > 0) {
    found.push({
      pieceId: id,
      about: 'notes',
      bar: null,
      id: 'parked aims',
      message:
        waitingAims === 1
          ? 'One aim waits for a bar or section that the chart no longer has.'
          : `${waitingAims} aims wait for bars or sections that the chart no longer has.`,
    });
  }
  return found;
}

/** All findings about a lesson, piece by piece in the order of the sheet; an empty list means nothing to mend. */
export function checkLesson(lesson: Lesson): readonly Finding[] {
  return lesson.pieces.flatMap((piece) => {
    const sheet = deriveSheet(piece, lesson.instrument, lesson.noteNames);
    if (piece.kind !== 'line' || sheet.kind !== 'line') {
      return [];
    }
    const of = (about: Finding['about']) => (finding: Omit<Finding, 'pieceId' | 'about'>) => ({
      pieceId: piece.id,
      about,
      ...finding,
    });
    return [
      ...withoutNotes(sheet),
      ...checkAims(piece, sheet, lesson.instrument).map(of('aims')),
      ...checkHand(piece, lesson.instrument, lesson.noteNames).map(of('hand')),
      ...checkMusic(piece, sheet, lesson.instrument).map(of('music')),
      ...parkedBars(piece),
    ];
  });
}

const nameOf = ({ pieceId, about, bar, id }: Finding): string => [pieceId, about, bar, id].join(' ');

/**
 * What a change brought: findings that were not there before it, and that nobody answered with *I mean it*, those of a
 * bar first.
 * @param bar - index of the written bar that was changed
 */
export function broughtBy(before: Lesson, after: Lesson, pieceId: string, bar: number): readonly Finding[] {
  const piece = linePiece(after, pieceId);
  if (piece === null) return [];
  const were = new Set(checkLesson(before).map(nameOf));
  const brought = checkLesson(after).filter(
    (each) => each.pieceId === pieceId && !were.has(nameOf(each)) && !isMeant(piece, each),
  );
  return [...brought.filter((each) => each.bar === bar), ...brought.filter((each) => each.bar !== bar)];
}
