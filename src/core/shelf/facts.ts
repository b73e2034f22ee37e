import { isRecord } from '../base';
import { FEEL_IDS, type FeelId } from '../feel';
import { type Lesson, type Piece, readPiece } from '../lesson';
import { LEVELS, type Level, TECHNIQUES, type Technique } from '../line';
import { describeKey } from '../theory';
import { folded } from './fold';

/** Rises when other facts are told of a lesson: facts of another version are made anew from the lesson. */
export const FACTS_VERSION = 1;

/** Characters of a lesson that are searched: far more than any handout holds, and few enough for 5,000 lessons. */
const SEARCHED_TEXT = 40_000;

/** What the shelf knows of a lesson without reading it: derived from it whenever it is saved, never the other way. */
export interface LessonFacts {
  readonly version: typeof FACTS_VERSION;
  /** Whom the handout is for, as the teacher wrote it; '' for nobody. */
  readonly student: string;
  readonly techniques: readonly Technique[];
  readonly feels: readonly FeelId[];
  readonly levels: readonly Level[];
  /** In letters: `B♭ major`. */
  readonly keys: readonly string[];
  /** Written bars of all lines. */
  readonly bars: number;
  /** Everything that is searched besides the title, folded: notes, student, names of versions and pieces, charts, words over bars. */
  readonly text: string;
}

const distinct = <Value>(values: readonly Value[]): readonly Value[] => [...new Set(values)];

function wordsIn(piece: Piece): readonly string[] {
  if (piece.kind === 'blank') return [piece.name];
  return [piece.name, piece.chartText, ...piece.bars.flatMap(({ words }) => words ?? [])];
}

/** The facts of a lesson. */
export function factsOf(lesson: Lesson): LessonFacts {
  const lines = lesson.pieces.filter((piece) => piece.kind === 'line');
  const { student = '' } = lesson.handout;
  const versions = (lesson.versions ?? []).map(({ name }) => name);
  // A line without a chart has no key to be found by.
  const charted = lines.filter(({ chartText }) => chartText.trim() !== '');
  return {
    version: FACTS_VERSION,
    student,
    techniques: TECHNIQUES.filter((each) => lines.some(({ techniques }) => techniques.includes(each))),
    feels: distinct(lines.map(({ feel }) => feel)),
    levels: distinct(lines.map(({ level }) => level)),
    keys: distinct(charted.map((piece) => describeKey(readPiece(piece).key))),
    bars: lines.reduce((sum, { bars }) => sum + bars.length, 0),
    text: folded(
      [student, lesson.notes, ...versions, ...lesson.pieces.flatMap(wordsIn)]
        .join('\n')
        .slice(0, SEARCHED_TEXT),
    ),
  };
}

const areAll =
  <Value>(known: readonly Value[]) =>
  (values: unknown): boolean =>
    Array.isArray(values) && values.every((value) => known.some((each) => each === value));

const areFeels = areAll<string>(FEEL_IDS);
const areTechniques = areAll<string>(TECHNIQUES);
const areLevels = areAll<number>(LEVELS);

/** Whether a value is such facts; anything else is made anew. Plain tests, because a shelf has thousands of them. */
export const isFacts = (value: unknown): value is LessonFacts =>
  isRecord(value) &&
  value.version === FACTS_VERSION &&
  typeof value.student === 'string' &&
  typeof value.text === 'string' &&
  typeof value.bars === 'number' &&
  areTechniques(value.techniques) &&
  areFeels(value.feels) &&
  areLevels(value.levels) &&
  Array.isArray(value.keys) &&
  value.keys.every((key) => typeof key === 'string');
