import type { LineSheet } from '../../core/lesson';
import type { Steps } from '../../score';
import { headedRows, paragraphRows, type Row } from '../layout/rows';
import { systemWords } from './alternatives';
import { CLAPPED } from './clapped';
import type { BlockContext } from './context';
import { hasSilence } from './rhythm';
import { systemRows } from './systems';

/** The rhythm of the whole line alone, to be clapped and counted before a note of it is played. */
export function* clappingRows(sheet: LineSheet, context: BlockContext): Steps<readonly Row[]> {
  const { sizes, spacing, width, measure } = context;
  const { layout, index: score } = yield* context.engrave(sheet, CLAPPED);
  const whisper = sheet.bars.some(hasSilence) ? '; whisper the rests' : '';
  const words = paragraphRows(`Clap and count aloud${whisper}.`, sizes.body, width, measure);
  const telling = { pitches: false, rests: true };
  return headedRows('The rhythm to clap', sizes.heading, spacing.blockGap, [
    ...words.map((row) => ({ ...row, keepWithNext: true })),
    ...systemRows(layout, score, context, (system) => ({
      role: 'Figure',
      alternative: systemWords(sheet, system, telling),
    })),
  ]);
}
