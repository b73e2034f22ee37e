import fc from 'fast-check';
import {
  newBlankPiece,
  printLesson,
  sampleLesson,
  setChartText,
  setLevel,
  setNoteNames,
  transposeBy,
} from '../../src/core/lesson';
import { addVersion, lessonAsOpen, storeEdited } from '../../src/core/versions';

/** A lesson with two versions: one in another key and at another level, one with a chart of its own. */
function withVersions(): string {
  const tune = sampleLesson(0, 'test');
  const id = tune.pieces[0]?.id ?? '';
  const ada = addVersion(tune, 'for Ada');
  const moved = storeEdited(ada, setLevel(transposeBy(lessonAsOpen(ada), id, 3), id, 1));
  const ben = addVersion(moved, 'for Ben');
  return printLesson(storeEdited(ben, setChartText(lessonAsOpen(ben), id, '| C | F | G7 | C |')));
}

const PLAIN: readonly string[] = [0, 1].map((index) => {
  const sample = sampleLesson(index, 'test');
  const lesson = setNoteNames(
    { ...sample, pieces: [...sample.pieces, newBlankPiece('blank-1', 'Own')] },
    'german',
  );
  return printLesson(lesson);
});

const SAMPLES: readonly string[] = [...PLAIN, withVersions()];

type Step = string | number;
type Document = null | boolean | number | string | Document[] | { [name: string]: Document };

/** Every place in a document that can be replaced, removed or doubled. */
function placesOf(value: unknown, path: readonly Step[] = []): readonly (readonly Step[])[] {
  if (typeof value !== 'object' || value === null) return [path];
  const inside = Object.entries(value).flatMap(([step, part]) =>
    placesOf(part, [...path, Array.isArray(value) ? Number(step) : step]),
  );
  return path.length === 0 ? inside : [path, ...inside];
}

const PLACES = SAMPLES.map((text) => placesOf(JSON.parse(text)));

/** Values that lie at the edges of what is allowed, and beyond. */
const VALUES = fc.oneof(
  fc.constantFrom<Document>(
    null,
    true,
    '',
    [],
    {},
    0,
    -1,
    1,
    12,
    36,
    0.5,
    1e308,
    -1e-9,
    960,
    3840,
    2_147_483_648,
    '| F | % :|',
    'A:\n| C |\nA\nA',
    '(12/8) (key: G#m) | vii°7/V |',
    '<img src=x onerror=alert(1)>',
    '__proto__',
    'german',
    'minor',
    'hand',
  ),
  fc.integer({ min: -3, max: 400 }),
  fc.string({ maxLength: 12 }),
);

interface Change {
  readonly where: number;
  readonly what: 'nudge' | 'replace' | 'remove' | 'double';
  readonly value: Document;
}

/** Charts that fit the line or do not. */
const CHARTS = [
  '',
  '| F | % :|',
  'A:\n| C |\nA\nA',
  '(12/8) (key: G#m) | vii°7/V |',
  '(2) G7 |: C x F |1. C :| x9',
];

/** Another value of the same kind, which a file may well hold. */
function nudged(old: Document, by: number): Document {
  switch (typeof old) {
    case 'number':
      return [old + 1, old - 1, old * 2, Math.round(old / 2), by % 40][by % 5] ?? 0;
    case 'boolean':
      return !old;
    case 'string':
      return old.includes('|') ? (CHARTS[by % CHARTS.length] ?? '') : old;
    default:
      return Array.isArray(old) ? old.slice(by % 3) : old;
  }
}

function changed(document: Document, path: readonly Step[], change: Change): Document {
  const { what, value, where } = change;
  const [step, ...rest] = path;
  if (step === undefined) return value;
  if (Array.isArray(document)) {
    const index = Number(step);
    const part = document[index];
    if (part === undefined) return document;
    const next = rest.length > 0 ? [changed(part, rest, change)] : null;
    const instead =
      next ?? { nudge: [nudged(part, where)], replace: [value], remove: [], double: [part, part] }[what];
    return document.toSpliced(index, 1, ...instead);
  }
  if (typeof document !== 'object' || document === null) return document;
  const entries = Object.entries(document).flatMap(([name, part]): [string, Document][] => {
    if (name !== step) return [[name, part]];
    if (rest.length > 0) return [[name, changed(part, rest, change)]];
    if (what === 'remove') return [];
    if (what === 'nudge') return [[name, nudged(part, where)]];
    return what === 'replace'
      ? [[name, value]]
      : [
          [name, part],
          [`${name} again`, part],
        ];
  });
  return Object.fromEntries(entries);
}

const change: fc.Arbitrary<Change> = fc.record({
  where: fc.nat(),
  what: fc.constantFrom(
    'nudge' as const,
    'nudge' as const,
    'nudge' as const,
    'replace' as const,
    'remove' as const,
    'double' as const,
  ),
  value: VALUES,
});

/** A real lesson file with a few values replaced, removed or doubled. */
export const mutatedLessons = fc
  .tuple(fc.nat({ max: SAMPLES.length - 1 }), fc.array(change, { minLength: 1, maxLength: 4 }))
  .map(([which, changes]) => {
    const places = PLACES[which] ?? [];
    const document: Document = JSON.parse(SAMPLES[which] ?? 'null');
    const result = changes.reduce<Document>(
      (made, each) => changed(made, places[each.where % places.length] ?? [], each),
      document,
    );
    return JSON.stringify(result);
  });

/** A real lesson file with letters lost, doubled or thrown in. */
export const garbledLessons = fc
  .tuple(
    fc.nat({ max: SAMPLES.length - 1 }),
    fc.array(
      fc.tuple(fc.nat(), fc.nat({ max: 9 }), fc.constantFrom('', '"', '}', ',', '0', '\\', '\u0000')),
      {
        minLength: 1,
        maxLength: 4,
      },
    ),
  )
  .map(([which, cuts]) =>
    cuts.reduce((text, [where, length, scrap]) => {
      const at = where % (text.length + 1);
      return text.slice(0, at) + scrap + text.slice(at + length);
    }, SAMPLES[which] ?? ''),
  );
