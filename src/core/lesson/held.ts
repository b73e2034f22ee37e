import type { LineBar } from './types';

/** Whether composing leaves a bar alone: it is kept, or the teacher has pinned where a note of it is played. */
export const isHeld = (bar: LineBar | undefined): boolean =>
  bar !== undefined && (bar.kept || bar.notes.some(({ pins }) => pins !== undefined));
