import { failure, type Result, success } from '../core/base';
import type { PlayStep } from '../core/performance';
import { createAudio, FAULTS, loadTone } from './audio';
import { watchOutputs } from './outputs';
import { createRenderer } from './renderer';
import { createSession, type Fade, type SoundSession } from './session';
import type { Mix, Player, PlayerState, PlayRequest } from './types';

/** The first music of a page rises slowly, because the listener's volume is unknown; later music begins as struck. */
const FIRST_FADE: Fade = { from: 0.2, seconds: 1.5 };

/** Hz: what most devices run at; the code is warm all the same where one does not. */
const LIKELY_RATE = 48_000;

/** How often a playing device's clock is looked at, in milliseconds. */
const WATCH = 2000;

/** A player that opens the audio device, and loads what it needs for that, with the first call of `play`. */
export function createPlayer(): Player {
  const listeners = new Set<(state: PlayerState) => void>();
  const renderer = createRenderer();
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
    renderer.cancel();
    session?.close();
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
    renderer.warm();
    const opened = await audio.open();
    if (call !== calls) {
      return success(null);
    }
    if (!opened.ok) {
      return fail(opened.problem);
    }
    const { steps, mix } = preparing ?? request;
    const created = createSession(opened.value, renderer, { steps, mix }, (fault) => {
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

  const prepare = ({ performance }: PlayStep): void => {
    if (state.kind === 'stopped' && performance.bars.length > 0) {
      void loadTone();
      const request = { performance, rounds: 1, begin: 0, leaving: null };
      void renderer.render({ kind: 'segment', sampleRate: LIKELY_RATE, request });
    }
  };

  return {
    prepare,
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
