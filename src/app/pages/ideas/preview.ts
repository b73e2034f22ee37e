import { fieldTable, remembered, sameFields } from '../../../core/base';
import {
  deriveSheet,
  type InstrumentSettings,
  type Lesson,
  type LinePiece,
  type LineSheet,
} from '../../../core/lesson';
import type { Idea } from '../../../core/line';

/** Ideas tried out in a piece; a piece never changes in place, so what was derived stays true. */
const tried = new WeakMap<LinePiece, Map<string, LinePiece>>();

/** The piece as it would be with the idea in the bar (index from 0); the lesson itself is not touched. */
function withIdea(piece: LinePiece, bar: number, idea: Idea): LinePiece {
  const known = remembered(tried, piece, () => new Map<string, LinePiece>());
  return remembered(known, `${bar} ${idea.id}`, () => ({
    ...piece,
    bars: piece.bars.map((each, index) => (index === bar ? { ...each, notes: idea.notes } : each)),
  }));
}

/** The whole sheet with the idea in its bar, fingered in its place. */
export function sheetWithIdea(
  piece: LinePiece,
  instrument: InstrumentSettings,
  noteNames: Lesson['noteNames'],
  bar: number,
  idea: Idea,
): LineSheet | null {
  const sheet = deriveSheet(withIdea(piece, bar, idea), instrument, noteNames);
  return sheet.kind === 'line' ? sheet : null;
}

/** One bar of a sheet as a sheet of its own, for a small picture; how its eighths swing is said on the sheet. */
export function singleBar(sheet: LineSheet, index: number): LineSheet | null {
  const bar = sheet.bars[index];
  if (bar === undefined) return null;
  const written = { ...bar.written, section: 0, repeatStart: false, repeatEnd: null };
  return {
    ...sheet,
    feel: { ...sheet.feel, swing: [] },
    chart: {
      ...sheet.chart,
      metre: written.metre,
      sections: [{ name: null, start: 0, length: 1, again: false }],
      bars: [written],
    },
    bars: [{ ...bar, written }],
    problems: [],
  };
}

/** Whether two stored bars hold the same notes. */
export const sameNotes = (one: Idea['notes'], other: Idea['notes']): boolean =>
  one.length === other.length &&
  one.every((note, index) => {
    const same = other[index];
    return (
      same !== undefined &&
      note.start === same.start &&
      note.duration === same.duration &&
      note.pitch.letter === same.pitch.letter &&
      note.pitch.alteration === same.pitch.alteration &&
      note.pitch.octave === same.pitch.octave &&
      note.tiedOn === same.tiedOn
    );
  });

/** Which parts of a line piece its ideas depend on beside the notes of its bars: a new part is refused until it stands here. */
const ASKED_WITH = fieldTable<LinePiece>()({
  kind: false,
  id: true,
  name: false,
  chartText: true,
  key: true,
  metre: true,
  tempo: true,
  count: false,
  feel: true,
  level: true,
  techniques: true,
  hand: true,
  seed: false,
  playing: false,
  bars: false,
  parked: false,
  aims: true,
  sections: true,
  parkedSections: false,
  meant: false,
  takes: false,
  buildUp: false,
  leftOut: false,
});

/** Whether the ideas for a bar are still answers to the same question: only the bar itself may have changed. */
export const sameQuestion = (one: LinePiece, other: LinePiece, bar: number): boolean =>
  sameFields(ASKED_WITH, one, other) &&
  one.bars.length === other.bars.length &&
  one.bars.every((each, index) => index === bar || each.notes === other.bars[index]?.notes);
