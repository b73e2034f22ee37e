import { describe, expect, test } from 'vitest';
import { type FeelId, phraseBookOf } from '../../src/core/feel';
import { TECHNIQUES } from '../../src/core/line';
import { openDesk } from '../../src/core/line/compose/desk';
import { draftOf } from '../../src/core/line/compose/draft';
import type { EdgePrices } from '../../src/core/line/phrase/edges';
import { layoutOf } from '../../src/core/line/phrase/layout';
import { planOf } from '../../src/core/line/phrase/plan';
import { searchOver } from '../../src/core/line/phrase/search';
import { themesFor } from '../../src/core/line/phrase/themes';
import { openWorkshop } from '../../src/core/line/phrase/workshop';
import { modelOf } from '../../src/core/line/read-request';
import { request, type Wish } from './notation';

const PLANS = 12;

/** How many prices are looked up for a plan of a chart, and how many tables of prices are made for all plans. */
function workFor(chart: string, feel: FeelId): { readonly looks: number; readonly tables: number } {
  const model = modelOf(request(chart, { level: 5, feel }));
  const book = phraseBookOf(feel);
  const [metre] = book.metres;
  const [theme] = themesFor(metre, model, 1);
  if (!theme) throw new Error('a book has themes');
  const workshop = openWorkshop(
    model,
    book,
    metre,
    model.bars.map(() => null),
  );
  const seen = new Map<EdgePrices, EdgePrices>();
  let looks = 0;
  const edges: typeof workshop.edges = {
    ...workshop.edges,
    between(way) {
      const prices = workshop.edges.between(way);
      const known = seen.get(prices) ?? {
        ...prices,
        at(node, entry, limit) {
          looks += 1;
          return prices.at(node, entry, limit);
        },
      };
      seen.set(prices, known);
      return known;
    },
  };
  const search = searchOver(model, { ...workshop, edges }, theme, new Set());
  const wishes = {
    manner: book.manner,
    theme,
    figures: search.figures,
    low: 28,
    high: 48,
    level: 5,
    asks: [],
    insists: false,
    restsOnOne: model.request.feel.bassRole.mayRestOnOne,
  };
  for (let seed = 0; seed < PLANS; seed += 1) search.best(planOf(wishes, layoutOf(model, wishes, 3), seed));
  return { looks: Math.round(looks / PLANS), tables: seen.size };
}

const JUMPS = '|: A7 F♯7 | B7 F♯m7♭5 |1. Em :|2. Bm/G ||\nChorus:\n| (3/4) Em | Am | B7 | Em |';
const ROUND = `| ${Array.from({ length: 8 }, () => 'F | C7 | Dm | B♭').join(' | ')} |`;

/**
 * The work of the search, counted: time would tell of the machine. Every beginning tried from nothing would take
 * twice as many looks, and the settled ones tried once more a sixth more.
 */
describe('the work of the search', () => {
  test.each<readonly [string, string, number, number]>([
    ['where repeats and endings lead back', JUMPS, 6600, 30],
    ['round a plain chart', ROUND, 6500, 20],
  ])('%s', (_, chart, mostLooks, mostTables) => {
    const { looks, tables } = workFor(chart, 'rocksteady');
    expect(looks).toBeLessThanOrEqual(mostLooks);
    expect(tables).toBeLessThanOrEqual(mostTables);
  });
});

/** Two chords to the bar, from far keys, through repeats and endings: nothing that is tried shows all that is asked. */
const THICK = `|: C#m7 F#7 | Ebmaj7 A7 | Dm G7#5 | F Am7 |1. D7 Gm | E7 Abm :|2. F#m7 B7 | C Gb7 |
Chorus:
|: Ab7 Db | Gm C7 | Bm7b5 E7 |1. F#dim B :|2. E Am | Bb F7 |
Bridge:
|: Ebm7 Ab7 | Dbmaj7 G7 | Cm F7#5 | Eb Gm7 |1. C7 Fm | D7 Gbm :|2. Em7 A7 | Bb E7 |`;
const EIGHTEEN = `Verse:
|: C | Am7 | F | G7 | C | Dm7 G7 |1. C | G7 :|2. C | C7 |
Chorus:
|: F | G7 | Em7 | Am |1. C | A7 :|2. C | G7 |`;

describe('the plans of a line', () => {
  const plansFor = (chart: string, wish: Wish): number => {
    const desk = openDesk(request(chart, wish));
    let plans = 0;
    draftOf(
      {
        ...desk,
        featuresCost: (heard) => {
          plans += 1;
          return desk.featuresCost(heard);
        },
      },
      1,
    );
    return plans;
  };
  test('are as many as ever where eighteen bars repeat', () => {
    expect(plansFor(EIGHTEEN, { feel: 'one-drop' })).toBeGreaterThanOrEqual(28);
  });
  test('are few in a further look where the first had much to look at', () => {
    // 28 in the first look; two more looks would have 16 each.
    const plans = plansFor(THICK, { feel: 'rocksteady', level: 3, techniques: TECHNIQUES });
    expect(plans).toBeGreaterThan(28);
    expect(plans).toBeLessThan(50);
  });
});
