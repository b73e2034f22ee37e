import { type BarModel, changesAtStart, type LineModel } from '../model';
import { meetingBreaches, soloBreaches } from '../rules/check';
import { leadsHome } from '../rules/closing';
import { isWished } from '../rules/downbeat';
import { areEven } from '../rules/evenness';
import { isHome } from '../tones';
import type { Prices } from './chain';
import { type Finished, type Finisher, type Goal, type Leading, plainJoin } from './finish';
import { MISSED, type Node, UNSHOWN } from './nodes';
import type { Beginning, Pool } from './pools';
import type { Segment } from './segments';
import { bitsOf, countOf, type Techniques } from './shown';

/** What it costs to break a rule, and to break off a model or a tie: never taken where there is another way. */
const BROKEN = 25;
const NEVER = 1e6;
const TIE_BROKEN = 300;

/** How many notes the bar of a segment has, told from the segment. */
const inBar = ({ bar, start, end }: Segment, notes: number): number => (notes * bar.ticks) / (end - start);

/** What a lead costs that has nothing to lead to. */
const NOWHERE = 2.5;

/** Rules about notes side by side, which part of a bar can be held to as well. */
const SIDE_BY_SIDE = ~((1 << 12) | (1 << 14));

export interface EdgeMaker {
  /**
   * Prices from a segment's pool into the beginnings of another's, or on from it where no bar follows as written.
   * @param extras where else the segment leads: bars that repeats and endings go back to
   */
  between(
    from: Segment,
    pool: Pool,
    to: Segment | null,
    into: Pool | null,
    extras: readonly Goal[],
    asks: Techniques,
  ): Prices;
  /** The goal that a beginning of a segment is to what leads into it; null where nothing sounds there. */
  goalOf(to: Segment, begins: Beginning, from: Segment): Goal | null;
}

/** Prices the ways between the segments of a request. */
export function edgeMaker(model: LineModel, finisher: Finisher, weight: number): EdgeMaker {
  const tables = new Map<string, Prices>();
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
      return countOf(soloBreaches(model, from.bar, [...tones.slice(-3), entry.first]) & SIDE_BY_SIDE);
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

  function priceOf(from: Segment, node: Node, leading: Leading, asks: Techniques): number {
    if (node.last < 0) return 0;
    const { goals } = leading;
    const way = finisher.leadOf(from, node, leading);
    const finished = finisher.finish(from, node, way, leading);
    let cost = (way ? way.cost : plainJoin(node, goals)) * weight;
    if (way && goals.length === 0) cost += NOWHERE;
    if (!from.kept) {
      cost += countOf(finished.solo) * BROKEN;
      const { demands } = from.bar;
      const shows = finisher.shown(from, finished, leading);
      const share = (from.end - from.start) / from.bar.ticks;
      cost += countOf(shows & ~allowedIn(from)) * MISSED;
      cost += countOf(bitsOf(demands.wanted) & ~shows) * MISSED * share;
      cost += countOf(asks & ~shows) * UNSHOWN * share;
    }
    if (isOpenEnd(from, finished)) cost += BROKEN;
    const tied = finished.exit?.last.tiedOn === true;
    for (const goal of goals) {
      cost += brokenInto(from, node, finished, goal) * BROKEN;
      if (tied && (goal.late || goal.midi !== finished.exit?.last.midi)) cost += TIE_BROKEN;
    }
    return cost;
  }

  const allowed = new Map<string, Techniques>();
  function allowedIn({ bar }: Segment): Techniques {
    const known = allowed.get(bar.demands.key) ?? bitsOf(['chord tones', ...bar.demands.techniques]);
    allowed.set(bar.demands.key, known);
    return known;
  }

  return {
    goalOf,
    between(from, pool, to, into, extras, asks) {
      const closes = from.bar.index === lastPlayed && from.end === from.bar.ticks;
      const also = extras.map(
        ({ segment, begins }) => `${segment.index} ${begins.midi} ${begins.late} ${begins.count}`,
      );
      const key = `${pool.id} ${into?.id} ${to?.opensSection} ${asks} ${closes} ${also.join()}`;
      const known = tables.get(key);
      if (known) return known;
      const beginnings: readonly (Beginning | null)[] = into?.entries ?? [null];
      const ways = beginnings.map((begins) => {
        const goal = begins && to ? goalOf(to, begins, from) : null;
        return finisher.leading(from, goal ? [goal, ...extras] : extras, asks);
      });
      const prices = new Float64Array(pool.nodes.length * beginnings.length).fill(NEVER);
      pool.nodes.forEach((node, row) => {
        const goesOn = node.link && !node.link.last ? node.link.model : null;
        ways.forEach((leading, column) => {
          const begins = beginnings[column];
          if (begins && to && goesOn !== begins.model) return;
          prices[row * beginnings.length + column] = priceOf(from, node, leading, asks);
        });
      });
      tables.set(key, prices);
      return prices;
    },
  };
}
