import { hashText, isCompound } from '../../base';
import type { BarSlot, Contour, MetrePhrases, PhraseBook, PhraseModel, Slot, Theme } from '../../feel';
import type { LineModel } from '../model';
import { type Cell, cellOf } from './cells';
import { isPlayable, type Link, type Node, type NodeRules, nodesOf } from './nodes';
import type { ModelPlace } from './plan';
import type { Segment } from './segments';
import { plainContours, variantsOf } from './variants';

/** The nodes that a segment chooses from in one slot. */
export interface Pool {
  readonly id: number;
  readonly nodes: readonly Node[];
  /** By node: a number that stands for its contour, for the plan's tastes. */
  readonly tags: Int32Array;
  /** By node: whether its contour is borrowed. */
  readonly borrowed: readonly boolean[];
  readonly entryOf: Int32Array;
  readonly entries: readonly Beginning[];
}

/** How a node begins, as far as what comes before can tell. */
export interface Beginning {
  readonly midi: number | null;
  /** It begins after a rest. */
  readonly late: boolean;
  readonly model: string | null;
}

/** The most nodes a segment chooses from; the dearest are left out. */
const MOST_NODES = 72;

const partSlot = (segment: Segment): readonly Slot[] => {
  if (segment.beats !== 2) return ['Q'];
  return segment.half === 'first' ? ['H1', 'H'] : segment.half === 'second' ? ['H2', 'H'] : ['H'];
};

const FALLBACK_SLOTS: Readonly<Record<BarSlot, readonly BarSlot[]>> = {
  S: ['S', 'A', 'C'],
  A: ['A', 'S', 'C'],
  L: ['L', 'S'],
  C: ['C', 'A', 'S'],
  T: ['T', 'A', 'S'],
  E: ['E', 'C', 'S'],
};

export interface PoolMaker {
  /** The choices of a segment in a theme and slot; remembered. */
  poolOf(segment: Segment, theme: Theme, slot: BarSlot, models: ModelPlace | null): Pool;
}

