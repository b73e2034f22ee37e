import { biquad, filter } from './filters';
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

/**
 * A feedback delay network with a Hadamard matrix and a low-pass in each line (J.-M. Jot and A. Chaigne, "Digital delay
 * networks for designing artificial reverberators", AES 90th convention, 1991), from rest.
 * @returns two sounds of the same room that are unlike each other
 */
export function inRoom(
  dry: Float32Array,
  room: Room,
  sampleRate: number,
): readonly [Float32Array, Float32Array] {
  const lengths = room.delays.map((delay) => Math.max(1, Math.round((delay * sampleRate) / 1000)));
  const [la = 1, lb = 1, lc = 1, ld = 1] = lengths;
  const [ga = 0, gb = 0, gc = 0, gd = 0] = lengths.map(
    (length) => 0.5 * 10 ** ((-3 * length) / (room.decay * sampleRate)),
  );
  const a = new Float64Array(la);
  const b = new Float64Array(lb);
  const c = new Float64Array(lc);
  const d = new Float64Array(ld);
  const pole = Math.exp((-2 * Math.PI * room.treble) / sampleRate);
  const one = new Float32Array(dry.length);
  const other = new Float32Array(dry.length);
  let [pa, pb, pc, pd] = [0, 0, 0, 0];
  let [fa, fb, fc, fd] = [0, 0, 0, 0];
  for (let index = 0; index < dry.length; index += 1) {
    const input = dry[index] ?? 0;
    fa += (1 - pole) * ((a[pa] ?? 0) - fa);
    fb += (1 - pole) * ((b[pb] ?? 0) - fb);
    fc += (1 - pole) * ((c[pc] ?? 0) - fc);
    fd += (1 - pole) * ((d[pd] ?? 0) - fd);
    one[index] = room.level * (fa + fb - fc + fd);
    other[index] = room.level * (fa - fb + fc + fd);
    const [sum, difference] = [fa + fb, fa - fb];
    const [sum2, difference2] = [fc + fd, fc - fd];
    a[pa] = input + ga * (sum + sum2);
    b[pb] = input + gb * (difference + difference2);
    c[pc] = input + gc * (sum - sum2);
    d[pd] = input + gd * (difference - difference2);
    pa = pa + 1 === la ? 0 : pa + 1;
    pb = pb + 1 === lb ? 0 : pb + 1;
    pc = pc + 1 === lc ? 0 : pc + 1;
    pd = pd + 1 === ld ? 0 : pd + 1;
  }
  for (const output of [one, other]) filter(output, biquad('high-pass', room.low, sampleRate));
  return [one, other];
}

function summed(stems: Stems, names: readonly Stem[]): Float32Array {
  const [first, ...others] = names.map((name) => stems[name]);
  const sum = Float32Array.from(first ?? []);
  for (const other of others) {
    for (let index = 0; index < sum.length; index += 1) sum[index] = (sum[index] ?? 0) + (other[index] ?? 0);
  }
  return sum;
}

/** Adds to the stems, in place, what the room makes of them. */
function addRooms(stems: Stems, sampleRate: number): void {
  for (const { from, to, room } of CORNERS) {
    const dry = summed(stems, from);
    if (dry.every((sample) => sample === 0)) continue;
    for (const [side, wet] of inRoom(dry, room, sampleRate).entries()) {
      const name = to[side];
      if (!name) continue;
      const stem = stems[name];
      for (let index = 0; index < wet.length; index += 1)
        stem[index] = (stem[index] ?? 0) + (wet[index] ?? 0);
    }
  }
}

/** The dry stems of a window with what the room makes of them and of the `before` samples ahead of it, which go. */
export function roomed(dry: Stems, before: number, sampleRate: number): Stems {
  addRooms(dry, sampleRate);
  return mapStems((stem) => dry[stem].slice(before));
}

const mapStems = (make: (stem: Stem) => Float32Array): Stems => {
  const stems: Record<Stem, Float32Array> = silence(0);
  for (const stem of STEMS) stems[stem] = make(stem);
  return stems;
};

/** The dry stems of a round, which goes round and round, in the room. */
export function roomedRound(dry: Stems, sampleRate: number): Stems {
  const { length } = dry.bass;
  if (length === 0) return dry;
  const before = roomTail(sampleRate);
  const long = mapStems((stem) => {
    const samples = new Float32Array(before + length);
    const round = dry[stem];
    for (let index = 0; index < before; index += 1) {
      samples[index] = round[(((index - before) % length) + length) % length] ?? 0;
    }
    samples.set(round, before);
    return samples;
  });
  return roomed(long, before, sampleRate);
}
