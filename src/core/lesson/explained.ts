import { explainToStudent } from '../line';
import { lineRequest } from './request';
import type { LineSheet } from './sheet-types';
import type { InstrumentSettings, LinePiece } from './types';

/** The heading of what {@link explainedToStudent} says, on the page and on paper. */
export const EXPLAINED_HEADING = 'What to practise';

/**
 * What a line teaches, where to listen and why there is silence, a sentence each, in a beginner's words; empty for an
 * unwritten line.
 * @param brief - what it teaches and where to listen, and no more: paper has little room
 */
export function explainedToStudent(
  piece: LinePiece,
  { chart, key, bars, noteNames }: LineSheet,
  instrument: InstrumentSettings,
  { brief = false }: { readonly brief?: boolean } = {},
): readonly string[] {
  return explainToStudent(
    lineRequest(piece, chart, key, instrument, noteNames),
    bars.map(({ notes }) => notes.map(({ note }) => note)),
    { brief },
  );
}
