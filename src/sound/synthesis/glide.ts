/** A slide at one end of a sound, in seconds. */
export interface SoundGlide {
  readonly at: 'beginning' | 'end';
  /** The pitch it comes from or goes to, from the sound's own. */
  readonly halfSteps: number;
  readonly seconds: number;
}

/** How much more of a sound must be there than is heard, at the farthest slide upwards. */
export const glideRoom = (glides: readonly SoundGlide[]): number =>
  Math.max(1, ...glides.map(({ halfSteps }) => 2 ** (halfSteps / 12)));

/**
 * A sound of `seconds` whose pitch slides: the string is read faster and slower, as a finger that moves along it
 * shortens and lengthens it. Between its samples the sound is read straight, which at a bass's pitches is below
 * what is heard.
 */
export function slid(
  source: Float32Array,
  seconds: number,
  glides: readonly SoundGlide[],
  sampleRate: number,
): Float32Array {
  const length = Math.max(1, Math.round(seconds * sampleRate));
  const output = new Float32Array(length);
  const into = glides.find(({ at }) => at === 'beginning');
  const outOf = glides.find(({ at }) => at === 'end');
  let read = 0;
  for (let index = 0; index < length; index += 1) {
    const below = Math.floor(read);
    const share = read - below;
    output[index] = (source[below] ?? 0) * (1 - share) + (source[below + 1] ?? 0) * share;
    const now = index / sampleRate;
    const left = into ? Math.max(0, 1 - now / into.seconds) * into.halfSteps : 0;
    const right = outOf ? Math.max(0, 1 - (seconds - now) / outOf.seconds) * outOf.halfSteps : 0;
    read += 2 ** ((left + right) / 12);
  }
  return output;
}
