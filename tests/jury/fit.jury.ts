// biome-ignore-all lint/suspicious/noConsole: it prints the report
import { test } from 'vitest';
import { FEATURES, type Feature, featuresOf } from '../../src/core/line/phrase/features';
import { unusualIn } from '../../src/core/line/phrase/unusual';
import { WEIGHTS } from '../../src/core/line/phrase/weights';
import { linesRead, meanOf, type ReadLine } from './read-lines';
import { usualOf, withHabits } from './usual-habits';

const NAMES = Object.keys(FEATURES) as readonly Feature[];

/*
 * Weights for the features of a line, fitted to the marks of blind readers: `npm run jury:fit`. A ridge regression
 * (Hoerl and Kennard 1970) of each line's mean mark, and of the distance between the two lines of a chart, on what can be counted in
 * them, drawn towards the weights as they stand. Marks and features are taken from their means by run, author, feel and
 * level, so that neither who wrote a line nor how hard it may be tells anything. It is judged on runs that it has not seen.
 */

/** A line that was read, with its features in the order of their names. */
interface Counted extends ReadLine {
  readonly features: readonly number[];
}

/** What a point of cost takes from a mark, how strongly weights are held to what they are, and rounds of taking means off. */
const [TELLS, HELD, ROUNDS] = [0.012, 1000, 5];

/** Features that hardly differ are measured by this share of their order, so that chance does not raise them. */
const RARE = 0.1;

const dot = (one: readonly number[], other: readonly number[]): number =>
  one.reduce((sum, value, index) => sum + value * (other[index] ?? 0), 0);

/**
 * Both lines of every chart, one after the other. What is usual in a feel is learned for each line from the other runs,
 * so that no line is held against itself.
 */
function linesCounted(): readonly Counted[] {
  const lines = withHabits(linesRead());
  const usual = new Map(
    [...new Set(lines.map(({ run }) => run))].map((run) => [
      run,
      usualOf(lines.filter((line) => line.run !== run)),
    ]),
  );
  return lines.map((line) => {
    const { feel, level } = line.model.request;
    const features = {
      ...featuresOf(line.model, line.heard),
      unusual: unusualIn(feel.id, level, line.habits, usual.get(line.run)),
    };
    return { ...line, features: NAMES.map((name) => features[name]) };
  });
}

/** Rows of numbers with the means of their groups taken off, by each of several ways to group in turns. */
function centred(rows: readonly (readonly number[])[], groupings: readonly (readonly string[])[]) {
  const now = rows.map((row) => [...row]);
  for (let round = 0; round < ROUNDS; round += 1)
    for (const names of groupings)
      for (const name of new Set(names)) {
        const group = now.filter((_, index) => names[index] === name);
        (now[0] ?? []).forEach((_, column) => {
          const mean = meanOf(group.map((row) => row[column] ?? 0));
          for (const row of group) row[column] = (row[column] ?? 0) - mean;
        });
      }
  return now;
}

/** Solves a system of equations by Gauss's elimination; its matrix has a diagonal without zeros. */
function solved(matrix: readonly (readonly number[])[], right: readonly number[]): readonly number[] {
  const rows = matrix.map((row, index) => [...row, right[index] ?? 0]);
  rows.forEach((pivot, at) => {
    const by = pivot[at] ?? 1;
    for (let column = at; column < pivot.length; column += 1) pivot[column] = (pivot[column] ?? 0) / by;
    for (const row of rows) {
      const factor = row === pivot ? 0 : (row[at] ?? 0);
      if (factor !== 0)
        for (let column = at; column < row.length; column += 1)
          row[column] = (row[column] ?? 0) - factor * (pivot[column] ?? 0);
    }
  });
  return rows.map((row) => row.at(-1) ?? 0);
}

/** A row to learn from: features and mark, both about their means, and the run that it comes from. */
interface Lesson {
  readonly run: string;
  readonly features: readonly number[];
  readonly mark: number;
}

