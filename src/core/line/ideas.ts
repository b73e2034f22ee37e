import { hashText } from '../base';
import { analyseBar } from './analysis';
import { type HeardLine, hearLine, hearWith, struck } from './hearing';
import { type BarModel, barHeading, type LineModel } from './model';
import { type Option, textOfTones, type Workshop, workshopFor } from './options';
import { type BarRhythm, patternOf } from './rhythm';
import { cautionsAround } from './rules/check';
import { entryOf, exitOf } from './rules/ends';
import { isLongWalk } from './shapes';
import { BREACH, meetingCost } from './taste';
import { TECHNIQUE_TABLE } from './techniques/table';
import { writeNotes } from './tones';
import type { Idea, IdeaOffer, LineNotes, LineRequest, Technique } from './types';

/** How many ideas a bar is offered. */
const WANTED = 10;

/** Options that are looked at for each rhythm, so that one rhythm does not crowd out the others. */
const PER_RHYTHM = 8;

/** Rhythms that are looked at on either side: with beat one, and without it. */
const RHYTHMS_A_SIDE = 10;

/** What an idea is mainly about; ideas are dealt out from these heaps in turn. */
type Heap = 'chord' | 'steps' | 'walk' | 'silent chord' | 'silent steps' | 'special';

interface Ranked {
  readonly option: Option;
  readonly cost: number;
  readonly heap: Heap;
  /** What it shares with others: its rhythm, its shape, its pitches. */
  readonly marks: readonly Mark[];
}

interface Mark {
  readonly text: string;
  /** What it costs when an idea with the same mark is dealt already. */
  readonly cost: number;
}

function heapOf(option: Option): Heap {
  const { tones } = option;
  const leap = tones.some(
    (tone, index) => Math.abs(tone.midi - (tones[index - 1]?.midi ?? tone.midi)) === 12,
  );
  const outside = tones.some(
    (tone) => !tone.member && !tone.stretch?.steps.some((step) => step?.halfSteps === tone.interval),
  );
  if (leap || outside) return 'special';
  if (isLongWalk(option.shape)) return 'walk';
  const steps = tones.some((tone) => !tone.member);
  if (option.rhythm.silentOne) return steps ? 'silent steps' : 'silent chord';
  return steps ? 'steps' : 'chord';
}

/** Most notes, fewest notes: an idea should sit beside its neighbours. */
function neighbourCost(model: LineModel, heard: HeardLine, bar: BarModel, option: Option): number {
  let cost = option.cost;
  for (const index of bar.after) {
    const next = model.bars[index];
    const entry = index === bar.index ? option.entry : entryOf(heard[index] ?? []);
    if (next && entry && option.exit) cost += meetingCost(model, bar, option.exit, next, entry);
  }
  for (const index of bar.before) {
    const before = model.bars[index];
    const exit = exitOf(heard[index] ?? []);
    if (before && index !== bar.index && exit && option.entry) {
      cost += meetingCost(model, before, exit, bar, option.entry);
    }
  }
  const count = option.tones.length;
  for (const index of [...bar.before, ...bar.after]) {
    const other = struck(heard[index] ?? []).length;
    if (index !== bar.index && other > 0 && Math.max(count, other) > 2 * Math.min(count, other))
      cost += BREACH;
  }
  return cost;
}

/** Rhythms spread over the feel's table, as many with beat one as without it. */
function someRhythms(shop: Workshop, bar: BarModel): readonly BarRhythm[] {
  const all = shop.rhythms(bar);
  const spread = [false, true]
    .flatMap((silent) => {
      const side = all.filter((rhythm) => rhythm.silentOne === silent);
      const step = Math.max(1, side.length / RHYTHMS_A_SIDE);
      return Array.from(
        { length: Math.min(side.length, RHYTHMS_A_SIDE) },
        (_, index) => side[Math.floor(index * step)],
      );
    })
    .filter((rhythm) => rhythm !== undefined);
  return [...spread, ...shop.runs(bar)];
}

/** The cheapest of each heap within one rhythm. */
function bestOfHeaps(options: readonly Option[]): readonly (readonly [Heap, Option])[] {
  const counts = new Map<Heap, number>();
  return options.flatMap((option) => {
    const heap = heapOf(option);
    const count = counts.get(heap) ?? 0;
    counts.set(heap, count + 1);
    return count < PER_RHYTHM ? [[heap, option] as const] : [];
  });
}

function rankedOptions(shop: Workshop, heard: HeardLine, bar: BarModel): readonly Ranked[] {
  return someRhythms(shop, bar).flatMap((rhythm) =>
    bestOfHeaps(shop.options(bar, rhythm)).map(([heap, option]) => ({
      option,
      cost: neighbourCost(shop.model, heard, bar, option),
      heap,
      marks: [
        { text: `rhythm ${patternOf(option.tones)}`, cost: SAME_RHYTHM },
        { text: `shape ${option.shape}`, cost: SAME_SHAPE },
        { text: `pitches ${option.tones.map((tone) => tone.midi).join(' ')}`, cost: SAME_PITCHES },
      ],
    })),
  );
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
  'walk',
  'silent chord',
];

