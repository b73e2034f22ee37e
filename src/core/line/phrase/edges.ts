import { remembered } from '../../base';
import { isAmongDegrees } from '../kept-degrees';
import { type BarModel, changesAtStart, type LineModel } from '../model';
import { HELD_IN_PARTS, meetingBreaches, soloBreaches } from '../rules/check';
import { leadsHome } from '../rules/closing';
import { isWished } from '../rules/downbeat';
import { entryKey } from '../rules/ends';
import { areEven } from '../rules/evenness';
import { isHome } from '../tones';
import type { Prices } from './chain';
import { type Finished, type Finisher, type Goal, type Leading, plainJoin } from './finish';
import { LEAST_EARLY, LEAST_LEAD, type LeadWay, MOST_EARLY } from './leads';
import type { Node } from './nodes';
import type { Beginning, Pool } from './pools';
import type { Segment } from './segments';
import { bitsOf, countOf, type Techniques, unshownCost } from './shown';
import { MISSED } from './stances';

/** What it costs to break a rule, and to break off a model or a tie: never taken where there is another way. */
const BROKEN = 25;
const NEVER = 1e6;
const TIE_BROKEN = 300;

/** What it costs to reach a bar that is given, which cannot move towards the line, from farther than a step (hand-set). */
const AWAY = 1.8;
const STEP = 2;

/** What it costs that roots a step apart lie in different octaves (hand-set). */
const TORN = 1.5;

/** What each half step beyond an octave costs beside a bar that is given, where no way may be without it (hand-set). */
const BEYOND_OCTAVE = 1;

/** How many notes the bar of a segment has, told from the segment. */
const inBar = ({ bar, start, end }: Segment, notes: number): number => (notes * bar.ticks) / (end - start);

/** What a lead costs that has nothing to lead to, and each of the notes that lead into an empty beat one (hand-set). */
const NOWHERE = 2.5;
const INTO_SILENCE = 0.7;

/** More than there are pools of a request, and sets of techniques: numbers below them are joined into one. */
const POOLS = 2 ** 17;
const ASKS = 2 ** 10;

/** The way from a segment's pool into the beginnings of another's, or on from it where no bar follows as written. */
export interface Way {
  readonly from: Segment;
  readonly pool: Pool;
  readonly to: Segment | null;
  readonly into: Pool | null;
  /** Where else the segment leads: bars that repeats and endings go back to. */
  readonly extras: readonly Goal[];
  readonly asks: Techniques;
}

/** No node with so many leads goes on for less. @param early whether an anticipation is wanted */
function leastFor(leads: number, early: boolean): number {
  if (leads === 0) return 0;
  return early && leads <= MOST_EARLY ? LEAST_EARLY : LEAST_LEAD;
}

/** How a node goes on, by its leads if it has any. */
interface Onward {
  readonly way: LeadWay | null;
  readonly cost: number;
}

/** A node finished, and what it costs. */
export interface Ending {
  readonly finished: Finished;
  readonly cost: number;
}

/** Prices of the way from one segment to what comes. */
export interface EdgePrices extends Prices {
  /** Prices that are no higher, wherever else the segment may lead besides. */
  readonly under: Prices;
}

export interface EdgeMaker {
  /** The prices of a way; the same for equal ones. */
  between(way: Way): EdgePrices;
  /** A node finished on its way into all of its goals, nothing else being asked, and what that costs. */
  onwardFrom(from: Segment, node: Node, leading: Leading): Ending;
  /** The goal that a beginning of a segment is to what leads into it; null where nothing sounds there. */
  goalOf(to: Segment, begins: Beginning, from: Segment): Goal | null;
}

/** What a finished node was seen to cost before beginnings like those of a segment. */
function metBefore(finished: Finished, { opensSection }: Segment): Map<Beginning, number> {
  const known = opensSection ? finished.opening : finished.meeting;
  if (known) return known;
  const made = new Map<Beginning, number>();
  finished[opensSection ? 'opening' : 'meeting'] = made;
  return made;
}

