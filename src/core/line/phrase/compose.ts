import { type LineNote, midiOf, sameMetre, ticks } from '../../base';
import { type MetrePhrases, type PhraseBook, phraseBookOf } from '../../feel';
import { createHandGauge, type HandGauge, ticksPerSecond } from '../../fretboard';
import { techniquesInBar } from '../analysis';
import { type HeardLine, hearLine } from '../hearing';
import type { LineModel } from '../model';
import { modelOf } from '../read-request';
import { findBreaches } from '../rules/check';
import { writeNotes } from '../tones';
import type { ComposeRequest, LineNotes } from '../types';
import { composeWithBook } from './engine';

/** Plans that are tried on a short chart, and over all bars of a long one. */
const MOST_PLANS = 72;
const LEAST_PLANS = 5;
const PLANNED_BARS = 900;

/** What the hand's cost of a note does beside the features (hand-set). */
const HAND = 0.5;

export interface PhraseDraft {
  readonly bars: LineNotes;
  readonly cost: number;
}

/** The phrases for a chart: those of its own metre, else of the feel's first, whose parts of bars are joined. */
export function phrasesFor(model: LineModel): { book: PhraseBook; metre: MetrePhrases } {
  const { feel, chart } = model.request;
  const book = phraseBookOf(feel.id);
  return { book, metre: book.metres.find(({ metre }) => sameMetre(metre, chart.metre)) ?? book.metres[0] };
}

function handCost(model: LineModel, gauge: HandGauge, bars: LineNotes): number {
  let at = 0;
  const notes = bars.flatMap((bar, index) => {
    const begins = at;
    at += model.bars[index]?.ticks ?? 0;
    return bar.map((note: LineNote) => ({ start: ticks(begins + note.start), duration: note.duration, midi: midiOf(note.pitch) }));
  });
  if (notes.length === 0) return 0;
  const { cost } = gauge.after(gauge.start, notes);
  return Number.isFinite(cost) ? (cost / notes.length) * HAND : 2;
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
  return [...broken, ...shown];
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
  for (const [seed, plain] of [[request.seed, false], [request.seed + 7, false], [request.seed, true]] as const) {
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
