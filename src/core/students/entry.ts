/** What is kept of students, classes and series: an entry of the teacher's register each, and its one validator. */
import * as z from 'zod/mini';
import { failure, isRecord, type Result, success } from '../base';
import { type InstrumentSettings, instrumentSchema, LESSON_LIMITS } from '../lesson';
import { LEVELS, type Level } from '../line';
import { NAMINGS, type Naming } from '../theory';

/** Rises with every change of shape; an entry of a newer copy of the app is shown to be there and never written over. */
const REGISTER_VERSION = 1;

/** More than any teacher has, and few enough that the register is read at once. */
export const REGISTER_LIMITS = {
  /** Of all kinds together. */
  entries: 2000,
  /** Characters of a name. */
  name: 200,
  /** Characters of the teacher's notes of a student. */
  notes: 5000,
  /** Characters of what is to be mended next. */
  mend: 500,
  /** Lessons that were given to a student. */
  given: 1000,
  /** Students in a class. */
  members: 200,
  /** Lessons in a series. */
  weeks: 200,
  /** Things of which the teacher says whether a lesson showed them. */
  marks: 200,
} as const;

const id = z.string().check(z.minLength(1), z.maxLength(600));
const name = z.string().check(z.maxLength(REGISTER_LIMITS.name));
const title = z.string().check(z.maxLength(LESSON_LIMITS.title));
const day = z.string().check(z.regex(/^\d{4}-\d{2}-\d{2}$/));
const millimetres = z.number().check(z.gte(20), z.lte(400));

const givenSchema = z.object({
  lesson: id,
  version: z.nullable(id),
  title,
  day,
  tempo: z.nullable(z.int().check(z.gte(20), z.lte(400))),
  mend: z.string().check(z.maxLength(REGISTER_LIMITS.mend)),
});

const uniqueTexts = (texts: readonly string[]): boolean => new Set(texts).size === texts.length;

const head = { version: z.literal(REGISTER_VERSION), id, name };

const studentSchema = z.object({
  ...head,
  kind: z.literal('student'),
  instrument: instrumentSchema,
  hand: z.object({ comfortableSpan: millimetres, reach: millimetres }),
  level: z.union(LEVELS.map((level) => z.literal(level))),
  noteNames: z.enum(NAMINGS),
  notes: z.string().check(z.maxLength(REGISTER_LIMITS.notes)),
  given: z.array(givenSchema).check(z.maxLength(REGISTER_LIMITS.given)),
});

const classSchema = z.object({
  ...head,
  kind: z.literal('class'),
  members: z.array(id).check(z.maxLength(REGISTER_LIMITS.members), z.refine(uniqueTexts, 'a student twice')),
});

/** What a lesson can show for the first time. */
export const THING_KINDS = ['technique', 'degree', 'key', 'position', 'feel'] as const;
export type ThingKind = (typeof THING_KINDS)[number];

const markSchema = z.object({
  kind: z.enum(THING_KINDS),
  name: z.string().check(z.minLength(1), z.maxLength(100)),
  shown: z.boolean(),
});

const weekSchema = z.object({
  lesson: id,
  version: z.nullable(id),
  title,
  marks: z.array(markSchema).check(z.maxLength(REGISTER_LIMITS.marks)),
});

const seriesSchema = z.object({
  ...head,
  kind: z.literal('series'),
  of: z.nullable(id),
  weeks: z.array(weekSchema).check(z.maxLength(REGISTER_LIMITS.weeks)),
});

const entrySchema = z.discriminatedUnion('kind', [studentSchema, classSchema, seriesSchema]);

/** A lesson, or a version of it, as it was given to a student. */
export interface Given {
  /** Id of the lesson. */
  readonly lesson: string;
  /** Id of its version; null for the tune as it stands for all. */
  readonly version: string | null;
  /** What it was called that day. */
  readonly title: string;
  /** `2026-11-29`. */
  readonly day: string;
  /** Beats a minute that were reached; null where it was not heard yet. */
  readonly tempo: number | null;
  /** What is to be mended next; '' for nothing. */
  readonly mend: string;
}

