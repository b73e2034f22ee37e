import type { LineNote } from '../base';
import { midiOf } from '../base';
import { type Idea, ideasForBar } from '../line';
import { lineRequest } from './request';
import { deriveSheet } from './sheet';
import type { InstrumentSettings, LinePiece } from './types';

/** The ideas for one written bar (index from 0) in the line as it stands, the best first. */
export function ideasFor(piece: LinePiece, settings: InstrumentSettings, barIndex: number): readonly Idea[] {
  const sheet = deriveSheet(piece, settings, 'letters');
  if (sheet.kind !== 'line' || sheet.bars[barIndex] === undefined) {
    return [];
  }
  const notes = sheet.bars.map((bar) => bar.notes.map((each) => each.note));
  return ideasForBar(lineRequest(piece, sheet.chart, sheet.key, settings), notes, barIndex);
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
