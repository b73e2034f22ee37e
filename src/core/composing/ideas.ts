import { type LineNote, rememberedFor } from '../base';
import {
  deriveSheet,
  type InstrumentSettings,
  type Lesson,
  type LinePiece,
  type LineSheet,
  lineRequest,
} from '../lesson';
import {
  explainLine,
  type Idea,
  type IdeaOffer,
  ideaOffer,
  type LineNotes,
  type LineRequest,
  lineDistance,
} from '../line';

/** A sheet keeps the bars that stay as they were, and the line what was heard of their notes. */
const notesOf = rememberedFor((bar: LineSheet['bars'][number]): readonly LineNote[] =>
  bar.notes.map(({ note }) => note),
);

/**
 * The ideas for one written bar (index from 0) in the line as it stands, the best first; where there are none or
 * only a few, with the reason.
 * @param noteNames - for what is said of them; letters when left out
 */
export function ideaOfferFor(
  piece: LinePiece,
  settings: InstrumentSettings,
  barIndex: number,
  noteNames?: Lesson['noteNames'],
): IdeaOffer {
  const sheet = deriveSheet(piece, settings, 'letters');
  if (sheet.kind !== 'line' || sheet.bars[barIndex] === undefined) {
    return { ideas: [], remark: null };
  }
  const notes = sheet.bars.map(notesOf);
  return ideaOffer(lineRequest(piece, sheet.chart, sheet.key, settings, noteNames), notes, barIndex);
}

/** The ideas of {@link ideaOfferFor} alone. */
export const ideasFor = (piece: LinePiece, settings: InstrumentSettings, barIndex: number): readonly Idea[] =>
  ideaOfferFor(piece, settings, barIndex).ideas;

/** What the line as it stands teaches where and what to listen for, in a few short sentences. */
export function explainPiece(
  piece: LinePiece,
  sheet: LineSheet,
  settings: InstrumentSettings,
): readonly string[] {
  const notes = sheet.bars.map((bar) => bar.notes.map((each) => each.note));
  return explainLine(lineRequest(piece, sheet.chart, sheet.key, settings, sheet.noteNames), notes);
}

/** How far the line with an idea in a bar lies from the line as it stands: rhythm, contour and the notes on strong beats. */
export const apartBy =
  (request: LineRequest, line: LineNotes, bar: number) =>
  (idea: Idea): number =>
    lineDistance(
      request,
      line,
      line.map((notes, index) => (index === bar ? idea.notes : notes)),
    ).whole;
