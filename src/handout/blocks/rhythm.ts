import { barName, barTicks, beatAt, capitalised } from '../../core/base';
import { describeBar, type LineSheet, type SheetBar } from '../../core/lesson';
import type { Steps } from '../../score';
import { excerptOf } from '../excerpt';
import { moved, type Tag } from '../layout/marks';
import { headingRow, joinRows, paragraphRows, type Row } from '../layout/rows';
import { CLAPPED } from './clapped';
import type { BlockContext } from './context';

/** One pair of eighths is not worth a part of the sheet (common practice, no source). */
const LEAST = 2;

/**
 * Index of the bar whose rhythm is hardest to place; null when every bar only marches on the beat, with a
 * pair of eighths at most.
 *
 * What makes it hard (common practice, no source): a silent beat one, a note off the beat, and most of all a
 * note off the beat that is held over the next one.
 */
export function trickiestBar(sheet: LineSheet): number | null {
  const marks = sheet.bars.map(difficulty);
  const most = Math.max(0, ...marks);
  return most < LEAST ? null : marks.indexOf(most);
}

function difficulty({ notes, written }: SheetBar): number {
  const [first] = notes;
  if (first === undefined) return 0;
  const offBeat = notes.map(({ note }) => {
    const beat = beatAt(written.metre, note.start);
    const after = note.start - beat.start;
    if (after === 0) return 0;
    return after + note.duration > beat.length ? 3 : 1;
  });
  const silentOne = first.note.start > 0 ? 2 : 0;
  return offBeat.reduce<number>((sum, one) => sum + one, silentOne);
}

/** Whether anything of a bar is silent. */
export const hasSilence = (bar: SheetBar | undefined): boolean =>
  bar !== undefined &&
  bar.notes.reduce((sum, { note }) => sum + note.duration, 0) < barTicks(bar.written.metre);

const GAP = 14;

/** The bar with the hardest rhythm, to be clapped: on one line with the counting, and how to go about it. */
export function* rhythmRows(sheet: LineSheet, context: BlockContext): Steps<readonly Row[]> {
  const index = trickiestBar(sheet);
  if (index === null) return [];
  const width = context.width * 0.5;
  const { layout, index: score } = yield* context.engrave(excerptOf(sheet, index, index), {
    ...CLAPPED,
    width,
    barsPerSystem: 1,
    measureNumbers: false,
    feel: false,
  });
  const number = sheet.bars[index]?.written.number ?? index + 1;
  const whisper = hasSilence(sheet.bars[index]) ? ', and whisper the rests' : '';
  const words = joinRows(
    paragraphRows(
      `${capitalised(barName(number))}: clap it while you count aloud${whisper}. Then play it on one note, then as it is written.`,
      context.sizes.body,
      context.width - width - GAP,
      context.measure,
    ),
  );
  const [system] = layout.systems;
  const bar = sheet.bars[index];
  if (system === undefined || bar === undefined) return [];
  const figure: Tag = {
    role: 'Figure',
    alternative: describeBar(sheet, bar, { pitches: false }),
  };
  return [
    headingRow('The tricky rhythm', context.sizes.heading, context.spacing.blockGap),
    {
      height: Math.max(system.height, words.height),
      gap: 2,
      keepWithNext: false,
      marks: [
        { kind: 'system', score, system: 0, x: 0, y: 0, tag: figure },
        ...words.marks.map((mark) =>
          moved(mark, width + GAP, Math.max(0, system.staff.top - context.sizes.body.size)),
        ),
      ],
    },
  ];
}
