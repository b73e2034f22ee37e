import { barTicks, type Steps } from '../base';
import { matchBars, soundingSignature } from '../chart';
import {
  changeLine,
  freshIds,
  isHeld,
  type Lesson,
  type LinePiece,
  linePiece,
  MOST_TAKES,
  readPiece,
  type StoredTake,
} from '../lesson';
import {
  type ComposeRequest,
  composeLine,
  isAnotherTake,
  type LineNotes,
  anotherTake as nextTake,
  rankedTakes,
  type Take,
} from '../line';
import { type Composition, composeRequest, withLine } from './compose';

const notesOf = ({ bars }: Pick<LinePiece | StoredTake, 'bars'>): LineNotes => bars.map(({ notes }) => notes);

const sameLine = (one: LineNotes, other: LineNotes): boolean => JSON.stringify(one) === JSON.stringify(other);

/** Whether a take is the line of the piece as it stands. */
export const isInLine = (piece: LinePiece, take: StoredTake): boolean =>
  sameLine(notesOf(piece), notesOf(take));

/** The piece with a line among its takes, the oldest making way; a line that is there already stays as it is. */
function remembered(
  piece: LinePiece,
  line: Pick<StoredTake, 'seed' | 'cost'> & { readonly notes: LineNotes },
  freshId: () => string,
): LinePiece {
  const { seed, cost, notes } = line;
  const known = piece.takes.some((take) => sameLine(notesOf(take), notes));
  if (known || notes.every((bar) => bar.length === 0)) return piece;
  const bars = piece.bars.map(({ harmony }, index) => ({ harmony, notes: notes[index] ?? [] }));
  return { ...piece, takes: [...piece.takes, { id: freshId(), seed, cost, bars }].slice(-MOST_TAKES) };
}

/** What the line of the piece cost the composer; null when it was changed since. */
function costNow(request: ComposeRequest, notes: LineNotes): number | null {
  const line = composeLine(request);
  return sameLine(line.bars, notes) ? line.cost : null;
}

const NOTHING_FREE = 'Every bar is kept, so there is nothing to compose.';
const NOTHING_ELSE =
  'There is no other line for these bars at this level; allow another technique or keep fewer bars.';
const NOTHING_NEW = 'No new line is left for these bars: this one is among the takes already.';

/** Takes of the line room that are looked at for one that is not among the takes already. */
const ROUNDS = 4;

interface Unheard {
  /** Null where there is no other line at all. */
  readonly take: Take | null;
  readonly heard: boolean;
}

/** The next take that differs from every take of the piece, else the next that differs from the line. */
function nextUnheard(request: ComposeRequest, piece: LinePiece): Unheard {
  const before = notesOf(piece);
  const others = piece.takes.map(notesOf);
  let first: Take | null = null;
  let { seed } = request;
  for (let round = 0; round < ROUNDS; round += 1) {
    const take = nextTake({ ...request, seed }, before);
    if (take.seed === seed) break;
    first ??= take;
    if (others.every((other) => isAnotherTake(other, take.bars, request.kept))) return { take, heard: false };
    seed = take.seed;
  }
  return { take: first, heard: true };
}

/**
 * Another line for the bars that are free: at least a quarter of them are other bars. One
 * that is not among the takes yet goes before; where there is no other line, nothing changes and a remark says so.
 * The line that was there and the new one are kept as takes.
 */
export function anotherTake(lesson: Lesson, pieceId: string): Composition {
  const piece = linePiece(lesson, pieceId);
  if (piece === null) return { lesson, remarks: [] };
  if (piece.bars.length > 0 && piece.bars.every(isHeld)) return { lesson, remarks: [NOTHING_FREE] };
  const request = composeRequest(lesson, piece);
  const { take, heard } = nextUnheard(request, piece);
  if (take === null) return { lesson, remarks: [NOTHING_ELSE] };
  const fresh = freshIds(lesson);
  const notes = notesOf(piece);
  return {
    lesson: changeLine(lesson, pieceId, (each) => {
      const before = { seed: each.seed, cost: costNow(request, notes), notes };
      const after = { seed: take.seed >>> 0, cost: take.cost, notes: take.bars };
      const kept = [before, after].reduce(
        (known, line) => remembered(known, line, () => fresh('take')),
        each,
      );
      return withLine(kept, take, after.seed);
    }),
    remarks: heard ? [...take.remarks, NOTHING_NEW] : take.remarks,
  };
}

/** How many lines are composed to be compared. */
const SEVERAL = 5;

/** Composes several takes to choose from, one a step; the line stays as it is. */
export function* severalTakes(lesson: Lesson, pieceId: string): Steps<Composition> {
  const piece = linePiece(lesson, pieceId);
  if (piece === null) return { lesson, remarks: [] };
  if (piece.bars.length > 0 && piece.bars.every(isHeld)) return { lesson, remarks: [NOTHING_FREE] };
  const request = composeRequest(lesson, piece);
  const after = Math.max(piece.seed, ...piece.takes.map(({ seed }) => seed));
  const found = yield* rankedTakes({ ...request, seed: (after + 1) >>> 0 }, SEVERAL);
  const fresh = freshIds(lesson);
  const notes = notesOf(piece);
  const changed = changeLine(lesson, pieceId, (each) => {
    const lines = [
      { seed: each.seed, cost: costNow(request, notes), notes },
      ...found.map((take) => ({ seed: take.seed >>> 0, cost: take.cost, notes: take.bars })),
    ];
    return lines.reduce((known, line) => remembered(known, line, () => fresh('take')), each);
  });
  return { lesson: changed, remarks: changed === lesson ? [NOTHING_ELSE] : [] };
}

/**
 * Puts a take back into the line. Kept bars stay as they are, and so does a bar whose chords the take does not know.
 */
export const recallTake = (lesson: Lesson, pieceId: string, takeId: string): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    const take = piece.takes.find(({ id }) => id === takeId);
    if (take === undefined) return piece;
    const { chart } = readPiece(piece);
    const matches = matchBars(
      take.bars.map(({ harmony }) => harmony),
      chart.bars.map(soundingSignature),
    );
    const bars = piece.bars.map(({ notes }, index) => {
      const written = chart.bars[index];
      const recalled = take.bars[matches[index] ?? -1]?.notes;
      const fits =
        written !== undefined &&
        recalled?.every(({ start, duration }) => start + duration <= barTicks(written.metre));
      return recalled !== undefined && fits === true ? recalled : notes;
    });
    return withLine(piece, { bars }, take.seed);
  });
