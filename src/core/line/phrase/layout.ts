import { createRandom, type Random } from '../../base';
import type { BarSlot, Theme, TuneBar } from '../../feel';
import type { LineModel } from '../model';
import { homecomings } from './changes';
import type { FigurePlace } from './figure';
import { isLeadIn, type Phrase, phrasesOfForm } from './form-phrases';

/** Which models a bar may take part in: those of a length, at a place of them; null for bars that stand alone. */
export interface ModelPlace {
  readonly slots: string;
  readonly place: number;
}

export interface LayoutWishes {
  readonly manner: 'walk' | 'riff';
  readonly theme: Theme;
  readonly level: number;
  /** Whether the feel may leave beat one empty on a new chord. */
  readonly restsOnOne: boolean;
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

export const pick = <Item>(random: Random, items: readonly Item[], otherwise: Item): Item =>
  items[random.below(items.length)] ?? otherwise;

/** The phrase that holds the high point: about two thirds through; in twelve bars the third line or the second. */
function crestPhrase(count: number, random: Random): number {
  if (count <= 2) return count - 1;
  const places = [Math.floor((count - 1) * 0.55), Math.floor((count - 1) * 0.75), count - 1];
  return pick(random, places, count - 1);
}

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

/** What each bar of the form does, before it is settled where it lies and what is liked. */
export type Layout = readonly {
  readonly slot: BarSlot;
  readonly models: ModelPlace | null;
  readonly tuneBar: number | null;
  readonly half: number;
  readonly crest: boolean;
  readonly place: number;
  /** It comes home to the tonic: its root is waited for on the one. */
  readonly home: boolean;
  /** Where it stands in the form of the figure; null in pickups and phrases of other lengths than four. */
  readonly figure: FigurePlace | null;
}[];

/** Whether it is planned which bars leave beat one empty: where the feel may and the theme's answers do. */
export const plansEmptyOnes = ({ restsOnOne, theme }: LayoutWishes): boolean =>
  restsOnOne && (theme.contours.A ?? []).some(({ beats }) => (beats[0]?.start ?? 0) > 0);

/** Whether a bar has one chord, the same as another bar. */
function soundsLike({ bars }: LineModel, bar: number, other: number): boolean {
  const [one, two] = [bars[bar]?.stretches ?? [], bars[other]?.stretches ?? []];
  return one.length === 1 && two.length === 1 && one[0]?.label === two[0]?.label;
}

/**
 * Where the bars of a phrase of four stand in the form of the figure. The first phrase of the form states and answers it, the others
 * bring it back; a phrase closes it that ends its section or every eighth bar.
 */
function figurePlaceOf(model: LineModel, phrase: Phrase, opening: number, place: number): FigurePlace | null {
  if (phrase.length !== 4) return null;
  const of = place % 2 === 0 ? 0 : 1;
  const again = soundsLike(model, phrase.start + place, opening + of);
  if (place < 2) return { part: phrase.start === opening ? 'statement' : 'return', of, again };
  const closes = phrase.at % 2 === 1 || phrase.at === phrase.of - 1;
  return { part: closes && phrase.of > 1 ? 'close' : 'answer', of, again };
}

/** Bars of a tune that a phrase of one to four bars plays: as it begins, comes back, or goes home. */
const TUNE_ROWS = {
  first: [[3], [0, 3], [0, 1, 3], [0, 1, 2, 3]],
  again: [[3], [4, 3], [4, 5, 3], [4, 5, 6, 3]],
  last: [[7], [4, 7], [4, 6, 7], [4, 5, 6, 7]],
  only: [[7], [0, 7], [0, 1, 7], [0, 1, 2, 7]],
} as const;

/** Which bars of a tune each phrase plays. */
const tuneRows = (phrases: readonly Phrase[]): readonly (readonly number[])[] =>
  phrases.map(({ length, at, of }, index) => {
    const last = index === phrases.length - 1 || (of > 1 && at === of - 1);
    const again = of > 1 ? at % 2 === 1 : index % 2 === 1;
    const row = last ? (index === 0 ? 'only' : 'last') : again ? 'again' : 'first';
    return TUNE_ROWS[row][length - 1] ?? [];
  });

/** Where the one high point of a form lies, as a share of its bars (common practice, no source). */
const CREST = 0.7;

/** The form of a tune: its own bars, phrase by phrase. */
function tuneLayoutOf(model: LineModel, tune: readonly TuneBar[]): Layout {
  const phrases = phrasesOfForm(model);
  const rows = tuneRows(phrases);
  const numbers = phrases.flatMap((phrase, index) =>
    (rows[index] ?? []).map((bar, place) => ({ index, place, bar, at: phrase.start + place })),
  );
  const crest = crestOf(numbers);
  const homes = homecomings(model);
  const slots: Layout[number][] = [];
  for (const { index, place, bar, at } of numbers)
    slots[at] = {
      slot: tune[bar]?.slot ?? 'S',
      models: null,
      tuneBar: bar,
      half: phrases.length > 1 && index >= Math.ceil(phrases.length / 2) ? 1 : 0,
      crest: at === crest,
      place,
      home: homes[at] === true,
      figure: null,
    };
  return withLeadIns(model, slots);

  /** The lift nearest to two thirds of the form, as the one high point; −1 where nothing lifts. */
  function crestOf(bars: readonly { readonly bar: number; readonly at: number }[]): number {
    const lifts = bars.filter(({ bar }) => tune[bar]?.slot === 'L').map(({ at }) => at);
    const wanted = model.bars.length * CREST;
    return lifts.toSorted((one, other) => Math.abs(one - wanted) - Math.abs(other - wanted))[0] ?? -1;
  }
}

/** A pickup is no bar of a phrase: it turns into the first. */
function withLeadIns(model: LineModel, slots: Layout[number][]): Layout {
  for (const { start, length } of model.request.chart.sections)
    if (isLeadIn(model, start, length))
      slots[start] = {
        slot: 'T',
        models: null,
        tuneBar: null,
        half: 0,
        crest: false,
        place: 0,
        home: false,
        figure: null,
      };
  return slots;
}

/** Lays the form out in phrases. The same seed gives the same layout. */
export function layoutOf(model: LineModel, wishes: LayoutWishes, seed: number): Layout {
  const { manner, theme, level } = wishes;
  if (theme.tune) return tuneLayoutOf(model, theme.tune);
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
        tuneBar: null,
        half: phrases.length > 1 && index >= Math.ceil(phrases.length / 2) ? 1 : 0,
        crest: bar.slot === 'L' && crested,
        place,
        home: homes[phrase.start + place] === true,
        figure: figurePlaceOf(model, phrase, phrases[0]?.start ?? 0, place),
      };
    });
  });
  return withLeadIns(model, slots);
}
