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
 * Tunes that are tried on a chart before one is taken, plans that each is tried with, in bars planned, nodes that are looked
 * at until no further plan is, and bars of a chart that is too long for it.
 */
const MOST_TRIED = 8;
const TRIED_BARS = 96;
const MOST_LOOKED = 15_000;
const TOO_LONG = 64;

/** The tunes that carry a line over the chart, the one that reads best first: each is tried with a few plans. */
const rankedTunes = rememberedFor((desk: Desk): readonly Theme[] => {
  const { model, workshop, metre } = desk;
  const count = model.bars.length;
  const themes = themesFor(metre, model, 0).filter(({ tune }) => tune !== null);
  if (count > TOO_LONG || themes.length < 2) return [];
  const tried = carryingThemes(workshop, themes, MOST_TRIED).map((theme) => {
    const search = searchOver(model, workshop, theme, new Set());
    const wishes = wishesFor(desk, theme, search);
    const layout = layoutOf(model, wishes, seedOf(0, 0, 31));
    const plans = Math.min(LEAST_PLANS, Math.max(1, Math.floor(TRIED_BARS / count)));
    let cost = Number.POSITIVE_INFINITY;
    for (let index = 0; index < plans && (index === 0 || search.looked() < MOST_LOOKED); index += 1) {
      const found = search.best(planOf(wishes, layout, seedOf(0, index, 17)));
      if (found) cost = Math.min(cost, wholeOf(desk, found));
    }
    return { theme, cost };
  });
  return tried.toSorted((one, other) => one.cost - other.cost).map(({ theme }) => theme);
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
