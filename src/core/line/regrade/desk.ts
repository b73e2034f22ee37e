import { type LineNote, midiOf } from '../../base';
import { techniquesInBar } from '../analysis';
import { levelFindings } from '../bar-findings';
import { type HeardLine, hearLine, hearWith } from '../hearing';
import type { BarModel, LineModel } from '../model';
import { modelOf } from '../read-request';
import { breachesNear } from '../rules/check';
import { TECHNIQUE_TABLE } from '../techniques/table';
import type { LineNotes, LineRequest, Technique } from '../types';
import { barDistance } from './distance';
import { barsInRhythm } from './pitches';
import { rhythmOf, richerBars } from './richer';
import { simplerRhythms } from './simpler';

/** What a way of playing a bar costs beside its distance, which is 1 at most (ours). */
const PER_BREACH = 8;
const PER_TECHNIQUE = 1;
const UNTICKED = 3;
const OTHER_RHYTHM = 0.15;
const STILL_EASY = 0.6;

/** A way of playing a bar, and what it costs whatever its neighbours play. */
export interface Way {
  readonly notes: readonly LineNote[];
  readonly base: number;
}

/** The most ways that a bar is offered, the nearest first. */
const OFFERED = 160;

export interface Desk {
  readonly model: LineModel;
  /** The level below, where the line is to become harder; else null. */
  readonly below: LineModel | null;
  readonly origin: HeardLine;
  readonly line: LineNotes;
  /** By bar, the cheapest first. */
  readonly ways: readonly (readonly Way[])[];
  /** By bar, the bars that have its rhythm in the origin. */
  readonly twins: readonly (readonly number[])[];
  readonly shown: readonly (readonly Technique[])[];
}

export const fitsLevel = (
  model: LineModel,
  bar: BarModel,
  heard: HeardLine,
  notes: readonly LineNote[],
): boolean => levelFindings({ model, bar, tones: heard[bar.index] ?? [], notes }).length === 0;

/** No bar gets a wider leap than an octave that had none: that would be harder, and nothing to learn from. */
const WIDEST_LEAP = 12;

const widestLeap = (notes: readonly LineNote[]): number =>
  notes.reduce((widest, { pitch }, index) => {
    const before = notes[index - 1];
    return before ? Math.max(widest, Math.abs(midiOf(pitch) - midiOf(before.pitch))) : widest;
  }, 0);

/** The bars that a bar's notes may become at the level, the nearest in its own rhythm first. */
export function waysOf(
  model: LineModel,
  bar: BarModel,
  line: LineNotes,
  harder: boolean,
): readonly (readonly LineNote[])[] {
  const notes = line[bar.index] ?? [];
  if (notes.length === 0) return [notes];
  const simpler = simplerRhythms(model, bar, notes).flatMap((rhythm) =>
    barsInRhythm(model, bar, notes, rhythm),
  );
  const next = bar.after.flatMap((index) => line[index]?.[0] ?? [])[0] ?? null;
  const richer = harder ? richerBars(model, bar, notes, next) : [];
  const widest = Math.max(WIDEST_LEAP, widestLeap(notes));
  return [notes, ...simpler, ...richer].filter((way) => widestLeap(way) <= widest);
}

/** What a bar costs beside its neighbours in a line as it is heard. */
export function costBeside(
  desk: Desk,
  heard: HeardLine,
  bar: BarModel,
  notes: readonly LineNote[],
  now: LineNotes,
): number {
  const { model, shown, twins } = desk;
  const techniques = techniquesInBar(model, heard, bar.index);
  const own = shown[bar.index] ?? [];
  const allowed = bar.demands.techniques;
  const missing = own.filter(
    (each) =>
      allowed.has(each) && TECHNIQUE_TABLE[each].from <= model.request.level && !techniques.includes(each),
  ).length;
  const unticked = techniques.filter(
    (each) => !allowed.has(each) && !own.includes(each) && each !== 'chord tones',
  );
  const rhythm = rhythmOf(notes);
  const siblings = (twins[bar.index] ?? []).filter((each) => each !== bar.index);
  const unlike = siblings.filter((each) => rhythmOf(now[each] ?? []) !== rhythm);
  return (
    PER_BREACH * breachesNear(model, heard, bar.index) +
    PER_TECHNIQUE * missing +
    UNTICKED * unticked.length +
    (siblings.length === 0 ? 0 : (OTHER_RHYTHM * unlike.length) / siblings.length)
  );
}

/** What a bar costs by itself: its distance, and where the line is to become harder, whether it is still easy. */
function costAlone(
  { below, origin }: Pick<Desk, 'below' | 'origin'>,
  heard: HeardLine,
  bar: BarModel,
  notes: readonly LineNote[],
): number {
  const easy = below !== null && notes.length > 0 && fitsLevel(below, bar, heard, notes);
  return barDistance(bar, origin[bar.index] ?? [], heard[bar.index] ?? []).whole + (easy ? STILL_EASY : 0);
}

/** What a bar costs in a line as it is heard. */
export const costOf = (
  desk: Desk,
  heard: HeardLine,
  bar: BarModel,
  notes: readonly LineNote[],
  now: LineNotes,
): number => costAlone(desk, heard, bar, notes) + costBeside(desk, heard, bar, notes, now);

/** Everything that is asked of a line on its way to a level. */
export function deskFor(request: LineRequest, line: LineNotes, below: LineModel | null): Desk {
  const model = modelOf(request);
  const origin = hearLine(model, line);
  const rhythms = model.bars.map(({ index }) => rhythmOf(line[index] ?? []));
  return {
    model,
    below,
    origin,
    line,
    ways: model.bars.map((bar) => {
      const all = new Map(
        waysOf(model, bar, line, below !== null).map((notes) => [JSON.stringify(notes), notes]),
      );
      return [...all.values()]
        .flatMap((notes): Way[] => {
          const heard = hearWith(model, origin, bar.index, notes);
          if (!fitsLevel(model, bar, heard, notes)) return [];
          return [{ notes, base: costAlone({ below, origin }, heard, bar, notes) }];
        })
        .sort((one, other) => one.base - other.base)
        .slice(0, OFFERED);
    }),
    twins: model.bars.map(({ index }) =>
      rhythms.flatMap((rhythm, other) => (rhythm === rhythms[index] ? [other] : [])),
    ),
    shown: model.bars.map(({ index }) => techniquesInBar(model, origin, index)),
  };
}
