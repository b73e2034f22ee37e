import { isCompound, remembered } from '../../base';
import type { BarSlot, Contour, MetrePhrases, PhraseModel, Slot, Theme, TuneBar } from '../../feel';
import type { LineModel } from '../model';
import { cellOf } from './cells';
import { type Laying, layingFor } from './laying';
import type { ModelPlace } from './layout';
import { beforeChange, different } from './led-on';
import type { NodeRules } from './node-cost';
import { type Draw, drawsOf, isPlayable, type Link } from './nodes';
import type { Segment } from './segments';
import type { Techniques } from './shown';
import { plainContours, variantsOf } from './variants';

/** What other forms of a contour cost beside itself. */
const VARIED = 0.6;
/** One that leads nowhere, beside itself. */
const CUT_OFF = 1.4;
/** What part of a bar costs that is not of the theme's own first or second half. */
const ANY_HALF = 1.4;
/** And what a lent part costs there: two chords in a bar are no reason to leave the rhythm (hand-set). */
const LENT_HALF = 2.5;

const isOfHalf = ({ cell }: Draw): boolean => cell.contour.slot !== 'H';

/** The draws of a part of a bar, those of the theme's own halves cheaper than any others. */
function withHalvesFirst(segment: Segment, group: readonly Slot[], draws: readonly Draw[]): readonly Draw[] {
  if (segment.half === null || group.length < 2 || !draws.some(isOfHalf)) return draws;
  return draws.map((draw) => (isOfHalf(draw) ? draw : { ...draw, cost: draw.cost + ANY_HALF }));
}

/** Lent draws of a part of a bar, dearer where the theme has halves of its own. */
const besideHalves = (segment: Segment, own: readonly Draw[], lent: readonly Draw[]): readonly Draw[] =>
  segment.half !== null && own.some(isOfHalf)
    ? lent.map((draw) => ({ ...draw, cost: draw.cost + LENT_HALF }))
    : lent;

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
  /** Which bar of the theme's tune it plays; null where there is none. */
  readonly tuneBar: number | null;
  /** Techniques that the plan hopes for in the bar. */
  readonly asks: Techniques;
  /** Whether other forms of the contours are offered as well: where the book alone left something amiss. */
  readonly wide: boolean;
  /** Whether the plainest theme lends its bars; where it is chosen from itself, it need not. */
  readonly lends: boolean;
}

/**
 * What the ways of a bar of a tune cost one after the other as they are written, what a bar costs that keeps its rhythm
 * and is another bar's, and what one costs that leaves it (hand-set).
 */
const NEXT_WAY = 0.07;
const SAME_RHYTHM = 0.8;
const OTHER_RHYTHM = 9;

/** The draws of a bar of a tune: its own ways first. */
function inTuneFirst(draws: readonly Draw[], { contours }: TuneBar): readonly Draw[] {
  const [first] = contours;
  return draws.map((draw) => {
    const way = contours.indexOf(draw.cell.contour);
    const apart = draw.cell.contour.grid === first?.grid ? SAME_RHYTHM : OTHER_RHYTHM;
    return { ...draw, cost: draw.cost + (way >= 0 ? NEXT_WAY * way : apart) };
  });
}

/** The books stay as they are, so each theme is varied once. */
const varied = new WeakMap<Theme, Map<string, readonly Contour[]>>();

/** Other forms of the contours of a theme and of the plainest one, each once. */
function variedContours(theme: Theme, plain: Theme | undefined, slots: readonly Slot[]): readonly Contour[] {
  const table = remembered(varied, theme, () => new Map<string, readonly Contour[]>());
  return remembered(table, `${plain?.id} ${slots.join()}`, () => {
    const found = new Map<string, Contour>();
    for (const one of plain && plain !== theme ? [theme, plain] : [theme])
      for (const contour of slots.flatMap((slot) => one.contours[slot] ?? []).flatMap(variantsOf))
        found.set(JSON.stringify([contour.beats, contour.roles, contour.leads]), contour);
    return [...found.values()];
  });
}

const variedBars = new WeakMap<TuneBar, readonly Contour[]>();

/** Other forms of the ways to play a bar of a tune: it keeps its rhythm as far as what is asked for lets it. */
const variedWays = (bar: TuneBar): readonly Contour[] =>
  remembered(variedBars, bar, () =>
    different(bar.contours.flatMap((way) => variantsOf(way).filter((form) => keepsHead(way, form)))),
  );

/** Whether a form strikes nothing that its way does not, and leaves out only what comes first or last. */
function keepsHead(way: Contour, form: Contour): boolean {
  const places = form.beats.map(({ start }) => way.beats.findIndex((beat) => beat.start === start));
  return places.every((place, index) => place >= 0 && place === (places[0] ?? 0) + index);
}

/** What a segment may play, before it is chosen from. */
export interface DrawMaker extends Omit<Laying, 'layIn' | 'stancesIn'> {
  /** Bars of the theme's models of several bars, where the plan has one here. */
  linkedDraws(segment: Segment, place: Place): readonly Draw[];
  /** Bars of the theme that stand alone, with borrowed ones and other forms where they are wanted; never none. */
  ownDraws(segment: Segment, place: Place): readonly Draw[];
}

