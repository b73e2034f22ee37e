import { barNames, capitalised } from '../base';
import type { ToldSentence } from '../line';
import { toldOf } from './explained';
import type { LineSheet } from './sheet-types';
import { silentBeats } from './silent-beats';
import type { InstrumentSettings, LinePiece } from './types';

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

/** The silence of a line that teaches none: still where it is counted through. */
function shorterSilence({ bars }: LineSheet): readonly Light[] {
  const silent = bars.flatMap((bar, index) =>
    bar.notes.length > 0 && silentBeats(bar).length > 0 ? [index] : [],
  );
  if (silent.length === 0) return [];
  const names = barNames(silent.map((bar) => bars[bar]?.written.number ?? bar + 1));
  const where = silent.length === bars.length ? 'every bar' : names;
  const sentence = `Nothing sounds through a whole beat in ${where}: stop the string, and count on.`;
  return [{ kind: 'silence', name: 'Silence', sentence, bars: silent }];
}

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
  const silence = lights.some(({ kind }) => kind === 'silence') ? [] : shorterSilence(sheet);
  return order.flatMap((kind) => [...lights, ...silence].filter((light) => light.kind === kind));
}
