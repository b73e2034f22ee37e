import type { Performance } from '../core/performance';
import type { Leaving } from './synthesis/left';
import type { SegmentHead, SegmentRequest, SegmentRest } from './synthesis/segment';
import type { Stems } from './synthesis/stems';
import type { Mix } from './types';

/** What the page asks of the worker that computes sound. */
export type RenderJob<Performed = Performance> =
  | {
      /** Only makes ready what a segment of the performance is made of, which takes most of the time in a long one. */
      readonly kind: 'place';
      readonly sampleRate: number;
      readonly performance: Performed;
    }
  | {
      /** What a segment begins with, or what comes after it where its round is held whole. */
      readonly kind: 'head' | 'rest';
      readonly sampleRate: number;
      readonly request: SegmentRequest<Performed>;
    }
  | {
      readonly kind: 'piece';
      readonly sampleRate: number;
      readonly request: SegmentRequest<Performed>;
      /** Samples after the segment's beginning. */
      readonly from: number;
      readonly length: number;
    }
  | {
      readonly kind: 'wav';
      readonly sampleRate: number;
      readonly performance: Performed;
      readonly mix: Mix;
      readonly rounds: number;
    };

/** A job as it is sent: its performances by their numbers, with those that were not sent before. */
export interface SentJob {
  readonly job: RenderJob<number>;
  readonly performances: readonly (readonly [number, Performance])[];
}

export type RenderAnswer =
  | { readonly kind: 'placed' }
  | { readonly kind: 'head'; readonly head: SegmentHead }
  | { readonly kind: 'rest'; readonly rest: SegmentRest }
  | { readonly kind: 'piece'; readonly piece: Stems }
  | { readonly kind: 'wav'; readonly bytes: Uint8Array<ArrayBuffer> }
  /** A performance of the job is not at hand: the worker is a new one, or has had many since. */
  | { readonly kind: 'unknown' }
  | { readonly kind: 'failed' };

function leavingWith<From, To>(leaving: Leaving<From>, by: (performance: From) => To): Leaving<To> {
  const { performance, before } = leaving;
  return {
    ...leaving,
    performance: by(performance),
    before: before === null ? null : leavingWith(before, by),
  };
}

/** A job with something else in the place of each of its performances. */
export function jobWith<From, To>(job: RenderJob<From>, by: (performance: From) => To): RenderJob<To> {
  if (job.kind === 'place' || job.kind === 'wav') return { ...job, performance: by(job.performance) };
  const { performance, leaving } = job.request;
  return {
    ...job,
    request: {
      ...job.request,
      performance: by(performance),
      leaving: leaving === null ? null : leavingWith(leaving, by),
    },
  };
}
