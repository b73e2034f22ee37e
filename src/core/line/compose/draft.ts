import { rememberedFor } from '../../base';
import type { Theme } from '../../feel';
import type { HeardLine } from '../hearing';
import type { LineModel } from '../model';
import { carryingThemes } from '../phrase/carrying';
import { layoutOf } from '../phrase/layout';
import { type Ask, type PlanWishes, planOf } from '../phrase/plan';
import { type Found, type PlanSearch, searchOver } from '../phrase/search';
import { tasteOf } from '../phrase/taste';
import { looseThemesFor, themesFor } from '../phrase/themes';
import { unfulfilled, type Wish } from './aim-misses';
import type { Desk, Draft, Sketch } from './desk';

/** Plans that are tried on a short chart, and over all bars of a long one. */
const MOST_PLANS = 72;
/** Of a tune, whose form and rhythms are given. */
const PLANS_OF_A_TUNE = 28;
const LEAST_PLANS = 4;
const PLANNED_BARS = 1024;

/** A bar alone can be played in no more ways than this that are worth a look. */
const PLANS_A_BAR = 20;

/** Layouts of the form that the plans are made of; plans of one layout differ in what they like and where they lie. */
const LAYOUTS = 5;
const LAYOUTS_OF_MANY_BARS = 3;
const MANY_BARS = 24;

/**
 * Nodes that are looked at until no further plan of a look is tried, and until a further look tries none but a few: a
 * chart of many chords that repeats and endings lead through is not worked at for longer. A first look at sixteen
 * bars of two chords each with repeats and endings takes a third of the first number.
 */
const MOST_LOOKED = 900_000;
const MOST_LOOKED_AGAIN = 450_000;

/** Share of the plans that are tried before it is known what has to be asked for, and for another theme. */
const UNASKED = 0.3;
const SECOND_LOOK = 0.6;

/** How much of a plan's own cost counts beside the judgement of its line (hand-set). */
const OWN_COST = 0.9;

/** One theme looked at. */
interface Look {
  readonly theme: Theme;
  /** Share of the plans that are tried. */
  readonly effort: number;
  /** Bars that are offered other forms of the phrases. */
  readonly wide: ReadonlySet<number>;
  /** Whether the techniques that lines do not show by themselves are insisted upon. */
  readonly insists: boolean;
  /** Nodes that may be looked at; some plans are tried in any case. */
  readonly most: number;
}

/** What has to be asked of the plans: what most lines do not show by themselves. */
function asksFor({ techniquesIn, wishes, given }: Desk, sketches: readonly Sketch[]): readonly Ask[] {
  const missing = new Map<Wish, number>();
  for (const { heard } of sketches)
    for (const wish of unfulfilled(wishes, techniquesIn(heard)))
      missing.set(wish, (missing.get(wish) ?? 0) + 1);
  return wishes.flatMap((wish): readonly Ask[] => {
    const bars = wish.bars.filter((bar) => given[bar] === null);
    return (missing.get(wish) ?? 0) * 3 > sketches.length && bars.length > 0
      ? [{ technique: wish.technique, bars }]
      : [];
  });
}

