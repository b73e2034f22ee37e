import { hashText } from '../../base';
import type { PhraseRole } from '../../feel';
import { leadsHome } from '../bar-rules';
import { hearLine } from '../hearing';
import { findBreaches } from '../line-rules';
import { type BarModel, type LineModel, modelOf } from '../model';
import { type Option, openWorkshop, type Workshop } from '../options';
import { patternOf } from '../rhythm';
import { BREACH, meetingCost, roleCost } from '../taste';
import { hear, writeNotes } from '../tones';
import type { ComposedLine, ComposeRequest, LineNotes } from '../types';
import { cellsByRole, type Plan, type PlannedBar, plansFor } from './plan';
import { type Candidate, cheapest, type Meeting, undominated } from './search';

/** Options that a bar brings into the search. */
const OPTIONS_A_BAR = 16;
/** Plans whose pitches are searched; the others cost more by their rhythm alone. */
const PLANS = 10;
/** Shapes that are tried as the motif of the statement. */
const MOTIFS = 3;

const MOTIF = { same: -2.5, sameHead: -1 } as const;

/** How far chance may move the price of a thing, in points of the score: enough to choose among equals. */
const CHANCE = { cell: 2, option: 0.8 } as const;

/** A number from 0 to 1 that depends on the seed and a text, the same on every machine. */
const chance = (seed: number, text: string): number =>
  (Math.imul(hashText(text) ^ Math.imul(seed + 1, 0x9e3779b1), 0x85ebca6b) >>> 0) / 4294967296;

function headOf(shape: string): string {
  const parts = shape.split(' ');
  return parts.slice(0, Math.ceil(parts.length / 2)).join(' ');
}

function motifCost(role: PhraseRole, shape: string, motif: string): number {
  if (role === 'turnaround') return 0;
  if (role === 'statement' && shape === motif) return MOTIF.same;
  return headOf(shape) === headOf(motif) ? MOTIF.sameHead : 0;
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
    cell: { id: '', grid: '', roles: [], level: 0, source: '' },
    onsets: [],
    pattern: '',
    silentOne: true,
    silence: 1,
  },
  shape: '',
  cost: 0,
  exit: null,
  entry: null,
  text: '',
};

interface Studio {
  readonly shop: Workshop;
  readonly seed: number;
  readonly given: readonly { readonly option: Option | null }[];
  readonly meeting: Meeting;
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
  return { shop, seed: request.seed, given, meeting: rememberedMeetings(model) };
}

/** Meetings priced once for each pair of ends and chords. */
function rememberedMeetings(model: LineModel): Meeting {
  const prices = new Map<string, Map<string, number>>();
  return (from, one, to, other) => {
    const [before, after] = [model.bars[from], model.bars[to]];
    if (!before || !after || !one.exit || !other.entry) return 0;
    const chords = `${before.stretches.at(-1)?.label}>${after.stretches[0]?.label}>${one.exit.key}`;
    let known = prices.get(chords);
    if (!known) {
      known = new Map();
      prices.set(chords, known);
    }
    let price = known.get(other.entry.key);
    if (price === undefined) {
      price = meetingCost(model, before, one.exit, after, other.entry);
      known.set(other.entry.key, price);
    }
    return price;
  };
}

function candidatesFor(
  studio: Studio,
  bar: BarModel,
  planned: PlannedBar,
  motif: string,
): readonly Candidate[] {
  const { shop, seed, given } = studio;
  const kept = given[bar.index]?.option;
  if (kept) return [{ option: kept, cost: 0 }];
  if (!planned.rhythm) return [{ option: RESTING, cost: 0 }];
  const priced = shop.options(bar, planned.rhythm).map((option) => ({
    option,
    cost:
      option.cost +
      roleCost(planned.role, option.tones) +
      motifCost(planned.role, option.shape, motif) +
      homeCost(shop.model, bar, option) +
      chance(seed, option.text) * CHANCE.option,
  }));
  const lasting = undominated(priced.sort((one, other) => one.cost - other.cost)).slice(0, OPTIONS_A_BAR);
  return lasting.length > 0 ? lasting : [{ option: RESTING, cost: BREACH }];
}

