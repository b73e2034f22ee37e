import type { Metre, Ticks } from '../base';
import type { Chord, Key } from '../theory';
import type { Navigation } from './navigation';

export type Harmony =
  | { readonly kind: 'chord'; readonly chord: Chord }
  /** `N.C.`: the band leaves the harmony open. */
  | { readonly kind: 'no chord' }
  /** A symbol that was not understood; the chart goes on without it, and its bar keeps its notes. */
  | { readonly kind: 'unknown'; readonly text: string };

/** A stretch of one harmony inside a bar; the spans of a bar fill it without gaps. */
export interface HarmonySpan {
  /** From the beginning of the bar. */
  readonly start: Ticks;
  readonly duration: Ticks;
  readonly harmony: Harmony;
}

/** Line and column count from 1, in the chart text as typed; length in characters. */
export interface ChartPlace {
  readonly line: number;
  readonly column: number;
  readonly length: number;
}

export interface ChartBar {
  /** As written, from 1; a repeated bar keeps its number. A pickup is bar 0 and not counted. */
  readonly number: number;
  /** Index into {@link Chart.sections}. */
  readonly section: number;
  /** A pickup's metre counts only the beats that are there. */
  readonly metre: Metre;
  /** The bar is an upbeat, shorter than the chart's metre; only a chart's first bar can be one. */
  readonly pickup: boolean;
  /** The key in force by a key directive; null until the chart names one. */
  readonly key: Key | null;
  readonly spans: readonly HarmonySpan[];
  /** Its first chord is pushed: it sounds in the last eighth of the bar before. */
  readonly pushed?: true;
  /** Its last span is the first chord of the next bar, pushed. */
  readonly tail?: true;
  readonly repeatStart: boolean;
  /** How often the repeated passage is played in all (2 unless the chart says `x3`); null without a repeat. */
  readonly repeatEnd: number | null;
  /** The times through, from 1, on which the bar is played as an ending; null outside endings. */
  readonly ending: readonly number[] | null;
  /** Signs of the way through the chart that stand in the bar, in the order they are written. */
  readonly navigation?: readonly Navigation[];
  readonly place: ChartPlace;
}

export interface Section {
  /** Null for bars outside a named section. */
  readonly name: string | null;
  /** Index of its first bar. */
  readonly start: number;
  readonly length: number;
  /** Written by its name alone: the bars are those of an earlier section, written out again. */
  readonly again: boolean;
}

export interface Chart {
  readonly metre: Metre;
  readonly sections: readonly Section[];
  readonly bars: readonly ChartBar[];
}

export interface ChartProblem extends ChartPlace {
  /** One clear sentence: what is wrong and what to write instead. */
  readonly message: string;
  /** What was probably meant, to be written in place of the text at the problem's place. */
  readonly suggestion?: string;
}

export interface ParsedChart {
  readonly chart: Chart;
  readonly problems: readonly ChartProblem[];
}
