import { counted } from '../base';
import { deriveSheet, type Lesson, type LinePiece, transposeTo } from '../lesson';
import { describeKeyIn, describeSignature, type Key, keySignature, keysOfMode, sameKey } from '../theory';

/** How the hand is to play in another key: one shape that moves along the neck, or open strings wherever they help. */
export const KEY_HANDS = ['by shape', 'with open strings'] as const;
export type KeyHand = (typeof KEY_HANDS)[number];

/** What a line asks in a key: of the eye, and of the hand. */
export interface KeyChoice {
  readonly key: Key;
  /** `A♭ major`. */
  readonly name: string;
  /** Accidentals to read. */
  readonly accidentals: number;
  /** Moves of the hand, the highest fret, and the share of notes on open strings (0–1); null where it does not fit. */
  readonly hand: { readonly shifts: number; readonly highestFret: number; readonly open: number } | null;
  /** What is said of it: `four flats to read; for the hand one position, up to fret 6`. */
  readonly words: string;
}

/** A lesson in another key, played in a way. */
export function inKey(lesson: Lesson, pieceId: string, key: Key, how: KeyHand): Lesson {
  const moved = transposeTo(lesson, pieceId, key.tonic);
  return {
    ...moved,
    pieces: moved.pieces.map((piece) =>
      piece.kind === 'line' ? { ...piece, hand: { ...piece.hand, openStrings: HANDS[how] } } : piece,
    ),
  };
}

const HANDS: Readonly<Record<KeyHand, LinePiece['hand']['openStrings']>> = {
  'by shape': 'avoid',
  'with open strings': 'prefer',
};

function handIn(lesson: Lesson, pieceId: string): KeyChoice['hand'] {
  const piece = lesson.pieces.find((each) => each.id === pieceId);
  const sheet = piece && deriveSheet(piece, lesson.instrument, 'letters');
  if (sheet?.kind !== 'line') return null;
  const { notes } = sheet.fingering;
  const fingered = notes.filter((note) => note !== null);
  if (fingered.length === 0 || fingered.length < notes.length) return null;
  const stopped = fingered.filter(({ fret }) => fret > 0);
  return {
    shifts: stopped.filter(({ position }, index) => index > 0 && position !== stopped[index - 1]?.position)
      .length,
    highestFret: Math.max(0, ...fingered.map(({ fret }) => fret)),
    open: (fingered.length - stopped.length) / fingered.length,
  };
}

/** What the hand does, in words. */
function handWords({ shifts, highestFret, open }: NonNullable<KeyChoice['hand']>): string {
  const stays = shifts === 0 ? 'the hand stays in one place' : `${counted(shifts, 'shift')}`;
  const strings = open === 0 ? 'no open string' : `${Math.round(100 * open)} % on open strings`;
  return `${stays}, up to fret ${highestFret}, ${strings}`;
}

/**
 * The keys that a line can go to, those that are easiest for the hand first: fewest shifts, then lowest on the neck. What is
 * easy to read is told apart: A♭ by shape asks no more of a hand than A does (common practice, no source).
 */
export function keysFor(lesson: Lesson, pieceId: string, how: KeyHand): readonly KeyChoice[] {
  const piece = lesson.pieces.find((each) => each.id === pieceId);
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (sheet?.kind !== 'line') return [];
  const naming = lesson.noteNames ?? 'letters';
  const choices = keysOfMode(sheet.key.mode).map((key): KeyChoice => {
    const moved = sameKey(key, sheet.key)
      ? inKey(lesson, pieceId, sheet.key, how)
      : inKey(lesson, pieceId, key, how);
    const hand = handIn(moved, pieceId);
    const reading = describeSignature(key, naming);
    return {
      key,
      name: describeKeyIn(naming, key),
      accidentals: Math.abs(keySignature(key)),
      hand,
      words: `to read: ${reading}; for the hand: ${hand === null ? 'not all of it lies on this neck' : handWords(hand)}`,
    };
  });
  const effort = ({ hand }: KeyChoice) =>
    hand === null ? 1e6 : hand.shifts * 100 + hand.highestFret - 10 * hand.open;
  return choices.sort((one, other) => effort(one) - effort(other) || one.accidentals - other.accidentals);
}
