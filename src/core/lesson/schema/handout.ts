/** Validators of what is printed. */
import * as z from 'zod/mini';
import { LESSON_LIMITS } from '../limits';
import { DRAWS_OF_QUESTIONS, HANDOUT_BLOCKS, MOST_QUESTIONS, PRACTICE_STEPS } from '../types';
import { branded, name, noneTwice, whole } from './notes';

export const blocksSchema = z
  .array(z.enum(HANDOUT_BLOCKS))
  .check(z.refine(noneTwice, 'a part of the handout comes twice'));

export const handoutShape = {
  paper: z.enum(['A4', 'Letter']),
  degrees: z.boolean(),
  fingers: z.boolean(),
  counting: z.exactOptional(z.boolean()),
  numerals: z.exactOptional(z.boolean()),
  positions: z.exactOptional(z.boolean()),
  parts: z.exactOptional(z.enum(['both', 'staff', 'tab'])),
  blocks: z.exactOptional(blocksSchema),
  print: z.exactOptional(z.enum(['normal', 'large'])),
  onePage: z.exactOptional(z.boolean()),
  twoUp: z.exactOptional(z.boolean()),
  binding: z.exactOptional(z.boolean()),
  code: z.exactOptional(z.boolean()),
  steps: z.exactOptional(
    z.array(z.string().check(z.maxLength(PRACTICE_STEPS.length))).check(z.maxLength(PRACTICE_STEPS.most)),
  ),
  questions: z.exactOptional(
    z.object({
      count: whole(1, MOST_QUESTIONS),
      difficulty: branded<1 | 2 | 3>(whole(1, 3)),
      seed: z.exactOptional(whole(0, DRAWS_OF_QUESTIONS - 1)),
    }),
  ),
  header: z.exactOptional(name),
  student: z.exactOptional(name),
  logo: z.exactOptional(
    z
      .string()
      .check(z.maxLength(LESSON_LIMITS.logo), z.regex(/^data:image\/(png|jpeg);base64,[A-Za-z0-9+/=]+$/)),
  ),
};
