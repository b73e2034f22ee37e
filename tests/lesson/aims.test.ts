import { describe, expect, it } from 'vitest';
import { fret, midiOf } from '../../src/core/base';
import { composePiece } from '../../src/core/composing';
import {
  type AimTerms,
  copyPiece,
  deriveSheet,
  discardParked,
  editChartBar,
  type Lesson,
  type LinePiece,
  linePiece,
  newLesson,
  parseLesson,
  printLesson,
  setAim,
  setChartText,
  setLevel,
  setSectionAim,
} from '../../src/core/lesson';

const PIECE = 'piece-1';
const lessonWith = (chart: string): Lesson =>
  setChartText(setLevel(newLesson('test', 'Test'), PIECE, 3), PIECE, chart);

function line(lesson: Lesson): LinePiece {
  const piece = linePiece(lesson, PIECE);
  if (piece === null) throw new Error('the line piece is gone');
  return piece;
}

const forBar = (lesson: Lesson, bar: number, terms: AimTerms): Lesson =>
  setAim(lesson, PIECE, { kind: 'bar', id: line(lesson).bars[bar]?.id ?? '' }, terms);

/** Which bars an aim is for, by index; `parked` for one whose bar is away. */
const aimedBars = (lesson: Lesson) =>
  line(lesson).aims.flatMap(({ where }) => {
    if (where.kind !== 'bar') return [];
    const index = line(lesson).bars.findIndex(({ id }) => id === where.id);
    return [index >= 0 ? index : 'parked'];
  });

/** The names of the sections that an aim is for; `parked` for one that is away. */
const aimedSections = (lesson: Lesson) =>
  line(lesson).aims.flatMap(({ where }) => {
    if (where.kind !== 'section') return [];
    return [line(lesson).sections.find(({ id }) => id === where.id)?.name ?? 'parked'];
  });

const techniquesIn = (lesson: Lesson) => {
  const sheet = deriveSheet(line(lesson), lesson.instrument, 'letters');
  return sheet.kind === 'line' ? sheet.bars.map(({ analysis }) => analysis.techniques) : [];
};

const composed = (lesson: Lesson): Lesson => composePiece(lesson, PIECE).lesson;

describe('aims of a piece', () => {
  it('are kept in the composed line: for the line, a section and a bar', () => {
    const asked = setSectionAim(
      forBar(
        setAim(
          lessonWith('A:\n| F | Dm | Gm | C7 |\nB:\n| F | Bb | C7 | F |'),
          PIECE,
          { kind: 'line' },
          { position: fret(1) },
        ),
        2,
        { wanted: ['scale steps'] },
      ),
      PIECE,
      1,
      { forbidden: ['scale steps'] },
    );
    const lesson = composed(asked);
    expect(techniquesIn(lesson)[2]).toContain('scale steps');
    expect(techniquesIn(lesson).slice(4).flat()).not.toContain('scale steps');
    for (const note of line(lesson).bars.flatMap(({ notes }) => notes)) {
      expect(midiOf(note.pitch)).toBeLessThanOrEqual(47);
    }
    expect(parseLesson(printLesson(lesson))).toEqual({ ok: true, value: lesson });
  });

  it('for a hand position hold the hand there, on the tab too', () => {
    const lesson = composed(
      setAim(
        setLevel(lessonWith('| F | Dm | Gm | C7 |'), PIECE, 4),
        PIECE,
        { kind: 'line' },
        { position: fret(5) },
      ),
    );
    const sheet = deriveSheet(line(lesson), lesson.instrument, 'letters');
    if (sheet.kind !== 'line') throw new Error('the line piece is gone');
    for (const note of sheet.fingering.notes) {
      if (note !== null && note.fret > 0) expect([5, 6, 7, 8]).toContain(note.fret);
    }
  });

  it('for a section hold wherever it is used again by its name', () => {
    const lesson = composed(
      setSectionAim(lessonWith('A:\n| F | Dm | Gm | C7 |\nB:\n| F | Bb | C7 | F |\nA'), PIECE, 0, {
        forbidden: ['beat one silent', 'long silences'],
      }),
    );
    const techniques = techniquesIn(lesson);
    const outside = [...techniques.slice(0, 4), ...techniques.slice(8)].flat();
    expect(outside).not.toContain('beat one silent');
    expect(outside).not.toContain('long silences');
  });

  it('that ask nothing any more are gone, and asking the same of nothing changes nothing', () => {
    const lesson = forBar(lessonWith('| F | C7 |'), 1, { wanted: ['long silences'], density: 'sparse' });
    expect(line(lesson).aims).toHaveLength(1);
    expect(line(forBar(lesson, 1, { wanted: [], forbidden: [] })).aims).toEqual([]);
    expect(forBar(lesson, 0, { wanted: [] })).toBe(lesson);
  });

  it('of a copied piece are for the copy’s own bars and sections', () => {
    const lesson = setSectionAim(
      forBar(lessonWith('| F | C7 |'), 1, { wanted: ['long silences'] }),
      PIECE,
      0,
      {
        density: 'sparse',
      },
    );
    const copy = copyPiece(lesson, PIECE).pieces[1];
    if (copy?.kind !== 'line') throw new Error('there is no copy');
    expect(copy.aims.map(({ where }) => where)).toEqual([
      { kind: 'bar', id: copy.bars[1]?.id },
      { kind: 'section', id: copy.sections[0]?.id },
    ]);
    expect(copy.bars[1]?.id).not.toBe(line(lesson).bars[1]?.id);
  });
});

