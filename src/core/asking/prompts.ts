import { sameName } from '../base';
import { chordsIn } from '../chart';
import {
  type AimReading,
  aimWords,
  type BlankPiece,
  type BlankPrompt,
  deriveSheet,
  type Lesson,
  type LinePiece,
  type LineSheet,
  lineBeside,
  linePiece,
  newLineLike,
  overChordsOf,
} from '../lesson';
import { type DegreeStep, limitsIn, TECHNIQUE_ROWS, type Technique } from '../line';

/** Degrees that a beginner's line can keep to, the fewest first (common practice, no source). */
const DEGREES: readonly (readonly DegreeStep[])[] = [[1], [1, 5], [1, 3], [1, 3, 5], [1, 3, 7], [1, 3, 5, 7]];

/** What is asked of a technique, to be heard at least once; of the silences in every bar. */
const IN_WORDS: Readonly<Record<Technique, string>> = {
  'chord tones': 'a bar of chord tones',
  'scale steps': 'scale steps in at least one bar',
  'beat one silent': 'beat one silent',
  'long silences': 'half of each bar silent, or more',
  octave: 'an octave in at least one bar',
  'approach note': 'a half step into the next chord at least once',
  anticipation: 'a chord that comes early at least once',
};

/** What is asked of the beginnings of bars. */
const ONES: Readonly<Record<NonNullable<BlankPrompt['silentOnes']>, string>> = {
  never: 'a note on every beat one',
  'some bars': 'beat one silent in at least one bar',
  most: 'beat one silent in all bars of four but the first',
  'every second bar': 'beat one silent in every second bar',
};

/** Blank bars with the chords of the line beside them. */
interface Prompted {
  readonly line: LinePiece;
  /** As many bars as are blank, in which nothing is written. */
  readonly sheet: LineSheet;
}

/** The chords that blank bars are written over; null where no line beside them has any. */
function promptedBars(lesson: Lesson, { id, name, bars }: BlankPiece): Prompted | null {
  const line = lineBeside(lesson, id);
  if (line === null) return null;
  const empty = newLineLike(line, id, name);
  const written = overChordsOf(line, { ...lesson, pieces: [empty] }, id, bars);
  const piece = written && linePiece(written, id);
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (sheet?.kind !== 'line') return null;
  return { line, sheet: { ...sheet, toWrite: sheet.bars.map((_, index) => index) } };
}

/** The degrees that the line's level has. */
const stepsOf = ({ line, sheet }: Prompted): ReadonlySet<number> =>
  limitsIn(line.level, sheet.feel.bassRole).steps;

/** Steps that every chord of some bars has. */
function sharedSteps({ bars }: LineSheet): ReadonlySet<number> {
  const chords = bars.flatMap(({ written }) => chordsIn(written));
  return new Set(
    DEGREES.flat().filter((step) =>
      chords.every(({ tones }) => tones.some(({ degree }) => degree.step === step)),
    ),
  );
}

const rowOf = (technique: Technique) => TECHNIQUE_ROWS.find((row) => row.technique === technique);

const isOfLevel = (technique: Technique, level: number): boolean => (rowOf(technique)?.from ?? 0) <= level;

/** What a lead brings needs more notes than a few degrees of the chord, or the next one's. */
const needsLead = ({ wanted = [] }: BlankPrompt): boolean =>
  wanted.some((technique) => (rowOf(technique)?.lead ?? null) !== null);

/** What is asked beside the degrees: nothing, a sounding one, a silence or a technique that the line teaches. */
function besides({ level, techniques }: LinePiece): readonly Omit<BlankPrompt, 'degrees'>[] {
  const taught = techniques.filter((each) => each !== 'chord tones' && isOfLevel(each, level));
  return [
    {},
    ...taught.map((technique) => ({ wanted: [technique] })),
    { silentOnes: taught.includes('beat one silent') ? 'every second bar' : 'never' },
  ];
}

/**
 * What blank bars can ask for: degrees that the level has and every chord over them, with one thing beside them that the
 * line teaches. A line of the level can keep each.
 */
export function promptsFor(lesson: Lesson, piece: BlankPiece): readonly BlankPrompt[] {
  const prompted = promptedBars(lesson, piece);
  if (prompted === null) return [];
  const steps = stepsOf(prompted);
  const shared = sharedSteps(prompted.sheet);
  const few = DEGREES.filter((degrees) => degrees.every((step) => steps.has(step) && shared.has(step)));
  const more = besides(prompted.line);
  return [
    ...few.flatMap((degrees) =>
      more.filter((each) => !needsLead(each)).map((each) => ({ degrees: [...degrees], ...each })),
    ),
    ...more.filter(needsLead),
  ];
}

/** `root and third only, beat one silent`. */
export function promptWords({ degrees, wanted = [], silentOnes }: BlankPrompt, reading: AimReading): string {
  const kept = degrees === undefined ? [] : aimWords({ degrees }, reading);
  const ones = silentOnes === undefined ? [] : [ONES[silentOnes]];
  return [...kept, ...ones, ...wanted.map((technique) => IN_WORDS[technique])].join(', ');
}

/** A prompt as the level of the line beside it has it: a version for a beginner asks for what a beginner can. */
function withinLevel({ degrees, wanted = [], ...others }: BlankPrompt, prompted: Prompted): BlankPrompt {
  const steps = stepsOf(prompted);
  const known = degrees?.filter((step) => steps.has(step));
  const able = wanted.filter((technique) => isOfLevel(technique, prompted.line.level));
  return {
    ...others,
    ...(known === undefined ? {} : { degrees: known.length === 0 ? [1 as const] : known }),
    ...(able.length === 0 ? {} : { wanted: able }),
  };
}

/** A bass plays what stands behind the slash (common practice, no source). */
const UNDER_A_SLASH = 'Where a chord has a slash, the note behind it counts as its root, too.';

const hasSlash = ({ written }: LineSheet['bars'][number]): boolean =>
  chordsIn(written).some(({ root, bass }) => !sameName(root, bass));

/** What blank bars ask for, as the student reads it, with the chords that are written over. */
export interface AskedOfBlank {
  readonly words: string;
  readonly sheet: LineSheet;
}

/** What blank bars ask for; null where they ask nothing, or no line beside them has chords. */
export function askedOfBlank(lesson: Lesson, piece: BlankPiece): AskedOfBlank | null {
  const prompted = piece.prompt === undefined ? null : promptedBars(lesson, piece);
  if (piece.prompt === undefined || prompted === null) return null;
  const { sheet } = prompted;
  const words = promptWords(withinLevel(piece.prompt, prompted), {
    key: sheet.key,
    naming: sheet.noteNames ?? 'letters',
  });
  const slashed = piece.prompt.degrees !== undefined && sheet.bars.some(hasSlash);
  return {
    words: `Write a line of your own over these chords: ${words}.${slashed ? ` ${UNDER_A_SLASH}` : ''}`,
    sheet,
  };
}
