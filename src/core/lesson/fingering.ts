import { barTicks, fret, hasMark, isLink, type LineNote, midiOf, type Ticks, ticks } from '../base';
import type { Chart } from '../chart';
import type { Feel } from '../feel';
import {
  type FingeredNote,
  type Fingering,
  fingerLine,
  type HandSettings,
  type Instrument,
  type LineContext,
  type NoteToFinger,
  type PositionPin,
  ticksPerSecond,
} from '../fretboard';
import { type Level, levelLimits } from '../line';
import type { LineBar, LinePiece } from './types';

/** A written note by its bar (index from 0) and its place among the bar's notes. */
export interface NotePlace {
  readonly bar: number;
  readonly note: number;
}

/** A written line as the hand meets it, once through: tied notes are one note. */
export interface StruckLine {
  readonly notes: readonly NoteToFinger[];
  /** For every struck note the written notes that it is made of, tied ones after the one that is struck. */
  readonly parts: readonly (readonly NotePlace[])[];
  /** For every written note, bar by bar, the index of the struck note it belongs to. */
  readonly owners: readonly (readonly number[])[];
  /** One a bar in which the teacher keeps the hand in a position. */
  readonly positions: readonly PositionPin[];
  readonly length: Ticks;
}

/** What leads from a note to the next one without a pluck; a note that is tied on is left where its tie ends. */
function jointOf({ marks, tiedOn }: LineNote): Pick<NoteToFinger, 'joined'> {
  if (tiedOn === true || !isLink(marks?.exit)) return {};
  return { joined: marks?.exit === 'slide' ? 'by slide' : 'by hand' };
}

/**
 * The notes that are struck. A note tied over from the bar before is not struck again: it belongs to the note
 * that began it, whose pins count.
 */
export function strikeNotes(chart: Chart, bars: readonly LineBar[]): StruckLine {
  const struck: NoteToFinger[] = [];
  const parts: NotePlace[][] = [];
  const owners: number[][] = [];
  const positions: PositionPin[] = [];
  let barStart = 0;
  let tied: LineNote | null = null;
  chart.bars.forEach((written, bar) => {
    const stored = bars[bar];
    const notes = stored?.notes ?? [];
    const barEnd = barStart + barTicks(written.metre);
    if (stored?.position !== undefined) {
      positions.push({ start: ticks(barStart), end: ticks(barEnd), position: stored.position });
    }
    owners.push(
      notes.map((note, index) => {
        const goesOn = tied !== null && note.start === 0 && midiOf(note.pitch) === midiOf(tied.pitch);
        const last = struck.at(-1);
        if (goesOn && last !== undefined) {
          struck[struck.length - 1] = {
            ...last,
            duration: ticks(last.duration + note.duration),
            ...jointOf(note),
          };
          parts.at(-1)?.push({ bar, note: index });
        } else {
          struck.push({
            start: ticks(barStart + note.start),
            duration: note.duration,
            midi: midiOf(note.pitch),
            ...(note.pins === undefined ? {} : { pins: note.pins }),
            ...(hasMark(note, 'staccato') ? { short: true } : {}),
            ...jointOf(note),
          });
          parts.push([{ bar, note: index }]);
        }
        tied = note.tiedOn === true ? note : null;
        return struck.length - 1;
      }),
    );
    tied = notes.at(-1)?.tiedOn === true ? (notes.at(-1) ?? null) : null;
    barStart = barEnd;
  });
  return { notes: struck, parts, owners, positions, length: ticks(barStart) };
}

/** The last level leaves the rest of the neck to the teacher's own limit, which is its twelfth fret at first. */
const LAST_LEVEL: Level = 5;

/** The last fret of a level; Infinity where the level sets none. */
export const levelFret = (level: Level): number =>
  level === LAST_LEVEL ? Number.POSITIVE_INFINITY : levelLimits(level).highestFret;

/** The hand of a piece: it goes no further up the neck than the teacher and the level allow. */
export const playingHand = ({ hand, level }: LinePiece): HandSettings => ({
  ...hand,
  highestFret: fret(Math.min(hand.highestFret, levelFret(level))),
});

function barsIn({ bars }: Chart): NonNullable<LineContext['bars']> {
  let end = 0;
  return bars.map(({ metre }) => {
    const start = end;
    end += barTicks(metre);
    return { start: ticks(start), end: ticks(end) };
  });
}

/**
 * What the hand is told about a line besides its notes; it is played round and round. Nothing may ring on in a
 * style that is played muted, nor for a teacher who avoids open strings (common practice, no source).
 */
export const lineContext = (
  struck: StruckLine,
  chart: Chart,
  { tempo, hand }: LinePiece,
  { bassTouch }: Feel,
): LineContext => ({
  ticksPerSecond: ticksPerSecond(tempo, chart.metre),
  loop: struck.length,
  muted: bassTouch.muted || hand.openStrings === 'avoid',
  ...(struck.positions.length === 0 ? {} : { positions: struck.positions }),
  bars: barsIn(chart),
});

/** The fingering of a line, given back bar by bar as it is written. */
export interface LineFingering {
  readonly bars: readonly (readonly (FingeredNote | null)[])[];
  readonly whole: Fingering;
}

/** Fingers a whole written line in one search, around its loop seam; a tied note shares its struck one's place. */
export function fingerBars(
  struck: StruckLine,
  instrument: Instrument,
  hand: HandSettings,
  context: LineContext,
): LineFingering {
  const whole = fingerLine(struck.notes, instrument, hand, context);
  return { bars: struck.owners.map((notes) => notes.map((owner) => whole.notes[owner] ?? null)), whole };
}
