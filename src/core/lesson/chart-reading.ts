import { rememberedFor } from '../base';
import { type Naming, sameKey } from '../theory';
import { keyGuessesIn, readPiece } from './request';
import type { ChartReading } from './sheet-types';
import type { LinePiece } from './types';

/** The chart of a piece with its note names in letters, without its line: what a chart tells while it is typed. */
export const lettersReading = rememberedFor((piece: LinePiece): ChartReading => {
  const { chart, problems, key, keyGuesses, sectionKeys } = readPiece(piece);
  return {
    chart,
    problems,
    key,
    keyGuesses,
    otherKeys: chart.sections.flatMap(({ start, again }, section) => {
      const found = sectionKeys[section] ?? null;
      const read = chart.bars[start]?.key ?? key;
      return again || found === null || sameKey(found, read) ? [] : [{ section, key: found }];
    }),
  };
});

/**
 * What the chart of a piece tells, as the sheet of its line has it; quick, because no note is looked at but for the
 * key.
 * @param noteNames - as the lesson has them; without them, the letters
 */
export function chartReading(piece: LinePiece, noteNames: Naming | undefined): ChartReading {
  const reading = lettersReading(piece);
  return noteNames === undefined || noteNames === 'letters'
    ? reading
    : { ...reading, noteNames, keyGuesses: keyGuessesIn(noteNames, piece, reading.chart) };
}
