/** A filter that goes on from block to block, one sample at a time. */
export type Filter = (sample: number) => number;

interface Coefficients {
  readonly b: readonly [number, number, number];
  readonly a: readonly [number, number];
}

/**
 * Two poles and two zeros (direct form I). What it remembers stands in an array of its own: fractions kept in variables
 * of a closure are objects, one more for each sample, which the audio thread would have to clear away.
 */
function twoPoles({ b: [b0, b1, b2], a: [a1, a2] }: Coefficients): Filter {
  const past = new Float64Array(4);
  return (x) => {
    const [x1, y1] = [past[0] ?? 0, past[2] ?? 0];
    const y = b0 * x + b1 * x1 + b2 * (past[1] ?? 0) - a1 * y1 - a2 * (past[3] ?? 0);
    past[1] = x1;
    past[0] = x;
    past[3] = y1;
    past[2] = y;
    return y;
  };
}

/** The formulas of R. Bristow-Johnson's cookbook, low-pass and high-pass of two poles. */
function cookbook(kind: 'low' | 'high', cut: number, rate: number, q: number): Filter {
  const omega = (2 * Math.PI * cut) / rate;
  const alpha = Math.sin(omega) / (2 * q);
  const cos = Math.cos(omega);
  const a0 = 1 + alpha;
  const outer = (kind === 'low' ? (1 - cos) / 2 : (1 + cos) / 2) / a0;
  const inner = (kind === 'low' ? 2 : -2) * outer;
  return twoPoles({ b: [outer, inner, outer], a: [(-2 * cos) / a0, (1 - alpha) / a0] });
}

/** The two qualities that make a Butterworth filter of four poles. */
const FOUR_POLES = [0.5412, 1.3066] as const;

const chain =
  (first: Filter, second: Filter): Filter =>
  (sample) =>
    second(first(sample));

/** Four poles, in Hz. */
export const lowPass = (cut: number, rate: number): Filter =>
  chain(cookbook('low', cut, rate, FOUR_POLES[0]), cookbook('low', cut, rate, FOUR_POLES[1]));

/** Two poles each way, in Hz. */
export const bandPass = (from: number, to: number, rate: number): Filter =>
  chain(cookbook('high', from, rate, Math.SQRT1_2), cookbook('low', to, rate, Math.SQRT1_2));
