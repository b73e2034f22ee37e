import { describe, expect, it } from 'vitest';
import { editBar, harmonyText, parseChart, printChart, transposeChartText } from '../../src/core/chart';
import { composePiece } from '../../src/core/composing';
import { linePiece, newLesson, setChartText } from '../../src/core/lesson';

const METRE = { count: 4, unit: 4 } as const;
const read = (text: string) => parseChart(text, METRE);

/** `C 0` for a C from the first eighth on, bar by bar. */
const spans = (text: string): readonly string[] =>
  read(text).chart.bars.map((bar) =>
    bar.spans.map(({ start, harmony }) => `${harmonyText(harmony)} ${start / 480}`).join(', '),
  );

// A push is a chord an eighth before its beat, as in number charts (common practice, no source).
describe('pushed chords', () => {
  it.each([
    ['| C | <F |', ['C 0, F 7', 'F 0']],
    ['| C <F |', ['C 0, F 3']],
    ['| C / / <G |', ['C 0, G 5']],
    ['| C F <G Am |', ['C 0, F 2, G 3, Am 6']],
    ['| C / / / / / / F |', ['C 0, F 7']],
    ['(1) G | <C |', ['G 0, C 1', 'C 0']],
    ['(6/8) C <F | <G |', ['C 0, F 2, G 5', 'G 0']],
    ['A:\n| C |\nB:\n| <G |\nA', ['C 0, G 7', 'G 0', 'C 0']],
    ['|: <C :| F |', ['C 0', 'F 0']],
  ])('%j', (text, expected) => {
    expect(spans(text)).toEqual(expected);
  });

  it('say where nothing can be pushed', () => {
    expect(read('| <C | F |').problems[0]?.message).toMatch(/no bar stands before it/);
    expect(read('| C | < F |').problems[0]?.message).toMatch(/stands right before one/);
    expect(read('| C | <Xyz |').problems[0]).toMatchObject({ column: 8, length: 3 });
  });

  it('are printed as they are typed, and moved to another key', () => {
    for (const text of ['| C | <F | G <Am | C / / <G |', '| (1) G | <C | C <F / G |']) {
      expect(printChart(read(text).chart)).toBe(text);
    }
    expect(transposeChartText('| C | <F |', { steps: 1, halfSteps: 2 })).toBe('| D | <G |');
  });

  it('leave the bar before them as it is typed when their bar is edited', () => {
    const edit = editBar('| C | <F | G |', METRE, { kind: 'write', bar: 1, text: 'Am' });
    expect(edit?.text).toBe('| C | Am | G |');
  });

  it('are followed by the composer: the line has their notes from the push on', () => {
    const lesson = setChartText(newLesson('test', 'Test'), 'piece-1', '| C | <F | G | C |');
    const piece = linePiece(composePiece(lesson, 'piece-1').lesson, 'piece-1');
    const pushed = piece?.bars[0]?.notes.filter(({ start }) => start >= 3360) ?? [];
    expect(pushed.every(({ pitch }) => ['F', 'A', 'C'].includes(pitch.letter))).toBe(true);
    expect(pushed.length).toBeGreaterThan(0);
  });
});
