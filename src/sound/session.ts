import { failure, type Result, success } from '../core/base';
import { type Performance, type PlayStep, secondsAt } from '../core/performance';
import { createAlarm } from './alarm';
import type { Audio } from './audio';
import { type Cue, createDeck } from './deck';
import { feed } from './feeding';
import type { Heads } from './heads';
import { beginOf, createLineUp, leavingOf, type Place, type Playing, SAFE_AHEAD } from './line-up';
import type { Renderer } from './renderer';
import type { SegmentHead, SegmentRequest } from './synthesis/segment';
import { type TakeOver, takeOverAt } from './take-over';
import { nextRoundEnd, positionIn } from './timeline';
import type { Mix, PlayPosition } from './types';

/** Seconds between scheduling a sound and hearing it: enough for the browser to take it in. */
const AHEAD = 0.06;

/** Seconds in which the browser's own audio thread takes in what the page has scheduled. */
const TAKEN_IN = 0.02;

/** A first sound that comes too late all the same is put off, each time by twice as much. */
const LONGEST_AHEAD = 2;

/** Seconds that another round gives itself to be computed at first; doubled as often as that is not enough. */
const FIRST_MARGIN = 0.3;

/** The same of a change, whose performance is at hand by then: what it takes to compute, behind what is not cut any more. */
const LEAST_MARGIN = SAFE_AHEAD + 0.05;

const NOTHING_TO_PLAY = 'There is nothing to play: the passage has no bars.';

/** Seconds, or else a quarter of the round, before a round's end in which the next one is computed. */
const COMPUTED_EARLY = 8;

/** How the music rises from its first bar on: from a level (0 to 1) to full level. */
export interface Fade {
  readonly from: number;
  readonly seconds: number;
}

/** One request being played, from its first sound to its end. */
export interface SoundSession {
  /** Computes and schedules the first sound; false when the session was closed meanwhile. */
  start(fade: Fade | null): Promise<Result<boolean, string>>;
  change(steps: readonly PlayStep[]): Promise<Result<null, string>>;
  setMix(mix: Mix): void;
  position(): PlayPosition | null;
  /** The device's own time in seconds: it moves as long as the device works. */
  clock(): number;
  /** Falls silent at once; nothing is heard or called any more. */
  close(): void;
}

/** What is computed of a place: it begins where it is entered. */
const requestOf = ({ performance, rounds, entered, leaving }: Place): SegmentRequest => ({
  performance,
  rounds,
  begin: entered,
  leaving,
});

/**
 * @param onEnd is called when the last round of the last step is over; its rings may still be heard. With a
 * sentence, when it ends before that because the next step could not be computed.
 */
