import { createRandom, type LineNote, type SpelledName } from '../../base';
import type { Contour, MetrePhrases, PhraseBook, Theme } from '../../feel';
import { nameOfDegree } from '../../theory';
import type { HeardLine } from '../hearing';
import type { LineModel } from '../model';
import { TECHNIQUE_TABLE } from '../techniques/table';
import { hear, type Tone, toneOf } from '../tones';
import type { Technique } from '../types';
import { type Column, cheapestWay, type Prices } from './chain';
import { FEATURES, type Feature, featuresOf } from './features';
import { joinCost, type LeadRules, type LeadWay, solveLead, type Target } from './leads';
import { type Kinship, kinship } from './motif';
import type { Node } from './nodes';
import { type BarPlan, KINSHIP_WORTH, type Plan, planOf } from './plan';
import { type Pool, poolMaker } from './pools';
import { type Segment, segmentsOf } from './segments';
import { WEIGHTS } from './weights';

/** A line that the phrase book made. */
export interface Draft {
  readonly heard: HeardLine;
  readonly cost: number;
  /** Bars that will not do, and could not be mended. */
  readonly faults: number;
  readonly plan: Plan;
  readonly theme: Theme;
  /** By segment, which contour it plays. */
  readonly contours: readonly (string | null)[];
}

/** How much a segment's join weighs beside its own cost, by manner (hand-set). */
const JOIN_WEIGHT = { walk: 1.35, riff: 1 } as const;

/** Price of what cannot be: a model broken off, a kept bar's other beginning. */
const NEVER = 1e6;

/** Nodes that were tried and did wrong, with what they cost more now. */
type Barred = ReadonlyMap<number, ReadonlyMap<Node, number>>;
const NONE_BARRED: Barred = new Map();

/** Price of not going on with a note that a kept bar ties over. */
const TIE_BROKEN = 200;

/** Numbers from 0 to 1 for a plan's tastes: the same numbers for the same arguments. */
function taste(seed: number, scope: number, tag: number): number {
  let mixed = Math.imul(seed ^ Math.imul(scope + 1, 0x9e3779b1) ^ tag, 0x85ebca6b);
  mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
  return ((mixed ^ (mixed >>> 16)) >>> 0) / 4294967296;
}

/** The cost of a line by its features. */
export function judge(model: LineModel, heard: HeardLine): number {
  const features = featuresOf(model, heard);
  let cost = 0;
  for (const name of Object.keys(FEATURES) as Feature[]) cost += features[name] * WEIGHTS[name].weight;
  return cost;
}

export interface EngineRequest {
  readonly model: LineModel;
  readonly book: PhraseBook;
  readonly metre: MetrePhrases;
  readonly seed: number;
  /** By bar: the notes that are given, or null. */
  readonly kept: readonly (readonly LineNote[] | null)[];
  /** Plans that are tried; more where the chart is short. */
  readonly plans: number;
  /** Whether only the plainest theme is used. */
  readonly plain: boolean;
  /** Bars of a line that will not do, whatever it costs: rules broken, techniques shown or missing. */
  faults(heard: HeardLine): readonly number[];
}

/** A node for notes that are given. */
function keptNode(tones: readonly Tone[]): Node | null {
  const [first] = tones;
  const last = tones.at(-1);
  if (!first || !last) return null;
  return {
    cell: { contour: KEPT, notes: [], level: 0, longest: 0, silence: 0 },
    pitches: [],
    first: first.midi,
    late: first.start > 0,
    last: last.midi,
    before: tones.findLast((tone) => tone.midi !== last.midi)?.midi ?? null,
    rests: false,
    tied: last.tiedOn,
    leadBeats: [],
    mean: 0,
    top: 0,
    cost: 0,
    link: null,
  };
}

const KEPT = { id: 'kept', slot: 'S', grid: '', text: '', beats: [], roles: [], leads: 0, tags: [] } as const;

/** The pool of a segment without a chord, or of a kept bar. */
function fixedPool(id: number, node: Node | null): Pool {
  const nodes = [node ?? SILENCE];
  const beginning = { midi: node?.first ?? null, late: node?.late ?? false, model: null };
  return {
    id,
    nodes,
    tags: new Int32Array(1),
    borrowed: [false],
    entryOf: new Int32Array(1),
    entries: [beginning],
  };
}

const SILENCE: Node = {
  cell: { contour: KEPT, notes: [], level: 0, longest: 0, silence: 0 },
  pitches: [],
  first: -1,
  late: true,
  last: -1,
  before: null,
  rests: true,
  leadBeats: [],
  mean: 0,
  top: 0,
  cost: 0,
  link: null,
};

