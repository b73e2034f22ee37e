import { type Line, type Played, positionFor } from './line';
import type { Path } from './path';
import type { State } from './states';
import type { LineContext } from './types';

/** The notes of a bar by their places in the line. */
type Members = readonly number[];

/** What makes two bars the same to the hand: everything about their notes but when the bar comes. */
function textOf(
  members: Members,
  played: readonly Played[],
  start: number,
  end: number,
  context: LineContext,
): string {
  return members
    .map((index) => {
      const note = played[index]?.note;
      if (note === undefined) return '';
      const { midi, short, joined, pins } = note;
      const lasts = Math.min(note.duration, end - note.start);
      return `${note.start - start} ${lasts} ${midi} ${short} ${joined} ${JSON.stringify(pins)} ${positionFor(note, context)}`;
    })
    .join('|');
}

/** Bars that are the same, those with fellows only. */
function groupsOf({ played }: Line, context: LineContext): readonly (readonly Members[])[] {
  const groups = new Map<string, Members[]>();
  // Bars and notes are both in the order of time.
  let next = 0;
  for (const { start, end } of context.bars ?? []) {
    const members: number[] = [];
    for (let note = played[next]?.note; note !== undefined && note.start < end; note = played[next]?.note) {
      if (note.start >= start) members.push(next);
      next += 1;
    }
    if (members.length === 0) continue;
    const text = textOf(members, played, start, end, context);
    const fellows = groups.get(text);
    if (fellows === undefined) groups.set(text, [members]);
    else fellows.push(members);
  }
  return [...groups.values()].filter((bars) => bars.length > 1);
}

/** A way as it is read; the hand's position does not show at an open string. */
const readAs = ({ string, fret, finger, position }: State): string =>
  `${string} ${fret} ${finger} ${finger === 0 ? '' : position}`;

/** The reading that most of the bars have; the first of those that are as frequent. */
function commonest(readings: readonly (readonly string[])[]): readonly string[] {
  const counts = new Map<string, number>();
  for (const reading of readings) counts.set(reading.join(), (counts.get(reading.join()) ?? 0) + 1);
  const most = Math.max(...counts.values());
  return readings.find((reading) => counts.get(reading.join()) === most) ?? [];
}

/**
 * What each way of each note costs by itself where equal bars must be fingered alike: in a bar that has fellows,
 * every other way than the one that most of them got is barred. Null where they are fingered alike already.
 */
export function heldAlike(
  line: Line,
  { choice }: Path,
  context: LineContext,
): readonly Float64Array[] | null {
  const { played, track } = line;
  const groups = groupsOf(line, context);
  const readingOf = (members: Members): readonly string[] =>
    members.map((index) => {
      const state = played[index]?.layer.states[choice[index] ?? 0];
      return state === undefined ? '' : readAs(state);
    });
  const readings = groups.map((bars) => bars.map(readingOf));
  if (readings.every((bars) => bars.every((bar) => bar.join() === bars[0]?.join()))) return null;
  const own = [...track.own];
  groups.forEach((bars, group) => {
    const wanted = commonest(readings[group] ?? []);
    for (const members of bars) {
      members.forEach((index, place) => {
        const layer = played[index]?.layer;
        if (layer === undefined) return;
        own[index] = (track.own[index] ?? layer.own).map((cost, way) => {
          const state = layer.states[way];
          return state !== undefined && readAs(state) === wanted[place] ? cost : Number.POSITIVE_INFINITY;
        });
      });
    }
  });
  return own;
}
