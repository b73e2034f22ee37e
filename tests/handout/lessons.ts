import { deriveSheets, type HandoutSettings, type Lesson, sampleLesson } from '../../src/core/lesson';
import { engravedAs, handoutPages } from '../../src/handout/layout/pages';
import type { Engravable, ScoreLayout, ScoreOptions, Steps } from '../../src/score';
import { finished } from '../../src/score/steps';

/** Half an em a letter: near enough to the real face, and the same on every machine. */
export const measure = (text: string, { size }: { readonly size: number }): number =>
  [...text].length * size * 0.5;

/** Systems of four bars, sixteen times as high as a staff space, without ink. */
function* engrave(sheet: Engravable, options: ScoreOptions): Steps<ScoreLayout> {
  const bars =
    sheet.kind === 'blank' ? sheet.bars : (sheet.kind === 'keyboard' ? sheet.line.bars : sheet.bars).length;
  const space = options.staffSpace ?? 10;
  const height = space * (16 + (options.counting ? 3 : 0));
  const systems = Array.from({ length: Math.ceil(bars / options.barsPerSystem) }, (_, index) => ({
    index,
    y: index * height,
    width: options.width,
    height,
    staff: { top: space * 4, bottom: space * 8 },
    tab: { top: space * 10, bottom: space * 15 },
    bars: [],
    fingerprint: `${engravedAs(sheet, options)} ${index}`,
    scale: space / 10,
    ink: [],
  }));
  return { width: options.width, height: height * systems.length, systems };
}

/** Its line is composed once for all tests. */
const SAMPLE = sampleLesson(0, 'test');

/** A sample lesson with handout settings of its own. */
export function lessonWith(settings: Partial<HandoutSettings>, change: Partial<Lesson> = {}): Lesson {
  const lesson = { ...SAMPLE, ...change };
  return { ...lesson, handout: { ...lesson.handout, ...settings } };
}

export const layOut = (lesson: Lesson) =>
  finished(handoutPages(lesson, deriveSheets(lesson), null, { measure, engrave }));