/** Only what a lesson for the student needs. */
export interface Student {
  readonly version: typeof REGISTER_VERSION;
  readonly kind: 'student';
  readonly id: string;
  readonly name: string;
  /** Left or right hand is the instrument's. */
  readonly instrument: InstrumentSettings;
  /** In millimetres, see `HAND_SPANS`. */
  readonly hand: { readonly comfortableSpan: number; readonly reach: number };
  readonly level: Level;
  readonly noteNames: Naming;
  /** The teacher's. */
  readonly notes: string;
  /** In the order in which they were given. */
  readonly given: readonly Given[];
}

export interface SchoolClass {
  readonly version: typeof REGISTER_VERSION;
  readonly kind: 'class';
  readonly id: string;
  readonly name: string;
  /** Ids of students, in the class's own order. */
  readonly members: readonly string[];
}

/** One thing that a student was or was not shown. */
export interface Thing {
  readonly kind: ThingKind;
  /**
   * A technique by its name, a degree as the sheet writes it, a key in letters (`B♭ major`), the fret under the first
   * finger in digits, or the id of a feel.
   */
  readonly name: string;
}

/** What the teacher says of a thing in a lesson, against what its notes tell. */
export interface ThingMark extends Thing {
  readonly shown: boolean;
}

/** A lesson, or a version of it, in its place in a term. */
export interface Week {
  readonly lesson: string;
  readonly version: string | null;
  /** What it was called when it was put there. */
  readonly title: string;
  readonly marks: readonly ThingMark[];
}

/** The lessons of a term in their order. */
export interface Series {
  readonly version: typeof REGISTER_VERSION;
  readonly kind: 'series';
  readonly id: string;
  readonly name: string;
  /** Id of the student or class that it is for; null for nobody in particular. */
  readonly of: string | null;
  readonly weeks: readonly Week[];
}

export type Entry = Student | SchoolClass | Series;

/** Why a value is no entry; each reason has its sentence in {@link describeEntryProblem}. */
export type EntryProblem =
  | { readonly kind: 'foreign' }
  | { readonly kind: 'newer' }
  | { readonly kind: 'damaged'; readonly where: string };

/** Reads what may be an entry. */
export function readEntry(value: unknown): Result<Entry, EntryProblem> {
  if (!isRecord(value) || typeof value.kind !== 'string' || typeof value.id !== 'string')
    return failure({ kind: 'foreign' });
  if (typeof value.version === 'number' && value.version > REGISTER_VERSION)
    return failure({ kind: 'newer' });
  const read = entrySchema.safeParse(value);
  if (read.success) return success(read.data);
  const path = read.error.issues[0]?.path ?? [];
  return failure({
    kind: 'damaged',
    where: path.map((step) => (typeof step === 'number' ? String(step + 1) : String(step))).join(' › '),
  });
}

export function describeEntryProblem(problem: EntryProblem): string {
  switch (problem.kind) {
    case 'foreign':
      return 'What is kept under this name is no student, class or series. It stays on this device as it is.';
    case 'newer':
      return 'It was kept by a newer Ground Bass than this page, which does not know all of it. Reload the page to get the newer one; nothing of it is changed.';
    case 'damaged':
      return `It cannot be read${problem.where === '' ? '' : ` (${problem.where})`}. It stays on this device as it is.`;
  }
}

export const newStudent = (given: Omit<Student, 'version' | 'kind' | 'notes' | 'given'>): Student => ({
  version: REGISTER_VERSION,
  kind: 'student',
  ...given,
  notes: '',
  given: [],
});

/**
 * A name as it was meant: without blanks around it, and without signs that are not seen and turn the direction of the
 * sentences in which the name stands.
 */
export const tidyName = (typed: string): string =>
  typed.replace(/[\p{Cc}\u202a-\u202e\u2066-\u2069]/gu, '').trim();

export const newClass = (classId: string, className: string): SchoolClass => ({
  version: REGISTER_VERSION,
  kind: 'class',
  id: classId,
  name: className,
  members: [],
});

export const newSeries = (seriesId: string, seriesName: string, of: string | null): Series => ({
  version: REGISTER_VERSION,
  kind: 'series',
  id: seriesId,
  name: seriesName,
  of,
  weeks: [],
});
