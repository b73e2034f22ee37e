import { createNetwork, letSound, type Network, type Room, type Sides } from './network';
import { STEMS, type Stem, type Stems, silence } from './stems';

/** A player's corner: whose sound it takes and where it comes out, to one side of the stage and to the other. */
interface Corner {
  readonly from: readonly [Stem, Stem?];
  readonly to: readonly [Stem, Stem?];
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
    to: ['chops'],
    room: { delays: [19.1, 27.7, 33.1, 41.3], decay: 0.34, treble: 2800, low: 300, level: 0.06 },
  },
  {
    from: ['organ'],
    to: ['organ'],
    room: { delays: [13.7, 19.3, 29.9, 37.1], decay: 0.3, treble: 3600, low: 200, level: 0.07 },
  },
];

/** Seconds after which nothing that could be measured is left of any of the rooms: twice the time of the longest. */
const TAIL = 2 * Math.max(...CORNERS.map(({ room }) => room.decay));

/** How many samples a sound goes on in the room. */
export const roomTail = (sampleRate: number): number => Math.ceil(TAIL * sampleRate);

const networkOf = (room: Room, sampleRate: number): Network =>
  createNetwork(room, sampleRate, roomTail(sampleRate));

/** What the room alone makes of a sound: its two sides. */
export function inRoom(
  dry: Float32Array,
  room: Room,
  sampleRate: number,
): readonly [Float32Array, Float32Array] {
  const sides = [new Float32Array(dry.length), new Float32Array(dry.length)] as const;
  letSound(networkOf(room, sampleRate), [dry, undefined], sides);
  return sides;
}

const sidesOf = (stems: Stems, [one, other]: readonly [Stem, Stem?]): Sides => [
  stems[one],
  other && stems[other],
];

/**
 * The dry stems of a window with what the room makes of them and of the `before` samples ahead of it, which go. In place:
 * a long window is large.
 */
export function roomed(dry: Stems, before: number, sampleRate: number): Stems {
  for (const { from, to, room } of CORNERS)
    letSound(networkOf(room, sampleRate), sidesOf(dry, from), sidesOf(dry, to));
  const stems: Record<Stem, Float32Array> = silence(0);
  for (const stem of STEMS) stems[stem] = dry[stem].subarray(before);
  return stems;
}

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
  if (dry.bass.length === 0) return dry;
  const before = roomTail(sampleRate);
  for (const { from, to, room } of CORNERS) {
    const network = networkOf(room, sampleRate);
    const round = sidesOf(dry, from);
    const [first, second] = round;
    letSound(network, [endOf(first, before), second && endOf(second, before)]);
    letSound(network, round, sidesOf(dry, to));
  }
  return dry;
}
