import { failure, type Result, success } from '../core/base';
import { type PlayStep, secondsAt } from '../core/performance';
import type { Audio } from './audio';
import { type Cue, createDeck } from './deck';
import type { Heads } from './heads';
import { beginOf, createLineUp, leavingOf, type Place, type Playing } from './line-up';
import type { Renderer } from './renderer';
import type { Segment, SegmentHead, SegmentRequest } from './synthesis/segment';
import { entryTick, isRest, nextBarLine, nextRoundEnd, positionIn } from './timeline';
import type { Mix, PlayPosition } from './types';

/** Seconds between scheduling a sound and hearing it: enough for the browser to take it in. */
const AHEAD = 0.06;

/** Seconds in which the browser's own audio thread takes in what the page has scheduled. */
const TAKEN_IN = 0.02;

/** A first sound that comes too late all the same is put off, each time by twice as much. */
const LONGEST_AHEAD = 2;

/** Seconds that a change gives itself to be computed at first; doubled as often as that is not enough. */
const FIRST_MARGIN = 0.3;

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
  let steps = request.steps;
  const now = (): number => context.currentTime * sampleRate;
  const soon = (ahead = AHEAD): number => Math.ceil((context.currentTime + ahead) * sampleRate);
  const lineUp = createLineUp(deck, { now, soon });
  let origin = 0;
  let closed = false;
  /** Counts the changes, so that what was computed for an overtaken one is not used. */
  let changes = 0;

  const render = (kind: 'segment' | 'rest', place: Place) =>
    renderer.render({ kind, sampleRate, request: requestOf(place) });

  const compute = async (place: Place): Promise<Result<Segment | null, string>> => {
    const result = await render('segment', place);
    if (!result.ok) return result;
    return success(result.value?.kind === 'segment' ? result.value.segment : null);
  };

  /** Brings the rest of what has begun while its lead sounds. */
  const bringRest = async (cue: Cue, place: Place): Promise<void> => {
    const result = await render('rest', place);
    if (closed) return;
    if (!result.ok) {
      waitForNothing();
      onEnd(result.problem);
    } else if (result.value?.kind === 'rest') cue.complete(result.value.rest);
  };

  /** What is called next; there is never more than one thing to wait for. */
  let waiting: number | null = null;
  const waitForNothing = (): void => {
    if (waiting !== null) context.clearTimeout(waiting);
    waiting = null;
  };

  /**
   * Calls back when a sample is played, or at once where it has been. Tone's transport would not do: it has looked a tenth
   * of a second ahead already, and what is scheduled before that never comes.
   */
  const callAt = (sample: number, callback: () => void): void => {
    waitForNothing();
    waiting = context.setTimeout(
      () => {
        waiting = null;
        if (!closed) callback();
      },
      Math.max(0, sample / sampleRate - context.currentTime),
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
      leaving: leavingOf(last, last.performance.end, end.rounds - 1),
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
      leaving: leavingOf(last, last.performance.end, last.rounds - 1),
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
    const cue = deck.load(result.value);
    const start = Math.max(last.end, soon());
    cue.startAt(start);
    lineUp.add(place, result.value, cue, start);
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
  const goOn = (place: Place, segment: Segment, sample: number): boolean => {
    const taken = lineUp.takeOver(place, segment, sample);
    if (taken) followUp();
    return taken;
  };

  /** Tries to hand over at the first bar line after a margin; false when it took longer than that. */
  const handOver = async (
    next: readonly PlayStep[],
    margin: number,
    atCall: number,
  ): Promise<Result<boolean, string>> => {
    const leaving = lineUp.at(now() + margin * sampleRate);
    const entering = next[0];
    if (leaving === undefined || entering === undefined) {
      return success(true);
    }
    const barLine = nextBarLine(leaving, now() + margin * sampleRate);
    const place: Place = {
      step: 0,
      performance: entering.performance,
      rounds: entering.rounds,
      firstRound: 0,
      begins: beginOf(entering, 0),
      entered: entryTick(leaving.performance, barLine.nextBar, entering.performance, isRest(leaving)),
      leaving: leavingOf(leaving, barLine.tick, barLine.round),
    };
    const result = await compute(place);
    if (!result.ok) {
      return result;
    }
    if (closed || changes !== atCall || result.value === null) {
      return success(true);
    }
    const before = steps;
    steps = next;
    const taken = goOn(place, result.value, barLine.sample);
    if (!taken) steps = before;
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
      void bringRest(cue, place);
      if (fade !== null) {
        const intro = Math.round(secondsAt(performance, performance.intro) * sampleRate);
        deck.fadeIn(fade.from, fade.seconds, origin - Math.min(0, result.value.begin + intro));
      }
      lineUp.add(place, result.value, cue, origin);
      followUp();
      return success(true);
    },
    change: async (next) => {
      if ((next[0]?.performance.bars.length ?? 0) === 0) {
        return failure(NOTHING_TO_PLAY);
      }
      changes += 1;
      const atCall = changes;
      for (let margin = FIRST_MARGIN; ; margin *= 2) {
        const result = await handOver(next, margin, atCall);
        if (!result.ok) {
          // What plays goes on, its next rounds too.
          if (!closed && changes === atCall) followUp();
          return result;
        }
        if (result.value) {
          return success(null);
        }
      }
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
