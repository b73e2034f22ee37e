import { degreeOf, formatDegree } from '../theory';
import { type Facts, namesBar } from './claim';
import { claimsFor } from './claims';
import { type Around, functionsIn } from './functions';
import { type HeardLine, type Hearing, hearAgain, hearLine } from './hearing';
import type { BarModel, LineModel } from './model';
import { modelOf } from './read-request';
import { placesNow, sameNumbers, standsAlike } from './standing';
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

/** What there is to say about a bar, and whether that names another bar by its number. */
interface Told {
  readonly analysis: BarAnalysis;
  readonly names: boolean;
}

const NOTHING: Told = { analysis: { notes: [], techniques: [], reason: '' }, names: false };

export const analyseBar = (model: LineModel, heard: HeardLine, index: number): BarAnalysis =>
  tellOf(model, heard, index).analysis;

function tellOf(model: LineModel, heard: HeardLine, index: number): Told {
  const bar = model.bars[index];
  const tones = heard[index] ?? [];
  if (!bar) return NOTHING;
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
  const facts = { notes, techniques };
  const claims = claimsFor(model, heard, bar, facts);
  return {
    analysis: { notes, techniques, reason: sentenceOf({ model, bar, tones, facts }, claims) },
    names: claims.some(namesBar),
  };
}

function reasonOf(model: LineModel, heard: HeardLine, bar: BarModel, facts: Facts): string {
  const claims = claimsFor(model, heard, bar, facts);
  return sentenceOf({ model, bar, tones: heard[bar.index] ?? [], facts }, claims);
}

interface Analysed extends Hearing {
  readonly bars: readonly Told[];
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

/** Which analyses of a line stand when it has other notes or another chart, and where. */
interface Standing {
  /** For each bar now, the one before that it goes on as with everything its analysis looked at; else null. */
  readonly from: readonly (number | null)[];
  /** For each bar before, its place now; null where it is gone or sounds otherwise. */
  readonly places: readonly (number | null)[];
}

function standingOf(before: Analysed, now: Hearing): Standing {
  const places = placesNow(before, now);
  const from: (number | null)[] = now.model.bars.map(() => null);
  places.forEach((place, was) => {
    if (place === null) return;
    const looksAtTheSame = [...(before.looked[was] ?? [])].every((bar) => places[bar] != null);
    const moved = now.model !== before.model;
    if (!looksAtTheSame || (moved && !standsAlike(before.model, was, now.model, places))) return;
    const says = before.bars[was]?.names === true;
    if (says && !sameNumbers(before.model, before.looked[was] ?? [], now.model, places)) return;
    from[place] = was;
  });
  return { from, places };
}

/** The bars of a set at their places now. */
function lookedNow(seen: ReadonlySet<number>, places: Standing['places']): ReadonlySet<number> {
  return [...seen].every((bar) => places[bar] === bar)
    ? seen
    : new Set([...seen].flatMap((bar) => places[bar] ?? []));
}

/** An analysis on its way: so far the bars at the beginning of the line. */
interface Begun {
  readonly request: LineRequest;
  readonly earlier: LineRequest | null;
  readonly before: Analysed | null;
  readonly hearing: Hearing;
  readonly standing: Standing | null;
  readonly bars: Told[];
  readonly looked: ReadonlySet<number>[];
}

/** What was begun last and is not finished yet. */
let lastBegun: Begun | null = null;

const sameNotes = (one: LineNotes, other: LineNotes): boolean =>
  one.length === other.length && one.every((notes, bar) => notes === other[bar]);

/** The analysis of a line: the one that was begun, where it is of the same line, else one that has no bar yet. */
function begunFor(request: LineRequest, line: LineNotes, earlier: LineRequest | null): Begun {
  if (
    lastBegun?.request === request &&
    lastBegun.earlier === earlier &&
    sameNotes(lastBegun.hearing.line, line)
  )
    return lastBegun;
  const own = latest.get(request);
  const theirs = earlier?.noteNames === request.noteNames ? earlier : null;
  const before = own ?? (theirs && latest.get(theirs)) ?? null;
  const hearing = hearAgain(own?.model ?? modelOf(request), line, before);
  const standing = before ? standingOf(before, hearing) : null;
  return { request, earlier, before, hearing, standing, bars: [], looked: [] };
}

/** Analyses further bars of what was begun, up to one (index from 0) that is not among them. */
function goOn({ before, hearing, standing, bars, looked }: Begun, end: number): void {
  const { model, heard } = hearing;
  for (const { index } of model.bars.slice(bars.length, end)) {
    const was = standing?.from[bars.length] ?? null;
    const known = was === null ? undefined : before?.bars[was];
    const seen = was === null ? undefined : before?.looked[was];
    if (known !== undefined && seen !== undefined && standing !== null) {
      bars.push(known);
      looked.push(lookedNow(seen, standing.places));
    } else {
      const now = new Set<number>();
      bars.push(tellOf(model, watched(heard, now), index));
      looked.push(now);
    }
  }
}

/**
 * Begins what {@link analyseLine} does, or goes on with it: whoever must not work for long at a time asks for a part
 * after the other.
 * @param share - how much of the line is to be analysed then, from 0 to 1
 */
export function analyseAhead(
  request: LineRequest,
  line: LineNotes,
  earlier: LineRequest | null,
  share: number,
): void {
  lastBegun = begunFor(request, line, earlier);
  goOn(lastBegun, Math.ceil(share * lastBegun.hearing.model.bars.length));
}

/**
 * What every bar of a line teaches and why, computed from the notes, the chart and every bar that can follow;
 * the same for composed and for hand-written notes.
 * Only those bars are analysed again that look at one which sounds differently now: under the same request, and under
 * another one of the same line as it was before its chart changed.
 * @param earlier - the request that the line was analysed under before, where there is one
 */
export function analyseLine(
  request: LineRequest,
  line: LineNotes,
  earlier: LineRequest | null = null,
): readonly BarAnalysis[] {
  const begun = begunFor(request, line, earlier);
  const { hearing, bars, looked } = begun;
  goOn(begun, hearing.model.bars.length);
  lastBegun = null;
  latest.set(request, { ...hearing, bars, looked });
  return bars.map(({ analysis }) => analysis);
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
