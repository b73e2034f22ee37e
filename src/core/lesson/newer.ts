import { LEVELS } from '../line';
import { asLesson, lessonSchema } from './schema';
import { LESSON_VERSION, type Lesson } from './types';

/** A lesson of a newer copy of the app as this one can show it. */
export interface NewerLesson {
  /** With everything that this copy knows. */
  readonly lesson: Lesson;
  /** What is not in it, for a person to read: `feel “dub”`, `slides (12 times)`. */
  readonly leftOut: readonly string[];
  /** The document as it came, with everything. */
  readonly whole: unknown;
}

type Step = string | number;
type Json = null | boolean | number | string | Json[] | { [name: string]: Json };

/** What stands in for a value of a list that this copy does not know, where a lesson cannot do without one. */
const STAND_INS: Readonly<Record<string, Json>> = {
  feel: 'early-ska',
  level: LEVELS.length - 1,
  mode: 'major',
  origin: 'hand',
  openStrings: 'allow',
  beats: 'every beat',
  paper: 'A4',
  techniques: [],
  countIn: 1,
};

/** Rounds of mending: in each, one layer of what is not known goes. */
const MOST_ROUNDS = 24;

const isObject = (value: Json | undefined): value is { [name: string]: Json } =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function partAt(document: Json, path: readonly Step[]): Json | undefined {
  let part: Json | undefined = document;
  for (const step of path) {
    if (Array.isArray(part)) part = part[Number(step)];
    else if (isObject(part)) part = part[step];
    else return undefined;
  }
  return part;
}

/** Later places first, so that taking one out moves none that is still to be taken. */
function lastFirst(one: readonly Step[], other: readonly Step[]): number {
  for (let at = 0; at < Math.min(one.length, other.length); at += 1) {
    const [mine, others] = [one[at], other[at]];
    if (mine === others) continue;
    return typeof mine === 'number' && typeof others === 'number'
      ? others - mine
      : String(mine) < String(others)
        ? 1
        : -1;
  }
  return other.length - one.length;
}

class Mending {
  readonly #missing = new Map<string, number>();

  constructor(readonly document: Json) {}

  /** Takes out what stands at a place, or puts something in for what cannot be missing; false where nothing can. */
  mend(path: readonly Step[]): boolean {
    const step = path.at(-1);
    const around = partAt(this.document, path.slice(0, -1));
    if (step === undefined || path.length < 2) return step !== undefined && this.#inHead(step, around);
    const there = partAt(this.document, path);
    if (Array.isArray(around)) {
      this.#note(path, there);
      around.splice(Number(step), 1);
      return true;
    }
    if (!isObject(around)) return this.mend(path.slice(0, -1));
    return this.#inObject(path, String(step), around);
  }

  leftOut(): readonly string[] {
    return [...this.#missing].map(([what, count]) => (count === 1 ? what : `${what} (${count} times)`));
  }

  /** Notes what the validator passed over because it does not know the field. */
  passedOver(given: Json, read: unknown, path: readonly Step[] = []): void {
    if (Array.isArray(given)) {
      given.forEach((part, index) => {
        this.passedOver(part, Array.isArray(read) ? read[index] : undefined, [...path, index]);
      });
    } else if (isObject(given) && typeof read === 'object' && read !== null) {
      for (const [name, part] of Object.entries(given)) {
        const known: unknown = Object.hasOwn(read, name) ? Reflect.get(read, name) : undefined;
        if (known === undefined) this.#note([...path, name], undefined);
        else this.passedOver(part, known, [...path, name]);
      }
    }
  }

  #inHead(step: Step, around: Json | undefined): boolean {
    return isObject(around) && this.#inObject([step], String(step), around);
  }

  #inObject(path: readonly Step[], step: string, around: { [name: string]: Json }): boolean {
    const there = around[step];
    const standIn = STAND_INS[step];
    if (standIn !== undefined && JSON.stringify(there) !== JSON.stringify(standIn)) {
      this.#note(path, there);
      around[step] = standIn;
      return true;
    }
    if (there !== undefined) {
      this.#note(path, there);
      delete around[step];
      return true;
    }
    // What it stands in cannot do without it.
    return path.length > 1 && this.mend(path.slice(0, -1));
  }

  #note(path: readonly Step[], value: Json | undefined): void {
    const field = path.findLast((step) => typeof step === 'string') ?? 'part';
    const what =
      typeof value === 'string' && value.length <= 40 ? `${String(field)} “${value}”` : String(field);
    this.#missing.set(what, (this.#missing.get(what) ?? 0) + 1);
  }
}

/**
 * Reads a lesson of a newer version with what this copy knows: an unknown field or value goes, or something stands in
 * for it, and each is named. Null where too little of it can be read to be shown.
 */
export function readNewer(document: Readonly<Record<string, unknown>>): NewerLesson | null {
  // The document came as JSON, so that what is made of it again is JSON.
  const mending = new Mending(JSON.parse(JSON.stringify({ ...document, version: LESSON_VERSION })));
  for (let round = 0; round < MOST_ROUNDS; round += 1) {
    const read = lessonSchema.safeParse(mending.document);
    if (read.success) {
      mending.passedOver(mending.document, read.data);
      return { lesson: asLesson(read.data), leftOut: mending.leftOut(), whole: document };
    }
    const places = new Map(
      read.error.issues.map(({ path }) => {
        const steps = path.filter((step) => typeof step !== 'symbol');
        return [JSON.stringify(steps), steps] as const;
      }),
    );
    for (const path of [...places.values()].sort(lastFirst)) if (!mending.mend(path)) return null;
  }
  return null;
}

/** What a person is told who opens such a lesson, in a few sentences. */
export function describeNewer({ leftOut }: NewerLesson, version: number): readonly string[] {
  const shown = leftOut.slice(0, 12);
  const more = leftOut.length - shown.length;
  return [
    `This lesson was saved by a newer Ground Bass (version ${version} of the lesson file; this one knows up to ${LESSON_VERSION}). It can be read, played and printed here with what this copy knows.`,
    leftOut.length === 0
      ? 'Nothing in it is unknown here.'
      : `Left out here, because this copy does not know it: ${shown.join(', ')}${more > 0 ? ` and ${more} more` : ''}.`,
    `The lesson itself stays as it is, and how you play and print it here is not kept. To change it, make a copy: a lesson of its own${leftOut.length === 0 ? '' : ', without what is left out'}. Reload the app to update it.`,
  ];
}
