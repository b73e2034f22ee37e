import { type Biquad, biquad } from './filters';

/** A small room by four delay lines that feed each other. */
export interface Room {
  /** Milliseconds of the delay lines, of lengths that share no divisor. */
  readonly delays: readonly [number, number, number, number];
  /** Seconds until it has fallen by 60 dB. */
  readonly decay: number;
  /** Where the air and the walls begin to take the treble, and what the room leaves below, in hertz. */
  readonly treble: number;
  readonly low: number;
  /** Of what enters it. */
  readonly level: number;
}

/** Samples that are worked on at once: they stay in the processor's own memory. */
const BLOCK = 256;

/** One of the four delay lines, with its low-pass. */
interface Line {
  readonly samples: Float64Array;
  /** What it gives back of what comes to it, its low-pass counted in. */
  readonly gain: number;
  place: number;
  low: number;
}

/** A room's figures at a sample rate, what sounds in it, and the block that is worked on. */
export interface Network {
  readonly lines: readonly [Line, Line, Line, Line];
  readonly pole: number;
  readonly taken: number;
  readonly high: Biquad;
  /** The last two samples that went into the high-pass and the last two that came out. */
  readonly highState: Float64Array;
  readonly input: Float64Array;
  readonly one: Float64Array;
  readonly other: Float64Array;
}

/**
 * A feedback delay network with a Hadamard matrix and a low-pass in each line (J.-M. Jot and A. Chaigne, "Digital delay
 * networks for designing artificial reverberators", AES 90th convention, 1991), at rest. Its two sides are unlike each
 * other. Level, high-pass and the low-passes' gain are taken where the sound enters, once for both sides: all of it is
 * linear, so that is the same.
 */
export function createNetwork(room: Room, sampleRate: number): Network {
  const pole = Math.exp((-2 * Math.PI * room.treble) / sampleRate);
  const line = (delay: number): Line => {
    const length = Math.max(1, Math.round((delay * sampleRate) / 1000));
    const gain = (1 - pole) * 0.5 * 10 ** ((-3 * length) / (room.decay * sampleRate));
    return { samples: new Float64Array(length), gain, place: 0, low: 0 };
  };
  const [a, b, c, d] = room.delays;
  return {
    lines: [line(a), line(b), line(c), line(d)],
    pole,
    taken: (1 - pole) * room.level,
    high: biquad('high-pass', room.low, sampleRate),
    highState: new Float64Array(4),
    input: new Float64Array(BLOCK),
    one: new Float64Array(BLOCK),
    other: new Float64Array(BLOCK),
  };
}

/** What is smaller is nothing: numbers near the least that there are take a processor many times as long. */
const NOTHING = 1e-30;

const orNothing = (value: number): number => (Math.abs(value) < NOTHING ? 0 : value);

/**
 * Takes in a block. Here and below whatever a loop needs is a name of its own: the loops are the mixer's whole work. The
 * high-pass is worked out here and not by `filter`, in double precision: by that, the room took a quarter longer.
 */
function take(
  { input, taken, high, highState }: Network,
  samples: Float32Array,
  from: number,
  length: number,
): void {
  const { b0, b1, b2, a1, a2 } = high;
  let in1 = highState[0] ?? 0;
  let in2 = highState[1] ?? 0;
  let out1 = highState[2] ?? 0;
  let out2 = highState[3] ?? 0;
  for (let index = 0; index < length; index += 1) {
    const dry = taken * (samples[from + index] ?? 0);
    const wet = b0 * dry + b1 * in1 + b2 * in2 - a2 * out2 - a1 * out1;
    in2 = in1;
    in1 = dry;
    out2 = out1;
    out1 = wet;
    input[index] = wet;
  }
  highState[0] = in1;
  highState[1] = in2;
  highState[2] = orNothing(out1);
  highState[3] = orNothing(out2);
}

/** Lets a block go through the lines, none of which comes round within it. */
function goThrough({ lines, pole, input, one, other }: Network, length: number): void {
  const [lineA, lineB, lineC, lineD] = lines;
  const { samples: a, gain: ga, place: pa } = lineA;
  const { samples: b, gain: gb, place: pb } = lineB;
  const { samples: c, gain: gc, place: pc } = lineC;
  const { samples: d, gain: gd, place: pd } = lineD;
  let fa = lineA.low;
  let fb = lineB.low;
  let fc = lineC.low;
  let fd = lineD.low;
  for (let index = 0; index < length; index += 1) {
    const dry = input[index] ?? 0;
    fa = pole * fa + (a[pa + index] ?? 0);
    fb = pole * fb + (b[pb + index] ?? 0);
    fc = pole * fc + (c[pc + index] ?? 0);
    fd = pole * fd + (d[pd + index] ?? 0);
    const sum = fa + fb;
    const difference = fa - fb;
    const sum2 = fc + fd;
    const difference2 = fc - fd;
    one[index] = sum - difference2;
    other[index] = difference + sum2;
    a[pa + index] = dry + ga * (sum + sum2);
    b[pb + index] = dry + gb * (difference + difference2);
    c[pc + index] = dry + gc * (sum - sum2);
    d[pd + index] = dry + gd * (difference - difference2);
  }
  lineA.low = fa;
  lineB.low = fb;
  lineC.low = fc;
  lineD.low = fd;
  for (const line of lines) line.place = (line.place + length) % line.samples.length;
}

/** Adds some samples to others from a place on. Four at a time: the loop itself costs as much as one. */
function addTo(target: Float32Array, at: number, samples: Float64Array, length: number): void {
  const fours = length & ~3;
  for (let index = 0; index < fours; index += 4) {
    const place = at + index;
    target[place] = (target[place] ?? 0) + (samples[index] ?? 0);
    target[place + 1] = (target[place + 1] ?? 0) + (samples[index + 1] ?? 0);
    target[place + 2] = (target[place + 2] ?? 0) + (samples[index + 2] ?? 0);
    target[place + 3] = (target[place + 3] ?? 0) + (samples[index + 3] ?? 0);
  }
  for (let index = fours; index < length; index += 1) {
    target[at + index] = (target[at + index] ?? 0) + (samples[index] ?? 0);
  }
}

/**
 * Lets a sound enter and adds what comes out; what sounds in the room goes on from call to call.
 * @param outs - what the two sides are added to, which may be what enters; null where a side is not heard
 */
export function letSound(
  network: Network,
  dry: Float32Array,
  [left, right]: readonly [Float32Array | null, Float32Array | null],
): void {
  for (let at = 0; at < dry.length; ) {
    let length = Math.min(BLOCK, dry.length - at);
    for (const { samples, place } of network.lines) length = Math.min(length, samples.length - place);
    take(network, dry, at, length);
    goThrough(network, length);
    if (left) addTo(left, at, network.one, length);
    if (right) addTo(right, at, network.other, length);
    at += length;
  }
}