/** Makes the draws of a request: what the book has for each chord, slot and theme. */
export function drawMaker(model: LineModel, rules: NodeRules, metre: MetrePhrases): DrawMaker {
  const { level } = model.request;
  const { bassRole } = model.request.feel;
  const plain = metre.themes[0];
  const { layIn, stancesIn, ...laying } = layingFor(model, rules, metre);

  const contoursIn = (theme: Theme | undefined, slot: Slot): readonly Contour[] =>
    theme?.contours[slot] ?? [];

  function drawsFrom(
    segment: Segment,
    contours: readonly Contour[],
    { asks }: Place,
    about: { readonly link?: (contour: Contour) => Link; readonly borrowed?: boolean } = {},
  ): readonly Draw[] {
    const { ladder } = segment;
    if (!ladder) return [];
    const { link, borrowed = false } = about;
    const laidFor = layIn(segment, ladder);
    const draws: Draw[] = [];
    for (const contour of contours) {
      const laid = laidFor(contour);
      if (laid)
        draws.push(
          ...drawsOf(segment, laid.cell, laid.stance, { link: link?.(contour) ?? null, borrowed, asks }),
        );
    }
    return draws;
  }

  /** Whether an aim or the plan asks for more than the book's own bars may have. */
  const asksMore = ({ bar }: Segment, { asks, wide }: Place): boolean =>
    wide ||
    asks !== 0 ||
    bar.demands.density !== null ||
    bar.demands.silence > 0 ||
    bar.demands.wanted.size > 0;

  /** The bar of the theme's tune that a segment plays. */
  const tuneBarOf = (segment: Segment, { theme, tuneBar }: Place): TuneBar | undefined =>
    segment.whole && tuneBar !== null ? theme.tune?.[tuneBar] : undefined;

  /** The draws of some slots: the theme's own, and lent ones. */
  function drawsOfSlots(segment: Segment, place: Place, group: readonly Slot[]) {
    const { theme } = place;
    const slots = (one: Theme | undefined) => group.flatMap((from) => contoursIn(one, from));
    const written = drawsFrom(segment, slots(theme), place);
    const bar = tuneBarOf(segment, place);
    const own = bar ? inTuneFirst(written, bar) : withHalvesFirst(segment, group, written);
    const lender = place.lends && plain !== theme ? plain : undefined;
    const lent = drawsFrom(segment, slots(lender), place, { borrowed: true });
    return { own, lent: besideHalves(segment, own, lent) };
  }

  /** Other forms of the contours of some slots; in a bar of a tune first those of its own ways. */
  function formDraws(segment: Segment, place: Place, slots: readonly Slot[]): readonly Draw[] {
    const forms = (contours: readonly Contour[], price: number) =>
      drawsFrom(segment, contours, place).map((draw) => ({
        ...draw,
        cost: draw.cost + price + (draw.cell.contour.leads > 0 ? VARIED : CUT_OFF),
      }));
    const bar = tuneBarOf(segment, place);
    const others = () => variedContours(place.theme, plain, slots);
    if (!bar) return forms(others(), 0);
    return [...forms(variedWays(bar), 0), ...(place.wide ? forms(others(), OTHER_RHYTHM / 2) : [])];
  }

  function ownDraws(segment: Segment, place: Place): readonly Draw[] {
    const { slot } = place;
    const groups: readonly (readonly Slot[])[] = segment.whole
      ? [FALLBACK_SLOTS[slot].slice(0, 1), FALLBACK_SLOTS[slot].slice(1)]
      : [partSlot(segment)];
    const more = asksMore(segment, place);
    const draws: Draw[] = [];
    for (const group of groups) {
      const { own, lent } = drawsOfSlots(segment, place, group);
      draws.push(...own, ...lent);
      // A lift that finds no room over this chord is the theme's statement once more, not a bar of another theme.
      if (own.length > 0 && !more) break;
    }
    if (more) draws.push(...formDraws(segment, place, groups.flat()));
    if (place.wide && !segment.whole)
      draws.push(...plainDraws(segment).map((draw) => ({ ...draw, cost: draw.cost + VARIED })));
    return draws.length > 0 ? draws : plainDraws(segment);
  }

  /** For a segment that no contour of the book fits: within the level's rhythms, else any. */
  function plainDraws(segment: Segment): readonly Draw[] {
    const { ladder } = segment;
    if (!ladder) return [];
    const about = { link: null, borrowed: false, asks: 0 };
    const stanceFor = stancesIn(segment, ladder);
    const draws = plainContours('S', metre.metre, segment.beats).flatMap((contour) => {
      const cell = cellOf(segment, contour, isCompound(segment.bar.metre), bassRole);
      return cell ? drawsOf(segment, cell, stanceFor(cell), about) : [];
    });
    const within = draws.filter(({ cell }) => cell.level <= level && isPlayable(model, segment, cell, level));
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
      const written = one.bars[models.place];
      const contour = written && segment.changes ? beforeChange(written, metre.metre) : written;
      const link = { model: one.id, place: models.place, last: models.place === one.bars.length - 1 };
      return contour ? drawsFrom(segment, [contour], place, { link: () => link }) : [];
    });
  }

  return { ...laying, linkedDraws, ownDraws };
}
