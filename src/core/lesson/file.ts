import { failure, type Result, success, unreachable } from '../base';
import { type NewerLesson, readNewer } from './newer';
import { asLesson, lessonSchema } from './schema';
import { LESSON_FORMAT, LESSON_VERSION, type Lesson } from './types';

/** Why a text is not a lesson; each reason has its own sentence in {@link describeLessonProblem}. */
export type LessonProblem =
  | { readonly kind: 'too large'; readonly characters: number }
  | { readonly kind: 'not JSON' }
  | { readonly kind: 'foreign' }
  /** Saved by a newer copy of the app; with what this one can show of it, if it can. */
  | { readonly kind: 'newer'; readonly version: number; readonly shown: NewerLesson | null }
  | { readonly kind: 'damaged'; readonly where: string; readonly what: string };

/** Far above any real lesson (a 64-bar lesson is about 60,000 characters). */
const LARGEST_FILE = 5_000_000;

type Document = Readonly<Record<string, unknown>>;

/** Version 1 wrote the chord of sixth and ninth without its slash. */
const withSlash = (bars: unknown): unknown =>
  Array.isArray(bars)
    ? bars.map((bar: unknown) =>
        isRecord(bar) && typeof bar.harmony === 'string'
          ? { ...bar, harmony: bar.harmony.replace(/69(?=[@/(])/g, '6/9') }
          : bar,
      )
    : bars;

/** Version 1 knew no aims for sections and bars, and stored no takes. */
function withAimsAndTakes(old: Document): Document {
  const grown = (piece: unknown): unknown =>
    isRecord(piece) && piece.kind === 'line'
      ? {
          ...piece,
          bars: withSlash(piece.bars),
          parked: withSlash(piece.parked),
          aims: [],
          sections: [],
          parkedSections: [],
          takes: [],
        }
      : piece;
  return { ...old, version: 2, pieces: Array.isArray(old.pieces) ? old.pieces.map(grown) : old.pieces };
}

/** Version 2 listed a note's articulations; three of the marks were known. */
function withMarks(note: unknown): unknown {
  if (!isRecord(note) || !Array.isArray(note.articulations)) return note;
  const { articulations, ...bare } = note;
  const marks = {
    ...(articulations.includes('accent') ? { stress: 'accent' } : {}),
    ...(articulations.includes('staccato') ? { length: 'staccato' } : {}),
    ...(articulations.includes('ghost') ? { damping: 'ghost' } : {}),
  };
  return Object.keys(marks).length === 0 ? bare : { ...bare, marks };
}

const inEach = (list: unknown, change: (part: unknown) => unknown): unknown =>
  Array.isArray(list) ? list.map(change) : list;

const inNotes = (bar: unknown): unknown =>
  isRecord(bar) ? { ...bar, notes: inEach(bar.notes, withMarks) } : bar;

/** Feels of version 2 that leave beat one empty. */
const LEAVE_ONE: ReadonlySet<unknown> = new Set(['rocksteady', 'one-drop', 'steppers']);

/** Version 2 knew *space*: a silent beat one or half a bar of silence. What it allowed or forbade was both. */
const bothSilences = (techniques: unknown): unknown =>
  Array.isArray(techniques)
    ? techniques.flatMap((one: unknown) => (one === 'space' ? ['beat one silent', 'long silences'] : [one]))
    : techniques;

/** Space that an aim wanted is wanted as the feel has it. */
const wantedSilence = (techniques: unknown, feel: unknown): unknown =>
  inEach(techniques, (one) =>
    one === 'space' ? (LEAVE_ONE.has(feel) ? 'beat one silent' : 'long silences') : one,
  );

const withSilences = (piece: Document): Document => ({
  ...piece,
  techniques: bothSilences(piece.techniques),
  aims: inEach(piece.aims, (aim) =>
    isRecord(aim)
      ? {
          ...aim,
          ...('wanted' in aim ? { wanted: wantedSilence(aim.wanted, piece.feel) } : {}),
          ...('allowed' in aim ? { allowed: bothSilences(aim.allowed) } : {}),
          ...('forbidden' in aim ? { forbidden: bothSilences(aim.forbidden) } : {}),
        }
      : aim,
  ),
});

/** Version 3: a note has marks, by what they say about it, in place of articulations; space became two techniques. */
function versionThree(old: Document): Document {
  const grown = (piece: unknown): unknown =>
    isRecord(piece) && piece.kind === 'line'
      ? {
          ...withSilences(piece),
          bars: inEach(piece.bars, inNotes),
          parked: inEach(piece.parked, inNotes),
          takes: inEach(piece.takes, (take) =>
            isRecord(take) ? { ...take, bars: inEach(take.bars, inNotes) } : take,
          ),
        }
      : piece;
  return { ...old, version: 3, pieces: inEach(old.pieces, grown) };
}

/**
 * A step from one version's shape to the next, keyed by the version it starts from; a new version adds its step
 * here and an old sample to the tests.
 */
const MIGRATIONS: Readonly<Record<number, (old: Document) => unknown>> = {
  1: withAimsAndTakes,
  2: versionThree,
};

function migrate(document: Document, from: number): unknown {
  let current: unknown = document;
  for (let version = from; version < LESSON_VERSION; version += 1) {
    const step = MIGRATIONS[version];
    if (step === undefined || !isRecord(current)) {
      return current;
    }
    current = step(current);
  }
  return current;
}

const isRecord = (value: unknown): value is Document =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** `pieces › 2 › tempo`, counting from one as people do. */
function describePath(path: readonly PropertyKey[]): string {
  return path.map((step) => (typeof step === 'number' ? String(step + 1) : String(step))).join(' › ');
}

/** Checks any value that may be a lesson; an older version is brought up to date first. */
export function readLesson(value: unknown): Result<Lesson, LessonProblem> {
  if (!isRecord(value) || value.format !== LESSON_FORMAT || typeof value.version !== 'number') {
    return failure({ kind: 'foreign' });
  }
  if (value.version > LESSON_VERSION) {
    return failure({ kind: 'newer', version: value.version, shown: readNewer(value) });
  }
  const checked = lessonSchema.safeParse(migrate(value, value.version));
  if (!checked.success) {
    const issue = checked.error.issues[0];
    return failure({
      kind: 'damaged',
      where: describePath(issue?.path ?? []),
      what: issue?.message ?? 'it does not have the shape of a lesson',
    });
  }
  return success(asLesson(checked.data));
}

/** Reads a lesson file's text. Never throws, whatever the text is. */
export function parseLesson(text: string): Result<Lesson, LessonProblem> {
  if (text.length > LARGEST_FILE) {
    return failure({ kind: 'too large', characters: text.length });
  }
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return failure({ kind: 'not JSON' });
  }
  return readLesson(value);
}

/** One sentence for the person who opened the file. */
export function describeLessonProblem(problem: LessonProblem): string {
  switch (problem.kind) {
    case 'too large':
      return `This file is too large to be a lesson (${Math.round(problem.characters / 1e6)} million characters). Nothing was changed.`;
    case 'not JSON':
      return 'This file is not a lesson: it is not readable as JSON. Nothing was changed.';
    case 'foreign':
      return 'This file is not a lesson of Ground Bass. Nothing was changed.';
    case 'newer':
      return `This lesson was saved by a newer Ground Bass (version ${problem.version} of the lesson file; this one reads up to ${LESSON_VERSION}). Reload the app to update it. Nothing was changed.`;
    case 'damaged':
      return `This lesson file is damaged${problem.where === '' ? '' : ` at “${problem.where}”`}: ${problem.what}. Nothing was changed.`;
    default:
      return unreachable(problem);
  }
}
