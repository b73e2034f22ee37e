/** Validators of versions: each holds the parts of the tune in which it differs. */
import * as z from 'zod/mini';
import { LESSON_LIMITS } from '../limits';
import { BAR_WORDS_LENGTH, OPTIONAL_IN_HANDOUT, OPTIONAL_IN_LINE } from '../types';
import { handoutShape } from './handout';
import { instrumentSchema, textShape } from './head';
import {
  dynamicsSchema,
  fretSchema,
  harmony,
  lineBarSchema,
  name,
  sortedNotes,
  uniqueIds,
  whole,
} from './notes';
import { lineEnd, lineStart, pieceSchema } from './pieces';

type Shape = Readonly<Record<string, z.ZodMiniType>>;

/** The same fields, each of which may be left out. */
const partOf = <Fields extends Shape>(shape: Fields) =>
  // Each entry is wrapped, and no name is added or lost.
  Object.fromEntries(Object.entries(shape).map(([field, schema]) => [field, z.exactOptional(schema)])) as {
    readonly [Field in keyof Fields]: z.ZodMiniExactOptional<Fields[Field]>;
  };

const ids = (most: number) => z.array(name).check(z.maxLength(most));

/** Octaves that a version may lie from its tune, in staff steps and half steps. */
const MOST_OCTAVES = 4;

const versionNotesSchema = z.object({
  harmony,
  origin: lineBarSchema.shape.origin,
  notes: sortedNotes,
  over: z.exactOptional(sortedNotes),
  was: sortedNotes,
});

export const versionBarSchema = z.object({
  id: name,
  written: z.exactOptional(versionNotesSchema),
  kept: z.exactOptional(z.boolean()),
  position: z.exactOptional(fretSchema),
  dynamics: z.exactOptional(dynamicsSchema),
  words: z.exactOptional(z.string().check(z.maxLength(BAR_WORDS_LENGTH))),
});

export const versionLineSchema = z.object({
  id: name,
  moved: z.exactOptional(
    z.object({
      steps: whole(-7 * MOST_OCTAVES, 7 * MOST_OCTAVES),
      halfSteps: whole(-12 * MOST_OCTAVES, 12 * MOST_OCTAVES),
    }),
  ),
  own: z.object(partOf({ ...lineStart, ...lineEnd })),
  without: z.exactOptional(z.array(z.enum(OPTIONAL_IN_LINE))),
  bars: z.exactOptional(z.array(versionBarSchema).check(z.maxLength(2 * LESSON_LIMITS.bars))),
  added: z.exactOptional(z.array(lineBarSchema).check(z.maxLength(2 * LESSON_LIMITS.bars))),
  order: z.exactOptional(ids(LESSON_LIMITS.bars)),
  parked: z.exactOptional(ids(LESSON_LIMITS.bars)),
});

export const versionSchema = z.object({
  id: name,
  name,
  own: z.object({ ...partOf(textShape), instrument: instrumentSchema }),
  handout: z.exactOptional(z.object(partOf(handoutShape))),
  bare: z.exactOptional(z.array(z.enum(OPTIONAL_IN_HANDOUT))),
  lines: z
    .array(versionLineSchema)
    .check(z.maxLength(LESSON_LIMITS.pieces), z.refine(uniqueIds, 'two lines of a version share one id')),
  pieces: z.exactOptional(
    z
      .array(pieceSchema)
      .check(z.maxLength(LESSON_LIMITS.pieces), z.refine(uniqueIds, 'two pieces share one id')),
  ),
  without: z.exactOptional(ids(LESSON_LIMITS.pieces)),
  order: z.exactOptional(ids(LESSON_LIMITS.pieces)),
});
