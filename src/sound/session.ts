import { failure, type Result, success } from '../core/base';
import type { PlayStep } from '../core/performance';
import type { Audio } from './audio';
import { type Cue, createDeck } from './deck';
import type { Renderer } from './renderer';
import type { Segment, SegmentRequest } from './synthesis/segment';
import { entryTick, nextBarLine, positionIn, type Scheduled } from './timeline';
import type { Mix, PlayPosition } from './types';

/** Seconds between scheduling a sound and hearing it: enough for the browser to take it in. */
const AHEAD = 0.06;

/** Seconds in which the browser's own audio thread takes in what the page has scheduled. */
const TAKEN_IN = 0.02;

/** As `AHEAD`, where something sounds already and must not be cut before its successor is sure to come in time. */
const SAFE_AHEAD = 0.15;

/** A first sound that comes too late all the same is put off, each time by twice as much. */
const LONGEST_AHEAD = 2;

/** Seconds that a change gives itself to be computed at first; doubled as often as that is not enough. */
const FIRST_MARGIN = 0.3;

const NOTHING_TO_PLAY = 'There is nothing to play: the passage has no bars.';

interface Playing extends Scheduled {
  readonly cue: Cue;
}

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

/**
 * @param onEnd is called when the last round of the last step is over; its rings may still be heard. With a
 * sentence, when it ends before that because the next step could not be computed.
 */
export function createSession(
  audio: Audio,
  renderer: Renderer,
  request: { readonly steps: readonly PlayStep[]; readonly mix: Mix },
  onEnd: (fault: string | null) => void,
): SoundSession {
  const { context } = audio;
  const { sampleRate } = context;
  const deck = createDeck(audio, request.mix);
  let steps = request.steps;
  /** In order of time: what is heard, and what is lined up to follow it without a gap. */
  let line: readonly Playing[] = [];
  let origin = 0;
  let closed = false;
  /** Counts the changes, so that what was computed for an overtaken one is not used. */
  let changes = 0;

  const now = (): number => context.currentTime * sampleRate;
  const soon = (ahead = AHEAD): number => Math.ceil((context.currentTime + ahead) * sampleRate);

  const render = async (segmentRequest: SegmentRequest): Promise<Result<Segment | null, string>> => {
    const result = await renderer.render({ kind: 'segment', sampleRate, request: segmentRequest });
    if (!result.ok) {
      return result;
    }
    return success(result.value?.kind === 'segment' ? result.value.segment : null);
  };

  /** Puts a segment, whose cue has been or will be started at `start`, at the end of the line. */
  const lineUp = (step: number, entered: number, segment: Segment, cue: Cue, start: number): void => {
    const current = steps[step];
    if (current === undefined) {
      return;
    }
    line = [
      ...line.filter(({ end }) => end === null || end > now()),
      {
        step,
        performance: current.performance,
        rounds: current.rounds,
        entered,
        segment: {
          sampleRate,
          begin: segment.begin,
          roundLength: segment.roundLength,
          total: segment.total,
        },
        start,
        end: segment.total === null ? null : start + segment.total,
        cue,
      },
    ];
  };

  /** Ends when a sample has been played, or at once when it has been. */
  const endAt = (sample: number, fault: string | null): void => {
    context.transport.scheduleOnce(
      () => {
        if (!closed) {
          onEnd(fault);
        }
      },
      (Math.max(sample, soon()) - origin) / sampleRate,
    );
  };

  /** Prepares what comes after the last segment: the next step, or the end. */
  const followUp = async (): Promise<void> => {
    const last = line.at(-1);
    context.transport.cancel(0);
    if (last === undefined || last.end === null || last.rounds === 'endless') {
      return;
    }
    const next = steps[last.step + 1];
    if (next === undefined) {
      endAt(last.end, null);
      return;
    }
    const atCall = changes;
    const leaving = {
      performance: last.performance,
      tick: last.performance.end,
      round: last.rounds - 1,
      entered: last.entered,
    };
    const { performance, rounds } = next;
    const result = await render({ performance, rounds, begin: 0, leaving });
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
    lineUp(last.step + 1, 0, result.value, cue, start);
    void followUp();
  };

  /** Starts the first segment; again, later, when the page was so busy that its time had passed. */
  const startInTime = (segment: Segment): Cue => {
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

  /** The segment that sounds at a sample, or the last one. */
  const playingAt = (sample: number): Playing | undefined =>
    line.findLast(({ start }) => start <= sample) ?? line[0];

  const cutFrom = (sample: number): void => {
    for (const playing of line) {
      playing.cue.cutAt(sample);
    }
    line = line.filter(({ start }) => start < sample);
  };

  /** Tries to hand over at the first bar line after a margin; false when it took longer than that. */
  const handOver = async (
    next: readonly PlayStep[],
    margin: number,
    atCall: number,
  ): Promise<Result<boolean, string>> => {
    const leaving = playingAt(now() + margin * sampleRate);
    const entering = next[0];
    if (leaving === undefined || entering === undefined) {
      return success(true);
    }
    const barLine = nextBarLine(leaving, now() + margin * sampleRate);
    const begin = entryTick(leaving.performance, barLine.nextBar, entering.performance);
    const result = await render({
      performance: entering.performance,
      rounds: entering.rounds,
      begin,
      leaving: {
        performance: leaving.performance,
        tick: barLine.tick,
        round: barLine.round,
        entered: leaving.entered,
      },
    });
    if (!result.ok) {
      return result;
    }
    if (closed || changes !== atCall || result.value === null) {
      return success(true);
    }
    const cue = deck.load(result.value);
    if (barLine.sample < soon(SAFE_AHEAD)) {
      cue.drop();
      return success(false);
    }
    cue.startAt(barLine.sample);
    if (barLine.sample < soon()) {
      // The page was held up in the middle of it: what plays goes on to a later bar line.
      cue.drop();
      return success(false);
    }
    cutFrom(barLine.sample);
    steps = next;
    lineUp(0, begin, result.value, cue, barLine.sample);
    void followUp();
    return success(true);
  };

  return {
    start: async (fade) => {
      const first = steps[0];
      if (first === undefined || first.performance.bars.length === 0) {
        return failure(NOTHING_TO_PLAY);
      }
      const { performance, rounds } = first;
      const result = await render({ performance, rounds, begin: 0, leaving: null });
      if (!result.ok) {
        return result;
      }
      if (closed || result.value === null) {
        return success(false);
      }
      const cue = startInTime(result.value);
      if (fade !== null) {
        deck.fadeIn(fade.from, fade.seconds, origin - Math.min(0, result.value.begin));
      }
      context.transport.start(origin / sampleRate);
      lineUp(0, 0, result.value, cue, origin);
      void followUp();
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
      const playing = playingAt(heard);
      if (playing === undefined || heard < playing.start) {
        return null;
      }
      return positionIn(playing, heard);
    },
    close: () => {
      closed = true;
      deck.close();
      context.transport.stop(context.currentTime);
      context.transport.cancel(0);
    },
  };
}