/** Where a segment goes: the next one as written, if it can follow, and bars that repeats lead back to. */
interface Onward {
  readonly next: boolean;
  readonly ring: boolean;
  readonly jumps: readonly number[];
}

/** Composes with the phrase book: over many plans, the best way through each; the best lines first. */
export function composeWithBook(request: EngineRequest): readonly Draft[] {
  const { model, book, metre, seed } = request;
  const { level } = model.request;
  const keptTones = model.bars.map((bar) => {
    const notes = request.kept[bar.index] ?? null;
    return notes ? hear(bar, notes) : null;
  });
  const segments = segmentsOf(
    model,
    metre.metre,
    keptTones.map((tones) => tones !== null),
  );
  if (segments.length === 0) return [];
  const pools = poolMaker(model, book, metre);
  const fixed = new Map<number, Pool>();
  const firstSegment = new Map<number, number>();
  for (const segment of segments)
    if (!firstSegment.has(segment.bar.index)) firstSegment.set(segment.bar.index, segment.index);

  const theme = (request.plain ? metre.themes[0] : undefined) ?? themeFor(metre, level, seed, model);
  const onward = segments.map((segment, index): Onward => {
    const next = segments[index + 1];
    if (next?.bar === segment.bar) return { next: true, ring: false, jumps: [] };
    const after = segment.bar.after;
    const goesOn = next !== undefined && after.includes(next.bar.index);
    const ring = next === undefined && after.includes(segments[0]?.bar.index ?? -1);
    const jumps = after.filter(
      (bar) => !(goesOn && bar === next?.bar.index) && !(ring && bar === segments[0]?.bar.index),
    );
    return { next: goesOn, ring, jumps };
  });

  function poolAt(segment: Segment, plan: Plan): Pool {
    const known = fixed.get(segment.index);
    if (known) return known;
    const tones = keptTones[segment.bar.index];
    if (segment.kept || !segment.ladder) {
      const pool = fixedPool(-1 - segment.index, tones ? keptNode(tones) : null);
      fixed.set(segment.index, pool);
      return pool;
    }
    const bar = plan.bars[segment.bar.index];
    const pool = pools.poolOf(segment, theme, bar?.slot ?? 'S', modelPlace(segment, bar ?? null));
    if (pool.nodes.length > 0) return pool;
    const silent = fixedPool(-1 - segment.index, null);
    fixed.set(segment.index, silent);
    return silent;
  }

  /** A model needs all of its bars free and whole. */
  function modelPlace(segment: Segment, bar: BarPlan | null) {
    if (!bar?.models || !segment.whole) return null;
    const length = bar.models.slots.split('+').length;
    const first = segment.bar.index - bar.models.place;
    for (let index = first; index < first + length; index += 1) {
      const at = firstSegment.get(index);
      const other = at === undefined ? undefined : segments[at];
      if (!other?.whole || other.kept || !other.ladder || other.bar.demands.wanted.size > 0) return null;
    }
    return bar.models;
  }

  const weight = JOIN_WEIGHT[book.manner];
  const memo = new Map<string, Map<number, LeadWay>>();
  const rulesFor = rememberRules(model, book);

  function targetOf(segment: Segment, from: Segment, midi: number | null, late: boolean): Target | null {
    if (midi === null || midi < 0 || !segment.ladder) return null;
    return { midi, ladder: segment.ladder, changes: segment.stretch?.label !== from.stretch?.label, late };
  }

  function lead(segment: Segment, node: Node, targets: readonly Target[], memoKey: string): LeadWay {
    const { ladder } = segment;
    const beats = node.leadBeats;
    if (!ladder) return { kind: 'stay', pitches: beats.map(() => node.last), cost: 0 };
    const main = targets[0] ?? ownTarget(segment, node);
    const table = memo.get(memoKey) ?? new Map<number, LeadWay>();
    memo.set(memoKey, table);
    let key = (node.last * 128 + (node.before ?? 0)) * 256 + main.midi * 2 + (main.late ? 1 : 0);
    for (const beat of beats) key = key * 24 + Math.round(beat * 6);
    const known = table.get(key);
    if (known) return known;
    const way = solveLead(rulesFor(segment), ladder, { last: node.last, before: node.before }, beats, [
      main,
      ...targets.slice(1),
    ]);
    table.set(key, way);
    return way;
  }

  /** Without anything to lead to, a lead comes home to its own chord. */
  function ownTarget(segment: Segment, node: Node): Target {
    const { ladder } = segment;
    const midi = node.pitches[0] ?? node.last;
    return { midi, ladder: ladder as NonNullable<typeof ladder>, changes: false, late: true };
  }

  function joinPrice(
    segment: Segment,
    node: Node,
    targets: readonly Target[],
    key: string,
    late: boolean,
  ): number {
    if (node.last < 0) return 0;
    if (node.cell.contour.leads > 0) {
      return lead(segment, node, targets, key).cost * weight + (targets.length === 0 ? 2.5 : 0);
    }
    let cost = 0;
    targets.forEach((target, index) => {
      const leapt =
        Math.abs(target.midi - node.last) === 12 && !segment.bar.demands.freedoms.has('octave leap');
      if (leapt && segment.end < segment.bar.ticks) cost += TIE_BROKEN;
      if (node.tied && (late || target.midi !== node.last)) cost += TIE_BROKEN;
      cost += (joinCost(node.last, target, node.rests || late) * weight) / (index === 0 ? 1 : 2);
    });
    return cost;
  }

  const priced = new Map<string, Prices>();
  /** Prices from a segment's pool into the beginnings of another's. */
  function pricesOf(
    segment: Segment,
    pool: Pool,
    to: Segment | null,
    into: Pool | null,
    extra: readonly Target[],
  ): Prices {
    const memoKey = `${segment.stretch?.label} ${segment.bar.demands.key} ${keyText(segment)} ${to?.stretch?.label} ${to ? keyText(to) : ''} ${extra.map(({ midi, ladder }) => `${midi}${ladder.label}`).join()}`;
    const key = `${pool.id} ${into?.id} ${memoKey}`;
    const known = priced.get(key);
    if (known) return known;
    const beginnings = into?.entries ?? [{ midi: null, late: false, model: null }];
    const prices = new Float64Array(pool.nodes.length * beginnings.length);
    pool.nodes.forEach((node, row) => {
      const goesOn = node.link && !node.link.last ? node.link.model : null;
      beginnings.forEach((beginning, column) => {
        let price = NEVER;
        if (goesOn === beginning.model || into === null) {
          const target = to ? targetOf(to, segment, beginning.midi, beginning.late) : null;
          price = joinPrice(segment, node, target ? [target, ...extra] : extra, memoKey, beginning.late);
        }
        prices[row * beginnings.length + column] = price;
      });
    });
    priced.set(key, prices);
    return prices;
  }

  const kin = new Map<Contour | null, Map<Pool, readonly Kinship[]>>();
  /** How each node of a pool is kin to the plan's motif. */
  function kinOf(motif: Contour | null, pool: Pool): readonly Kinship[] {
    const table = kin.get(motif) ?? new Map<Pool, readonly Kinship[]>();
    kin.set(motif, table);
    const known =
      table.get(pool) ??
      pool.nodes.map((node): Kinship => (motif ? kinshipBetween(motif, node.cell.contour) : 'other'));
    table.set(pool, known);
    return known;
  }

  const betweenContours = new Map<Contour, Map<Contour, Kinship>>();
  function kinshipBetween(motif: Contour, contour: Contour): Kinship {
    const table = betweenContours.get(motif) ?? new Map<Contour, Kinship>();
    betweenContours.set(motif, table);
    const known = table.get(contour) ?? kinship(motif, contour);
    table.set(contour, known);
    return known;
  }

  const riff = book.manner === 'riff';
  function columnOf(segment: Segment, pool: Pool, plan: Plan, only: number | null, barred: Barred): Column {
    const bar = plan.bars[segment.bar.index];
    const costs = new Float64Array(pool.nodes.length);
    const some = pool.borrowed.some((one) => !one);
    const kinds = kinOf(plan.motif, pool);
    const worth = KINSHIP_WORTH[bar?.operation ?? 'state'];
    // biome-ignore lint/complexity/noExcessiveCognitiveComplexity: a table of prices, read from top to bottom
    pool.nodes.forEach((node, index) => {
      let cost = node.cost;
      if (bar && node.pitches.length > 0) {
        const tag = pool.tags[index] ?? 0;
        if (segment.whole) {
          cost +=
            (riff ? 1.2 : 0.9) * taste(plan.seed, 1, tag) +
            (riff ? 0.7 : 0.7) * taste(plan.seed, 2 + bar.half, tag);
          cost += (riff ? 0.2 : 0.4) * taste(plan.seed, 8 + segment.bar.index, tag);
          if (node.link) {
            if (plan.motifModel?.id === node.link.model && bar.half === 0) cost -= 0.7;
          } else cost -= worth[kinds[index] ?? 'other'] ?? 0;
        } else cost += 0.5 * taste(plan.seed, 1, tag) + 0.3 * taste(plan.seed, 8 + segment.index, tag);
        if (pool.borrowed[index] && some && segment.whole) cost += level >= 2 ? 3 : 0.8;
        cost += 0.085 * Math.abs(node.mean - bar.height);
        if (bar.crest && segment.whole) cost += 0.22 * Math.max(0, plan.summit - node.top);
        else if (node.top >= plan.summit) cost += 0.7 + 0.2 * (node.top - plan.summit);
        if (
          bar.slot === 'T' &&
          segment.bar.index === plan.bars.length - 1 &&
          segment.end === segment.bar.ticks
        )
          cost -= 0.5 * Math.min(2, node.cell.contour.leads);
      }
      if (only !== null && node.first !== only) cost += NEVER;
      cost += barred.get(segment.index)?.get(node) ?? 0;
      costs[index] = cost;
    });
    return { costs, entryOf: pool.entryOf, entries: pool.entries.length };
  }

  /** One plan, from the cheapest way to the tones; jumps back are known from the pass before. */
  function realise(
    plan: Plan,
    known: readonly number[] | null,
    firsts: ReadonlyMap<number, number>,
    barred: Barred = NONE_BARRED,
  ): { nodes: readonly Node[]; cost: number; targets: readonly (readonly Target[])[] } | null {
    const list = segments.map((segment) => poolAt(segment, plan));
    if (list.some((pool) => pool.nodes.length === 0)) return null;
    const columns = segments.map((segment, index) =>
      columnOf(
        segment,
        list[index] as Pool,
        plan,
        known && firsts.has(segment.index) ? (firsts.get(segment.index) ?? null) : null,
        barred,
      ),
    );
    const extraOf = (index: number): readonly Target[] => {
      const from = segments[index] as Segment;
      return (onward[index]?.jumps ?? []).flatMap((bar) => {
        const at = firstSegment.get(bar);
        const midi = at === undefined ? undefined : firsts.get(at);
        const to = at === undefined ? undefined : segments[at];
        const target = to && midi !== undefined ? targetOf(to, from, midi, true) : null;
        return target ? [target] : [];
      });
    };
    const prices = segments.slice(0, -1).map((segment, index) => {
      const way = onward[index];
      const next = segments[index + 1] as Segment;
      const into = list[index + 1] as Pool;
      const from = list[index] as Pool;
      if (way?.next) return pricesOf(segment, from, next, into, extraOf(index));
      const alone = pricesOf(segment, from, null, null, extraOf(index));
      const spread = new Float64Array(from.nodes.length * into.entries.length);
      for (let node = 0; node < from.nodes.length; node += 1)
        for (let entry = 0; entry < into.entries.length; entry += 1)
          spread[node * into.entries.length + entry] = alone[node] ?? 0;
      return spread;
    });
    const lastIndex = segments.length - 1;
    const lastSegment = segments[lastIndex] as Segment;
    const lastPool = list[lastIndex] as Pool;
    const ringed = onward[lastIndex]?.ring === true;
    let ring: Prices | null = null;
    if (ringed)
      ring = pricesOf(lastSegment, lastPool, segments[0] as Segment, list[0] as Pool, extraOf(lastIndex));
    else {
      const alone = pricesOf(lastSegment, lastPool, null, null, extraOf(lastIndex));
      const column = columns[lastIndex] as Column;
      for (let node = 0; node < column.costs.length; node += 1)
        column.costs[node] = (column.costs[node] ?? 0) + (alone[node] ?? 0);
    }
    const way = cheapestWay(columns, prices, ring);
    if (!way || way.cost >= NEVER) return null;
    const nodes = way.nodes.map((node, index) => (list[index] as Pool).nodes[node] as Node);
    const targets = segments.map((segment, index): readonly Target[] => {
      const place = onward[index];
      const extra = extraOf(index);
      const nextIndex = place?.next ? index + 1 : place?.ring ? 0 : -1;
      const next = segments[nextIndex];
      const node = nodes[nextIndex];
      const target =
        next && node ? targetOf(next, segment, node.last < 0 ? null : node.first, node.late) : null;
      return target ? [target, ...extra] : extra;
    });
    return { nodes, cost: way.cost, targets };
  }

  const hasJumps = onward.some(({ jumps }) => jumps.length > 0);
  function tonesOf(way: NonNullable<ReturnType<typeof realise>>): HeardLine {
    const bars: Tone[][] = model.bars.map((bar) => [...(keptTones[bar.index] ?? [])]);
    segments.forEach((segment, index) => {
      const node = way.nodes[index];
      const { ladder } = segment;
      if (!node || !ladder || segment.kept || node.last < 0) return;
      const targets = way.targets[index] ?? [];
      const next = segments[index + 1];
      const main = targets[0];
      const solved =
        node.leadBeats.length > 0
          ? solveLead(
              rulesFor(segment),
              ladder,
              { last: node.last, before: node.before },
              node.leadBeats,
              main ? targets : [ownTarget(segment, node)],
            )
          : null;
      const pitches = [...node.pitches, ...(solved?.pitches ?? [])];
      pitches.forEach((midi, place) => {
        const note = node.cell.notes[place];
        if (!note) return;
        const after = pitches[place + 1] ?? main?.midi ?? null;
        const name = spell(segment, midi, after, main?.ladder.names ?? next?.ladder?.names ?? null);
        const tone = toneOf(segment.bar, note.start, note.duration, midi, name);
        const tied = solved?.kind === 'early' && place === pitches.length - 1;
        bars[segment.bar.index]?.push(tied ? { ...tone, tiedOn: true } : tone);
      });
    });
    return bars;
  }

  const motifSegment = segments.find((segment) => segment.whole && !segment.kept && segment.ladder);
  const motifs = motifSegment
    ? [
        ...new Set(
          pools
            .poolOf(motifSegment, theme, 'S', null)
            .nodes.filter((node) => !node.cell.contour.tags.length)
            .map((node) => node.cell.contour),
        ),
      ]
    : [];
  const wishes = {
    manner: book.manner,
    theme,
    motifs,
    low: Math.min(...model.bars.map((bar) => bar.demands.reach.low)),
    high: Math.max(...model.bars.map((bar) => bar.demands.reach.high)),
    level,
  };
  const scale = 8 / Math.max(8, segments.length);
  type Way = NonNullable<ReturnType<typeof realise>>;
  interface Try {
    readonly draft: Draft;
    readonly way: Way;
  }

  function attempt(plan: Plan, barred: Barred): Try | null {
    let way = realise(plan, null, new Map(), barred);
    if (way && hasJumps) {
      way =
        realise(
          plan,
          way.nodes.map(() => 0),
          jumpTargets(way.nodes),
          barred,
        ) ?? way;
    }
    if (!way) return null;
    const heard = tonesOf(way);
    const cost = judge(model, heard) + way.cost * scale * 0.35;
    const contours = way.nodes.map((node) => (node.last < 0 ? null : node.cell.contour.id));
    return { draft: { heard, cost, faults: 0, plan, theme, contours }, way };
  }

  /** The plan again without what its bars did wrong, until nothing is wrong or there is no better way. */
  // biome-ignore lint/complexity/noExcessiveCognitiveComplexity: one search, its steps in order
  function mended(first: Try): Draft {
    let best = first.draft;
    let faults = request.faults(best.heard);
    let least = faults.length;
    const barred = new Map<number, Map<Node, number>>();
    let last = first;
    for (let round = 0; round < ROUNDS && faults.length > 0; round += 1) {
      for (const segment of segments) {
        const { index } = segment.bar;
        const next = [...segment.bar.before, ...segment.bar.after].some((bar) => faults.includes(bar));
        const node = last.way.nodes[segment.index];
        if (!node || segment.kept || !(faults.includes(index) || (next && round % 2 === 1))) continue;
        const table = barred.get(segment.index) ?? new Map<Node, number>();
        table.set(node, (table.get(node) ?? 0) + 3);
        barred.set(segment.index, table);
      }
      const again = attempt(last.draft.plan, barred);
      if (!again) break;
      last = again;
      faults = request.faults(again.draft.heard);
      if (faults.length < least) [best, least] = [again.draft, faults.length];
    }
    return { ...best, faults: least, cost: best.cost + least * FAULT * scale };
  }

  const tries: Try[] = [];
  for (let index = 0; index < request.plans; index += 1) {
    const one = attempt(planOf(model, wishes, (seed * 7919 + index * 104729 + 17) >>> 0), NONE_BARRED);
    if (one) tries.push(one);
  }
  return tries
    .sort((one, other) => one.draft.cost - other.draft.cost)
    .slice(0, MOST_DRAFTS)
    .map(mended)
    .sort((one, other) => one.cost - other.cost);

  /** First notes of the bars that repeats and endings lead back to. */
  function jumpTargets(nodes: readonly Node[]): ReadonlyMap<number, number> {
    const firsts = new Map<number, number>();
    for (const { jumps } of onward)
      for (const bar of jumps) {
        const at = firstSegment.get(bar);
        const node = at === undefined ? undefined : nodes[at];
        if (at !== undefined && node && node.last >= 0) firsts.set(at, node.first);
      }
    return firsts;
  }
}

