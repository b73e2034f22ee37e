// biome-ignore-all lint/suspicious/noConsole: it prints the report
import { readFileSync } from 'node:fs';
import { test } from 'vitest';
import { type LineNote, TICKS_PER_QUARTER, ticks } from '../../src/core/base';
import { hearLine } from '../../src/core/line/hearing';
import { FEATURES, type Feature, featuresOf } from '../../src/core/line/phrase/features';
import { WEIGHTS } from '../../src/core/line/phrase/weights';
import { modelOf } from '../../src/core/line/read-request';
import { plainRequestOf, type Task } from './tasks';

/*
 * Weights for the features of a line, fitted to what blind readers preferred: `npm run jury:fit`. The chance that a
 * reader prefers one of two lines grows with the difference of their costs (a logistic model of pairs, after Bradley
 * and Terry 1952), and the weights stay near those that were set by ear. It is judged on charts that it has not seen.
 */

type Author = 'program' | 'by hand';

interface Judged {
  readonly tasks: readonly (Task & { readonly lines: Readonly<Record<Author, string>> })[];
  readonly judgements: readonly {
    readonly task: string;
    readonly by: string;
    readonly marks: Readonly<Record<Author, number>>;
  }[];
}

const NAMES = Object.keys(FEATURES) as readonly Feature[];
const LETTERS = ['C', 'D', 'D', 'E', 'E', 'F', 'F', 'G', 'A', 'A', 'B', 'B'] as const;
const ALTERATIONS = [0, -1, 0, -1, 0, 0, 1, 0, -1, 0, -1, 0] as const;

function noteOf(text: string): LineNote {
  const [beat = 1, midi = 36, length = 1] = text.split(':').map(Number);
  return {
    start: ticks(Math.round((beat - 1) * TICKS_PER_QUARTER)),
    duration: ticks(Math.round(length * TICKS_PER_QUARTER)),
    pitch: {
      letter: LETTERS[midi % 12] ?? 'C',
      alteration: ALTERATIONS[midi % 12] ?? 0,
      octave: Math.floor(midi / 12) - 1,
    },
  };
}

/** The features of each line of a task, in the order of their names. */
function vectorsOf(task: Judged['tasks'][number]): Readonly<Record<Author, readonly number[]>> {
  const model = modelOf(plainRequestOf(task));
  const vector = (text: string) => {
    const bars = text.split('|').map((bar) => bar.split(' ').filter(Boolean).map(noteOf));
    const features = featuresOf(model, hearLine(model, bars));
    return NAMES.map((name) => features[name]);
  };
  return { program: vector(task.lines.program), 'by hand': vector(task.lines['by hand']) };
}

/** A reading: how the features of the line that was preferred differ from the other's. */
interface Reading {
  readonly task: string;
  readonly difference: readonly number[];
}

/** How fast the weights follow the readings, how strongly they are held, and how much a point of cost tells. */
const [RATE, HELD, TELLS, ROUNDS] = [0.5, 0.02, 0.15, 400];

const dot = (one: readonly number[], other: readonly number[]): number =>
  one.reduce((sum, value, index) => sum + value * (other[index] ?? 0), 0);

function fitted(readings: readonly Reading[], start: readonly number[]): readonly number[] {
  let weights = start;
  for (let round = 0; round < ROUNDS; round += 1) {
    const pull = NAMES.map((_, index) =>
      readings.reduce((sum, { difference }) => {
        const doubt = 1 / (1 + Math.exp(-TELLS * dot(weights, difference)));
        return sum + (doubt * TELLS * (difference[index] ?? 0)) / readings.length;
      }, 0),
    );
    weights = weights.map((weight, index) => {
      const moved = weight - RATE * (pull[index] ?? 0) - HELD * RATE * (weight - (start[index] ?? 0));
      // A feature never turns from a fault into a merit, nor the other way.
      return Math.sign(moved) === Math.sign(start[index] ?? 0) ? moved : 0;
    });
  }
  return weights;
}

/** The share of readings whose preferred line costs less. */
const rightIn = (readings: readonly Reading[], weights: readonly number[]): number =>
  readings.filter(({ difference }) => dot(weights, difference) < 0).length / Math.max(1, readings.length);

test('fits the weights to the readings, and tells how well they do on charts that were held out', () => {
  const judged = JSON.parse(readFileSync('tests/jury/pairs.json', 'utf8')) as Judged;
  const vectors = new Map(judged.tasks.map((task) => [task.id, vectorsOf(task)]));
  const readings = judged.judgements.flatMap(({ task, marks }): readonly Reading[] => {
    const lines = vectors.get(task);
    if (!lines || marks.program === marks['by hand']) return [];
    const [better, worse]: readonly [Author, Author] =
      marks.program > marks['by hand'] ? ['program', 'by hand'] : ['by hand', 'program'];
    return [{ task, difference: lines[better].map((value, index) => value - (lines[worse][index] ?? 0)) }];
  });
  const byEar = NAMES.map((name) => WEIGHTS[name].weight);
  const held = judged.tasks.map(({ id }) => {
    const [unseen, seen] = [
      readings.filter(({ task }) => task === id),
      readings.filter(({ task }) => task !== id),
    ];
    return {
      count: unseen.length,
      ear: rightIn(unseen, byEar),
      fitted: rightIn(unseen, fitted(seen, byEar)),
    };
  });
  const mean = (of: (one: (typeof held)[number]) => number) =>
    held.reduce((sum, one) => sum + of(one) * one.count, 0) / readings.length;
  console.log(`${readings.length} readings over ${judged.tasks.length} charts`);
  console.log(
    `right on charts held out: by ear ${mean(({ ear }) => ear).toFixed(2)}, fitted ${mean(({ fitted }) => fitted).toFixed(2)}`,
  );
  const weights = fitted(readings, byEar);
  for (const [index, name] of NAMES.entries())
    console.log(
      `${name.padEnd(16)} ${(byEar[index] ?? 0).toFixed(2).padStart(7)} ${(weights[index] ?? 0).toFixed(2).padStart(7)}  ${FEATURES[name]}`,
    );
});
