import { type Bpm, ticks } from '../../core/base';
import { type Performance, type PerformanceEvent, tickAt } from '../../core/performance';
import { addVoices, type PlacedPerformance, type PlacedVoice, placePerformance, sampleAt } from './score';
import { type Stem, type Stems, stemOf } from './stems';
import type { Kit } from './voices';

/** What still rings of a performance that is left at a tick. */
export interface Leaving<Performed = Performance> {
  readonly performance: Performed;
  /** From the beginning of the performance; everything struck before it rings on, nothing later is struck. */
  readonly tick: number;
  /** Rounds finished before the one that is left. */
  readonly round: number;
  /** The tick at which that performance was entered, when it was entered in its first round. */
  readonly entered: number;
  /** The tempo at which notes go on that are held over the tick; each keeps its length where it is left out. */
  readonly heldAt?: Bpm;
  /** What was left for it, where that may still ring. */
  readonly before: Leaving<Performed> | null;
}

/** Seconds before its end at which a note is let go already, and a little more: it cannot be made longer any more. */
const LET_GO = 0.03;

/** What was struck in a performance until it was left: in the rounds before, and in the one that was left. */
interface Struck {
  readonly placed: PlacedPerformance;
  readonly once: readonly PlacedVoice[];
  readonly last: readonly PlacedVoice[];
  readonly longest: number;
}

const nameOf = (stem: Stem, start: number): string => `${stem} ${start}`;
const nameOfEvent = (event: PerformanceEvent): string => nameOf(stemOf(event), event.start);

/** The notes that are held over the tick, with the length that is left of them at another tempo. */
function heldOver({ performance, tick, heldAt }: Leaving): ReadonlyMap<PerformanceEvent, number> {
  const held = new Map<PerformanceEvent, number>();
  if (heldAt === undefined || heldAt === performance.tempo) return held;
  const letGo = tickAt(performance, LET_GO);
  const slower = performance.tempo / heldAt;
  for (const event of performance.events) {
    if (event.start >= tick) break;
    const left = event.start + event.duration - tick;
    // A slide keeps its own time: it goes to where its note was to end.
    if (!('midi' in event) || event.glides !== undefined || left <= letGo) continue;
    held.set(event, tick - event.start + Math.max(letGo, left * slower));
  }
  return held;
}

function struckOf(leaving: Leaving, kit: Kit): Struck {
  const { performance } = leaving;
  const placed = placePerformance(performance, kit);
  const asWritten = { placed, once: placed.before, last: placed.within, longest: placed.longest };
  const held = heldOver(leaving);
  if (held.size === 0) return asWritten;
  const names = new Set([...held.keys()].map(nameOfEvent));
  const again = placePerformance(
    {
      ...performance,
      // What is struck together is one sound.
      events: performance.events.flatMap((event): readonly PerformanceEvent[] => {
        if (!names.has(nameOfEvent(event))) return [];
        const duration = held.get(event);
        return [duration === undefined ? event : { ...event, duration: ticks(Math.round(duration)) }];
      }),
    },
    kit,
  );
  const others = (voice: PlacedVoice): boolean => !names.has(nameOf(voice.stem, voice.start));
  return {
    placed,
    once: [...placed.before.filter(others), ...again.before],
    last: [...placed.within.filter(others), ...again.within],
    longest: Math.max(placed.longest, again.longest),
  };
}

/**
 * Adds what still rings of what was struck before a performance was left, and of what was left for it.
 * @param place - the sample of the stems at which it was left; negative where that was before they begin
 */
export function addLeft(stems: Stems, leaving: Leaving, kit: Kit, place: number): void {
  const { placed, once, last, longest } = struckOf(leaving, kit);
  const { sampleRate } = kit;
  const left = sampleAt(leaving.performance, leaving.tick, sampleRate) - placed.countIn;
  const entered = sampleAt(leaving.performance, leaving.entered, sampleRate) - placed.countIn;
  const end = left + leaving.round * placed.round;
  const rounds = Array.from({ length: leaving.round + 1 }, (_, round) => round).filter(
    (round) => (round + 1) * placed.round + longest > end - place,
  );
  const struck = [
    ...(leaving.round === 0 ? once : placed.before).map((voice) => ({ voice, at: voice.at })),
    ...rounds.flatMap((round) =>
      (round === leaving.round ? last : placed.within).map((voice) => ({
        voice,
        at: voice.at + round * placed.round,
      })),
    ),
  ];
  addVoices(
    stems,
    struck
      .filter(({ at }) => at >= entered && at < end)
      .map(({ voice, at }) => ({ voice, at: place + at - end })),
  );
  if (leaving.before !== null) addLeft(stems, leaving.before, kit, place - (end - entered));
}

/** How long something can ring, in samples, so that whatever was struck before has died away after it. */
export function longestRing(leaving: Leaving | null, own: number, kit: Kit): number {
  if (leaving === null) return own;
  return longestRing(leaving.before, Math.max(own, struckOf(leaving, kit).longest), kit);
}
