import type { Contour, Theme } from '../../feel';
import type { Figure } from './figure';
import { likenessOf } from './figure';
import type { ModelPlace } from './layout';
import type { Node } from './nodes';
import type { Pool } from './pools';
import type { Segment } from './segments';
import type { Workshop } from './workshop';

/** The most figures of a theme that plans choose from, and contours of a bar that are joined in pairs. */
const MOST_FIGURES = 40;
const MOST_JOINED = 10;

/** What it costs that two bars were not written as one, and that the second takes up nothing of the first (hand-set). */
const JOINED = 0.8;
const UNRELATED = 0.8;

interface Priced extends Figure {
  readonly cost: number;
}

/** The bar in which a theme first states itself, and the one after it where that is whole and free. */
function statingBars({
  segments,
  route: { firstOf },
}: Pick<Workshop, 'segments' | 'route'>): readonly Segment[] {
  const first = segments.find(({ whole, kept, ladder }) => whole && !kept && ladder !== null);
  const second = first ? segments[firstOf.get(first.bar.index + 1) ?? -1] : undefined;
  if (!first) return [];
  return second?.whole && !second.kept && second.ladder ? [first, second] : [first];
}

/** What a contour that stands alone costs in a pool. */
function pricesIn(pool: Pool): ReadonlyMap<Contour, number> {
  const prices = new Map<Contour, number>();
  for (const { contour, cost, borrowed, link } of pool.nodes)
    if (contour && link === null && contour.tags.length === 0 && !(borrowed && pool.ownSome))
      prices.set(contour, Math.min(cost, prices.get(contour) ?? Number.POSITIVE_INFINITY));
  return prices;
}

/**
 * The figures that a theme can state over the first chords of a chart: the beginnings of its models of several bars, and
 * pairs of bars that suit each other. The cheapest stand first.
 */
export function figuresOf({ pools, ...shop }: Workshop, theme: Theme): readonly Figure[] {
  const [first, second] = statingBars(shop);
  // A tune has its figure in its own bars.
  if (!first || theme.tune) return [];
  const poolAt = (segment: Segment, slot: 'S' | 'A', models: ModelPlace | null) =>
    pools.poolOf(segment, { theme, slot, models, tuneBar: null, asks: 0, wide: false, lends: true });
  const heads = pricesIn(poolAt(first, 'S', null));
  if (!second) return [...heads.keys()].map((one) => ({ first: one, second: null, model: null }));
  const tails = pricesIn(poolAt(second, 'A', null));
  const written = theme.models.flatMap((model): readonly Priced[] => {
    if (model.bars[0]?.slot !== 'S') return [];
    const slots = model.bars.map(({ slot }) => slot).join('+');
    const cheapest = (segment: Segment, slot: 'S' | 'A', place: number) =>
      poolAt(segment, slot, { slots, place })
        .nodes.filter(({ link }) => link?.model === model.id)
        .reduce<Node | null>((best, node) => (best && best.cost <= node.cost ? best : node), null);
    const [head, tail] = [cheapest(first, 'S', 0), cheapest(second, 'A', 1)];
    return head?.contour && tail?.contour
      ? [{ first: head.contour, second: tail.contour, model, cost: head.cost + tail.cost }]
      : [];
  });
  const joined = [...heads].slice(0, MOST_JOINED).flatMap(([one, head]) =>
    [...tails].slice(0, MOST_JOINED).map(([two, tail]): Priced => {
      const likeness = likenessOf(one, two);
      const apart = likeness === 'same' || likeness === 'other' ? UNRELATED : 0;
      return { first: one, second: two, model: null, cost: head + tail + JOINED + apart };
    }),
  );
  return [...written, ...joined].toSorted((one, other) => one.cost - other.cost).slice(0, MOST_FIGURES);
}
