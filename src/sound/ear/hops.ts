import { createEchoFilter, LATER } from './echo';
import { bandPass, lowPass } from './filters';

/** Sound is looked at in hops of so many thinned samples: 2.7 ms at 48 kHz. */
const HOP = 32;

/** The highest rates, in Hz, at which strokes and periods are looked for. */
const ENOUGH = 12_000;

/** Hz above which nothing of a bass note helps to find its pitch. */
const CUT = 1200;

/** The bands in which a stroke is looked for, in Hz: the string's lowest partials, its body, the finger or the pick. */
const BANDS = [
  [30, 160],
  [160, 400],
  [400, 900],
  [900, 1900],
  [1900, 4200],
] as const;

/** Seconds over which the loudness of the low partials is taken: a period of the lowest string. */
const LEVEL_WINDOW = 0.035;

/** Seconds of sound that are kept for finding pitches. */
const KEPT = 2;

/** Power below this counts as this, so that silence has a logarithm. */
const NOTHING = 1e-10;

/** Samples louder than this are played; and for so many seconds they ring on. */
const PLAYED = { level: 0.001, seconds: 0.7 } as const;

const NO_REST: readonly number[] = BANDS.map(() => -100);

const decibels = (power: number): number => 10 * Math.log10(power + NOTHING);

/** A moment of sound. */
export interface Hop {
  /** Seconds from the beginning of the stream to its end. */
  readonly at: number;
  /** Power of each band, in decibels. */
  readonly bands: readonly number[];
  /** What may be left of a loudspeaker in each band, in decibels. */
  readonly rest: readonly number[];
  /** How loud the low partials are, in decibels below full level. */
  readonly level: number;
  /** An input at its limit: what it says is not to be trusted. */
  readonly clipped: boolean;
}

/** Takes a stream apart into hops, and keeps its last low-passed stretch for pitches. */
export function createHops(sampleRate: number, onHop: (hop: Hop) => void) {
  const step = Math.max(1, Math.floor(sampleRate / ENOUGH));
  const rate = sampleRate / step;
  const lowRate = rate / 2;
  const audible = () => lowPass(Math.min(4800, rate * 0.42), sampleRate);
  const [antiAlias, antiAliasSounded] = [audible(), audible()];
  const low = lowPass(CUT, rate);
  const filters = BANDS.map(([from, to]) => bandPass(from, to, rate));
  const powers = new Float64Array(BANDS.length);
  const echoFilters = BANDS.map(([from, to]) => bandPass(from, to, rate));
  const echoPowers = new Float64Array(BANDS.length);
  const kept = new Float32Array(Math.ceil(KEPT * lowRate));
  const windowLength = Math.round(LEVEL_WINDOW * lowRate);
  let [samplesIn, thinned, lows] = [0, 0, 0];
  /** The sum of the squares of the level's window. */
  const levelSum = new Float64Array(1);
  let peak = 0;

  let skipped = 0;
  /** When the loudspeaker was played last, in thinned samples. */
  let sounded = Number.NEGATIVE_INFINITY;
  const now = (): number => Math.max(0, (thinned - skipped) * step) / sampleRate;

  const keep = (value: number): void => {
    const old = kept[(lows - windowLength + kept.length) % kept.length] ?? 0;
    const sum = (levelSum[0] ?? 0) + value * value - (lows >= windowLength ? old * old : 0);
    levelSum[0] = Math.max(0, sum);
    kept[lows % kept.length] = value;
    lows += 1;
  };

  const take = (value: number, played: number): void => {
    const deep = low(value);
    if (thinned % 2 === 0) keep(deep);
    for (let band = 0; band < filters.length; band += 1) {
      const passed = filters[band]?.(value) ?? 0;
      powers[band] = (powers[band] ?? 0) + passed * passed;
    }
    if (skipped > 0)
      for (let band = 0; band < echoFilters.length; band += 1) {
        const passed = echoFilters[band]?.(played) ?? 0;
        echoPowers[band] = (echoPowers[band] ?? 0) + passed * passed;
      }
    thinned += 1;
    if (thinned % HOP !== 0) return;
    onHop({
      at: now(),
      bands: Array.from(powers, (power) => decibels(power / HOP)),
      rest:
        skipped === 0
          ? NO_REST
          : BANDS.map(([from, to], band) =>
              decibels(((echoPowers[band] ?? 0) / HOP) * echo.left(from / rate, to / rate)),
            ),
      level: decibels((levelSum[0] ?? 0) / windowLength),
      clipped: peak >= 0.999,
    });
    powers.fill(0);
    echoPowers.fill(0);
    peak = 0;
  };

  const echo = createEchoFilter(take);

  return {
    hopSeconds: HOP / rate,
    lowRate,
    /** @param output - what the loudspeaker played meanwhile, to be taken off; null where nothing is */
    push: (samples: Float32Array, output: Float32Array | null): void => {
      for (let index = 0; index < samples.length; index += 1) {
        const sample = samples[index] ?? 0;
        peak = Math.max(peak, Math.abs(sample));
        const passed = antiAlias(sample);
        const played = output === null ? 0 : antiAliasSounded(output[index] ?? 0);
        samplesIn += 1;
        if (samplesIn % step !== 0) continue;
        if (output === null && skipped === 0) take(passed, 0);
        else {
          skipped = LATER;
          if (Math.abs(played) > PLAYED.level) sounded = thinned;
          echo.push(passed, played);
        }
      }
    },
    /** Whether a loudspeaker sounds, too, as far as its sound was not taken off. */
    besideLoudspeaker: (): boolean => thinned - sounded < PLAYED.seconds * rate + LATER,
    below: echo.below,
    /** Seconds that have been looked at. */
    now,
    /** The low-passed sound between two times in seconds, as far as it is still kept. */
    between: (from: number, to: number): Float32Array => {
      const last = Math.min(lows, Math.round(to * lowRate) + (skipped >> 1));
      const first = Math.max(0, lows - kept.length, Math.round(from * lowRate) + (skipped >> 1));
      return Float32Array.from(
        { length: Math.max(0, last - first) },
        (_, index) => kept[(first + index) % kept.length] ?? 0,
      );
    },
  };
}