export function createSession(
  audio: Audio,
  { renderer, heads }: { readonly renderer: Renderer; readonly heads: Heads },
  request: { readonly steps: readonly PlayStep[]; readonly mix: Mix },
  onEnd: (fault: string | null) => void,
): SoundSession {
  const { context } = audio;
  const { sampleRate } = context;
  const deck = createDeck(audio, request.mix);
  const { callAt, waitForNothing } = createAlarm(audio);
  let steps = request.steps;
  const now = (): number => context.currentTime * sampleRate;
  const soon = (ahead = AHEAD): number => Math.ceil((context.currentTime + ahead) * sampleRate);
  const lineUp = createLineUp(deck, { now, soon });
  let origin = 0;
  let closed = false;
  /** Counts the changes, so that what was computed for an overtaken one is not used. */
  let changes = 0;

  const compute = async (place: Place): Promise<Result<SegmentHead | null, string>> => {
    const result = await renderer.render({ kind: 'head', sampleRate, request: requestOf(place) });
    if (!result.ok) return result;
    return success(result.value?.kind === 'head' ? result.value.head : null);
  };

  /** Brings what comes after the lead while it sounds. */
  const bringRest = (cue: Cue, place: Place, { lead: _, ...head }: SegmentHead, start: number): void => {
    const isOver = (from: number): boolean => closed || cue.isOver(from);
    const device = {
      sampleRate,
      now,
      after: (seconds: number, callback: () => void) => void context.setTimeout(callback, seconds),
    };
    void feed(
      renderer,
      device,
      { cue: { ...cue, isOver }, request: requestOf(place), head, start },
      (fault) => {
        waitForNothing();
        onEnd(fault);
      },
    );
  };

  /** Ends when a sample has been played, or at once when it has been. */
  const endAt = (sample: number, fault: string | null): void => callAt(sample, () => onEnd(fault));

  /** Prepares what comes after the last segment: its next round, the next step, or the end. */
  const followUp = (): void => {
    const last = lineUp.last();
    waitForNothing();
    if (last === undefined) return;
    const goesOn = last.rounds === 'endless' || last.rounds > 1;
    if (goesOn && steps[last.step]?.again !== undefined) {
      // Late in the round, so that a long one is not kept twice for long.
      const { roundLength, begin } = last.segment;
      const early = Math.max(COMPUTED_EARLY * sampleRate, roundLength / 4);
      callAt(last.start - begin + Math.max(0, roundLength - early), () => void nextRound(last));
    } else {
      void nextStep(last);
    }
  };

  /** The round that can follow at an end of the one that sounds, so many seconds from now; null after the last one. */
  const roundAfter = (last: Playing, margin: number): (Place & { readonly at: number }) | null => {
    const end = nextRoundEnd(last, now() + margin * sampleRate);
    const { again, rounds } = steps[last.step] ?? { rounds: 1 };
    if (end === null || again === undefined) return null;
    return {
      step: last.step,
      performance: again(end.ofStep),
      rounds: rounds === 'endless' ? rounds : rounds - end.ofStep,
      firstRound: end.ofStep,
      begins: last.begins,
      entered: 0,
      leaving: leavingOf(last, { tick: last.performance.end, round: end.rounds - 1 }),
      at: end.sample,
    };
  };

  /**
   * Lets the next round, which is another one, take over at an end of the round that sounds. Where it does not come in
   * time, that one is played again: it goes round by itself.
   */
  const nextRound = async (last: Playing): Promise<void> => {
    const atCall = changes;
    for (let margin = FIRST_MARGIN; ; margin *= 2) {
      const place = roundAfter(last, margin);
      const result = place && (await compute(place));
      if (closed || changes !== atCall) return;
      if (!place || !result?.ok) break;
      if (result.value === null || goOn(place, result.value, place.at)) return;
    }
    await nextStep(last);
  };

  /** Prepares the step after the last segment's, or the end. */
  const nextStep = async (last: Playing): Promise<void> => {
    if (last.end === null || last.rounds === 'endless') {
      return;
    }
    const next = steps[last.step + 1];
    if (next === undefined) {
      endAt(last.end, null);
      return;
    }
    const atCall = changes;
    const place: Place = {
      step: last.step + 1,
      performance: next.performance,
      rounds: next.rounds,
      firstRound: 0,
      begins: beginOf(next, last.step + 1),
      entered: 0,
      leaving: leavingOf(last, { tick: last.performance.end, round: last.rounds - 1 }),
    };
    const result = await compute(place);
    if (closed || changes !== atCall) {
      return;
    }
    if (!result.ok) {
      endAt(last.end, result.problem);
      return;
    }
    if (result.value === null) {
      return;
    }
    const start = Math.max(last.end, soon());
    bringRest(lineUp.follow(place, result.value, start), place, result.value, start);
    renderer.giveBack(result.value.lead);
    followUp();
  };

  /** Starts the first segment; again, later, when the page was so busy that its time had passed. */
  const startInTime = (segment: SegmentHead): Cue => {
    for (let ahead = AHEAD; ; ahead *= 2) {
      const cue = deck.load(segment);
      origin = soon(ahead);
      cue.startAt(origin);
      if (now() + TAKEN_IN * sampleRate < origin || ahead >= LONGEST_AHEAD) {
        return cue;
      }
      cue.drop();
    }
  };

  /** Lets a segment go on for what sounds at a sample, and prepares what comes after it; false where that is too soon. */
  const goOn = (place: Place, head: SegmentHead, sample: number): boolean => {
    const cue = lineUp.takeOver(place, head, sample);
    renderer.giveBack(head.lead);
    if (cue === null) return false;
    bringRest(cue, place, head, sample);
    followUp();
    return true;
  };

  /** Where a performance can take over at or after a sample, and for which of what is lined up. */
  const placeAt = (
    sample: number,
    entering: Performance,
    latest: number,
  ): { readonly left: Playing; readonly at: TakeOver } | null => {
    const left = lineUp.at(sample);
    if (left === undefined) return null;
    const at = takeOverAt(left, sample, entering, latest);
    const isStillThere = left.end === null || at.sample <= left.end || lineUp.at(left.end) === left;
    return isStillThere ? { left, at } : placeAt(left.end, entering, latest);
  };

  /** What a change takes to be computed and lined up, in seconds, with what is not cut any more before it. */
  let usual = LEAST_MARGIN;

  /**
   * Tries to hand over at the first place after a margin; false when it took longer than that.
   * @param latest - the sample by which it is to be heard
   */
  const handOver = async (
    next: readonly PlayStep[],
    margin: number,
    latest: number,
    atCall: number,
  ): Promise<Result<boolean, string>> => {
    const entering = next[0];
    const begin = context.currentTime;
    const found = entering && placeAt(now() + margin * sampleRate, entering.performance, latest);
    if (!found) return success(true);
    const { left, at } = found;
    const place: Place = {
      step: 0,
      performance: entering.performance,
      rounds: entering.rounds,
      firstRound: 0,
      begins: beginOf(entering, 0),
      entered: at.entered,
      leaving: leavingOf(left, at),
    };
    const result = await compute(place);
    if (!result.ok) return result;
    if (closed || changes !== atCall || result.value === null) return success(true);
    const before = steps;
    steps = next;
    const taken = goOn(place, result.value, at.sample);
    if (taken) usual = Math.max(LEAST_MARGIN, SAFE_AHEAD + 1.5 * (context.currentTime - begin));
    else steps = before;
    return success(taken);
  };

  return {
    start: async (fade) => {
      const first = steps[0];
      if (first === undefined || first.performance.bars.length === 0) {
        return failure(NOTHING_TO_PLAY);
      }
      const { performance, rounds } = first;
      const place: Place = {
        step: 0,
        performance,
        rounds,
        firstRound: 0,
        begins: beginOf(first, 0),
        entered: 0,
        leaving: null,
      };
      // A long tune begins as soon as a short one, and what was made ready at once.
      const result = await heads.head(sampleRate, requestOf(place));
      if (!result.ok) {
        return result;
      }
      if (closed || result.value === null) {
        return success(false);
      }
      const cue = startInTime(result.value);
      bringRest(cue, place, result.value, origin);
      if (fade !== null) {
        const intro = Math.round(secondsAt(performance, performance.intro) * sampleRate);
        deck.fadeIn(fade.from, fade.seconds, origin - Math.min(0, result.value.begin + intro));
      }
      lineUp.add(place, result.value, cue, origin);
      followUp();
      return success(true);
    },
    change: async (next) => {
      const [first] = next;
      if (first === undefined || first.performance.bars.length === 0) {
        return failure(NOTHING_TO_PLAY);
      }
      changes += 1;
      const atCall = changes;
      const fail = (problem: string): Result<null, string> => {
        // What plays goes on, its next rounds too.
        if (!closed && changes === atCall) followUp();
        return failure(problem);
      };
      const left = lineUp.at(now())?.performance;
      const latest = now() + (left === undefined ? 0 : secondsAt(left, left.beat) * sampleRate);
      // How long a performance takes to be placed is known when it has been: only then a place is chosen for it.
      const placed = await renderer.render({ kind: 'place', sampleRate, performance: first.performance });
      if (!placed.ok) return fail(placed.problem);
      for (let margin = usual; !closed && changes === atCall; margin *= 2) {
        const result = await handOver(next, margin, latest, atCall);
        if (!result.ok) return fail(result.problem);
        if (result.value) break;
      }
      return success(null);
    },
    setMix: deck.setMix,
    clock: () => context.currentTime,
    position: () => {
      const heard = now() - audio.outputDelay() * sampleRate;
      const playing = lineUp.at(heard);
      const isOver = playing === undefined || (playing.end !== null && heard >= playing.end);
      return isOver || heard < playing.start ? null : positionIn(playing, heard);
    },
    close: () => {
      closed = true;
      deck.close();
      waitForNothing();
    },
  };
}