/** Lines that are handed on to be looked at more closely. */
const MOST_DRAFTS = 3;

/** How often a plan is tried again without what was wrong, and what a fault that stays costs. */
const ROUNDS = 8;
const FAULT = 40;

const keyText = ({ stretch }: Segment): string =>
  stretch ? `${stretch.key.tonic.letter}${stretch.key.tonic.alteration}${stretch.key.mode}` : '';

/** The themes of a level in an order of the chart's own; neighbouring seeds get different ones. */
function themeFor(metre: MetrePhrases, level: number, seed: number, model: LineModel): Theme {
  const fitting = metre.themes.filter(({ levels }) => level >= levels.least && level <= levels.most);
  const themes = fitting.length > 0 ? fitting : metre.themes;
  const random = createRandom(
    model.bars.reduce(
      (sum, bar) => (sum * 31 + (bar.stretches[0]?.label ?? '').length + bar.stretches.length) >>> 0,
      7,
    ),
  );
  const order = [...themes];
  for (let index = order.length - 1; index > 0; index -= 1) {
    const other = random.below(index + 1);
    [order[index], order[other]] = [order[other] as Theme, order[index] as Theme];
  }
  return order[seed % order.length] as Theme;
}

function rememberRules(model: LineModel, book: PhraseBook): (segment: Segment) => LeadRules {
  const known = new Map<string, LeadRules>();
  const { level } = model.request;
  return ({ bar }) => {
    const found = known.get(bar.demands.key);
    if (found) return found;
    const { freedoms, reach, wanted, hoped } = bar.demands;
    const asks = (technique: Technique) => wanted.has(technique) || hoped.has(technique);
    const rules: LeadRules = {
      level,
      steps: freedoms.has('notes outside the chord'),
      approaches: freedoms.has('notes outside the scale') && model.limits.halfSteps,
      longChromatics: book.chromatics === 'a beat',
      walk: book.manner === 'walk',
      low: reach.low,
      high: reach.high,
      onNeck: reach.onNeck,
      octaves: freedoms.has('octave leap'),
      wants: {
        steps: wanted.has('scale steps'),
        approach: asks('approach note'),
        early:
          level >= TECHNIQUE_TABLE.anticipation.from && asks('anticipation') && freedoms.has('early root'),
      },
    };
    known.set(bar.demands.key, rules);
    return rules;
  };
}

