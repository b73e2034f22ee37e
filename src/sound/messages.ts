import type { Performance } from '../core/performance';
import type { Segment, SegmentHead, SegmentRequest, SegmentRest } from './synthesis/segment';
import type { Mix } from './types';

/** What the page asks of the worker that computes sound. */
export type RenderJob =
  | {
      /** All of a segment, or first what it begins with and then the rest. */
      readonly kind: 'segment' | 'head' | 'rest';
      readonly sampleRate: number;
      readonly request: SegmentRequest;
    }
  | {
      readonly kind: 'wav';
      readonly sampleRate: number;
      readonly performance: Performance;
      readonly mix: Mix;
      readonly rounds: number;
    };

export type RenderAnswer =
  | { readonly kind: 'segment'; readonly segment: Segment }
  | { readonly kind: 'head'; readonly head: SegmentHead }
  | { readonly kind: 'rest'; readonly rest: SegmentRest }
  | { readonly kind: 'wav'; readonly bytes: Uint8Array<ArrayBuffer> }
  | { readonly kind: 'failed' };
