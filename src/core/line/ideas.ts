import { hashText, remembered, rememberedFor } from '../base';
import type { Chart } from '../chart';
import { analyseBar } from './analysis';
import { pitchesOf } from './demands';
import { type HeardLine, type Hearing, hearAgain, hearWith } from './hearing';
import { type BarModel, barHeading, changesAtStart, type LineModel } from './model';
import { type Alternatives, alternativesFor } from './phrase/alternatives';
import type { Alternative } from './phrase/bar-ways';
import { modelOf } from './read-request';
import { cautionsAround } from './rules/check';
import { stressed } from './stress';
import { TECHNIQUE_TABLE } from './techniques/table';
import { isHome, isOutsideScale, isStep, type Tone, toneOf, writeNotes } from './tones';
import type { Idea, IdeaOffer, LineNotes, LineRequest, Technique } from './types';

/** How many ideas a bar is offered. */
const WANTED = 10;

/** What an idea is mainly about; ideas are dealt out from these heaps in turn. */
type Heap = 'chord' | 'steps' | 'walk' | 'long walk' | 'silent chord' | 'silent steps' | 'special';

interface Ranked extends Alternative {
  readonly heap: Heap;
  /** What it shares with others; null until it is asked for, which it is for few. */
  marks: readonly Mark[] | null;
}

interface Mark {
  readonly text: string;
  /** What it costs when an idea with the same mark is dealt already. */
  readonly cost: number;
}

/** Notes by step in one direction from which on the end of a bar is a walk, and a long one. */
const WALK = 4;
const LONG_WALK = 5;

/** How many notes the walk by step has with which a bar ends. */
function walkOf(tones: readonly Tone[]): number {
  let count = 1;
  for (let index = tones.length - 1; index > 0; index -= 1) {
    const [before, here, after] = [tones[index - 1], tones[index], tones[index + 1]];
    if (!before || !here || !isStep(before.midi, here.midi)) break;
    if (after && (here.midi - before.midi) * (after.midi - here.midi) < 0) break;
    count += 1;
  }
  return count;
}

/** Bars that are asked about again have the same tones. */
const heapOf = rememberedFor((tones: readonly Tone[]): Heap => {
  const leap = tones.some((tone, at) => Math.abs(tone.midi - (tones[at - 1]?.midi ?? tone.midi)) === 12);
  if (leap || tones.some(isOutsideScale)) return 'special';
  const walk = walkOf(tones);
  if (walk >= WALK) return walk >= LONG_WALK ? 'long walk' : 'walk';
  const steps = tones.some((tone) => !tone.member);
  if ((tones[0]?.start ?? 0) > 0) return steps ? 'silent steps' : 'silent chord';
  return steps ? 'steps' : 'chord';
});

const textOfTones = (tones: readonly Tone[]): string =>
  tones.map(({ start, duration, midi }) => `${start} ${duration} ${midi}`).join(', ');

/** What a rhythm, a beginning or a row of pitches that was dealt already costs when it comes again. */
const SAME_RHYTHM = 1.5;
const SAME_HEAD = 1;
const SAME_PITCHES = 6;

const rankedOf = ({ tones, cost, solo }: Alternative): Ranked => ({
  tones,
  cost,
  solo,
  heap: heapOf(tones),
  marks: null,
});

/** What an idea shares with others: its rhythm, its pitches, the notes it begins with. */
function marksOf(one: Ranked): readonly Mark[] {
  const { tones } = one;
  one.marks ??= [
    { text: `rhythm ${tones.map(({ start }) => start).join(' ')}`, cost: SAME_RHYTHM },
    { text: `head ${tones.slice(0, 3).map(({ midi }) => midi)}`, cost: SAME_HEAD },
    { text: `pitches ${tones.map(({ midi }) => midi)}`, cost: SAME_PITCHES },
  ];
  return one.marks;
}

const DEAL: readonly Heap[] = [
  'chord',
  'steps',
  'silent chord',
  'walk',
  'special',
  'chord',
  'silent steps',
  'steps',
  'long walk',
  'silent chord',
];

