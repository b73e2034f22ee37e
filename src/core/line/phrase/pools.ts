import { hashText, remembered } from '../../base';
import type { Contour, MetrePhrases } from '../../feel';
import type { LineModel } from '../model';
import { type Entry, entryKey, entryOf } from '../rules/ends';
import type { Tone } from '../tones';
import { drawMaker, type Place } from './draws';
import type { NodeRules } from './node-cost';
import { type Body, type Draw, givenNode, type Node } from './nodes';
import type { Segment } from './segments';

/** How a node begins, as far as what comes before can tell. */
export interface Beginning {
  /** −1 where nothing sounds. */
  readonly midi: number;
  /** It begins after a rest. */
  readonly late: boolean;
  /** The model that it goes on with. */
  readonly model: string | null;
  /** How many notes are struck. */
  readonly count: number;
  readonly entry: Entry | null;
}

/** The nodes that a segment chooses from in one slot. */
export interface Pool {
  readonly id: number;
  readonly nodes: readonly Node[];
  /** By node: a number that stands for its contour, for the plan's tastes. */
  readonly tags: Int32Array;
  /** Whether some contours are of the theme itself. */
  readonly ownSome: boolean;
  readonly entryOf: Int32Array;
  readonly entries: readonly Beginning[];
}

/** What a segment chooses from in several places: what sounds alike is one node of the pool. */
export interface Choices {
  readonly pool: Pool;
  /** By choice, in the order in which they come first: its price, its node, and its contour if it has one. */
  readonly costs: Float64Array;
  readonly nodeOf: Int32Array;
  readonly contours: readonly (Contour | null)[];
}

/** The most nodes a segment chooses from; the dearest are left out. */
const MOST_NODES = 44;
const WIDE = 2;

/** What a place leaves to choose from. */
interface Drawn {
  readonly draws: readonly Draw[];
  /** Whether some are of the theme itself. */
  readonly ownSome: boolean;
  /** How many a segment chooses from at most. */
  readonly room: number;
}

/** What lent contours cost beside a theme's own. */
const BORROWED = 3;
/** What a bar that stands alone costs where a model of several bars could stand. */
const ALONE = 0.8;

export interface PoolMaker {
  /** The choices of a segment under a plan; remembered. */
  poolOf(segment: Segment, place: Place): Pool;
  /** The choices of a segment in several places in one, of equal ones the cheapest; remembered. */
  choicesAmong(segment: Segment, placesFor: () => readonly Place[]): Choices;
  /** The only choice of a segment whose notes are given, or that rests. */
  givenPool(segment: Segment, tones: readonly Tone[]): Pool;
}

