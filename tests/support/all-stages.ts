import { findChartKeys, parseChart, playOrder, printChart } from '../../src/core/chart';
import { checkLesson, composePiece } from '../../src/core/composing';
import { packMxl, writeLessonLink, writeMidi, writeMusicXml, writeTextTab } from '../../src/core/exchange';
import { FEEL_IDS } from '../../src/core/feel';
import {
  deriveSheets,
  type Lesson,
  type LineSheet,
  newLesson,
  parseLesson,
  printLesson,
  setChartText,
} from '../../src/core/lesson';
import { LEVELS } from '../../src/core/line';
import { buildPerformance } from '../../src/core/performance';
import type { Part } from '../../src/core/playing';
import { engrave } from '../../src/score/engrave';
import { typedLesson } from './typed-lessons';

const PARTS: ReadonlySet<Part> = new Set<Part>(['bass', 'drums', 'chops', 'organ', 'click']);

/** Lines up to here are composed; longer charts are cut. */
const MOST_BARS = 16;

/** Lines up to here are drawn, played and exported. */
const MOST_BARS_DRAWN = 200;

/** A chart text through reading and deriving. */
export function throughDerived(chart: string): string {
  const lesson = newLesson('lesson-1', 'Chart');
  const typed = setChartText(lesson, lesson.pieces[0]?.id ?? '', chart);
  deriveSheets(typed);
  const read = parseChart(chart, { count: 4, unit: 4 });
  playOrder(read.chart);
  printChart(read.chart);
  findChartKeys(read.chart);
  const again = parseLesson(printLesson(typed));
  if (!again.ok) throw new Error('It could not be read again.');
  return 'derived';
}

/** A line sheet through engraving, playing and every export. */
function throughSheet(sheet: LineSheet, seed: number): void {
  engrave(sheet, {
    width: 500 + (seed % 700),
    degrees: true,
    fingers: true,
    counting: seed % 2 === 0,
    barsPerSystem: 4,
    measureNumbers: true,
  });
  const performance = buildPerformance(sheet, { tempo: sheet.tempo, countIn: 1, passage: null });
  writeMidi({ performance, sheet, title: sheet.name, parts: PARTS });
  packMxl(writeMusicXml(sheet, sheet.name));
  writeTextTab(sheet, sheet.name);
}

type Input =
  | { readonly chart: string; readonly seed: number }
  /** A lesson goes on with its own line, or is composed anew. */
  | { readonly lesson: Lesson; readonly seed: number; readonly composes: boolean };

/** An input through every stage: derived, composed, checked, engraved, played, exported; says how far it went. */
export function throughAll(input: Input): string {
  const { seed } = input;
  const lesson = 'lesson' in input ? input.lesson : lessonOf(input.chart, seed);
  const sheets = deriveSheets(lesson);
  const short = sheets.every((sheet) => sheet.kind !== 'line' || sheet.bars.length <= MOST_BARS);
  const composes = short && (!('lesson' in input) || input.composes);
  const composed = composes
    ? lesson.pieces.reduce(
        (made, piece) => (piece.kind === 'line' ? composePiece(made, piece.id).lesson : made),
        lesson,
      )
    : lesson;
  checkLesson(composed);
  // From here on a score is laid out in many steps (`inTurns`), so no task of it is as long as the whole.
  if (sheets.some((sheet) => sheet.kind === 'line' && sheet.bars.length > MOST_BARS_DRAWN))
    return 'read, derived and checked';
  const written = composes ? deriveSheets(composed) : sheets;
  for (const sheet of written) if (sheet.kind === 'line') throughSheet(sheet, seed);
  writeLessonLink(composed, 'https://example.org/');
  const again = parseLesson(printLesson(composed));
  if (!again.ok) throw new Error('It could not be read again.');
  return composes ? 'composed and through all' : 'through all with its own line';
}

function lessonOf(chart: string, seed: number): Lesson {
  const feel = FEEL_IDS[seed % FEEL_IDS.length] ?? 'early-ska';
  const level = LEVELS[(seed >> 4) % LEVELS.length] ?? 2;
  return typedLesson('lesson-1', { chart: shortened(chart), feel, level });
}

/** The chart without its last lines, until it is short enough; a line of too many bars goes. */
function shortened(chart: string): string {
  const lines = chart.split('\n');
  while (lines.length > 0) {
    const text = lines.join('\n');
    if (parseChart(text, { count: 4, unit: 4 }).chart.bars.length <= MOST_BARS) return text;
    lines.pop();
  }
  return '| C | F |';
}