/** Deals the ideas, which come the cheapest first, out: in turn from each heap, the cheapest that is unlike those already dealt; gives how many there are. */
function* deal(ranked: readonly Ranked[], wanted: number): Generator<Ranked, number> {
  const heaps = new Map<Heap, Ranked[]>();
  for (const one of ranked) remembered(heaps, one.heap, () => []).push(one);
  let dealt = 0;
  const seen = new Map<string, number>();
  const costNow = (one: Ranked): number =>
    marksOf(one).reduce((sum, mark) => sum + mark.cost * (seen.get(mark.text) ?? 0), one.cost);
  for (let turn = 0; dealt < wanted && turn < wanted * DEAL.length; turn += 1) {
    const heap = heaps.get(DEAL[turn % DEAL.length] ?? 'chord') ?? [];
    const best = cheapestOf(heap, costNow);
    if (!best) continue;
    heap.splice(heap.indexOf(best), 1);
    dealt += 1;
    for (const mark of marksOf(best)) seen.set(mark.text, (seen.get(mark.text) ?? 0) + 1);
    yield best;
  }
  return dealt;
}

/** The one of a heap, the cheapest first, that costs least beside those already dealt, which only adds to its cost. */
function cheapestOf(heap: readonly Ranked[], costOf: (one: Ranked) => number): Ranked | null {
  let best: Ranked | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const one of heap) {
    if (one.cost >= least) break;
    const cost = costOf(one);
    if (cost < least) [best, least] = [one, cost];
  }
  return best;
}

function ideaOf(model: LineModel, heard: HeardLine, index: number, { tones }: Alternative): Idea {
  const bar = model.bars[index];
  const notes = bar ? stressed(model, bar, writeNotes(tones)) : [];
  const line = hearWith(model, heard, index, notes);
  const analysis = analyseBar(model, line, index);
  const [caution] = cautionsAround(model, line, index);
  const reason = caution ? `${analysis.reason.slice(0, -1)}; ${caution}.` : analysis.reason;
  return {
    id: `idea-${hashText(`${bar?.ticks} ${textOfTones(tones)}`).toString(36)}`,
    notes,
    analysis: { ...analysis, reason },
  };
}

const isAllowed = (bar: BarModel, technique: Technique): boolean =>
  TECHNIQUE_TABLE[technique].always || bar.demands.techniques.has(technique);

/** Bars that follow and have no notes yet are imagined with the root of their first chord on every beat of it. */
function imagined(model: LineModel, heard: HeardLine, bar: BarModel): HeardLine {
  let line = heard;
  for (const index of bar.after) {
    const next = model.bars[index];
    const [stretch] = next?.stretches ?? [];
    if (!next || !stretch?.home || index === bar.index || (heard[index]?.length ?? 0) > 0) continue;
    const [root] = pitchesOf(stretch.demands.reach, stretch.homeClass);
    if (root === undefined) continue;
    const { home } = stretch;
    const tones = Array.from({ length: Math.max(1, Math.floor(stretch.end / next.beat)) }, (_, beat) =>
      toneOf(next, beat * next.beat, Math.min(next.beat, stretch.end), root, home),
    );
    line = hearWith(model, line, index, writeNotes(tones));
  }
  return line;
}

/** What a chart was last looked at with: a teacher asks for the ideas of one bar after the other. */
interface Shop {
  readonly key: string;
  readonly model: LineModel;
  readonly alternatives: Alternatives;
  /** The line as it was heard last; null before. */
  hearing: Hearing | null;
}
const lastShops = new WeakMap<Chart, Shop>();

/** Everything in a request that may change while the chart stays, in text. */
const keyOfRequest = ({ key, feel, tempo, level, techniques, instrument, hand, aims }: LineRequest): string =>
  JSON.stringify([key, feel.id, tempo, level, [...techniques].sort(), instrument, hand, aims]);

function shopFor(request: LineRequest): Shop {
  const key = keyOfRequest(request);
  const known = lastShops.get(request.chart);
  if (known?.key === key) return known;
  const model = modelOf(request);
  const shop = { key, model, alternatives: alternativesFor(model), hearing: null };
  lastShops.set(request.chart, shop);
  return shop;
}

/** Fewer ideas than this are explained. */
const USUAL = 8;

/** Why a bar has no ideas at all. */
function withoutIdeas(model: LineModel, barIndex: number): string {
  const bar = model.bars[barIndex];
  if (!bar) return 'The chart has no such bar.';
  const unknown = bar.stretches.find((stretch) => stretch.unknown !== null);
  const place = barHeading(model, barIndex);
  return unknown
    ? `${place}: the chord “${unknown.unknown}” is not understood, so there is nothing to build an idea on.`
    : `${place} has no chord, so the bass rests there; write a chord and ideas come with it.`;
}

