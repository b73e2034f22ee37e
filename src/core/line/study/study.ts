import { beatTicks, type SpelledPitch } from '../../base';
import { analyseLine } from '../analysis';
import { hearLine, isSilentOnOne, silenceOf, struck } from '../hearing';
import { rhythmLevelIn } from '../level';
import { type MeasuredLevel, measuredLevel } from '../measured-level';
import type { LineModel } from '../model';
import { modelOf } from '../read-request';
import { TECHNIQUE_ROWS } from '../techniques/table';
import type { Tone } from '../tones';
import {
  LEVELS,
  type Level,
  type LineNotes,
  type LineRequest,
  type NoteFunction,
  type Technique,
} from '../types';
import { type FormPart, formOf } from './form';
import { syncopationOf } from './syncopation';

/** What is counted in a line; bars are indices of written bars, shares lie between 0 and 1. */
export interface LineStudy {
  /** Notes that are struck. */
  readonly notes: number;
  /** How many of them do what; those without a chord are `none`. */
  readonly functions: Readonly<Partial<Record<NoteFunction | 'none', number>>>;
  readonly techniques: readonly { readonly technique: Technique; readonly bars: readonly number[] }[];
  /** Share of the written time that is silent. */
  readonly silence: number;
  /** Bars of notes whose beat one is silent. */
  readonly silentOnes: readonly number[];
  /** Bars without a note. */
  readonly silentBars: readonly number[];
  readonly lowest: SpelledPitch;
  readonly highest: SpelledPitch;
  /** Half steps from the lowest to the highest note. */
  readonly range: number;
  /** Moves of more than a step within a bar or into one that is played next: how many, the widest in half steps, and in which bars they begin. */
  readonly leaps: { readonly count: number; readonly widest: number; readonly bars: readonly number[] };
  /** By bar, by a published measure (see `syncopationOf`); null where it does not tell. */
  readonly syncopation: readonly (number | null)[];
  /** Phrases, or bars where there are fewer than two phrases, in letters. */
  readonly form: readonly FormPart[];
  readonly level: MeasuredLevel;
  /** The highest level of rhythm, and the bars that have it. */
  readonly rhythm: { readonly level: Level; readonly bars: readonly number[] };
  /** Once through at the tempo of the request. */
  readonly load: {
    readonly notesPerMinute: number;
    /** The longest stretch of notes without a rest between them. */
    readonly run: { readonly notes: number; readonly seconds: number };
  };
}

const functionsOf = (request: LineRequest, line: LineNotes, strikes: readonly (readonly boolean[])[]) => {
  const counts: Partial<Record<NoteFunction | 'none', number>> = {};
  analyseLine(request, line).forEach(({ notes }, bar) => {
    notes.forEach(({ function: role }, index) => {
      if (strikes[bar]?.[index] !== true) return;
      const name = role ?? 'none';
      counts[name] = (counts[name] ?? 0) + 1;
    });
  });
  return counts;
};

/** Parts to compare: phrases of each section where there are two of them at least, else single bars; no pickup. */
function partsOf({ request, bars }: LineModel): readonly (readonly number[])[] {
  const { chart, feel } = request;
  const whole = bars.filter(({ pickup }) => !pickup).map(({ index }) => index);
  const size = whole.length >= 2 * feel.phraseLength ? feel.phraseLength : 1;
  const parts: number[][] = [];
  let section = -1;
  for (const bar of whole) {
    const own = chart.bars[bar]?.section ?? 0;
    const last = parts.at(-1);
    if (last === undefined || own !== section || last.length === size) parts.push([bar]);
    else last.push(bar);
    section = own;
  }
  return parts;
}

/** Moves from note to note as they are played once through; one that a repeat brings again is one. */
function leapsOf(model: LineModel, heard: readonly (readonly Tone[])[]) {
  const moves = new Map<string, { readonly bar: number; readonly distance: number }>();
  let before: { readonly place: string; readonly midi: number; readonly bar: number } | null = null;
  for (const bar of model.order) {
    for (const { midi, start } of heard[bar] ?? []) {
      const place = `${bar}:${start}`;
      if (before !== null)
        moves.set(`${before.place} ${place}`, { bar: before.bar, distance: Math.abs(midi - before.midi) });
      before = { place, midi, bar };
    }
  }
  const leaps = [...moves.values()].filter(({ distance }) => distance > 2);
  return {
    count: leaps.length,
    widest: leaps.reduce((most, { distance }) => Math.max(most, distance), 0),
    bars: [...new Set(leaps.map(({ bar }) => bar))].sort((one, other) => one - other),
  };
}

