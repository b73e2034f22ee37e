import { midiNumber, TICKS_PER_QUARTER, ticks } from '../base';
import type { Chart } from '../chart';
import { createHandGauge, type HandGauge, ticksPerSecond } from '../fretboard';
import { pitchesOf } from './demands';
import { countsByStretch, endsOffBeat, nextStretches, openShelf, tonesOf } from './figures';
import { type BarModel, changesAtStart, type LineModel } from './model';
import { modelOf } from './read-request';
import { type BarRhythm, rhythmsFor, runsFor } from './rhythm';
import { soloBreaches } from './rules/check';
import { type Entry, type Exit, entryOf, exitOf } from './rules/ends';
import { type Figure, isLongWalk } from './shapes';
import { demandCost, figureCost, handCost, pitchCost, timeCost } from './taste';
import { isHome, isLeap, type Tone, toneOf } from './tones';
import type { LineRequest } from './types';

/** A way of playing a bar that breaks no rule by itself, with what it costs. */
export interface Option {
  readonly tones: readonly Tone[];
  readonly rhythm: BarRhythm;
  readonly shape: string;
  readonly cost: number;
  readonly exit: Exit | null;
  readonly entry: Entry | null;
}

export const textOfTones = (tones: readonly Tone[]): string =>
  tones.map((tone) => `${tone.start} ${tone.duration} ${tone.midi}`).join(', ');

/** Whether the notes keep to the techniques that are switched on, as far as one bar can tell. */
function keepsToTechniques(model: LineModel, bar: BarModel, tones: readonly Tone[], figure: Figure): boolean {
  const { freedoms } = bar.demands;
  return tones.every((tone, index) => {
    const before = tones[index - 1];
    if (before && Math.abs(before.midi - tone.midi) === 12 && !freedoms.has('octave leap')) return false;
    if (tone.member) return true;
    if (!before) return false;
    if (figure.anticipates && index === tones.length - 1) return true;
    const outside = !tone.stretch?.steps.some((step) => step?.halfSteps === tone.interval);
    if (outside || isLeap(before.midi, tone.midi)) {
      return freedoms.has('notes outside the scale') && model.limits.halfSteps && index === tones.length - 1;
    }
    return freedoms.has('notes outside the chord');
  });
}

/**
 * New chords and sections begin with their root; only where a chord goes on may a bar begin elsewhere in it, and a chord of a
 * single beat may be passed through on its third or seventh.
 */
function beginsOnHome(bar: BarModel, tones: readonly Tone[], changed: boolean): boolean {
  return bar.stretches.every((stretch) => {
    if (!stretch.chord || (stretch.index === 0 && !changed && !bar.opensSection)) return true;
    const first = tones.find((tone) => tone.stretch === stretch);
    if (first === undefined || isHome(first)) return true;
    if (bar.demands.rootless && pitchesOf(stretch.demands.reach, stretch.homeClass).length === 0)
      return first.member;
    const fifth = first.interval >= 6 && first.interval <= 8;
    return first.member && !fifth && stretch.index > 0 && stretch.end - stretch.start <= bar.beat;
  });
}

/** Finds and prices options, remembering what bars of the same harmony share. */
export interface Workshop {
  readonly model: LineModel;
  /** Equal for bars that offer the same options: metre, chords, key, and what may follow. */
  likeness(bar: BarModel): number;
  rhythms(bar: BarModel): readonly BarRhythm[];
  /** Running rhythms for walks into the next chord, beside those of the feel: for ideas, not for whole lines. */
  runs(bar: BarModel): readonly BarRhythm[];
  /** The options for a rhythm, the cheapest first. */
  options(bar: BarModel, rhythm: BarRhythm): readonly Option[];
  /** Notes that are given, as an option. */
  given(bar: BarModel, tones: readonly Tone[], rhythm: BarRhythm): Option;
}

/** The workshop that a chart was last looked at in: a teacher asks for the ideas of one bar after the other. */
const lastWorkshops = new WeakMap<Chart, { readonly key: string; readonly shop: Workshop }>();

