import { rememberedFor } from '../../base';
import type { Theme } from '../../feel';
import { carryingThemes } from '../phrase/carrying';
import { layoutOf } from '../phrase/layout';
import { planOf } from '../phrase/plan';
import { searchOver } from '../phrase/search';
import { themesFor } from '../phrase/themes';
import type { Desk } from './desk';
import { LEAST_PLANS, seedOf, wholeOf, wishesFor } from './planning';

/**
 * Tunes that are tried on a chart before one is taken, plans that each is tried with, in bars planned, and what is too
 * much for it: nodes to look at for a tune, and bars of the chart.
 */
const MOST_TRIED = 8;
const TRIED_BARS = 96;
const MOST_LOOKED = 40_000;
const TOO_LONG = 64;

/** What a tune comes to over the chart with a few plans, and the nodes that were looked at. */
function tried(desk: Desk, theme: Theme): { readonly cost: number; readonly looked: number } {
  const { model, workshop } = desk;
  const search = searchOver(model, workshop, theme, new Set());
  const wishes = wishesFor(desk, theme, search);
  const layout = layoutOf(model, wishes, seedOf(0, 0, 31));
  const plans = Math.min(LEAST_PLANS, Math.max(1, Math.floor(TRIED_BARS / model.bars.length)));
  let cost = Number.POSITIVE_INFINITY;
  for (let index = 0; index < plans && search.looked() < MOST_LOOKED; index += 1) {
    const found = search.best(planOf(wishes, layout, seedOf(0, index, 17)));
    if (found) cost = Math.min(cost, wholeOf(desk, found));
  }
  return { cost, looked: search.looked() };
}

/** The tunes that carry a line over the chart, the one that reads best first; none where that takes too long to tell. */
const rankedTunes = rememberedFor((desk: Desk): readonly Theme[] => {
  const { model, workshop, metre } = desk;
  const tunes = themesFor(metre, model, 0).filter(({ tune }) => tune !== null);
  if (model.bars.length > TOO_LONG || tunes.length < 2) return [];
  const ranked: { readonly theme: Theme; readonly cost: number }[] = [];
  for (const theme of carryingThemes(workshop, tunes, MOST_TRIED)) {
    const { cost, looked } = tried(desk, theme);
    if (looked >= MOST_LOOKED) return [];
    ranked.push({ theme, cost });
  }
  return ranked.toSorted((one, other) => one.cost - other.cost).map(({ theme }) => theme);
});

/**
 * The tune that a seed begins with, and the one after it: seeds go through the tunes, the one that reads best over the
 * chart first. Null where tunes are not compared.
 */
export function tunesInTurn(desk: Desk, seed: number): readonly Theme[] | null {
  const ranked = rankedTunes(desk);
  const [first, second] = [0, 1].map((step) => ranked[(seed + step) % ranked.length]);
  return first && second ? [first, second] : null;
}
