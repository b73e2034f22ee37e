import { failure, type Result, success } from '../core/base';
import type { PlayStep } from '../core/performance';
import { createAudio, FAULTS, loadTone } from './audio';
import { beginningOf, createHeads } from './heads';
import { watchOutputs } from './outputs';
import { createRenderer } from './renderer';
import { createSession, type Fade, type SoundSession } from './session';
import type { Mix, Player, PlayerState, PlayRequest } from './types';

/** The first music of a page rises slowly, because the listener's volume is unknown; later music begins as struck. */
const FIRST_FADE: Fade = { from: 0.2, seconds: 1.5 };

/** Hz: what most devices run at. Which of them, and whether any, is known once the device was opened. */
const LIKELY_RATES = [48_000, 44_100] as const;

/** How often a playing device's clock is looked at, in milliseconds. */
const WATCH = 2000;

/** A player that opens the audio device, and loads what it needs for that, with the first call of `play`. */
export function createPlayer(): Player {
  const listeners = new Set<(state: PlayerState) => void>();
  const renderer = createRenderer();
  const heads = createHeads(renderer);
  let deviceRate: number | null = null;
  /** Counts what is made ready, so that an overtaken one goes no further. */
  let preparations = 0;
  let state: PlayerState = { kind: 'stopped', fault: null };
  /** What is asked for while the first sound is being made. */
  let preparing: PlayRequest | null = null;
  let session: SoundSession | null = null;
  let heardBefore = false;
  let endWatch = (): void => {};
  /** Counts the calls of play and stop, so that an overtaken one goes no further. */
  let calls = 0;

  const setState = (next: PlayerState): void => {
    state = next;
    for (const listener of [...listeners]) {
      listener(next);
    }
  };

  const closeSession = (): void => {
    calls += 1;
    preparing = null;
    endWatch();
    // What is made ready beforehand goes on: what is played next may be just that.
    if (session === null) return;
    heads.cancel();
    session.close();
    session = null;
  };

  const silence = (fault: string | null): void => {
    closeSession();
    if (state.kind !== 'stopped' || state.fault !== fault) {
      setState({ kind: 'stopped', fault });
    }
  };

  const audio = createAudio((fault) => {
    if (state.kind === 'playing') {
      silence(fault);
    }
  });

  /** A device that was taken away may say that it runs while its clock stands still. */
  const watch = (current: SoundSession): void => {
    const before = current.clock();
    setTimeout(() => {
      if (session !== current || state.kind !== 'playing') {
        return;
      }
      if (current.clock() === before) {
        silence(FAULTS.lost);
      } else {
        watch(current);
      }
    }, WATCH);
  };

  const fail = (fault: string): Result<null, string> => {
    silence(fault);
    return failure(fault);
  };

  const begin = async (request: PlayRequest): Promise<Result<null, string>> => {
    closeSession();
    const call = calls;
    preparing = request;
    setState({ kind: 'preparing' });
    preparations += 1;
    renderer.warm();
    // The first sound is computed while the device comes to life.
    const opened = await audio.open((sampleRate) => {
      deviceRate = sampleRate;
      heads.keepOnly(sampleRate);
      const [first] = (preparing ?? request).steps;
      if (call === calls && first !== undefined && first.performance.bars.length > 0)
        void heads.head(sampleRate, beginningOf(first));
    });
    if (call !== calls) {
      return success(null);
    }
    if (!opened.ok) {
      return fail(opened.problem);
    }
    const { steps, mix } = preparing ?? request;
    const created = createSession(opened.value, { renderer, heads }, { steps, mix }, (fault) => {
      // The last notes ring on: the session is closed by the next call.
      if (session === created) {
        setState({ kind: 'stopped', fault });
      }
    });
    session = created;
    const started = await created.start(heardBefore ? null : FIRST_FADE);
    if (call !== calls) {
      return success(null);
    }
    if (!started.ok) {
      return fail(started.problem);
    }
    preparing = null;
    heardBefore = true;
    setState({ kind: 'playing' });
    watch(created);
    endWatch = watchOutputs(() => {
      if (state.kind === 'playing') {
        silence(FAULTS.unplugged);
      }
    });
    return success(null);
  };

  const change = async (steps: readonly PlayStep[]): Promise<Result<null, string>> => {
    if (preparing !== null) {
      return begin({ ...preparing, steps });
    }
    if (session === null || state.kind !== 'playing') {
      return success(null);
    }
    return session.change(steps);
  };

  const setMix = (mix: Mix): void => {
    if (preparing !== null) {
      preparing = { ...preparing, mix };
    }
    session?.setMix(mix);
  };

  const prepare = async (step: PlayStep): Promise<void> => {
    if (state.kind !== 'stopped' || step.performance.bars.length === 0) return;
    preparations += 1;
    const preparation = preparations;
    void loadTone();
    for (const sampleRate of deviceRate === null ? LIKELY_RATES : [deviceRate]) {
      await heads.head(sampleRate, beginningOf(step));
      if (preparation !== preparations) return;
    }
  };

  return {
    prepare: (step) => void prepare(step),
    play: begin,
    stop: () => silence(null),
    change,
    setMix,
    setFurtherDelay: audio.setFurtherDelay,
    position: () => (state.kind === 'playing' ? (session?.position() ?? null) : null),
    output: audio.stream,
    state: () => state,
    subscribe: (listener) => {
      listeners.add(listener);
      return () => {
        listeners.delete(listener);
      };
    },
    dispose: () => {
      silence(null);
      listeners.clear();
      renderer.dispose();
      audio.close();
    },
  };
}
