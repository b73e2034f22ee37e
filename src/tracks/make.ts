import type { Result } from '../core/base';
import { type MakeOptions, makeEach } from './make-each';
import type { TrackAnswer, TrackJob } from './messages';

const NOT_MADE =
  'The track could not be made. Close other pages that need much memory, or make fewer rounds at once, then try again.';

/** A finished track. */
export type Track = NonNullable<TrackAnswer>;

/**
 * Makes tracks one after the other, in a worker of their own; null where they were called off, and then those that were
 * finished are lost. It never throws: a fault is a sentence.
 */
export const makeTracks = (
  jobs: readonly TrackJob[],
  options: MakeOptions,
): Promise<Result<readonly Track[] | null, string>> =>
  makeEach(
    () => new Worker(new URL('./track-worker.ts', import.meta.url), { type: 'module' }),
    jobs,
    NOT_MADE,
    options,
  );
