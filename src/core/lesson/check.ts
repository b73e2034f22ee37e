import { checkHand, type Repair } from './hand-check';
import { deriveSheet } from './sheet';
import type { LineSheet } from './sheet-types';
import type { Lesson, LinePiece } from './types';

/** Something a careful colleague would point out about a lesson. */
export interface Finding {
  readonly pieceId: string;
  /** Index of the written bar it is about, or null for the piece as a whole. */
  readonly bar: number | null;
  /** One sentence: what, where and why. */
  readonly message: string;
  /** Looks for a repair when it is asked for; left out where there is none to look for. */
  readonly repair?: () => Repair | null;
}

function withoutNotes(sheet: LineSheet): Finding[] {
  const empty = sheet.bars.flatMap((bar, index) =>
    bar.notes.length === 0 && bar.written.spans.some((span) => span.harmony.kind === 'chord')
      ? [{ index, number: bar.written.number }]
      : [],
  );
  const [first] = empty;
  if (first === undefined) {
    return [];
  }
  const numbers = empty.map(({ number }) => number).join(', ');
  const which = empty.length === 1 ? `Bar ${numbers} has` : `Bars ${numbers} have`;
  return [
    {
      pieceId: sheet.id,
      bar: first.index,
      message: `${which} no notes yet: compose the line or take an idea.`,
    },
  ];
}

function parkedBars(piece: LinePiece): Finding[] {
  return piece.parked.length === 0
    ? []
    : [
        {
          pieceId: piece.id,
          bar: null,
          message: `${piece.parked.length === 1 ? 'One bar of the line is' : `${piece.parked.length} bars of the line are`} parked, because the chart no longer has a place for it; write its chords again and it comes back.`,
        },
      ];
}

/** All findings about a lesson, piece by piece in the order of the sheet; an empty list means nothing to mend. */
export function checkLesson(lesson: Lesson): readonly Finding[] {
  return lesson.pieces.flatMap((piece) => {
    const sheet = deriveSheet(piece, lesson.instrument, lesson.noteNames);
    if (piece.kind !== 'line' || sheet.kind !== 'line') {
      return [];
    }
    // What lies too far up the neck is the hand's to say, who knows where it is played.
    const music = sheet.findings
      .filter(({ kind }) => kind !== 'fret')
      .map(({ bar, message, repair }) => ({ pieceId: piece.id, bar, message: `${message} ${repair}` }));
    return [
      ...withoutNotes(sheet),
      ...checkHand(piece, lesson.instrument).map((finding) => ({ pieceId: piece.id, ...finding })),
      ...music,
      ...parkedBars(piece),
    ];
  });
}
