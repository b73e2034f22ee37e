import type { Performance } from '../../core/performance';
import { addVoices, addVoicesRound, placePerformance, type Rounds, renderWindow, sampleAt } from './score';
import { STEMS, type Stems, silence } from './stems';
import type { Kit } from './voices';

/** What still rings of a performance that is left at a tick. */
export interface Leaving {
  readonly performance: Performance;
  /** From the beginning of the performance; everything struck before it rings on, nothing later is struck. */
  readonly tick: number;
  /** Rounds finished before the one that is left. */
  readonly round: number;
  /** The tick at which that performance was entered, when it was entered in its first round. */
  readonly entered: number;
  /** What was left for it, where that may still ring. */
  readonly before: Leaving | null;
}

export interface SegmentRequest {
  readonly performance: Performance;
  readonly rounds: Rounds;
  /** Where to begin, in ticks from the beginning of the performance: 0 plays the count-in. */
  readonly begin: number;
  readonly leaving: Leaving | null;
}

/**
 * A stretch of playing, in three pieces a stem: `lead` sounds once, from the beginning on; then `round` goes
 * round and round from `roundOffset`; `after` rings on when the last round is over. All numbers are samples.
 * Played one after the other without a gap they are, to the sample, the performance with all its rings.
 */
export interface Segment extends SegmentHead, SegmentRest {}

/** What sounds first of a segment, and how long its pieces are: enough to begin with it. */
export interface SegmentHead {
  readonly sampleRate: number;
  /** Samples from the beginning of the first round at which the segment begins; negative in the count-in. */
  readonly begin: number;
  readonly leadLength: number;
  readonly roundLength: number;
  /** Where in the round the lead hands over to it. */
  readonly roundOffset: number;
  /** Samples from the segment's beginning to the end of its last round; null when endless. */
  readonly total: number | null;
  readonly lead: Stems;
}

/** What comes after the lead. */
export interface SegmentRest {
  readonly round: Stems;
  readonly after: Stems | null;
}

/**
 * Adds what still rings of what was struck before a performance was left, and of what was left for it.
 * @param place the sample of the stems at which it was left
 */
function addLeft(stems: Stems, leaving: Leaving, kit: Kit, place: number): void {
  const placed = placePerformance(leaving.performance, kit);
  const { sampleRate } = kit;
  const left = sampleAt(leaving.performance, leaving.tick, sampleRate) - placed.countIn;
  const entered = sampleAt(leaving.performance, leaving.entered, sampleRate) - placed.countIn;
  const end = left + leaving.round * placed.round;
  const struck = [
    ...placed.before.map((voice) => ({ voice, at: voice.at })),
    ...Array.from({ length: leaving.round + 1 }, (_, round) => round)
      .filter((round) => (round + 1) * placed.round + placed.longest > end - place)
      .flatMap((round) => placed.within.map((voice) => ({ voice, at: voice.at + round * placed.round }))),
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
function longestRing(leaving: Leaving | null, own: number, kit: Kit): number {
  if (leaving === null) return own;
  return longestRing(leaving.before, Math.max(own, placePerformance(leaving.performance, kit).longest), kit);
}

/** Where a request begins, in samples from the beginning of the first round, and how long it is. */
function extentOf({ performance, rounds, begin: tick }: SegmentRequest, kit: Kit) {
  const placed = placePerformance(performance, kit);
  const begin = sampleAt(performance, tick, kit.sampleRate) - placed.countIn;
  return { placed, begin, total: rounds === 'endless' ? null : rounds * placed.round - begin };
}

type Extent = ReturnType<typeof extentOf>;

export function renderSegment(request: SegmentRequest, kit: Kit): Segment {
  const extent = extentOf(request, kit);
  return { ...headOf(request, kit, extent, 0), ...restOf(request, extent) };
}

/**
 * The rest of a round is computed while the lead sounds: so the lead is at least this share of the round. A machine that
 * computes less than eight seconds of sound in one would not be ready, and leaves a gap in the first round.
 */
const SHARE_AHEAD = 1 / 8;

/**
 * Computes what sounds first.
 * @param share - of the round, that the lead lasts at least
 */
export const renderHead = (request: SegmentRequest, kit: Kit, share = SHARE_AHEAD): SegmentHead =>
  headOf(request, kit, extentOf(request, kit), share);

function headOf(
  { rounds, leaving }: SegmentRequest,
  kit: Kit,
  { placed, begin, total }: Extent,
  share: number,
): SegmentHead {
  const rings = longestRing(leaving, placed.longest, kit);
  const wanted = Math.max(0, -begin) + Math.max(rings, Math.ceil(placed.round * share));
  const leadLength = total === null ? wanted : Math.min(wanted, total);
  const lead = renderWindow(placed, rounds, begin, begin, begin + leadLength);
  if (leaving !== null) {
    addLeft(lead, leaving, kit, 0);
  }
  return {
    sampleRate: kit.sampleRate,
    begin,
    leadLength,
    roundLength: placed.round,
    roundOffset: placed.round > 0 ? Math.max(0, begin + leadLength) % placed.round : 0,
    total,
    lead,
  };
}

/** Computes what comes after the lead, however long that is. */
export const renderRest = (request: SegmentRequest, kit: Kit): SegmentRest =>
  restOf(request, extentOf(request, kit));

function restOf({ rounds }: SegmentRequest, { placed, begin, total }: Extent): SegmentRest {
  const round = silence(placed.round);
  if (placed.round > 0) addVoicesRound(round, placed.within);
  const end = total === null ? null : begin + total;
  return {
    round,
    after: end === null ? null : renderWindow(placed, rounds, begin, end, end + placed.longest),
  };
}

/** The samples' memory, to be handed over to another thread without copying. */
export const buffersOf = ({ lead, round, after }: Partial<Segment>): ArrayBuffer[] =>
  [lead, round, after].flatMap((stems) =>
    stems === null || stems === undefined
      ? []
      : STEMS.flatMap((stem) => {
          const { buffer } = stems[stem];
          return buffer instanceof ArrayBuffer ? [buffer] : [];
        }),
  );