function wishesFor({ model, book }: Desk, theme: Theme, search: PlanSearch): PlanWishes {
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

/** The best line of a theme, and how many nodes were looked at for it. */
function bestOf(
  desk: Desk,
  seed: number,
  { theme, effort, wide, insists, most: mostLooked }: Look,
): { readonly draft: Draft | null; readonly looked: number } {
  const { model } = desk;
  const search = searchOver(model, desk.workshop, theme, wide);
  const count = model.bars.length;
  const most = Math.min(theme.tune ? PLANS_OF_A_TUNE : MOST_PLANS, PLANS_A_BAR * count, PLANNED_BARS / count);
  const plans = Math.max(LEAST_PLANS, Math.floor(most * effort));
  const plain = wishesFor(desk, theme, search);
  const forms = theme.tune ? 1 : count > MANY_BARS ? LAYOUTS_OF_MANY_BARS : LAYOUTS;
  const layouts = Array.from({ length: forms }, (_, index) =>
    layoutOf(model, plain, seedOf(seed, index, 31)),
  );
  const sketches: Sketch[] = [];
  let wishes = plain;
  for (let index = 0; index < plans; index += 1) {
    if (index >= LEAST_PLANS && search.looked() >= mostLooked) break;
    if (index === Math.ceil(plans * UNASKED)) wishes = { ...plain, asks: asksFor(desk, sketches), insists };
    const layout = layouts[index % layouts.length] ?? [];
    const found = search.best(planOf(wishes, layout, seedOf(seed, index, 17)));
    if (!found) continue;
    sketches.push({ ...found, whole: wholeOf(desk, found), chance: chanceOf(seed, found.heard) });
  }
  return { draft: pickBest(desk, sketches), looked: search.looked() };
}

/** What a line costs by its features and by its plan. */
const wholeOf = (desk: Desk, { heard, cost }: Found): number =>
  desk.featuresCost(heard) + (cost * OWN_COST * 8) / Math.max(8, desk.workshop.segments.length);

const seedOf = (seed: number, index: number, salt: number): number =>
  (seed * 7919 + index * 104729 + salt) >>> 0;

/** How far chance moves lines past each other that are nearly as good, so that two seeds seldom come to one (hand-set). */
const CHANCE = 12;

const chanceOf = (seed: number, heard: HeardLine): number =>
  CHANCE * tasteOf(seed, heard.length, lineTag(heard));

/** A number that stands for the notes of a line. */
const lineTag = rememberedFor((heard: HeardLine): number =>
  heard.flat().reduce((tag, { start, midi }) => (Math.imul(tag, 31) + start * 128 + midi) | 0, 7),
);

/** Looks at the cheapest lines closely, until none that is left can be better. */
function pickBest(desk: Desk, sketches: readonly Sketch[]): Draft | null {
  let best: { readonly draft: Draft; readonly order: number } | null = null;
  const seen = new Set<HeardLine>();
  const orderOf = ({ whole, chance }: Sketch): number => whole + chance;
  for (const sketch of sketches.toSorted((one, other) => orderOf(one) - orderOf(other))) {
    if (best !== null && orderOf(sketch) >= best.order) break;
    // The same line from a dearer plan.
    if (seen.has(sketch.heard)) continue;
    seen.add(sketch.heard);
    const draft = desk.inspect(sketch, (best?.order ?? Number.POSITIVE_INFINITY) - sketch.chance);
    const order = draft ? draft.cost + sketch.chance : 0;
    if (draft && (best === null || order < best.order)) best = { draft, order };
  }
  return best?.draft ?? null;
}

/**
 * The best line of the feel's book: over many plans of the form, of the cheapest way through each, the line that
 * reads best. Where something stays amiss, its bars are offered other forms of the phrases, then other themes are tried.
 * @param most how often it is looked at before it is left with what is amiss
 */
export function draftOf(desk: Desk, seed: number, most = Number.POSITIVE_INFINITY): Draft {
  const { request, model } = desk;
  const carrying = (themes: readonly Theme[]) =>
    model.bars.some(({ playable }) => playable) ? carryingThemes(desk.workshop, themes) : [];
  const [first, second] = carrying(themesFor(desk.metre, model, seed));
  // Bars that are written as one cannot give way to everything: themes whose bars the plan orders are the last resort.
  const loose = () => (first?.tune ? carrying(looseThemesFor(desk.metre, model, seed))[0] : undefined);
  let best: Draft | null = null;
  let wide: ReadonlySet<number> = new Set();
  let all = 0;
  const looks = [
    { next: () => first, insists: false },
    { next: () => first, insists: false },
    { next: () => second, insists: false },
    { next: () => first, insists: true },
    { next: loose, insists: false },
  ];
  for (const { next, insists } of looks.slice(0, most)) {
    const theme: Theme | undefined = best?.trouble === 0 ? undefined : next();
    if (!theme) continue;
    const effort = best === null ? 1 : SECOND_LOOK;
    const nodes = best === null ? MOST_LOOKED : MOST_LOOKED_AGAIN - all;
    const { draft, looked } = bestOf(desk, seed, { theme, effort, wide, insists, most: nodes });
    all += looked;
    if (draft && (best === null || isBetter(draft, best, Boolean(first?.tune) && !theme.tune))) best = draft;
    wide = withNeighbours(model, best?.faults ?? []);
  }
  const bars = model.bars.map((bar) => request.kept[bar.index] ?? []);
  return best ?? { bars, cost: 0, trouble: 0, faults: new Set() };
}

/** Whether a draft is to be taken instead of another; the last resort only where it leaves less open. */
const isBetter = (draft: Draft, other: Draft, lastResort: boolean): boolean =>
  draft.cost < other.cost && (!lastResort || draft.trouble < other.trouble);

/** Bars, and those that sound just before and after them. */
export const withNeighbours = (model: LineModel, bars: Iterable<number>): ReadonlySet<number> =>
  new Set(
    [...bars].flatMap((bar) => [bar, ...(model.bars[bar]?.before ?? []), ...(model.bars[bar]?.after ?? [])]),
  );