/** Makes the pools of a request: what each chord, slot and theme leaves to choose from. */
export function poolMaker(model: LineModel, book: PhraseBook, metre: MetrePhrases): PoolMaker {
  const { level } = model.request;
  const rules: NodeRules = {
    level,
    manner: book.manner,
    blues: book.blues,
    longChromatics: book.chromatics === 'a beat',
    restsOnOne: model.request.feel.bassRole.mayRestOnOne,
  };
  const plain = metre.themes[0];
  const bookTriple = isCompound(metre.metre);
  const pools = new Map<string, Pool>();
  const numbers = new Map<string, number>();

  const contoursIn = (theme: Theme, slot: Slot): readonly Contour[] => theme.contours[slot] ?? [];

  function playable(segment: Segment, contours: readonly Contour[]): Cell[] {
    const triple = isCompound(segment.bar.metre) && !bookTriple;
    return contours.flatMap((contour) => {
      const cell = cellOf(segment, contour, triple);
      return cell && isPlayable(model, segment, cell, level) ? [cell] : [];
    });
  }

  function nodesFrom(
    segment: Segment,
    contours: readonly Contour[],
    link: (contour: Contour) => Link | null,
  ): Node[] {
    const { ladder } = segment;
    if (!ladder) return [];
    return playable(segment, contours).flatMap((cell) =>
      nodesOf(rules, segment, ladder, cell, link(cell.contour)),
    );
  }

  function modelsAt(theme: Theme, place: ModelPlace): readonly PhraseModel[] {
    return theme.models.filter((one) => one.bars.map(({ slot }) => slot).join('+') === place.slots);
  }

  const none = () => null;

  // biome-ignore lint/complexity/noExcessiveCognitiveComplexity: one search, its steps in order
  function ownNodes(segment: Segment, theme: Theme, slot: BarSlot): { nodes: Node[]; borrowed: Node[] } {
    const groups: readonly (readonly Slot[])[] = segment.whole
      ? [FALLBACK_SLOTS[slot].slice(0, 1), FALLBACK_SLOTS[slot].slice(1)]
      : [partSlot(segment)];
    let nodes: Node[] = [];
    let borrowed: Node[] = [];
    for (const group of groups) {
      for (const from of group) nodes = nodes.concat(nodesFrom(segment, contoursIn(theme, from), none));
      if (plain && plain !== theme) {
        for (const from of group)
          borrowed = borrowed.concat(nodesFrom(segment, contoursIn(plain, from), none));
      }
      if (nodes.length + borrowed.length > 0 && !asksMore(segment)) break;
    }
    if (asksMore(segment)) {
      const contours = metre.themes.flatMap((one) =>
        one === theme || one === plain
          ? groups.flat().flatMap((from) => contoursIn(one, from).flatMap(variantsOf))
          : [],
      );
      const known = new Set<string>();
      const different = contours.filter((contour) => {
        const text = JSON.stringify([contour.beats, contour.roles, contour.leads]);
        return !known.has(text) && known.add(text);
      });
      nodes = nodes.concat(
        nodesFrom(segment, different, none).map((node) => ({ ...node, cost: node.cost + 0.6 })),
      );
    }
    if (nodes.length + borrowed.length === 0) nodes = plainNodes(segment);
    return { nodes, borrowed };
  }

  /** Whether an aim asks for more than the book's own bars may have. */
  function asksMore({ bar }: Segment): boolean {
    const { density, silence, wanted } = bar.demands;
    return density !== null || silence > 0 || wanted.size > 0;
  }

  /** Notes for a segment that no contour of the book fits: within the level's rhythms, else any. */
  function plainNodes(segment: Segment): Node[] {
    const { ladder } = segment;
    if (!ladder) return [];
    const cells = plainContours('S', metre.metre, segment.beats).flatMap(
      (contour) => cellOf(segment, contour, false) ?? [],
    );
    const nodes = cells.flatMap((cell) => nodesOf(rules, segment, ladder, cell, null));
    const within = nodes.filter(
      (node) => node.cell.level <= level && isPlayable(model, segment, node.cell, level),
    );
    const home = (list: readonly Node[]) => list.filter((node) => node.first % 12 === ladder.home);
    return [home(within), home(nodes), within, nodes].find((list) => list.length > 0)?.slice() ?? [];
  }

  function make(segment: Segment, theme: Theme, slot: BarSlot, models: ModelPlace | null): Pool {
    const own = ownNodes(segment, theme, slot);
    const linked = models
      ? modelsAt(theme, models).flatMap((one) => {
          const contour = one.bars[models.place];
          const link = { model: one.id, place: models.place, last: models.place === one.bars.length - 1 };
          return contour ? nodesFrom(segment, [contour], () => link) : [];
        })
      : [];
    const all = [
      ...linked.map((node) => ({ node, borrowed: false, extra: 0 })),
      ...own.nodes.map((node) => ({ node, borrowed: false, extra: linked.length > 0 ? 0.8 : 0 })),
      ...own.borrowed.map((node) => ({ node, borrowed: true, extra: 0 })),
    ].map((one) => ({
      ...one,
      node: one.extra > 0 ? { ...one.node, cost: one.node.cost + one.extra } : one.node,
    }));
    const some = all.some(({ borrowed }) => !borrowed);
    const chosen = all
      .sort(
        (one, other) =>
          one.node.cost +
          (one.borrowed && some ? 3 : 0) -
          (other.node.cost + (other.borrowed && some ? 3 : 0)),
      )
      .slice(0, MOST_NODES + linked.length);
    return poolOfNodes(chosen);
  }

  function poolOfNodes(chosen: readonly { node: Node; borrowed: boolean }[]): Pool {
    const entries: Beginning[] = [];
    const byText = new Map<string, number>();
    const entryOf = new Int32Array(chosen.length);
    const tags = new Int32Array(chosen.length);
    chosen.forEach(({ node }, index) => {
      const goesOn = node.link && node.link.place > 0 ? node.link.model : null;
      const late = node.late;
      const beginning: Beginning = { midi: node.first, late, model: goesOn };
      const text = `${beginning.midi} ${beginning.late} ${beginning.model}`;
      const known = byText.get(text);
      if (known === undefined) {
        byText.set(text, entries.length);
        entryOf[index] = entries.length;
        entries.push(beginning);
      } else entryOf[index] = known;
      const { id } = node.cell.contour;
      const number = numbers.get(id) ?? hashText(id) | 0;
      numbers.set(id, number);
      tags[index] = number;
    });
    return {
      id: pools.size,
      nodes: chosen.map(({ node }) => node),
      borrowed: chosen.map(({ borrowed }) => borrowed),
      tags,
      entryOf,
      entries,
    };
  }

  return {
    poolOf(segment, theme, slot, models) {
      const { bar, stretch } = segment;
      const { tonic, mode } = stretch?.key ?? { tonic: { letter: 'C', alteration: 0 }, mode: '' };
      const key = [
        stretch?.label,
        tonic.letter,
        tonic.alteration,
        mode,
        bar.demands.key,
        bar.ticks,
        bar.beat,
        segment.start,
        segment.end,
        segment.fresh,
        segment.changes,
        segment.opensSection,
        segment.whole ? slot : '',
        theme.id,
        models?.slots,
        models?.place,
      ].join(' ');
      const known = pools.get(key);
      if (known) return known;
      const pool = make(segment, theme, slot, segment.whole ? models : null);
      pools.set(key, pool);
      return pool;
    },
  };
}
