import { createRandom, type Random } from '../../base';
import type { BarSlot, Contour, PhraseModel, Theme } from '../../feel';
import type { LineModel } from '../model';
import { TECHNIQUE_TABLE } from '../techniques/table';
import type { PhrasePlace } from '../techniques/types';
import type { Technique } from '../types';
import { homecomings } from './changes';
import { isLeadIn, type Phrase, phrasesOfForm } from './form-phrases';
import type { Kinship } from './motif';
import { RIFF_TOP } from './nodes';
import { bitOf, type Techniques } from './shown';
import { type Figure, type FigureTask, type TunePlace, taskOf } from './tune';

/** What the plan does with the motif in a bar. */
export type Operation = 'state' | 'answer' | 'vary' | 'lift' | 'breathe' | 'turn';

/** Which models a bar may take part in: those of a length, at a place of them; null for bars that stand alone. */
export interface ModelPlace {
  readonly slots: string;
  readonly place: number;
}

export interface BarPlan {
  readonly slot: BarSlot;
  readonly operation: Operation;
  /** 0 in the first half of the form, 1 in the second. */
  readonly half: number;
  readonly models: ModelPlace | null;
  /** The pitch around which the bar should lie. */
  readonly height: number;
  /** The bar of the one high point. */
  readonly crest: boolean;
  /** Techniques that are hoped for here, so that the line shows what it is asked to. */
  readonly asks: Techniques;
  /** Whether beat one is left empty here; null where the feel does not plan it. */
  readonly empty: boolean | null;
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

/** A phrase begins with the two bars of the tune, in the same slots wherever it comes back. */
const WALK_ROWS: readonly (readonly BarSlot[])[] = [
  ['S', 'A', 'S', 'C'],
  ['S', 'A', 'A', 'C'],
  ['S', 'A', 'S', 'A'],
];
const RIFF_ROWS: readonly (readonly BarSlot[])[] = [
  ['S', 'A', 'S', 'C'],
  ['S', 'A', 'S', 'A'],
  ['S', 'A', 'A', 'C'],
];
/** Where answers leave beat one empty, the form goes by pairs: a call on the one, an answer without it. */
const PAIRED_ROWS: readonly (readonly BarSlot[])[] = [
  ['S', 'A', 'S', 'C'],
  ['S', 'A', 'S', 'A'],
];
const SHORT_ROWS: readonly (readonly BarSlot[])[] = [[], ['C'], ['S', 'C'], ['S', 'A', 'C']];

/** Bars of a phrase of four that leave beat one empty, the same in each phrase (common practice, no source). */
const EMPTY_ONES: readonly (readonly number[])[] = [[1, 3], [1, 3], [1], [3]];

const pick = <Item>(random: Random, items: readonly Item[], otherwise: Item): Item =>
  items[random.below(items.length)] ?? otherwise;

/** The phrase that holds the high point: about two thirds through; in twelve bars the third line or the second. */
function crestPhrase(count: number, random: Random): number {
  if (count <= 2) return count - 1;
  const places = [Math.floor((count - 1) * 0.55), Math.floor((count - 1) * 0.75), count - 1];
  return pick(random, places, count - 1);
}

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

/** The slots of one phrase and the models it may be made of. */
function phraseRow(
  phrase: Phrase,
  manner: 'walk' | 'riff',
  theme: Theme,
  row: readonly BarSlot[],
  crest: number | null,
  last: boolean,
  level: number,
  comesBack: boolean,
  random: Random,
): readonly { slot: BarSlot; models: ModelPlace | null }[] {
  const chance = random.next();
  const fours = theme.models.filter((model) => model.bars.length === 4);
  // Where the tune comes back, what is changed in it is the plan's to choose.
  if (phrase.length === 4 && !comesBack && fours.length > 0 && chance < (level <= 2 ? 0.6 : 0.35)) {
    const wanted = fours.filter(
      ({ bars }) =>
        (crest === null) !== bars.some(({ slot }) => slot === 'L') && last === (bars[3]?.slot === 'T'),
    );
    const model = pick(random, wanted, fours[0]);
    if (model && wanted.length > 0) {
      const slots = model.bars.map((bar) => bar.slot).join('+');
      return model.bars.map((bar, place) => ({ slot: bar.slot as BarSlot, models: { slots, place } }));
    }
  }
  const slots: BarSlot[] = [...(phrase.length === 4 ? row : (SHORT_ROWS[phrase.length] ?? row))];
  if (crest !== null && crest < slots.length) slots[crest] = 'L';
  if (last) slots[slots.length - 1] = 'T';
  const pairs = new Set(
    theme.models
      .filter((model) => model.bars.length === 2)
      .map((model) => model.bars.map((bar) => bar.slot).join('+')),
  );
  const inPairs = chance < (manner === 'riff' ? 0.9 : 0.55);
  const found: { slot: BarSlot; models: ModelPlace | null }[] = [];
  for (let place = 0; place < slots.length; place += 1) {
    const slot = slots[place] ?? 'S';
    const pair = `${slot}+${slots[place + 1]}`;
    if (inPairs && pairs.has(pair) && place + 1 < slots.length) {
      found.push({ slot, models: { slots: pair, place: 0 } });
      found.push({ slot: slots[place + 1] ?? 'A', models: { slots: pair, place: 1 } });
      place += 1;
    } else found.push({ slot, models: null });
  }
  return found;
}

/** A technique that some bar of several has to show. */
export interface Ask {
  readonly technique: Technique;
  readonly bars: readonly number[];
}

export interface PlanWishes {
  readonly manner: 'walk' | 'riff';
  readonly theme: Theme;
  /** Figures that the tune is chosen from, the cheapest first. */
  readonly figures: readonly Figure[];
  readonly low: number;
  readonly high: number;
  readonly level: number;
  /** What the line should show, and in which of its bars. */
  readonly asks: readonly Ask[];
  /** Whether the feel may leave beat one empty on a new chord. */
  readonly restsOnOne: boolean;
}

/** What each bar of the form does, before it is settled where it lies and what is liked. */
export type Layout = readonly {
  readonly slot: BarSlot;
  readonly models: ModelPlace | null;
  readonly half: number;
  readonly crest: boolean;
  readonly place: number;
  /** It comes home to the tonic: its root is waited for on the one. */
  readonly home: boolean;
  /** Where it stands in the tune; null in pickups and phrases of other lengths than four. */
  readonly tune: TunePlace | null;
}[];

/** Whether it is planned which bars leave beat one empty: where the feel may and the theme's answers do. */
const plansEmptyOnes = ({ restsOnOne, theme }: PlanWishes): boolean =>
  restsOnOne && (theme.contours.A ?? []).some(({ beats }) => (beats[0]?.start ?? 0) > 0);

/** Whether a bar has one chord, the same as another bar. */
function soundsLike({ bars }: LineModel, bar: number, other: number): boolean {
  const [one, two] = [bars[bar]?.stretches ?? [], bars[other]?.stretches ?? []];
  return one.length === 1 && two.length === 1 && one[0]?.label === two[0]?.label;
}

/**
 * Where the bars of a phrase of four stand in the tune. The first phrase of the form states and answers it, the others
 * bring it back; a phrase closes the tune that ends its section or every eighth bar.
 */
function tuneOf(model: LineModel, phrase: Phrase, opening: number, place: number): TunePlace | null {
  if (phrase.length !== 4) return null;
  const of = place % 2 === 0 ? 0 : 1;
  const again = soundsLike(model, phrase.start + place, opening + of);
  if (place < 2) return { part: phrase.start === opening ? 'statement' : 'return', of, again };
  const closes = phrase.at % 2 === 1 || phrase.at === phrase.of - 1;
  return { part: closes && phrase.of > 1 ? 'close' : 'answer', of, again };
}

/** Lays the form out in phrases. The same seed gives the same layout. */
export function layoutOf(model: LineModel, wishes: PlanWishes, seed: number): Layout {
  const { manner, theme, level } = wishes;
  const paired = plansEmptyOnes(wishes);
  const random = createRandom(seed);
  const rows = manner === 'walk' ? WALK_ROWS : paired ? PAIRED_ROWS : RIFF_ROWS;
  const phrases = phrasesOfForm(model);
  const base = pick(random, rows, ['S', 'A', 'S', 'C']);
  const other = pick(random, rows, base);
  const crestAt = crestPhrase(phrases.length, random);
  const crestBar = phrases.length > 1 ? pick(random, paired ? [0, 2, 2] : [0, 1, 2, 2], 1) : 2;
  const homes = homecomings(model);
  const slots: Layout[number][] = [];
  phrases.forEach((phrase, index) => {
    const crested = index === crestAt;
    const crest = crested && phrase.length > 2 ? Math.min(crestBar, phrase.length - 2) : null;
    const last = index === phrases.length - 1;
    const back = index > 0 && phrase.length === 4;
    const row = phraseRow(phrase, manner, theme, crested ? other : base, crest, last, level, back, random);
    row.forEach((bar, place) => {
      slots[phrase.start + place] = {
        ...bar,
        half: phrases.length > 1 && index >= Math.ceil(phrases.length / 2) ? 1 : 0,
        crest: bar.slot === 'L' && crested,
        place,
        home: homes[phrase.start + place] === true,
        tune: tuneOf(model, phrase, phrases[0]?.start ?? 0, place),
      };
    });
  });
  for (const { start, length } of model.request.chart.sections)
    if (isLeadIn(model, start, length))
      slots[start] = { slot: 'T', models: null, half: 0, crest: false, place: 0, home: false, tune: null };
  return slots;
}

/** The slots in which a technique is best shown, the best first. */
const PLACES: Readonly<Record<PhrasePlace, readonly (readonly BarSlot[])[]>> = {
  anywhere: [],
  answer: [['A', 'C']],
  breath: [['C'], ['A', 'T']],
  turn: [['T', 'C']],
};

/** Bars in which a technique is best shown; no section opens with one that is asked for. */
function bestPlaces({ technique, bars }: Ask, layout: Layout): readonly number[] {
  const fitting = PLACES[TECHNIQUE_TABLE[technique].place].map((slots) =>
    bars.filter((bar) => slots.includes(layout[bar]?.slot ?? 'S')),
  );
  return fitting.find((found) => found.length > 0) ?? bars.filter((bar) => layout[bar]?.place !== 0);
}

/** Share of the plans that place what is asked for where it is best shown; the others try any bar. */
const BEST_PLACED = 0.8;

/** Bars among which a plan chooses a place. */
const MOST_PLACES = 3;

/** By bar, the techniques that the plan places there. */
function placed(asks: readonly Ask[], layout: Layout, random: Random): ReadonlyMap<number, Techniques> {
  const found = new Map<number, Techniques>();
  for (const ask of asks) {
    const best = random.next() < BEST_PLACED ? bestPlaces(ask, layout) : [];
    const from = best.length > 0 ? best : ask.bars;
    const bar = pick(random, from.length > MOST_PLACES ? from.slice(-MOST_PLACES) : from, ask.bars[0] ?? -1);
    found.set(bar, (found.get(bar) ?? 0) | bitOf(ask.technique));
  }
  return found;
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
  const empty = plansEmptyOnes(wishes) ? pick(random, EMPTY_ONES, EMPTY_ONES[0] ?? []) : null;
  const { figures } = wishes;
  // The cheapest figures are tried most.
  const figure = figures[Math.floor(figures.length * random.next() ** 2)] ?? null;
  const bars = layout.map((bar, index): BarPlan => {
    const near = Math.max(0, 1 - Math.abs(index - crest) / 2.4);
    const wave = 1.2 * Math.sin((Math.PI / 2) * bar.place);
    return {
      slot: bar.slot,
      operation: operationOf(bar.slot, bar.half),
      half: bar.half,
      models: bar.models,
      height: ground + wave + (peak - ground) * near,
      crest: index === crest,
      asks: asks.get(index) ?? 0,
      empty: bar.home ? false : empty && index < count - 1 ? empty.includes(bar.place) : null,
      figure: index < count - 1 ? taskOf(figure, bar.tune, index === crest) : null,
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
