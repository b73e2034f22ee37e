import { remembered, rememberedFor } from '../../base';
import { type BarSlot, type MetrePhrases, phraseBookOf, type Theme } from '../../feel';
import type { HeardLine } from '../hearing';
import type { BarModel, LineModel } from '../model';
import { type Alternative, waysThrough } from './bar-ways';
import type { Place } from './draws';
import { manyOrders } from './drills';
import { finisherFor } from './finish';
import { nodeRulesFor, phrasesIn } from './manner';
import { type PoolMaker, poolMaker } from './pools';
import { type Segment, segmentsIn } from './segments';
import { bitOf } from './shown';
import { looseThemesFor } from './themes';

/** What the bars of a chart have in common, however often one of them is asked about. */
export interface Alternatives {
  /** Ways to play a bar, the cheapest first, each once. */
  inBar(heard: HeardLine, bar: BarModel): readonly Alternative[];
}

/** What a bar may do in its phrase, wherever it stands. */
const SLOTS: readonly BarSlot[] = ['S', 'A', 'L', 'C', 'T'];

/** Choices that one theme has for a bar: as good as all. */
const MOST_NODES = 300;

/** The kinds that are looked for by themselves, since the book's own bars seldom hold them. */
const SOUGHT = ['scale steps', 'beat one silent', 'octave', 'approach note', 'anticipation'] as const;

/** What the choices of one metre's book share. */
interface Shelf {
  readonly themes: readonly Theme[];
  readonly pools: PoolMaker;
  /** The segments of a bar that is looked at, and the segment of one that is given beside it. */
  partsOf(bar: BarModel): readonly Segment[];
  givenOf(bar: BarModel): readonly Segment[];
}

/** The other ways to play the bars of a chart, from the phrases and at the prices of the composer. */
export function alternativesFor(model: LineModel): Alternatives {
  const book = phraseBookOf(model.request.feel.id);
  const rules = nodeRulesFor(model, book);
  const shelves = new Map<MetrePhrases, Shelf>();
  const finisher = finisherFor(model, {
    longChromatics: rules.longChromatics,
    walk: book.manner === 'walk',
  });

  function shelfFor(bar: BarModel): Shelf {
    const phrases = phrasesIn(book, bar.metre);
    return remembered(shelves, phrases, () => {
      const { metre } = phrases;
      return {
        themes: [...looseThemesFor(phrases, model, 0), manyOrders(phrases)],
        pools: poolMaker(model, rules, phrases, MOST_NODES),
        partsOf: rememberedFor((one) => segmentsIn(model, metre, one, false, model.bars.length)),
        givenOf: rememberedFor((one) => segmentsIn(model, metre, one, true, one.index)),
      };
    });
  }

  /** Every place in the book that has choices for a part of a bar. */
  function placesIn({ themes }: Shelf, { bar, whole }: Segment): readonly Place[] {
    const place = { models: null, tuneBar: null, asks: 0, wide: false, lends: false };
    const [first] = themes;
    const slots = whole ? SLOTS : SLOTS.slice(0, 1);
    const plain = themes.flatMap((theme) => slots.map((slot): Place => ({ ...place, theme, slot })));
    if (!first) return plain;
    const special = SOUGHT.filter((one) => bar.demands.techniques.has(one)).map(
      (one): Place => ({ ...place, theme: first, slot: 'A', asks: bitOf(one) }),
    );
    const wide: readonly Place[] = whole ? [] : [{ ...place, theme: first, slot: 'S', wide: true }];
    return [...plain, ...special, ...wide];
  }

  return {
    inBar(heard, bar) {
      const shelf = shelfFor(bar);
      const parts = shelf.partsOf(bar);
      const choices = parts.map((segment) =>
        shelf.pools.choicesAmong(segment, () => placesIn(shelf, segment)),
      );
      const { manner } = book;
      const { pools, givenOf } = shelf;
      return waysThrough({ model, finisher, manner, heard, pools, givenOf, parts, choices });
    },
  };
}