/** What a rhythm or a shape that was dealt already costs when it comes again. */
const SAME_RHYTHM = 1.5;
const SAME_SHAPE = 2;
const SAME_PITCHES = 4;

/** Deals the ideas out: in turn from each heap, the cheapest that is unlike those already dealt. */
function deal(ranked: readonly Ranked[], wanted: number): readonly Option[] {
  const heaps = new Map<Heap, Ranked[]>();
  for (const one of ranked) {
    const heap = heaps.get(one.heap);
    if (heap) heap.push(one);
    else heaps.set(one.heap, [one]);
  }
  const dealt = new Map<string, Option>();
  const seen = new Map<string, number>();
  const costNow = ({ cost, marks }: Ranked): number =>
    marks.reduce((sum, mark) => sum + mark.cost * (seen.get(mark.text) ?? 0), cost);
  for (let turn = 0; dealt.size < wanted && turn < wanted * DEAL.length; turn += 1) {
    const heap = heaps.get(DEAL[turn % DEAL.length] ?? 'chord') ?? [];
    const best = cheapestOf(heap, costNow);
    if (!best) continue;
    heap.splice(heap.indexOf(best), 1);
    const text = textOfTones(best.option.tones);
    if (dealt.has(text)) continue;
    dealt.set(text, best.option);
    for (const mark of best.marks) seen.set(mark.text, (seen.get(mark.text) ?? 0) + 1);
  }
  return [...dealt.values()];
}

function cheapestOf(heap: readonly Ranked[], costOf: (one: Ranked) => number): Ranked | null {
  let best: Ranked | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const one of heap) {
    const cost = costOf(one);
    if (cost < least) [best, least] = [one, cost];
  }
  return best;
}

function ideaOf(model: LineModel, heard: HeardLine, index: number, option: Option): Idea {
  const notes = writeNotes(option.tones);
  const bar = model.bars[index];
  const line = hearWith(model, heard, index, notes);
  const analysis = analyseBar(model, line, index);
  const [caution] = cautionsAround(model, line, index);
  const reason = caution ? `${analysis.reason.slice(0, -1)}; ${caution}.` : analysis.reason;
  return {
    id: `idea-${hashText(`${bar?.ticks} ${textOfTones(option.tones)}`).toString(36)}`,
    notes,
    analysis: { ...analysis, reason },
  };
}

const isAllowed = (bar: BarModel, technique: Technique): boolean =>
  TECHNIQUE_TABLE[technique].always || bar.demands.techniques.has(technique);

/** Neighbours that have no notes yet are imagined with the root of their first chord. */
function imagined(model: LineModel, shop: Workshop, heard: HeardLine, barIndex: number): HeardLine {
  const bar = model.bars[barIndex];
  let line = heard;
  for (const index of bar?.after ?? []) {
    const next = model.bars[index];
    if (!next || index === barIndex || (heard[index]?.length ?? 0) > 0) continue;
    const rhythm = shop.rhythms(next).find((one) => !one.silentOne);
    const option = rhythm && shop.options(next, rhythm)[0];
    if (option) line = hearWith(model, line, index, writeNotes(option.tones));
  }
  return line;
}

/** Fewer ideas than this are explained. */
const USUAL = 8;

/** Why a bar has no ideas at all. */
function withoutIdeas(model: LineModel, barIndex: number): string {
  const bar = model.bars[barIndex];
  if (!bar) return 'The chart has no such bar.';
  const unknown = bar.stretches.find((stretch) => stretch.label.startsWith('? '));
  const place = barHeading(model, barIndex);
  return unknown
    ? `${place}: the chord “${unknown.label.slice(2)}” is not understood, so there is nothing to build an idea on.`
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
  const shop = workshopFor(request);
  // A workshop serves all note names: only what is said of the ideas depends on them.
  const model: LineModel =
    shop.model.request.noteNames === request.noteNames ? shop.model : { ...shop.model, request };
  const bar = model.bars[barIndex];
  if (!bar?.playable) return { ideas: [], remark: withoutIdeas(model, barIndex) };
  const heard = imagined(model, shop, hearLine(model, line), barIndex);
  const ranked = rankedOptions(shop, heard, bar);
  const clean = ranked.filter(({ cost }) => cost < BREACH / 2);
  const dealt = deal(clean, WANTED);
  const more =
    dealt.length < WANTED
      ? deal(
          ranked.filter(({ cost }) => cost >= BREACH / 2),
          WANTED - dealt.length,
        )
      : [];
  const ideas = [...dealt, ...more]
    .map((option) => ideaOf(model, heard, barIndex, option))
    .filter(({ analysis }) => analysis.techniques.every((technique) => isAllowed(bar, technique)));
  return { ideas, remark: remarkOnFew(model, bar, ideas.length) };
}

/** The ideas of {@link ideaOffer} alone. */
export const ideasForBar = (request: LineRequest, line: LineNotes, barIndex: number): readonly Idea[] =>
  ideaOffer(request, line, barIndex).ideas;
