/** Measuring by other means than the instruments are made with. */

export const rms = (samples: Float32Array): number =>
  Math.sqrt(samples.reduce((sum, sample) => sum + sample * sample, 0) / Math.max(1, samples.length));

export const peak = (samples: Float32Array): number =>
  samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);

export const decibels = (ratio: number): number => 20 * Math.log10(Math.max(ratio, 1e-12));

export const cents = (measured: number, wanted: number): number => 1200 * Math.log2(measured / wanted);

/** Normalised square difference of the samples with themselves `lag` samples later: 1 is a perfect period. */
function likeness(samples: Float32Array, lag: number): number {
  let product = 0;
  let energy = 0;
  for (let index = 0; index + lag < samples.length; index += 1) {
    const now = samples[index] ?? 0;
    const later = samples[index + lag] ?? 0;
    product += now * later;
    energy += now * now + later * later;
  }
  return energy === 0 ? 0 : (2 * product) / energy;
}

/**
 * The pitch in Hz of a steady stretch of sound between two frequencies: the first period that is nearly as good
 * as the best, after McLeod and Wyvill, "A smarter way to find pitch" (ICMC 2005), refined by a parabola.
 */
export function pitchOf(samples: Float32Array, sampleRate: number, lowest: number, highest: number): number {
  const from = Math.floor(sampleRate / highest);
  const to = Math.ceil(sampleRate / lowest);
  const values = Array.from({ length: to - from + 1 }, (_, index) => likeness(samples, from + index));
  const best = Math.max(...values);
  const at = values.findIndex(
    (value, index) =>
      value > best * 0.95 && value >= (values[index - 1] ?? 1) && value >= (values[index + 1] ?? 1),
  );
  const [before = 0, here = 0, after = 0] = [values[at - 1], values[at], values[at + 1]];
  const bend = before - 2 * here + after;
  const shift = bend === 0 ? 0 : (before - after) / (2 * bend);
  return sampleRate / (from + at + shift);
}

/** Samples at which sound begins after at least `silence` samples without any. */
export function onsetsAfterSilence(samples: Float32Array, silence: number, threshold = 1e-4): number[] {
  const onsets: number[] = [];
  let quiet = silence;
  for (const [index, sample] of samples.entries()) {
    if (Math.abs(sample) < threshold) {
      quiet += 1;
    } else {
      if (quiet >= silence) {
        onsets.push(index);
      }
      quiet = 0;
    }
  }
  return onsets;
}
