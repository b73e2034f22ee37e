import { type LineNote, midiOf } from '../../base';
import { techniquesInBar } from '../analysis';
import { type HeardLine, hearLine, hearWith } from '../hearing';
import type { LineModel } from '../model';
import { modelOf } from '../read-request';
import { findBreaches } from '../rules/check';
import { TECHNIQUE_TABLE } from '../techniques/table';
import type { Breach, Level, LineNotes, LineRequest, Technique } from '../types';
import { type Desk, deskFor, fitsLevel, waysOf } from './desk';
import { barDistance, heardDistance, type LineDistance } from './distance';
import { type RegradeReason, reasonsOf, regradeSentence } from './reasons';
import { lineFor } from './settle';

/** A bar that a regraded line has otherwise. */
export interface BarChange {
  /** Index of the written bar. */
  readonly bar: number;
  readonly notes: readonly LineNote[];
  /** At least one, the weightiest first. */
  readonly reasons: readonly RegradeReason[];
}

/** A taught technique that the origin shows and the regraded line does not. */
export interface LostTechnique {
  readonly technique: Technique;
  /** The level does not have it yet; else it could not be kept beside the rules. */
  readonly beyond: boolean;
}

/** A line as another level has it. */
export interface Regraded {
  readonly level: Level;
  readonly bars: LineNotes;
  readonly changes: readonly BarChange[];
  readonly lost: readonly LostTechnique[];
  /** Rules that it breaks where the origin did, or that nothing near it keeps. */
  readonly breaches: readonly Breach[];
  readonly distance: LineDistance;
}

/** Ties lead into the same note, or there are none. */
function withTrueTies(model: LineModel, line: LineNotes): LineNotes {
  return line.map((notes, index) => {
    const last = notes.at(-1);
    if (last?.tiedOn !== true) return notes;
    const after = model.bars[index]?.after ?? [];
    const leads = after.every((next) => {
      const first = line[next]?.[0];
      return first !== undefined && first.start === 0 && midiOf(first.pitch) === midiOf(last.pitch);
    });
    if (leads) return notes;
    const { tiedOn: _, ...plain } = last;
    return [...notes.slice(0, -1), plain];
  });
}

/**
 * A line as the level of the request has it, keeping the tune: the notes on strong beats, the contour, the rhythm that bars
 * share, and the techniques that it shows. Easier, it loses what the level does not have and nothing else; harder, bars get
 * one thing that the level brings.
 * @param request with the level that the line is to have
 * @param line at whatever level it is
 * @param harder whether the line is to gain what the level brings
 */
export function regradeLine(request: LineRequest, line: LineNotes, harder: boolean): Regraded {
  const lower = (request.level - 1) as Level;
  const below = harder && request.level > 0 ? modelOf({ ...request, level: lower }) : null;
  const desk = deskFor(request, line, below);
  const { model } = desk;
  const bars = withTrueTies(model, lineFor(desk));
  const heard = hearLine(model, bars);
  return {
    level: request.level,
    bars,
    changes: model.bars.flatMap(({ index }) => {
      const [own, now] = [line[index] ?? [], bars[index] ?? []];
      if (JSON.stringify(own) === JSON.stringify(now)) return [];
      return [{ bar: index, notes: now, reasons: reasonsOf({ model, below, line, bars, bar: index }) }];
    }),
    lost: lostIn(desk, heard),
    breaches: findBreaches(model, heard),
    distance: heardDistance(model, desk.origin, heard),
  };
}

/**
 * What a bar of a line may become at the level of the request, keeping as much of it as the level has: the nearest first.
 * Rules about its neighbours are not asked.
 */
export function nearestBars(
  request: LineRequest,
  line: LineNotes,
  bar: number,
): readonly (readonly LineNote[])[] {
  const model = modelOf(request);
  const heard = hearLine(model, line);
  const there = model.bars[bar];
  if (there === undefined) return [];
  return waysOf(model, there, line, false)
    .map((notes) => ({ notes, heard: hearWith(model, heard, bar, notes) }))
    .filter(({ notes, heard: tried }) => fitsLevel(model, there, tried, notes))
    .map(({ notes, heard: tried }) => ({
      notes,
      apart: barDistance(there, heard[bar] ?? [], tried[bar] ?? []).whole,
    }))
    .sort((one, other) => one.apart - other.apart)
    .map(({ notes }) => notes);
}

function lostIn({ model, shown }: Desk, heard: HeardLine): readonly LostTechnique[] {
  const now = new Set(model.bars.flatMap(({ index }) => techniquesInBar(model, heard, index)));
  const taught = [...model.request.techniques].filter((each) => shown.some((bar) => bar.includes(each)));
  return taught
    .filter((technique) => !now.has(technique))
    .map((technique) => ({ technique, beyond: TECHNIQUE_TABLE[technique].from > model.request.level }));
}

/** A regraded line without some of its changes: those bars are as they were. */
export function withoutChanges(
  request: LineRequest,
  line: LineNotes,
  changes: readonly Pick<BarChange, 'bar' | 'notes'>[],
  refused: ReadonlySet<number>,
): LineNotes {
  const taken = new Map(changes.filter(({ bar }) => !refused.has(bar)).map(({ bar, notes }) => [bar, notes]));
  return withTrueTies(
    modelOf(request),
    line.map((notes, index) => taken.get(index) ?? notes),
  );
}

/** Why a bar is another one, in sentences. */
export const reasonSentences = (
  request: LineRequest,
  reasons: readonly RegradeReason[],
): readonly string[] => {
  const model = modelOf(request);
  return reasons.map((reason) => regradeSentence(model, reason));
};
