import { TICKS_PER_QUARTER } from '../../base';
import { unswung } from '../../feel';
import type { FoundMetre } from '../reading/found';
import type { PlayedNote } from './voices';

const SIXTEENTH = TICKS_PER_QUARTER / 4;
const THIRD = TICKS_PER_QUARTER / 3;
const SIXTH = TICKS_PER_QUARTER / 6;
const HALF = TICKS_PER_QUARTER / 2;
/** Off-beats are looked for here, within a quarter note. */
const OFF_BEATS = { from: 465, until: 690 } as const;
/** As late as this, an off-beat is swung rather than loose (ticks). */
const LATE = 492;
/** Off-beats that swing are late alike, within this of their middle (ticks). */
const ALIKE = 40;
const FEWEST_OFF_BEATS = 4;
/** What a triplet costs, in ticks a note, so that a loose sixteenth is not taken for one. */
const TRIPLET_COST = 12;

/** A bar of the file, in ticks of the lesson. */
export interface GridBar {
  readonly start: number;
  readonly length: number;
  readonly metre: FoundMetre;
}

/** Pairs of eighths are swung only where a beat has two. */
const canSwing = ({ unit }: FoundMetre): boolean => unit < 8;

const middle = (sorted: readonly number[]): number => sorted[Math.floor(sorted.length / 2)] ?? HALF;

/** On-beats are looked for up to this late, in ticks after the beat: less than a triplet's sixteenth. */
const LATEST_ON_BEAT = 130;
/** Less than this, in ticks, is not heard as late. */
const LEAST_LATENESS = 20;

/**
 * How late a player is alike on the beats, in ticks (early is less than 0); 0 where the beats are on time, or loose.
 * Off-beats that are late by as much are not swung.
 */
export function latenessOf(notes: readonly PlayedNote[], bars: readonly GridBar[]): number {
  const placeOf = placeFinder(bars);
  const onBeats = notes
    .flatMap(({ start }) => {
      const place = placeOf(start);
      return place !== null && start - place.start <= LATEST_ON_BEAT ? [start - place.start] : [];
    })
    .sort((one, other) => one - other);
  const late = onBeats[Math.floor(onBeats.length / 2)] ?? 0;
  const alike = onBeats.filter((place) => Math.abs(place - late) <= ALIKE).length;
  const counts = onBeats.length >= Math.max(FEWEST_OFF_BEATS, notes.length / 4);
  return counts && alike >= onBeats.length * 0.8 && Math.abs(late) >= LEAST_LATENESS ? late : 0;
}

/**
 * Long to short within a pair of eighths, from where the off-beats of a line fall: consistently late ones swing, the
 * rest is 1.
 */
export function swingOf(notes: readonly PlayedNote[], bars: readonly GridBar[]): number {
  const placeOf = placeFinder(bars);
  const within = notes.flatMap(({ start }) => {
    const place = placeOf(start);
    return place !== null && canSwing(place.bar.metre) ? [start - place.start] : [];
  });
  const offBeats = within
    .filter((place) => place >= OFF_BEATS.from && place <= OFF_BEATS.until)
    .sort((one, other) => one - other);
  const late = middle(offBeats);
  const alike = offBeats.filter((place) => Math.abs(place - late) <= ALIKE).length;
  // The middle one of three says that the beat is divided in three; so does a note that ends exactly there.
  const ends = notes.filter(({ start, end }) => {
    const place = placeOf(start);
    return place !== null && end - start < HALF && Math.abs(end - place.start - THIRD) <= 2;
  });
  const thirds = within.filter((place) => Math.abs(place - THIRD) <= ALIKE).length + ends.length;
  const swings =
    offBeats.length >= FEWEST_OFF_BEATS &&
    late >= LATE &&
    alike >= offBeats.length * 0.8 &&
    thirds * 3 <= offBeats.length;
  return swings ? late / (TICKS_PER_QUARTER - late) : 1;
}

const nearest = (place: number, grid: number): number => Math.round(place / grid) * grid;

/** Two notes nearer than this, in ticks, are meant to begin together. */
const TOGETHER = 60;

/** Grids of thirds are not swung: a triplet is one already. */
const isTriplet = (grid: number): boolean => grid === THIRD || grid === SIXTH;

const onGrid = (place: number, grid: number, ratio: number): number =>
  nearest(isTriplet(grid) ? place : unswung(place, ratio), grid);

/** Whether notes that begin one after the other would begin together. */
const merges = (starts: readonly number[], grid: number, ratio: number): boolean =>
  starts.some((start, index) => {
    const before = starts[index - 1];
    return (
      before !== undefined &&
      start - before > TOGETHER &&
      onGrid(start, grid, ratio) === onGrid(before, grid, ratio)
    );
  });

