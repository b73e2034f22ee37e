// biome-ignore-all lint/suspicious/noConsole: it prints the tables
import { readFileSync } from 'node:fs';
import { test } from 'vitest';
import { composeLine } from '../../src/core/line';
import { type JuryLine, juryNotes, requestOf } from '../jury/tasks';
import { mean, sameness, TRAITS, type Traits, traitsOf } from './traits';

const MODELS = JSON.parse(
  readFileSync(new URL('../jury/model-lines.json', import.meta.url), 'utf8'),
) as readonly JuryLine[];
const SEEDS = [1, 2, 3] as const;

interface Row {
  readonly feel: string;
  readonly level: string;
  readonly model: Traits;
  readonly takes: readonly Traits[];
  readonly same: number;
}

const shown = (value: number): string => (Number.isNaN(value) ? '–' : value.toFixed(2));

/** A trait of some charts: the composer's, then that of the lines by hand. */
const cell = (rows: readonly Row[], trait: keyof Traits): string =>
  `${shown(mean(rows.flatMap(({ takes }) => takes.map((each) => each[trait]))))} / ${shown(mean(rows.map(({ model }) => model[trait])))}`;

function print(name: string, groups: ReadonlyMap<string, readonly Row[]>): void {
  console.log(
    `| ${name} | ${TRAITS.join(' | ')} | same in two takes |\n|${' --- |'.repeat(TRAITS.length + 2)}`,
  );
  for (const [group, rows] of groups) {
    const cells = TRAITS.map((trait) => cell(rows, trait));
    console.log(`| ${group} | ${cells.join(' | ')} | ${shown(mean(rows.map(({ same }) => same)))} |`);
  }
}

const groupedBy = (rows: readonly Row[], of: (row: Row) => string): ReadonlyMap<string, readonly Row[]> => {
  const groups = new Map<string, Row[]>();
  for (const row of rows) groups.set(of(row), [...(groups.get(of(row)) ?? []), row]);
  return groups;
};

test('prints the traits of composed lines beside those of the model lines', () => {
  const rows = MODELS.map((model): Row => {
    const asked = requestOf(model, 1);
    const takes = SEEDS.map((seed) => composeLine(requestOf(model, seed)).bars.map(juryNotes));
    return {
      feel: model.feel,
      level: model.level <= 2 ? 'levels 0 to 2' : 'levels 3 to 5',
      model: traitsOf(asked, model.bars),
      takes: takes.map((bars) => traitsOf(asked, bars)),
      same: mean(takes.slice(1).map((bars, index) => sameness(bars, takes[index] ?? []))),
    };
  });
  console.log('Composed / by hand, over the charts of the model lines, three takes each:');
  print(
    'feel',
    groupedBy(rows, ({ feel }) => feel),
  );
  print(
    'level',
    groupedBy(rows, ({ level }) => level),
  );
  print(
    'all',
    groupedBy(rows, () => 'all'),
  );
});
