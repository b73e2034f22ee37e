import type { StereoSound } from '../sound';

/** The recommendation prints its filters for this rate only, and every track is made at it. */
export const TRACK_RATE = 48_000;

interface Filter {
  readonly b: readonly [number, number, number];
  readonly a: readonly [number, number];
}

/** ITU-R BS.1770-5, Annex 1: table 1, the head's shelf, and table 2, the low CUT. */
const SHELF: Filter = {
  b: [1.53512485958697, -2.69169618940638, 1.19839281085285],
  a: [-1.69065929318241, 0.73248077421585],
};
const CUT: Filter = { b: [1, -2, 1], a: [-1.99004745483398, 0.99007225036621] };

/** Samples from one measured block to the next: blocks of 400 ms overlap by three quarters. */
const STEP = TRACK_RATE / 10;

/** Mean square of every tenth of a second behind both filters. */
function energies(samples: Float32Array): number[] {
  const tenths: number[] = [];
  let sum = 0;
  let [s1, s2, c1, c2] = [0, 0, 0, 0];
  const whole = Math.floor(samples.length / STEP) * STEP;
  for (let index = 0; index < whole; index += 1) {
    // Both filters in the transposed second direct form.
    const x = samples[index] ?? 0;
    const y = SHELF.b[0] * x + s1;
    s1 = SHELF.b[1] * x - SHELF.a[0] * y + s2;
    s2 = SHELF.b[2] * x - SHELF.a[1] * y;
    const z = CUT.b[0] * y + c1;
    c1 = CUT.b[1] * y - CUT.a[0] * z + c2;
    c2 = CUT.b[2] * y - CUT.a[1] * z;
    sum += z * z;
    if ((index + 1) % STEP === 0) {
      tenths.push(sum / STEP);
      sum = 0;
    }
  }
  return tenths;
}

const loudness = (energy: number): number => -0.691 + 10 * Math.log10(energy);
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * Integrated loudness of a whole sound in LUFS by ITU-R BS.1770-5, Annex 1: K-weighting, mean square of 400 ms blocks that
 * overlap by three quarters, an absolute gate at −70 LUFS and a relative one 10 LU below what is left. −Infinity where
 * nothing passes the gates.
 * @throws RangeError at another rate than {@link TRACK_RATE}
 */
export function integratedLoudness({ left, right, sampleRate }: StereoSound): number {
  if (sampleRate !== TRACK_RATE) throw new RangeError('The filters are those for 48 kHz.');
  const [l, r] = [energies(left), energies(right)];
  const tenths = l.map((energy, index) => energy + (r[index] ?? 0));
  const blocks = tenths.slice(3).map((_, index) => mean(tenths.slice(index, index + 4)));
  const loud = blocks.filter((energy) => loudness(energy) > -70);
  if (loud.length === 0) return Number.NEGATIVE_INFINITY;
  const gate = loudness(mean(loud)) - 10;
  return loudness(mean(loud.filter((energy) => loudness(energy) > gate)));
}

/** Taps on either side of the interpolator. */
const REACH = 12;

/** A windowed sine cardinal for the three places between two samples. */
const KERNELS: readonly Float64Array[] = [0.25, 0.5, 0.75].map((phase) =>
  Float64Array.from({ length: 2 * REACH }, (_, tap) => {
    const x = tap - REACH + 1 - phase;
    return (Math.sin(Math.PI * x) / (Math.PI * x)) * (0.5 + 0.5 * Math.cos((Math.PI * x) / REACH));
  }),
);

/**
 * The largest level on a sample and between it and the next: four times as many samples, as ITU-R BS.1770-5, Annex 2, asks
 * for at least.
 */
export function peakAt(samples: Float32Array, index: number): number {
  let most = Math.abs(samples[index] ?? 0);
  for (const kernel of KERNELS) {
    let value = 0;
    for (let tap = 0; tap < kernel.length; tap += 1)
      value += (kernel[tap] ?? 0) * (samples[index + tap - REACH + 1] ?? 0);
    most = Math.max(most, Math.abs(value));
  }
  return most;
}

/** The true peak of a channel in dBTP. */
export function truePeak(samples: Float32Array): number {
  let most = 0;
  for (let index = 0; index < samples.length; index += 1) {
    // Far below the loudest sample so far, nothing between the samples can exceed it.
    if (Math.abs(samples[index] ?? 0) >= most / 2) most = Math.max(most, peakAt(samples, index));
  }
  return 20 * Math.log10(Math.max(most, 1e-12));
}
