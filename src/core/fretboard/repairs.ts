import { midiNumber, type Pins, type Ticks, ticks } from '../base';
import { alternativesFor } from './alternatives';
import { type PlayingFinding, playingFindings } from './findings';
import { fingerLine } from './finger-line';
import { type FingeredLine, type Held, heldAt, heldBefore } from './fingered-line';
import { placesOf } from './neck';
import { pinsOf } from './pins';
import { GIVEN_UP, type ShiftTime, shiftTime } from './shift-time';
import type { Place } from './types';

/** A change of the line that makes a finding go away, with the words for its button. */
export type PlayingRepair = { readonly label: string } & (
  | {
      /** Hold notes at given places, in place of the pins that they had. */
      readonly kind: 'pin';
      readonly pins: readonly { readonly note: number; readonly pins: Pins }[];
    }
  | {
      /** Let the teacher's pins of these notes go. */
      readonly kind: 'release';
      readonly notes: readonly number[];
    }
  | {
      /** Let the pinned positions go that hold this note. */
      readonly kind: 'release position';
      readonly note: number;
    }
  | {
      /** Play a note shorter, so that the hand is free earlier. */
      readonly kind: 'shorten';
      readonly note: number;
      readonly duration: Ticks;
    }
  | {
      /** Move a note by whole octaves and let its pins go. */
      readonly kind: 'octave';
      readonly note: number;
      readonly halfSteps: number;
    }
  | {
      /** Play the line at a share of its tempo, in whole per cent. */
      readonly kind: 'slow down';
      readonly percent: number;
    }
);

/** The line after a repair, fingered anew. */
export function repaired(line: FingeredLine, repair: PlayingRepair): FingeredLine {
  const { notes, context } = changed(line, repair);
  return { ...line, notes, context, fingering: fingerLine(notes, line.instrument, line.hand, context) };
}

function changed(line: FingeredLine, repair: PlayingRepair): Pick<FingeredLine, 'notes' | 'context'> {
  const { notes, context } = line;
  switch (repair.kind) {
    case 'pin': {
      const pins = new Map(repair.pins.map((each) => [each.note, each.pins]));
      return {
        context,
        notes: notes.map((note, index) => {
          const own = pins.get(index);
          return own === undefined ? note : { ...note, pins: own };
        }),
      };
    }
    case 'release':
      return {
        context,
        notes: notes.map((note, index) => {
          const { start, duration, midi } = note;
          return repair.notes.includes(index) ? { start, duration, midi } : note;
        }),
      };
    case 'release position': {
      const start = notes[repair.note]?.start ?? 0;
      const positions = (context.positions ?? []).filter((pin) => start < pin.start || start >= pin.end);
      return { notes, context: { ...context, positions } };
    }
    case 'shorten':
      return {
        context,
        notes: notes.map((note, index) =>
          index === repair.note ? { ...note, duration: repair.duration } : note,
        ),
      };
    case 'octave':
      return {
        context,
        notes: notes.map((note, index) => {
          if (index !== repair.note) return note;
          const { start, duration, midi } = note;
          return { start, duration, midi: midiNumber(midi + repair.halfSteps) };
        }),
      };
    case 'slow down':
      return {
        notes,
        context: { ...context, ticksPerSecond: (context.ticksPerSecond * repair.percent) / 100 },
      };
  }
}

/**
 * The first repair that has been tried on the line and found to mend the finding without bringing a new one, or
 * else the first that leaves no more findings than before; null where only the player can mend it, as the
 * finding's message then says.
 */
export function repairFor(line: FingeredLine, finding: PlayingFinding): PlayingRepair | null {
  const known = playingFindings(line).map(keyOf);
  let second: PlayingRepair | null = null;
  for (const repair of candidates(line, finding)) {
    const left = playingFindings(repaired(line, repair)).map(keyOf);
    if (left.includes(keyOf(finding))) continue;
    if (left.every((key) => known.includes(key))) return repair;
    if (left.length <= known.length) second ??= repair;
  }
  return second;
}

const keyOf = ({ kind, note }: PlayingFinding): string => `${kind} ${note}`;

