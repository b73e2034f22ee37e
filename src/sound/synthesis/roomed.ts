import { addFaded } from './adding';
import { loudestOf } from './levels';
import { createNetwork, letSound } from './network';
import { type Place, roomTail } from './room';

/** One of the voices that are struck as one sound. */
export interface Strung {
  readonly samples: Float32Array;
  /** Samples until it is let go, over the last `release` of which it fades out. */
  readonly length: number;
  readonly release: number;
  /** Samples after the first of the voices. */
  readonly after: number;
}

/** A sound with what its room answers, before its gain: wherever it is put, it needs no room any more. */
export interface Roomed {
  /** Dry, and what comes out on the player's own side. */
  readonly own: Float32Array;
  /** What comes out on the other side of the stage; nothing where that is not heard. */
  readonly across: Float32Array;
}

/** Makes sounds in their rooms, each once: a room is linear, and answers the same sound the same whenever it comes. */
export interface RoomedSounds {
  /** What voices become that are struck together, with one gain; reckoned when it is asked for. */
  of(place: Place, strung: readonly Strung[]): () => Roomed;
}

/** Where the answer to the loudest note of a part is cut off, −126 dB: what several leave out at once is below 2e-6. */
const NOTHING = 5e-7;

/** Seconds in which nothing may come out of a room before it is over: more than twice its longest delay. */
const CHUNK = 0.1;

/** Bytes: the sounds of a band that plays on as it began take less than half of them. */
const KEPT = 24_000_000;

const bytesOf = ({ own, across }: Roomed): number => own.byteLength + across.byteLength;

/** How many samples there are up to the last that is louder than silence, looked for from `from` on. */
function lengthOf(samples: Float32Array, from: number, to: number, silence: number): number {
  let length = to;
  while (length > from && Math.abs(samples[length - 1] ?? 0) <= silence) length -= 1;
  return length;
}

/** Lets voices sound in their room until it is silent. */
function answered({ part, room, side, across }: Place, strung: readonly Strung[], rate: number): Roomed {
  const struck = Math.max(...strung.map(({ length, after }) => after + length));
  const whole = struck + roomTail(rate);
  const own = new Float32Array(whole);
  const other = new Float32Array(across === null ? 0 : whole);
  for (const { samples, length, release, after } of strung)
    addFaded(own, { at: after, gain: 1, samples }, length, release);
  const network = createNetwork(room, rate);
  const silence = NOTHING / loudestOf(part);
  const chunk = Math.ceil(CHUNK * rate);
  const lastOf = (samples: Float32Array, from: number, to: number): number =>
    lengthOf(samples, Math.min(from, samples.length), Math.min(to, samples.length), silence);
  let end = 0;
  for (let from = 0; from < whole && (from < struck + chunk || end > from - chunk); from += chunk) {
    const to = Math.min(whole, from + chunk);
    const dry = own.subarray(from, to);
    const beyond = across === null ? null : other.subarray(from, to);
    letSound(network, dry, side === 0 ? [dry, beyond] : [beyond, dry]);
    end = Math.max(end, lastOf(own, from, to), lastOf(other, from, to));
  }
  return {
    own: own.slice(0, lastOf(own, 0, end)),
    across: other.slice(0, lastOf(other, 0, end)),
  };
}

/** @param most - bytes of sounds that are kept; what was asked for longest ago goes first */
export function createRoomedSounds(sampleRate: number, most = KEPT): RoomedSounds {
  const kept = new Map<string, Roomed>();
  let bytes = 0;
  const numbers = new WeakMap<Float32Array, number>();
  let count = 0;

  /** Voices with the same samples have the same number. */
  const numberOf = (samples: Float32Array): number => {
    const known = numbers.get(samples);
    if (known !== undefined) return known;
    count += 1;
    numbers.set(samples, count);
    return count;
  };

  const keep = (name: string, sound: Roomed): void => {
    kept.set(name, sound);
    bytes += bytesOf(sound);
    for (const [oldest, old] of kept) {
      if (bytes <= most) break;
      kept.delete(oldest);
      bytes -= bytesOf(old);
    }
  };

  return {
    of: (place, strung) => {
      let name: string | null = null;
      return () => {
        // Most of a long performance is not heard for a while.
        name ??= strung.reduce(
          (all, { samples, length, release, after }) =>
            `${all} ${numberOf(samples)}/${length}/${release}/${after}`,
          `${place.part} ${place.side}`,
        );
        const known = kept.get(name);
        if (known === undefined) {
          const made = answered(place, strung, sampleRate);
          keep(name, made);
          return made;
        }
        kept.delete(name);
        kept.set(name, known);
        return known;
      };
    },
  };
}
