import { type Biquad, biquad } from './filters';
import { STEMS, type Stem, type Stems, silence } from './stems';

/** A small room by four delay lines that feed each other. */
interface Room {
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

/** A player's corner: whose sound it takes and where it comes out, to one side of the stage and to the other. */
interface Corner {
  readonly from: readonly Stem[];
  readonly to: readonly [Stem, Stem | null];
  readonly room: Room;
}

/**
 * The kit stands in the room, the guitar's spring and the organ's cabinet are nearer to the ear; the bass, the click and
 * the count-in stay dry. The figures are ours.
 */
export const CORNERS: readonly Corner[] = [
  {
    from: ['drums', 'hats'],
    to: ['drums', 'hats'],
    room: { delays: [11.3, 17.9, 23.6, 31.7], decay: 0.3, treble: 5200, low: 180, level: 0.14 },
  },
  {
    from: ['chops'],
    to: ['chops', null],
    room: { delays: [19.1, 27.7, 33.1, 41.3], decay: 0.34, treble: 2800, low: 300, level: 0.06 },
  },
  {
    from: ['organ'],
    to: ['organ', null],
    room: { delays: [13.7, 19.3, 29.9, 37.1], decay: 0.3, treble: 3600, low: 200, level: 0.07 },
  },
];

/** Seconds after which nothing that could be measured is left of any of the rooms: twice the time of the longest. */
const TAIL = 2 * Math.max(...CORNERS.map(({ room }) => room.decay));

/** How many samples a sound goes on in the room. */
export const roomTail = (sampleRate: number): number => Math.ceil(TAIL * sampleRate);

/** Samples that are worked on at once: they stay in the processor's own memory. */
const BLOCK = 256;

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

/** One of the four delay lines, with its low-pass. */
interface Line {
  readonly samples: Float64Array;
  /** What it gives back of what comes to it, its low-pass counted in. */
  readonly gain: number;
  place: number;
  low: number;
}

/** A room's figures at a sample rate, what sounds in it, and the block that is worked on. */
interface Network {
  readonly lines: readonly [Line, Line, Line, Line];
  readonly pole: number;
  readonly taken: number;
  readonly high: Biquad;
  readonly highState: Float64Array;
  readonly input: Float64Array;
  readonly one: Float64Array;
  readonly other: Float64Array;
  /** Samples in which all of it dies away, and samples since something entered. */
  readonly tail: number;
  quiet: number;
}

/**
 * A feedback delay network with a Hadamard matrix and a low-pass in each line (J.-M. Jot and A. Chaigne, "Digital delay
 * networks for designing artificial reverberators", AES 90th convention, 1991), at rest. Its two sides are unlike each
 * other. Level, high-pass and the low-passes' gain are taken where the sound enters, once for both sides: all of it is
 * linear, so that is the same.
 */
function createNetwork(room: Room, sampleRate: number): Network {
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
    tail: roomTail(sampleRate),
    quiet: Number.POSITIVE_INFINITY,
  };
}

function comeToRest({ lines, highState }: Network): void {
  for (const line of lines) {
    line.samples.fill(0);
    line.low = 0;
  }
  highState.fill(0);
}

/** Whether something enters in so many samples. */
function enters(ins: readonly Float32Array[], from: number, length: number): boolean {
  for (const samples of ins) {
    for (let index = from; index < from + length; index += 1) if (samples[index] !== 0) return true;
  }
  return false;
}

