import type { Bpm } from '../core/base';
import { type Performance, type PitchedEvent, tickAt } from '../core/performance';
import { sampleAt } from './synthesis/score';
import { entryTick, isRest, nextBarLine, type Scheduled } from './timeline';

/** Where one performance gives way to another. */
export interface TakeOver {
  /** In the device's samples. */
  readonly sample: number;
  /** In the performance that is left, with the rounds that its segment has finished before. */
  readonly tick: number;
  readonly round: number;
  /** The tick at which the new performance is entered. */
  readonly entered: number;
  /** The tempo at which notes go on that are held over the place; each keeps its length where it is left out. */
  readonly heldAt?: Bpm;
}

/**
 * Ticks before a beat at which its notes may be played already: people are up to ten early (`humanise`). The one before
 * on any grid is farther away, however late it is.
 */
const EARLY = 12;

/** Parts of a beat at which the tempo can change; the smaller ones where the next beat would be too late. */
const STEPS = [1, 1 / 2, 1 / 4] as const;

const isBass = (event: { readonly part: string }): event is PitchedEvent => event.part === 'bass';

/** What the bass plays in every round, from a tick on. */
const bassOf = ({ events }: Performance, from: number): readonly PitchedEvent[] =>
  events.filter(isBass).filter(({ start }) => start >= from);

/** The ends of two rounds that are the same music: what the one is the rest of, the other may have the beginning of. */
interface SameMusic {
  readonly leaving: readonly PitchedEvent[];
  readonly entering: readonly PitchedEvent[];
}

/** What both play, where the one goes on in the same bars with the same notes as the other; else null. */
function sameMusic(leaving: Performance, entering: Performance, rest: boolean): SameMusic | null {
  const [one, other] = [leaving, entering].map(({ bars, countIn }) =>
    bars.filter(({ start }) => start >= countIn),
  );
  if (!one || !other || leaving.beat !== entering.beat) return null;
  const skipped = other.length - one.length;
  if (skipped < 0 || (skipped > 0 && !rest)) return null;
  const sameBars = one.every(({ bar, start, duration }, index) => {
    const there = other[skipped + index];
    return (
      there?.bar === bar && there.duration === duration && entering.end - there.start === leaving.end - start
    );
  });
  const [own, all] = [bassOf(leaving, leaving.countIn), bassOf(entering, entering.countIn)];
  const same = all.slice(all.length - own.length);
  const sameNotes =
    own.length <= all.length &&
    (own.length === all.length || rest) &&
    own.every(({ midi, muted }, index) => same[index]?.midi === midi && same[index]?.muted === muted);
  return sameBars && sameNotes ? { leaving: own, entering: same } : null;
}

/** Every step of the beat: in what sounds once before the round, in its bars and what comes after them, and the end. */
function* steps({ countIn, bars, end }: Performance, step: number): Generator<number> {
  for (let tick = countIn % step; tick < countIn; tick += step) yield tick;
  let line: number = countIn;
  for (const bar of bars) {
    for (let tick: number = bar.start; tick < bar.start + bar.duration; tick += step)
      if (tick >= countIn) yield tick;
    line = Math.max(line, bar.start + bar.duration);
  }
  for (let tick = line; tick < end; tick += step) yield tick;
  yield end;
}

const struckFrom = (notes: readonly PitchedEvent[], tick: number): number =>
  notes.filter(({ start }) => start >= tick).length;

/** The first step of the beat that can be met and parts no note from its beat: each is struck once, here or there. */
function nextStep(
  scheduled: Scheduled,
  sample: number,
  entering: Performance,
  same: SameMusic,
  step: number,
): TakeOver | null {
  const { performance, segment, start } = scheduled;
  const { begin, roundLength, sampleRate } = segment;
  const placeOf = (tick: number): number =>
    sampleAt(performance, tick, sampleRate) - sampleAt(performance, performance.countIn, sampleRate);
  const passed = Math.max(sample, start) - start + begin;
  const round = passed < 0 || roundLength <= 0 ? 0 : Math.floor(passed / roundLength);
  const within = passed - round * roundLength;
  const soonest = performance.countIn + tickAt(performance, within / sampleRate) - EARLY;
  for (const tick of steps(performance, step)) {
    if (tick < soonest || (tick < performance.countIn && performance.countIn !== entering.countIn)) continue;
    // What belongs to a round never comes before it.
    const isBorder = tick === performance.countIn || tick === performance.end;
    const left = isBorder ? tick : tick - EARLY;
    if (left < 0 || placeOf(left) < within) continue;
    const entered = tick === performance.end ? entering.countIn : entering.end - (performance.end - left);
    if (tick < performance.end && struckFrom(same.leaving, left) !== struckFrom(same.entering, entered))
      continue;
    return {
      sample: start - begin + placeOf(left) + round * roundLength,
      tick: left,
      round,
      entered,
      heldAt: entering.tempo,
    };
  }
  return null;
}

/**
 * Where a new performance can take over at or after a sample of the device's time. At another tempo the same music goes
 * on at a beat, or at a half or a quarter of one where that comes after `latest`; other music does so at the next bar
 * line.
 * @param latest - in the device's samples
 */
export function takeOverAt(
  leaving: Scheduled,
  sample: number,
  entering: Performance,
  latest: number,
): TakeOver {
  const { performance } = leaving;
  const rest = isRest(leaving);
  const same = performance.tempo === entering.tempo ? null : sameMusic(performance, entering, rest);
  if (same !== null) {
    const places = STEPS.map((share) => nextStep(leaving, sample, entering, same, performance.beat * share));
    const place = places.find((each) => each !== null && each.sample <= latest) ?? places[0];
    if (place) return place;
  }
  const line = nextBarLine(leaving, sample);
  return {
    sample: line.sample,
    tick: line.tick,
    round: line.round,
    entered: entryTick(performance, line.nextBar, entering, rest),
  };
}
