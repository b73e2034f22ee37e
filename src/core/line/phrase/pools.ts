import { hashText, isCompound } from '../../base';
import type { BarSlot, Contour, MetrePhrases, PhraseModel, Slot, Theme } from '../../feel';
import type { LineModel } from '../model';
import { type Entry, entryKey, entryOf } from '../rules/ends';
import type { Tone } from '../tones';
import { type Cell, cellOf } from './cells';
import type { Ladder } from './ladder';
import type { NodeRules } from './node-cost';
import {
  type Body,
  bodyOf,
  type Draw,
  drawsOf,
  givenNode,
  isPlayable,
  type Link,
  type Node,
  type Stance,
  stanceOf,
} from './nodes';
import type { ModelPlace } from './plan';
import type { Segment } from './segments';
import type { Techniques } from './shown';
import { plainContours, variantsOf } from './variants';

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

/** What lent contours cost beside a theme's own, and other forms of a contour beside itself. */
const BORROWED = 3;
const VARIED = 0.6;
/** One that leads nowhere, beside itself. */
const CUT_OFF = 1.4;
/** What a bar that stands alone costs where a model of several bars could stand. */
const ALONE = 0.8;

/** What part of a bar costs that is not of the theme's own first or second half. */
const ANY_HALF = 1.4;

const isOfHalf = ({ cell }: Draw): boolean => cell.contour.slot !== 'H';

/** The draws of a part of a bar, those of the theme's own halves cheaper than any others. */
function withHalvesFirst(segment: Segment, group: readonly Slot[], draws: readonly Draw[]): readonly Draw[] {
  if (segment.half === null || group.length < 2 || !draws.some(isOfHalf)) return draws;
  return draws.map((draw) => (isOfHalf(draw) ? draw : { ...draw, cost: draw.cost + ANY_HALF }));
}

