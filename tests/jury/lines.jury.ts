// biome-ignore-all lint/suspicious/noConsole: it prints the lines
import { readFileSync, writeFileSync } from 'node:fs';
import { test } from 'vitest';
import { barTicks, TICKS_PER_QUARTER } from '../../src/core/base';
import { composeLine } from '../../src/core/line';
import { juryNotes, requestOf, type Task } from './tasks';

const { TASKS = 'tests/jury/model-lines.json', OUT, SEED = '1' } = process.env;

test('composes a line for each task', () => {
  const tasks = JSON.parse(readFileSync(TASKS, 'utf8')) as readonly Task[];
  const lines = tasks.flatMap((task) => {
    const wish = requestOf(task, Number(SEED));
    const bars = composeLine(wish).bars.map(juryNotes);
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
