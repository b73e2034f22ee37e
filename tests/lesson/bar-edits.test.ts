import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fret, ticks } from '../../src/core/base';
import { barSignature, parseChart, usesOf } from '../../src/core/chart';
import { composePiece } from '../../src/core/composing';
import {
  type ChartBarEdit,
  changeLine,
  deriveSheet,
  editChartBar,
  keepBar,
  type Lesson,
  type LinePiece,
  linePiece,
  newLesson,
  possibleEdits,
  setChartText,
  takeSuggestion,
  typedChord,
} from '../../src/core/lesson';
import { randomCharts } from '../chart/random-charts';

const PIECE = 'piece-1';

const lessonWith = (chart: string): Lesson =>
  composePiece(setChartText(newLesson('test', 'Test'), PIECE, chart), PIECE).lesson;

function line(lesson: Lesson): LinePiece {
  const piece = linePiece(lesson, PIECE);
  if (piece === null) throw new Error('the line piece is gone');
  return piece;
}

/** The chart as the sheet shows it, each bar by its harmony. */
function shown(lesson: Lesson): readonly string[] {
  const sheet = deriveSheet(line(lesson), lesson.instrument, lesson.noteNames);
  return sheet.kind === 'line' ? sheet.chart.bars.map(barSignature) : [];
}

const edit = (lesson: Lesson, bar: number, change: ChartBarEdit) => editChartBar(lesson, PIECE, bar, change);

describe('editing the chart on the sheet', () => {
  const written = lessonWith('Verse:\n| F | F | Gm C7 | % |\nChorus:\n| Bb | F |');

  it.each<[string, number, ChartBarEdit, string]>([
    ['writes chords over a bar', 1, { kind: 'write', text: 'Dm' }, '| F | Dm | Gm C7 | % |'],
    ['puts a bar in front', 0, { kind: 'insert before' }, '| F | F | F | Gm C7 | % |'],
    ['puts a bar behind, in the same section', 3, { kind: 'insert after' }, '| F | F | Gm C7 | % | % |'],
    ['repeats a bar', 2, { kind: 'repeat' }, '| F | F | Gm C7 | % | % |'],
    ['splits a bar by its chords', 2, { kind: 'split' }, '| F | F | Gm | C7 | Gm C7 |'],
    ['removes a bar', 1, { kind: 'remove' }, '| F | Gm C7 | % |'],
  ])('%s', (_, bar, change, expected) => {
    const edited = edit(written, bar, change);
    expect(line(edited).chartText).toBe(`Verse:\n${expected}\nChorus:\n| Bb | F |`);
  });

  it('joins bars of two keys with the chords that their numerals mean', () => {
    const joined = edit(lessonWith('| (key: C) I | (key: G) I | IV |'), 0, { kind: 'join' });
    expect(line(joined).chartText).toBe('| (key: C) I G | (key: G) IV |');
    expect(shown(joined)).toEqual(['C@1920 G@1920', 'C@3840']);
    const symbols = edit(lessonWith('| (key: C) C | (key: Eb) Bb7 | Eb |'), 0, { kind: 'join' });
    expect(line(symbols).chartText).toBe('| (key: C) C Bb7 | (key: Eb) Eb |');
  });

  it('gives a repeated bar its notes again', () => {
    const { bars } = line(edit(written, 4, { kind: 'repeat' }));
    expect(bars[5]?.notes).toEqual(line(written).bars[4]?.notes);
    expect(bars[5]?.id).not.toBe(bars[4]?.id);
  });

  it('parks the notes of the bar that was meant, also among bars of the same chord', () => {
    const kept = keepBar(written, PIECE, 1, true);
    const edited = edit(kept, 0, { kind: 'remove' });
    expect(line(edited).bars[0]).toEqual(line(kept).bars[1]);
    expect(line(edited).parked).toEqual([line(kept).bars[0]]);
  });

  it('keeps the notes under a chord that cannot be read yet, and under the same chord typed otherwise', () => {
    expect(line(edit(written, 0, { kind: 'write', text: 'F?' })).bars).toEqual(line(written).bars);
    expect(line(edit(written, 2, { kind: 'write', text: 'G- C7' })).bars).toEqual(line(written).bars);
  });

  it('leaves what cannot be said as it is', () => {
    expect(edit(written, 0, { kind: 'write', text: 'F | G' })).toBe(written);
    expect(edit(written, 0, { kind: 'split' })).toBe(written);
    const again = lessonWith('A:\n| F | C |\nA');
    expect(typedChord(line(again), 2)).toBeNull();
    expect(edit(again, 2, { kind: 'remove' })).toBe(again);
  });

  it('follows a section that is used again by its name', () => {
    const edited = edit(lessonWith('A:\n| F | C |\nA'), 0, { kind: 'write', text: 'Dm' });
    expect(shown(edited)).toEqual(['Dm@3840', 'C@3840', 'Dm@3840', 'C@3840']);
    expect(line(edited).bars.map((bar) => bar.notes.length > 0)).toEqual([false, true, false, true]);
  });

  it('leaves the line of every other bar unchanged, and text and sheet show one chart', () => {
    const chords = fc.constantFrom('F', 'Dm', 'Gm C7', '%', 'Bb / F /');
    const charts = fc
      .array(fc.array(chords, { minLength: 1, maxLength: 4 }), { minLength: 1, maxLength: 3 })
      .map((rows) => rows.map((row) => `| ${['F', ...row].join(' | ')} |`).join('\n'));
    const edits = fc.constantFrom<ChartBarEdit>(
      { kind: 'write', text: 'Am' },
      { kind: 'insert before' },
      { kind: 'insert after' },
      { kind: 'repeat' },
      { kind: 'remove' },
    );
    fc.assert(
      fc.property(charts, fc.nat(), edits, (chart, where, change) => {
        const lesson = lessonWith(chart);
        const before = line(lesson).bars;
        const bar = where % before.length;
        const after = line(edit(lesson, bar, change));
        expect(after.bars.slice(0, bar)).toEqual(before.slice(0, bar));
        const rest = before.slice(bar + 1);
        expect(rest.length === 0 ? [] : after.bars.slice(-rest.length)).toEqual(rest);
        const typed = setChartText(newLesson('test', 'Test'), PIECE, after.chartText);
        expect(after.bars.map((each) => each.harmony)).toEqual(shown(typed));
      }),
      { seed: 20261125, numRuns: 12 },
    );
  }, 60_000);
});

