import { type LineNote, type Metre, midiOf, TICKS_PER_QUARTER } from '../../src/core/base';
import { type FeelId, feelById, homeMetre, isFeelId } from '../../src/core/feel';
import { type ComposeRequest, type Level, TECHNIQUE_ROWS, type Technique } from '../../src/core/line';
import { request } from '../line/notation';

/** A note of a jury's line: beat from 1 in quarters, length in quarters. */
export interface JuryNote {
  readonly beat: number;
  readonly len: number;
  readonly midi: number;
}

/** A task of the jury: the fields of its files of lines, the bars left out. */
export interface Task {
  readonly id: string;
  readonly feel: string;
  readonly tempo: number;
  readonly level: Level;
  readonly chart: string;
  /** Quarters a bar, where it has not four. */
  readonly beats?: number;
  /** Where quarters do not say it and the feel's own metre is another: `6/8`. */
  readonly metre?: string;
  readonly seed?: number;
  readonly techniques?: readonly Technique[];
}

/** A line of the jury's files. */
export interface JuryLine extends Task {
  readonly bars: readonly (readonly JuryNote[])[];
}

const round = (ticks: number): number => Math.round((ticks / TICKS_PER_QUARTER) * 10_000) / 10_000;

/** The notes of a bar as the jury's files write them. */
export const juryNotes = (notes: readonly LineNote[]): readonly JuryNote[] =>
  notes.map((note) => ({ beat: round(note.start) + 1, len: round(note.duration), midi: midiOf(note.pitch) }));

/** What a lesson of a feel and level ticks where its task names nothing, and approach notes where the level has them. */
const techniquesAt = (feel: FeelId, level: number): readonly Technique[] =>
  TECHNIQUE_ROWS.filter(
    (row) => row.from <= level && (row.belongs(feelById(feel)) || row.technique === 'approach note'),
  ).map(({ technique }) => technique);

/** The metre that the task names; else the feel's own where it has as many quarters, as six-eight has three. */
function metreOf({ metre: named, beats = 4 }: Task, feel: FeelId): Metre {
  const own = homeMetre(feelById(feel));
  if (named === undefined && (own.count * 4) / own.unit === beats) return own;
  const { count, unit } = /^(?<count>\d+)\/(?<unit>4|8|2)$/.exec(named ?? `${beats}/4`)?.groups ?? {};
  return { count: Number(count), unit: unit === '8' ? 8 : unit === '2' ? 2 : 4 };
}

/** What a line of a task is written over, whoever writes it: flats have their sign, as in the project's own grammar. */
export function plainRequestOf(task: Task): ComposeRequest {
  const feel: FeelId = isFeelId(task.feel) ? task.feel : 'early-ska';
  const metre = metreOf(task, feel);
  const chart = task.chart.replace(/b(?=[\d\s|/]|$|m|7|6|dim|maj)/g, '♭');
  return request(chart, { feel, level: task.level, tempo: task.tempo, metre });
}

/**
 * What the composer is asked for a task, its chart in the project's own grammar: the bars of the tasks part their
 * chords evenly, as ours do.
 * @param seed - where the task names none
 */
export function requestOf(task: Task, seed: number): ComposeRequest {
  const asked = plainRequestOf(task);
  const techniques = new Set(task.techniques ?? techniquesAt(asked.feel.id, task.level));
  // An octave may be heard, and need not.
  return {
    ...asked,
    seed: task.seed ?? seed,
    techniques,
    aims: [{ where: { kind: 'line' }, allowed: ['octave'] }] as const,
  };
}
