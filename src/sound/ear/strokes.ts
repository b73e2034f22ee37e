import type { Hop } from './hops';

/** A moment at which something may have been struck. */
export interface Stroke {
  /** Seconds from the beginning of the stream. */
  readonly at: number;
  /** How much louder the bands became on average, in decibels. */
  readonly rise: number;
  /** How loud the stroke itself is above the low partials, in decibels below full level. */
  readonly attack: number;
}

/** How much each band counts; the figures are ours, found on the bench. */
const WEIGHTS = [0.8, 1, 1.2, 1.2, 0.8] as const;
const ALL = WEIGHTS.reduce((sum, weight) => sum + weight, 0);

/** A rise of less than this on average is none, in decibels: a string that rings on wavers by half of it; ours. */
const LEAST_RISE = 1.3;

/** A band counts with so many decibels at most, so that one alone makes no stroke. */
const MOST = 24;

/** Hops back to which a hop is compared, the nearest left out: a stroke rises over several. */
const BACK = { nearest: 3, farthest: 15 } as const;

/** Hops in which a stroke comes to its loudest. */
const BEGINS = 6;

/** Hops on either side among which a stroke's rise is the highest. */
const AROUND = 6;

/** Nothing is struck twice within so many seconds. */
const APART = 0.055;

/** Decibels above the quietest that was heard in a band below which a change is noise. */
const ABOVE_FLOOR = 6;

const ABOVE_REST = 6;
const REST_BACK = 8;

/** How fast the quietest is forgotten, in decibels a hop: some two a second. */
const FORGET = 0.005;

/**
 * Looks for strokes as rises of loudness in bands (after J. P. Bello and others, "A tutorial on onset detection in music
 * signals", 2005; that a hop is held against the loudest of some before it is S. Böck's and G. Widmer's, 2013).
 * @param onStroke - is told some hops after it, in order
 */
export function createStrokes(onStroke: (stroke: Stroke) => void) {
  const hops: Hop[] = [];
  const rises: number[] = [];
  const floors = WEIGHTS.map(() => -50);
  let last = Number.NEGATIVE_INFINITY;

  const riseOf = (index: number): number => {
    const hop = hops[index];
    if (!hop) return 0;
    let sum = 0;
    for (const [band, weight] of WEIGHTS.entries()) {
      let rest = -100;
      for (let back = -2; back <= REST_BACK; back += 1)
        rest = Math.max(rest, hops[index - back]?.rest[band] ?? -100);
      const floor = Math.max((floors[band] ?? -100) + ABOVE_FLOOR, rest + ABOVE_REST);
      let before = floor;
      for (let back = BACK.nearest; back <= BACK.farthest; back += 1)
        before = Math.max(before, hops[index - back]?.bands[band] ?? floor);
      sum += weight * Math.min(MOST, Math.max(0, (hop.bands[band] ?? -100) - before));
    }
    return sum / ALL;
  };

  /** When the stroke began: where the bands above the lowest first came half of the way, in decibels, to their loudest. */
  const beginOf = (index: number): number => {
    const loud = (at: number): number => {
      const bands = hops[at]?.bands ?? [];
      return Math.max(bands[2] ?? -100, bands[3] ?? -100, bands[1] ?? -100);
    };
    let top = index;
    for (let at = index - 2; at <= index + 2; at += 1) if (loud(at) > loud(top)) top = at;
    let quiet = loud(top);
    for (let at = top - BEGINS; at < top; at += 1) quiet = Math.min(quiet, loud(at));
    const half = (quiet + loud(top)) / 2;
    let at = top;
    while (at > top - BEGINS && loud(at - 1) >= half) at -= 1;
    const [before, here] = [loud(at - 1), loud(at)];
    const [earlier, now] = [hops[at - 1]?.at ?? 0, hops[at]?.at ?? 0];
    return here > before ? now - ((now - earlier) * Math.max(0, here - half)) / (here - before) : now;
  };

  const attackOf = (index: number): number => {
    let loudest = -100;
    for (let at = index - 2; at <= index + 4; at += 1)
      loudest = Math.max(loudest, hops[at]?.bands[2] ?? -100, hops[at]?.bands[3] ?? -100);
    return loudest;
  };

  return {
    push: (hop: Hop): void => {
      hops.push(hop);
      for (const [band, loud] of hop.bands.entries())
        floors[band] = Math.min(loud, (floors[band] ?? -50) + FORGET);
      rises.push(riseOf(hops.length - 1));
      const looked = hops.length - 1 - AROUND;
      const rise = rises[looked] ?? 0;
      const around = rises.slice(Math.max(0, looked - AROUND));
      if (rise >= LEAST_RISE && rise >= Math.max(...around)) {
        const at = beginOf(looked);
        if (at - last >= APART) {
          last = at;
          onStroke({ at, rise, attack: attackOf(looked) });
        }
      }
      // Only the last of them are looked at again.
      if (hops.length > 400) {
        hops.splice(0, 200);
        rises.splice(0, 200);
      }
    },
  };
}
