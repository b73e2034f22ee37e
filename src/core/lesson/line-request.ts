import type { Chart } from '../chart';
import { feelById } from '../feel';
import type { LineRequest } from '../line';
import type { Key, Naming } from '../theory';
import { composerAims } from './composer-aims';
import { instrumentOf } from './request';
import type { InstrumentSettings, LinePiece } from './types';

/**
 * Everything about a piece that shapes its line.
 * @param noteNames - as the lesson has them, where reasons or findings are asked for; letters when left out
 */
export function lineRequest(
  piece: LinePiece,
  chart: Chart,
  key: Key,
  instrument: InstrumentSettings,
  noteNames?: Naming,
): LineRequest {
  return {
    chart,
    key,
    feel: feelById(piece.feel),
    tempo: piece.tempo,
    level: piece.level,
    techniques: new Set(piece.techniques),
    instrument: instrumentOf(instrument),
    hand: piece.hand,
    aims: composerAims(piece, chart),
    ...(noteNames === undefined ? {} : { noteNames }),
  };
}
