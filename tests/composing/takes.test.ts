import { describe, expect, it } from 'vitest';
import { finish } from '../../src/core/base';
import {
  anotherTake,
  composePiece,
  ideasFor,
  rankTakes,
  recallTake,
  severalTakes,
} from '../../src/core/composing';
import {
  deriveSheet,
  forgetTake,
  keepBar,
  type Lesson,
  type LinePiece,
  linePiece,
  MOST_TAKES,
  newLesson,
  parseLesson,
  printLesson,
  setChartText,
  setLevel,
  takeIdea,
  transposeTo,
} from '../../src/core/lesson';
import { isAnotherTake } from '../../src/core/line';

const PIECE = 'piece-1';

function line(lesson: Lesson): LinePiece {
  const piece = linePiece(lesson, PIECE);
  if (piece === null) throw new Error('the line piece is gone');
  return piece;
}

const notes = (lesson: Lesson) => line(lesson).bars.map((bar) => bar.notes);

const composed = (chart: string, level: 0 | 3 = 3): Lesson =>
  composePiece(setChartText(setLevel(newLesson('test', 'Test'), PIECE, level), PIECE, chart), PIECE).lesson;

const FIRST = composed('| F | Dm | Gm | C7 |');
const next = (lesson: Lesson) => anotherTake(lesson, PIECE).lesson;

const ranked = (lesson: Lesson) => {
  const sheet = deriveSheet(line(lesson), lesson.instrument, 'letters');
  return sheet.kind === 'line' ? rankTakes(line(lesson), sheet, lesson.instrument) : [];
};

describe('another take', () => {
  it('is another line each time, and every line that was heard is among the takes', () => {
    const heard = [FIRST];
    for (let turn = 0; turn < 4; turn += 1) heard.push(next(heard.at(-1) ?? FIRST));
    const last = heard.at(-1) ?? FIRST;
    heard.forEach((one, index) => {
      for (const other of heard.slice(index + 1))
        expect(isAnotherTake(notes(one), notes(other), [])).toBe(true);
      expect(line(last).takes.map((take) => take.bars.map((bar) => bar.notes))).toContainEqual(notes(one));
    });
    expect(parseLesson(printLesson(last))).toEqual({ ok: true, value: last });
  });

  it('leaves kept bars alone, and says so when every bar is kept', () => {
    const kept = keepBar(keepBar(FIRST, PIECE, 1, true), PIECE, 3, true);
    expect([1, 3].map((bar) => line(next(kept)).bars[bar])).toEqual(
      [1, 3].map((bar) => line(kept).bars[bar]),
    );
    const all = line(FIRST).bars.reduce((lesson, _, bar) => keepBar(lesson, PIECE, bar, true), FIRST);
    const { lesson, remarks } = anotherTake(all, PIECE);
    expect(lesson).toBe(all);
    expect(remarks).toEqual(['Every bar is kept, so there is nothing to compose.']);
  });

  it('says so when no line is left that was not heard yet', () => {
    let lesson = composed('| F |', 0);
    const remarks: string[] = [];
    for (let turn = 0; turn < MOST_TAKES + 4; turn += 1) {
      const take = anotherTake(lesson, PIECE);
      remarks.push(...take.remarks);
      lesson = take.lesson;
    }
    expect(remarks.some((remark) => /^(No new line is left|There is no other line)/.test(remark))).toBe(true);
    expect(line(lesson).takes.length).toBeLessThanOrEqual(MOST_TAKES);
  });
});

describe('takes', () => {
  it('bring a line back note for note, but for kept bars', () => {
    const second = next(FIRST);
    const first = line(second).takes.find((take) => take.seed === line(FIRST).seed);
    expect(notes(recallTake(second, PIECE, first?.id ?? ''))).toEqual(notes(FIRST));
    const kept = keepBar(second, PIECE, 0, true);
    const back = notes(recallTake(kept, PIECE, first?.id ?? ''));
    expect(back).toEqual([notes(second)[0], ...notes(FIRST).slice(1)]);
  });

  it('bring back what still has its chords after an edit of the chart', () => {
    const edited = setChartText(next(FIRST), PIECE, '| Eb | F | Dm | Gm |');
    const first = line(edited).takes[0]?.id ?? '';
    expect(notes(recallTake(edited, PIECE, first)).slice(1)).toEqual(notes(FIRST).slice(0, 3));
  });

  it('move along when the lesson is transposed, and back again', () => {
    const second = next(FIRST);
    const moved = transposeTo(second, PIECE, { letter: 'G', alteration: 0 });
    const back = transposeTo(moved, PIECE, { letter: 'F', alteration: 0 });
    expect(line(back).takes).toEqual(line(second).takes);
    const recalled = recallTake(moved, PIECE, line(moved).takes[0]?.id ?? '');
    expect(notes(recalled)).toEqual(notes(transposeTo(FIRST, PIECE, { letter: 'G', alteration: 0 })));
  });

  it('are ranked, the cheapest for the composer first and changed lines last, each with its own words', () => {
    const several = finish(severalTakes(FIRST, PIECE)).lesson;
    expect(notes(several)).toEqual(notes(FIRST));
    expect(line(several).takes.length).toBeGreaterThan(3);
    const costs = ranked(several).map(({ take }) => take.cost);
    expect(costs).toEqual([...costs].sort((one, other) => Number(one) - Number(other)));
    expect(ranked(several).filter(({ inLine }) => inLine)).toHaveLength(1);
    expect(ranked(several)[0]?.words).toMatch(/^The composer’s best/);

    const idea = ideasFor(line(FIRST), FIRST.instrument, 2).find(
      (each) => JSON.stringify(each.notes) !== JSON.stringify(notes(FIRST)[2]),
    );
    if (idea === undefined) throw new Error('there is no other idea');
    const changed = next(takeIdea(FIRST, PIECE, 2, idea));
    expect(ranked(changed).at(-1)?.words).toMatch(/^Changed by hand/);
  });

  it('can be forgotten', () => {
    const second = next(FIRST);
    const [first] = line(second).takes;
    const left = forgetTake(second, PIECE, first?.id ?? '');
    expect(line(left).takes).toEqual(line(second).takes.slice(1));
    expect(forgetTake(left, PIECE, first?.id ?? '')).toBe(left);
  });
});
