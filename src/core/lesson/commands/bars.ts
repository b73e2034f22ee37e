import { beatsInBar, sameMetre } from '../../base';
import {
  type BarEdit,
  type ChartBar,
  type EditedChart,
  editBar,
  type HarmonySpan,
  harmonyText,
  parseChart,
  typedBar,
  wordsOf,
} from '../../chart';
import { parseChord } from '../../theory';
import type { Lesson, LinePiece } from '../types';
import { withChart } from './chart';
import { changeLine } from './piece';

/** A change to one bar of the chart, made on the sheet. */
export type ChartBarEdit =
  /** `text` as it is typed between bar lines. */
  | { readonly kind: 'write'; readonly text: string }
  /** A new bar before or after it with the same chords, to be written over. */
  | { readonly kind: 'insert before' }
  | { readonly kind: 'insert after' }
  /** The bar again behind itself, with its notes. */
  | { readonly kind: 'repeat' }
  /** A bar for each of its chords. */
  | { readonly kind: 'split' }
  /** One bar for it and the next, with the chords of both. */
  | { readonly kind: 'join' }
  | { readonly kind: 'remove' };

const chartOf = (piece: LinePiece) => parseChart(piece.chartText, piece.metre, piece.key).chart;

/** What is typed in a bar (index from 0); null for a bar of a section that is written by its name alone. */
export const typedChord = (piece: LinePiece, bar: number): string | null =>
  typedBar(piece.chartText, chartOf(piece), bar);

function withoutSlashes(word: string): string {
  let end = word.length;
  while (word[end - 1] === '/') end -= 1;
  return word.slice(0, end);
}

/** The chords of a bar one by one as they are typed; as they are read where that is more than its own words. */
function chordsIn(typed: string, written: ChartBar): readonly string[] {
  const chords = wordsOf(typed).flatMap((word) => withoutSlashes(word) || []);
  const read = written.spans.map(({ harmony }) => harmonyText(harmony));
  return chords.length === read.length && !chords.includes('%') ? chords : read;
}

/** One edit of the text after the other; origins count in the first chart. Null where the text cannot say one. */
function inTurn(piece: LinePiece, edits: readonly BarEdit[]): EditedChart | null {
  return edits.reduce<EditedChart | null>(
    (before, edit) => {
      if (before === null) return null;
      const after = editBar(before.text, piece.metre, edit, piece.key);
      return (
        after && {
          text: after.text,
          origins: after.origins.map((index) => (index === null ? null : (before.origins[index] ?? null))),
        }
      );
    },
    { text: piece.chartText, origins: piece.bars.map((_, index) => index) },
  );
}

function edited(piece: LinePiece, bar: number, edit: ChartBarEdit): EditedChart | null {
  const chart = chartOf(piece);
  const typed = typedBar(piece.chartText, chart, bar);
  const written = chart.bars[bar];
  if (typed === null || written === undefined) return null;
  const copied = (kind: 'insert' | 'append') =>
    inTurn(piece, [{ kind, bar, text: typed }]) ??
    inTurn(piece, [{ kind, bar, text: written.spans.map(({ harmony }) => harmonyText(harmony)).join(' ') }]);
  switch (edit.kind) {
    case 'write':
      return inTurn(piece, [{ kind: 'write', bar, text: edit.text }]);
    case 'insert before':
      return copied('insert');
    case 'insert after':
      return copied('append');
    case 'repeat': {
      if (written.pickup) return null;
      const repeated = inTurn(piece, [{ kind: 'append', bar, text: '%', sameEnding: true }]);
      // A new bar has the notes of the one before it, which it repeats.
      return (
        repeated && {
          ...repeated,
          origins: repeated.origins.map((origin, index) => origin ?? repeated.origins[index - 1] ?? null),
        }
      );
    }
    case 'remove':
      return inTurn(piece, [{ kind: 'remove', bar }]);
    case 'split': {
      const chords = chordsIn(typed, written);
      if (chords.length < 2) return null;
      return inTurn(
        piece,
        chords.map(
          (text, index): BarEdit =>
            index === 0
              ? { kind: 'write', bar, text }
              : { kind: 'append', bar: bar + index - 1, text, sameEnding: true },
        ),
      );
    }
    case 'join': {
      const next = chart.bars[bar + 1];
      const further = typedBar(piece.chartText, chart, bar + 1);
      if (next === undefined || further === null || !joins(written, next)) return null;
      const others = chordsIn(further, next).map((text, index) =>
        inKeyOf(written, next, text, next.spans[index]),
      );
      const chords = [...chordsIn(typed, written), ...others];
      const text = new Set(chords).size === 1 ? (chords[0] ?? '') : chords.join(' ');
      return inTurn(piece, [
        { kind: 'remove', bar: bar + 1 },
        { kind: 'write', bar, text },
      ]);
    }
  }
}

/** A chord of another bar as it is written in a bar; a numeral would be another chord in another key. */
const inKeyOf = (bar: ChartBar, other: ChartBar, typed: string, read: HarmonySpan | undefined): string =>
  read === undefined || bar.key === other.key || parseChord(typed).ok ? typed : harmonyText(read.harmony);

/** Whether two bars can be one: no sign, section or metre parts them, and there is a beat for each of their chords. */
const joins = (one: ChartBar, next: ChartBar): boolean =>
  one.section === next.section &&
  one.ending?.join() === next.ending?.join() &&
  one.repeatEnd === null &&
  !next.repeatStart &&
  sameMetre(one.metre, next.metre) &&
  one.spans.length + next.spans.length <= beatsInBar(one.metre);

/** Changes of a bar that its chart has room for, besides writing over it. */
export type PossibleEdit = Exclude<ChartBarEdit['kind'], 'write'>;

/** What can be done to a bar (index from 0) as the chart stands; quick to say, since it is asked at every edit. */
export function possibleEdits(piece: LinePiece, bar: number): ReadonlySet<PossibleEdit> {
  const chart = chartOf(piece);
  const typed = typedBar(piece.chartText, chart, bar);
  const [written, next] = [chart.bars[bar], chart.bars[bar + 1]];
  const possible = new Set<PossibleEdit>();
  if (typed === null || written === undefined) return possible;
  if (!written.pickup) possible.add('insert before').add('repeat');
  possible.add('insert after').add('remove');
  if (chordsIn(typed, written).length > 1) possible.add('split');
  if (next !== undefined && joins(written, next)) possible.add('join');
  return possible;
}

/**
 * Changes one bar of the chart (index from 0) in its text, in all its uses where its section is used again by its
 * name. The notes of every other bar stay; those of a bar that went away or has other chords are parked. The same
 * lesson where the text cannot say it.
 */
export const editChartBar = (lesson: Lesson, pieceId: string, bar: number, edit: ChartBarEdit): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    const change = edited(piece, bar, edit);
    return change === null || change.text === piece.chartText
      ? piece
      : withChart(
          lesson,
          piece,
          { chartText: change.text },
          change.origins.map((origin) => (origin === null ? null : (piece.bars[origin] ?? null))),
        );
  });
