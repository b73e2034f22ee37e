import { describe, expect, test } from 'vitest';
import { bpm } from '../../src/core/base';
import {
  deriveSheets,
  explainedToStudent,
  HANDOUT_BLOCKS,
  keysStatement,
  type Lesson,
  type LineSheet,
  leaveOut,
  sampleLesson,
  setChartText,
  setPlaying,
} from '../../src/core/lesson';
import { proposeLadder } from '../../src/core/playing';
import { tempoText } from '../../src/handout/blocks/facts';
import { trickiestBar } from '../../src/handout/blocks/rhythm';
import { excerptOf } from '../../src/handout/excerpt';
import type { Mark } from '../../src/handout/layout/marks';
import type { HandoutLayout } from '../../src/handout/layout/pages';
import { points } from '../../src/handout/layout/paper';
import { applyPreset, HANDOUT_PRESETS } from '../../src/handout/model/presets';
import { layOutForPrint } from './drawn';
import { layOut, lessonWith, measure } from './lessons';

const words = (marks: readonly Mark[]) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));
const lineOf = (lesson: ReturnType<typeof lessonWith>): LineSheet => {
  const line = deriveSheets(lesson).find((sheet) => sheet.kind === 'line');
  if (line?.kind !== 'line') throw new Error('the sample has no line');
  return line;
};

describe('what the page says', () => {
  test('the usual sheet: title, facts, music, notes, cautions, page number', () => {
    const { pages, remarks } = layOut(lessonWith({}));
    expect(pages.length).toBe(1);
    expect(remarks).toEqual([]);
    const said = words(pages[0]?.marks ?? []);
    expect(said[0]).toBe('Ferry queue, week 3');
    const places = ['Ferry queue', 'Your own line', 'Notes', 'Hands and ears:', 'Page 1 of 1'].map((text) =>
      said.indexOf(text),
    );
    expect(places.every((place) => place > 0)).toBe(true);
    expect(places).toEqual([...places].sort((one, other) => one - other));
  });

  test('the parts stand in the teacher’s order, and what is off is not there', () => {
    const { pages } = layOut(lessonWith({ blocks: ['notes', 'chart', 'facts', 'practice'] }));
    const said = words(pages[0]?.marks ?? []);
    const order = ['Notes', 'Chords', 'Dm', 'Practice'].map((text) => said.indexOf(text));
    expect(order).toEqual([...order].sort((one, other) => one - other));
    expect(order.every((place) => place > 0)).toBe(true);
    expect(said).not.toContain('Hands and ears:');
    expect(pages.flatMap(({ marks }) => marks).some(({ kind }) => kind === 'system')).toBe(false);
  });

  test('the key statement is computed from the key of the line', () => {
    expect(keysStatement(lineOf(lessonWith({})))).toBe('F major: one flat (B♭)');
  });

  test.each([
    [{ count: 4, unit: 4 } as const, 126, '♩ = 126'],
    [{ count: 12, unit: 8 } as const, 80, '♩. = 80'],
    [{ count: 2, unit: 2 } as const, 90, '𝅗𝅥 = 90'],
  ])('a tempo counts the beat of its metre', (metre, tempo, text) => {
    expect(tempoText(metre, bpm(tempo))).toBe(text);
  });

  test.each(['chart', 'shapes', 'neck'] as const)('the music stands clear of the %s over it', (block) => {
    const { pages } = layOutForPrint(lessonWith({ blocks: ['facts', block, 'music'] }));
    const marks = pages[0]?.marks ?? [];
    const first = marks.findIndex(({ kind }) => kind === 'system');
    const bottoms = marks.slice(0, first).map((mark) => mark.y + ('height' in mark ? mark.height : 0));
    expect((marks[first]?.y ?? 0) - Math.max(...bottoms)).toBeGreaterThanOrEqual(8);
  });

  test('a piece goes without the parts that are left out for it, and the others keep them', () => {
    const plain = lessonWith({ blocks: ['facts', 'chart', 'music'] });
    const first = plain.pieces[0]?.id ?? '';
    const without = leaveOut(plain, first, 'chart', true);
    const said = (lesson: typeof plain) => layOut(lesson).pages.flatMap(({ marks }) => words(marks));
    expect(said(plain)).toContain('Chords');
    expect(said(without)).not.toContain('Chords');
    expect(said(without)).toContain('Your own line');
    expect(said(leaveOut(without, first, 'chart', false))).toEqual(said(plain));
    const blank = plain.pieces.find(({ kind }) => kind === 'blank')?.id ?? '';
    expect(said(leaveOut(plain, blank, 'music', true))).not.toContain('Your own line');
  });

  test('the practice steps are the teacher’s own, each with a box to tick', () => {
    const { pages } = layOut(
      lessonWith({ blocks: ['practice'], steps: ['Sing the roots.', ' ', 'Play it.'] }),
    );
    const marks = pages.flatMap((page) => page.marks);
    expect(words(marks)).toContain('Sing the roots.');
    expect(words(marks)).not.toContain('Clap the rhythm and count aloud; whisper the rests.');
    const boxes = marks.filter(({ kind }) => kind === 'box').length;
    expect(boxes).toBe(2 + proposeLadder(lineOf(lessonWith({})).tempo).length);
  });

  test('the rungs of the ladder are those of the playing sentence, where the teacher has set them', () => {
    const plain = lessonWith({ blocks: ['practice'] });
    const rungs = [
      { tempo: bpm(71), rounds: 2 },
      { tempo: bpm(93), rounds: 5 },
    ];
    const own = setPlaying(plain, plain.pieces[0]?.id ?? '', { ladder: { climbed: false, rungs } });
    const said = (lesson: typeof plain) => layOut(lesson).pages.flatMap(({ marks }) => words(marks));
    expect(said(plain)).toContain('63');
    expect(said(own)).toContain('71 (2 times)');
    expect(said(own)).toContain('93 (5 times)');
    expect(said(own)).not.toContain('63');
  });

  test('header, class or student stand at the head; later pages repeat title and student', () => {
    const chart = Array.from({ length: 10 }, () => '| F | Dm | Gm | C7 |').join('\n');
    const plain = lessonWith({ header: 'Evening class, room 4', student: 'For Mira' });
    const lesson = setChartText(plain, plain.pieces[0]?.id ?? '', chart);
    const { pages } = layOut(lesson);
    expect(pages.length).toBe(2);
    const [first, second] = pages.map(({ marks }) => words(marks));
    expect(first?.slice(0, 3)).toEqual(['Evening class, room 4', 'Ferry queue, week 3', 'For Mira']);
    expect(second?.slice(0, 2)).toEqual(['Ferry queue, week 3', 'For Mira']);
    expect(second?.at(-1)).toBe('Page 2 of 2');
  });
});

