import { hashText } from '../../base';
import type { PhraseRole } from '../../feel';
import { hearLine } from '../hearing';
import type { BarModel, LineModel } from '../model';
import { type Option, openWorkshop, textOfTones, type Workshop } from '../options';
import { modelOf } from '../read-request';
import { type BarRhythm, patternOf } from '../rhythm';
import { findBreaches } from '../rules/check';
import { leadsHome } from '../rules/closing';
import { BREACH, meetingCost, roleCost } from '../taste';
import { hear, writeNotes } from '../tones';
import type { ComposeRequest, LineNotes } from '../types';
import { type Candidate, type Field, fieldOf, type Prices, rememberPrices } from './field';
import { type Plan, plansFor, rhythmsByRole, typicalBar } from './plan';
import type { PlannedBar } from './planned';
import { cheapest } from './search';

/** Options that a bar brings into the search. */
const OPTIONS_A_BAR = 14;
/** Plans whose pitches are searched; the others cost more by their rhythm alone. */
const PLANS = 8;
/** Shapes that are tried as the motif of the statement. */
const MOTIFS = 2;

/** What it is worth to hear the motif again: at its own pitches over its own chord, its shape, or its beginning. */
const MOTIF = { samePitches: -4, same: -2.5, sameHead: -1 } as const;

/** How far chance may move the price of a thing, in points of the score: enough to choose among equals. */
const CHANCE = { cell: 2, option: 0.8 } as const;

/** A number from 0 to 1 that depends on the seed and a text, the same on every machine. */
const chance = (seed: number, text: string): number =>
  (Math.imul(hashText(text) ^ Math.imul(seed + 1, 0x9e3779b1), 0x85ebca6b) >>> 0) / 4294967296;

function headOf(shape: string): string {
  const parts = shape.split(' ');
  return parts.slice(0, Math.ceil(parts.length / 2)).join(' ');
}

/** The first statement's figure, which the other statements carry on. */
interface Motif {
  readonly shape: string;
  /** The chord it is first played over, and its notes there. */
  readonly label: string;
  readonly notes: string;
}

const NO_MOTIF: Motif = { shape: '', label: '', notes: '' };

const labelOf = (bar: BarModel): string => bar.stretches.map(({ label }) => label).join(' ');

function motifCost(role: PhraseRole, bar: BarModel, option: Option, motif: Motif): number {
  if (role === 'turnaround') return 0;
  if (role === 'statement' && labelOf(bar) === motif.label && textOfTones(option.tones) === motif.notes)
    return MOTIF.samePitches;
  if (role === 'statement' && option.shape === motif.shape) return MOTIF.same;
  return option.shape.startsWith(headOf(motif.shape)) ? MOTIF.sameHead : 0;
}

/** The last bar of the round has to lead home (rule 10), unless the level knows nothing but roots. */
function homeCost(model: LineModel, bar: BarModel, option: Option): number {
  if (bar.index !== model.order.at(-1) || model.request.level === 0) return 0;
  const last = option.tones.at(-1);
  const start = model.bars[model.order[0] ?? 0]?.stretches[0] ?? null;
  return last && !leadsHome(last, start) ? BREACH : 0;
}

const RESTING: Option = {
  tones: [],
  rhythm: {
    cell: { id: '', grid: '', roles: [], level: 0, highest: 5, source: '' },
    onsets: [],
    pattern: '',
    silentOne: true,
    silence: 1,
    longest: 1,
  },
  shape: '',
  cost: 0,
  exit: null,
  entry: null,
};

interface Studio {
  readonly shop: Workshop;
  readonly seed: number;
  readonly given: readonly { readonly option: Option | null }[];
  readonly prices: Prices;
  readonly fields: Map<string, Field>;
  /** What chance adds to the price of an option. */
  luck(option: Option): number;
}