/** Makes the pools of a request: what each chord, slot and theme leaves to choose from. */
export function poolMaker(
  model: LineModel,
  rules: NodeRules,
  metre: MetrePhrases,
  most = MOST_NODES,
): PoolMaker {
  const { contextIn, linkedDraws, ownDraws, bodyIn, nodeIn } = drawMaker(model, rules, metre);
  const pools = new Map<string, Pool>();
  const joints = new Map<number, Choices>();
  const numbers = new Map<string, number>();

  /** What a place leaves to choose from, as it is written. */
  function drawnIn(segment: Segment, place: Place): Drawn {
    const linked = linkedDraws(segment, place);
    const alone = linked.length > 0 ? ALONE : 0;
    const own = ownDraws(segment, place);
    const all =
      alone === 0
        ? own
        : [...linked, ...own.map((draw) => (draw.borrowed ? draw : { ...draw, cost: draw.cost + alone }))];
    const ownSome = all.some(({ borrowed }) => !borrowed);
    const room = (place.wide ? WIDE : 1) * most + linked.length;
    return { draws: all, ownSome, room };
  }

  const priceIn = ({ cost, borrowed }: Draw, { ownSome }: Drawn): number =>
    cost + (borrowed && ownSome ? BORROWED : 0);

  /** As many as there is room for, the cheapest first. */
  const cheapestOf = (drawn: Drawn): readonly Draw[] =>
    [...drawn.draws].sort((one, other) => priceIn(one, drawn) - priceIn(other, drawn)).slice(0, drawn.room);

  function make(segment: Segment, place: Place): Pool {
    const { ladder } = segment;
    const drawn = drawnIn(segment, place);
    return poolOfNodes(
      ladder ? cheapestOf(drawn).map((draw) => nodeIn(segment, ladder, draw)) : [],
      drawn.ownSome,
      pools.size,
    );
  }

  function poolOfNodes(nodes: readonly Node[], ownSome: boolean, id: number): Pool {
    const entries: Beginning[] = [];
    const byText = new Map<string, number>();
    const entryOfNode = new Int32Array(nodes.length);
    const tags = new Int32Array(nodes.length);
    nodes.forEach((node, index) => {
      const model = node.link && node.link.place > 0 ? node.link.model : null;
      const entry = entryOf(node.tones);
      const count = node.tones.length + node.leads.length;
      const text = `${entry ? entryKey(entry) : ''} ${node.late} ${count} ${model}`;
      const known = byText.get(text);
      entryOfNode[index] = known ?? entries.length;
      if (known === undefined) {
        byText.set(text, entries.length);
        entries.push({ midi: node.first, late: node.late, model, count, entry });
      }
      const contour = node.contour?.id ?? '';
      tags[index] = remembered(numbers, contour, () => hashText(contour) | 0);
    });
    return { id, nodes, ownSome, tags, entryOf: entryOfNode, entries };
  }

  /** Of equal choices the cheapest, in the order in which they come first. */
  function makeAmong(segment: Segment, places: readonly Place[]): Choices {
    const draws: Draw[] = [];
    const costs: number[] = [];
    // Contours that sound alike share their pitches.
    const seats = new Map<readonly number[], number>();
    for (const place of places) {
      const drawn = drawnIn(segment, place);
      for (const draw of drawn.draws.length > drawn.room ? cheapestOf(drawn) : drawn.draws) {
        const cost = priceIn(draw, drawn);
        const seat = remembered(seats, draw.pitches, () => draws.length);
        if (cost >= (costs[seat] ?? Number.POSITIVE_INFINITY)) continue;
        draws[seat] = draw;
        costs[seat] = cost;
      }
    }
    return choicesOf(segment, draws, costs);
  }

  /** Draws with their prices, those that sound alike as one node. */
  function choicesOf(segment: Segment, draws: readonly Draw[], costs: readonly number[]): Choices {
    const { ladder } = segment;
    const nodes: Node[] = [];
    const numberOf = new Map<Body, number>();
    const nodeOf = new Int32Array(draws.length);
    draws.forEach((draw, index) => {
      if (!ladder) return;
      const body = bodyIn(segment, ladder, draw);
      const node = remembered(numberOf, body, () => nodes.length);
      if (node === nodes.length) nodes.push(body);
      nodeOf[index] = node;
    });
    const contours = draws.map(({ cell }) => cell.contour);
    const pool = poolOfNodes(nodes, true, joints.size);
    return { pool, costs: Float64Array.from(costs), nodeOf, contours };
  }

  /** The only choice of a segment that rests. */
  const silent = (segment: Segment): Choices => ({
    pool: givenPool(segment, []),
    costs: new Float64Array(1),
    nodeOf: new Int32Array(1),
    contours: [null],
  });

  const givenPool = (segment: Segment, tones: readonly Tone[]): Pool =>
    poolOfNodes([givenNode(segment, tones)], true, -1 - segment.index);

  return {
    poolOf(segment, place) {
      const context = contextIn(segment);
      const { theme, slot, asks } = place;
      const models = segment.whole ? place.models : null;
      const key = `${context} ${segment.whole ? slot : ''} ${theme.id} ${models?.slots} ${models?.place} ${segment.whole ? place.tuneBar : null} ${asks} ${place.wide}`;
      return remembered(pools, key, () => make(segment, place));
    },
    choicesAmong: (segment, placesFor) =>
      segment.ladder
        ? remembered(joints, contextIn(segment), () => makeAmong(segment, placesFor()))
        : silent(segment),
    givenPool,
  };
}
