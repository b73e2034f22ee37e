import { failure, type Result, success } from '../core/base';
import type { Context, Gain } from './tone';

type Tone = typeof import('./tone');

/** The audio device as Tone sees it. */
export interface Audio {
  readonly tone: Tone;
  readonly context: Context;
  /** All that sounds passes here. */
  readonly output: Gain;
  /** Seconds between the device's clock and what is heard, as far as the browser knows. */
  outputDelay(): number;
}

export const FAULTS = {
  unsupported:
    'This browser cannot play sound from a page. Everything else works; try another browser to listen.',
  device:
    'No sound can be played: the browser found no working audio device. Connect loudspeakers or headphones and press Play again.',
  blocked: 'The browser kept the page silent. Click the page once, then press Play again.',
  lost: 'The sound stopped: the audio device does not answer any more. Check loudspeakers or headphones and press Play again.',
  unplugged:
    'The sound stopped, because the headphones or loudspeakers were taken away. Press Play to go on with what is there now.',
  notLoaded: 'The sound could not be loaded. Check that the page can still be reached and press Play again.',
  paused: 'The browser or the system took the sound away. Press Play to go on.',
} as const;

/** How long the browser may take to let the sound begin, in milliseconds. */
const PATIENCE = 2500;

/** How often a slow start is looked at, in milliseconds. */
const LOOK = 5;

const pause = (milliseconds: number): Promise<void> =>
  new Promise((resolve) => {
    setTimeout(resolve, milliseconds);
  });

/** Fetches the parts of Tone; null when they cannot be had. */
export async function loadTone(): Promise<Tone | null> {
  try {
    // Tone greets in the console unless this is set before it loads.
    Object.assign(globalThis, { TONE_SILENCE_LOGGING: true });
    return await import('./tone');
  } catch {
    return null;
  }
}

/** Whether the device's clock moves: a browser without a device may say that it runs, and stand still. */
async function moves(context: Context): Promise<boolean> {
  const begin = context.currentTime;
  for (let waited = 0; waited < PATIENCE; waited += LOOK) {
    if (context.state === 'running' && context.currentTime > begin) {
      return true;
    }
    await pause(LOOK);
  }
  return false;
}

function openContext({ Context, setContext }: Tone): Context | null {
  try {
    // Tone's own clock is a blob worker, which the page's security policy forbids; the stems need no clock.
    const context = new Context({ clockSource: 'timeout', latencyHint: 'interactive' });
    // Some of Tone's parts ask for a context of their own accord and would open a second device.
    setContext(context);
    return context;
  } catch {
    return null;
  }
}

/**
 * Tone's wrapper of the device does not hand out its delay, which is a fifth of a second and more with wireless
 * headphones; the device itself, which the wrapper holds, does. Without it the playhead is only a little early.
 */
function outputDelay({ rawContext }: Context): number {
  const device: unknown = Reflect.get(rawContext, '_nativeAudioContext') ?? rawContext;
  const delay: unknown =
    typeof device === 'object' && device !== null ? Reflect.get(device, 'outputLatency') : 0;
  return typeof delay === 'number' && Number.isFinite(delay) ? delay : 0;
}

/** Opens the audio device with the first call and wakes it with every call. */
export function createAudio(onPaused: (fault: string) => void): {
  /** @param onDevice - hears the device's sample rate, in Hz, as soon as it is known: before its clock moves */
  readonly open: (onDevice: (sampleRate: number) => void) => Promise<Result<Audio, string>>;
  /** Seconds that the sound comes later than the browser knows; less than 0, where it comes earlier. */
  readonly setFurtherDelay: (seconds: number) => void;
  /** What sounds, as a stream; null where the device was not opened yet. */
  readonly stream: () => MediaStream | null;
  readonly close: () => void;
} {
  let audio: Audio | null = null;
  let furtherDelay = 0;
  let copy: { readonly of: Gain; readonly stream: MediaStream } | null = null;

  const opened = async (): Promise<Result<Audio, string>> => {
    if (typeof AudioContext === 'undefined') {
      return failure(FAULTS.unsupported);
    }
    if (audio !== null && audio.context.state !== 'closed') {
      return success(audio);
    }
    const tone = await loadTone();
    if (tone === null) {
      return failure(FAULTS.notLoaded);
    }
    const context = openContext(tone);
    if (context === null) {
      return failure(FAULTS.device);
    }
    context.on('statechange', (state) => {
      if (state !== 'running') {
        onPaused(FAULTS.paused);
      }
    });
    const output = new tone.Gain({ context, gain: 1 });
    output.connect(context.destination);
    audio = { tone, context, output, outputDelay: () => Math.max(0, outputDelay(context) + furtherDelay) };
    return success(audio);
  };

  return {
    open: async (onDevice) => {
      const ready = await opened();
      if (!ready.ok) {
        return ready;
      }
      const { context } = ready.value;
      onDevice(context.sampleRate);
      // A blocked page's request may stay unanswered for ever: the clock tells, not the answer.
      context.resume().catch(() => {});
      if (await moves(context)) {
        return ready;
      }
      return failure(context.state === 'running' ? FAULTS.device : FAULTS.blocked);
    },
    setFurtherDelay: (seconds) => {
      furtherDelay = seconds;
    },
    stream: () => {
      if (audio === null) return null;
      const { context, output } = audio;
      if (copy?.of !== output) {
        const node = context.createMediaStreamDestination();
        output.connect(node);
        copy = { of: output, stream: node.stream };
      }
      return copy.stream;
    },
    close: () => {
      audio?.context.dispose();
      audio = null;
    },
  };
}
