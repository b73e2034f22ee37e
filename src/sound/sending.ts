import type { Performance } from '../core/performance';
import { jobWith, type RenderJob, type SentJob } from './messages';

/** Numbers performances, so that each is sent once: of a long one the copy takes as long as seconds of its sound. */
export interface Sender {
  pack(job: RenderJob): SentJob;
  /** The worker has none of them: the next jobs bring theirs along again. */
  forget(): void;
}

export function createSender(): Sender {
  const numbers = new WeakMap<Performance, number>();
  const sent = new Set<number>();
  let last = 0;

  const numberOf = (performance: Performance): number => {
    const known = numbers.get(performance);
    if (known !== undefined) return known;
    last += 1;
    numbers.set(performance, last);
    return last;
  };

  return {
    pack: (job) => {
      const performances: (readonly [number, Performance])[] = [];
      const numbered = jobWith(job, (performance) => {
        const number = numberOf(performance);
        if (!sent.has(number)) performances.push([number, performance]);
        sent.add(number);
        return number;
      });
      return { job: numbered, performances };
    },
    forget: () => sent.clear(),
  };
}

/** How many performances are remembered: those whose rings are heard, and what was heard a moment ago. */
const REMEMBERED = 16;

/** In the worker: what was sent, the last ones of it. */
export interface Received {
  /** The job with its performances; null where one of them is not at hand. */
  unpack(sent: SentJob): RenderJob | null;
}

export function createReceived(most = REMEMBERED): Received {
  const known = new Map<number, Performance>();
  return {
    unpack: ({ job, performances }) => {
      for (const [number, performance] of performances) known.set(number, performance);
      const used = new Map<number, Performance>();
      jobWith(job, (number) => {
        const performance = known.get(number);
        if (performance !== undefined) used.set(number, performance);
        return number;
      });
      for (const [number, performance] of used) {
        known.delete(number);
        known.set(number, performance);
      }
      for (const [number] of known) {
        if (known.size <= most) break;
        known.delete(number);
      }
      try {
        return jobWith(job, (number) => {
          const performance = used.get(number);
          if (performance === undefined) throw new RangeError(`no performance ${number}`);
          return performance;
        });
      } catch {
        return null;
      }
    },
  };
}