/** A lesson whose every bar holds one note that no other bar has. */
function marked(chart: string): Lesson {
  const lesson = setChartText(newLesson('test', 'Test'), PIECE, chart);
  return changeLine(lesson, PIECE, (piece) => ({
    ...piece,
    bars: piece.bars.map((bar, index) => ({
      ...bar,
      kept: index % 3 === 0,
      ...(index % 2 === 0 ? { position: fret(3) } : {}),
      notes: [
        { start: ticks(index), duration: ticks(240), pitch: { letter: 'C', alteration: 0, octave: 2 } },
      ],
    })),
  }));
}

describe('editing any chart on the sheet', () => {
  const kinds = fc.constantFrom<ChartBarEdit>(
    { kind: 'write', text: 'Em' },
    { kind: 'write', text: 'E?' },
    { kind: 'insert before' },
    { kind: 'insert after' },
    { kind: 'repeat' },
    { kind: 'split' },
    { kind: 'join' },
    { kind: 'remove' },
  );

  /** The lesson after an edit that is looked at from all sides. */
  function tried(lesson: Lesson, [change, where]: readonly [ChartBarEdit, number]): Lesson {
    const before = line(lesson);
    if (before.bars.length === 0) return lesson;
    const bar = where % before.bars.length;
    const edited = edit(lesson, bar, change);
    const after = line(edited);
    if (change.kind !== 'write') expect(edited !== lesson).toBe(possibleEdits(before, bar).has(change.kind));
    const { chart } = parseChart(before.chartText, before.metre);
    const touched = [...usesOf(chart, bar), ...(change.kind === 'join' ? usesOf(chart, bar + 1) : [])];
    const others = before.bars.filter((_, index) => !touched.includes(index));
    expect(after.bars.filter((each) => others.some(({ id }) => id === each.id))).toEqual(others);
    const now = new Map([...after.bars, ...after.parked].map((each) => [each.id, each]));
    expect(now.size).toBe(after.bars.length + after.parked.length);
    const withNotes = [...before.bars, ...before.parked].filter(({ notes }) => notes.length > 0);
    expect(withNotes.map(({ id }) => now.get(id))).toEqual(withNotes);
    const readable = parseChart(after.chartText, after.metre).chart.bars.map((each, index) =>
      barSignature(each).includes('?') ? after.bars[index]?.harmony : barSignature(each),
    );
    expect(after.bars.map(({ harmony }) => harmony)).toEqual(readable);
    return edited;
  }

  it('leaves every other bar as it was, and no note gets lost', () => {
    fc.assert(
      fc.property(
        randomCharts,
        fc.array(fc.tuple(kinds, fc.nat()), { minLength: 1, maxLength: 4 }),
        (text, steps) => {
          steps.reduce(tried, marked(text));
        },
      ),
      { seed: 20261128, numRuns: 200 },
    );
  }, 60_000);
});

describe('a problem of the chart', () => {
  it('is mended by what was probably meant', () => {
    const lesson = lessonWith('| F | Gmni |');
    const sheet = deriveSheet(line(lesson), lesson.instrument, lesson.noteNames);
    const problem = sheet.kind === 'line' ? sheet.problems[0] : undefined;
    expect(problem?.suggestion).toBe('Gm');
    expect(problem && line(takeSuggestion(lesson, PIECE, problem)).chartText).toBe('| F | Gm |');
  });
});