/** The weights (as costs) that fit best; `sizes` are the usual sizes of the features. */
function fitted(lessons: readonly Lesson[], start: readonly number[], sizes: readonly number[]) {
  const scaled = lessons.map(({ features }) => features.map((value, index) => value / (sizes[index] ?? 1)));
  const prior = start.map((weight, index) => -TELLS * weight * (sizes[index] ?? 1));
  const rest = lessons.map(({ mark }, index) => mark - dot(scaled[index] ?? [], prior));
  const matrix = NAMES.map((_, one) =>
    NAMES.map(
      (_other, two) =>
        scaled.reduce((sum, row) => sum + (row[one] ?? 0) * (row[two] ?? 0), 0) + (one === two ? HELD : 0),
    ),
  );
  const right = NAMES.map((_, one) =>
    scaled.reduce((sum, row, index) => sum + (row[one] ?? 0) * (rest[index] ?? 0), 0),
  );
  return solved(matrix, right).map(
    (value, index) => -(value + (prior[index] ?? 0)) / TELLS / (sizes[index] ?? 1),
  );
}

/** How closely two rows of numbers go together, from −1 to 1 (Pearson). */
function correlation(one: readonly number[], other: readonly number[]): number {
  const [mean, otherMean] = [meanOf(one), meanOf(other)];
  const [from, otherFrom] = [one.map((value) => value - mean), other.map((value) => value - otherMean)];
  return dot(from, otherFrom) / Math.sqrt(dot(from, from) * dot(otherFrom, otherFrom));
}

test('fits the weights to the marks, and tells how well they do on runs that were held out', () => {
  const lines = linesCounted();
  const rows = centred(
    lines.map(({ features, mark }) => [...features, mark]),
    [
      lines.map(({ feel, author }) => `${feel} ${author}`),
      lines.map(({ level, author }) => `${level} ${author}`),
      lines.map(({ run, author }) => `${run} ${author}`),
    ],
  );
  const single = lines.map(({ run }, index): Lesson => {
    const row = rows[index] ?? [];
    return { run, features: row.slice(0, -1), mark: row.at(-1) ?? 0 };
  });
  const pairs = single.flatMap((one, index): readonly Lesson[] => {
    const other = single[index + 1];
    return index % 2 === 1 || !other
      ? []
      : [
          {
            run: one.run,
            features: one.features.map((value, at) => value - (other.features[at] ?? 0)),
            mark: one.mark - other.mark,
          },
        ];
  });
  const lessons = [...single, ...pairs];
  const spreads = NAMES.map((_, at) =>
    Math.sqrt(meanOf(single.map(({ features }) => (features[at] ?? 0) ** 2))),
  );
  const least = spreads.toSorted((one, other) => one - other)[Math.floor(spreads.length * RARE)] ?? 1;
  const sizes = spreads.map((spread) => Math.max(spread, least));
  const now = NAMES.map((name) => WEIGHTS[name].weight);
  const unseenBy = new Map(
    [...new Set(lines.map(({ run }) => run))].map((held) => [
      held,
      fitted(
        lessons.filter(({ run }) => run !== held),
        now,
        sizes,
      ),
    ]),
  );
  console.log(
    `${lines.length} lines over ${lines.length / 2} charts; how closely marks follow the weights, and those fitted without the run:`,
  );
  const [ours, byHand] = [
    single.filter((_, index) => index % 2 === 0),
    single.filter((_, index) => index % 2 === 1),
  ];
  for (const [name, group] of [
    ['ours', ours],
    ['by hand', byHand],
    ['their distance', pairs],
  ] as const) {
    const marks = group.map(({ mark }) => mark);
    const stands = correlation(
      group.map(({ features }) => -dot(features, now)),
      marks,
    );
    const learnt = correlation(
      group.map(({ run, features }) => -dot(features, unseenBy.get(run) ?? now)),
      marks,
    );
    console.log(`  ${name.padEnd(14)} ${stands.toFixed(2)} ${learnt.toFixed(2)}`);
  }
  const weights = fitted(lessons, now, sizes);
  for (const [index, name] of NAMES.entries())
    console.log(
      `${name.padEnd(16)} ${(now[index] ?? 0).toFixed(1).padStart(7)} ${(weights[index] ?? 0).toFixed(1).padStart(7)}  ${FEATURES[name]}`,
    );
});
