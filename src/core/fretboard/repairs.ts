import { type Fret, midiNumber, type Pins, TICKS_PER_QUARTER, type Ticks, ticks } from '../base';
import { alternativesFor } from './alternatives';
import { frettedPlaces, type PlayingFinding, playingFindings } from './findings';
import { fingerLine } from './finger-line';
import { type FingeredLine, type Held, heldAfter, heldAt, heldBefore } from './fingered-line';
import { placesOf } from './neck';
import { pinsOf, withoutPins } from './pins';
import { GIVEN_UP, type ShiftTime, shiftTime } from './shift-time';
import type { NoteToFinger } from './types';

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
      /** Play a note shorter, to a whole number of sixteenths, so that the hand is free earlier. */
      readonly kind: 'shorten';
      readonly note: number;
      readonly duration: Ticks;
    }
  | {
      /** Mark notes as short, so that the plucking hand stops them. */
      readonly kind: 'mark short';
      readonly notes: readonly number[];
    }
  | {
      /** Let the hand go as far up the neck as this fret. */
      readonly kind: 'raise limit';
      readonly fret: Fret;
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
  const next = { ...line, ...changed(line, repair) };
  return { ...next, fingering: fingerLine(next.notes, next.instrument, next.hand, next.context) };
}

function changed(line: FingeredLine, repair: PlayingRepair): Partial<FingeredLine> {
  const { context } = line;
  switch (repair.kind) {
    case 'pin': {
      const pins = new Map(repair.pins.map((each) => [each.note, each.pins]));
      return changedNotes(line, [...pins.keys()], (note, index) => ({
        ...note,
        pins: pins.get(index) ?? {},
      }));
    }
    case 'release':
      return changedNotes(line, repair.notes, withoutPins);
    case 'release position': {
      const start = line.notes[repair.note]?.start ?? 0;
      const positions = (context.positions ?? []).filter((pin) => start < pin.start || start >= pin.end);
      return { context: { ...context, positions } };
    }
    case 'shorten':
      return changedNotes(line, [repair.note], (note) => ({ ...note, duration: repair.duration }));
    case 'mark short':
      return changedNotes(line, repair.notes, (note) => ({ ...note, short: true }));
    case 'octave':
      return changedNotes(line, [repair.note], (note) => ({
        ...withoutPins(note),
        midi: midiNumber(note.midi + repair.halfSteps),
      }));
    case 'raise limit':
      return { hand: { ...line.hand, highestFret: repair.fret } };
    case 'slow down':
      return { context: { ...context, ticksPerSecond: (context.ticksPerSecond * repair.percent) / 100 } };
  }
}

const changedNotes = (
  line: FingeredLine,
  which: readonly number[],
  change: (note: NoteToFinger, index: number) => NoteToFinger,
): Pick<FingeredLine, 'notes'> => ({
  notes: line.notes.map((note, index) => (which.includes(index) ? change(note, index) : note)),
});

/**
 * The first repair that has been tried on the line and found to mend the finding without bringing a new one, or
 * else the one that leaves the fewest findings, and no more than before; null where none does.
 * @param allowed whether the repair can be made where the line comes from
 */
export function repairFor(
  line: FingeredLine,
  finding: PlayingFinding,
  allowed: (repair: PlayingRepair) => boolean = () => true,
): PlayingRepair | null {
  const known = playingFindings(line).map(keyOf);
  // A note that sounds is worth the lesser faults that may come with it.
  const most = finding.kind === 'off the neck' ? Number.POSITIVE_INFINITY : known.length;
  let best: { readonly repair: PlayingRepair; readonly left: number } | null = null;
  for (const repair of candidates(line, finding)) {
    if (!allowed(repair)) continue;
    const left = playingFindings(repaired(line, repair)).map(keyOf);
    if (left.includes(keyOf(finding))) continue;
    if (left.every((key) => known.includes(key))) return repair;
    if (left.length <= most && left.length < (best?.left ?? Number.POSITIVE_INFINITY)) {
      best = { repair, left: left.length };
    }
  }
  return best?.repair ?? null;
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
      yield* lowerPlaces(line, finding.note);
      yield* octaveMoves(finding.note, line);
      if (held !== null) {
        yield { kind: 'raise limit', fret: held.at.fret, label: `Allow frets up to ${held.at.fret}` };
      }
      return;
    case 'open string rings':
      for (const pins of frettedPlaces(line, finding.note)) {
        yield { kind: 'pin', pins: [{ note: finding.note, pins }], label: 'Play it on a fretted string' };
      }
      yield {
        kind: 'mark short',
        notes: [finding.note, ...(finding.others ?? [])],
        label: finding.others === undefined ? 'Mark it short' : 'Mark them short and keep their bars',
      };
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

function* lowerPlaces(line: FingeredLine, note: number): Generator<PlayingRepair> {
  const midi = line.notes[note]?.midi;
  if (midi === undefined) return;
  for (const pins of placesOf(midi, line.instrument)) {
    if (pins.fret <= line.hand.highestFret) {
      yield { kind: 'pin', pins: [{ note, pins }], label: 'Play it lower on the neck' };
    }
  }
}

/** How many ways elsewhere are tried. */
const WAYS_TRIED = 6;

function* easierMoves(line: FingeredLine, before: Held, held: Held): Generator<PlayingRepair> {
  const pinned = [before, held].filter(({ note }) => note.pins !== undefined).map(({ index }) => index);
  if (pinned.length > 0) yield { kind: 'release', notes: pinned, label: 'Let the hand choose' };
  for (const { index, note } of [held, before, heldAfter(line, held.index)].filter((each) => each !== null)) {
    const kept = (line.context.positions ?? []).some(
      ({ start, end }) => start <= note.start && note.start < end,
    );
    if (kept) yield { kind: 'release position', note: index, label: 'Let the hand leave its position' };
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
  yield* slowerTempos(shift, SLOW);
  yield* octaveMoves(held.index, line);
  yield* slowerTempos(shift, 0);
}

const SIXTEENTH = TICKS_PER_QUARTER / 4;

/** A shortened note keeps at least this share of its length. */
const LEAST_SHARE = 0.25;

function* shorterNote({ index, note }: Held, shift: ShiftTime): Generator<PlayingRepair> {
  const free = (shift.gap - shift.needed) / (1 - GIVEN_UP);
  const duration = Math.floor(free / SIXTEENTH) * SIXTEENTH;
  if (duration > 0 && duration >= note.duration * LEAST_SHARE && duration < note.duration) {
    yield { kind: 'shorten', note: index, duration: ticks(duration), label: 'Shorten the note before' };
  }
}

/** Below this share of the tempo, in per cent, a line is another line. */
const SLOW = 50;

/** From the tempo that gives this shift its time downwards: at another tempo the hand may choose another shift. */
function* slowerTempos(shift: ShiftTime, least: number): Generator<PlayingRepair> {
  const enough = Math.floor((100 * shift.given) / shift.needed);
  for (let percent = enough; percent > least; percent = Math.floor(percent * 0.8)) {
    yield { kind: 'slow down', percent, label: `Practise at ${percent} % of the tempo` };
  }
}
