import type { FeelId } from '../feel';
import type { Level, Technique } from '../line';
import type { LessonFacts } from './facts';
import { folded, wordsOf } from './fold';

/** A lesson that stands on the shelf. */
export interface OnShelf {
  readonly id: string;
  readonly title: string;
  /** Milliseconds since 1970. */
  readonly savedAt: number;
  /** When it was opened or saved last, in milliseconds since 1970. */
  readonly usedAt: number;
  readonly facts: LessonFacts;
}

export const SHELF_ORDERS = ['used', 'saved', 'title', 'level'] as const;
export type ShelfOrder = (typeof SHELF_ORDERS)[number];

/** What is looked for; null asks nothing. */
export interface ShelfWish {
  /** Words that all have to stand in title, notes, chart or student, in any order. */
  readonly words: string;
  readonly student: string | null;
  readonly technique: Technique | null;
  readonly feel: FeelId | null;
  readonly key: string | null;
  readonly level: Level | null;
  readonly order: ShelfOrder;
}

export const ANY_LESSON: ShelfWish = {
  words: '',
  student: null,
  technique: null,
  feel: null,
  key: null,
  level: null,
  order: 'used',
};

const byName = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

const lowestLevel = ({ facts }: OnShelf): number => Math.min(...facts.levels, 99);

const ORDERS: Readonly<Record<ShelfOrder, (one: OnShelf, other: OnShelf) => number>> = {
  used: (one, other) => other.usedAt - one.usedAt,
  saved: (one, other) => other.savedAt - one.savedAt,
  title: (one, other) => byName.compare(one.title, other.title) || other.usedAt - one.usedAt,
  level: (one, other) => lowestLevel(one) - lowestLevel(other) || other.usedAt - one.usedAt,
};

const asks = <Value>(wanted: Value | null, has: readonly Value[]): boolean =>
  wanted === null || has.includes(wanted);

/** The lessons that are looked for, in the order that is asked for. */
export function findOnShelf<Found extends OnShelf>(
  shelf: readonly Found[],
  wish: ShelfWish,
): readonly Found[] {
  const words = wordsOf(wish.words);
  return shelf
    .filter((lesson) => {
      const { facts } = lesson;
      if (
        !asks(wish.student, [facts.student]) ||
        !asks(wish.technique, facts.techniques) ||
        !asks(wish.feel, facts.feels) ||
        !asks(wish.key, facts.keys) ||
        !asks(wish.level, facts.levels)
      )
        return false;
      if (words.length === 0) return true;
      const text = `${folded(lesson.title)}\n${facts.text}`;
      return words.every((word) => text.includes(word));
    })
    .sort(ORDERS[wish.order]);
}

/** What a shelf can be sifted by: each value that stands on it, in its order. Gone through once: a shelf has thousands. */
export function choicesOn(shelf: readonly OnShelf[]) {
  const students = new Set<string>();
  const techniques = new Set<Technique>();
  const feels = new Set<FeelId>();
  const keys = new Set<string>();
  const levels = new Set<Level>();
  for (const { facts } of shelf) {
    students.add(facts.student);
    for (const technique of facts.techniques) techniques.add(technique);
    for (const feel of facts.feels) feels.add(feel);
    for (const key of facts.keys) keys.add(key);
    for (const level of facts.levels) levels.add(level);
  }
  const named = (values: ReadonlySet<string>) =>
    [...values].filter((each) => each !== '').sort(byName.compare);
  return {
    students: named(students),
    techniques: [...techniques],
    feels: [...feels],
    keys: named(keys),
    levels: [...levels].sort((one, other) => one - other),
  };
}
