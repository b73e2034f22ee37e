import { hashText, remembered } from '../../base';
import type { MetrePhrases } from '../../feel';
import type { LineModel } from '../model';
import { type Entry, entryKey, entryOf } from '../rules/ends';
import type { Tone } from '../tones';
import { drawMaker, type Place } from './draws';
import type { NodeRules } from './node-cost';
import { type Draw, givenNode, type Node } from './nodes';
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

/** The most nodes a segment chooses from; the dearest are left out. */
const MOST_NODES = 44;
const WIDE = 2;

/** What lent contours cost beside a theme's own. */
const BORROWED = 3;
/** What a bar that stands alone costs where a model of several bars could stand. */
const ALONE = 0.8;

export interface PoolMaker {
  /** The choices of a segment under a plan; remembered. */
  poolOf(segment: Segment, place: Place): Pool;
  /** The choices of several pools of one segment in one. */
  joined(pools: readonly Pool[]): Pool;
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
  const { contextIn, linkedDraws, ownDraws, nodeIn } = drawMaker(model, rules, metre);
  const pools = new Map<string, Pool>();
  const joints = new Map<string, Pool>();
  const numbers = new Map<string, number>();

  function make(segment: Segment, place: Place): Pool {
    const { ladder } = segment;
    const linked = linkedDraws(segment, place);
    const alone = linked.length > 0 ? ALONE : 0;
    const all = [
      ...linked,
      ...ownDraws(segment, place).map((draw) => ({
        ...draw,
        cost: draw.cost + (draw.borrowed ? 0 : alone),
      })),
    ];
    const ownSome = all.some(({ borrowed }) => !borrowed);
    const price = ({ cost, borrowed }: Draw) => cost + (borrowed && ownSome ? BORROWED : 0);
    const chosen = [...all]
      .sort((one, other) => price(one) - price(other))
      .slice(0, (place.wide ? WIDE : 1) * most + linked.length);
    return poolOfNodes(
      ladder ? chosen.map((draw) => nodeIn(segment, ladder, draw)) : [],
      ownSome,
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
  function joinedOf(list: readonly Pool[]): Pool {
    const found: { node: Node; cost: number }[] = [];
    const places = new Map<string | undefined, Map<number, number>>();
    for (const { nodes, ownSome } of list)
      for (const node of nodes) {
        const cost = node.cost + (node.borrowed && ownSome ? BORROWED : 0);
        const row = remembered(places, node.contour?.id, () => new Map<number, number>());
        const known = found[row.get(node.first) ?? -1];
        if (!known) {
          row.set(node.first, found.length);
          found.push({ node, cost });
        } else if (cost < known.cost) {
          known.node = node;
          known.cost = cost;
        }
      }
    const nodes = found.map(({ node, cost }) => ({ ...node, cost, link: null }));
    return poolOfNodes(nodes, true, list[0]?.id ?? 0);
  }

  return {
    poolOf(segment, place) {
      const context = contextIn(segment);
      const { theme, slot, asks } = place;
      const models = segment.whole ? place.models : null;
      const key = `${context} ${segment.whole ? slot : ''} ${theme.id} ${models?.slots} ${models?.place} ${segment.whole ? place.tuneBar : null} ${asks} ${place.wide}`;
      return remembered(pools, key, () => make(segment, place));
    },
    joined: (list) => remembered(joints, list.map(({ id }) => id).join(), () => joinedOf(list)),
    givenPool: (segment, tones) => poolOfNodes([givenNode(segment, tones)], true, -1 - segment.index),
  };
}
