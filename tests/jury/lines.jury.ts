// biome-ignore-all lint/suspicious/noConsole: it prints the lines
import { readFileSync, writeFileSync } from 'node:fs';
import { test } from 'vitest';
import { barTicks, type LineNote, type Metre, midiOf, TICKS_PER_QUARTER } from '../../src/core/base';
import { type FeelId, feelById, isFeelId } from '../../src/core/feel';
import { composeLine, type Level, TECHNIQUE_ROWS, type Technique } from '../../src/core/line';
import { request } from '../line/notation';

/** A task of the jury: the fields of its files of lines, the bars left out. */
interface Task {
  readonly id: string;
  readonly feel: string;
  readonly tempo: number;
  readonly level: Level;
  readonly chart: string;
  /** Quarters a bar, where it has not four. */
  readonly beats?: number;
  /** Where quarters do not say it: `6/8`. */
  readonly metre?: string;
  readonly seed?: number;
  readonly techniques?: readonly Technique[];
}

const { TASKS = 'tests/jury/model-lines.json', OUT, SEED = '1' } = process.env;

const round = (ticks: number): number => Math.round((ticks / TICKS_PER_QUARTER) * 10_000) / 10_000;
const written = (notes: readonly LineNote[]) =>
  notes.map((note) => ({ beat: round(note.start) + 1, len: round(note.duration), midi: midiOf(note.pitch) }));

/** What a lesson of a feel and level ticks where its task names nothing, and approach notes where the level has them. */
const techniquesAt = (feel: FeelId, level: number): readonly Technique[] =>
  TECHNIQUE_ROWS.filter(
    (row) => row.from <= level && (row.belongs(feelById(feel)) || row.technique === 'approach note'),
  ).map(({ technique }) => technique);

/** The chart in the project's own grammar: the bars of the tasks part their chords evenly, as ours do. */
function requestOf(task: Task) {
  const feel: FeelId = isFeelId(task.feel) ? task.feel : 'early-ska';
  const { count, unit } =
    /^(?<count>\d+)\/(?<unit>4|8|2)$/.exec(task.metre ?? `${task.beats ?? 4}/4`)?.groups ?? {};
  const metre: Metre = { count: Number(count), unit: unit === '8' ? 8 : unit === '2' ? 2 : 4 };
  const asked = request(task.chart.replace(/b(?=[\d\s|/]|$|m|7|6|dim|maj)/g, '♭'), {
    feel,
    level: task.level,
    tempo: task.tempo,
    seed: task.seed ?? Number(SEED),
    techniques: task.techniques ?? techniquesAt(feel, task.level),
    metre,
  });
  // An octave may be heard, and need not.
  return { ...asked, aims: [{ where: { kind: 'line' }, allowed: ['octave'] }] as const };
}

test('composes a line for each task', () => {
  const tasks = JSON.parse(readFileSync(TASKS, 'utf8')) as readonly Task[];
  const lines = tasks.flatMap((task) => {
    const wish = requestOf(task);
    const bars = composeLine(wish).bars.map(written);
    const text = bars
      .map((bar, index) => {
        const metre = wish.chart.bars[index]?.metre;
        const notes = bar.map(({ beat, len, midi }) => `${beat}:${midi}${len === 1 ? '' : `(${len})`}`);
        return `  ${String(index + 1).padStart(2)} [${metre ? barTicks(metre) / TICKS_PER_QUARTER : 4}] ${notes.join('  ')}`;
      })
      .join('\n');
    console.log(`${task.id} ${task.feel}, level ${task.level}: ${task.chart}\n${text}`);
    return [{ ...task, bars }];
  });
  if (OUT !== undefined) writeFileSync(OUT, JSON.stringify(lines));
});
