import fc from 'fast-check';
import { readLessonLink } from '../../src/core/exchange';
import { readFile } from '../../src/core/exchange/read';
import { type Lesson, parseLesson } from '../../src/core/lesson';
import { lessonOfVersion } from '../../src/core/versions';
import { randomCharts } from '../chart/random-charts';
import { throughAll, throughDerived } from './all-stages';
import { damagedFiles } from './damaged-files';
import { longRuns } from './long-runs';

/** One way into the program, with inputs by chance. */
export interface Kind {
  readonly name: string;
  /** Makes the input of a seed, and gives what is to be done with it; its answer says how far it came. */
  readonly prepare: (seed: number) => () => string;
}

const charts = fc.oneof(
  { weight: 6, arbitrary: randomCharts },
  fc.tuple(randomCharts, longRuns(300), fc.nat()).map(([chart, run, where]) => {
    const at = where % (chart.length + 1);
    return chart.slice(0, at) + run + chart.slice(at);
  }),
  fc.string({ unit: 'binary', maxLength: 200 }),
);

const one = <Value>(values: fc.Arbitrary<Value>, seed: number): Value => {
  const [value] = fc.sample(values, { numRuns: 1, seed });
  if (value === undefined) throw new Error('no value');
  return value;
};

/**
 * What is opened has a line of its own and goes on with it through the later stages; one in so many is composed anew
 * besides, since that takes nearly all of the time.
 */
const COMPOSED_ONE_IN = 10;

const throughOpened = (lesson: Lesson, seed: number): string => {
  for (const { id } of lesson.versions ?? [])
    throughAll({ lesson: lessonOfVersion(lesson, id), seed, composes: false });
  return throughAll({ lesson, seed, composes: seed % COMPOSED_ONE_IN === 0 });
};

/** The kinds: charts as far as they are read and derived, charts as lines, and everything that can be opened. */
export function fuzzKinds(): readonly Kind[] {
  const files = damagedFiles();
  return [
    {
      name: 'charts',
      prepare: (seed) => {
        const chart = one(charts, seed);
        return () => throughDerived(chart);
      },
    },
    {
      name: 'lines',
      prepare: (seed) => {
        const chart = one(charts, seed);
        return () => throughAll({ chart, seed });
      },
    },
    {
      name: 'lessons',
      prepare: (seed) => {
        const text = files.lesson(seed);
        return () => {
          const read = parseLesson(text);
          return read.ok ? throughOpened(read.value, seed) : 'refused';
        };
      },
    },
    {
      name: 'links',
      prepare: (seed) => {
        const link = files.link(seed);
        return () => {
          const read = readLessonLink(link);
          return read.ok ? throughOpened(read.value, seed) : 'refused';
        };
      },
    },
    ...(['musicxml', 'midi', 'tab'] as const).map(
      (name): Kind => ({
        name,
        prepare: (seed) => {
          const bytes = files[name](seed);
          return () => {
            const read = readFile(bytes, 'File');
            if (read.ok) return throughOpened(read.value.lesson, seed);
            if (/not foreseen/.test(read.problem.message)) throw new Error(read.problem.message);
            return 'refused';
          };
        },
      }),
    ),
  ];
}
