import type { Theme } from '../../feel';
import type { PlanWishes } from '../phrase/plan';
import type { Found, PlanSearch } from '../phrase/search';
import type { Desk } from './desk';

/** Plans that are tried in any case. */
export const LEAST_PLANS = 4;

/** How much of a plan's own cost counts beside the judgement of its line (hand-set). */
const OWN_COST = 0.9;

/** What the plans of a theme are made of. */
export function wishesFor({ model, book }: Desk, theme: Theme, search: PlanSearch): PlanWishes {
  return {
    manner: book.manner,
    theme,
    figures: search.figures,
    low: Math.min(...model.bars.map((bar) => bar.demands.reach.low)),
    high: Math.max(...model.bars.map((bar) => bar.demands.reach.high)),
    level: model.request.level,
    asks: [],
    insists: false,
    restsOnOne: model.request.feel.bassRole.mayRestOnOne,
  };
}

/** What a line costs by its features and by its plan. */
export const wholeOf = (desk: Desk, { heard, cost }: Found): number =>
  desk.featuresCost(heard) + (cost * OWN_COST * 8) / Math.max(8, desk.workshop.segments.length);

/** Seeds of plans and layouts, apart from each other. */
export const seedOf = (seed: number, index: number, salt: number): number =>
  (seed * 7919 + index * 104729 + salt) >>> 0;
