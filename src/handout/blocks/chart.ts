import { barTicks } from '../../core/base';
import { beginsBar, type ChartBar, harmonyText, navigationWords } from '../../core/chart';
import type { LineSheet } from '../../core/lesson';
import type { Mark, TextStyle } from '../layout/marks';
import { type Row, textRow } from '../layout/rows';
import type { BlockContext } from './context';

const BARS_A_ROW = 4;
const PADDING = 5;
/** The musical signs for the beginning and the end of a repeat (Unicode, Musical Symbols). */
const REPEAT_START = '\u{1D106}';
const REPEAT_END = '\u{1D107}';

/** The chords alone, four bars a row, each section beginning a row of its own. */
export function chartRows(sheet: LineSheet, context: BlockContext): readonly Row[] {
  const { sizes, spacing } = context;
  return [
    textRow('Chords', sizes.heading, { gap: spacing.blockGap, keepWithNext: true }),
    ...rowsOfBars(sheet).flatMap(({ name, bars }, index) => [
      ...(name === null
        ? []
        : [textRow(name, sizes.smallBold, { gap: index === 0 ? 0 : 4, keepWithNext: true })]),
      chordRow(bars, sheet.noteNames, context),
    ]),
  ];
}

interface BarsInRow {
  /** A section's name where it begins. */
  readonly name: string | null;
  readonly bars: readonly ChartBar[];
}

function rowsOfBars(sheet: LineSheet): readonly BarsInRow[] {
  const rows: { name: string | null; bars: ChartBar[] }[] = [];
  for (const bar of sheet.chart.bars) {
    const last = rows.at(-1);
    const section = last?.bars[0]?.section;
    if (last !== undefined && section === bar.section && last.bars.length < BARS_A_ROW) last.bars.push(bar);
    else {
      const name = section === bar.section ? null : (sheet.chart.sections[bar.section]?.name ?? null);
      rows.push({ name, bars: [bar] });
    }
  }
  return rows;
}

function chordRow(bars: readonly ChartBar[], noteNames: LineSheet['noteNames'], context: BlockContext): Row {
  const style: TextStyle = { size: context.sizes.score.chord, bold: true };
  const height = style.size * 1.75;
  const cell = context.width / BARS_A_ROW;
  const marks: Mark[] = bars.flatMap((bar, index) =>
    barMarks(bar, noteNames, index * cell, cell, height, style, context),
  );
  marks.push({ kind: 'rule', x: bars.length * cell, y: 0, width: 0, height });
  return { height, gap: 2, keepWithNext: false, marks };
}

/** Segno, coda and the words of the way (`D.S. al Coda`) in small print above the chords. */
function wayMarks(bar: ChartBar, left: number, cell: number, context: BlockContext): readonly Mark[] {
  const { small } = context.sizes;
  const signs = bar.navigation ?? [];
  const words = (begins: boolean): string =>
    signs
      .filter((sign) => beginsBar(sign) === begins)
      .map(navigationWords)
      .join(', ');
  const mark = (text: string, x: number, anchor: 'start' | 'end'): readonly Mark[] =>
    text === '' ? [] : [{ kind: 'text', text, ...small, x, y: small.size * 0.8, anchor }];
  const beside = bar.ending === null ? 0 : small.size * 1.5;
  return [
    ...mark(words(true), left + PADDING / 2 + beside, 'start'),
    ...mark(words(false), left + cell - PADDING / 2, 'end'),
  ];
}

function barMarks(
  bar: ChartBar,
  noteNames: LineSheet['noteNames'],
  left: number,
  cell: number,
  height: number,
  style: TextStyle,
  context: BlockContext,
): readonly Mark[] {
  const baseline = height / 2 + style.size * 0.35;
  const text = (content: string, x: number, anchor: 'start' | 'end', own: TextStyle = style): Mark => ({
    kind: 'text',
    text: content,
    ...own,
    x,
    y: baseline,
    anchor,
  });
  const sign: TextStyle = { size: style.size, bold: false };
  const start = bar.repeatStart ? style.size * 0.9 : 0;
  const times = bar.repeatEnd !== null && bar.repeatEnd !== 2 ? ` x${bar.repeatEnd}` : '';
  const room = cell - 2 * PADDING - start;
  const marks: Mark[] = [{ kind: 'rule', x: left, y: 0, width: 0, height }];
  if (bar.repeatStart) marks.push(text(REPEAT_START, left + PADDING / 2, 'start', sign));
  if (bar.repeatEnd !== null) {
    marks.push(text(`${REPEAT_END}${times}`, left + cell - PADDING / 2, 'end', sign));
  }
  if (bar.ending !== null) {
    marks.push({
      kind: 'text',
      text: `${bar.ending.join(', ')}.`,
      ...context.sizes.small,
      x: left + PADDING / 2,
      y: context.sizes.small.size * 0.8,
      anchor: 'start',
    });
  }
  marks.push(...wayMarks(bar, left, cell, context));
  const shift = start + (bar.ending === null ? 0 : context.sizes.small.size);
  let free = left + PADDING + shift;
  for (const span of bar.spans) {
    const symbol = harmonyText(span.harmony, noteNames);
    const x = Math.max(free, left + PADDING + shift + (room * span.start) / barTicks(bar.metre));
    marks.push(text(symbol, x, 'start'));
    free = x + context.measure(symbol, style) + style.size * 0.4;
  }
  return marks;
}