/** A workshop for a request; the one of the last request for the same chart where nothing else has changed. */
export function workshopFor(request: LineRequest): Workshop {
  const key = keyOfRequest(request);
  const known = lastWorkshops.get(request.chart);
  if (known?.key === key) return known.shop;
  const shop = openWorkshop(modelOf(request));
  lastWorkshops.set(request.chart, { key, shop });
  return shop;
}

/** Everything in a request that may change while the chart stays, in text. */
const keyOfRequest = ({ key, feel, tempo, level, techniques, instrument, hand, aims }: LineRequest): string =>
  JSON.stringify([key, feel.id, tempo, level, [...techniques].sort(), instrument, hand, aims]);

function openWorkshop(model: LineModel): Workshop {
  const { request } = model;
  const speed = ticksPerSecond(request.tempo, request.chart.metre);
  const gauge = createHandGauge(request.instrument, request.hand, speed);
  const shelf = openShelf(model);
  const figures = new Map<string, readonly PricedFigure[]>();
  const rhythms = new Map<number, readonly BarRhythm[]>();
  const runs = new Map<number, readonly BarRhythm[]>();
  const options = new Map<string, readonly Option[]>();

  const likenesses = numberLikenesses(model);
  const likeness = (bar: BarModel): number => likenesses[bar.index] ?? -1;

  /** The figures for a bar, judged by their pitches and the hand alone, the best kinds first. */
  const figuresOf = (bar: BarModel, counts: readonly number[]): readonly PricedFigure[] =>
    remembered(figures, `${likeness(bar)} / ${counts.join(' ')}`, () => {
      const changed = changesAtStart(model, bar);
      const all = shelf.ofBar(bar, counts).map((figure) => ({ figure, tones: sketch(bar, counts, figure) }));
      const sound = all.filter(
        ({ figure, tones }) =>
          beginsOnHome(bar, tones, changed) &&
          keepsToTechniques(model, bar, tones, figure) &&
          soloBreaches(model, bar, tones) === 0,
      );
      const best = (sound.length > 0 ? sound : all)
        .map(({ figure, tones }) => ({
          figure,
          tones,
          cost: pitchCost(model, tones) + figureCost(model, figure.shape),
        }))
        .sort((one, other) => one.cost - other.cost);
      return ofEveryKind(best).map(({ figure, tones, cost }) => ({
        figure,
        cost: cost + handCost(tones, playingCost(gauge, tones)),
      }));
    });

  const finished = (
    bar: BarModel,
    tones: readonly Tone[],
    rhythm: BarRhythm,
    shape: string,
    pitchesCost: number,
  ): Option => ({
    tones,
    rhythm,
    shape,
    cost: pitchesCost + timeCost(bar, tones, changesAtStart(model, bar)) + demandCost(bar, tones),
    exit: exitOf(tones),
    entry: entryOf(tones),
  });

  /** What breaks a rule by itself stays only where a bar has nothing else. */
  const optionsOf = (bar: BarModel, rhythm: BarRhythm): readonly Option[] => {
    const early = endsOffBeat(bar, rhythm.onsets);
    const priced = figuresOf(bar, countsByStretch(bar, rhythm));
    const all = priced
      .filter(({ figure }) => early || !figure.anticipates)
      .map(({ figure, cost }) => {
        const tones = tonesOf(bar, rhythm, figure);
        return { tones, figure, cost, clean: soloBreaches(model, bar, tones) === 0 };
      });
    const clean = all.filter((option) => option.clean);
    return (clean.length > 0 ? clean : all)
      .map(({ tones, figure, cost }) => finished(bar, tones, rhythm, figure.shape, cost))
      .sort((one, other) => one.cost - other.cost);
  };

  return {
    model,
    likeness,
    rhythms: (bar) => remembered(rhythms, likeness(bar), () => rhythmsFor(model, bar)),
    runs: (bar) => remembered(runs, likeness(bar), () => runsFor(model, bar)),
    options: (bar, rhythm) =>
      remembered(options, `${likeness(bar)} / ${rhythm.cell.id}`, () => optionsOf(bar, rhythm)),
    given: (bar, tones, rhythm) => finished(bar, tones, rhythm, '', pitchCost(model, tones)),
  };
}

