import type { Part } from '../../core/playing';
import type { Room } from './network';
import type { Stem } from './stems';

/** A player's corner: the stems that share a room, its two sides in this order. */
interface Corner {
  readonly stems: readonly [Stem, Stem?];
  readonly part: Part;
  readonly room: Room;
}

/**
 * The kit stands in the room, the guitar's spring and the organ's cabinet are nearer to the ear; the bass, the click and
 * the count-in stay dry. The figures are ours.
 */
export const CORNERS: readonly Corner[] = [
  {
    stems: ['drums', 'hats'],
    part: 'drums',
    room: { delays: [11.3, 17.9, 23.6, 31.7], decay: 0.3, treble: 5200, low: 180, level: 0.14 },
  },
  {
    stems: ['chops'],
    part: 'chops',
    room: { delays: [19.1, 27.7, 33.1, 41.3], decay: 0.34, treble: 2800, low: 300, level: 0.06 },
  },
  {
    stems: ['organ'],
    part: 'organ',
    room: { delays: [13.7, 19.3, 29.9, 37.1], decay: 0.3, treble: 3600, low: 200, level: 0.07 },
  },
];

/** Seconds after which nothing that could be measured is left of any of the rooms: twice the time of the longest. */
const TAIL = 2 * Math.max(...CORNERS.map(({ room }) => room.decay));

/** How many samples a sound goes on in the room. */
export const roomTail = (sampleRate: number): number => Math.ceil(TAIL * sampleRate);

/** Where a stem stands in its room. */
export interface Place {
  readonly part: Part;
  readonly room: Room;
  /** Which of the two sides is its own. */
  readonly side: 0 | 1;
  /** The stem on the other side; null where that side is not heard. */
  readonly across: Stem | null;
}

const PLACES: ReadonlyMap<Stem, Place> = new Map(
  CORNERS.flatMap(({ stems: [first, second], part, room }): (readonly [Stem, Place])[] => [
    [first, { part, room, side: 0, across: second ?? null }],
    ...(second ? [[second, { part, room, side: 1, across: first }] as const] : []),
  ]),
);

/** The room that a stem sounds in; null where it stays dry. */
export const placeOf = (stem: Stem): Place | null => PLACES.get(stem) ?? null;