describe.each(['normal', 'large'] as const)('%s print', (print) => {
  test.each(['A4', 'Letter'] as const)('everything on %s stays inside the margins of 15 mm', (paper) => {
    const lesson = lessonWith(
      {
        print,
        paper,
        blocks: [...HANDOUT_BLOCKS],
        counting: true,
        header: 'h'.repeat(200),
        student: 's '.repeat(90),
      },
      { title: 'A title that goes on and on and on '.repeat(4), notes: 'Slowly. '.repeat(300) },
    );
    const { pages } = layOut(lesson);
    for (const { marks, width, height } of pages) {
      for (const mark of marks) {
        const [left, right] = extent(mark);
        expect(left).toBeGreaterThanOrEqual(points(15) - 0.01);
        expect(right).toBeLessThanOrEqual(width - points(15) + 0.01);
        expect(mark.y).toBeGreaterThanOrEqual(points(15) - 0.01);
        expect(mark.y).toBeLessThanOrEqual(height - points(15));
      }
    }
  });

  // Chords 12 points, text and tab 10, fingering 8, staff 6.5 mm (trade usage; see the sizes' own sources).
  test('nothing is smaller than print allows', () => {
    const { pages, scores } = layOut(lessonWith({ print, onePage: true, blocks: [...HANDOUT_BLOCKS] }));
    for (const mark of pages.flatMap(({ marks }) => marks)) {
      if (mark.kind === 'text') expect(mark.size).toBeGreaterThanOrEqual(print === 'large' ? 16 : 10);
    }
    for (const { systems } of scores) {
      for (const { staff } of systems)
        expect(staff.bottom - staff.top).toBeGreaterThanOrEqual(points(6.5) - 0.01);
    }
  });
});

/** Left and right end of a mark; a system is as wide as the page's text. */
function extent(mark: Mark): readonly [number, number] {
  switch (mark.kind) {
    case 'text': {
      const width = measure(mark.text, mark);
      const left = { start: mark.x, middle: mark.x - width / 2, end: mark.x - width }[mark.anchor];
      return [left, left + width];
    }
    case 'system':
      return [mark.x, mark.x];
    default:
      return [mark.x, mark.x + mark.width];
  }
}

