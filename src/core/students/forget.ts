import { isRecord } from '../base';

const LETTER = /[\p{L}\p{N}]/u;

const isWithin = (character: string | undefined): boolean =>
  character !== undefined && LETTER.test(character);

/** Where a name stands in a text as words of their own; -1 for nowhere. */
function placeOf(name: string, text: string, from = 0): number {
  const at = text.toLowerCase().indexOf(name.toLowerCase(), from);
  if (at === -1 || name === '') return -1;
  const stands = !isWithin(text[at - 1]) && !isWithin(text[at + name.length]);
  return stands ? at : placeOf(name, text, at + 1);
}

/** Fields of a lesson in which a teacher's own words stand. */
const OWN_WORDS = new Set(['title', 'notes', 'name', 'words', 'chartText', 'header']);

/** Whether a name stands in the teacher's own words anywhere in what is kept of a lesson, its versions included. */
export function isNamedIn(name: string, value: unknown): boolean {
  if (Array.isArray(value)) return value.some((part) => isNamedIn(name, part));
  if (!isRecord(value)) return false;
  return Object.entries(value).some(([key, part]) =>
    typeof part === 'string' ? OWN_WORDS.has(key) && names(name, part) : isNamedIn(name, part),
  );
}

/** Whether a name stands in a text as words of their own: `Al` not in `Also`. */
export const names = (name: string, text: string): boolean => placeOf(name.trim(), text) !== -1;

const NOBODY = 'a student';

/** A text in which a name gives way to *a student*. */
export function unnamed(name: string, text: string): string {
  const at = placeOf(name, text);
  return at === -1 ? text : `${text.slice(0, at)}${NOBODY}${unnamed(name, text.slice(at + name.length))}`;
}

/**
 * What is kept of a lesson, with a student forgotten: as whom the handout is for, and in the names of versions. Titles
 * and notes are the teacher's own words and stay. Whatever the value is, it comes back with everything else as it was;
 * the very same one where nothing was to be forgotten. Parts that are shared stay shared.
 */
export function forgetStudent(name: string, value: unknown): unknown {
  const wanted = name.trim();
  const isName = (text: unknown): boolean =>
    typeof text === 'string' && text.trim().toLowerCase() === wanted.toLowerCase();
  const known = new Map<object, unknown>();
  const inVersion = (version: unknown): unknown =>
    isRecord(version) && typeof version.name === 'string'
      ? changed(version, { name: unnamed(wanted, version.name) })
      : version;
  const changed = (record: object, change: Record<string, unknown>): unknown =>
    Object.entries(change).every(([key, part]) => Reflect.get(record, key) === part)
      ? record
      : { ...record, ...change };
  const walk = (part: unknown): unknown => {
    if (typeof part !== 'object' || part === null) return part;
    if (known.has(part)) return known.get(part);
    const made = Array.isArray(part) ? walkList(part) : walkRecord(part);
    known.set(part, made);
    return made;
  };
  const walkList = (list: readonly unknown[]): unknown => {
    const made = list.map(walk);
    return made.every((each, index) => each === list[index]) ? list : made;
  };
  const walkRecord = (record: object): unknown => {
    const change: Record<string, unknown> = {};
    for (const [key, part] of Object.entries(record)) {
      const made = walk(part);
      change[key] = key === 'versions' && Array.isArray(made) ? sameOr(made, made.map(inVersion)) : made;
    }
    if (!isName(Reflect.get(record, 'student'))) return changed(record, change);
    const { student: _, ...rest } = change;
    return rest;
  };
  const sameOr = (before: readonly unknown[], after: readonly unknown[]): readonly unknown[] =>
    after.every((each, index) => each === before[index]) ? before : after;
  return wanted === '' ? value : walk(value);
}
