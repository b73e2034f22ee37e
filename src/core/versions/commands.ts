import type { Lesson, LessonVersion } from '../lesson';
import { highestId, knowAsOpen, lessonAsOpen, lessonOfVersion } from './derive';
import { storeTune } from './store-tune';
import { storeVersion } from './store-version';

/** The version of a document with an id; null for the tune, and for one that is not there. */
export const versionOf = (document: Lesson, id: string | null): LessonVersion | null =>
  document.versions?.find((version) => version.id === id) ?? null;

/** The version that is being worked on; null for the tune. */
export const openVersionOf = (document: Lesson): LessonVersion | null =>
  versionOf(document, document.open ?? null);

const withVersion = (document: Lesson, id: string, next: LessonVersion): Lesson =>
  versionOf(document, id) === next
    ? document
    : {
        ...document,
        versions: (document.versions ?? []).map((version) => (version.id === id ? next : version)),
      };

/**
 * The document after the lesson that is being worked on was edited: what was edited in a version is stored as what it
 * has of its own, what was edited in the tune is seen in all versions that did not differ there.
 * @param edited - what an edit command made of `lessonAsOpen(document)`
 */
export function storeEdited(document: Lesson, edited: Lesson): Lesson {
  if (document.versions === undefined) return edited;
  const before = lessonAsOpen(document);
  if (before === edited) return document;
  // Ids stay apart also where a lesson was put in the place of another one.
  const whole = { ...edited, id: document.id, idsUpTo: highestId(document) };
  const version = openVersionOf(document);
  const next =
    version === null
      ? storeTune(document, before, whole)
      : withVersion(document, version.id, storeVersion(document, version, before, edited));
  return knowAsOpen(next, edited);
}

/** Another version is worked on, or with null the tune; what stands in the document stays as it is. */
export function openVersion(document: Lesson, id: string | null): Lesson {
  const { open, ...rest } = document;
  if (id === (open ?? null)) return document;
  return id === null ? rest : versionOf(document, id) === null ? document : { ...rest, open: id };
}

/**
 * Makes a version and opens it.
 * @param lesson - what it is to be, a plain lesson made of the one that is worked on; that one itself when left out
 */
export function addVersion(document: Lesson, name: string, lesson = lessonAsOpen(document)): Lesson {
  const number = highestId(document) + 1;
  const from = openVersionOf(document);
  const tune = lessonOfVersion({ ...document, versions: document.versions ?? [] }, null);
  const blank: LessonVersion = {
    id: `version-${number}`,
    name,
    own: { instrument: tune.instrument },
    lines: [],
  };
  const start = from === null ? blank : { ...from, id: blank.id, name };
  const before = from === null ? tune : lessonAsOpen(document);
  const version = { ...storeVersion(tune, { ...start, lines: [...start.lines] }, before, lesson), name };
  return {
    ...document,
    versions: [...(document.versions ?? []), version],
    open: version.id,
    idsUpTo: Math.max(number, lesson.idsUpTo ?? 0),
  };
}

export function renameVersion(document: Lesson, id: string, name: string): Lesson {
  const version = versionOf(document, id);
  return version === null || version.name === name
    ? document
    : withVersion(document, id, { ...version, name });
}

/** Takes a version away; where it was worked on, the tune is. */
export function removeVersion(document: Lesson, id: string): Lesson {
  const { versions = [], open, ...rest } = document;
  const left = versions.filter((version) => version.id !== id);
  if (left.length === versions.length) return document;
  return {
    ...rest,
    ...(left.length === 0 ? {} : { versions: left }),
    ...(open === undefined || open === id ? {} : { open }),
    idsUpTo: highestId(document),
  };
}
