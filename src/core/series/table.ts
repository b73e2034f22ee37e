import { FEEL_IDS } from '../feel';
import { TECHNIQUES } from '../line';
import { THING_KINDS, type Thing, type Week } from '../students';
import { type LessonShown, thingKey } from './shown';

/** A week with what its lesson shows; null where the lesson is not on this device, or has no line. */
export interface ReadWeek extends Week {
  readonly read: LessonShown | null;
}

/** What a week has of a thing: shown for the first time, shown again, or not. */
export type Cell = 'new' | 'again' | 'none';

/** A thing through the weeks. */
export interface SeriesRow {
  readonly thing: Thing;
  readonly cells: readonly Cell[];
  /** The teacher said otherwise than the notes, by week. */
  readonly marked: readonly boolean[];
}

/** Degrees in the order in which they are met on the bass: the chord from its root, then the steps (common practice, no source). */
export const DEGREES_IN_ORDER = [
  ...['R', '5', '8', '3', '♭3', '6', '2', '4', '♭7', '7', '♭5', '♯5', '♭6', '♭2', '♯4', '♭♭7'],
] as const;

const placeIn = (order: readonly string[], name: string): number => {
  const place = order.indexOf(name);
  return place === -1 ? order.length : place;
};

/** Things of a kind in the order in which a teacher looks for them; those of one place stay as they came. */
function placeOf({ kind, name }: Thing): number {
  if (kind === 'technique') return placeIn(TECHNIQUES, name);
  if (kind === 'degree') return placeIn(DEGREES_IN_ORDER, name);
  if (kind === 'position') return Number(name);
  if (kind === 'feel') return placeIn(FEEL_IDS, name);
  return 0;
}

/** Whether a week shows a thing: by the teacher's word, else by the notes. */
export function isShown(week: ReadWeek, thing: Thing): boolean {
  const key = thingKey(thing);
  const mark = week.marks.find((each) => thingKey(each) === key);
  return mark?.shown ?? byNotes(week, key);
}

const byNotes = ({ read }: ReadWeek, key: string): boolean =>
  read?.things.some((thing) => thingKey(thing) === key) === true;

/** What a term has shown and when, a row a thing: techniques, degrees, keys, positions, feels. */
export function seriesTable(weeks: readonly ReadWeek[]): readonly SeriesRow[] {
  const things = new Map<string, Thing>();
  for (const week of weeks)
    for (const { kind, name } of [...(week.read?.things ?? []), ...week.marks])
      things.set(thingKey({ kind, name }), { kind, name });
  return THING_KINDS.flatMap((kind) =>
    [...things.values()]
      .filter((thing) => thing.kind === kind)
      .sort((one, other) => placeOf(one) - placeOf(other)),
  ).map((thing) => {
    const shown = weeks.map((week) => isShown(week, thing));
    const first = shown.indexOf(true);
    return {
      thing,
      cells: shown.map((each, index): Cell => (!each ? 'none' : index === first ? 'new' : 'again')),
      marked: weeks.map((week) => isShown(week, thing) !== byNotes(week, thingKey(thing))),
    };
  });
}
