import { remembered, rememberedFor } from '../../base';
import { phraseBookOf } from '../../feel';
import type { BarModel } from '../model';
import { staffOf, type Tone } from '../tones';
import { homecomings } from './changes';
import { type Counted, mostOf, share } from './counted';

/** Many plans share a bar's tones, and each list of tones stands in one bar. */
const rhythmOf = rememberedFor((tones: readonly Tone[]): string => tones.map(({ start }) => start).join(' '));
const textOf = rememberedFor((tones: readonly Tone[]): string =>
  tones.map(({ start, midi }) => `${start},${midi}`).join(' '),
);

const heads = new WeakMap<readonly Tone[], string>();
/** The rhythm of a bar without its last beat. */
const headOf = (bar: BarModel, tones: readonly Tone[]): string =>
  remembered(heads, tones, () =>
    tones
      .filter(({ start }) => start < bar.ticks - bar.beat)
      .map(({ start }) => start)
      .join(' '),
  );

function longestHold(tones: readonly Tone[], bar: BarModel): number {
  let longest = 0;
  let from = 0;
  for (const tone of tones) {
    longest = Math.max(longest, tone.duration, tone.start - from);
    from = tone.start + tone.duration;
  }
  return Math.max(longest, bar.ticks - from);
}

interface Figure {
  readonly whole: string;
  readonly head: string;
}

const figures = new WeakMap<readonly Tone[], Figure | null>();
const figureOf = (bar: BarModel, tones: readonly Tone[]): Figure | null =>
  remembered(figures, tones, () => figureIn(bar, tones));

/** A bar's rhythm and shape without its last beat, whatever chord it stands on; null where there is no shape. */
function figureIn(bar: BarModel, tones: readonly Tone[]): Figure | null {
  const [first] = tones;
  if (!first || bar.stretches.length !== 1) return null;
  const kept = tones.filter(({ start }) => start < bar.ticks - bar.beat);
  if (kept.length < 2) return null;
  const text = (list: readonly Tone[]) =>
    list.map((tone) => `${tone.start}:${staffOf(tone) - staffOf(first)}`).join(' ');
  return { whole: text(kept), head: text(kept.slice(0, 3)) };
}

/** Share of bars that make a figure known; with more of them it wears (hand-set, by what readers marked highest). */
const ENOUGH = 0.45;

/** What comes back, where the line breathes, and where it is highest. */
export function formCounted({ model, bars, lists, flat, count, walk }: Counted) {
  const rhythms = lists.map(rhythmOf);
  const beginnings = bars.map((bar, index) => headOf(bar, lists[index] ?? []));
  const texts = lists.map(textOf);
  const drawn = bars.flatMap((bar, index) => figureOf(bar, lists[index] ?? []) ?? []);
  const figured = share(mostOf(drawn.map(({ whole }) => whole)), drawn.length);
  const half = Math.floor(count / 2);
  let pasted = 0;
  for (let index = 0; index < half; index += 1) if (texts[index] === texts[index + half]) pasted += 1;
  const seen = new Set<string>();
  let twins = 0;
  for (const text of texts) {
    if (seen.has(text)) twins += 1;
    seen.add(text);
  }
  const time = bars.reduce((all, bar) => all + bar.ticks, 0);
  const silence = time - flat.reduce((all, tone) => all + tone.duration, 0);
  const holds = bars.map((bar, index) => longestHold(lists[index] ?? [], bar) / bar.beat);
  const breaths = holds.filter((beats) => beats >= 1.5).length;
  const stopped = holds.filter((beats) => beats >= 2).length;
  const full = holds.filter((beats) => beats < 1).length;

  let section = 0;
  const places = bars.map((bar, index) => {
    if (bar.opensSection) section = bar.pickup ? index + 1 : index;
    return Math.max(0, index - section) % 4;
  });
  // By place in phrases of four, apart from bars that lead round or come home, where the line leaves a beat one empty at all.
  const empties = bars.slice(0, -1).map((_, index) => ((lists[index]?.[0]?.start ?? 0) > 0 ? 1 : 0));
  const homes = homecomings(model);
  const stray = empties.includes(1)
    ? [0, 1, 2, 3].reduce((all, at) => {
        const here = empties.filter((_, index) => places[index] === at && !homes[bars[index]?.index ?? -1]);
        const empty = here.filter((one) => one === 1).length;
        return all + (at % 2 === 0 ? empty : Math.min(empty, here.length - empty));
      }, 0)
    : 0;

  const heights = lists.map((tones) => Math.max(...tones.map(({ midi }) => midi)));
  const top = Math.max(...heights);
  const topBars = heights.flatMap((height, index) => (height === top ? [index] : []));
  const place = count > 1 ? (topBars[0] ?? 0) / (count - 1) : 1;
  const lastNotes = lists.at(-1) ?? [];

  return {
    pasted: share(pasted, half),
    twins: share(twins, count),
    alikeNeighbours: share(
      texts.filter((text, index) => index > 0 && text === texts[index - 1]).length,
      count,
    ),
    rhythms: share(new Set(rhythms).size, Math.max(4, count)),
    signature: share(mostOf(beginnings), count),
    figureReturns: Math.min(figured, ENOUGH),
    headReturns: Math.min(share(mostOf(drawn.map(({ head }) => head)), drawn.length), ENOUGH),
    wornFigure: Math.max(0, figured - ENOUGH),
    rhymingEnds: count > 1 && lists.at(-2)?.at(-1)?.midi === lastNotes.at(-1)?.midi ? 1 : 0,
    lastBarStuck: mostOf(lastNotes.map(({ midi }) => `${midi}`)) >= 3 ? 1 : 0,
    stops: phraseBookOf(model.request.feel.id).manner === 'walk' ? share(stopped, count) : 0,
    noBreath: count >= 4 && breaths === 0 ? 1 : 0,
    breaths: share(breaths, count),
    topHeld: topBars.length > 1 ? topBars.length - 1 : 0,
    topEarly: count >= 4 ? Math.max(0, 0.45 - place) : 0,
    fuller: Math.max(0, model.request.feel.silence.least - share(silence, time)),
    strayEmpty: share(stray, count),
    crowded: walk ? 0 : Math.max(0, share(full, count) - 0.75),
  };
}
