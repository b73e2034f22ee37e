import type { MeasuredBar } from './measure-bar';

/** A measured bar at its place in a system. */
export interface PlacedBar {
  readonly bar: MeasuredBar;
  /** Its left and right bar line. */
  readonly x: number;
  readonly right: number;
  /** Where its own signs begin (a repeat, a time signature): after the clef's block in a system's first bar. */
  readonly signs: number;
  /** Where its notes may begin: after its own signs. */
  readonly content: number;
  /** The middle of each column, in the order of the bar's columns. */
  readonly columnXs: readonly number[];
}

/** Where a moment of the bar stands; between two columns in proportion. */
export function xOfTick(placed: PlacedBar, tick: number): number {
  const { columns } = placed.bar;
  const exact = columns.findIndex((column) => column.tick === tick);
  return placed.columnXs[exact] ?? placed.right;
}
