import { ticks } from '../base';
import { compareEfforts, describeEffort, type Effort, effortOf } from './effort';
import { fingerLine } from './finger-line';
import { prepareLine, toFingering } from './line';
import { withoutPins } from './pins';
import type { FingeredNote, Fingering, HandSettings, Instrument, LineContext, NoteToFinger } from './types';
import { cheapestWays, type NoteRange, waysAroundPositions } from './ways';

/** One way to play a line or a stretch of it, the rest as comfortable as it can be around it. */
export interface Alternative {
  /** Of the whole line. */
  readonly fingering: Fingering;
  /** What the whole line costs more than it does now; below 0 where a pin stands in the way of comfort. */
  readonly extraCost: number;
  /** Within the stretch, with the shifts into it and out of it. */
  readonly effort: Effort;
  /** The way that is played now. */
  readonly current: boolean;
  /** What the stretch asks of the hand, and what the line saves and costs against the way played now. */
  readonly description: string;
}

/**
 * The cheapest distinct ways to play a stretch of a line (a note, a bar), best first, the way played now among
 * them where it belongs. See {@link cheapestWays} for what makes two ways distinct. What the teacher has
 * pinned within the stretch is let go, notes and hand positions; all else holds.
 * @param stretch indexes of notes of the line
 * @param most how many ways to give at most
 */
export function alternativesFor(
  notes: readonly NoteToFinger[],
  stretch: NoteRange,
  instrument: Instrument,
  hand: HandSettings,
  context: LineContext,
  most = 4,
): readonly Alternative[] {
  const [free, freely] = released(notes, stretch, context);
  const line = prepareLine(free, instrument, hand, freely);
  const inside = line.played.flatMap(({ index }, order) => (contains(stretch, index) ? [order] : []));
  const [first, last] = [inside[0], inside.at(-1)];
  if (first === undefined || last === undefined) return [];
  const ways = cheapestWays(line, { first, last }, most).map((path) => toFingering(line, path));
  return compared(ways, stretch, fingerLine(notes, instrument, hand, context), instrument, hand, context);
}

/**
 * Ways to play a whole line elsewhere on the neck, best first: each is the cheapest way among those that stay
 * around one hand position, with or without open strings, and at least a quarter of its notes lie at other
 * places than in every way before it. What the teacher has pinned is let go, notes and hand positions.
 */
export function lineAlternatives(
  notes: readonly NoteToFinger[],
  instrument: Instrument,
  hand: HandSettings,
  context: LineContext,
  most = 4,
): readonly Alternative[] {
  const whole = { first: 0, last: notes.length - 1 };
  const [free, freely] = released(notes, whole, context);
  const line = prepareLine(free, instrument, hand, freely);
  const ways: Fingering[] = [];
  for (const path of waysAroundPositions(line, hand.highestFret)) {
    const way = toFingering(line, path);
    if (ways.length < most && ways.every((other) => differsEnough(way, other))) ways.push(way);
  }
  return compared(ways, whole, fingerLine(notes, instrument, hand, context), instrument, hand, context);
}

const contains = (stretch: NoteRange, index: number): boolean =>
  index >= stretch.first && index <= stretch.last;

/** The stretch's own notes without their pins, and the hand free in them; all else stays as the teacher set it. */
function released(
  notes: readonly NoteToFinger[],
  stretch: NoteRange,
  context: LineContext,
): readonly [readonly NoteToFinger[], LineContext] {
  const start = notes[stretch.first]?.start ?? ticks(0);
  const end = ticks((notes[stretch.last]?.start ?? start) + 1);
  const positions = (context.positions ?? []).flatMap((pin) =>
    [
      { ...pin, end: ticks(Math.min(pin.end, start)) },
      { ...pin, start: ticks(Math.max(pin.start, end)) },
    ].filter((part) => part.start < part.end),
  );
  return [
    notes.map((note, index) => (contains(stretch, index) ? withoutPins(note) : note)),
    { ...context, positions },
  ];
}

const DISTINCT_SHARE = 0.25;

function differsEnough(one: Fingering, other: Fingering): boolean {
  const elsewhere = one.notes.filter((note, index) => !samePlace(note, other.notes[index] ?? null)).length;
  return elsewhere > 0 && elsewhere >= DISTINCT_SHARE * one.notes.length;
}

const samePlace = (one: FingeredNote | null, other: FingeredNote | null): boolean =>
  one?.string === other?.string && one?.fret === other?.fret;

const sameGrip = (one: FingeredNote | null, other: FingeredNote | null): boolean =>
  samePlace(one, other) && one?.finger === other?.finger;

function compared(
  ways: readonly Fingering[],
  stretch: NoteRange,
  now: Fingering,
  instrument: Instrument,
  hand: HandSettings,
  context: LineContext,
): readonly Alternative[] {
  const whole = { first: 0, last: now.notes.length - 1 };
  const effortNow = effortWithin(now, whole, instrument, hand, context);
  return ways.map((fingering) => {
    const effort = effortWithin(fingering, stretch, instrument, hand, context);
    const current = fingering.notes.every(
      (note, index) => !contains(stretch, index) || sameGrip(note, now.notes[index] ?? null),
    );
    const wholeEffort = effortWithin(fingering, whole, instrument, hand, context);
    const description = current
      ? describeEffort(effort)
      : `${describeEffort(effort)} ${difference(fingering, wholeEffort, now, effortNow)}`;
    return { fingering, extraCost: fingering.cost - now.cost, effort, current, description };
  });
}

/** The rest of the line follows a stretch that moves, so it is the whole line that saves and costs. */
function difference(way: Fingering, effort: Effort, now: Fingering, effortNow: Effort): string {
  const counted = compareEfforts(effort, effortNow);
  if (counted !== '') return counted;
  return way.notes.every((note, index) => samePlace(note, now.notes[index] ?? null))
    ? 'The same frets with other fingers.'
    : 'As easy by count, at other frets.';
}

/** The effort of a stretch with the steps into it and out of it, around the seam of a loop too. */
function effortWithin(
  fingering: Fingering,
  stretch: NoteRange,
  instrument: Instrument,
  hand: HandSettings,
  context: LineContext,
): Effort {
  const sounding = fingering.notes.flatMap((note, index) => (note === null ? [] : [{ note, index }]));
  const inside = sounding.filter(({ index }) => contains(stretch, index));
  const start = sounding.findIndex(({ index }) => contains(stretch, index));
  const round = context.loop !== null;
  const before = sounding[start - 1] ?? (round ? sounding.at(-1) : undefined);
  const after = sounding[start + inside.length] ?? (round && before !== undefined ? sounding[0] : undefined);
  return effortOf(
    { before: before?.note ?? null, notes: inside.map(({ note }) => note), after: after?.note ?? null },
    instrument,
    hand,
  );
}
