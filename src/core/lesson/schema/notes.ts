/** Validators of notes and bars, and of the units and names that all parts of a lesson share. */
import * as z from 'zod/mini';
import {
  type Alteration,
  type Bpm,
  DYNAMIC_LEVELS,
  excludes,
  type Finger,
  type Fret,
  LETTERS,
  MARK_CHOICES,
  marksOf,
  type StringNumber,
  type Ticks,
} from '../../base';
import { MODES } from '../../theory';
import { LESSON_LIMITS } from '../limits';
import { BAR_WORDS_LENGTH } from '../types';

export const whole = (least: number, most: number) => z.int().check(z.gte(least), z.lte(most));

/** A number already checked, given the unit's brand; the schema is the one place where that is allowed. */
export const branded = <Unit extends number>(schema: z.ZodMiniType<number>) =>
  z.pipe(
    schema,
    z.transform((value) => value as Unit),
  );

const ticksSchema = branded<Ticks>(whole(0, 960 * 4 * 64));
export const fretSchema = branded<Fret>(whole(0, 36));
export const bpmSchema = branded<Bpm>(z.number().check(z.gte(20), z.lte(400)));
export const name = z.string().check(z.maxLength(LESSON_LIMITS.title));
export const harmony = z.string().check(z.maxLength(LESSON_LIMITS.harmony));

const spelledName = {
  letter: z.enum(LETTERS),
  alteration: branded<Alteration>(whole(-2, 2)),
};

export const pitchSchema = z.object({ ...spelledName, octave: whole(-1, 8) });

export const keySchema = z.object({ tonic: z.object(spelledName), mode: z.enum(MODES) });

export const metreSchema = z.object({
  count: whole(1, 24),
  unit: z.union([z.literal(2), z.literal(4), z.literal(8)]),
});

const pinsSchema = z.object({
  string: z.exactOptional(branded<StringNumber>(whole(1, LESSON_LIMITS.strings))),
  fret: z.exactOptional(fretSchema),
  finger: z.exactOptional(branded<Finger>(whole(0, 4))),
});

const marksSchema = z
  .object({
    stress: z.exactOptional(z.enum(MARK_CHOICES.stress)),
    length: z.exactOptional(z.enum(MARK_CHOICES.length)),
    damping: z.exactOptional(z.enum(MARK_CHOICES.damping)),
    pluck: z.exactOptional(z.enum(MARK_CHOICES.pluck)),
    entry: z.exactOptional(z.enum(MARK_CHOICES.entry)),
    exit: z.exactOptional(z.enum(MARK_CHOICES.exit)),
    pause: z.exactOptional(z.enum(MARK_CHOICES.pause)),
  })
  .check(
    z.refine((marks) => {
      const all = marksOf({ marks });
      return all.every((one) => all.every((other) => !excludes(one, other)));
    }, 'a note that rings on can be neither dead nor muted'),
  );

const noteSchema = z.object({
  start: ticksSchema,
  duration: branded<Ticks>(whole(1, 960 * 4 * 16)),
  pitch: pitchSchema,
  tiedOn: z.exactOptional(z.boolean()),
  marks: z.exactOptional(marksSchema),
  pins: z.exactOptional(pinsSchema),
});

export const sortedNotes = z.array(noteSchema).check(
  z.maxLength(LESSON_LIMITS.notesInBar),
  z.refine(
    (notes) =>
      notes.every((note, index) => {
        const before = notes[index - 1];
        return before === undefined || before.start + before.duration <= note.start;
      }),
    'the notes of a bar must follow each other without overlapping',
  ),
);

export const dynamicsSchema = z
  .array(
    z.object({
      at: ticksSchema,
      level: z.exactOptional(z.enum(DYNAMIC_LEVELS)),
      hairpin: z.exactOptional(z.enum(['crescendo', 'diminuendo'])),
    }),
  )
  .check(
    z.maxLength(LESSON_LIMITS.notesInBar),
    z.refine(
      (signs) => signs.every(({ at }, index) => index === 0 || (signs[index - 1]?.at ?? 0) < at),
      'the dynamics of a bar must follow each other, one a place',
    ),
  );

export const lineBarSchema = z.object({
  id: name,
  harmony,
  origin: z.enum(['composed', 'idea', 'hand']),
  kept: z.boolean(),
  notes: sortedNotes,
  over: z.exactOptional(sortedNotes),
  position: z.exactOptional(branded<Fret>(whole(1, 36))),
  dynamics: z.exactOptional(dynamicsSchema),
  words: z.exactOptional(z.string().check(z.minLength(1), z.maxLength(BAR_WORDS_LENGTH))),
});

/** Whether each stands once. */
export const noneTwice = <Name>(names: readonly Name[]): boolean => new Set(names).size === names.length;

/** Whether no two share an id. */
export const uniqueIds = (things: readonly { readonly id: string }[]): boolean =>
  noneTwice(things.map(({ id }) => id));
