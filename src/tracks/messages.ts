import type { Performance } from '../core/performance';
import type { Mix } from '../sound';
import type { Coding, TrackTags } from './codings';
import type { TrackFile } from './files';

/** What the page asks of the worker that makes tracks. */
export interface TrackJob {
  /** In the order of playing. */
  readonly rounds: readonly Performance[];
  /** The end leads into the beginning. */
  readonly repeats: boolean;
  readonly mix: Mix;
  readonly coding: Coding;
  readonly tags: TrackTags;
}

/** The file with its length in seconds; null where it could not be made. */
export type TrackAnswer = (TrackFile & { readonly seconds: number }) | null;