interface PricedFigure {
  readonly figure: Figure;
  readonly cost: number;
}

/** Figures of chord tones alone, with steps, with leaps, and long walks: how many of each are tried in the hand and offered to the search. */
const FIGURES_A_KIND = 18;

function ofEveryKind<Item extends { readonly tones: readonly Tone[]; readonly figure: Figure }>(
  items: readonly Item[],
): readonly Item[] {
  const chordal = items.filter(({ tones }) => tones.every((tone) => tone.member));
  const stepping = items.filter(({ tones }) => tones.some((tone) => !tone.member));
  const leaping = items.filter(({ tones }) => tones.some(isSpecial));
  const walking = items.filter(({ figure }) => isLongWalk(figure.shape));
  return [
    ...new Set([
      ...chordal.slice(0, FIGURES_A_KIND),
      ...stepping.slice(0, FIGURES_A_KIND),
      ...leaping.slice(0, FIGURES_A_KIND),
      ...walking.slice(0, FIGURES_A_KIND),
    ]),
  ];
}

/** Octave leaps and notes that only approach or anticipate: rare figures that would be crowded out. */
const isSpecial = (tone: Tone, index: number, tones: readonly Tone[]): boolean => {
  const before = tones[index - 1];
  if (!before) return false;
  const outside = !tone.stretch?.steps.some((step) => step?.halfSteps === tone.interval);
  return (
    Math.abs(tone.midi - before.midi) === 12 || (!tone.member && (outside || isLeap(before.midi, tone.midi)))
  );
};

/** A short time for each note, so that nothing but the pitches counts. */
const SKETCHED = 60;

/** A figure without its rhythm: short notes one after the other under each chord. */
function sketch(bar: BarModel, counts: readonly number[], figure: Figure): readonly Tone[] {
  const tones: Tone[] = [];
  for (const stretch of bar.stretches) {
    const count = stretch.chord ? (counts[stretch.index] ?? 0) : 0;
    for (let note = 1; note <= count; note += 1) {
      const pitch = figure.pitches[tones.length];
      if (pitch) tones.push(toneOf(bar, stretch.start + note * SKETCHED, SKETCHED, pitch.midi, pitch.name));
    }
  }
  return tones;
}

/** The hand is asked about even eighths, whatever the rhythm: what is comfortable there is so anywhere. */
const EVENLY = TICKS_PER_QUARTER / 2;

function playingCost(gauge: HandGauge, tones: readonly Tone[]): number {
  const notes = tones.map((tone, index) => ({
    start: ticks(index * EVENLY),
    duration: ticks(EVENLY),
    midi: midiNumber(tone.midi),
  }));
  const { cost } = gauge.after(gauge.start, notes);
  return Number.isFinite(cost) ? cost : UNPLAYABLE;
}

/** What a note off the neck costs; only notes written by hand can be so. */
const UNPLAYABLE = 500;

function remembered<Key, Value>(store: Map<Key, Value>, key: Key, make: () => Value): Value {
  const known = store.get(key);
  if (known !== undefined) return known;
  const made = make();
  store.set(key, made);
  return made;
}

/** By bar, the same number for bars that are alike to the composer. */
function numberLikenesses(model: LineModel): readonly number[] {
  const numbers = new Map<string, number>();
  return model.bars.map((bar) => {
    const text = likenessOf(model, bar);
    const number = numbers.get(text) ?? numbers.size;
    numbers.set(text, number);
    return number;
  });
}

function likenessOf(model: LineModel, bar: BarModel): string {
  return [
    `${bar.metre.count}/${bar.metre.unit}`,
    ...bar.stretches.map(
      ({ start, label, key }) => `${start} ${label} ${key.tonic.letter}${key.tonic.alteration}${key.mode}`,
    ),
    changesAtStart(model, bar) ? 'new' : 'same',
    bar.opensSection ? 'opens' : '',
    bar.demands.key,
    ...nextStretches(model, bar).map((stretch) => stretch.label),
  ].join('|');
}
