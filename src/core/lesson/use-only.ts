import { fieldTable, sameFields } from '../base';
import type { BlankPiece, Lesson, LinePiece, Piece } from './types';

/** The fields of a lesson that are its matter; the others say how it is read and printed. */
const HEAD = fieldTable<Lesson>()({
  format: true,
  version: true,
  id: true,
  title: true,
  notes: true,
  instrument: true,
  handout: false,
  noteNames: false,
  // Held against each other one by one.
  pieces: false,
  versions: true,
  open: false,
  idsUpTo: false,
});

/** The fields of a line that are its matter; the others say how it is played and printed. */
const LINE = fieldTable<LinePiece>()({
  kind: true,
  id: true,
  name: true,
  chartText: true,
  key: true,
  metre: true,
  tempo: false,
  count: false,
  feel: true,
  level: true,
  techniques: true,
  hand: true,
  seed: true,
  playing: false,
  bars: true,
  parked: true,
  aims: true,
  sections: true,
  parkedSections: true,
  meant: true,
  takes: true,
  buildUp: true,
  leftOut: false,
});

const BLANK = fieldTable<BlankPiece>()({
  kind: true,
  id: true,
  name: true,
  metre: true,
  bars: true,
  prompt: true,
  leftOut: false,
});

function samePiece(one: Piece, other: Piece | undefined): boolean {
  if (one === other) return true;
  if (one.kind === 'line') return other?.kind === 'line' && sameFields(LINE, one, other);
  return other?.kind === 'blank' && sameFields(BLANK, one, other);
}

/** Whether two states of a lesson differ only in how it is read, played and printed. */
export const differInUseOnly = (one: Lesson, other: Lesson): boolean =>
  one.pieces.length === other.pieces.length &&
  sameFields(HEAD, one, other) &&
  one.pieces.every((piece, index) => samePiece(piece, other.pieces[index]));
