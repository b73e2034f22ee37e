import { LESSON_FORMAT, LESSON_VERSION, type Lesson, whyNotKept } from '../../core/lesson';
import type { History, Step } from './history';

/** Steps that are kept for the next visit. */
const MOST_STEPS = 60;

/** What may be kept of a history beside the lesson itself, in characters of text and values, each counted once. */
const LARGEST = 1_000_000;

/** Weighs what was not weighed before; parts that documents share count once, as the browser stores them once. */
function weightOf(value: unknown, weighed: Set<object>, most: number): number {
  if (typeof value === 'string') return value.length + 8;
  if (typeof value !== 'object' || value === null) return 8;
  if (weighed.has(value)) return 0;
  weighed.add(value);
  let weight = 16;
  for (const [name, part] of Object.entries(value)) {
    weight += name.length + weightOf(part, weighed, most - weight);
    if (weight > most) break;
  }
  return weight;
}

/** As much of a history as is kept, the steps that are nearest; null where the lesson itself is too large for one. */
export function keptHistory(history: History<Lesson>): History<Lesson> | null {
  const weighed = new Set<object>();
  if (weightOf(history.present, weighed, LARGEST) > LARGEST) return null;
  let room = LARGEST;
  const near = (steps: readonly Step<Lesson>[]): readonly Step<Lesson>[] => {
    const far = steps.slice(0, MOST_STEPS).findIndex(({ document }) => {
      room -= weightOf(document, weighed, room);
      return room < 0;
    });
    return steps.slice(0, far === -1 ? MOST_STEPS : far);
  };
  const past = near(history.past.toReversed()).toReversed();
  return { past, present: history.present, future: near(history.future), joinKey: null };
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;

/** Whether a value is a state of a lesson that can go on from here. Whatever it is, it does no harm. */
function isStateOf(id: string, value: unknown): value is Lesson {
  if (!isRecord(value) || value.format !== LESSON_FORMAT || value.version !== LESSON_VERSION) return false;
  if (value.id !== id || !Array.isArray(value.pieces)) return false;
  try {
    const lesson = value as unknown as Lesson;
    return (
      whyNotKept(lesson) === null &&
      new Set(lesson.pieces.map((piece) => piece.id)).size === lesson.pieces.length
    );
  } catch {
    return false;
  }
}

/** The steps up to the first that cannot be read, from the nearest on. */
function stepsIn(id: string, value: unknown): readonly Step<Lesson>[] {
  if (!Array.isArray(value)) return [];
  const steps: Step<Lesson>[] = [];
  for (const step of value) {
    if (!isRecord(step) || typeof step.label !== 'string' || !isStateOf(id, step.document)) break;
    steps.push({ document: step.document, label: step.label });
  }
  return steps;
}

/**
 * Makes documents that came from the storage share their parts with the one at hand, so that nothing is kept twice and
 * what was derived stays known. A part that several of them share is looked at once.
 */
function sharing(stored: Lesson, at: Lesson) {
  const known = new Map<object, unknown>();
  const pair = (mine: unknown, theirs: unknown): boolean => {
    if (!isRecord(mine) || !isRecord(theirs)) return mine === theirs;
    const names = Object.keys(mine);
    const same =
      Array.isArray(mine) === Array.isArray(theirs) &&
      names.length === Object.keys(theirs).length &&
      names.map((name) => pair(mine[name], theirs[name])).every(Boolean);
    if (same) known.set(mine, theirs);
    return same;
  };
  const isSame = pair(stored, at);
  const translate = (part: unknown): unknown => {
    if (!isRecord(part)) return part;
    if (known.has(part)) return known.get(part);
    const made = Array.isArray(part)
      ? part.map(translate)
      : Object.fromEntries(Object.entries(part).map(([name, each]) => [name, translate(each)]));
    known.set(part, made);
    return made;
  };
  return { isSame, share: (lesson: Lesson): Lesson => translate(lesson) as Lesson };
}

/**
 * The history that was kept of a lesson, as far as it can be read; null where there is none. What was changed since
 * then, by another window or just before the page was closed, is one step of it.
 */
export function readHistory(value: unknown, lesson: Lesson): History<Lesson> | null {
  if (!isRecord(value) || !isStateOf(lesson.id, value.present)) return null;
  const near = Array.isArray(value.past) ? value.past.toReversed() : [];
  const past = stepsIn(lesson.id, near).toReversed();
  const future = stepsIn(lesson.id, value.future);
  const { isSame, share } = sharing(value.present, lesson);
  const shared = (steps: readonly Step<Lesson>[]) =>
    steps.map(({ document, label }) => ({ document: share(document), label }));
  return isSame
    ? { past: shared(past), present: lesson, future: shared(future), joinKey: null }
    : {
        past: [...shared(past), { document: share(value.present), label: 'what was changed since' }],
        present: lesson,
        future: [],
        joinKey: null,
      };
}
