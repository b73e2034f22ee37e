import { rememberedFor, TICKS_PER_QUARTER } from '../../base';
import type { Stretch } from '../harmony';
import { isHome, staffOf, type Tone } from '../tones';
import { homecomings, isTonic, thirdOf, turnedThirds } from './changes';
import { type Counted, share, sum } from './counted';
import { isDrill } from './node-cost';

/** A bar's rhythm and shape, wherever it lies. */
const shapeOf = rememberedFor((tones: readonly Tone[]): string => {
  const [first] = tones;
  return first ? tones.map((tone) => `${tone.start}:${staffOf(tone) - staffOf(first)}`).join(' ') : '';
});

/** Share of bars in which a drill is no more than a figure among others. */
const DRILLS = 0.25;

/** Share of bars of a feel with the kick on all four that may leave beat four empty: the end of a phrase of eight. */
const HOLES_ON_FOUR = 0.125;

/** Notes of the last bar that strike the one before again, where a cadence would go on. */
function flatIn(tones: readonly Tone[], bar: { readonly ticks: number; readonly beat: number }): number {
  return tones.filter((tone, index) => {
    const before = tones[index - 1];
    if (before?.midi !== tone.midi) return false;
    return tone.start >= bar.ticks / 2 || Math.max(before.duration, tone.duration) >= bar.beat;
  }).length;
}

/** Pairs of bars whose second is the first over again, wherever it lies. */
function unansweredIn({ bars, lists, count }: Counted): number {
  if (count < 4) return 0;
  const shapes = lists.map(shapeOf);
  let section = 0;
  const firsts = bars.flatMap((bar, index) => {
    if (bar.opensSection) section = bar.pickup ? index + 1 : index;
    return index >= section &&
      (index - section) % 2 === 0 &&
      index + 1 < count &&
      !bars[index + 1]?.opensSection
      ? [index]
      : [];
  });
  return share(firsts.filter((one) => shapes[one] === shapes[one + 1]).length, firsts.length);
}

/** New chords whose bass note is not heard, and turned thirds that are not. */
function unheardIn({ model, heard, bars }: Counted): { unrooted: number; thirdUntold: number } {
  let [fresh, unrooted, turned, untold] = [0, 0, 0, 0];
  const turns = turnedThirds(model);
  let before: Stretch | undefined;
  for (const stretch of bars.flatMap(({ index, stretches }) => {
    const tones = heard[index] ?? [];
    return stretches.map((one) => ({ one, own: tones.filter((tone) => tone.stretch === one) }));
  })) {
    const { one, own } = stretch;
    if (one.chord && one.label !== before?.label && own.length > 0) {
      fresh += 1;
      if (!own.some(isHome)) unrooted += 1;
    }
    if (turns.has(one)) {
      turned += 1;
      if (!own.some(({ interval }) => interval === thirdOf(one))) untold += 1;
    }
    before = one;
  }
  return { unrooted: share(unrooted, fresh), thirdUntold: share(untold, turned) };
}

/** What the last chord leaves unsaid before the line begins again: less, where it is the tonic. */
function endUntoldIn({ model, lists }: Counted): number {
  const notes = lists.at(-1) ?? [];
  const last = notes.at(-1)?.stretch ?? null;
  const third = last ? thirdOf(last) : null;
  if (model.request.level < 2 || last === null || third === null) return 0;
  if (notes.some((tone) => tone.stretch === last && tone.interval === third)) return 0;
  return isTonic(last) ? 0.4 : 1;
}

/** Whether the second pair of bars is the first over again, wherever it lies. */
function isWorn({ lists, count }: Counted): boolean {
  if (count < 4) return false;
  const [one, two, three, four] = lists.slice(0, 4).map(shapeOf);
  return one === three && two === four;
}

/** The lowest third that is not thick when it is held: C2 (common practice, no source). */
const CLEAR_THIRD = 36;

const lowThirdsIn = (tones: readonly Tone[]): number =>
  tones.filter(({ interval, midi, duration }, index) => {
    const held = duration >= TICKS_PER_QUARTER || tones[index - 1]?.midi === midi;
    return (interval === 3 || interval === 4) && midi < CLEAR_THIRD && held;
  }).length;

const isSixth = (tone: Tone, before: Tone | undefined): boolean =>
  before !== undefined && [8, 9].includes(Math.abs(tone.midi - before.midi));

/** Whether a tune answers itself, and whether the chords tell what they are. */
export function tuneCounted(counted: Counted) {
  const { model, bars, lists, flat, count, walk } = counted;
  const { level, feel } = model.request;
  const { mayPump } = feel.bassRole;
  const lastBar = bars.at(-1);
  const homes = homecomings(model);
  const coming = bars.flatMap((bar, index) => (homes[bar.index] ? [lists[index] ?? []] : []));
  const drills = lists.filter((tones) => isDrill(tones.map(({ midi }) => midi))).length;
  const silentFours = bars.filter((bar, index) =>
    (lists[index] ?? []).every(({ start, duration }) => start + duration <= bar.ticks - bar.beat),
  ).length;
  const moves = sum(lists.map((tones) => Math.max(0, tones.length - 1)));
  const sixths = lists.map((tones) => tones.filter((tone, at) => isSixth(tone, tones[at - 1])).length);
  return {
    unanswered: unansweredIn(counted),
    wornCell: isWorn(counted) ? 1 : 0,
    lowThirds: share(sum(lists.map(lowThirdsIn)), flat.length),
    drill: Math.max(0, share(drills, count) - DRILLS),
    flatCadence: lastBar && count >= 2 && level > 0 && !mayPump ? flatIn(lists.at(-1) ?? [], lastBar) : 0,
    homeEmpty: share(coming.filter(([first]) => (first?.start ?? 0) > 0).length, coming.length),
    ...unheardIn(counted),
    endUntold: endUntoldIn(counted),
    silentFours: mayPump ? Math.max(0, share(silentFours, count) - HOLES_ON_FOUR) : 0,
    lurches: walk ? share(sum(sixths), moves) : 0,
  };
}
