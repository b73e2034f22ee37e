import { degreeOf, formatDegree } from '../theory';
import type { Facts } from './claim';
import { claimsFor } from './claims';
import { type Around, functionsIn } from './functions';
import { type HeardLine, type Hearing, hearAgain, hearLine } from './hearing';
import type { BarModel, LineModel } from './model';
import { modelOf } from './read-request';
import { TECHNIQUE_ROWS } from './techniques/table';
import type { Seen } from './techniques/types';
import type { Tone } from './tones';
import type { BarAnalysis, LineNotes, LineRequest, NoteAnalysis, Technique } from './types';
import { sentenceOf } from './wording';

/** What sounds around a bar in a heard line. */
const aroundIn = (model: LineModel, heard: HeardLine, bar: BarModel): Around => ({
  before: bar.before.map((other) => heard[other]?.at(-1) ?? null),
  ahead: bar.after.map((other) => ({
    stretch: model.bars[other]?.stretches[0],
    first: heard[other]?.[0] ?? null,
  })),
});

function degreeTextOf(tone: Tone, tones: readonly Tone[]): string {
  const chord = tone.stretch?.chord;
  if (!chord) return '';
  const roots = tones.filter((other) => other.stretch === tone.stretch && other.interval === 0);
  const lowest = Math.min(...roots.map((other) => other.midi));
  if (tone.interval === 0 && tone.midi - lowest >= 12) return '8';
  return formatDegree(degreeOf(tone.name, chord.root));
}

/** The techniques that a bar shows. */
export const techniquesOf = (seen: Seen): readonly Technique[] =>
  TECHNIQUE_ROWS.filter((row) => row.recognise(seen)).map(({ technique }) => technique);

/** The techniques that a bar shows; no reasons are worded for it. */
export function techniquesInBar(model: LineModel, heard: HeardLine, index: number): readonly Technique[] {
  const bar = model.bars[index];
  const tones = heard[index] ?? [];
  if (!bar) return [];
  return techniquesOf({ bar, tones, functions: functionsIn(bar, tones, aroundIn(model, heard, bar)) });
}

export function analyseBar(model: LineModel, heard: HeardLine, index: number): BarAnalysis {
  const bar = model.bars[index];
  const tones = heard[index] ?? [];
  if (!bar) return { notes: [], techniques: [], reason: '' };
  const functions = functionsIn(bar, tones, aroundIn(model, heard, bar));
  const notes = tones.map((tone, place): NoteAnalysis => {
    const chord = tone.stretch?.chord;
    return {
      degree: chord ? degreeOf(tone.name, chord.root) : null,
      degreeText: degreeTextOf(tone, tones),
      function: functions[place] ?? null,
    };
  });
  const techniques = techniquesOf({ bar, tones, functions });
  return { notes, techniques, reason: reasonOf(model, heard, bar, { notes, techniques }) };
}

function reasonOf(model: LineModel, heard: HeardLine, bar: BarModel, facts: Facts): string {
  const claims = claimsFor(model, heard, bar, facts);
  return sentenceOf({ model, bar, tones: heard[bar.index] ?? [], facts }, claims);
}

interface Analysed extends Hearing {
  readonly bars: readonly BarAnalysis[];
  /** For each bar, the bars that its analysis looked at. */
  readonly looked: readonly ReadonlySet<number>[];
}

/** Requests never change in place: what was analysed last under one is the start for the next change of its notes. */
const latest = new WeakMap<LineRequest, Analysed>();

/** A heard line that notes which bars are looked at. */
const watched = (heard: HeardLine, looked: Set<number>): HeardLine =>
  new Proxy(heard, {
    get(line, key, receiver) {
      const bar = typeof key === 'string' ? Number(key) : Number.NaN;
      if (Number.isInteger(bar)) looked.add(bar);
      return Reflect.get(line, key, receiver);
    },
  });

/**
 * What every bar of a line teaches and why, computed from the notes, the chart and every bar that can follow;
 * the same for composed and for hand-written notes.
 * Under the same request only those bars are analysed again that look at one which sounds differently now.
 */
export function analyseLine(request: LineRequest, line: LineNotes): readonly BarAnalysis[] {
  const before = latest.get(request) ?? null;
  const model = before?.model ?? modelOf(request);
  const hearing = hearAgain(model, line, before);
  const { heard } = hearing;
  const looked: ReadonlySet<number>[] = [];
  const bars = model.bars.map(({ index }, place) => {
    const known = before?.bars[place];
    const seen = before?.looked[place];
    if (
      known !== undefined &&
      seen !== undefined &&
      [...seen].every((bar) => heard[bar] === before?.heard[bar])
    ) {
      looked.push(seen);
      return known;
    }
    const now = new Set<number>();
    looked.push(now);
    return analyseBar(model, watched(heard, now), index);
  });
  latest.set(request, { ...hearing, bars, looked });
  return bars;
}

/**
 * The reasons of {@link analyseLine} in the request's note names.
 * @param facts - what the analysis of the same line says of each bar, in any names
 */
export function reasonsFor(
  request: LineRequest,
  line: LineNotes,
  facts: readonly Facts[],
): readonly string[] {
  const model = modelOf(request);
  const heard = hearLine(model, line);
  return model.bars.map((bar) =>
    reasonOf(model, heard, bar, facts[bar.index] ?? { notes: [], techniques: [] }),
  );
}
