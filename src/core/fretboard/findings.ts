import { type FingeredLine, type Held, heldAt, heldBefore, onsetGap } from './fingered-line';
import { mayNotRing } from './model';
import { handSpan, placesOf } from './neck';
import { romanNumeral } from './roman';
import { shiftTime } from './shift-time';
import { statesMeeting } from './states';
import type { Place } from './types';

/** Something about playing one note of a line that a careful colleague would point out. */
export interface PlayingFinding {
  readonly kind:
    | 'off the neck'
    | 'pin not met'
    | 'fret too high'
    | 'shift too far'
    | 'stretch too wide'
    | 'open string rings';
  /** Index of the note in the line. */
  readonly note: number;
  /** Further notes of which the same is true, where one finding speaks for them all. */
  readonly others?: readonly number[];
  /** What and why, to be read on after "Bar 3, beat 2: ". */
  readonly message: string;
}

/** All findings about playing a line, in the order of its notes; `repairFor` says what mends each. */
export const playingFindings = (line: FingeredLine): readonly PlayingFinding[] =>
  ringingTogether(line, findingsByNote(line));

const findingsByNote = (line: FingeredLine): readonly PlayingFinding[] =>
  line.notes.flatMap((_, index) => {
    const held = heldAt(line, index);
    if (held === null) {
      return [
        { kind: 'off the neck' as const, note: index, message: 'this note does not lie on the instrument.' },
      ];
    }
    const before = heldBefore(line, index);
    return [
      pinNotMet(line, held),
      fretTooHigh(line, held),
      before === null ? null : shiftTooFar(line, before, held),
      before === null ? null : stretchTooWide(line, before, held),
      openStringRings(line, held),
    ].filter((finding) => finding !== null);
  });

function pinNotMet(line: FingeredLine, { index, note }: Held): PlayingFinding | null {
  const { pins } = note;
  if (pins === undefined) return null;
  if (statesMeeting({ pins, position: null }, note, line.instrument, line.hand).length > 0) return null;
  return {
    kind: 'pin not met',
    note: index,
    message: 'the string, fret or finger asked for does not fit this note, so it is not obeyed.',
  };
}

function fretTooHigh(line: FingeredLine, { index, at }: Held): PlayingFinding | null {
  const limit = line.hand.highestFret;
  if (at.fret <= limit) return null;
  return {
    kind: 'fret too high',
    note: index,
    message: `fret ${at.fret} is beyond fret ${limit}, the last of ${line.limitOf}.`,
  };
}

function shiftTooFar(line: FingeredLine, before: Held, held: Held): PlayingFinding | null {
  const shift = shiftTime(line, before, held);
  if (shift === null || shift.needed <= shift.given) return null;
  const seconds = (shift.given / line.context.ticksPerSecond).toFixed(2);
  return {
    kind: 'shift too far',
    note: held.index,
    message: `the hand has only ${seconds} seconds for the shift from position ${romanNumeral(shift.from)} to position ${romanNumeral(shift.to)}.`,
  };
}

function stretchTooWide(line: FingeredLine, before: Held, { index, at }: Held): PlayingFinding | null {
  if (before.at.position !== at.position || before.at.finger === 0 || at.finger === 0) return null;
  const span = handSpan(before.at.fret, at.fret, line.instrument.scaleLength);
  if (span <= line.hand.reach) return null;
  return {
    kind: 'stretch too wide',
    note: index,
    message: `frets ${before.at.fret} and ${at.fret} in one position ask for ${Math.round(span)} mm; the hand reaches ${line.hand.reach} mm.`,
  };
}

function openStringRings(line: FingeredLine, { index, note, at }: Held): PlayingFinding | null {
  if (at.finger !== 0 || !mayNotRing(note, line.context)) return null;
  const after = line.notes[index + 1] ?? (line.context.loop === null ? undefined : line.notes[0]);
  if (after !== undefined && onsetGap(line, note, after) <= note.duration) return null;
  return {
    kind: 'open string rings',
    note: index,
    message: 'the open string rings on into the rest, where this style wants silence.',
  };
}

/** The fretted places of a note that the hand may use. */
export const frettedPlaces = (line: FingeredLine, index: number): readonly Place[] => {
  const midi = line.notes[index]?.midi;
  if (midi === undefined) return [];
  return placesOf(midi, line.instrument).filter(({ fret }) => fret > 0 && fret <= line.hand.highestFret);
};

/** Open strings that the hand cannot avoid, such as every low E, are one finding: one decision mends them all. */
function ringingTogether(line: FingeredLine, findings: readonly PlayingFinding[]): readonly PlayingFinding[] {
  const unavoidable = findings.filter(
    ({ kind, note }) => kind === 'open string rings' && frettedPlaces(line, note).length === 0,
  );
  const [first, ...rest] = unavoidable;
  if (first === undefined || rest.length === 0) return findings;
  const spoken: PlayingFinding = {
    ...first,
    others: rest.map(({ note }) => note),
    message: `the open string rings on into the rest, where this style wants silence; ${rest.length === 1 ? 'so does a later note' : `so do ${rest.length} later notes`}.`,
  };
  return findings.flatMap((finding) =>
    finding === first ? [spoken] : rest.includes(finding) ? [] : [finding],
  );
}
