import { type RefObject, useLayoutEffect, useState } from 'react';

/** Width and height in CSS pixels. */
export interface Room {
  readonly width: number;
  readonly height: number;
}

/** Room of an element's content; 0 before it is on the page. */
export function useRoom(element: RefObject<HTMLElement | null>): Room {
  const [room, setRoom] = useState<Room>({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const watched = element.current;
    if (watched === null) return;
    const measure = () => setRoom({ width: Math.floor(watched.clientWidth), height: watched.clientHeight });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(watched);
    return () => observer.disconnect();
  }, [element]);
  return room;
}

/** Share of the room that the neck takes: enough that what is written on it is read as far away as most of the music. */
const NECK_SHARE = { beside: 0.42, below: 0.34 } as const;

/** The neck stands beside the music where the room is wider than high, else below it. */
const neckPlace = ({ width, height }: Room): keyof typeof NECK_SHARE =>
  width > height * 1.2 ? 'beside' : 'below';

/** Rows and columns of music and neck. */
export function tracksOf(room: Room): {
  readonly gridTemplateColumns: string;
  readonly gridTemplateRows: string;
} {
  const place = neckPlace(room);
  const both = `minmax(0, ${1 - NECK_SHARE[place]}fr) minmax(0, ${NECK_SHARE[place]}fr)`;
  const whole = 'minmax(0, 1fr)';
  return place === 'beside'
    ? { gridTemplateColumns: both, gridTemplateRows: whole }
    : { gridTemplateColumns: whole, gridTemplateRows: both };
}

/** What the music has of the room. */
export function musicRoom(room: Room, neck: boolean): Room {
  if (!neck) return room;
  const place = neckPlace(room);
  const share = 1 - NECK_SHARE[place];
  return place === 'beside'
    ? { width: Math.floor(room.width * share), height: room.height }
    : { width: room.width, height: room.height * share };
}