/** Why a bar has fewer ideas than usual; null where it has as many. */
function remarkOnFew(model: LineModel, bar: BarModel, count: number): string | null {
  if (count >= USUAL) return null;
  const place = barHeading(model, bar.index);
  const { level } = model.request;
  const many = count === 1 ? 'is one idea' : `are ${count} ideas`;
  if (bar.ticks <= bar.beat)
    return `${place} is a single beat long, so there ${many}: more would only crowd the way into the next bar.`;
  if (level === 0)
    return `Level 0 knows only roots and plain rhythms, so there ${many} for ${place.toLowerCase()}.`;
  if (level === 1)
    return `Level 1 knows roots, fifths and octaves in plain rhythms, so there ${many} for ${place.toLowerCase()}.`;
  return `There ${many} for ${place.toLowerCase()}: its chords, range and aims leave no others.`;
}

/**
 * Ideas for one bar of a line, across chord tones, scale steps and space, each with the reason for it; the best
 * beside the present neighbours first of its kind. Where there are none, or fewer than eight, the remark says why.
 */
export function ideaOffer(request: LineRequest, line: LineNotes, barIndex: number): IdeaOffer {
  const shop = shopFor(request);
  // A shop serves all note names: only what is said of the ideas depends on them.
  const model: LineModel =
    shop.model.request.noteNames === request.noteNames ? shop.model : { ...shop.model, request };
  const bar = model.bars[barIndex];
  if (!bar?.playable) return { ideas: [], remark: withoutIdeas(model, barIndex) };
  shop.hearing = hearAgain(shop.model, line, shop.hearing);
  const heard = imagined(shop.model, shop.hearing.heard, bar);
  const grounds = bar.opensSection || changesAtStart(shop.model, bar);
  const ranked = shop.alternatives
    .inBar(heard, bar)
    .filter(({ solo, tones }) => solo === 0 && (!grounds || isGrounded(bar, tones)))
    .map(rankedOf);
  const clean = withEveryHeap(
    ranked,
    ranked.filter(({ cost, tones }) => cost < (isLate(tones) ? OWNED_UP : TOO_DEAR)),
  );
  const found: { readonly cost: number; readonly idea: Idea }[] = [];
  for (const one of dealtInTurn(ranked, clean)) {
    if (found.length === WANTED) break;
    const idea = ideaOf(model, heard, barIndex, one);
    if (idea.analysis.techniques.every((technique) => isAllowed(bar, technique)))
      found.push({ cost: one.cost, idea });
  }
  const ideas = found.sort((one, other) => one.cost - other.cost).map(({ idea }) => idea);
  return { ideas, remark: remarkOnFew(model, bar, ideas.length) };
}

/** The clean ones dealt out, then the others, as many in all as there may be: only those that are asked for are looked for. */
function* dealtInTurn(ranked: readonly Ranked[], clean: readonly Ranked[]): Generator<Ranked, void> {
  const dealt = yield* deal(clean, SURPLUS);
  if (dealt < SURPLUS) yield* deal(others(ranked, clean), SURPLUS - dealt);
}

/** Whether the first chord of a bar has its root or fifth under it somewhere, as a new one should (common practice, no source). */
function isGrounded(bar: BarModel, tones: readonly Tone[]): boolean {
  const [first] = bar.stretches;
  if (!first?.chord) return true;
  const inside = tones.filter(({ start }) => start < first.end);
  return inside.some((tone) => isHome(tone) || tone.interval === 0 || isFifth(tone));
}

const isFifth = ({ member, interval }: Tone): boolean => member && interval >= 6 && interval <= 8;

/** More than are wanted are dealt, as some show what the bar may not. */
const SURPLUS = 12 * WANTED;

/** Beyond this an idea breaks a rule beside its neighbours or misses an aim; a silent beat one may, and owns up to it. */
const TOO_DEAR = 20;
const OWNED_UP = 75;

/** Where no idea of a kind is clean beside the neighbours, two of it are offered that own up to what they break. */
function withEveryHeap(all: readonly Ranked[], clean: readonly Ranked[]): readonly Ranked[] {
  const dear = EVER_OFFERED.flatMap((heap) =>
    clean.some((one) => one.heap === heap) ? [] : all.filter((one) => one.heap === heap).slice(0, 2),
  );
  return [...clean, ...dear];
}

/** Kinds that no bar goes without. */
const EVER_OFFERED: readonly Heap[] = ['chord', 'steps'];

const isLate = (tones: readonly Tone[]): boolean => (tones[0]?.start ?? 0) > 0;

const others = (all: readonly Ranked[], some: readonly Ranked[]): readonly Ranked[] => {
  const left = new Set(some);
  return all.filter((one) => !left.has(one));
};

/** The ideas of {@link ideaOffer} alone. */
export const ideasForBar = (request: LineRequest, line: LineNotes, barIndex: number): readonly Idea[] =>
  ideaOffer(request, line, barIndex).ideas;
