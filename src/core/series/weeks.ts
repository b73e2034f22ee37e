import { REGISTER_LIMITS, type Series, type Thing, type Week } from '../students';
import { thingKey } from './shown';

/** A lesson is put at the end of a series; null where it has as many as can be kept. */
export function addWeek(series: Series, week: Omit<Week, 'marks'>): Series | null {
  if (series.weeks.length >= REGISTER_LIMITS.weeks) return null;
  return { ...series, weeks: [...series.weeks, { ...week, marks: [] }] };
}

/** What tells the weeks of a list apart: their lessons, and which time a lesson comes. */
export function weekKeys(weeks: readonly Pick<Week, 'lesson' | 'version'>[]): readonly string[] {
  const times = new Map<string, number>();
  return weeks.map(({ lesson, version }) => {
    const place = `${lesson} ${version ?? ''}`;
    const time = (times.get(place) ?? 0) + 1;
    times.set(place, time);
    return `${place} ${time}`;
  });
}

/**
 * An edit of a week that someone saw at a place, made where that week stands by now: another window may have moved it.
 * @param seen - the weeks as they were seen
 * @returns null where the week is no longer in the series
 */
export function editSeen(
  series: Series,
  seen: readonly Week[],
  index: number,
  edit: (series: Series, index: number) => Series,
): Series | null {
  const key = weekKeys(seen)[index];
  const place = key === undefined ? -1 : weekKeys(series.weeks).indexOf(key);
  return place === -1 ? null : edit(series, place);
}

/** A lesson goes from a series; the lesson itself stays where it is. */
export const removeWeek = (series: Series, index: number): Series => ({
  ...series,
  weeks: series.weeks.filter((_, place) => place !== index),
});

/** A lesson changes places with the one before it (-1) or after it (1); the very same series at its ends. */
export function moveWeek(series: Series, index: number, by: -1 | 1): Series {
  const [one, other] = [series.weeks[index], series.weeks[index + by]];
  if (one === undefined || other === undefined) return series;
  return {
    ...series,
    weeks: series.weeks.map((week, place) => (place === index ? other : place === index + by ? one : week)),
  };
}

/**
 * The teacher says of a thing in a week whether it was shown.
 * @param shown - null to go by the notes again
 */
export function markThing(series: Series, index: number, thing: Thing, shown: boolean | null): Series {
  const key = thingKey(thing);
  return {
    ...series,
    weeks: series.weeks.map((week, place) => {
      if (place !== index) return week;
      const others = week.marks.filter((mark) => thingKey(mark) !== key);
      if (shown === null || others.length >= REGISTER_LIMITS.marks) return { ...week, marks: others };
      return { ...week, marks: [...others, { ...thing, shown }] };
    }),
  };
}
