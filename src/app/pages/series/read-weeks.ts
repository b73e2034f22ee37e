import { useEffect, useState } from 'react';
import type { Lesson } from '../../../core/lesson';
import { type ReadWeek, shownBy } from '../../../core/series';
import type { Week } from '../../../core/students';
import type { Session } from '../../state';

/** A lesson of this device as a week has it: the version that was given, or the tune; null where it is not here. */
export async function lessonOf(
  session: Session,
  week: Pick<Week, 'lesson' | 'version'>,
): Promise<Lesson | null> {
  const { document } = session.lessons.getState();
  const found = document.id === week.lesson ? null : await session.storage.load(week.lesson);
  if (found !== null && (!found.ok || found.value.kind !== 'lesson')) return null;
  const lesson = found === null || !found.ok || found.value.kind !== 'lesson' ? document : found.value.lesson;
  if (lesson.versions === undefined) return lesson;
  const { lessonOfVersion } = await import('../../../core/versions');
  return lessonOfVersion(lesson, week.version);
}

/** A lesson of this device as it was given out: the tune, or a version of it. */
export interface GivenOut {
  readonly version: string | null;
  /** `Harbour`, `Harbour, for Wednesday` */
  readonly called: string;
  readonly lesson: Lesson;
}

/** The tune and every version of a lesson of this device; none where it cannot be read. */
export async function everyVersionOf(session: Session, id: string): Promise<readonly GivenOut[]> {
  const { document } = session.lessons.getState();
  const found = document.id === id ? null : await session.storage.load(id);
  if (found !== null && (!found.ok || found.value.kind !== 'lesson')) return [];
  const whole = found === null || !found.ok || found.value.kind !== 'lesson' ? document : found.value.lesson;
  const { versions = [], title } = whole;
  if (versions.length === 0) return [{ version: null, called: title, lesson: whole }];
  const { lessonOfVersion } = await import('../../../core/versions');
  return [
    { version: null, called: title, lesson: lessonOfVersion(whole, null) },
    ...versions.map(({ id: version, name }) => ({
      version,
      called: `${title}, ${name}`,
      lesson: lessonOfVersion(whole, version),
    })),
  ];
}

/** Lets the page do what else there is, between two lessons that are looked at. */
export const breathe = (): Promise<void> => new Promise((done) => setTimeout(done));

const placeOf = ({ lesson, version }: Pick<Week, 'lesson' | 'version'>): string =>
  `${lesson} ${version ?? ''}`;

/** Weeks with what their lessons show, each as soon as it has been read; `busy` until all are. */
export function useReadWeeks(
  session: Session,
  weeks: readonly Week[],
): { readonly weeks: readonly ReadWeek[]; readonly busy: boolean } {
  const [read, setRead] = useState<ReadonlyMap<string, ReadWeek['read']>>(new Map());
  const wanted = weeks.map(placeOf).join('\n');
  // biome-ignore lint/correctness/useExhaustiveDependencies: marks and titles change nothing that is read
  useEffect(() => {
    let gone = false;
    void (async () => {
      for (const week of weeks) {
        if (gone) return;
        if (read.has(placeOf(week))) continue;
        const lesson = await lessonOf(session, week);
        await breathe();
        const shown = lesson === null ? null : shownBy(lesson);
        if (!gone) setRead((before) => new Map(before).set(placeOf(week), shown));
      }
    })();
    return () => {
      gone = true;
    };
  }, [session, wanted]);
  return {
    weeks: weeks.map((week) => ({ ...week, read: read.get(placeOf(week)) ?? null })),
    busy: weeks.some((week) => !read.has(placeOf(week))),
  };
}
