/**
 * Loudness of a stereo sound by ITU-R BS.1770-5, Annex 1: K-weighting, mean square of 400 ms blocks that overlap by
 * three quarters, an absolute gate at −70 LUFS and a relative one 10 LU below what is left.
 */
import type { StereoSound } from '../../src/sound';

/** The recommendation prints its filters for this rate only. */
export const LOUDNESS_RATE = 48_000;

interface Filter {
  readonly b: readonly [number, number, number];
  readonly a: readonly [number, number];
}

/** Table 1, the head's shelf, and table 2, the low cut. */
const FILTERS: readonly Filter[] = [
  {
    b: [1.53512485958697, -2.69169618940638, 1.19839281085285],
    a: [-1.69065929318241, 0.73248077421585],
  },
  { b: [1, -2, 1], a: [-1.99004745483398, 0.99007225036621] },
];

function filtered(samples: Float64Array, { b, a }: Filter): Float64Array {
  const out = new Float64Array(samples.length);
  let [x1, x2, y1, y2] = [0, 0, 0, 0];
  for (let index = 0; index < samples.length; index += 1) {
    const x = samples[index] ?? 0;
    const y = b[0] * x + b[1] * x1 + b[2] * x2 - a[0] * y1 - a[1] * y2;
    out[index] = y;
    [x2, x1, y2, y1] = [x1, x, y1, y];
  }
  return out;
}

const weighted = (samples: Float32Array): Float64Array =>
  FILTERS.reduce(filtered, Float64Array.from(samples));

const STEP = LOUDNESS_RATE / 10;

/** Mean square of every tenth of a second. */
function energies(samples: Float64Array): number[] {
  const tenths = Math.floor(samples.length / STEP);
  return Array.from({ length: tenths }, (_, tenth) => {
    let sum = 0;
    for (let index = tenth * STEP; index < (tenth + 1) * STEP; index += 1) {
      sum += (samples[index] ?? 0) ** 2;
    }
    return sum / STEP;
  });
}

const loudness = (energy: number): number => -0.691 + 10 * Math.log10(energy);
const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/**
 * Integrated loudness in LUFS of a whole sound; −Infinity where nothing passes the gates.
 * @throws RangeError at another rate than {@link LOUDNESS_RATE}
 */
export function integratedLoudness({ left, right, sampleRate }: StereoSound): number {
  if (sampleRate !== LOUDNESS_RATE) throw new RangeError('The filters are those for 48 kHz.');
  const [l, r] = [energies(weighted(left)), energies(weighted(right))];
  const tenths = l.map((energy, index) => energy + (r[index] ?? 0));
  const blocks = tenths.slice(3).map((_, index) => mean(tenths.slice(index, index + 4)));
  const loud = blocks.filter((energy) => loudness(energy) > -70);
  if (loud.length === 0) return Number.NEGATIVE_INFINITY;
  const gate = loudness(mean(loud)) - 10;
  return loudness(mean(loud.filter((energy) => loudness(energy) > gate)));
}

/** Taps on either side of the interpolator. */
const REACH = 12;

/**
 * The largest level between and on the samples in dBTP: four times as many samples, interpolated by a windowed sine
 * cardinal (ITU-R BS.1770-5, Annex 2, asks for at least that many).
 */
export function truePeak(samples: Float32Array): number {
  const kernels = [0, 0.25, 0.5, 0.75].map((phase) =>
    Array.from({ length: 2 * REACH }, (_, tap) => {
      const x = tap - REACH + 1 - phase;
      const window = 0.5 + 0.5 * Math.cos((Math.PI * x) / REACH);
      return x === 0 ? 1 : (Math.sin(Math.PI * x) / (Math.PI * x)) * window;
    }),
  );
  let most = 0;
  for (let index = REACH; index < samples.length - REACH; index += 1) {
    // Far below the loudest sample so far, nothing between the samples can exceed it.
    if (Math.abs(samples[index] ?? 0) < most / 2) continue;
    for (const kernel of kernels) {
      let value = 0;
      for (const [tap, gain] of kernel.entries()) value += gain * (samples[index + tap - REACH + 1] ?? 0);
      most = Math.max(most, Math.abs(value));
    }
  }
  return 20 * Math.log10(Math.max(most, 1e-12));
}