function loadOf(model: LineModel, heard: readonly (readonly Tone[])[]): LineStudy['load'] {
  const { chart, tempo } = model.request;
  const perSecond = (beatTicks(chart.metre) * tempo) / 60;
  let at = 0;
  let notes = 0;
  let run = { notes: 0, from: 0, end: 0 };
  let longest = run;
  for (const bar of model.order) {
    const length = model.bars[bar]?.ticks ?? 0;
    for (const tone of heard[bar] ?? []) {
      const start = at + tone.start;
      if (!tone.held) notes += 1;
      if (start > run.end || run.notes === 0) run = { notes: 0, from: start, end: start };
      run = { ...run, notes: run.notes + (tone.held ? 0 : 1), end: start + tone.duration };
      if (run.end - run.from > longest.end - longest.from) longest = run;
    }
    at += length;
  }
  return {
    notesPerMinute: at === 0 ? 0 : (notes * 60 * perSecond) / at,
    run: { notes: longest.notes, seconds: (longest.end - longest.from) / perSecond },
  };
}

/**
 * What can be counted in a line, composed or not, from its notes and chords alone; null for an unwritten one.
 * @see analyseLine for what each note and bar does
 */
export function studyLine(request: LineRequest, line: LineNotes): LineStudy | null {
  const model = modelOf(request);
  const heard = hearLine(model, line);
  const pitches = line.flatMap((notes, bar) =>
    notes.map(({ pitch }, index) => ({ pitch, midi: heard[bar]?.[index]?.midi ?? 0 })),
  );
  const byHeight = pitches.toSorted((one, other) => one.midi - other.midi);
  const [low, high] = [byHeight[0], byHeight.at(-1)];
  if (low === undefined || high === undefined) return null;
  const analyses = analyseLine(request, line);
  const strikes = heard.map((tones) => tones.map(({ held }) => !held));
  const sounding = model.bars.filter(({ index }) => (heard[index]?.length ?? 0) > 0);
  const time = model.bars.reduce((sum, { ticks }) => sum + ticks, 0);
  const silent = model.bars.reduce(
    (sum, { index, ticks }) => sum + silenceOf(heard[index] ?? [], ticks).whole,
    0,
  );
  const rhythms = sounding.map((bar) => ({
    bar: bar.index,
    level: rhythmLevelIn(heard[bar.index] ?? [], bar.metre, request.feel.bassRole),
  }));
  const hardest = LEVELS.findLast((each) => rhythms.some(({ level }) => level === each)) ?? 0;
  const startsOf = (bar: number) => struck(heard[bar] ?? []).map(({ start }) => start);
  return {
    notes: strikes.flat().filter(Boolean).length,
    functions: functionsOf(request, line, strikes),
    techniques: TECHNIQUE_ROWS.map(({ technique }) => ({
      technique,
      bars: model.bars.flatMap(({ index }) =>
        analyses[index]?.techniques.includes(technique) ? [index] : [],
      ),
    })).filter(({ bars }) => bars.length > 0),
    silence: time === 0 ? 0 : silent / time,
    silentOnes: sounding
      .filter(({ index, pickup }) => !pickup && isSilentOnOne(heard[index] ?? []))
      .map(({ index }) => index),
    silentBars: model.bars.flatMap(({ index }) => ((heard[index]?.length ?? 0) === 0 ? [index] : [])),
    lowest: low.pitch,
    highest: high.pitch,
    range: high.midi - low.midi,
    leaps: leapsOf(model, heard),
    syncopation: model.bars.map(({ index, metre, pickup, after }) =>
      pickup || startsOf(index).length === 0
        ? null
        : syncopationOf(startsOf(index), metre, startsOf(after[0] ?? index)[0] === 0),
    ),
    form: formOf(
      partsOf(model),
      model.bars.map(({ index, ticks }) => ({
        rhythm: `${ticks}: ${startsOf(index).join(' ')}`,
        figure: (analyses[index]?.notes ?? []).map(({ degreeText }) => degreeText).join(' '),
      })),
    ),
    level: measuredLevel(request, line),
    rhythm: { level: hardest, bars: rhythms.filter(({ level }) => level === hardest).map(({ bar }) => bar) },
    load: loadOf(model, heard),
  };
}
