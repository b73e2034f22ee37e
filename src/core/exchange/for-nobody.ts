import type { HandoutSettings, Lesson } from '../lesson';

/** Handout settings without the student or class that is typed for the paper. */
function unnamed<Settings extends Partial<HandoutSettings>>(handout: Settings): Omit<Settings, 'student'> {
  const { student: _, ...rest } = handout;
  return rest;
}

/**
 * The lesson without whom its handout is for, in all of its versions: that name is typed for the paper, and what is
 * sent does not carry it along. The very same lesson where nobody is named.
 */
export function forNobody(lesson: Lesson): Lesson {
  const { handout, versions } = lesson;
  const isNamed =
    handout.student !== undefined ||
    versions?.some((version) => version.handout?.student !== undefined) === true;
  if (!isNamed) return lesson;
  return {
    ...lesson,
    handout: unnamed(handout),
    ...(versions === undefined
      ? {}
      : {
          versions: versions.map((version) =>
            version.handout === undefined ? version : { ...version, handout: unnamed(version.handout) },
          ),
        }),
  };
}

/** The names that a lesson carries: whom its handout is for, and what its versions are called; each once. */
export const namesIn = ({ handout, versions = [] }: Lesson): readonly string[] => [
  ...new Set(
    [handout.student ?? '', ...versions.flatMap((version) => [version.handout?.student ?? '', version.name])]
      .map((name) => name.trim())
      .filter((name) => name !== ''),
  ),
];
