import { readFileSync } from 'node:fs';
import { type LineNote, TICKS_PER_QUARTER, ticks } from '../../src/core/base';
import { type HeardLine, hearLine } from '../../src/core/line/hearing';
import type { LineModel } from '../../src/core/line/model';
import { modelOf } from '../../src/core/line/read-request';
import { plainRequestOf, type Task } from './tasks';

type Author = 'program' | 'by hand';

interface Judged {
  readonly tasks: readonly (Task & { readonly lines: Readonly<Record<Author, string>> })[];
  readonly judgements: readonly {
    readonly task: string;
    readonly by: string;
    readonly marks: Readonly<Record<Author, number>>;
  }[];
}

/** A line that was read, as it is heard, with its mean mark of ten. */
export interface ReadLine {
  readonly run: string;
  readonly author: Author;
  readonly feel: string;
  readonly level: number;
  readonly model: LineModel;
  readonly heard: HeardLine;
  readonly mark: number;
}

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

export const meanOf = (numbers: readonly number[]): number =>
  numbers.reduce((sum, one) => sum + one, 0) / Math.max(1, numbers.length);

/** Both lines of every chart that was read, one after the other. */
export function linesRead(): readonly ReadLine[] {
  const { tasks, judgements } = JSON.parse(readFileSync('tests/jury/pairs.json', 'utf8')) as Judged;
  return tasks.flatMap((task): readonly ReadLine[] => {
    const model = modelOf(plainRequestOf(task));
    const own = judgements.filter((one) => one.task === task.id);
    return (['program', 'by hand'] as const).map((author) => ({
      run: own[0]?.by.split(',')[0] ?? '',
      author,
      feel: task.feel,
      level: task.level,
      model,
      heard: hearLine(
        model,
        task.lines[author].split('|').map((bar) => bar.split(' ').filter(Boolean).map(noteOf)),
      ),
      mark: meanOf(own.map(({ marks }) => marks[author])),
    }));
  });
}