/** Prices the ways between the segments of a request. */
export function edgeMaker(model: LineModel, finisher: Finisher, weight: number): EdgeMaker {
  const tables = new Map<number | string, EdgePrices>();
  const lastPlayed = model.order.at(-1);
  const start = model.bars[model.order[0] ?? 0]?.stretches[0] ?? null;

  const goalOf = (to: Segment, begins: Beginning, from: Segment): Goal | null =>
    begins.midi < 0 || !to.ladder
      ? null
      : {
          midi: begins.midi,
          ladder: to.ladder,
          changes: to.stretch?.label !== from.stretch?.label,
          late: begins.late,
          segment: to,
          begins,
        };

  const minded = new Map<BarModel, boolean>();
  /** Whether an empty beat one would be minded in a bar at all. */
  function mayMiss(bar: BarModel): boolean {
    const known = minded.get(bar) ?? ((bar.opensSection || changesAtStart(model, bar)) && !isWished(bar));
    minded.set(bar, known);
    return known;
  }

  /** Whether an empty beat one of what comes has no right to be there. */
  function missesOne(from: Segment, node: Node, { segment: to, late }: Goal): boolean {
    if (!late || to.start > 0) return false;
    const { bar } = to;
    if (!mayMiss(bar)) return false;
    const leavesItEmpty =
      model.request.feel.bassRole.mayRestOnOne || bar.demands.freedoms.has('silent beat one');
    // Of a bar in several parts only the first would tell whether it sounds on its one.
    const silent = from.start > 0 ? from.bar !== bar : node.late && !from.kept;
    return !leavesItEmpty || bar.opensSection || silent;
  }

  /** Breaches on the way into a goal: how many. */
  function brokenInto(from: Segment, node: Node, { tones, exit }: Finished, goal: Goal): number {
    const { entry, count } = goal.begins;
    const { segment: to } = goal;
    if (!entry || !exit) return 0;
    if (to.bar === from.bar && to.start > 0)
      return countOf(soloBreaches(model, from.bar, [...tones.slice(-3), entry.first]) & HELD_IN_PARTS);
    let broken = countOf(meetingBreaches(model, from.bar, exit, to.bar, entry));
    // A note that is tied over is not struck again.
    const struck = exit.last.tiedOn ? Math.max(1, count - 1) : count;
    if (!areEven(from.bar, inBar(from, tones.length), to.bar, inBar(to, struck))) broken += 1;
    if (missesOne(from, node, goal)) broken += 1;
    return broken;
  }

  /** Whether the last bar of the round neither closes nor leads home. */
  function isOpenEnd(from: Segment, { tones }: Finished): boolean {
    if (from.bar.index !== lastPlayed || from.end !== from.bar.ticks || model.request.level === 0)
      return false;
    const last = tones.at(-1);
    return last !== undefined && !isHome(last) && last.interval !== 0 && !leadsHome(last, start);
  }

  /** How a node goes on to its goals, and what that costs before it is finished. */
  function onwardOf(from: Segment, node: Node, leading: Leading): Onward {
    const { goals } = leading;
    const way = finisher.leadOf(from, node, leading);
    const cost = (way ? way.cost : plainJoin(node, goals)) * weight;
    const lost = goals.length === 0 ? NOWHERE : goals[0]?.late ? INTO_SILENCE * node.leads.length : 0;
    return { way, cost: way ? cost + lost : cost };
  }

  /** A node finished on its way into its goals, and what that costs beside how they begin. */
  function endingOf(
    from: Segment,
    node: Node,
    { way, cost: before }: Onward,
    leading: Leading,
    asks: Techniques,
  ): Ending {
    const finished = finisher.finish(from, node, way, leading);
    let cost = before;
    if (!from.kept) {
      cost += countOf(finished.solo) * BROKEN;
      const { demands } = from.bar;
      const shows = finisher.shown(from, finished, leading);
      const share = (from.end - from.start) / from.bar.ticks;
      cost += countOf(shows & ~allowedIn(from)) * MISSED;
      cost += countOf(bitsOf(demands.wanted) & ~shows) * MISSED * share;
      cost += unshownCost(asks, shows) * share;
      if (demands.degrees !== null) cost += MISSED * otherDegrees(from, finished);
    }
    return { finished, cost: isOpenEnd(from, finished) ? cost + BROKEN : cost };
  }

  /** The leads of a node that are none of the degrees its bar keeps to; its other notes have their price already. */
  const otherDegrees = ({ bar }: Segment, { tones }: Finished): number =>
    tones.filter(
      ({ stretch, interval }) => stretch !== null && !isAmongDegrees(bar.demands, stretch, interval),
    ).length;

  /** What it costs beside that how a goal begins; the same for equal beginnings, wherever they are. */
  function meetingCost(from: Segment, node: Node, finished: Finished, goal: Goal): number {
    const known = metBefore(finished, goal.segment);
    return remembered(known, goal.begins, () => metCost(from, node, finished, goal));
  }

  /** Whether two bars whose chords begin a step apart begin more than a seventh apart: the step is not heard. */
  const isTorn = (from: Segment, node: Node, goal: Goal): boolean => {
    const apart = Math.abs(goal.midi - node.first);
    return from.start === 0 && node.first >= 0 && apart >= 10 && [1, 2, 10, 11].includes(apart % 12);
  };

  function metCost(from: Segment, node: Node, finished: Finished, goal: Goal): number {
    const { exit } = finished;
    const given = exit && from.kept !== goal.segment.kept;
    const beyond = given ? Math.max(0, Math.abs(goal.midi - exit.last.midi) - 12) : 0;
    const away = given && goal.segment.kept && Math.abs(goal.midi - exit.last.midi) > STEP ? AWAY : 0;
    const torn = isTorn(from, node, goal) ? TORN : 0;
    const cost = brokenInto(from, node, finished, goal) * BROKEN + beyond * BEYOND_OCTAVE + torn + away;
    return exit?.last.tiedOn && (goal.late || goal.midi !== exit.last.midi) ? cost + TIE_BROKEN : cost;
  }

  const allowed = new Map<string, Techniques>();
  function allowedIn({ bar }: Segment): Techniques {
    const known = allowed.get(bar.demands.key) ?? bitsOf(['chord tones', ...bar.demands.techniques]);
    allowed.set(bar.demands.key, known);
    return known;
  }

  /** Prices of the way from a pool into beginnings, each worked out once. */
  function pricesInto(way: Way): EdgePrices {
    const { from, pool, to, into, extras, asks } = way;
    const beginnings: readonly (Beginning | null)[] = into?.entries ?? [null];
    const { length } = beginnings;
    /** What is known of each price: no more than it is, and all of it where it is settled. */
    const known = new Float64Array(pool.nodes.length * length).fill(Number.NEGATIVE_INFINITY);
    const settled = new Uint8Array(known.length);
    const goals = beginnings.map((begins) => (begins && to ? goalOf(to, begins, from) : null));
    // Leads know of a beginning only where it lies and whether it is late.
    const kinds = new Map<number, number>();
    const leadings: Leading[] = [];
    const kindOf = goals.map((goal) => {
      const sign = goal ? goal.midi * 2 + (goal.late ? 1 : 0) : -1;
      const kind = kinds.get(sign) ?? leadings.length;
      kinds.set(sign, kind);
      if (kind === leadings.length)
        leadings.push(finisher.leading(from, goal ? [goal, ...extras] : extras, asks));
      return kind;
    });
    const early = leadings.some(({ rules }) => rules.wants.has('early'));
    const floor = Float64Array.from(pool.nodes, ({ leads }) => leastFor(leads.length, early) * weight);
    const sounds = leadings.every((leading) => leading.goals.length > 0);
    const onwards: Onward[] = [];
    const endings: Ending[] = [];

    /** How a node goes on into beginnings of a kind. */
    function onwardAt(node: Node, row: number, kind: number, leading: Leading): Onward {
      const place = row * leadings.length + kind;
      const onward = onwards[place] ?? onwardOf(from, node, leading);
      onwards[place] = onward;
      return onward;
    }

    /** The leads alone tell most of what a node costs. */
    const least = Float64Array.from(pool.nodes, (node, row) =>
      node.last < 0
        ? 0
        : leadings.reduce(
            (cost, leading, kind) => Math.min(cost, onwardAt(node, row, kind, leading).cost),
            NEVER,
          ),
    );

    /** What is certain of the price of a node that sounds: as much as is needed to go beyond a limit, else all. */
    function soundingPrice(node: Node, row: number, column: number, limit: number): number {
      const kind = kindOf[column] ?? 0;
      const leading = leadings[kind];
      if (!leading) return NEVER;
      const place = row * leadings.length + kind;
      const onward = onwardAt(node, row, kind, leading);
      if (onward.cost > limit) return onward.cost;
      const ending = endings[place] ?? endingOf(from, node, onward, leading, asks);
      endings[place] = ending;
      if (ending.cost > limit) return ending.cost;
      settled[row * length + column] = 1;
      const goal = goals[column];
      const met = goal ? ending.cost + meetingCost(from, node, ending.finished, goal) : ending.cost;
      return extras.reduce((cost, extra) => cost + meetingCost(from, node, ending.finished, extra), met);
    }

    function priceOf(row: number, column: number, limit: number): number {
      const node = pool.nodes[row];
      const begins = beginnings[column];
      const goesOn = node?.link && !node.link.last ? node.link.model : null;
      const breaksOff = begins !== undefined && begins !== null && to !== null && goesOn !== begins.model;
      if (node && node.last >= 0 && !breaksOff) return soundingPrice(node, row, column, limit);
      settled[row * length + column] = 1;
      return breaksOff ? NEVER : 0;
    }

    // Where a lead has more to lead to, it costs no less; where it had nothing, that is not known.
    const under: Prices = {
      least: sounds ? least : floor,
      at(row, column) {
        const node = pool.nodes[row];
        const kind = kindOf[column] ?? 0;
        const leading = leadings[kind];
        if (!node || node.last < 0 || !leading || leading.goals.length === 0) return floor[row] ?? 0;
        return onwardAt(node, row, kind, leading).cost;
      },
    };

    return {
      least,
      under,
      at(row, column, limit) {
        const place = row * length + column;
        const price = known[place] ?? 0;
        if (price > limit || settled[place] === 1) return price;
        const found = priceOf(row, column, limit);
        known[place] = found;
        return found;
      },
    };
  }

  return {
    goalOf,
    onwardFrom(from, node, leading) {
      const { finished, cost } = endingOf(from, node, onwardOf(from, node, leading), leading, 0);
      const met = leading.goals.map((goal) => metCost(from, node, finished, goal));
      return { finished, cost: met.reduce((sum, one) => sum + one, cost) };
    },
    between(way) {
      const { from, pool, to, into, extras, asks } = way;
      const closes = from.bar.index === lastPlayed && from.end === from.bar.ticks;
      // Pools of given notes count down from −1; no pool stands for the end of a bar that goes nowhere as written.
      const pair = (pool.id + POOLS) * 2 * POOLS + (into ? into.id + POOLS : 0);
      const whole = ((pair * 3 + (to ? (to.opensSection ? 2 : 1) : 0)) * 2 + (closes ? 1 : 0)) * ASKS + asks;
      const also = extras.map(
        ({ segment, begins: { entry, late, count } }) =>
          `${segment.index} ${entry && entryKey(entry)} ${late} ${count}`,
      );
      const key = extras.length > 0 ? `${whole} ${also.join()}` : whole;
      const found = tables.get(key) ?? pricesInto(way);
      tables.set(key, found);
      return found;
    },
  };
}
