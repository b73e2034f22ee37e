import { explainToStudent, type ToldSentence } from '../line';
import { lineRequest } from './line-request';
import type { LineSheet } from './sheet-types';
import type { InstrumentSettings, LinePiece } from './types';

/** The heading of what {@link explainedToStudent} says, on the page and on paper. */
export const EXPLAINED_HEADING = 'What to practise';

/** A page is laid out several times until it fits, and its sentences are the same: a sheet is made of its instrument. */
const told = new WeakMap<
  LineSheet,
  { readonly piece: LinePiece; readonly brief: boolean; readonly sentences: readonly ToldSentence[] }
>();

/** What is told of a line, with what each sentence is about. */
export function toldOf(
  piece: LinePiece,
  sheet: LineSheet,
  instrument: InstrumentSettings,
  brief: boolean,
): readonly ToldSentence[] {
  const known = told.get(sheet);
  if (known !== undefined && known.piece === piece && known.brief === brief) return known.sentences;
  const { chart, key, bars, noteNames } = sheet;
  const { drums, chops } = piece.playing;
  const sentences = explainToStudent(
    lineRequest(piece, chart, key, instrument, noteNames),
    bars.map(({ notes }) => notes.map(({ note }) => note)),
    { brief, carriers: { drums, chops }, analyses: bars.map(({ analysis }) => analysis) },
  );
  told.set(sheet, { piece, brief, sentences });
  return sentences;
}

/**
 * What a line teaches, where to listen and why there is silence, a sentence each, in a beginner's words; empty for an
 * unwritten line.
 * @param brief - what it teaches and where to listen, and no more: paper has little room
 */
export function explainedToStudent(
  piece: LinePiece,
  sheet: LineSheet,
  instrument: InstrumentSettings,
  { brief = false }: { readonly brief?: boolean } = {},
): readonly string[] {
  return toldOf(piece, sheet, instrument, brief).map(({ sentence }) => sentence);
}
