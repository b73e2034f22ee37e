import { keysStatement, type LineSheet } from '../../core/lesson';
import { headedRows, type Row, taggedRow, textRow } from '../layout/rows';
import { chartLineWords } from './alternatives';
import { cellsOf } from './chart/cells';
import { linesOf, type WideCell, widthsOf } from './chart/lines';
import { drawLine, leastWidth, lookOf } from './chart/marks';
import type { BlockContext } from './context';

const LINE_GAP = 4;
const PUSH_WORDS = '< before a chord: it comes an eighth early.';

/** The chords alone, laid out by the width of their symbols, each section beginning a line of its own. */
export function chartRows(sheet: LineSheet, context: BlockContext): readonly Row[] {
  const { sizes, spacing, width, settings } = context;
  const look = lookOf(context);
  const cells = cellsOf(sheet.chart, sheet.noteNames);
  const wide = cells.map((cell): WideCell => ({ cell, least: leastWidth(cell, look) }));
  let section = -1;
  const rows = linesOf(wide, width).flatMap((line, index): readonly Row[] => {
    const number = line.find(({ cell }) => !cell.pickup)?.cell.section ?? 0;
    const name = number === section ? null : (sheet.chart.sections[number]?.name ?? null);
    section = number;
    const row = lineRow(line, context);
    return name === null
      ? [{ ...row, gap: index === 0 ? 2 : LINE_GAP }]
      : [
          textRow(name, sizes.smallBold, { gap: index === 0 ? 0 : 2 * LINE_GAP, keepWithNext: true }),
          { ...row, gap: 1 },
        ];
  });
  const pushes = sheet.chart.bars.some(({ pushed }) => pushed === true);
  // The facts of the piece tell its key already.
  const key = settings.blocks.includes('facts') ? '' : keysStatement(sheet);
  return headedRows('Chords', sizes.heading, spacing.blockGap, [
    ...(key === '' ? [] : [textRow(key, sizes.small, { gap: 2, keepWithNext: true })]),
    ...rows,
    ...(pushes ? [textRow(PUSH_WORDS, sizes.small, { gap: LINE_GAP })] : []),
  ]);
}

function lineRow(line: readonly WideCell[], context: BlockContext): Row {
  const needed = line.reduce((sum, { least }) => sum + least, 0);
  const shrink = Math.min(1, context.width / needed);
  const look = lookOf(context, shrink);
  const fitted =
    shrink === 1
      ? line
      : line.map(({ cell }) => ({ cell, least: Math.min(context.width, leastWidth(cell, look)) }));
  const drawn = drawLine(fitted, widthsOf(fitted, context.width), look);
  const alternative = chartLineWords(line.map(({ cell }) => cell));
  return taggedRow({ ...drawn, gap: 0, keepWithNext: false }, { role: 'Figure', alternative });
}
