import { type Performance, type PlayPlace, type PlayStep, secondsAt } from '../core/performance';
import type { Cue, Deck } from './deck';
import type { Leaving } from './synthesis/left';
import type { SegmentHead } from './synthesis/segment';
import type { TakeOver } from './take-over';
import type { Scheduled } from './timeline';

/** Seconds ahead in which what sounds is not cut any more: its successor would not be sure to come in time. */
export const SAFE_AHEAD = 0.1;

/** Seconds after which nothing rings of what was left. */
const LONGEST_RING = 6;

/** Where a step begins that says nothing of it. */
export const beginOf = (step: PlayStep | undefined, index: number): PlayPlace =>
  step?.begins ?? { rung: index, round: 0, playedBar: 0 };

/** A segment's place in the request. */
export interface Place {
  readonly step: number;
  readonly performance: Performance;
  readonly rounds: PlayStep['rounds'];
  readonly firstRound: number;
  /** Where in all that is played the step begins. */
  readonly begins: PlayPlace;
  readonly entered: number;
  /** What was left for it. */
  readonly leaving: Leaving | null;
}

/** A segment with its sound on the deck, at its place in time. */
export interface Playing extends Scheduled {
  readonly cue: Cue;
  readonly leaving: Leaving | null;
}

/** What is left at a tick, with what was left for it while that may still ring. */
export function leavingOf(
  { performance, entered, leaving }: Playing,
  { tick, round, heldAt }: Pick<TakeOver, 'tick' | 'round' | 'heldAt'>,
): Leaving {
  const ticks = tick - entered + round * (performance.end - performance.countIn);
  const before = secondsAt(performance, ticks) < LONGEST_RING ? leaving : null;
  return { performance, tick, round, entered, before, ...(heldAt === undefined ? {} : { heldAt }) };
}

/** The device's time in samples. */
export interface SampleClock {
  readonly now: () => number;
  /** The first sample that can still be scheduled, so many seconds ahead or as few as possible. */
  readonly soon: (ahead?: number) => number;
}

/** What is heard, and what is lined up to follow it without a gap, in order of time. */
export interface LineUp {
  /** Puts a segment, whose cue has been or will be started at `start`, at the end. */
  add(place: Place, segment: Playing['segment'], cue: Cue, start: number): void;
  last(): Playing | undefined;
  /** The segment that sounds at a sample, or the last one. */
  at(sample: number): Playing | undefined;
  /** Lets a segment go on for what sounds at a sample; null where that is too soon. */
  takeOver(place: Place, head: SegmentHead, sample: number): Cue | null;
  /** The same, however late it is: nothing else would sound then. */
  follow(place: Place, head: SegmentHead, sample: number): Cue;
}

export function createLineUp(deck: Deck, { now, soon }: SampleClock): LineUp {
  let line: readonly Playing[] = [];

  const add: LineUp['add'] = (place, { sampleRate, begin, roundLength, total }, cue, start) => {
    line = [
      ...line.filter(({ end }) => end === null || end > now()),
      {
        ...place,
        segment: { sampleRate, begin, roundLength, total },
        start,
        end: total === null ? null : start + total,
        cue,
      },
    ];
  };

  const cutFrom = (sample: number): void => {
    for (const playing of line) {
      playing.cue.cutAt(sample);
    }
    line = line.flatMap((playing) =>
      playing.start < sample ? [{ ...playing, end: Math.min(playing.end ?? sample, sample) }] : [],
    );
  };

  const goOn = (place: Place, head: SegmentHead, cue: Cue, sample: number): Cue => {
    cutFrom(sample);
    add(place, head, cue, sample);
    return cue;
  };

  return {
    add,
    last: () => line.at(-1),
    at: (sample) => line.findLast(({ start }) => start <= sample) ?? line[0],
    takeOver: (place, head, sample) => {
      const cue = deck.load(head);
      if (sample < soon(SAFE_AHEAD)) {
        cue.drop();
        return null;
      }
      cue.startAt(sample);
      if (sample < soon()) {
        // The page was held up in the middle of it: what plays goes on to a later place.
        cue.drop();
        return null;
      }
      return goOn(place, head, cue, sample);
    },
    follow: (place, head, sample) => {
      const cue = deck.load(head);
      cue.startAt(sample);
      return goOn(place, head, cue, sample);
    },
  };
}
