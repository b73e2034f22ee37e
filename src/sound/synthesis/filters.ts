/** A two-pole, two-zero filter by its coefficients, normalised so that a0 is 1. */
export interface Biquad {
  readonly b0: number;
  readonly b1: number;
  readonly b2: number;
  readonly a1: number;
  readonly a2: number;
}

type Shape = 'low-pass' | 'high-pass' | 'band-pass' | 'low shelf' | 'peak';

/**
 * Coefficients after R. Bristow-Johnson, "Cookbook formulae for audio EQ biquad filter coefficients" (1998).
 * @param frequency in Hz, kept below the Nyquist frequency.
 * @param gain in decibels, for a shelf or a peak.
 */
export function biquad(
  shape: Shape,
  frequency: number,
  sampleRate: number,
  q = Math.SQRT1_2,
  gain = 0,
): Biquad {
  const omega = (2 * Math.PI * Math.min(frequency, sampleRate * 0.49)) / sampleRate;
  const cos = Math.cos(omega);
  const alpha = Math.sin(omega) / (2 * q);
  const a = 10 ** (gain / 40);
  const from = (b0: number, b1: number, b2: number, a0: number, a1: number, a2: number): Biquad => ({
    b0: b0 / a0,
    b1: b1 / a0,
    b2: b2 / a0,
    a1: a1 / a0,
    a2: a2 / a0,
  });
  switch (shape) {
    case 'low-pass':
      return from((1 - cos) / 2, 1 - cos, (1 - cos) / 2, 1 + alpha, -2 * cos, 1 - alpha);
    case 'high-pass':
      return from((1 + cos) / 2, -(1 + cos), (1 + cos) / 2, 1 + alpha, -2 * cos, 1 - alpha);
    case 'band-pass':
      return from(alpha, 0, -alpha, 1 + alpha, -2 * cos, 1 - alpha);
    case 'peak':
      return from(1 + alpha * a, -2 * cos, 1 - alpha * a, 1 + alpha / a, -2 * cos, 1 - alpha / a);
    case 'low shelf': {
      const root = 2 * Math.sqrt(a) * alpha;
      return from(
        a * (a + 1 - (a - 1) * cos + root),
        2 * a * (a - 1 - (a + 1) * cos),
        a * (a + 1 - (a - 1) * cos - root),
        a + 1 + (a - 1) * cos + root,
        -2 * (a - 1 + (a + 1) * cos),
        a + 1 + (a - 1) * cos - root,
      );
    }
  }
}

/** Filters the samples in place, from rest; by what went in and came out, of which little waits for the sample before. */
export function filter(samples: Float32Array, { b0, b1, b2, a1, a2 }: Biquad): void {
  let in1 = 0;
  let in2 = 0;
  let out1 = 0;
  let out2 = 0;
  for (let index = 0; index < samples.length; index += 1) {
    const input = samples[index] ?? 0;
    const output = b0 * input + b1 * in1 + b2 * in2 - a2 * out2 - a1 * out1;
    in2 = in1;
    in1 = input;
    out2 = out1;
    out1 = output;
    samples[index] = output;
  }
}

/** Steps in which {@link rounded} reads the curve, a whole 1 apart. */
const STEPS = 2048;

/** The hyperbolic tangent from 0 to 3, a step beyond it included. */
const CURVE = Float64Array.from({ length: 3 * STEPS + 2 }, (_, step) => Math.tanh(step / STEPS));

/**
 * The hyperbolic tangent for up to 3 either way, read straight between steps: by less than 3e-8 beside it, which is
 * below what a sample can tell, and several times as fast.
 */
export function rounded(value: number): number {
  const place = Math.abs(value) * STEPS;
  const below = place | 0;
  const low = CURVE[below] ?? 1;
  const curve = low + (place - below) * ((CURVE[below + 1] ?? 1) - low);
  return value < 0 ? -curve : curve;
}

/**
 * Rounds the samples' peaks in place, as an amplifier does that is driven hard, and brings the largest to 1.
 * Harmonics arise that let small loudspeakers hint at low notes, and the body of a note comes nearer its attack.
 */
export function drive(samples: Float32Array, amount: number): void {
  normalise(samples, amount);
  const full = Math.tanh(amount);
  for (let index = 0; index < samples.length; index += 1) {
    samples[index] = rounded(samples[index] ?? 0) / full;
  }
}

/** Scales the samples in place so that the largest is `peak`. */
export function normalise(samples: Float32Array, peak: number): void {
  let largest = 0;
  for (let index = 0; index < samples.length; index += 1) {
    const size = Math.abs(samples[index] ?? 0);
    if (size > largest) largest = size;
  }
  if (largest > 0) {
    scale(samples, peak / largest);
  }
}

export function scale(samples: Float32Array, factor: number): void {
  for (let index = 0; index < samples.length; index += 1) {
    samples[index] = (samples[index] ?? 0) * factor;
  }
}

/** Fades the last part of the samples to nothing, so that a sound that is cut off does not click. */
export function fadeOut(samples: Float32Array, length: number): void {
  const from = Math.max(0, samples.length - length);
  for (let index = from; index < samples.length; index += 1) {
    const left = (samples.length - index) / Math.max(1, samples.length - from);
    samples[index] = (samples[index] ?? 0) * (0.5 - 0.5 * Math.cos(Math.PI * left));
  }
}

/** Fades from full level to nothing by their length in samples; few lengths occur. */
const fades = new Map<number, Float32Array>();

/** The levels of a fade of so many samples, from full level to nothing. */
export function fadeOf(length: number): Float32Array {
  const known = fades.get(length);
  if (known !== undefined) {
    return known;
  }
  const fade = Float32Array.from(
    { length },
    (_, index) => 0.5 + 0.5 * Math.cos((Math.PI * (index + 1)) / length),
  );
  fades.set(length, fade);
  return fade;
}