describe('the wish for one page', () => {
  const bars = (rows: number, settings: Parameters<typeof lessonWith>[0]) => {
    const plain = lessonWith({ blocks: ['facts', 'music', 'notes', 'cautions'], ...settings });
    const chart = Array.from({ length: rows }, () => '| F | Dm | Gm | C7 |').join('\n');
    return layOut(setChartText(plain, plain.pieces[0]?.id ?? '', chart));
  };

  test('is met by moving things closer, within the limits of print, as is done without it where that takes a page less', () => {
    const staffOf = ({ scores }: HandoutLayout) => (scores[0]?.systems[0]?.scale ?? 0) * 40;
    expect(staffOf(bars(4, {}))).toBeCloseTo(points(7), 1);
    for (const onePage of [false, true]) {
      const layout = bars(6, { onePage });
      expect(layout.pages.length).toBe(1);
      expect(layout.remarks).toEqual([]);
      expect(staffOf(layout)).toBeCloseTo(points(6.5), 1);
    }
  });

  test('else it says what to leave out, and that is enough', () => {
    const blocks = ['facts', 'music', 'practice', 'notes', 'cautions'] as const;
    const { pages, remarks } = bars(7, { onePage: true, blocks });
    expect(pages.length).toBe(2);
    expect(remarks).toEqual([
      'The handout needs 2 pages. It fits on one without the blank bars and the practice steps.',
    ]);
    const lesson = lessonWith({ onePage: true, blocks: blocks.filter((block) => block !== 'practice') });
    const chart = Array.from({ length: 7 }, () => '| F | Dm | Gm | C7 |').join('\n');
    const long = setChartText(lesson, lesson.pieces[0]?.id ?? '', chart);
    expect(layOut({ ...long, pieces: long.pieces.slice(0, 1) }).pages.length).toBe(1);
  });

  test('and says so when the music alone is too long', () => {
    expect(bars(12, { onePage: true }).remarks[0]).toContain('The music alone does not fit');
  });

  test('no page is left with a few lines', () => {
    for (let rows = 1; rows <= 24; rows += 2) {
      const { pages } = bars(rows, {});
      const last = pages.at(-1);
      const depth = Math.max(...(last?.marks ?? []).filter(({ kind }) => kind !== 'text').map(({ y }) => y));
      if (pages.length > 1) expect(depth, `${rows * 4} bars`).toBeGreaterThan((last?.height ?? 0) * 0.25);
    }
  });
});

describe('a page that another follows', () => {
  const depth = (page: HandoutLayout['pages'][number]) =>
    Math.max(...page.marks.filter(({ kind }) => kind !== 'text').map((mark) => mark.y + heightOf(mark)));
  const heightOf = (mark: Mark): number => ('height' in mark ? mark.height : 0);
  const isFoot = (text: string) => /^Page|doctor|ear plugs|Hands and ears|Pain|BAPAM/.test(text);

  test.each(['normal', 'large'] as const)('reaches down to its foot, in %s print', (print) => {
    for (const sample of [0, 1]) {
      const lesson = {
        ...sampleLesson(sample, 'test'),
        handout: { ...lessonWith({ print }).handout, blocks: [...HANDOUT_BLOCKS] },
      };
      const { pages, scores } = layOutForPrint(lesson);
      expect(pages.length).toBeGreaterThan(1);
      const depthOf = (mark: Mark): number =>
        mark.y +
        (mark.kind === 'system' ? (scores[mark.score]?.systems[mark.system]?.height ?? 0) : heightOf(mark));
      const fills = pages.slice(0, -1).map((page) => {
        // The rule over the foot would count for every first page, however empty.
        const marks = page.marks.filter(
          (mark) => mark.kind !== 'rule' && !(mark.kind === 'text' && isFoot(mark.text)),
        );
        return Math.max(...marks.map(depthOf)) / page.height;
      });
      expect(Math.min(...fills), `sample ${sample}`).toBeGreaterThan(0.64);
      const average = fills.reduce((sum, fill) => sum + fill, 0) / fills.length;
      // Two joined staves of the organ are the tallest that moves to the next page as a whole.
      expect(average, `sample ${sample}`).toBeGreaterThan(0.76);
    }
  });

  test('is never stretched beyond its margins', () => {
    for (const page of layOut(lessonWith({ print: 'large', blocks: [...HANDOUT_BLOCKS] })).pages) {
      expect(depth(page)).toBeLessThanOrEqual(page.height - points(15));
    }
  });
});

