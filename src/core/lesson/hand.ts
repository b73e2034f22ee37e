import type { LineNote } from '../base';
import {
  type Alternative,
  alternativesFor,
  type FingeredLine,
  lineAlternatives,
  type NoteRange,
} from '../fretboard';
import { takeFingering } from './commands/hand';
import { barsInPosition } from './composer-aims';
import { lineContext, type NotePlace, playingHand, type StruckLine, strikeNotes } from './fingering';
import { deriveSheet } from './sheet';
import type { LineSheet } from './sheet-types';
import type { InstrumentSettings, Lesson, LinePiece } from './types';

/** A line piece as the hand plays it. */
export interface HandLine {
  readonly sheet: LineSheet;
  readonly struck: StruckLine;
  readonly line: FingeredLine;
}

/** The line of a piece with its fingering and everything it was fingered for. */
export function handLine(piece: LinePiece, settings: InstrumentSettings): HandLine | null {
  const sheet = deriveSheet(piece, settings, 'letters');
  if (sheet.kind !== 'line') return null;
  const struck = strikeNotes(sheet.chart, barsInPosition(piece, sheet.chart));
  const hand = playingHand(piece);
  const line: FingeredLine = {
    notes: struck.notes,
    fingering: sheet.fingering,
    instrument: sheet.instrument,
    hand,
    context: lineContext(struck, sheet.chart, piece, sheet.feel),
    limitOf: hand.highestFret < piece.hand.highestFret ? `level ${piece.level}` : 'the hand’s settings',
  };
  return { sheet, struck, line };
}

/** What is to be played elsewhere on the neck. Bars and notes count from 0. */
export type Passage =
  | { readonly kind: 'note'; readonly bar: number; readonly note: number }
  | { readonly kind: 'bar'; readonly bar: number }
  | { readonly kind: 'line' };

/** One way to play a passage, ready to be taken. */
export interface WayToPlay {
  readonly way: Alternative;
  /** String, fret and finger of the passage's notes, in their order; null off the neck. */
  readonly places: readonly (Alternative['fingering']['notes'][number] | null)[];
  /** The lesson with the passage pinned as in this way, its bars to the hand position that they stay in. */
  readonly take: (lesson: Lesson) => Lesson;
}

/** How many ways are shown at once: enough to choose from, few enough to read. */
const MOST_WAYS = 4;

/** The next best distinct ways to play a passage, the one played now among them, each in words. */
export function waysToPlay(
  piece: LinePiece,
  settings: InstrumentSettings,
  passage: Passage,
): readonly WayToPlay[] {
  const found = handLine(piece, settings);
  const stretch = found && stretchOf(found.struck, passage);
  if (found === null || stretch === null) return [];
  const { notes, instrument, hand, context } = found.line;
  const ways =
    passage.kind === 'line'
      ? lineAlternatives(notes, instrument, hand, context, MOST_WAYS)
      : alternativesFor(notes, stretch, instrument, hand, context, MOST_WAYS);
  const struck = notes.flatMap((_, index) => {
    const at = found.struck.parts[index]?.[0];
    return at === undefined || index < stretch.first || index > stretch.last ? [] : [{ index, at }];
  });
  return ways.map((way) => ({
    way,
    places: struck.map(({ index }) => way.fingering.notes[index] ?? null),
    take: (lesson) =>
      takeFingering(lesson, piece.id, way.fingering, struck, passage.kind === 'note' ? 'notes' : 'bars'),
  }));
}

/** The struck notes of a passage; a note tied over from the bar before belongs to that bar. */
function stretchOf(struck: StruckLine, passage: Passage): NoteRange | null {
  if (passage.kind === 'note') {
    const index = struck.owners[passage.bar]?.[passage.note];
    return index === undefined ? null : { first: index, last: index };
  }
  const inside = struck.parts.flatMap((parts, index) =>
    passage.kind === 'line' || parts[0]?.bar === passage.bar ? [index] : [],
  );
  const [first, last] = [inside[0], inside.at(-1)];
  return first === undefined || last === undefined ? null : { first, last };
}

/** Where the pins of a written note are kept: with the note that is struck, for a tied one. */
export function pinPlace(
  { struck }: HandLine,
  place: NotePlace,
): { readonly at: NotePlace; readonly pins: LineNote['pins'] } {
  const index = struck.owners[place.bar]?.[place.note] ?? -1;
  return { at: struck.parts[index]?.[0] ?? place, pins: struck.notes[index]?.pins };
}
