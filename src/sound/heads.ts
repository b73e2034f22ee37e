import { type Result, success } from '../core/base';
import type { PlayStep } from '../core/performance';
import type { Renderer } from './renderer';
import type { SegmentHead, SegmentRequest } from './synthesis/segment';

/** Seconds of a head that is remembered at most: longer ones take more memory than they spare waiting. */
const LONGEST = 20;

/** Null where it was cancelled. */
type HeadResult = Result<SegmentHead | null, string>;

/** What music begins with, remembered for the last request at each sample rate: it begins again without being computed. */
export interface Heads {
  head(sampleRate: number, request: SegmentRequest): Promise<HeadResult>;
  /** Forgets what is remembered at other rates, and ends what is computed at them, once the device's own is known. */
  keepOnly(sampleRate: number): void;
  /** Ends whatever the renderer computes, as it does itself, and forgets what was not finished. */
  cancel(): void;
}

/** What a step asks for when it is played from its beginning. */
export const beginningOf = ({ performance, rounds }: PlayStep): SegmentRequest => ({
  performance,
  rounds,
  begin: 0,
  leaving: null,
});

const isSame = (one: SegmentRequest, other: SegmentRequest): boolean =>
  one.performance === other.performance &&
  one.rounds === other.rounds &&
  one.begin === other.begin &&
  one.leaving === other.leaving;

interface Known {
  readonly request: SegmentRequest;
  readonly head: Promise<HeadResult>;
  isFinished: boolean;
}

export function createHeads(renderer: Pick<Renderer, 'render' | 'cancel'>): Heads {
  const known = new Map<number, Known>();

  const compute = async (sampleRate: number, request: SegmentRequest): Promise<HeadResult> => {
    const result = await renderer.render({ kind: 'head', sampleRate, request });
    if (!result.ok) return result;
    return success(result.value?.kind === 'head' ? result.value.head : null);
  };

  const cancel = (): void => {
    for (const [rate, { isFinished }] of [...known]) if (!isFinished) known.delete(rate);
    renderer.cancel();
  };

  return {
    head: (sampleRate, request) => {
      const last = known.get(sampleRate);
      if (last !== undefined && isSame(last.request, request)) return last.head;
      const entry: Known = { request, head: compute(sampleRate, request), isFinished: false };
      known.set(sampleRate, entry);
      void entry.head.then((result) => {
        entry.isFinished = true;
        const isKept = result.ok && result.value !== null && result.value.leadLength <= LONGEST * sampleRate;
        if (!isKept && known.get(sampleRate) === entry) known.delete(sampleRate);
      });
      return entry.head;
    },
    keepOnly: (sampleRate) => {
      const others = [...known].filter(([rate]) => rate !== sampleRate);
      // What is still being computed for another device would only keep this one waiting.
      if (others.some(([, { isFinished }]) => !isFinished)) cancel();
      for (const [rate] of others) known.delete(rate);
    },
    cancel,
  };
}