/** Takes in a block. Here and below whatever a loop needs is a name of its own: the loops are the mixer's whole work. */
function take(
  network: Network,
  first: Float32Array,
  second: Float32Array | undefined,
  from: number,
  length: number,
) {
  const { input, taken, highState } = network;
  const { b0, b1, b2, a1, a2 } = network.high;
  if (second === undefined) {
    for (let index = 0; index < length; index += 1) input[index] = first[from + index] ?? 0;
  } else {
    for (let index = 0; index < length; index += 1)
      input[index] = (first[from + index] ?? 0) + (second[from + index] ?? 0);
  }
  let in1 = highState[0] ?? 0;
  let in2 = highState[1] ?? 0;
  let out1 = highState[2] ?? 0;
  let out2 = highState[3] ?? 0;
  for (let index = 0; index < length; index += 1) {
    const dry = taken * (input[index] ?? 0);
    const high = b0 * dry + b1 * in1 + b2 * in2 - a2 * out2 - a1 * out1;
    in2 = in1;
    in1 = dry;
    out2 = out1;
    out1 = high;
    input[index] = high;
  }
  highState[0] = in1;
  highState[1] = in2;
  highState[2] = out1;
  highState[3] = out2;
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

/**
 * What sounds in a room goes on from call to call.
 * @param ins - what enters: their sum, of one or two
 * @param outs - what the two sides are added to, which may be what enters; left out or null where a side is not heard
 */
function run(
  network: Network,
  ins: readonly Float32Array[],
  outs: readonly (Float32Array | null)[],
  from: number,
  to: number,
): void {
  const [first, second] = ins;
  const [left, right] = outs;
  if (first === undefined) return;
  for (let at = from; at < to; ) {
    let length = Math.min(BLOCK, to - at);
    for (const { samples, place } of network.lines) length = Math.min(length, samples.length - place);
    const begins = enters(ins, at, length);
    if (begins || network.quiet < network.tail) {
      take(network, first, second, at, length);
      goThrough(network, length);
      if (left) addTo(left, at, network.one, length);
      if (right) addTo(right, at, network.other, length);
      network.quiet = begins ? 0 : network.quiet + length;
      if (network.quiet >= network.tail) comeToRest(network);
    }
    at += length;
  }
}

/** What the room alone makes of a sound: its two sides. */
export function inRoom(
  dry: Float32Array,
  room: Room,
  sampleRate: number,
): readonly [Float32Array, Float32Array] {
  const [one, other] = [new Float32Array(dry.length), new Float32Array(dry.length)];
  run(createNetwork(room, sampleRate), [dry], [one, other], 0, dry.length);
  return [one, other];
}

/**
 * The dry stems of a window with what the room makes of them and of the `before` samples ahead of it, which go. In place:
 * a long window is large.
 */
export function roomed(dry: Stems, before: number, sampleRate: number): Stems {
  const { length } = dry.bass;
  for (const { from, to, room } of CORNERS) {
    run(
      createNetwork(room, sampleRate),
      from.map((stem) => dry[stem]),
      to.map((stem) => stem && dry[stem]),
      0,
      length,
    );
  }
  return mapStems((stem) => dry[stem].subarray(before));
}

const mapStems = (make: (stem: Stem) => Float32Array): Stems => {
  const stems: Record<Stem, Float32Array> = silence(0);
  for (const stem of STEMS) stems[stem] = make(stem);
  return stems;
};

/** The last samples of a round that goes round and round, as many as are wanted. */
function endOf(round: Float32Array, wanted: number): Float32Array {
  const { length } = round;
  const end = new Float32Array(wanted);
  for (let at = wanted - length; at > -length; at -= length) {
    end.set(round.subarray(Math.max(0, -at)), Math.max(0, at));
  }
  return end;
}

/** The dry stems of a round, which goes round and round, in the room; in place. */
export function roomedRound(dry: Stems, sampleRate: number): Stems {
  const { length } = dry.bass;
  if (length === 0) return dry;
  const before = roomTail(sampleRate);
  for (const { from, to, room } of CORNERS) {
    const network = createNetwork(room, sampleRate);
    run(
      network,
      from.map((stem) => endOf(dry[stem], before)),
      [],
      0,
      before,
    );
    run(
      network,
      from.map((stem) => dry[stem]),
      to.map((stem) => stem && dry[stem]),
      0,
      length,
    );
  }
  return dry;
}
