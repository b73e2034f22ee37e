import { capitalised } from '../base';
import { explainToStudent, type ToldSentence } from '../line';
import { lineRequest } from './request';
import type { LineSheet } from './sheet-types';
import type { InstrumentSettings, LinePiece } from './types';

/** The heading of what {@link explainedToStudent} says, on the page and on paper. */
export const EXPLAINED_HEADING = 'What to practise';

/** A page is laid out several times until it fits, and its sentences are the same: a sheet is made of its instrument. */
const told = new WeakMap<
  LineSheet,
  { readonly piece: LinePiece; readonly brief: boolean; readonly sentences: readonly ToldSentence[] }
>();

function toldOf(
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
    { brief, carriers: { drums, chops } },
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

/** What a teacher can have lit up on the score in class: where to listen, where it is silent, or one technique. */
export interface Light {
  readonly kind: 'listen' | 'silence' | 'technique';
  readonly name: string;
  readonly sentence: string;
  /** Indices of written bars. */
  readonly bars: readonly number[];
}

const SILENCE: ReadonlySet<ToldSentence['about']> = new Set([
  'beat one silent',
  'long silences',
  'silent bars',
]);

/** Everything that can be lit up on a line, in the order of a lesson: ears first, then silence, then the techniques. */
export function lightsOf(
  piece: LinePiece,
  sheet: LineSheet,
  instrument: InstrumentSettings,
): readonly Light[] {
  const lights = toldOf(piece, sheet, instrument, false).flatMap(({ about, bars, sentence }): Light[] => {
    if (about === 'form') return [];
    if (about === 'listen') return [{ kind: 'listen', name: 'Listen', sentence, bars }];
    return [{ kind: SILENCE.has(about) ? 'silence' : 'technique', name: capitalised(about), sentence, bars }];
  });
  const order: readonly Light['kind'][] = ['listen', 'silence', 'technique'];
  return order.flatMap((kind) => lights.filter((light) => light.kind === kind));
}
