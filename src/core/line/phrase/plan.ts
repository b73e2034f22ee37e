import { createRandom, type Random, remembered } from '../../base';
import type { BarSlot, Contour, PhraseModel, TuneBar } from '../../feel';
import { TECHNIQUE_TABLE } from '../techniques/table';
import type { PhrasePlace } from '../techniques/types';
import type { Technique } from '../types';
import { type Figure, type FigureTask, taskOf } from './figure';
import { type Layout, type LayoutWishes, type ModelPlace, pick, plansEmptyOnes } from './layout';
import type { Kinship } from './motif';
import { bitOf, INSISTED, type Techniques } from './shown';
import { RIFF_TOP } from './stances';

/** What the plan does with the motif in a bar. */
export type Operation = 'state' | 'answer' | 'vary' | 'lift' | 'breathe' | 'turn';

export interface BarPlan {
  readonly slot: BarSlot;
  readonly operation: Operation;
  /** 0 in the first half of the form, 1 in the second. */
  readonly half: number;
  readonly models: ModelPlace | null;
  /** Which bar of the theme's tune it plays; null where there is none. */
  readonly tuneBar: number | null;
  /** The pitch around which the bar should lie. */
  readonly height: number;
  /** The bar of the one high point. */
  readonly crest: boolean;
  /** Techniques that are hoped for here, so that the line shows what it is asked to. */
  readonly asks: Techniques;
  /** Whether beat one is left empty here; null where the feel does not plan it. */
  readonly empty: boolean | null;
  /** The way of playing a bar of a tune that the plan likes: bars that are written alike like the same one. */
  readonly way: Contour | null;
  /** What it makes of the figure that the tune states. */
  readonly figure: FigureTask | null;
}

/** A plan of the whole form: what each bar does, where it lies, and which contours are liked. */
export interface Plan {
  readonly seed: number;
  readonly bars: readonly BarPlan[];
  readonly motif: Contour | null;
  readonly motifModel: PhraseModel | null;
  /** The pitch that only the crest reaches. */
  readonly summit: number;
}

/** Bars of a phrase of four that leave beat one empty, the same in each phrase (common practice, no source). */
const EMPTY_ONES: readonly (readonly number[])[] = [[1, 3], [1, 3], [1], [3]];

const operationOf = (slot: BarSlot, half: number): Operation => {
  switch (slot) {
    case 'S':
      return half === 0 ? 'state' : 'vary';
    case 'A':
      return 'answer';
    case 'L':
      return 'lift';
    case 'C':
    case 'E':
      return 'breathe';
    case 'T':
      return 'turn';
  }
};

/** A technique that some bar of several has to show. */
export interface Ask {
  readonly technique: Technique;
  readonly bars: readonly number[];
}

export interface PlanWishes extends LayoutWishes {
  /** Figures that the tune is chosen from, the cheapest first. */
  readonly figures: readonly Figure[];
  readonly low: number;
  readonly high: number;
  /** What the line should show, and in which of its bars. */
  readonly asks: readonly Ask[];
  /** Whether that is insisted upon. */
  readonly insists: boolean;
}

/** The slots in which a technique is best shown, the best first. */
const PLACES: Readonly<Record<PhrasePlace, readonly (readonly BarSlot[])[]>> = {
  anywhere: [],
  answer: [['A', 'C']],
  breath: [['C'], ['A', 'T']],
  turn: [['T', 'C']],
};

/** The first bars of a tune that a change would make unknown. */
const STATEMENT = 3;

/** Of bars of a tune those that come after it was stated, where there are any. */
function afterStatement(bars: readonly number[], layout: Layout): readonly number[] {
  const later = bars.filter((bar) => (layout[bar]?.tuneBar ?? STATEMENT) >= STATEMENT);
  return later.length > 0 ? later : bars;
}

/** Bars in which a technique is best shown; no section opens with one that is asked for. */
function bestPlaces({ technique, bars }: Ask, layout: Layout): readonly number[] {
  const fitting = PLACES[TECHNIQUE_TABLE[technique].place].map((slots) =>
    afterStatement(
      bars.filter((bar) => slots.includes(layout[bar]?.slot ?? 'S')),
      layout,
    ),
  );
  return fitting.find((found) => found.length > 0) ?? bars.filter((bar) => layout[bar]?.place !== 0);
}

/** Place of the answer in the halves of a tune. */
const ANSWER = 1;
const HALF_OF_A_TUNE = 4;

/** A beat one that is empty once sounds like a slip: in a tune the answers of both halves leave it empty. */
const inAnswers = ({ technique, bars }: Ask, layout: Layout): readonly number[] =>
  technique === 'beat one silent'
    ? bars.filter((bar) => {
        const place = layout[bar]?.tuneBar ?? null;
        return place !== null && place % HALF_OF_A_TUNE === ANSWER;
      })
    : [];