function* candidates(line: FingeredLine, finding: PlayingFinding): Generator<PlayingRepair> {
  const held = heldAt(line, finding.note);
  switch (finding.kind) {
    case 'off the neck':
      yield* octaveMoves(finding.note, line);
      return;
    case 'pin not met':
      yield { kind: 'release', notes: [finding.note], label: 'Let the hand choose' };
      return;
    case 'fret too high':
      yield* placesWithinLimit(line, finding.note, 'Play it lower on the neck', () => true);
      yield* octaveMoves(finding.note, line);
      return;
    case 'open string rings':
      yield* placesWithinLimit(line, finding.note, 'Play it on a fretted string', ({ fret }) => fret > 0);
      return;
    case 'stretch too wide':
    case 'shift too far': {
      const before = heldBefore(line, finding.note);
      if (before !== null && held !== null) yield* easierMoves(line, before, held);
    }
  }
}

/** By whole octaves, the nearest first. */
function* octaveMoves(note: number, line: FingeredLine): Generator<PlayingRepair> {
  const midi = line.notes[note]?.midi ?? 0;
  for (const octaves of [1, -1, 2, -2, 3, -3, 4, -4, 5, -5]) {
    const moved = midi + 12 * octaves;
    if (moved < 0 || moved > 127 || placesOf(midiNumber(moved), line.instrument).length === 0) continue;
    const count = Math.abs(octaves);
    const distance = count === 1 ? 'an octave' : `${count} octaves`;
    const label = `Play it ${distance} ${octaves > 0 ? 'higher' : 'lower'}`;
    yield { kind: 'octave', note, halfSteps: 12 * octaves, label };
  }
}

function* placesWithinLimit(
  line: FingeredLine,
  note: number,
  label: string,
  suits: (place: Place) => boolean,
): Generator<PlayingRepair> {
  const midi = line.notes[note]?.midi;
  if (midi === undefined) return;
  for (const pins of placesOf(midi, line.instrument)) {
    if (pins.fret <= line.hand.highestFret && suits(pins))
      yield { kind: 'pin', pins: [{ note, pins }], label };
  }
}

/** How many ways elsewhere are tried. */
const WAYS_TRIED = 6;

function* easierMoves(line: FingeredLine, before: Held, held: Held): Generator<PlayingRepair> {
  const pinned = [before, held].filter(({ note }) => note.pins !== undefined).map(({ index }) => index);
  if (pinned.length > 0) yield { kind: 'release', notes: pinned, label: 'Let the hand choose' };
  if ((line.context.positions ?? []).length > 0) {
    yield { kind: 'release position', note: held.index, label: 'Let the hand leave its position' };
  }
  if (held.index === before.index + 1) {
    const { notes, instrument, hand, context } = line;
    const stretch = { first: before.index, last: held.index };
    for (const { fingering, current } of alternativesFor(
      notes,
      stretch,
      instrument,
      hand,
      context,
      WAYS_TRIED,
    )) {
      if (current) continue;
      const pins = [before.index, held.index].flatMap((note) => {
        const at = fingering.notes[note] ?? null;
        return at === null ? [] : [{ note, pins: pinsOf(at) }];
      });
      yield { kind: 'pin', pins, label: 'Play it elsewhere on the neck' };
    }
  }
  const shift = shiftTime(line, before, held);
  if (shift === null) return;
  yield* shorterNote(before, shift);
  yield slowerTempo(shift);
}

/** A shortened note keeps at least this share of its length. */
const LEAST_SHARE = 0.25;

function* shorterNote({ index, note }: Held, shift: ShiftTime): Generator<PlayingRepair> {
  const duration = Math.floor((shift.gap - shift.needed) / (1 - GIVEN_UP));
  if (duration >= note.duration * LEAST_SHARE && duration < note.duration) {
    yield { kind: 'shorten', note: index, duration: ticks(duration), label: 'Shorten the note before' };
  }
}

function slowerTempo(shift: ShiftTime): PlayingRepair {
  const percent = Math.max(1, Math.floor((100 * shift.given) / shift.needed));
  return { kind: 'slow down', percent, label: `Practise at ${percent} % of the tempo` };
}
