import type { LineNote } from '../base';
import { midiOf } from '../base';
import {
  deriveSheet,
  type InstrumentSettings,
  type Lesson,
  type LinePiece,
  type LineSheet,
  lineRequest,
} from '../lesson';
import { explainLine, type Idea, type IdeaOffer, ideaOffer } from '../line';

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
  const notes = sheet.bars.map((bar) => bar.notes.map((each) => each.note));
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

/** How much of a bar an idea leaves as it is, from 0 to 1: onsets it shares, and pitches on them. */
export function likeness(notes: readonly LineNote[]): (idea: Idea) => number {
  const at = new Map(notes.map((note) => [Number(note.start), midiOf(note.pitch)]));
  return (idea) => {
    const shared = idea.notes.filter(({ start }) => at.has(start));
    const same = shared.filter(({ start, pitch }) => at.get(start) === midiOf(pitch));
    const most = Math.max(notes.length, idea.notes.length, 1);
    return (shared.length + same.length) / (2 * most);
  };
}
