import { barTicks, counted, midiOf } from '../base';
import { deriveSheets, type Lesson, type LineSheet } from '../lesson';

/**
 * A line as it is compared with others: how its notes follow each other, wherever on the neck and in whatever key it
 * stands. Figures are compared by runs of intervals and durations between onsets, as melodic n-grams are (Müllensiefen
 * and Frieler, *Cognitive adequacy in the measurement of melodic similarity*, 2004; from memory).
 */
export interface Sketch {
  /** Of each struck note but the first: half steps from the one before, and ticks since it began. */
  readonly moves: readonly string[];
  /** By bar with notes: when its notes begin, in ticks. */
  readonly rhythms: readonly string[];
}

/** How much of a line another one has, too; shares lie between 0 and 1. */
export interface Likeness {
  /** Of the line's notes that stand in a figure, the share that stands in one that the other has. */
  readonly figures: number;
  /** Share of the line's bars whose rhythm the other has, each of its bars counted once. */
  readonly rhythm: number;
  /** More of it is the other's than two lines have in common by chance. */
  readonly tooClose: boolean;
}

/** Moves in a run: seven notes, about a bar and its lead. Shorter ones are the trade's common stock. */
const RUN = 6;

/** A run with fewer moves to another pitch is a pumped note, which is nobody's. */
const LEAST_MOVED = 3;

/** See `tests/series`: two lines composed with different seeds hardly ever share so much, copies with a few bars changed do. */
const TOO_CLOSE = 0.6;

/** What is compared of a sheet. */
function sketchOfSheet({ bars }: LineSheet): Sketch {
  const moves: string[] = [];
  const rhythms: string[] = [];
  let at = 0;
  let before: { readonly midi: number; readonly at: number } | null = null;
  let held = false;
  for (const { notes, written } of bars) {
    const starts: number[] = [];
    for (const { note } of notes) {
      const midi = midiOf(note.pitch);
      if (!held) {
        if (before !== null) moves.push(`${midi - before.midi}/${at + note.start - before.at}`);
        before = { midi, at: at + note.start };
        starts.push(note.start);
      }
      held = note.tiedOn === true;
    }
    if (starts.length > 0) rhythms.push(starts.join(' '));
    at += barTicks(written.metre);
  }
  return { moves, rhythms };
}

/** The sketches of a lesson's written lines, one after the other as one. */
export function sketchOf(lesson: Lesson): Sketch {
  const sketches = deriveSheets(lesson).flatMap((sheet) =>
    sheet.kind === 'line' ? [sketchOfSheet(sheet)] : [],
  );
  return {
    // Between two lines nothing follows: the gap is a move that no line has.
    moves: sketches.flatMap(({ moves }, index) => (index === 0 ? moves : [`piece ${index}`, ...moves])),
    rhythms: sketches.flatMap(({ rhythms }) => rhythms),
  };
}

const isMoved = (move: string): boolean => !move.startsWith('0/');

/** Where runs begin that are more than a pumped note. */
function* runsOf(moves: readonly string[], length: number): Generator<readonly [start: number, run: string]> {
  for (let start = 0; length > 0 && start + length <= moves.length; start += 1) {
    const run = moves.slice(start, start + length);
    if (run.filter(isMoved).length >= Math.min(LEAST_MOVED, length)) yield [start, run.join(' ')];
  }
}

/** How much of a line another one has. */
export function likenessOf(line: Sketch, other: Sketch): Likeness {
  const length = Math.min(RUN, line.moves.length);
  const theirs = new Set([...runsOf(other.moves, length)].map(([, run]) => run));
  const own = new Set<number>();
  const shared = new Set<number>();
  for (const [start, run] of runsOf(line.moves, length))
    for (let note = start; note <= start + length; note += 1) {
      own.add(note);
      if (theirs.has(run)) shared.add(note);
    }
  const left = new Map<string, number>();
  for (const rhythm of other.rhythms) left.set(rhythm, (left.get(rhythm) ?? 0) + 1);
  let same = 0;
  for (const rhythm of line.rhythms) {
    const count = left.get(rhythm) ?? 0;
    if (count === 0) continue;
    same += 1;
    left.set(rhythm, count - 1);
  }
  const figures = own.size === 0 ? 0 : shared.size / own.size;
  const rhythm = line.rhythms.length === 0 ? 0 : same / line.rhythms.length;
  return { figures, rhythm, tooClose: figures >= TOO_CLOSE };
}

/** A line with which another is compared. */
export interface Known<Of> {
  readonly of: Of;
  readonly sketch: Sketch;
}

/** Other lines with what a line shares with each, the nearest first. */
export const nearestLines = <Of>(
  line: Sketch,
  others: readonly Known<Of>[],
): readonly { readonly of: Of; readonly likeness: Likeness }[] =>
  others
    .map(({ of, sketch }) => ({ of, likeness: likenessOf(line, sketch) }))
    .sort(
      (one, other) =>
        other.likeness.figures - one.likeness.figures || other.likeness.rhythm - one.likeness.rhythm,
    );

const percent = (share: number): string => `${Math.round(share * 100)} %`;

/**
 * One sentence on how a line differs from another, or that it comes too close.
 * @param bars - of the line
 * @param title - of the other
 * @param whose - said after the title: `, which Ada has`
 */
export function likenessWords(
  { figures, rhythm, tooClose }: Likeness,
  bars: number,
  title: string,
  whose = '',
): string {
  const name = `“${title === '' ? 'Without a title' : title}”${whose}`;
  const same = Math.round(rhythm * bars);
  const inRhythm =
    same === 0
      ? 'no bar has a rhythm of it'
      : `${same} of ${counted(bars, 'bar')} ${same === 1 ? 'has' : 'have'} a rhythm of it`;
  return tooClose
    ? `Too close to ${name}: ${percent(figures)} of its figures are the same, and ${inRhythm}.`
    : figures === 0
      ? `Differs from ${name}: it shares no figure, and ${inRhythm}.`
      : `Differs from ${name}: ${percent(1 - figures)} of its figures are its own; ${inRhythm}.`;
}