/** Shapes worth carrying through the line: the cheapest ones of the first statement. */
function motifsFor(studio: Studio, plan: Plan): readonly string[] {
  const first = plan.bars.findIndex((bar) => bar.role === 'statement' && bar.rhythm !== null);
  const bar = studio.shop.model.bars[first];
  const rhythm = plan.bars[first]?.rhythm;
  if (!bar || !rhythm) return [''];
  const shapes = [...studio.shop.options(bar, rhythm)]
    .map((option) => ({
      shape: option.shape,
      cost:
        option.cost + roleCost('statement', option.tones) + chance(studio.seed, option.shape) * MOTIF_CHANCE,
    }))
    .sort((one, other) => one.cost - other.cost)
    .map(({ shape }) => shape);
  return [...new Set(shapes)].slice(0, MOTIFS);
}

/** Motifs differ more than other shapes from take to take, as they give a line its face. */
const MOTIF_CHANCE = 2.5;

interface Draft {
  readonly bars: LineNotes;
  readonly cost: number;
}

function bestLine(studio: Studio, plans: readonly Plan[]): Draft {
  let best: Draft | null = null;
  for (const plan of plans.slice(0, PLANS)) {
    for (const motif of motifsFor(studio, plan)) {
      const candidates = studio.shop.model.bars.map((bar, index) =>
        candidatesFor(studio, bar, plan.bars[index] ?? { role: 'statement', rhythm: null }, motif),
      );
      const bound = candidates.reduce(
        (sum, list) => sum + list.reduce((least, one) => Math.min(least, one.cost), Number.POSITIVE_INFINITY),
        plan.cost,
      );
      if (best && bound + studio.shop.model.bars.length * LEAST_MEETING >= best.cost) continue;
      const found = cheapest(studio.shop.model, candidates, studio.meeting);
      const cost = found.cost + plan.cost;
      if (best && cost >= best.cost) continue;
      best = {
        cost,
        bars: candidates.map((list, index) => writeNotes(list[found.choice[index] ?? 0]?.option.tones ?? [])),
      };
    }
  }
  return best ?? { bars: studio.shop.model.bars.map(() => []), cost: 0 };
}

/** No meeting of two bars is worth more than this. */
const LEAST_MEETING = -2.6;

/**
 * Composes a whole line: for a rhythm plan of statement, answer and turnaround, the cheapest notes under the
 * score of `taste`, over every way the bars can follow each other. The seed chooses the statement's rhythm and
 * decides among equals; the same request and seed give the same line. Bars in `kept` stay as they are. Never
 * throws for a parsed chart; what could not be done is said in the remarks.
 */
export function composeLine(request: ComposeRequest): ComposedLine {
  const studio = openStudio(request);
  const { shop, given, seed } = studio;
  const { model } = shop;
  const statements = cellsByRole(shop, 'statement');
  const start = hashText(request.chart.bars.map((bar) => bar.spans.length).join(' '));
  const statement = statements[(start + seed) % Math.max(1, statements.length)] ?? '';
  const plans = plansFor(shop, statement, given, (cell) => chance(seed, cell) * CHANCE.cell);
  const { bars } = bestLine(studio, plans);
  const whole = bars.map((notes, index) => request.kept[index] ?? notes);
  return { bars: whole, remarks: remarksFor(model, whole) };
}

function restRemark(model: LineModel, bar: BarModel): string[] {
  const number = model.request.chart.bars[bar.index]?.number ?? bar.index + 1;
  const unknown = bar.stretches.find((stretch) => stretch.label.startsWith('? '));
  if (unknown)
    return [
      `Bar ${number}: the chord “${unknown.label.slice(2)}” is not understood, so the bass rests under it.`,
    ];
  return bar.playable ? [] : [`Bar ${number} has no chord, so the bass rests.`];
}

function fretRemarks(model: LineModel, line: LineNotes): string[] {
  const heard = hearLine(model, line);
  const high = model.bars.filter((bar) =>
    (heard[bar.index] ?? []).some((tone) => model.beyondFrets.has(tone.midi % 12)),
  );
  const numbers = high.map((bar) => model.request.chart.bars[bar.index]?.number ?? bar.index + 1);
  return numbers.length === 0
    ? []
    : [
        `A note in bar ${[...new Set(numbers)].join(', ')} lies beyond fret ${model.limits.highestFret}, the last of this level.`,
      ];
}

function remarksFor(model: LineModel, line: LineNotes): readonly string[] {
  const breaches = findBreaches(model, hearLine(model, line));
  return [
    ...model.bars.flatMap((bar) => restRemark(model, bar)),
    ...fretRemarks(model, line),
    ...breaches.map((breach) => breach.message),
  ];
}