describe('an edit of the chart', () => {
  const asked = forBar(lessonWith('| F | Dm | Gm | C7 |'), 2, { wanted: ['long silences'] });

  it.each([
    [
      'a bar is put in front',
      (lesson: Lesson) => setChartText(lesson, PIECE, '| Bb | F | Dm | Gm | C7 |'),
      3,
    ],
    [
      'other chords are typed in the bar',
      (lesson: Lesson) => setChartText(lesson, PIECE, '| F | Dm | Eb | C7 |'),
      2,
    ],
    [
      'the bar is written over on the sheet',
      (lesson: Lesson) => editChartBar(lesson, PIECE, 2, { kind: 'write', text: 'Bb C' }),
      2,
    ],
    ['the bar is repeated', (lesson: Lesson) => editChartBar(lesson, PIECE, 2, { kind: 'repeat' }), 2],
  ])('leads the aim of a bar along when %s', (_, edit, bar) => {
    for (const lesson of [asked, composed(asked)]) expect(aimedBars(edit(lesson))).toEqual([bar]);
  });

  it('parks the aim of a bar that went away, and has it again when the bar is back', () => {
    const away = setChartText(asked, PIECE, '| F | Dm | C7 |');
    expect(aimedBars(away)).toEqual(['parked']);
    expect(line(away).parked).toHaveLength(1);
    expect(aimedBars(setChartText(away, PIECE, '| F | Dm | Gm | C7 |'))).toEqual([2]);
    expect(line(discardParked(away, PIECE)).aims).toEqual([]);
  });

  it('leads the aim of a section along: other chords, another place, another name', () => {
    const lesson = setSectionAim(lessonWith('A:\n| F | Dm |\nB:\n| Gm | C7 |'), PIECE, 1, {
      density: 'sparse',
    });
    for (const [chart, name] of [
      ['A:\n| F | Dm |\nB:\n| Am | D7 | Gm |', 'B'],
      ['B:\n| Gm | C7 |\nA:\n| F | Dm |', 'B'],
      ['A:\n| F | Dm |\nBridge:\n| Gm | C7 |', 'Bridge'],
      ['Intro:\n| C |\nA:\n| F | Dm |\nB:\n| Gm | C7 |', 'B'],
      ['A:\n| F | Dm | Gm | C7 |', 'parked'],
    ] as const) {
      expect(aimedSections(setChartText(lesson, PIECE, chart))).toEqual([name]);
    }
    const away = setChartText(lesson, PIECE, 'A:\n| F | Dm |');
    expect(line(away).parkedSections.map(({ name }) => name)).toEqual(['B']);
    expect(aimedSections(setChartText(away, PIECE, 'A:\n| F | Dm |\nB:\n| Gm | C7 |'))).toEqual(['B']);
  });
});
