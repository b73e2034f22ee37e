import { rememberedFor } from '../../base';
import { type MetrePhrases, type PhraseBook, phraseBookOf } from '../../feel';
import { createHandGauge, ticksPerSecond } from '../../fretboard';
import { type HeardLine, hearLine, silenceOf } from '../hearing';
import type { LineModel } from '../model';
import { featureCost, handCost } from '../phrase/judge';
import { phrasesIn } from '../phrase/manner';
import type { Found } from '../phrase/search';
import { playingHandOf } from '../phrase/stands';
import { openWorkshop, type Workshop } from '../phrase/workshop';
import { modelOf } from '../read-request';
import { findBreaches } from '../rules/check';
import { hear, type Tone, writeNotes } from '../tones';
import type { ComposeRequest, LineNotes, Technique } from '../types';
import { aimMisses, isWithinLevel, techniquesOf, unfulfilled, type Wish, wishesOf } from './aim-misses';

/** What a broken rule, a missed aim and a technique that is ticked and not shown add (hand-set). */
export const BROKEN = 60;
const MISSED = 300;
const UNSHOWN = 100;

/** A line with what it costs. */
export interface Draft {
  readonly bars: LineNotes;
  readonly cost: number;
  /** How much of that is rules, aims and techniques that stay open. */
  readonly trouble: number;
  /** Bars in which a rule is broken or an aim missed. */
  readonly faults: ReadonlySet<number>;
}

/** Everything that the themes and plans of a request have in common, whatever the seed. */
export interface Desk {
  readonly request: ComposeRequest;
  readonly model: LineModel;
  readonly book: PhraseBook;
  readonly metre: MetrePhrases;
  readonly given: readonly (readonly Tone[] | null)[];
  readonly workshop: Workshop;
  readonly wishes: readonly Wish[];
  /** What a line costs by its features, and the techniques that its bars show. */
  featuresCost(heard: HeardLine): number;
  techniquesIn(heard: HeardLine): readonly (readonly Technique[])[];
  /** A line looked at closely: rules, aims, techniques, hand; null as soon as it costs a limit or more. */
  inspect(sketch: Sketch, limit: number): Draft | null;
}

/** A line as the search leaves it, with what it costs by its features. */
export interface Sketch extends Found {
  readonly whole: number;
  /** What a seed adds to that, so that it takes now one and now another of lines that are as good. */
  readonly chance: number;
}

function phrasesFor({ request }: LineModel): { book: PhraseBook; metre: MetrePhrases } {
  const book = phraseBookOf(request.feel.id);
  return { book, metre: phrasesIn(book, request.chart.metre) };
}

/** Lays out what a request needs. What is worked out at a desk is known from then on, and changes no line. */
export function openDesk(request: ComposeRequest): Desk {
  const model = modelOf(request);
  const wishes = wishesOf(model).filter((wish) => isWithinLevel(wish, request.level));
  const speed = ticksPerSecond(request.tempo, request.chart.metre);
  const gauge = createHandGauge(
    request.instrument,
    playingHandOf(model),
    speed,
    request.feel.bassTouch.muted,
  );
  const { book, metre } = phrasesFor(model);
  const given = model.bars.map((bar) => {
    const notes = request.kept[bar.index] ?? null;
    return notes ? hear(bar, notes) : null;
  });
  return {
    request,
    model,
    book,
    metre,
    given,
    workshop: openWorkshop(model, book, metre, given),
    wishes,
    // Many plans come to the same line.
    featuresCost: rememberedFor((heard: HeardLine) => featureCost(model, heard)),
    techniquesIn: rememberedFor((heard: HeardLine) => techniquesOf(model, heard)),
    inspect({ heard, whole }, limit) {
      const bars = heard.map((tones, bar) => request.kept[bar] ?? writeNotes(tones));
      const again = hearLine(model, bars);
      const broken = findBreaches(model, again);
      const full = fullBars(model, again);
      const rules = (broken.length + full.length) * BROKEN;
      if (whole + rules >= limit) return null;
      const missed = aimMisses(model, bars);
      const aims = rules + missed.length * MISSED;
      if (whole + aims >= limit) return null;
      const open = unfulfilled(wishes, techniquesOf(model, again)).filter(({ aim }) => aim < 0).length;
      const trouble = aims + open * UNSHOWN;
      if (whole + trouble >= limit) return null;
      const faults = new Set([
        ...full,
        ...broken.map(({ bar }) => bar),
        ...missed.flatMap((miss) => miss.bars),
      ]);
      return { bars, cost: whole + trouble + handCost(model, gauge, bars), trouble, faults };
    },
  };
}

/** The bars that are too full where a line leaves less of its time silent than its feel does. */
function fullBars(model: LineModel, heard: HeardLine): readonly number[] {
  const { least } = model.request.feel.silence;
  const bars = model.bars.filter(({ playable }) => playable);
  const silent = bars.map(({ index, ticks }) => silenceOf(heard[index] ?? [], ticks).whole);
  const time = bars.reduce((sum, { ticks }) => sum + ticks, 0);
  if (silent.reduce((sum, one) => sum + one, 0) >= least * time) return [];
  return bars.flatMap(({ index, ticks }, place) => ((silent[place] ?? 0) < least * ticks ? [index] : []));
}
