import type { Performance } from '../../core/performance';
import { addLeft, type Leaving, longestRing } from './left';
import { addVoicesRound, placePerformance, type Rounds, renderWindow, sampleAt } from './score';
import { STEMS, type Stems } from './stems';
import type { Kit } from './voices';

export interface SegmentRequest<Performed = Performance> {
  readonly performance: Performed;
  readonly rounds: Rounds;
  /** Where to begin, in ticks from the beginning of the performance: 0 plays the count-in. */
  readonly begin: number;
  readonly leaving: Leaving<Performed> | null;
}

/**
 * A stretch of playing. `lead` sounds once, from the beginning on; then a short `round` goes round and round from
 * `roundOffset`, and `after` rings on when the last round is over. A long one is made piece by piece as it is played. All
 * numbers are samples. One after the other without a gap they are, to the sample, the performance with all its rings.
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

/** What comes after the lead of a round that is held whole. */
export interface SegmentRest {
  readonly round: Stems;
  readonly after: Stems | null;
}

/** Where a request begins, in samples from the beginning of the first round, and how long it is. */
function extentOf({ performance, rounds, begin: tick }: SegmentRequest, kit: Kit) {
  const placed = placePerformance(performance, kit);
  const begin = sampleAt(performance, tick, kit.sampleRate) - placed.countIn;
  return { placed, begin, total: rounds === 'endless' ? null : rounds * placed.round - begin };
}

type Extent = ReturnType<typeof extentOf>;

/** Seconds of the longest round that is held whole: a minute of all stems takes 80 MB. */
const LONGEST_HELD = 20;

/** Seconds of music in the lead of a longer one: enough to make the next piece meanwhile. */
const LEAD = 4;

/** Whether what comes after the lead is made piece by piece. */
export const isInPieces = ({
  roundLength,
  sampleRate,
}: Pick<SegmentHead, 'roundLength' | 'sampleRate'>): boolean => roundLength > LONGEST_HELD * sampleRate;

/**
 * The rest of a round that is held whole is computed while the lead sounds: so the lead is at least this share of it. A
 * machine that computes less than eight seconds of sound in one would not be ready, and leaves a gap in the first round.
 */
const SHARE_AHEAD = 1 / 8;

/**
 * Computes what sounds first.
 * @param share - of a round that is held whole, that the lead lasts at least
 */
export const renderHead = (request: SegmentRequest, kit: Kit, share = SHARE_AHEAD): SegmentHead =>
  headOf(request, kit, extentOf(request, kit), share);

function headOf(
  { rounds, leaving }: SegmentRequest,
  kit: Kit,
  { placed, begin, total }: Extent,
  share: number,
): SegmentHead {
  const { sampleRate } = kit;
  const music = isInPieces({ sampleRate, roundLength: placed.round })
    ? LEAD * sampleRate
    : Math.max(longestRing(leaving, placed.longest, kit), Math.ceil(placed.round * share));
  const wanted = Math.max(0, -begin) + music;
  const leadLength = total === null ? wanted : Math.min(wanted, total);
  const lead = renderWindow(placed, rounds, begin, begin, begin + leadLength, kit.silence(leadLength));
  if (leaving !== null) {
    addLeft(lead, leaving, kit, 0);
  }
  return {
    sampleRate,
    begin,
    leadLength,
    roundLength: placed.round,
    roundOffset: placed.round > 0 ? Math.max(0, begin + leadLength) % placed.round : 0,
    total,
    lead,
  };
}

/**
 * Computes a piece of what comes after the lead of a long round, with all that rings into it.
 * @param from - samples after the segment's beginning
 * @param length - in samples; the last piece is shorter, and one after it has none
 */
export function renderPiece(request: SegmentRequest, kit: Kit, from: number, length: number): Stems {
  const { rounds, leaving } = request;
  const { placed, begin, total } = extentOf(request, kit);
  const end =
    total === null ? null : Math.max(total + placed.longest, longestRing(leaving, placed.longest, kit));
  const to = end === null ? from + length : Math.min(from + length, end);
  const silent = kit.silence(Math.max(0, to - from));
  const piece = renderWindow(placed, rounds, begin, begin + from, begin + to, silent);
  if (leaving !== null) addLeft(piece, leaving, kit, -from);
  return piece;
}

/** Computes what comes after the lead of a round that is held whole, however long that is. */
export const renderRest = (request: SegmentRequest, kit: Kit): SegmentRest =>
  restOf(request, kit, extentOf(request, kit));

function restOf({ rounds }: SegmentRequest, kit: Kit, { placed, begin, total }: Extent): SegmentRest {
  const round = kit.silence(placed.round);
  if (placed.round > 0) addVoicesRound(round, placed.within);
  const end = total === null ? null : begin + total;
  return {
    round,
    after:
      end === null
        ? null
        : renderWindow(placed, rounds, begin, end, end + placed.longest, kit.silence(placed.longest)),
  };
}

/** The samples' memory, to be handed over to another thread without copying. */
export const buffersOf = (...all: readonly (Stems | null)[]): ArrayBuffer[] =>
  all.flatMap((stems) =>
    stems === null
      ? []
      : STEMS.flatMap((stem) => {
          const { buffer } = stems[stem];
          return buffer instanceof ArrayBuffer ? [buffer] : [];
        }),
  );
