import { describe, expect, test } from 'vitest';
import { composePiece } from '../../src/core/composing';
import {
  type Lesson,
  newLesson,
  removePiece,
  SAMPLE_TITLES,
  sampleLesson,
  setChartText,
  setHandout,
  setLevel,
  setNotes,
  setTempo,
  setTitle,
  transposeTo,
} from '../../src/core/lesson';
import {
  ANY_LESSON,
  choicesOn,
  factsOf,
  findOnShelf,
  isFacts,
  isLargeChange,
  isWorthKeeping,
  type OnShelf,
  type ShelfWish,
  statesToLetGo,
} from '../../src/core/shelf';

const first = (lesson: Lesson): string => lesson.pieces[0]?.id ?? '';
const samples = SAMPLE_TITLES.map((_, index) => sampleLesson(index, `sample-${index}`));
const place = (lesson: Lesson, usedAt = 0): OnShelf => ({
  id: lesson.id,
  title: lesson.title,
  savedAt: 0,
  usedAt,
  facts: factsOf(lesson),
});
const titles = (lessons: readonly OnShelf[], wish: Partial<ShelfWish>): readonly string[] =>
  findOnShelf(lessons, { ...ANY_LESSON, ...wish }).map(({ title }) => title);

const made = (
  title: string,
  chart: string,
  more: (lesson: Lesson) => Lesson = (lesson) => lesson,
): OnShelf => {
  const typed = setTitle(newLesson(title, title), title);
  return place(more(setChartText(typed, first(typed), chart)));
};

describe('facts of a lesson', () => {
  test('tell key, feel, level and techniques of every line, and are read again as facts', () => {
    for (const sample of samples) {
      const facts = factsOf(sample);
      const lines = sample.pieces.filter((piece) => piece.kind === 'line');
      expect(new Set(facts.feels)).toEqual(new Set(lines.map(({ feel }) => feel)));
      expect(new Set(facts.levels)).toEqual(new Set(lines.map(({ level }) => level)));
      expect(new Set(facts.techniques)).toEqual(new Set(lines.flatMap(({ techniques }) => techniques)));
      expect(isFacts(JSON.parse(JSON.stringify(facts)))).toBe(true);
    }
  });

  test.each([
    ['nothing', null],
    ['of another version', { ...factsOf(newLesson('a', 'a')), version: 99 }],
    ['a feel that is none', { ...factsOf(newLesson('a', 'a')), feels: ['waltzing'] }],
    ['a text that is a number', { ...factsOf(newLesson('a', 'a')), text: 7 }],
    ['a list', []],
  ])('%s is no facts', (_, value) => expect(isFacts(value)).toBe(false));

  test('a line without a chart has no key that could be found', () => {
    expect(factsOf(newLesson('a', 'a')).keys).toEqual([]);
    expect(made('A', '| B♭ | E♭ F7 | B♭ |').facts.keys).toEqual(['B♭ major']);
  });
});

