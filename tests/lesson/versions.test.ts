import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as z from 'zod/mini';
import { CHART_METRES } from '../../src/core/chart';
import { NAVIGATION } from '../../src/core/chart/navigation';
import { LESSON_VERSION } from '../../src/core/lesson';
import { lessonSchema } from '../../src/core/lesson/schema';
import { LEVELS } from '../../src/core/line';
import { valuesOf } from './lesson-values';

/*
 * What each version of the lesson file can hold, in `versions/N.txt`: a line for each field and each value of a list
 * that came with it, and a line with a minus for each that went. Copies of the app that read up to version N know
 * nothing else; so whatever is new comes with a version that they can tell from theirs.
 */
const linesOf = (version: number): readonly string[] =>
  readFileSync(new URL(`versions/${version}.txt`, import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => line !== '');

/** What can be written in a chart's text besides chords, and the levels beyond those that every version knew. */
const BESIDES: readonly string[] = [
  ...LEVELS.filter((level) => level > 5).map((level) => `level = ${level}`),
  ...CHART_METRES.map(({ count, unit }) => `chart metre = ${count}/${unit}`),
  ...NAVIGATION.map((sign) => `chart sign = ${sign}`),
];

/** The first version of the list holds all that had come by then. */
const FIRST = 2;

/**
 * Versions that have gone out, each with the SHA-256 of its list: what a copy of the app knows no longer changes. When
 * a version goes out, its line is added here.
 */
const GONE_OUT: Readonly<Record<number, string>> = {
  2: '1e7d2573264e35deb07770bd950a551001fce33ceb13858fd48d0447df974f27',
};

const upTo = (version: number): readonly number[] =>
  Array.from({ length: version - FIRST + 1 }, (_, index) => FIRST + index);

/** What lessons of a version can hold. */
function heldBy(version: number): ReadonlySet<string> {
  const held = new Set<string>();
  for (const line of upTo(version).flatMap(linesOf)) {
    if (line.startsWith('- ')) held.delete(line.slice(2));
    else held.add(line);
  }
  return held;
}

/** What a schema holds that is not in the lists, and what the lists say that it does not hold. */
function differences(schema: z.ZodMiniType, version: number): readonly string[] {
  const now = new Set([...valuesOf(schema), ...BESIDES]);
  const held = heldBy(version);
  return [
    ...[...now].filter((line) => !held.has(line)),
    ...[...held].filter((line) => !now.has(line)).map((line) => `- ${line}`),
  ];
}

const HELP = `add these lines to tests/lesson/versions/${LESSON_VERSION}.txt; where that version has gone out, raise LESSON_VERSION and begin the next list`;

describe('the fields and values of a lesson', () => {
  test('came with the version whose list names them', () => {
    expect(differences(lessonSchema, LESSON_VERSION), HELP).toEqual([]);
  });

  test('of a version that has gone out stay as they are', () => {
    for (const [version, digest] of Object.entries(GONE_OUT)) {
      const found = createHash('sha256')
        .update(linesOf(Number(version)).join('\n'))
        .digest('hex');
      expect(found, `version ${version} has gone out: raise LESSON_VERSION`).toBe(digest);
    }
    expect(Object.keys(GONE_OUT).length).toBeGreaterThanOrEqual(LESSON_VERSION - FIRST);
  });

  test('are refused without a line, and when they go without one', () => {
    const { shape } = lessonSchema._zod.def;
    const withField = z.object({ ...shape, mood: z.string() });
    expect(differences(withField, LESSON_VERSION)).toEqual(['mood']);
    const withValue = z.object({ ...shape, noteNames: z.enum(['letters', 'german', 'fixed do', 'numbers']) });
    expect(differences(withValue, LESSON_VERSION)).toEqual(['noteNames = numbers']);
    const { idsUpTo: _, ...others } = shape;
    expect(differences(z.object(others), LESSON_VERSION)).toEqual(['- idsUpTo']);
  });
});
