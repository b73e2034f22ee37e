import { type Metre, TICKS_PER_QUARTER } from '../base';
import { beamGroups } from './beams';
import { type Division, divisionsOf, tripletDivision } from './divisions';
import type { NotatedBar, NotatedEvent, NoteValue, Sounding } from './types';

/** Grid for starts and ends that no written rhythm hits: a 32nd. */
const FINEST = TICKS_PER_QUARTER / 8;
const FINEST_TRIPLET = TICKS_PER_QUARTER / 6;
const WHOLE_NOTE = TICKS_PER_QUARTER * 4;

/**
 * Writes a bar's sounds as notes, ties and rests, so that the beats can be seen (the rules of the trade: the
 * middle of a 4/4 bar shows, rests show each beat, no half rest in 3/4, dotted rests for whole beats in compound
 * time). Sounds must be in order and not overlap; what lies beyond the bar is cut off. Times off every written
 * grid are moved to the nearest 32nd.
 */
export function notateBar(sounds: readonly Sounding[], metre: Metre): NotatedBar {
  const bar = divisionsOf(metre);
  const pieces = timeline(sounds, bar.length);
  const regions = tripletRegions(pieces, bar, metre);
  const events: NotatedEvent[] = [];
  const triplets: { first: number; last: number }[] = [];
  for (const region of [...regions, bar.length]) {
    // Each round writes what stands before the region, then the region itself.
    const before = events.at(-1);
    const from = before ? before.start + before.duration : 0;
    const until = typeof region === 'number' ? region : region.start;
    for (const piece of cut(pieces, from, until)) events.push(...writePlain(piece, bar));
    if (typeof region !== 'number') {
      const first = events.length;
      for (const piece of cut(pieces, region.start, region.start + region.length)) {
        events.push(...writeTriplet(piece, region, triplets.length));
      }
      triplets.push({ first, last: events.length - 1 });
    }
  }
  const linked = linkTies(events, pieces);
  return { events: linked, triplets, beams: beamGroups(linked, metre) };
}

interface Piece {
  readonly note: number | null;
  readonly start: number;
  readonly end: number;
}

const isTripletTick = (tick: number): boolean => tick % FINEST !== 0 && tick % FINEST_TRIPLET === 0;

function toGrid(tick: number): number {
  if (tick % FINEST === 0 || tick % FINEST_TRIPLET === 0) return tick;
  return Math.round(tick / FINEST) * FINEST;
}

/** Sounds and the silences between them, end to end over the whole bar. */
function timeline(sounds: readonly Sounding[], length: number): readonly Piece[] {
  const pieces: Piece[] = [];
  let now = 0;
  sounds.forEach((sound, note) => {
    const start = Math.max(now, toGrid(sound.start));
    const end = Math.min(length, Math.max(start + FINEST, toGrid(sound.start + sound.duration)));
    if (start >= end) return;
    if (start > now) pieces.push({ note: null, start: now, end: start });
    pieces.push({ note, start, end });
    now = end;
  });
  if (now < length) pieces.push({ note: null, start: now, end: length });
  return pieces;
}

/** The parts of the pieces inside a stretch. */
function cut(pieces: readonly Piece[], from: number, until: number): readonly Piece[] {
  return pieces
    .filter((piece) => Math.max(piece.start, from) < Math.min(piece.end, until))
    .map((piece) => ({
      note: piece.note,
      start: Math.max(piece.start, from),
      end: Math.min(piece.end, until),
    }));
}

interface Region {
  readonly start: number;
  readonly length: number;
}

/** Beats, and pairs of beats with quarter triplets, in which a sound begins or ends on a third. */
function tripletRegions(pieces: readonly Piece[], bar: Division, metre: Metre): readonly Region[] {
  if (metre.unit === 8) return [];
  const ticks = new Set(pieces.flatMap(({ start, end }) => [start, end]));
  const has = (start: number, length: number): boolean =>
    [...ticks].some((tick) => tick > start && tick < start + length && isTripletTick(tick));
  const regions: Region[] = [];
  const quarter = TICKS_PER_QUARTER;
  for (let start = 0; start < bar.length; start += quarter) {
    const pair = { start, length: 2 * quarter };
    const inPair = [...ticks].filter((tick) => tick > start && tick < start + pair.length);
    const wide =
      start % pair.length === 0 &&
      start + pair.length <= bar.length &&
      inPair.some((tick) => isTripletTick(tick - start)) &&
      inPair.every((tick) => (tick - start) % (pair.length / 3) === 0);
    if (wide) {
      regions.push(pair);
      start += quarter;
    } else if (has(start, quarter)) {
      regions.push({ start, length: quarter });
    }
  }
  return regions;
}

function writeTriplet(piece: Piece, region: Region, triplet: number): readonly NotatedEvent[] {
  // Inside the region three stand for two: written half as long again, the beat is a dotted one.
  const division = tripletDivision(region.length * 1.5);
  const written = {
    note: piece.note,
    start: (piece.start - region.start) * 1.5,
    end: (piece.end - region.start) * 1.5,
  };
  return writePlain(written, division).map((event) => ({
    ...event,
    start: region.start + event.start / 1.5,
    duration: event.duration / 1.5,
    triplet,
    wholeBar: false,
  }));
}

