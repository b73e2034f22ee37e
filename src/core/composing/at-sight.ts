import { barNames, hashText, midiNumber, midiOf } from '../base';
import {
  type AimTerms,
  addPiece,
  changeLine,
  deriveSheet,
  LESSON_LIMITS,
  type Lesson,
  type LinePiece,
  type LineSheet,
  linePiece,
  overChordsOf,
  renamePiece,
  setAim,
  setCount,
} from '../lesson';
import { type Composition, composePiece } from './compose';

/** Lines that are composed for one that repeats no bar of the line it is made from. */
const TRIES = 6;

const NOTHING_WRITTEN = 'The line has no notes yet, so there is nothing to make bars of that read like it.';
const NO_CHORDS = 'No whole bar of the line has a chord, so there is nothing to write bars over.';

/** What bars may ask of the hand: the range of a line, and its one hand position where it has but one. */
function reachOf(sheet: LineSheet): AimTerms {
  const notes = sheet.bars.flatMap((bar) => bar.notes);
  const midis = notes.map(({ note }) => Number(midiOf(note.pitch)));
  const [position, ...others] = new Set(notes.flatMap(({ fingered }) => fingered?.position ?? []));
  return {
    lowest: midiNumber(Math.min(...midis)),
    highest: midiNumber(Math.max(...midis)),
    ...(position === undefined || position < 1 || others.length > 0 ? {} : { position }),
  };
}

/** Bars of one piece by chords and notes: equal where they read the same. */
const readBars = ({ bars }: LinePiece): readonly string[] =>
  bars.map(({ harmony, notes }) =>
    JSON.stringify([
      harmony,
      notes.map(({ start, duration, pitch }) => [start, duration, Number(midiOf(pitch))]),
    ]),
  );

/** The written bars of a piece that another line has, too, by their numbers. */
function knownBars(piece: LinePiece, from: LinePiece): readonly number[] {
  const known = new Set(readBars(from));
  return readBars(piece).flatMap((bar, index) => (known.has(bar) ? [index + 1] : []));
}

/** The lesson with an empty line behind another one, over its chords and with all that is asked of it. */
function withEmptyLine(
  lesson: Lesson,
  line: LinePiece,
  { bars, reach }: { readonly bars: number; readonly reach: AimTerms },
): { readonly lesson: Lesson; readonly id: string } | null {
  const added = addPiece(lesson, 'line', line.id);
  const made = added.pieces[added.pieces.findIndex(({ id }) => id === line.id) + 1];
  if (made === undefined) return null;
  const { id } = made;
  const named = renamePiece(added, id, `At sight: ${line.name}`.slice(0, LESSON_LIMITS.title));
  const counted = line.count === undefined ? named : setCount(named, id, line.count);
  const written = overChordsOf(line, counted, id, bars);
  return written && { lesson: setAim(written, id, { kind: 'line' }, reach), id };
}

/**
 * Adds bars to be read at sight behind a line: over its chords and in its key, of its level, techniques, range and, where
 * it keeps one, hand position, and as far as these leave a choice none that the line has.
 * @param bars how many
 */
export function barsAtSight(lesson: Lesson, pieceId: string, bars: number): Composition {
  const line = linePiece(lesson, pieceId);
  const sheet = line && deriveSheet(line, lesson.instrument, lesson.noteNames);
  if (line === null || sheet?.kind !== 'line' || sheet.bars.every(({ notes }) => notes.length === 0))
    return { lesson, remarks: [NOTHING_WRITTEN] };
  const empty = withEmptyLine(lesson, line, { bars, reach: reachOf(sheet) });
  if (empty === null) return { lesson, remarks: [NO_CHORDS] };
  const first = hashText(`at sight ${lesson.id} ${empty.id}`);
  const attempt = (turn: number) => {
    const seeded = changeLine(empty.lesson, empty.id, (piece) => ({ ...piece, seed: (first + turn) >>> 0 }));
    const made = composePiece(seeded, empty.id);
    const piece = linePiece(made.lesson, empty.id);
    return { ...made, known: piece === null ? [] : knownBars(piece, line) };
  };
  let best = attempt(0);
  for (let turn = 1; turn < TRIES && best.remarks.length + best.known.length > 0; turn += 1) {
    const other = attempt(turn);
    const fewer = other.remarks.length - best.remarks.length || other.known.length - best.known.length;
    if (fewer < 0) best = other;
  }
  const { known, remarks } = best;
  const said =
    known.length === 0
      ? []
      : [
          `Of the bars to read at sight, ${barNames(known)} ${known.length === 1 ? 'is' : 'are'} in the line, too.`,
        ];
  return { lesson: best.lesson, remarks: [...remarks, ...said] };
}
