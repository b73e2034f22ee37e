import * as z from 'zod/mini';
import { LESSON_LIMITS } from './limits';
import { handoutShape } from './schema/handout';
import { instrumentSchema, textShape } from './schema/head';
import { name, uniqueIds, whole } from './schema/notes';
import { pieceSchema } from './schema/pieces';
import { versionSchema } from './schema/versions';
import { LESSON_FORMAT, LESSON_VERSION, type Lesson } from './types';

const headShape = {
  format: z.literal(LESSON_FORMAT),
  version: z.literal(LESSON_VERSION),
  id: name,
  ...textShape,
  instrument: instrumentSchema,
  handout: z.object(handoutShape),
  open: z.exactOptional(name),
  idsUpTo: z.exactOptional(whole(0, Number.MAX_SAFE_INTEGER)),
};

/** The lesson without its pieces. */
export const lessonHeadSchema = z.object(headShape);

/** The one validator of the document, used on every way in. */
export const lessonSchema = z.object({
  ...headShape,
  pieces: z
    .array(pieceSchema)
    .check(z.minLength(1), z.maxLength(LESSON_LIMITS.pieces), z.refine(uniqueIds, 'two pieces share one id')),
  versions: z.exactOptional(
    z
      .array(versionSchema)
      .check(z.maxLength(LESSON_LIMITS.versions), z.refine(uniqueIds, 'two versions share one id')),
  ),
});

/** The fields of a document at every depth, by their places: `pieces.bars.notes.start`. */
type PlacesIn<Part> = Part extends string | number | boolean | null | undefined
  ? never
  : Part extends readonly (infer Item)[]
    ? PlacesIn<Item>
    : { [Name in keyof Part & string]-?: Name | `${Name}.${PlacesIn<Part[Name]>}` }[keyof Part & string];

/** Fields that stand in one of two documents alone. */
type Unshared<One, Other> = Exclude<PlacesIn<One>, PlacesIn<Other>> | Exclude<PlacesIn<Other>, PlacesIn<One>>;

/** The compiler names whatever is in it. */
type Nothing<Found extends never> = Found;

/**
 * The compiler's word that what the validator lets through is a lesson, and nothing less; and that both know the same
 * fields: a field without a place in the validator would be lost when the lesson is saved.
 */
export type CheckedLesson = z.infer<typeof lessonSchema>;
export const asLesson = (checked: CheckedLesson): Lesson | Nothing<Unshared<Lesson, CheckedLesson>> =>
  checked;