function writePlain(piece: Piece, division: Division): readonly NotatedEvent[] {
  const stretches =
    piece.note === null
      ? restStretches(piece.start, piece.end, division, division)
      : noteStretches(piece.start, piece.end, division);
  return stretches.map(({ start, end }) => {
    const length = end - start;
    const wholeBar = piece.note === null && length === division.length;
    const { value, dots } = wholeBar ? { value: 1 as const, dots: 0 as const } : writtenValue(length);
    return {
      kind: piece.note === null ? 'rest' : 'note',
      note: piece.note,
      start,
      duration: length,
      value,
      dots,
      triplet: null,
      tied: false,
      wholeBar,
    };
  });
}

interface Extent {
  readonly start: number;
  readonly end: number;
}

const VALUES: readonly NoteValue[] = [1, 2, 4, 8, 16, 32, 64];

function exactValue(length: number): { readonly value: NoteValue; readonly dots: 0 | 1 } | null {
  for (const value of VALUES) {
    if (length === WHOLE_NOTE / value) return { value, dots: 0 };
    if (length === (WHOLE_NOTE / value) * 1.5) return { value, dots: 1 };
  }
  return null;
}

/** A length that no sign writes exactly takes the nearest one; only times off every grid can get here. */
function writtenValue(length: number): { readonly value: NoteValue; readonly dots: 0 | 1 } {
  return exactValue(length) ?? { value: VALUES.find((value) => WHOLE_NOTE / value <= length) ?? 64, dots: 0 };
}

function noteStretches(start: number, end: number, division: Division): readonly Extent[] {
  const within = division.parts.find((part) => start >= part.start && end <= part.start + part.length);
  const whole = start === division.start && end === division.start + division.length;
  if (within && !whole) return noteStretches(start, end, within);
  if (division.parts.length === 0 || isReadable(start, end, division)) return [{ start, end }];
  const seam = seamOf(start, end, division);
  return [...noteStretches(start, seam, division), ...noteStretches(seam, end, division)];
}

/** Whether one sign may stand across the seams of a division. */
function isReadable(start: number, end: number, division: Division): boolean {
  if (!exactValue(end - start)) return false;
  const fromStart = start === division.start;
  if (fromStart && end === division.start + division.length) return true;
  const crossed = division.parts.filter((part) => part.start < end && part.start + part.length > start);
  const first = crossed[0];
  const last = crossed.at(-1);
  if (!first || !last) return true;
  const wholeParts = start === first.start && end === last.start + last.length;
  if (division.parts.length !== 2) {
    // Three or more parts: whole parts, or a pair of neighbours read like a division in two.
    return (
      wholeParts || (crossed.length === 2 && isReadablePair(start, end, first, last, division.lateStart))
    );
  }
  return isReadablePair(start, end, first, last, division.lateStart);
}

/** Two neighbouring parts: the note fills one of them, or lies across their seam evenly (short, long, short). */
function isReadablePair(
  start: number,
  end: number,
  first: Division,
  last: Division,
  lateStart: boolean,
): boolean {
  if (first.length !== last.length) return false;
  const seam = last.start;
  const simple = first.parts.length === 2 || first.parts.length === 0;
  const centred = simple && seam - start === first.length / 2 && end - seam === first.length / 2;
  if (centred) return true;
  if (!simple) return false;
  if (start === first.start) return true;
  return lateStart && end === last.start + last.length;
}

/** Where a note that may not cross is divided: at the latest seam that leaves a whole beginning, else at the first. */
function seamOf(start: number, end: number, division: Division): number {
  const seams = division.parts.map((part) => part.start).filter((seam) => seam > start && seam < end);
  const first = seams[0] ?? start;
  if (division.parts.length === 2 || start !== division.start) return first;
  return seams.findLast((seam) => exactValue(seam - start) !== null) ?? first;
}

function restStretches(start: number, end: number, division: Division, bar: Division): readonly Extent[] {
  const whole = start === division.start && end === division.start + division.length;
  if (whole && (division === bar || (division.rest && exactValue(end - start)))) return [{ start, end }];
  if (division.parts.length === 0) return [{ start, end }];
  if (isCompoundOpening(start, end, division)) return [{ start, end }];
  return division.parts.flatMap((part) => {
    const from = Math.max(start, part.start);
    const until = Math.min(end, part.start + part.length);
    return from < until ? restStretches(from, until, part, bar) : [];
  });
}

/** In a dotted beat, two silent thirds before a sounding one are a single rest; after it they are two. */
function isCompoundOpening(start: number, end: number, division: Division): boolean {
  const third = division.length / 3;
  return (
    division.parts.length === 3 &&
    division.rest &&
    exactValue(division.length)?.dots === 1 &&
    third < TICKS_PER_QUARTER &&
    start === division.start &&
    end === start + 2 * third
  );
}

/** A note's pieces are tied up to the last of them. */
function linkTies(events: readonly NotatedEvent[], pieces: readonly Piece[]): readonly NotatedEvent[] {
  const ends = new Map(pieces.map((piece) => [piece.note, piece.end]));
  return events.map((event) => ({
    ...event,
    tied: event.note !== null && event.start + event.duration < (ends.get(event.note) ?? 0),
  }));
}
