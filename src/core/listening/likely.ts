import type { ExpectedNote, HeardNote } from './types';

/** Seconds around a written note in which a faint stroke is taken for it; ours. */
const NEAR = 0.09;

/**
 * What was heard without the faint strokes where no note is written: there the string rings on, and the note before
 * lasts as long.
 * @param expected - by their start, as `heard` is
 */
export function likely(expected: readonly ExpectedNote[], heard: readonly HeardNote[]): readonly HeardNote[] {
  const sounds: HeardNote[] = [];
  let next = 0;
  for (const sound of heard) {
    while ((expected[next]?.start ?? Number.POSITIVE_INFINITY) < sound.start - NEAR) next += 1;
    const isWritten = (expected[next]?.start ?? Number.POSITIVE_INFINITY) <= sound.start + NEAR;
    const last = sounds.at(-1);
    if (sound.faint !== true || isWritten) sounds.push(sound);
    else if (last !== undefined && sound.start - last.end < 0.01)
      sounds[sounds.length - 1] = { ...last, end: sound.end };
  }
  return sounds;
}
