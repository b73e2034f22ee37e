import { midiNumber, ticks } from '../base';
import { createHandGauge, type HandGauge, ticksPerSecond } from '../fretboard';
import { type Entry, type Exit, entryOf, exitOf, soloBreaches } from './bar-rules';
import { barFigures, countsByStretch, type Figure, nextStretches, tonesOf } from './candidates';
import { type BarModel, changesAtStart, type LineModel } from './model';
import { type BarRhythm, rhythmsFor } from './rhythm';
import { BREACH, handCost, ownCost } from './taste';
import { isLeap, type Tone } from './tones';

/** A way of playing a bar that breaks no rule by itself, with what it costs. */
export interface Option {
  readonly tones: readonly Tone[];
  readonly rhythm: BarRhythm;
  readonly shape: string;
  readonly cost: number;
  readonly exit: Exit | null;
  readonly entry: Entry | null;
  /** Equal for equal notes. */
  readonly text: string;
}

export const textOfTones = (tones: readonly Tone[]): string =>
  tones.map((tone) => `${tone.start} ${tone.duration} ${tone.midi}`).join(', ');

/** Whether the notes keep to the techniques that are switched on, as far as one bar can tell. */
function keepsToTechniques(model: LineModel, tones: readonly Tone[]): boolean {
  const { techniques } = model.request;
  return tones.every((tone, index) => {
    const before = tones[index - 1];
    if (before && Math.abs(before.midi - tone.midi) === 12 && !techniques.has('octave')) return false;
    if (tone.member) return true;
    if (!before) return false;
    const outside = !tone.stretch?.steps.some((step) => step?.halfSteps === tone.interval);
    if (outside || isLeap(before.midi, tone.midi)) {
      return techniques.has('approach note') && model.limits.halfSteps && index === tones.length - 1;
    }
    return techniques.has('scale steps');
  });
}

/** New chords begin with their root; only where a chord goes on may a bar begin elsewhere in it. */
function beginsOnHome(bar: BarModel, tones: readonly Tone[], changed: boolean): boolean {
  return bar.stretches.every((stretch) => {
    if (!stretch.chord || (stretch.index === 0 && !changed)) return true;
    const first = tones.find((tone) => tone.stretch === stretch);
    return first === undefined || first.midi % 12 === stretch.homeClass;
  });
}

/** Finds and prices options, remembering what bars of the same harmony share. */
export interface Workshop {
  readonly model: LineModel;
  /** Equal for bars that offer the same options: metre, chords, key, and what may follow. */
  likeness(bar: BarModel): string;
  rhythms(bar: BarModel): readonly BarRhythm[];
  /** The options for a rhythm, the cheapest first. */
  options(bar: BarModel, rhythm: BarRhythm): readonly Option[];
  /** Notes that are given, as an option. */
  given(bar: BarModel, tones: readonly Tone[], rhythm: BarRhythm): Option;
}

export function openWorkshop(model: LineModel): Workshop {
  const { request } = model;
  const speed = ticksPerSecond(request.tempo, request.chart.metre);
  const gauge = createHandGauge(request.instrument, request.hand, speed);
  const figures = new Map<string, readonly Figure[]>();
  const rhythms = new Map<string, readonly BarRhythm[]>();
  const options = new Map<string, readonly Option[]>();

  const likenesses = new Map<number, string>();
  const likeness = (bar: BarModel): string => {
    const known = likenesses.get(bar.index);
    if (known !== undefined) return known;
    const made = likenessOf(model, bar);
    likenesses.set(bar.index, made);
    return made;
  };

  const figuresOf = (bar: BarModel, counts: readonly number[]): readonly Figure[] =>
    remembered(figures, `${likeness(bar)} / ${counts.join(' ')}`, () => barFigures(model, bar, counts));

  /** Everything but the hand's cost, which is asked for last, as it takes longest. */
  const cheaply = (bar: BarModel, rhythm: BarRhythm): readonly Priced[] => {
    const changed = changesAtStart(model, bar);
    const counts = countsByStretch(bar, rhythm);
    return figuresOf(bar, counts).flatMap((figure): readonly Priced[] => {
      const tones = tonesOf(bar, rhythm, figure);
      if (!beginsOnHome(bar, tones, changed) || !keepsToTechniques(model, tones)) return [];
      const breach = soloBreaches(model, bar, tones) === 0 ? 0 : BREACH;
      return [{ tones, shape: figure.shape, cost: breach + ownCost(model, bar, tones, changed) }];
    });
  };

  /** What breaks a rule by itself stays only where a bar has nothing else. */
  const usable = (bar: BarModel, rhythm: BarRhythm): readonly Priced[] => {
    const all = cheaply(bar, rhythm);
    const clean = all.filter(({ cost }) => cost < BREACH);
    return [...(clean.length > 0 ? clean : all)].sort((one, other) => one.cost - other.cost);
  };

  const finished = ({ tones, shape, cost }: Priced, rhythm: BarRhythm): Option => ({
    tones,
    rhythm,
    shape,
    text: textOfTones(tones),
    cost: cost + handCost(tones, playingCost(gauge, tones)),
    exit: exitOf(tones),
    entry: entryOf(tones, 'one'),
  });

  return {
    model,
    likeness,
    rhythms: (bar) => remembered(rhythms, likeness(bar), () => rhythmsFor(model, bar)),
    options: (bar, rhythm) =>
      remembered(options, `${likeness(bar)} / ${rhythm.cell.id}`, () =>
        usable(bar, rhythm)
          .slice(0, OPTIONS_A_RHYTHM)
          .map((option) => finished(option, rhythm))
          .sort((one, other) => one.cost - other.cost),
      ),
    given: (bar, tones, rhythm) =>
      finished({ tones, shape: '', cost: ownCost(model, bar, tones, changesAtStart(model, bar)) }, rhythm),
  };
}

interface Priced {
  readonly tones: readonly Tone[];
  readonly shape: string;
  readonly cost: number;
}

/** The cheapest options of a rhythm that are tried in the hand and offered to the search. */
const OPTIONS_A_RHYTHM = 48;

function playingCost(gauge: HandGauge, tones: readonly Tone[]): number {
  const notes = tones.map((tone) => ({
    start: ticks(tone.start),
    duration: ticks(tone.duration),
    midi: midiNumber(tone.midi),
  }));
  const { cost } = gauge.after(gauge.start, notes);
  return Number.isFinite(cost) ? cost : UNPLAYABLE;
}

/** What a note off the neck costs; only notes written by hand can be so. */
const UNPLAYABLE = 500;

function remembered<Value>(store: Map<string, Value>, key: string, make: () => Value): Value {
  const known = store.get(key);
  if (known !== undefined) return known;
  const made = make();
  store.set(key, made);
  return made;
}

function likenessOf(model: LineModel, bar: BarModel): string {
  return [
    `${bar.metre.count}/${bar.metre.unit}`,
    ...bar.stretches.map(
      ({ start, label, key }) => `${start} ${label} ${key.tonic.letter}${key.tonic.alteration}${key.mode}`,
    ),
    changesAtStart(model, bar) ? 'new' : 'same',
    ...nextStretches(model, bar).map((stretch) => stretch.label),
  ].join('|');
}
