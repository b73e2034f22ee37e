/** A string that is plucked once and left to ring. */
export interface Pluck {
  /** Sounding pitch in Hz. */
  readonly frequency: number;
  readonly seconds: number;
  /** Seconds until the fundamental has fallen by 60 dB, at the rate it falls at once the beginning is over. */
  readonly decay: number;
  /** Seconds until a partial at {@link BRIGHT} Hz has fallen by 60 dB. */
  readonly brightDecay: number;
  /** Where the string is plucked and where it is heard, as shares of its length from the bridge. */
  readonly pluckedAt: number;
  readonly heardAt: number;
  /**
   * How much faster the whole string falls at its beginning, and over how many seconds that passes: it swings up and
   * down first, which the bridge takes up sooner than its swinging to and fro. Left out, it falls at one rate.
   */
  readonly first?: { readonly faster: number; readonly seconds: number };
  /** Length of the pluck's pulse in seconds: longer is duller. */
  readonly pulse: number;
  /** Coefficient of the two dispersing all-passes, from −1 to 0: a stiff string's partials stretch a little. */
  readonly stiffness: number;
}

const BRIGHT = 2500;

const lossGain = (a: number, omega: number): number =>
  (1 - a) / Math.sqrt(1 - 2 * a * Math.cos(omega) + a * a);

const lossDelay = (a: number, omega: number): number =>
  Math.atan2(a * Math.sin(omega), 1 - a * Math.cos(omega)) / omega;

/** Phase delay in samples of the all-pass (c + z⁻¹) / (1 + c z⁻¹). */
function allPassDelay(c: number, omega: number): number {
  const phase =
    Math.atan2(-Math.sin(omega), c + Math.cos(omega)) -
    Math.atan2(-c * Math.sin(omega), 1 + c * Math.cos(omega));
  return -phase / omega;
}

/** The pole of the loss filter that makes the bright partial die as much sooner as asked. */
function lossPole(pluck: Pluck, sampleRate: number): number {
  const omega = (2 * Math.PI * pluck.frequency) / sampleRate;
  const bright = (2 * Math.PI * Math.max(BRIGHT, pluck.frequency * 2)) / sampleRate;
  const wanted = 10 ** ((-3 / pluck.frequency) * (1 / pluck.brightDecay - 1 / pluck.decay));
  let low = 0;
  let high = 0.999;
  for (let step = 0; step < 40; step += 1) {
    const middle = (low + high) / 2;
    if (lossGain(middle, bright) / lossGain(middle, omega) > wanted) {
      low = middle;
    } else {
      high = middle;
    }
  }
  return (low + high) / 2;
}

/**
 * Extended Karplus-Strong: a delay line with loss, dispersion and an all-pass that tunes the rest of the period
 * (D. A. Jaffe and J. O. Smith, "Extensions of the Karplus-Strong plucked-string algorithm", Computer Music
 * Journal 7(2), 1983). The phase delay of every filter in the loop is taken off the period, so the fundamental
 * is in tune.
 */
export function pluckString(pluck: Pluck, sampleRate: number): Float32Array {
  const length = Math.max(1, Math.round(pluck.seconds * sampleRate));
  const omega = (2 * Math.PI * pluck.frequency) / sampleRate;
  const period = sampleRate / pluck.frequency;
  const a = lossPole(pluck, sampleRate);
  const gain = 10 ** (-3 / (pluck.frequency * pluck.decay)) / lossGain(a, omega);
  const c = pluck.stiffness;
  const rest = period - lossDelay(a, omega) - 2 * allPassDelay(c, omega);
  const delay = Math.max(1, Math.floor(rest - 0.35));
  const fraction = rest - delay;
  const tuning = Math.sin((omega - omega * fraction) / 2) / Math.sin((omega + omega * fraction) / 2);

  const { faster, seconds: over } = pluck.first ?? { faster: 0, seconds: 1 };
  /** What the loop keeps at the beginning, of what it keeps later; the difference dies away. */
  let early = 10 ** ((-3 * faster) / (pluck.frequency * pluck.decay)) - 1;
  const settle = Math.exp(-1 / (over * sampleRate));

  const output = new Float32Array(length);
  exciteString(output, pluck, period, sampleRate);
  const line = new Float64Array(delay);
  let place = 0;
  let loss = 0;
  let in1 = 0;
  let out1 = 0;
  let in2 = 0;
  let out2 = 0;
  let in3 = 0;
  let out3 = 0;
  for (let index = 0; index < length; index += 1) {
    loss = gain * (1 + early) * (1 - a) * (line[place] ?? 0) + a * loss;
    early *= settle;
    out1 = c * (loss - out1) + in1;
    in1 = loss;
    out2 = c * (out1 - out2) + in2;
    in2 = out1;
    out3 = tuning * (out2 - out3) + in3;
    in3 = out2;
    const value = (output[index] ?? 0) + out3;
    line[place] = value;
    place = place + 1 === delay ? 0 : place + 1;
    output[index] = value;
  }
  return listenAt(output, Math.round(pluck.heardAt * period));
}

/** A raised-cosine pulse and, as the wave comes back from the bridge, its inversion. */
function exciteString(output: Float32Array, pluck: Pluck, period: number, sampleRate: number): void {
  const width = Math.max(2, Math.round(pluck.pulse * sampleRate));
  const back = Math.round(pluck.pluckedAt * period);
  for (let index = 0; index < width; index += 1) {
    const value = 0.5 - 0.5 * Math.cos((2 * Math.PI * (index + 0.5)) / width);
    if (index < output.length) {
      output[index] = (output[index] ?? 0) + value;
    }
    if (index + back < output.length) {
      output[index + back] = (output[index + back] ?? 0) - value;
    }
  }
}

/** What a pickup hears: the wave on its way out and, inverted, on its way back. */
function listenAt(string: Float32Array, back: number): Float32Array {
  const heard = new Float32Array(string.length);
  for (let index = 0; index < string.length; index += 1) {
    heard[index] = (string[index] ?? 0) - (index >= back ? (string[index - back] ?? 0) : 0);
  }
  return heard;
}
