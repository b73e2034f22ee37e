import { describe, expect, test } from 'vitest';
import { composePiece } from '../../src/core/composing';
import { type HandoutSettings, type Lesson, newLesson, setChartText, setLevel } from '../../src/core/lesson';
import type { Level } from '../../src/core/line';
import { applyPreset, HANDOUT_PRESETS } from '../../src/handout';
import type { Mark } from '../../src/handout/layout/marks';
import { layOutForPrint } from './drawn';

/*
 * How many pages each kind of sheet takes at every level, by the bars of its line. Its music begins on the first page,
 * cautions never have a page to themselves, and no page begins within a part without the part's heading.
 */
const LEVELS: readonly Level[] = [0, 1, 2, 3, 4, 5];
const BARS = [8, 12, 14, 16] as const;

const ROWS = ['| C | Am | F | G |', '| C7 | F7 | G7 | C7 |', '| Dm | G | Em | Am |', '| C | F | G | C |'];
const CHARTS: Readonly<Record<(typeof BARS)[number], string>> = {
  8: ROWS.slice(0, 2).join('\n'),
  12: ROWS.slice(0, 3).join('\n'),
  14: `${ROWS.slice(0, 3).join('\n')}\n| F | G |`,
  16: ROWS.join('\n'),
};

interface Kind {
  readonly occasion: string;
  readonly print: HandoutSettings['print'];
  /** Where they are not all looked at. */
  readonly levels?: readonly Level[];
  /** Pages at most, by the number of bars. */
  readonly pages: readonly [number, number, number, number];
}

const KINDS: readonly Kind[] = [
  { occasion: 'as usual', print: 'normal', pages: [1, 1, 1, 1] },
  { occasion: 'homework', print: 'normal', pages: [1, 1, 1, 1] },
  { occasion: 'first lesson', print: 'large', pages: [2, 2, 2, 2] },
  { occasion: 'test', print: 'normal', pages: [1, 1, 1, 1] },
  { occasion: 'clapping', print: 'normal', pages: [1, 1, 1, 1] },
  { occasion: 'band class', print: 'normal', levels: [1, 4], pages: [2, 3, 3, 3] },
  { occasion: 'as usual', print: 'large', levels: [1, 4], pages: [1, 2, 2, 2] },
  { occasion: 'homework', print: 'large', levels: [1, 4], pages: [2, 2, 2, 2] },
];

function lineOf(bars: (typeof BARS)[number], level: Level): Lesson {
  const fresh = newLesson('lesson', `A song of ${bars} bars`);
  const id = fresh.pieces[0]?.id ?? '';
  return composePiece(setChartText(setLevel(fresh, id, level), id, CHARTS[bars]), id).lesson;
}

function settingsFor({ handout }: Lesson, { occasion, print }: Kind): HandoutSettings {
  const preset = HANDOUT_PRESETS.find(({ id }) => id === occasion);
  return { ...(preset === undefined ? handout : applyPreset(handout, preset)), ...(print && { print }) };
}

const CAUTIONS = 'Hands and ears:';
const warns = (marks: readonly Mark[]): boolean =>
  marks.some((mark) => mark.kind === 'text' && mark.text === CAUTIONS);
const hasMusic = (marks: readonly Mark[]): boolean => marks.some(({ kind }) => kind === 'system');

/** Whether a page begins with music, a heading or, where a part goes on, with that part's heading again. */
function beginsWhole(marks: readonly Mark[]): boolean {
  const first = marks.find(({ tag }) => tag?.role !== 'Artifact');
  const again = marks.find((mark) => mark.kind === 'text' && mark.text.endsWith(', continued'));
  if (again !== undefined && first !== undefined && again.y <= first.y) return true;
  return first?.kind === 'system' || first?.tag?.role === 'H2' || first?.tag?.role === 'H3';
}

describe.each(BARS)('a line of %i bars on paper', (bars) => {
  test.each(LEVELS)('takes no page too many at level %i', (level) => {
    const line = lineOf(bars, level);
    for (const kind of KINDS.filter(({ levels = LEVELS }) => levels.includes(level))) {
      const { pages } = layOutForPrint({ ...line, handout: settingsFor(line, kind) });
      const told = `${kind.occasion}, ${kind.print} print`;
      expect(pages.length, told).toBeLessThanOrEqual(kind.pages[BARS.indexOf(bars)] ?? 0);
      expect(hasMusic(pages[0]?.marks ?? []), told).toBe(true);
      for (const { marks } of pages) expect(warns(marks) && !hasMusic(marks), told).toBe(false);
      for (const { marks } of pages.slice(1)) expect(beginsWhole(marks), told).toBe(true);
    }
  });
});