/** The name of a pitch in its chord; a note from outside is named by where it goes. */
function spell(
  segment: Segment,
  midi: number,
  after: number | null,
  nextNames: readonly (SpelledName | null)[] | null,
): SpelledName {
  const pitchClass = ((midi % 12) + 12) % 12;
  const own = segment.ladder?.names[pitchClass];
  if (own) return own;
  const target =
    after === null ? null : (nextNames?.[after % 12] ?? segment.ladder?.names[after % 12] ?? null);
  if (target && after !== null && Math.abs(after - midi) === 1) {
    return nameOfDegree(target, after > midi ? { step: 7, alteration: 0 } : { step: 2, alteration: -1 });
  }
  const next = nextNames?.[pitchClass];
  if (next) return next;
  return NATURAL[pitchClass] ?? { letter: 'C', alteration: 0 };
}

/** Common names of the twelve notes, sharps up and flats down from C as charts have them most. */
const NATURAL: readonly SpelledName[] = [
  { letter: 'C', alteration: 0 },
  { letter: 'C', alteration: 1 },
  { letter: 'D', alteration: 0 },
  { letter: 'E', alteration: -1 },
  { letter: 'E', alteration: 0 },
  { letter: 'F', alteration: 0 },
  { letter: 'F', alteration: 1 },
  { letter: 'G', alteration: 0 },
  { letter: 'A', alteration: -1 },
  { letter: 'A', alteration: 0 },
  { letter: 'B', alteration: -1 },
  { letter: 'B', alteration: 0 },
];
