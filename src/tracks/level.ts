import type { StereoSound } from '../sound';
import { integratedLoudness, peakAt, TRACK_RATE } from './loudness';

/** As loud as is usual for what is heard on telephones (AES TD1008, 2021: −16 LUFS for interchange with such devices). */
export const TARGET = -16;

/**
 * The highest true peak in decibels. EBU R 128 (2023) allows −1 dBTP; the encoders' own deviations stay under it so (ours).
 */
const CEILING = 10 ** (-2.2 / 20);

/** Seconds over which the limiter closes before a peak and opens again after it; both are ours. */
const ATTACK = 0.004;
const RELEASE = 0.12;

/** The true peak at every sample of the louder channel, each worked out when it is first asked for: most never are. */
function peaksOf({ left, right }: StereoSound): (index: number) => number {
  const known = new Float32Array(left.length);
  return (index) => {
    const before = known[index] ?? 0;
    if (before > 0) return before;
    const peak = Math.max(peakAt(left, index), peakAt(right, index));
    known[index] = peak;
    return peak;
  };
}

/** How much of every sample may stay, from 0 to 1, so that no true peak exceeds the ceiling at this gain. */
function allowed({ left, right }: StereoSound, gain: number, peak: (index: number) => number): Float32Array {
  const may = new Float32Array(left.length).fill(1);
  // Between samples that are this low no peak can be too high.
  const low = CEILING / 2 / gain;
  for (let index = 0; index < left.length; index += 1) {
    if (Math.max(Math.abs(left[index] ?? 0), Math.abs(right[index] ?? 0)) < low) continue;
    const high = gain * peak(index);
    if (high <= CEILING) continue;
    // The peak may lie between this sample and the next.
    for (const at of [index, index + 1]) {
      if (at < may.length) may[at] = Math.min(may[at] ?? 1, CEILING / high);
    }
  }
  return may;
}

/** Opens again slowly after each peak; the sound before its beginning is its end where it goes round. */
function released(may: Float32Array, repeats: boolean): void {
  const keep = Math.exp(-1 / (RELEASE * TRACK_RATE));
  let closed = 0;
  for (let pass = repeats ? 0 : 1; pass < 2; pass += 1) {
    for (let index = 0; index < may.length; index += 1) {
      closed = Math.max(1 - (may[index] ?? 1), closed * keep);
      may[index] = 1 - closed;
    }
  }
}

/** The least of the next `reach` values at every place, going round where the sound does. */
function leastAhead(values: Float32Array, reach: number, repeats: boolean): Float32Array {
  const { length } = values;
  const at = (index: number): number =>
    index < length ? (values[index] ?? 1) : repeats ? (values[index % length] ?? 1) : 1;
  const least = new Float32Array(length);
  /** Places whose value is lower than all before them in the window, the lowest first. */
  const queue = new Int32Array(length + reach);
  let [head, tail] = [0, 0];
  for (let index = length + reach - 2; index >= 0; index -= 1) {
    while (tail > head && at(queue[tail - 1] ?? 0) >= at(index)) tail -= 1;
    queue[tail] = index;
    tail += 1;
    while ((queue[head] ?? 0) >= index + reach) head += 1;
    if (index < length) least[index] = at(queue[head] ?? 0);
  }
  return least;
}

/** The mean of this and the `reach` − 1 values before, so that the gain has come down when the peak is there. */
function smoothed(values: Float32Array, reach: number, repeats: boolean): Float32Array {
  const { length } = values;
  const at = (index: number): number =>
    index >= 0
      ? (values[index] ?? 1)
      : repeats
        ? (values[(index + length * reach) % length] ?? 1)
        : (values[0] ?? 1);
  let sum = 0;
  for (let index = 1 - reach; index < 0; index += 1) sum += at(index);
  const means = new Float32Array(length);
  for (let index = 0; index < length; index += 1) {
    sum += at(index);
    means[index] = sum / reach;
    sum -= at(index - reach + 1);
  }
  return means;
}

/** The sound at a gain, with its peaks turned down where they would exceed the ceiling: what turns, turns gently. */
function limited(
  sound: StereoSound,
  gain: number,
  repeats: boolean,
  peak: (index: number) => number,
): StereoSound {
  const may = allowed(sound, gain, peak);
  released(may, repeats);
  const reach = Math.round(ATTACK * TRACK_RATE);
  const curve = smoothed(leastAhead(may, reach, repeats), reach, repeats);
  const turned = (samples: Float32Array): Float32Array =>
    samples.map((sample, index) => gain * sample * (curve[index] ?? 1));
  return { sampleRate: sound.sampleRate, left: turned(sound.left), right: turned(sound.right) };
}

/** How far from the target is near enough, in LU, and how often the gain is found anew. */
const NEAR = 0.1;
const TURNS = 8;

/** LU that a decibel of gain brings at least, where peaks are turned down: what is found steeper or flatter is not believed. */
const LEAST_SLOPE = 0.2;

/**
 * The sound at the loudness of a track, {@link TARGET}, with no true peak over −2 dBTP; silence as it is. Turning peaks down
 * makes it a little softer, so the gain is found in a few turns.
 * @throws RangeError at another rate than 48 kHz
 */
export function levelled(sound: StereoSound, repeats: boolean): StereoSound {
  let measured = integratedLoudness(sound);
  if (measured === Number.NEGATIVE_INFINITY) return sound;
  const peak = peaksOf(sound);
  let decibels = 0;
  let slope = 1;
  let made = sound;
  for (let turn = 0; turn < TURNS; turn += 1) {
    const step = (TARGET - measured) / slope;
    if (turn > 0 && Math.abs(TARGET - measured) < NEAR) break;
    decibels += step;
    made = limited(sound, 10 ** (decibels / 20), repeats, peak);
    const now = integratedLoudness(made);
    slope = Math.min(1, Math.max(LEAST_SLOPE, (now - measured) / step));
    measured = now;
  }
  return made;
}
