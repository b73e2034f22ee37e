import { describe, expect, it } from 'vitest';
import { fret, midiNumber, ticks } from '../../src/core/base';
import { checkLesson, composePiece, type Finding } from '../../src/core/composing';
import {
  type AimTerms,
  type Lesson,
  linePiece,
  newLesson,
  setAim,
  setChartText,
  setLevel,
  setTempo,
} from '../../src/core/lesson';
import type { Level } from '../../src/core/line';
import { pitch } from '../theory/read';

const PIECE = 'piece-1';
const composed = (chart: string, level: Level = 3): Lesson =>
  composePiece(setChartText(setLevel(newLesson('test', 'Test'), PIECE, level), PIECE, chart), PIECE).lesson;

const barIds = (lesson: Lesson) => linePiece(lesson, PIECE)?.bars.map(({ id }) => id) ?? [];
const forBar = (lesson: Lesson, bar: number, terms: AimTerms): Lesson =>
  setAim(lesson, PIECE, { kind: 'bar', id: barIds(lesson)[bar] ?? '' }, terms);

/** A lesson with other notes in one bar: `F1 A1`, quarters from beat one. */
function writing(lesson: Lesson, bar: number, text: string): Lesson {
  const notes = text.split(' ').map((each, index) => ({
    start: ticks(960 * index),
    duration: ticks(960),
    pitch: pitch(each),
  }));
  return {
    ...lesson,
    pieces: lesson.pieces.map((piece) =>
      piece.kind === 'line'
        ? {
            ...piece,
            bars: piece.bars.map((each, index) =>
              index === bar ? { ...each, notes, origin: 'hand' } : each,
            ),
          }
        : piece,
    ),
  };
}

function found(lesson: Lesson, says: RegExp): Finding {
  const findings = checkLesson(lesson);
  const finding = findings.find(({ message }) => says.test(message));
  if (finding === undefined)
    throw new Error(`Nothing says ${says}: ${findings.map(({ message }) => message).join(' ')}`);
  return finding;
}

/** The finding is mended by its repair in one change, and nothing of its side is worse than before. */
function expectMended(lesson: Lesson, says: RegExp, label: RegExp): Lesson {
  const finding = found(lesson, says);
  const repair = finding.repair?.() ?? null;
  expect(repair?.label).toMatch(label);
  const mended = repair?.apply(lesson) ?? lesson;
  const ofSide = (each: Lesson) => checkLesson(each).filter(({ about }) => about === finding.about);
  expect(ofSide(mended).map(({ message }) => message)).not.toContain(finding.message);
  expect(ofSide(mended).length).toBeLessThan(ofSide(lesson).length);
  return mended;
}

describe('repairs of the music', () => {
  const LESSON = composed('| F | Dm | Gm | C7 |');

  it.each([
    [
      'a note spelled against its chord',
      writing(LESSON, 3, 'C2 E2 G1 A#1'),
      /A♯ is written where C7 has B♭/,
      /^Write B♭$/,
    ],
    ['a note that contradicts the chord', writing(LESSON, 0, 'F1 A1 C2 Db2'), /D♭ contradicts F/, /^Play C$/],
    [
      'a chord without its root and fifth',
      writing(LESSON, 1, 'F1 E1 F1 E1'),
      /neither its root nor its fifth/,
      /^Play D/,
    ],
  ])('write the right note for %s', (_, lesson, says, label) => {
    expectMended(lesson, says, label);
  });

  it('make a bar simpler where a single note would not do', () => {
    const busy = setTempo(setLevel(writing(LESSON, 0, 'F1 A1 C2 A1'), PIECE, 0), PIECE, 140);
    const mended = expectMended(busy, /^Bar 1 asks for .* notes a second/, /^Make bar 1 simpler/);
    const bar = linePiece(mended, PIECE)?.bars[0];
    expect(bar?.origin).toBe('idea');
    // What is heard on the strong beats stays.
    expect(bar?.notes.map(({ start }) => Number(start))).toEqual(expect.arrayContaining([0, 1920]));
  });

  it('set the tempo to the nearest at which the feel is played', () => {
    const mended = expectMended(
      setTempo(LESSON, PIECE, 60),
      /60 bpm lies outside/,
      /^Set the tempo to \d+ bpm$/,
    );
    expect(linePiece(mended, PIECE)?.tempo).toBe(110);
  });

  it('transpose to the nearest key that the level reads', () => {
    expectMended(composed('| Db | Bbm | Ebm | Ab7 |', 2), /5 accidentals/, /^Transpose the lesson to /);
  });
});

describe('aims that the line does not keep', () => {
  const LESSON = composed('| F | Dm | Gm | C7 | F | Bb | C7 | F |');

  it('are told with the bar and the aim, and the nearest idea keeps them', () => {
    const asked = forBar(writing(LESSON, 2, 'G1 G1 G1 G1'), 2, { density: 'sparse' });
    const finding = found(asked, /^Bar 3 does not keep its aim: fewer notes than beats\. It has 4 notes\.$/);
    expect(finding.bar).toBe(2);
    expectMended(asked, /^Bar 3 does not keep its aim/, /^Take an idea for bar 3 that keeps it$/);
  });

  it.each<[string, AimTerms, RegExp, RegExp, string?]>([
    [
      'a technique of a later level',
      { wanted: ['scale steps'] },
      /scale steps to be shown/,
      /^Do not ask bar 2 for scale steps$/,
    ],
    [
      'more silence than any rhythm has',
      { silence: 0.9 },
      /at least 90 % of each bar silent/,
      /^Ask bar 2 for \d+ % of silence$/,
    ],
    [
      'a range without the root',
      { lowest: midiNumber(39), highest: midiNumber(41) },
      /from E♭2 to F2/,
      /^Let bar 2 reach from /,
    ],
    [
      'a position without root and fifth',
      { position: fret(9) },
      /the hand in position IX/,
      /^Move the hand to position [IV]+ in bar 2$/,
      '| F | B♭7 | F |',
    ],
  ])(
    'yield as little as they must where they cannot be kept: %s',
    (_, terms, says, label, chart = '| F | C7 | F |') => {
      const asked = forBar(composed(chart, 1), 1, terms);
      expectMended(asked, new RegExp(`^Bar 2 does not keep its aim: ${says.source}`), label);
    },
  );

  it('of the line yield in one bar alone', () => {
    const asked = composePiece(
      setAim(composed('| F | C7 | F |', 1), PIECE, { kind: 'line' }, { silence: 0.9 }),
      PIECE,
    ).lesson;
    const before = checkLesson(asked).filter(({ about }) => about === 'aims').length;
    const mended = expectMended(asked, /^Bar 1 does not keep an aim of the line/, /^Ask bar 1 for/);
    expect(checkLesson(mended).filter(({ about }) => about === 'aims')).toHaveLength(before - 1);
  });

  it('that no bar of a phrase shows are told for the phrase', () => {
    const asked = setAim(
      writing(composed('| F |', 1), 0, 'F1'),
      PIECE,
      { kind: 'line' },
      { wanted: ['octave'] },
    );
    expectMended(
      asked,
      /^Bar 1 does not show octave, which is to be shown in every phrase of the line/,
      /octave$/,
    );
  });
});