describe('bars taken out of a line', () => {
  test('keep their number and notes, and lose the signs that lead elsewhere', () => {
    const plain = lessonWith({});
    const line = lineOf(setChartText(plain, plain.pieces[0]?.id ?? '', '|: F | Dm | Gm | C7 :| F |'));
    const excerpt = excerptOf(line, 2, 3);
    expect(excerpt.bars.map(({ written }) => written.number)).toEqual([3, 4]);
    expect(excerpt.chart.bars.some((bar) => bar.repeatStart || bar.repeatEnd !== null)).toBe(false);
    expect(() => excerptOf(line, 3, 9)).toThrow(RangeError);
  });

  test('the tricky bar is one with a rhythm off the beat; a march has none', () => {
    const line = lineOf(lessonWith({}));
    const onBeat = (start: number) => start % 960 === 0;
    const index = trickiestBar(line);
    if (index !== null) {
      const starts = line.bars[index]?.notes.map(({ note }) => note.start) ?? [];
      expect(starts[0] !== 0 || !starts.every(onBeat)).toBe(true);
    }
    const march = line.bars.map((bar) => ({ ...bar, notes: bar.notes.slice(0, 1) }));
    const first = march.map((bar) => ({
      ...bar,
      notes: bar.notes.map((one) => ({
        ...one,
        note: { ...one.note, start: line.bars[0]?.notes[0]?.note.start ?? one.note.start },
      })),
    }));
    expect(trickiestBar({ ...line, bars: first })).toBeNull();
  });
});

describe('what to practise', () => {
  const said = (test: boolean) => {
    const lesson = sampleLesson(0, 'sample');
    const [, , forTest] = HANDOUT_PRESETS;
    const handout = test && forTest ? applyPreset(lesson.handout, forTest) : lesson.handout;
    const { pages } = layOutForPrint({ ...lesson, handout });
    return pages
      .flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])))
      .join(' ');
  };

  test('is told on paper in a beginner’s words: what the line teaches, why there is a rest, where to listen', () => {
    const words = said(false);
    expect(words).toContain('What to practise');
    expect(words).toMatch(/: notes that belong to the chord\..+ they spell the chord \(an arpeggio\)/);
    expect(words).toMatch(/drums and chops carry the beat through the gap\./);
    expect(words).toMatch(/Listen (for the root on|to) beat one of/);
    // Whatever is told, as it is held against the notes by the line's own tests.
    const lesson = sampleLesson(0, 'sample');
    const [piece] = lesson.pieces;
    if (piece?.kind !== 'line') throw new Error('the sample begins with a line');
    const told = explainedToStudent(piece, lineOf(lesson), lesson.instrument, { brief: true });
    expect(words).toContain(told.join(' '));
  });

  test('is not told on a test', () => {
    expect(said(true)).not.toContain('What to practise');
  });
});

describe('what is filled in by hand', () => {
  const textsOf = (lesson: Lesson): readonly string[] =>
    layOut(lesson).pages.flatMap(({ marks }) =>
      marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])),
    );

  test('a test has name, date and mark before its first bar, and no hand position', () => {
    const test = HANDOUT_PRESETS.find(({ id }) => id === 'test');
    const { handout } = lessonWith({});
    const lesson = lessonWith(test === undefined ? {} : applyPreset(handout, test));
    const texts = textsOf(lesson);
    const places = ['Name', 'Date', 'Mark'].map((label) => texts.indexOf(label));
    expect(places[0]).toBeGreaterThan(0);
    expect(places).toEqual([0, 1, 2].map((step) => (places[0] ?? 0) + step));
    expect(texts.join(' ')).not.toContain('hand in position');
  });

  test('a test has no code that leads to the tab and the sound, whatever was printed before', () => {
    const { handout } = lessonWith({ code: true });
    const codes = HANDOUT_PRESETS.map((preset) => [preset.id, applyPreset(handout, preset).code]);
    expect(codes.filter(([, code]) => code !== true)).toEqual([['test', false]]);
  });

  test('a diary has a line for each of seven days, with the tempo reached', () => {
    for (const print of ['normal', 'large'] as const) {
      const texts = textsOf(lessonWith({ blocks: ['music', 'diary'], print }));
      expect(texts).toContain('Tempo reached');
      expect(texts.filter((text) => text.endsWith('day') && text !== 'Day')).toHaveLength(7);
    }
  });
});