function openStudio(request: ComposeRequest): Studio {
  const model = modelOf(request);
  const shop = openWorkshop(model);
  const given = model.bars.map((bar) => {
    const notes = request.kept[bar.index] ?? null;
    if (notes === null) return { option: null };
    const tones = hear(bar, notes);
    const rhythm = { ...RESTING.rhythm, pattern: patternOf(tones), silentOne: tones[0]?.start !== 0 };
    return { option: tones.length === 0 ? RESTING : shop.given(bar, tones, rhythm) };
  });
  const lucks = new Map<Option, number>();
  return {
    shop,
    seed: request.seed,
    given,
    fields: new Map(),
    prices: rememberPrices((from, one, to, other) =>
      one.exit && other.entry ? meetingCost(model, from, one.exit, to, other.entry) : 0,
    ),
    luck: (option) => {
      const known = lucks.get(option);
      if (known !== undefined) return known;
      const luck = chance(request.seed, textOfTones(option.tones)) * CHANCE.option;
      lucks.set(option, luck);
      return luck;
    },
  };
}

function fieldFor(studio: Studio, bar: BarModel, planned: PlannedBar, motif: Motif): Field {
  const { shop, given, fields } = studio;
  const kept = given[bar.index]?.option;
  const last = bar.index === shop.model.order.at(-1);
  const key = kept
    ? `kept ${bar.index}`
    : `${shop.likeness(bar)} / ${planned.rhythm?.cell.id} / ${planned.role} / ${last} / ${motif.shape} / ${motif.notes}`;
  const known = fields.get(key);
  if (known) return known;
  const candidates = kept ? [{ option: kept, cost: 0 }] : candidatesFor(studio, bar, planned, motif);
  const field = fieldOf(fields.size, candidates, OPTIONS_A_BAR);
  fields.set(key, field);
  return field;
}

function candidatesFor(
  studio: Studio,
  bar: BarModel,
  planned: PlannedBar,
  motif: Motif,
): readonly Candidate[] {
  const { shop } = studio;
  if (!planned.rhythm) return [{ option: RESTING, cost: 0 }];
  const options = playableOptions(shop, bar, planned.rhythm);
  if (options.length === 0) return [{ option: RESTING, cost: BREACH }];
  return options.map((option) => ({
    option,
    cost:
      option.cost +
      roleCost(shop.model, planned.role, option.tones) +
      motifCost(planned.role, bar, option, motif) +
      homeCost(shop.model, bar, option) +
      studio.luck(option),
  }));
}

/** The options of a rhythm; where the range has no place for so many notes, those of the next calmer one. */
function playableOptions(shop: Workshop, bar: BarModel, rhythm: BarRhythm): readonly Option[] {
  const options = shop.options(bar, rhythm);
  if (options.length > 0) return options;
  const count = rhythm.onsets.length;
  const calmer = shop
    .rhythms(bar)
    .filter((other) => other.silentOne === rhythm.silentOne && other.onsets.length < count)
    .sort((one, other) => other.onsets.length - one.onsets.length);
  for (const other of calmer) {
    const found = shop.options(bar, other);
    if (found.length > 0) return found;
  }
  return [];
}

/** Figures worth carrying through the line: the cheapest ones of the first statement, each of another shape. */
function motifsFor(studio: Studio, plan: Plan): readonly Motif[] {
  const first = plan.bars.findIndex((bar) => bar.role === 'statement' && bar.rhythm !== null);
  const bar = studio.shop.model.bars[first];
  const rhythm = plan.bars[first]?.rhythm;
  if (!bar || !rhythm) return [NO_MOTIF];
  const ranked = studio.shop
    .options(bar, rhythm)
    .map((option) => ({
      option,
      cost:
        option.cost +
        roleCost(studio.shop.model, 'statement', option.tones) +
        chance(studio.seed, option.shape) * MOTIF_CHANCE,
    }))
    .sort((one, other) => one.cost - other.cost);
  const byShape = new Map<string, Motif>();
  for (const { option } of ranked) {
    if (byShape.size === MOTIFS) break;
    if (!byShape.has(option.shape))
      byShape.set(option.shape, {
        shape: option.shape,
        label: labelOf(bar),
        notes: textOfTones(option.tones),
      });
  }
  return byShape.size > 0 ? [...byShape.values()] : [NO_MOTIF];
}

