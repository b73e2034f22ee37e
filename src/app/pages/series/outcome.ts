import type { Outcome } from '../../../core/series';
import { type Entry, membersOf, type Series, type Student } from '../../../core/students';

/** Those for whom a series is. */
export function studentsOf(series: Series, entries: readonly Entry[]): readonly Student[] {
  const of = entries.find(({ id }) => id === series.of);
  if (of === undefined || of.kind === 'series') return [];
  return of.kind === 'student' ? [of] : membersOf(of, entries);
}

/**
 * How the last week went: the slowest tempo that was reached, and what is to be mended, each once; null where nothing
 * was noted of anyone.
 */
export function outcomeOf(series: Series, entries: readonly Entry[]): Outcome | null {
  const last = series.weeks.at(-1);
  if (last === undefined) return null;
  const notes = studentsOf(series, entries).flatMap(
    ({ given }) => given.findLast(({ lesson }) => lesson === last.lesson) ?? [],
  );
  const tempos = notes.flatMap(({ tempo }) => tempo ?? []);
  const mend = [...new Set(notes.map((note) => note.mend.trim()).filter((text) => text !== ''))].join('; ');
  return tempos.length === 0 && mend === ''
    ? null
    : { tempo: tempos.length === 0 ? null : Math.min(...tempos), mend };
}
