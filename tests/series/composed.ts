import { composePiece } from '../../src/core/composing';
import type { FeelId } from '../../src/core/feel';
import {
  type Lesson,
  markTechnique,
  newLesson,
  setChartText,
  setFeel,
  setLevel,
} from '../../src/core/lesson';
import type { Level, Technique } from '../../src/core/line';

interface Wish {
  readonly chart?: string;
  readonly feel?: FeelId;
  readonly level?: Level;
  /** Taken out of what the feel usually teaches. */
  readonly without?: readonly Technique[];
}

const CHART = '| C | Am | F | G |\n| C | Am | Dm G | C |';

/** A lesson with a composed line; its id is its seed. */
export function composedLesson(id: string, wish: Wish = {}): Lesson {
  const { chart = CHART, feel = 'early-ska', level = 3, without = [] } = wish;
  const start = newLesson(id, `Lesson ${id}`);
  const piece = start.pieces[0]?.id ?? '';
  const asked = setLevel(setChartText(setFeel(start, piece, feel), piece, chart), piece, level);
  const fitted = without.reduce((lesson, technique) => markTechnique(lesson, piece, technique, null), asked);
  return composePiece(fitted, piece).lesson;
}
