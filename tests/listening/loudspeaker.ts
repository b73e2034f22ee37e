/** A rhythm section that comes from a loudspeaker in a room, and reaches the microphone late, thin and echoing. */
import { createRandom } from '../../src/core/base';
import { createKit } from '../../src/sound';
import { renderMix } from '../../src/sound/synthesis/mix';
import type { Played } from './students';
import { RATE, rmsOf } from './studio';

const kit = createKit(RATE);

/** The value of a function of something that is made once and kept: making sound is most of the time these tests take. */
export function madeOnce<T extends object, V>(make: (of: T) => V): (of: T) => V {
  const made = new WeakMap<T, V>();
  return (of) => {
    const value = made.get(of) ?? make(of);
    made.set(of, value);
    return value;
  };
}

/** The rhythm section as it is played, from the same moment as the student. */
export const bandOf = madeOnce(({ performance, expected }: Played): Float32Array => {
  const mix = { bass: false, drums: true, chops: true, organ: true, click: false };
  const { left, right } = renderMix(performance, mix, kit, 2);
  const silence = Math.round((expected.bars[0]?.start ?? 0) * RATE);
  const band = new Float32Array(silence + left.length);
  for (let index = 0; index < left.length; index += 1)
    band[silence + index] = ((left[index] ?? 0) + (right[index] ?? 0)) / 2;
  return band;
});

/** A small loudspeaker gives little below 120 Hz and above 6 kHz. */
function small(sound: Float32Array): Float32Array {
  const [high, low] = [120, 6000].map((cut) => Math.exp((-2 * Math.PI * cut) / RATE));
  let [before, risen, passed] = [0, 0, 0];
  return sound.map((value) => {
    risen = (high ?? 0) * (risen + value - before);
    before = value;
    passed = (low ?? 0) * passed + (1 - (low ?? 0)) * risen;
    return passed;
  });
}

/** The way through a room that nobody knows: from 90 to 170 ms late, with 400 echoes that die away in a third of a second. */
function throughRoom(sound: Float32Array, seed: number): Float32Array {
  const { next } = createRandom(seed);
  const delay = Math.round((0.09 + next() * 0.08) * RATE);
  const out = new Float32Array(sound.length);
  const add = (late: number, gain: number) => {
    for (let index = late; index < out.length; index += 1)
      out[index] = (out[index] ?? 0) + gain * (sound[index - late] ?? 0);
  };
  add(delay, 1);
  for (let echo = 0; echo < 400; echo += 1) {
    const seconds = next() * 0.25;
    add(delay + Math.round(seconds * RATE), (next() * 2 - 1) * 0.35 * Math.exp(-seconds / 0.045));
  }
  return out;
}

/** Seconds of the rhythm section alone before the student comes in: a round. */
export const ALONE = 9;

/** A student beside a loudspeaker in a room of chance. */
export interface Beside {
  readonly played: Played;
  /** Of the room. */
  readonly seed: number;
}

/** What the page plays: the rhythm section alone for a while, then with the student; and how it comes back from the room. */
const soundOfPage = madeOnce(({ played, seed }: Beside) => {
  const band = bandOf(played);
  const first = Math.round((played.expected.bars[0]?.start ?? 0) * RATE);
  const lead = ALONE * RATE;
  const output = Float32Array.from(
    { length: lead + Math.ceil(played.seconds * RATE) },
    (_, index) => band[index < lead ? first + index : index - lead] ?? 0,
  );
  const echo = throughRoom(small(output), seed);
  return { output, echo, loudness: rmsOf(echo) };
});

/**
 * What the page plays and what the microphone hears: the rhythm section alone for a while, then the student, so many decibels
 * louder on average.
 */
export function besideLoudspeaker(
  bass: Float32Array,
  beside: Beside,
  decibels: number,
): { readonly output: Float32Array; readonly heard: Float32Array } {
  const { output, echo, loudness } = soundOfPage(beside);
  const lead = ALONE * RATE;
  const gain = (rmsOf(bass) / loudness) * 10 ** (decibels / 20);
  return { output, heard: echo.map((value, index) => gain * value + (bass[index - lead] ?? 0)) };
}
