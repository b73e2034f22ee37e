import { failure, type Result, success } from '../core/base';
import type { Performance } from '../core/performance';
import { createRenderer } from './renderer';
import type { Mix } from './types';

export interface WavOptions {
  /** Samples a second; 44,100 unless said otherwise. */
  readonly sampleRate?: number;
  readonly rounds?: number;
  /** Ends the computing; the result is then a success with null. */
  readonly signal?: AbortSignal;
}

/**
 * A WAV file (16 bits, stereo) of the performance as it is heard, count-in and last ring included, computed in
 * a worker of its own. It never throws: a fault is a sentence.
 */
export async function renderWav(
  performance: Performance,
  mix: Mix,
  options: WavOptions = {},
): Promise<Result<Uint8Array<ArrayBuffer> | null, string>> {
  const renderer = createRenderer();
  const { sampleRate = 44_100, rounds = 1, signal } = options;
  const cancel = (): void => renderer.dispose();
  signal?.addEventListener('abort', cancel);
  try {
    if (signal?.aborted === true) {
      return success(null);
    }
    const result = await renderer.render({ kind: 'wav', sampleRate, performance, mix, rounds });
    if (!result.ok) {
      return failure(result.problem);
    }
    return success(result.value?.kind === 'wav' ? result.value.bytes : null);
  } finally {
    signal?.removeEventListener('abort', cancel);
    renderer.dispose();
  }
}
