import { rememberedFor } from '../../base';
import { type MetrePhrases, type PhraseBook, phraseBookOf, type Theme } from '../../feel';
import { createHandGauge, ticksPerSecond } from '../../fretboard';
import { type HeardLine, hearLine, silenceOf } from '../hearing';
import type { LineModel } from '../model';
import { carryingThemes } from '../phrase/carrying';
import { featureCost, handCost } from '../phrase/judge';
import { layoutOf } from '../phrase/layout';
import { phrasesIn } from '../phrase/manner';
import { type Ask, type PlanWishes, planOf } from '../phrase/plan';
import { type Found, type PlanSearch, searchOver } from '../phrase/search';
import { looseThemesFor, themesFor } from '../phrase/themes';
import { openWorkshop, type Workshop } from '../phrase/workshop';
import { modelOf } from '../read-request';
import { findBreaches } from '../rules/check';
import { hear, type Tone, writeNotes } from '../tones';
import type { ComposeRequest, LineNotes, Technique } from '../types';
import { aimMisses, isWithinLevel, techniquesOf, unfulfilled, type Wish, wishesOf } from './aim-misses';

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
const OWN_COST = 0.35;

/** What a broken rule, a missed aim and a technique that is ticked and not shown add (hand-set). */
const BROKEN = 30;
const MISSED = 200;
const UNSHOWN = 80;

/** A line with what it costs. */
export interface Draft {
  readonly bars: LineNotes;
  readonly cost: number;
  /** How much of that is rules, aims and techniques that stay open. */
  readonly trouble: number;
  /** Bars in which a rule is broken or an aim missed. */
  readonly faults: ReadonlySet<number>;
}

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
interface Sketch extends Found {
  readonly whole: number;
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
  const gauge = createHandGauge(request.instrument, request.hand, speed, request.feel.bassTouch.muted);
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
  const scale = 8 / Math.max(8, desk.workshop.segments.length);
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
    const whole = desk.featuresCost(found.heard) + found.cost * scale * OWN_COST;
    sketches.push({ ...found, whole });
  }
  return { draft: pickBest(desk, sketches), looked: search.looked() };
}

const seedOf = (seed: number, index: number, salt: number): number =>
  (seed * 7919 + index * 104729 + salt) >>> 0;

/** Looks at the cheapest lines closely, until none that is left can be better. */
function pickBest(desk: Desk, sketches: readonly Sketch[]): Draft | null {
  let best: Draft | null = null;
  const seen = new Set<HeardLine>();
  for (const sketch of sketches.toSorted((one, other) => one.whole - other.whole)) {
    if (best !== null && sketch.whole >= best.cost) break;
    // The same line from a dearer plan.
    if (seen.has(sketch.heard)) continue;
    seen.add(sketch.heard);
    const draft = desk.inspect(sketch, best?.cost ?? Number.POSITIVE_INFINITY);
    if (draft && (best === null || draft.cost < best.cost)) best = draft;
  }
  return best;
}

/**
 * The best line of the feel's book: over many plans of the form, of the cheapest way through each, the line that
 * reads best. Where something stays amiss, its bars are offered other forms of the phrases, then other themes are tried.
 */
export function draftOf(desk: Desk, seed: number): Draft {
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
  for (const { next, insists } of looks) {
    const theme: Theme | undefined = best?.trouble === 0 ? undefined : next();
    if (!theme) continue;
    const effort = best === null ? 1 : SECOND_LOOK;
    const most = best === null ? MOST_LOOKED : MOST_LOOKED_AGAIN - all;
    const { draft, looked } = bestOf(desk, seed, { theme, effort, wide, insists, most });
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
const withNeighbours = (model: LineModel, bars: Iterable<number>): ReadonlySet<number> =>
  new Set(
    [...bars].flatMap((bar) => [bar, ...(model.bars[bar]?.before ?? []), ...(model.bars[bar]?.after ?? [])]),
  );