const partSlot = (segment: Segment): readonly Slot[] => {
  if (segment.beats === 1.5) return ['D', 'Q'];
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

/** What a bar plays under a plan, as far as its choices depend on it. */
export interface Place {
  readonly theme: Theme;
  readonly slot: BarSlot;
  readonly models: ModelPlace | null;
  /** Techniques that the plan hopes for in the bar. */
  readonly asks: Techniques;
  /** Whether other forms of the contours are offered as well: where the book alone left something amiss. */
  readonly wide: boolean;
}

export interface PoolMaker {
  /** The choices of a segment under a plan; remembered. */
  poolOf(segment: Segment, place: Place): Pool;
  /** The choices of several pools of one segment in one. */
  joined(pools: readonly Pool[]): Pool;
  /** The only choice of a segment whose notes are given, or that rests. */
  givenPool(segment: Segment, tones: readonly Tone[]): Pool;
}

/** The books stay as they are, so each theme is varied once. */
const varied = new WeakMap<Theme, Map<string, readonly Contour[]>>();

/** Other forms of the contours of a theme and of the plainest one, each once. */
function variedContours(theme: Theme, plain: Theme | undefined, slots: readonly Slot[]): readonly Contour[] {
  const table = varied.get(theme) ?? new Map<string, readonly Contour[]>();
  varied.set(theme, table);
  const key = `${plain?.id} ${slots.join()}`;
  const known = table.get(key);
  if (known) return known;
  const found = new Map<string, Contour>();
  for (const one of plain && plain !== theme ? [theme, plain] : [theme])
    for (const contour of slots.flatMap((slot) => one.contours[slot] ?? []).flatMap(variantsOf))
      found.set(JSON.stringify([contour.beats, contour.roles, contour.leads]), contour);
  const contours = [...found.values()];
  table.set(key, contours);
  return contours;
}

/** Everything about a segment that its choices depend on, in text. */
function contextOf({ bar, stretch, start, end, fresh, changes, opensSection }: Segment): string {
  const { tonic, mode } = stretch?.key ?? { tonic: { letter: 'C', alteration: 0 }, mode: '' };
  const key = `${tonic.letter}${tonic.alteration}${mode}`;
  return `${stretch?.label} ${key} ${bar.demands.key} ${bar.ticks} ${bar.beat} ${start} ${end} ${fresh} ${changes} ${opensSection}`;
}

/** The table for a text, made when it is first asked for. */
function tableIn<Key, Value>(tables: Map<string, Map<Key, Value>>, text: string): Map<Key, Value> {
  const table = tables.get(text) ?? new Map<Key, Value>();
  tables.set(text, table);
  return table;
}

/** Makes the pools of a request: what each chord, slot and theme leaves to choose from. */
export function poolMaker(
  model: LineModel,
  rules: NodeRules,
  metre: MetrePhrases,
  most = MOST_NODES,
): PoolMaker {
  const { level } = model.request;
  const plain = metre.themes[0];
  const bookTriple = isCompound(metre.metre);
  const pools = new Map<string, Pool>();
  const contexts = new WeakMap<Segment, string>();
  const numbers = new Map<string, number>();

  const contoursIn = (theme: Theme | undefined, slot: Slot): readonly Contour[] =>
    theme?.contours[slot] ?? [];

  function drawsFrom(
    segment: Segment,
    contours: readonly Contour[],
    { asks, wide }: Place,
    about: { readonly link?: (contour: Contour) => Link; readonly borrowed?: boolean } = {},
  ): readonly Draw[] {
    const { ladder } = segment;
    if (!ladder) return [];
    const triple = isCompound(segment.bar.metre) && !bookTriple;
    return contours.flatMap((contour) => {
      const cell = cellIn(segment, contour, triple);
      if (!cell || !isPlayable(model, segment, cell, level, wide)) return [];
      const { link, borrowed = false } = about;
      const stance = stanceIn(segment, ladder, cell);
      return drawsOf(segment, cell, stance, { link: link?.(contour) ?? null, borrowed, asks });
    });
  }

  const stances = new Map<string, Map<Contour, Stance>>();
  function stanceIn(segment: Segment, ladder: Ladder, cell: Cell): Stance {
    const table = tableIn(stances, contextIn(segment));
    const stance = table.get(cell.contour) ?? stanceOf(rules, segment, ladder, cell);
    table.set(cell.contour, stance);
    return stance;
  }

  const bodies = new Map<string, Map<Contour, Map<number, Body>>>();
  /** What one plan and another choose of a contour sounds the same, and is finished once. */
  function nodeIn(segment: Segment, ladder: Ladder, draw: Draw): Node {
    const table = tableIn(bodies, contextIn(segment));
    const known = table.get(draw.cell.contour) ?? new Map<number, Body>();
    table.set(draw.cell.contour, known);
    const [first = 0] = draw.pitches;
    const body = known.get(first) ?? bodyOf(segment, ladder, draw);
    known.set(first, body);
    return { ...body, cost: draw.cost, link: draw.link, borrowed: draw.borrowed };
  }

  function contextIn(segment: Segment): string {
    const context = contexts.get(segment) ?? contextOf(segment);
    contexts.set(segment, context);
    return context;
  }

  const cells = new Map<string, Map<Contour, Cell | null>>();
  function cellIn(segment: Segment, contour: Contour, triple: boolean): Cell | null {
    const { bar, start, end, unit } = segment;
    const key = `${start} ${end} ${unit} ${bar.ticks} ${bar.beat}`;
    const table = cells.get(key) ?? new Map<Contour, Cell | null>();
    cells.set(key, table);
    const known = table.get(contour);
    if (known !== undefined) return known;
    const cell = cellOf(segment, contour, triple);
    table.set(contour, cell);
    return cell;
  }

  /** Whether an aim or the plan asks for more than the book's own bars may have. */
  const asksMore = ({ bar }: Segment, { asks, wide }: Place): boolean =>
    wide ||
    asks !== 0 ||
    bar.demands.density !== null ||
    bar.demands.silence > 0 ||
    bar.demands.wanted.size > 0;

  function ownDraws(segment: Segment, place: Place): readonly Draw[] {
    const { theme, slot } = place;
    const groups: readonly (readonly Slot[])[] = segment.whole
      ? [FALLBACK_SLOTS[slot].slice(0, 1), FALLBACK_SLOTS[slot].slice(1)]
      : [partSlot(segment)];
    const more = asksMore(segment, place);
    const lent = plain !== theme ? plain : undefined;
    const draws: Draw[] = [];
    for (const group of groups) {
      const slots = (one: Theme | undefined) => group.flatMap((from) => contoursIn(one, from));
      draws.push(...withHalvesFirst(segment, group, drawsFrom(segment, slots(theme), place)));
      draws.push(...drawsFrom(segment, slots(lent), place, { borrowed: true }));
      if (draws.length > 0 && !more) break;
    }
    if (more) {
      const forms = drawsFrom(segment, variedContours(theme, plain, groups.flat()), place);
      draws.push(
        ...forms.map((draw) => ({
          ...draw,
          cost: draw.cost + (draw.cell.contour.leads > 0 ? VARIED : CUT_OFF),
        })),
      );
    }
    if (place.wide && !segment.whole)
      draws.push(...plainDraws(segment).map((draw) => ({ ...draw, cost: draw.cost + VARIED })));
    return draws.length > 0 ? draws : plainDraws(segment);
  }

  /** For a segment that no contour of the book fits: within the level's rhythms, else any. */
  function plainDraws(segment: Segment): readonly Draw[] {
    const { ladder } = segment;
    if (!ladder) return [];
    const about = { link: null, borrowed: false, asks: 0 };
    const draws = plainContours('S', metre.metre, segment.beats).flatMap((contour) => {
      const cell = cellOf(segment, contour, isCompound(segment.bar.metre));
      return cell ? drawsOf(segment, cell, stanceIn(segment, ladder, cell), about) : [];
    });
    const within = draws.filter(
      ({ cell }) => cell.level <= level && isPlayable(model, segment, cell, level, true),
    );
    const home = (list: readonly Draw[]) =>
      list.filter(({ pitches }) => !segment.fresh || (pitches[0] ?? 0) % 12 === ladder.home);
    return [home(within), home(draws), within, draws].find((list) => list.length > 0) ?? [];
  }

  const modelsAt = (theme: Theme, place: ModelPlace): readonly PhraseModel[] =>
    theme.models.filter((one) => one.bars.map(({ slot }) => slot).join('+') === place.slots);

  function linkedDraws(segment: Segment, place: Place): readonly Draw[] {
    const { theme, models } = place;
    if (!models || !segment.whole) return [];
    return modelsAt(theme, models).flatMap((one) => {
      const contour = one.bars[models.place];
      const link = { model: one.id, place: models.place, last: models.place === one.bars.length - 1 };
      return contour ? drawsFrom(segment, [contour], place, { link: () => link }) : [];
    });
  }

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
      const number = numbers.get(contour) ?? hashText(contour) | 0;
      numbers.set(contour, number);
      tags[index] = number;
    });
    return { id, nodes, ownSome, tags, entryOf: entryOfNode, entries };
  }

  return {
    poolOf(segment, place) {
      const context = contextIn(segment);
      const { theme, slot, asks } = place;
      const models = segment.whole ? place.models : null;
      const key = `${context} ${segment.whole ? slot : ''} ${theme.id} ${models?.slots} ${models?.place} ${asks} ${place.wide}`;
      const known = pools.get(key);
      if (known) return known;
      const pool = make(segment, place);
      pools.set(key, pool);
      return pool;
    },
    joined(list) {
      const found = new Map<string, Node>();
      for (const { nodes, ownSome } of list)
        for (const node of nodes) {
          const cost = node.cost + (node.borrowed && ownSome ? BORROWED : 0);
          const text = `${node.contour?.id} ${node.first}`;
          if (cost < (found.get(text)?.cost ?? Number.POSITIVE_INFINITY))
            found.set(text, { ...node, cost, link: null });
        }
      return poolOfNodes([...found.values()], true, list[0]?.id ?? 0);
    },
    givenPool: (segment, tones) => poolOfNodes([givenNode(segment, tones)], true, -1 - segment.index),
  };
}