/** What begins and ends in a quarter note, in ticks from its beginning. */
interface Beat {
  readonly starts: number[];
  /** Only those that lie exactly on a third: others say nothing, because notes are let go at will. */
  readonly ends: number[];
}

const isExactThird = (place: number): boolean =>
  Math.abs(place - nearest(place, THIRD)) <= 2 && Math.abs(place - nearest(place, SIXTEENTH)) > 2;

/** The grid of a quarter note: sixteenths or thirds, whichever is nearer to all that begins in it, or half of them. */
function gridOf({ starts, ends }: Beat, ratio: number, triplets: boolean): number {
  const cost = (grid: number): number =>
    [...starts, ...ends].reduce(
      (sum, start) =>
        sum +
        Math.abs((isTriplet(grid) ? start : unswung(start, ratio)) - onGrid(start, grid, ratio)) +
        (isTriplet(grid) ? TRIPLET_COST : 0),
      0,
    );
  const nearer = (even: number, third: number): number =>
    triplets && cost(third) < cost(even) ? third : even;
  const sorted = [...starts].sort((one, other) => one - other);
  const grid = nearer(SIXTEENTH, THIRD);
  return merges(sorted, grid, ratio) ? nearer(SIXTEENTH / 2, SIXTH) : grid;
}

/** The grids that can be asked for, by the length of a step in ticks; null takes the nearest, beat by beat. */
export const GRIDS = {
  nearest: { name: 'Sixteenths or triplets, beat by beat', step: null },
  eighths: { name: 'Eighths', step: HALF },
  sixteenths: { name: 'Sixteenths', step: SIXTEENTH },
  triplets: { name: 'Triplets', step: THIRD },
  thirtySeconds: { name: '32nds', step: SIXTEENTH / 2 },
} as const;
export type GridId = keyof typeof GRIDS;

export const isGridId = (text: string | null): text is GridId => text !== null && Object.hasOwn(GRIDS, text);

/** Where a tick lies: its bar, and its quarter note within it. */
interface Place {
  readonly bar: GridBar;
  /** Index of the quarter note, over all bars. */
  readonly beat: string;
  /** Of the quarter note. */
  readonly start: number;
}

/** A tick this little before a bar or a beat belongs to it: it was played early. */
const EARLY = SIXTEENTH / 4;

function placeFinder(bars: readonly GridBar[]): (tick: number) => Place | null {
  return (tick) => {
    let [low, high] = [0, bars.length - 1];
    while (low < high) {
      const half = Math.ceil((low + high) / 2);
      if ((bars[half]?.start ?? 0) <= tick + EARLY) low = half;
      else high = half - 1;
    }
    const bar = bars[low];
    if (bar === undefined) return null;
    const beat = Math.max(0, Math.floor((tick - bar.start + EARLY) / TICKS_PER_QUARTER));
    return { bar, beat: `${low} ${beat}`, start: bar.start + beat * TICKS_PER_QUARTER };
  };
}

/**
 * The notes as they are written: on sixteenths or triplets of their bar, whichever a beat is nearer to (or
 * half of them, where notes follow each other faster), with the swing taken out.
 * @param asked - the grid of every beat
 */
export function quantise(
  notes: readonly PlayedNote[],
  bars: readonly GridBar[],
  ratio: number,
  asked: GridId = 'nearest',
): readonly PlayedNote[] {
  const { step } = GRIDS[asked];
  const placeOf = placeFinder(bars);
  const ratioIn = ({ metre }: GridBar): number => (canSwing(metre) ? ratio : 1);
  const beats = new Map<string, Beat & { readonly bar: GridBar }>();
  const beatAt = (place: Place): Beat => {
    const beat = beats.get(place.beat) ?? { bar: place.bar, starts: [], ends: [] };
    beats.set(place.beat, beat);
    return beat;
  };
  for (const { start, end } of notes) {
    const [first, last] = [placeOf(start), placeOf(end)];
    if (first !== null) beatAt(first).starts.push(Math.max(0, start - first.start));
    if (last !== null && isExactThird(end - last.start)) beatAt(last).ends.push(end - last.start);
  }
  const grids = new Map(
    [...beats].map(
      ([beat, each]) => [beat, step ?? gridOf(each, ratioIn(each.bar), canSwing(each.bar.metre))] as const,
    ),
  );
  const moved = (tick: number): number => {
    const place = placeOf(tick);
    if (place === null) return tick;
    const grid = grids.get(place.beat) ?? SIXTEENTH;
    return place.start + onGrid(Math.max(0, tick - place.start), grid, ratioIn(place.bar));
  };
  return notes.map(({ start, end, key }) => {
    const from = moved(start);
    const least = grids.get(placeOf(start)?.beat ?? '') ?? SIXTEENTH;
    return { start: from, end: Math.max(from + least, moved(end)), key };
  });
}
