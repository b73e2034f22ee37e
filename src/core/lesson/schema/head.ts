/** Validators of what is said once for a lesson, or for a version of it. */
import * as z from 'zod/mini';
import { NAMINGS } from '../../theory';
import { LESSON_LIMITS } from '../limits';
import { name, pitchSchema, whole } from './notes';

export const textShape = {
  title: name,
  notes: z.string().check(z.maxLength(LESSON_LIMITS.text)),
  noteNames: z.exactOptional(z.enum(NAMINGS)),
};

export const instrumentSchema = z.object({
  openStrings: z.array(pitchSchema).check(z.minLength(3), z.maxLength(LESSON_LIMITS.strings)),
  frets: whole(12, 36),
  scaleLength: z.number().check(z.gte(300), z.lte(1200)),
  leftHanded: z.exactOptional(z.boolean()),
});
