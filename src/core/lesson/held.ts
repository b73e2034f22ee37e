import type { LineBar } from './types';

/**
 * Whether composing leaves a bar alone: it is kept, the teacher has pinned where a note of it is played, or it holds
 * too much, which no one but the teacher can mend.
 */
export const isHeld = (bar: LineBar | undefined): boolean =>
  bar !== undefined &&
  (bar.kept || bar.over !== undefined || bar.notes.some(({ pins }) => pins !== undefined));

/** Whether a bar is more than what composing made and can make again: a hand wrote it, or somebody kept it. */
export const isOwn = (bar: LineBar): boolean => bar.origin === 'hand' || isHeld(bar);
