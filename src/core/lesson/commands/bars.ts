import { type ChartBar, editBar, parseChart, typedBar } from '../../chart';
import type { Lesson, LineBar, LinePiece } from '../types';
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
  | { readonly kind: 'remove' };

const chartOf = (piece: LinePiece) => parseChart(piece.chartText, piece.metre, piece.key).chart;

/** What is typed in a bar (index from 0); null for a bar of a section that is written by its name alone. */
export const typedChord = (piece: LinePiece, bar: number): string | null =>
  typedBar(piece.chartText, chartOf(piece), bar);

/** The chords of a bar one by one as they are typed; a single one for a bar that cannot be divided. */
function chordsIn(typed: string, written: ChartBar): readonly string[] {
  const words = typed.split(/\s+/).flatMap((word) => word.replace(/\/+$/, '') || []);
  return words.length === written.spans.length ? words : [typed];
}

interface Edited {
  readonly text: string | null;
  /** The bars of the line in the order of the new chart: see `withChart`. */
  readonly order: readonly (LineBar | null)[];
}

function edited(piece: LinePiece, bar: number, edit: ChartBarEdit): Edited | null {
  const chart = chartOf(piece);
  const typed = typedBar(piece.chartText, chart, bar);
  const written = chart.bars[bar];
  const own = piece.bars[bar];
  if (typed === null || written === undefined || own === undefined) return null;
  const { chartText, metre, key } = piece;
  const order = (...instead: readonly (LineBar | null)[]): readonly (LineBar | null)[] => [
    ...piece.bars.slice(0, bar),
    ...instead,
    ...piece.bars.slice(bar + 1),
  ];
  switch (edit.kind) {
    case 'write':
      return {
        text: editBar(chartText, metre, { kind: 'write', bar, text: edit.text }, key),
        order: order(own),
      };
    case 'insert before':
      return {
        text: editBar(chartText, metre, { kind: 'insert', bar, text: typed }, key),
        order: order(null, own),
      };
    case 'insert after':
      return {
        text: editBar(chartText, metre, { kind: 'append', bar, text: typed }, key),
        order: order(own, null),
      };
    case 'repeat':
      return {
        text: editBar(chartText, metre, { kind: 'append', bar, text: '%' }, key),
        order: order(own, own),
      };
    case 'remove':
      return { text: editBar(chartText, metre, { kind: 'remove', bar }, key), order: order() };
    case 'split': {
      const chords = chordsIn(typed, written);
      if (chords.length < 2) return null;
      const text = chords.reduce<string | null>(
        (before, chord, index) =>
          before &&
          (index === 0
            ? editBar(before, metre, { kind: 'write', bar, text: chord }, key)
            : editBar(before, metre, { kind: 'append', bar: bar + index - 1, text: chord }, key)),
        chartText,
      );
      return { text, order: order(...chords.map(() => null)) };
    }
  }
}

/**
 * Changes one bar of the chart (index from 0) in its text. The notes of every other bar stay; those of a bar
 * that went away or has other chords are parked. The same lesson where the text cannot say it.
 */
export const editChartBar = (lesson: Lesson, pieceId: string, bar: number, edit: ChartBarEdit): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    const change = edited(piece, bar, edit);
    return change === null || change.text === null || change.text === piece.chartText
      ? piece
      : withChart(lesson, piece, { chartText: change.text }, change.order);
  });
