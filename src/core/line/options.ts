import { midiNumber, ticks } from '../base';
import { createHandGauge, type HandGauge, ticksPerSecond } from '../fretboard';
import { type Entry, type Exit, entryOf, exitOf, soloBreaches } from './bar-rules';
import { draftsFor, nextStretches } from './candidates';
import { type BarModel, changesAtStart, type LineModel } from './model';
import { type BarRhythm, rhythmsFor } from './rhythm';
import { ownCost } from './taste';
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
      return techniques.has('approach note') && index === tones.length - 1;
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
  const handCosts = new Map<string, number>();
  const rhythms = new Map<string, readonly BarRhythm[]>();
  const options = new Map<string, readonly Option[]>();

  const priced = (bar: BarModel, tones: readonly Tone[], rhythm: BarRhythm, shape: string): Option => {
    const text = textOfTones(tones);
    let hand = handCosts.get(text);
    if (hand === undefined) {
      hand = handCostOf(gauge, tones);
      handCosts.set(text, hand);
    }
    return {
      tones,
      rhythm,
      shape,
      text,
      cost: ownCost(model, bar, tones, changesAtStart(model, bar), hand),
      exit: exitOf(tones),
      entry: entryOf(tones),
    };
  };

  return {
    model,
    rhythms: (bar) => remembered(rhythms, likenessOf(model, bar), () => rhythmsFor(model, bar)),
    options: (bar, rhythm) =>
      remembered(options, `${likenessOf(model, bar)} / ${rhythm.cell.id}`, () => {
        const changed = changesAtStart(model, bar);
        return draftsFor(model, bar, rhythm)
          .filter(
            ({ tones }) =>
              tones.length === rhythm.onsets.length &&
              beginsOnHome(bar, tones, changed) &&
              keepsToTechniques(model, tones) &&
              soloBreaches(model, bar, tones) === 0,
          )
          .map((draft) => priced(bar, draft.tones, rhythm, draft.shape))
          .sort((one, other) => one.cost - other.cost);
      }),
    given: (bar, tones, rhythm) => priced(bar, tones, rhythm, ''),
  };
}

function handCostOf(gauge: HandGauge, tones: readonly Tone[]): number {
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

const likenesses = new WeakMap<BarModel, string>();

/** Equal for bars that offer the same options: metre, chords, key, and what may follow. */
function likenessOf(model: LineModel, bar: BarModel): string {
  const known = likenesses.get(bar);
  if (known !== undefined) return known;
  const likeness = [
    `${bar.metre.count}/${bar.metre.unit}`,
    ...bar.stretches.map(
      ({ start, label, key }) => `${start} ${label} ${key.tonic.letter}${key.tonic.alteration}${key.mode}`,
    ),
    changesAtStart(model, bar) ? 'new' : 'same',
    ...nextStretches(model, bar).map((stretch) => stretch.label),
  ].join('|');
  likenesses.set(bar, likeness);
  return likeness;
}
