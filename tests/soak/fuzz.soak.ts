/**
 * Random and damaged inputs through every stage, as many as asked for: `FUZZ_INPUTS=100000 FUZZ_KINDS=charts npm run
 * soak -- fuzz`. Nothing may be thrown, and nothing may take longer than a second of the processor. Every input is
 * made of a seed of its own, counted up from `FUZZ_SEED` (by chance when left out); a fault prints the seed with
 * which that one input comes again.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readLessonLink } from '../../src/core/exchange';
import { readFile } from '../../src/core/exchange/read';
import { parseLesson } from '../../src/core/lesson';
import { randomCharts } from '../chart/random-charts';
import { throughAll, throughDerived } from '../support/all-stages';
import { damagedFiles } from '../support/damaged-files';
import { longRuns } from '../support/long-runs';
import { tell } from './minutes';

const INPUTS = Number(process.env.FUZZ_INPUTS ?? 300);
const SEED = Number(process.env.FUZZ_SEED ?? Math.floor(Math.random() * 2 ** 31));
const LONGEST_MS = 1000;

const charts = fc.oneof(
  { weight: 6, arbitrary: randomCharts },
  fc.tuple(randomCharts, longRuns(300), fc.nat()).map(([chart, run, where]) => {
    const at = where % (chart.length + 1);
    return chart.slice(0, at) + run + chart.slice(at);
  }),
  fc.string({ unit: 'binary', maxLength: 200 }),
);

interface Kind {
  readonly name: string;
  /** Makes the input of a seed, and gives what is to be done with it; its answer says how far it came. */
  readonly prepare: (seed: number) => () => string;
}

const one = <Value>(values: fc.Arbitrary<Value>, seed: number): Value => {
  const [value] = fc.sample(values, { numRuns: 1, seed });
  if (value === undefined) throw new Error('no value');
  return value;
};

const files = damagedFiles();

const KINDS: readonly Kind[] = [
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
        return read.ok ? throughAll({ lesson: read.value, seed }) : 'refused';
      };
    },
  },
  {
    name: 'links',
    prepare: (seed) => {
      const link = files.link(seed);
      return () => {
        const read = readLessonLink(link);
        return read.ok ? throughAll({ lesson: read.value, seed }) : 'refused';
      };
    },
  },
  ...(['musicxml', 'midi'] as const).map(
    (name): Kind => ({
      name,
      prepare: (seed) => {
        const bytes = files[name](seed);
        return () => {
          const read = readFile(bytes, 'File');
          if (read.ok) return throughAll({ lesson: read.value.lesson, seed });
          expect(read.problem.message).not.toMatch(/not foreseen/);
          return 'refused';
        };
      },
    }),
  ),
];

const asked = process.env.FUZZ_KINDS?.split(',') ?? KINDS.map(({ name }) => name);

test.each(KINDS.filter(({ name }) => asked.includes(name)))('$name', ({ name, prepare }) => {
  const faults: string[] = [];
  const reached = new Map<string, number>();
  let longest = 0;
  const again = (seed: number) => `FUZZ_KINDS=${name} FUZZ_SEED=${seed} FUZZ_INPUTS=1 npm run soak -- fuzz`;
  for (let seed = SEED; seed < SEED + INPUTS; seed += 1) {
    const work = prepare(seed);
    const before = process.cpuUsage();
    try {
      const stage = work();
      reached.set(stage, (reached.get(stage) ?? 0) + 1);
    } catch (fault) {
      const said =
        fault instanceof Error ? `${fault.message} ${fault.stack?.split('\n')[1] ?? ''}` : String(fault);
      faults.push(`${said}: ${again(seed)}`);
      tell(faults.at(-1) ?? '');
    }
    const { user, system } = process.cpuUsage(before);
    const took = (user + system) / 1000;
    longest = Math.max(longest, took);
    if (took > LONGEST_MS) {
      faults.push(`took ${Math.round(took)} ms: ${again(seed)}`);
      tell(faults.at(-1) ?? '');
    }
  }
  const stages = [...reached].map(([stage, count]) => `${count} ${stage}`).join(', ');
  tell(
    `${name}: ${INPUTS} inputs from seed ${SEED}, ${stages}; the longest took ${Math.round(longest)} ms; ${faults.length} faults.`,
  );
  expect(faults).toEqual([]);
});