describe('the shelf', () => {
  const lessons = [
    made('Harbour steps', '| F | B♭ | C7 | F |', (lesson) =>
      setHandout(setNotes(lesson, 'Übung für den Daumen'), { student: 'Ada' }),
    ),
    made('Night bus', 'Verse:\n| Dm | Gm | A7 | Dm |', (lesson) =>
      setHandout(setLevel(lesson, first(lesson), 5), { student: 'Ben' }),
    ),
    made('Week 10', '| G | C | D7 | G |'),
    made('Week 9', '| G | C | D7 | G |'),
  ];

  test.each([
    ['a word of the title', { words: 'harbour' }, ['Harbour steps']],
    ['a word of the notes, without its marks', { words: 'ubung' }, ['Harbour steps']],
    ['chords as they are typed or drawn', { words: 'bb c7' }, ['Harbour steps']],
    ['a section of the chart', { words: 'verse' }, ['Night bus']],
    ['a student', { words: 'ada' }, ['Harbour steps']],
    ['words that stand apart', { words: '  bus   ben ' }, ['Night bus']],
    ['words of two lessons', { words: 'ada ben' }, []],
  ] as const)('finds %s', (_, wish, expected) => expect(titles(lessons, wish)).toEqual(expected));

  test('sifts by student, key and level', () => {
    expect(titles(lessons, { student: 'Ben' })).toEqual(['Night bus']);
    expect(titles(lessons, { key: 'F major' })).toEqual(['Harbour steps']);
    expect(titles(lessons, { level: 5 })).toEqual(['Night bus']);
    expect(titles(lessons, { key: 'F major', student: 'Ben' })).toEqual([]);
    const choices = choicesOn(lessons);
    expect(choices.students).toEqual(['Ada', 'Ben']);
    expect(choices.keys).toEqual(['D minor', 'F major', 'G major']);
  });

  test('stands in the order that is asked for, numbers as people count them', () => {
    expect(titles(lessons, { order: 'title' })).toEqual(['Harbour steps', 'Night bus', 'Week 9', 'Week 10']);
    const used = lessons.map((lesson, index) => ({ ...lesson, usedAt: [2, 4, 1, 3][index] ?? 0 }));
    expect(titles(used, { order: 'used' })).toEqual(['Night bus', 'Week 9', 'Harbour steps', 'Week 10']);
  });

  test('each choice that it offers finds what has it and nothing else', () => {
    const all = [...samples.map((sample) => place(sample)), ...lessons];
    const { feels, techniques, keys, levels } = choicesOn(all);
    for (const feel of feels)
      expect(findOnShelf(all, { ...ANY_LESSON, feel }).length).toBe(
        all.filter(({ facts }) => facts.feels.includes(feel)).length,
      );
    expect(Math.min(feels.length, techniques.length, keys.length, levels.length)).toBeGreaterThan(1);
  });
});

describe('a large change', () => {
  const [sample] = samples;
  if (sample === undefined) throw new Error('There is a sample.');
  const id = first(sample);

  test.each([
    ['another chart', (lesson: Lesson) => setChartText(lesson, id, '| Am | Dm | E7 | Am |')],
    ['no chart', (lesson: Lesson) => setChartText(lesson, id, '')],
    ['another key', (lesson: Lesson) => transposeTo(lesson, id, { letter: 'A', alteration: 0 })],
    ['a line composed anew', (lesson: Lesson) => composePiece(setLevel(lesson, id, 0), id).lesson],
    ['other notes for the student', (lesson: Lesson) => setNotes({ ...lesson, notes: '' }, 'Other')],
  ])('%s', (what, change) => {
    const before = what.startsWith('other notes')
      ? setNotes(sample, 'Play it slowly, then by heart.')
      : sample;
    expect(isLargeChange(before, change(before))).toBe(true);
  });

  test('a piece that goes', () => {
    const two = {
      ...sample,
      pieces: [...sample.pieces, ...sample.pieces.map((piece) => ({ ...piece, id: `${piece.id} 2` }))],
    };
    expect(isLargeChange(two, removePiece(two, id))).toBe(true);
  });

  test.each([
    ['another title', (lesson: Lesson) => setTitle(lesson, 'Other')],
    ['another tempo', (lesson: Lesson) => setTempo(lesson, id, 77)],
    [
      'one bar of many',
      (lesson: Lesson): Lesson => ({
        ...lesson,
        pieces: lesson.pieces.map((piece) =>
          piece.kind === 'line'
            ? { ...piece, bars: piece.bars.map((bar, index) => (index === 0 ? { ...bar, notes: [] } : bar)) }
            : piece,
        ),
      }),
    ],
    ['nothing', (lesson: Lesson) => lesson],
  ])('is not %s', (_, change) => expect(isLargeChange(sample, change(sample))).toBe(false));

  test('an empty lesson holds nothing that could be missed', () => {
    expect(isWorthKeeping(newLesson('a', 'New lesson'))).toBe(false);
    expect(isWorthKeeping(sample)).toBe(true);
  });
});

test('of the states that are kept the oldest of each kind are let go', () => {
  const states = Array.from({ length: 100 }, (_, at) => ({
    key: `${at}`,
    at,
    before: at % 2 === 0 ? 'compose line' : null,
  }));
  const gone = new Set(statesToLetGo(states));
  const kept = states.filter(({ key }) => !gone.has(key));
  expect(kept.filter(({ before }) => before !== null).map(({ at }) => at)[0]).toBe(60);
  expect(kept.filter(({ before }) => before === null).map(({ at }) => at)[0]).toBe(41);
});