/** The last bar of a tune leads home and is changed for nothing else, where there are others. */
function beforeTheEnd(bars: readonly number[], layout: Layout): readonly number[] {
  const others = bars.filter((bar) => layout[bar]?.tuneBar === null || bar < layout.length - 1);
  return others.length > 0 ? others : bars;
}

/** Share of the plans that place what is asked for where it is best shown; the others try any bar. */
const BEST_PLACED = 0.8;

/** Bars among which a plan chooses a place. */
const MOST_PLACES = 3;

/** By bar, the techniques that the plan places there: each in a bar of its own where there are enough, as one may exclude another. */
function placed(asks: readonly Ask[], layout: Layout, random: Random): ReadonlyMap<number, Techniques> {
  const found = new Map<number, Techniques>();
  for (const ask of asks) {
    const chance = random.next();
    const answers = inAnswers(ask, layout);
    const best = chance < BEST_PLACED ? bestPlaces(ask, layout) : [];
    const others = beforeTheEnd(afterStatement(ask.bars, layout), layout);
    const places = [best, others].filter((bars) => bars.length > 0);
    const free = places.map((bars) => bars.filter((bar) => !found.has(bar)));
    const from = free.find((bars) => bars.length > 0) ?? places[0] ?? [];
    const one = pick(random, from.length > MOST_PLACES ? from.slice(-MOST_PLACES) : from, ask.bars[0] ?? -1);
    for (const bar of answers.length > 0 ? answers : [one])
      found.set(bar, (found.get(bar) ?? 0) | bitOf(ask.technique));
  }
  return found;
}

/** By bar of a tune, the way that is liked; those that come first more often. */
function likedWays(tune: readonly TuneBar[], random: Random): readonly (Contour | null)[] {
  const byRow = new Map<string, Contour | null>();
  return tune.map(({ contours }) =>
    remembered(
      byRow,
      contours.map(({ id }) => id).join(),
      () => contours[Math.floor(contours.length * random.next() ** 1.5)] ?? null,
    ),
  );
}

/** Lays out one plan. The same seed gives the same plan. */
export function planOf(wishes: PlanWishes, layout: Layout, seed: number): Plan {
  const random = createRandom(seed);
  const { theme, low } = wishes;
  const high = wishes.manner === 'riff' ? Math.min(wishes.high, RIFF_TOP) : wishes.high;
  const count = layout.length;
  const found = layout.findIndex((bar) => bar?.crest);
  const crest = found >= 0 ? found : Math.floor(count * 0.6);
  const ground = low + 3.5 + random.next() * 2.5;
  const peak = Math.min(high - 3, low + 10 + random.next() * 3);
  const asks = placed(wishes.asks, layout, random);
  const stress = wishes.insists ? INSISTED : 0;
  const empty =
    plansEmptyOnes(wishes) && theme.tune === null ? pick(random, EMPTY_ONES, EMPTY_ONES[0] ?? []) : null;
  const { figures } = wishes;
  // The cheapest figures are tried most.
  const figure = figures[Math.floor(figures.length * random.next() ** 2)] ?? null;
  const ways = theme.tune ? likedWays(theme.tune, random) : [];
  const bars = layout.map((bar, index): BarPlan => {
    const near = Math.max(0, 1 - Math.abs(index - crest) / 2.4);
    const wave = 1.2 * Math.sin((Math.PI / 2) * bar.place);
    return {
      slot: bar.slot,
      operation: operationOf(bar.slot, bar.half),
      half: bar.half,
      models: bar.models,
      tuneBar: bar.tuneBar,
      way: bar.tuneBar === null ? null : (ways[bar.tuneBar] ?? null),
      height: ground + wave + (peak - ground) * near,
      crest: index === crest,
      asks: asks.has(index) ? (asks.get(index) ?? 0) | stress : 0,
      empty: bar.home ? false : empty && index < count - 1 ? empty.includes(bar.place) : null,
      figure: index < count - 1 ? taskOf(figure, bar.figure, index === crest) : null,
    };
  });
  const models = theme.models.filter((one) => one.bars.length === 2 || one.bars.length === 4);
  return {
    seed,
    bars,
    motif: figure?.first ?? null,
    motifModel: figure?.model ?? (models.length > 0 ? pick(random, models, models[0] ?? null) : null),
    summit: Math.min(high, low + 13 + random.below(5)),
  };
}

/** What the plan pays for a contour's kinship with the motif, by operation (hand-set). */
export const KINSHIP_WORTH: Readonly<Record<Operation, Readonly<Partial<Record<Kinship, number>>>>> = {
  state: { same: 1.9, 'varied tail': 1.2 },
  answer: { inverted: 0.9, 'varied tail': 0.5, fragment: 0.2 },
  vary: { 'varied tail': 1.6, same: 1, lifted: 1, inverted: 0.4 },
  lift: { lifted: 1, 'varied tail': 0.6, same: 0.4 },
  breathe: { fragment: 0.9, 'varied tail': 0.6, inverted: 0.3 },
  turn: { fragment: 0.5, 'varied tail': 0.4, inverted: 0.2 },
};
