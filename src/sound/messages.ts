import type { Performance } from '../core/performance';
import type { Segment, SegmentRequest } from './synthesis/segment';
import type { Mix } from './types';

/** What the page asks of the worker that computes sound. */
export type RenderJob =
  | { readonly kind: 'segment'; readonly sampleRate: number; readonly request: SegmentRequest }
  | {
      readonly kind: 'wav';
      readonly sampleRate: number;
      readonly performance: Performance;
      readonly mix: Mix;
      readonly rounds: number;
    };

export type RenderAnswer =
  | { readonly kind: 'segment'; readonly segment: Segment }
  | { readonly kind: 'wav'; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly kind: 'failed' };