/** Motifs differ more than other shapes from take to take, as they give a line its face. */
const MOTIF_CHANCE = 2.5;

interface Attempt {
  readonly plan: Plan;
  readonly fields: readonly Field[];
  /** No line of this attempt can cost less. */
  readonly bound: number;
}

function attemptsFor(studio: Studio, plans: readonly Plan[]): readonly Attempt[] {
  const { bars } = studio.shop.model;
  const meetings = bars.reduce((sum, bar) => sum + bar.after.length, 0);
  return plans
    .slice(0, PLANS)
    .flatMap((plan) =>
      motifsFor(studio, plan).map((motif) => {
        const fields = bars.map((bar, index) =>
          fieldFor(studio, bar, plan.bars[index] ?? { role: 'statement', rhythm: null }, motif),
        );
        const bound = fields.reduce((sum, field) => sum + field.least, plan.cost + meetings * LEAST_MEETING);
        return { plan, fields, bound };
      }),
    )
    .sort((one, other) => one.bound - other.bound);
}

/** Searches the attempts in the order of what they promise, until none can beat the best that was found. */
function bestLine(studio: Studio, plans: readonly Plan[]): Draft {
  const { model } = studio.shop;
  let least = Number.POSITIVE_INFINITY;
  let best: readonly Option[] = [];
  for (const { plan, fields, bound } of attemptsFor(studio, plans)) {
    if (bound >= least) break;
    const found = cheapest(model, fields, studio.prices);
    if (found.cost + plan.cost >= least) continue;
    least = found.cost + plan.cost;
    best = fields.map((field, bar) => field.candidates[found.choice[bar] ?? 0]?.option ?? RESTING);
  }
  return {
    bars: model.bars.map((bar) => writeNotes(best[bar.index]?.tones ?? [])),
    cost: Number.isFinite(least) ? least : 0,
  };
}

/** A line before its remarks. */
export interface Draft {
  readonly bars: LineNotes;
  readonly cost: number;
}

/**
 * The line on the statement's rhythm that the seed chose; where that leaves a rule broken, the first rhythm after
 * it that breaks none, or the one that breaks fewest.
 */
function firstClean(studio: Studio, statements: readonly string[]): Draft {
  const { shop, given, seed } = studio;
  let best: (Draft & { readonly breaches: number }) | null = null;
  for (let attempt = 0; attempt < STATEMENTS; attempt += 1) {
    const round = Math.floor(attempt / statements.length);
    const statement = statements[attempt % statements.length] ?? '';
    const liking = (cell: string) => chance(seed + round * ANOTHER_ROUND, cell) * CHANCE.cell;
    const plans = plansFor(shop, statement, given, liking);
    const draft = bestLine(studio, plans);
    const breaches = findBreaches(shop.model, hearLine(shop.model, draft.bars)).length;
    if (best === null || breaches < best.breaches) best = { ...draft, breaches };
    if (breaches === 0) break;
  }
  return best ?? { bars: [], cost: 0 };
}

/**
 * How many rhythms are tried where rules stay broken, as they may when bars are kept; when each statement was tried,
 * they come again with other answers and turnarounds.
 */
const STATEMENTS = 6;
const ANOTHER_ROUND = 7919;

/** No meeting of two bars is worth more than this. */
const LEAST_MEETING = -1.3;

/** The line for a request whose aims are taken as they stand. */
export function draftOf(request: ComposeRequest): Draft {
  const studio = openStudio(request);
  const bar = typicalBar(studio.shop);
  const statements = bar ? rhythmsByRole(studio.shop, bar, 'statement').map(({ cell }) => cell.id) : [];
  const start = hashText(request.chart.bars.map((each) => each.spans.length).join(' '));
  const turned = statements.map(
    (_, index) => statements[(start + request.seed + index) % statements.length] ?? '',
  );
  const draft = firstClean(studio, turned.length > 0 ? turned : ['']);
  return { bars: draft.bars.map((notes, index) => request.kept[index] ?? notes), cost: draft.cost };
}
