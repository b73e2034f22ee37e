import { type LineNote, midiOf, sameMetre, ticks } from '../../base';
import { type MetrePhrases, type PhraseBook, phraseBookOf } from '../../feel';
import { createHandGauge, type HandGauge, ticksPerSecond } from '../../fretboard';
import { techniquesInBar } from '../analysis';
import { type HeardLine, hearLine, silenceOf } from '../hearing';
import type { LineModel } from '../model';
import { modelOf } from '../read-request';
import { findBreaches } from '../rules/check';
import { writeNotes } from '../tones';
import type { ComposeRequest, LineNotes } from '../types';
import { composeWithBook, judge } from './engine';

/** Plans that are tried on a short chart, and over all bars of a long one. */
const MOST_PLANS = 40;
const LEAST_PLANS = 4;
const PLANNED_BARS = 480;

/** What the hand's cost of a note does beside the features (hand-set). */
const HAND = 0.9;

/** Seeds after the request's own that are asked where a line has a fault left; the last with the plainest theme. */
const PLAIN = 400;
const TRIES = [0, 101, PLAIN];

export interface PhraseDraft {
  readonly bars: LineNotes;
  readonly cost: number;
}

/** The phrases for a chart: those of its own metre, else of the feel's first, whose parts of bars are joined. */
function phrasesFor(model: LineModel): { book: PhraseBook; metre: MetrePhrases } {
  const { feel, chart } = model.request;
  const book = phraseBookOf(feel.id);
  return { book, metre: book.metres.find(({ metre }) => sameMetre(metre, chart.metre)) ?? book.metres[0] };
}

/** What a line costs by what can be counted in it, whoever wrote it. */
export const lineCost = (model: LineModel, bars: LineNotes): number => judge(model, hearLine(model, bars));

function handCost(model: LineModel, gauge: HandGauge, bars: LineNotes): number {
  let at = 0;
  const notes = bars.flatMap((bar, index) => {
    const begins = at;
    at += model.bars[index]?.ticks ?? 0;
    return bar.map((note: LineNote) => ({
      start: ticks(begins + note.start),
      duration: note.duration,
      midi: midiOf(note.pitch),
    }));
  });
  if (notes.length === 0) return 0;
  const { cost } = gauge.after(gauge.start, notes);
  return Number.isFinite(cost) ? (cost / notes.length) * HAND : 2;
}

/** Where the line lacks the silence of its feel: the free bars that are fullest. */
function fullestBars(model: LineModel, heard: HeardLine, kept: ComposeRequest['kept']): readonly number[] {
  const { least } = model.request.feel.silence;
  const bars = model.bars.filter((bar) => bar.playable && bar.ticks > bar.beat);
  const silences = bars.map((bar) => silenceOf(heard[bar.index] ?? [], bar.ticks).whole / bar.ticks);
  const all = silences.reduce((sum, one) => sum + one, 0);
  if (all >= least * bars.length) return [];
  return bars.flatMap((bar, place) =>
    (silences[place] ?? 0) < least && (kept[bar.index] ?? null) === null ? [bar.index] : [],
  );
}

/** Bars that break a rule, show what may not be shown there or lack what they should show; kept bars are not asked. */
function faultsOf(model: LineModel, heard: HeardLine, kept: ComposeRequest['kept']): readonly number[] {
  const broken = findBreaches(model, heard).map(({ bar }) => bar);
  const shown = model.bars.flatMap((bar) => {
    if (!bar.playable || (kept[bar.index] ?? null) !== null) return [];
    const { techniques, wanted } = bar.demands;
    const shows = techniquesInBar(model, heard, bar.index);
    const wrong = shows.filter((one) => one !== 'chord tones' && !techniques.has(one)).length;
    const missing = [...wanted].filter((one) => !shows.includes(one)).length;
    return Array.from({ length: wrong + missing }, () => bar.index);
  });
  return [...broken, ...shown, ...fullestBars(model, heard, kept)];
}

/**
 * The best line of the book under a request, before wishes for phrases are looked at.
 * @param effort share of the plans that are tried, for the second look at a line that lacks something
 */
export function draftByBook(request: ComposeRequest, effort = 1): PhraseDraft {
  const model = modelOf(request);
  const { book, metre } = phrasesFor(model);
  const bars = Math.max(1, model.bars.length);
  const plans = Math.max(LEAST_PLANS, Math.floor(Math.min(MOST_PLANS, PLANNED_BARS / bars) * effort));
  const gauge = createHandGauge(
    request.instrument,
    request.hand,
    ticksPerSecond(request.tempo, request.chart.metre),
    request.feel.bassTouch.muted,
  );
  let best: (PhraseDraft & { readonly faults: number }) | null = null;
  // Where a theme leaves something wrong, its other plans and the plainest theme are asked as well.
  for (const shift of TRIES) {
    const [seed, plain] = [request.seed + shift, shift === PLAIN];
    if (best !== null && best.faults === 0) break;
    const drafts = composeWithBook({
      model,
      book,
      metre,
      seed,
      plain,
      kept: request.kept,
      plans,
      faults: (heard) => faultsOf(model, hearLine(model, heard.map(writeNotes)), request.kept),
    });
    for (const draft of drafts) {
      const written = draft.heard.map((tones, bar) => request.kept[bar] ?? writeNotes(tones));
      const cost = draft.cost + handCost(model, gauge, written);
      if (best === null || cost < best.cost) best = { bars: written, cost, faults: draft.faults };
    }
  }
  return best ?? { bars: model.bars.map((bar) => request.kept[bar.index] ?? []), cost: 0 };
}
