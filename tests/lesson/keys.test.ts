import { describe, expect, it } from 'vitest';
import { midiOf } from '../../src/core/base';
import { chordFunctions } from '../../src/core/chart';
import { composePiece } from '../../src/core/composing';
import {
  deriveSheet,
  deriveSheets,
  type Lesson,
  type LineSheet,
  linePiece,
  newLesson,
  parseLesson,
  printLesson,
  setChartText,
  setKey,
  setNoteNames,
  writeSectionKey,
} from '../../src/core/lesson';
import { describeKey } from '../../src/core/theory';
import { key } from '../theory/read';

const PIECE = 'piece-1';
const lessonWith = (chart: string): Lesson => setChartText(newLesson('test', 'Test'), PIECE, chart);

function sheetOf(lesson: Lesson): LineSheet {
  const piece = linePiece(lesson, PIECE);
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (sheet?.kind !== 'line') throw new Error('the line piece is gone');
  return sheet;
}

/** The key of every bar, as staff, tab and files draw it. */
const keysOf = (lesson: Lesson) => {
  const sheet = sheetOf(lesson);
  return sheet.chart.bars.map((bar) => describeKey(bar.key ?? sheet.key));
};

const TWO_KEYS = 'Verse:\n| C | F | G7 | C |\nMiddle:\n| E | A | B7 | E |';

describe('the key of a piece', () => {
  it('is found for each section, and the teacher’s word goes before', () => {
    expect(keysOf(lessonWith(TWO_KEYS))).toEqual([
      ...Array.from({ length: 4 }, () => 'C major'),
      ...Array.from({ length: 4 }, () => 'E major'),
    ]);
    const other = lessonWith('Verse:\n| F | Dm | Gm | C7 |\nMiddle:\n| E | A | B7 | E | A | B7 | E | E |');
    expect(describeKey(sheetOf(other).key)).toBe('F major');
    expect(new Set(keysOf(setKey(lessonWith(TWO_KEYS), PIECE, key('C'))))).toEqual(new Set(['C major']));
  });

  it('is the one the chart names, from there on', () => {
    const lesson = lessonWith('(key: D) | G | A |\n(key: Bm) | Bm | F#m |');
    expect(keysOf(lesson)).toEqual(['D major', 'D major', 'B minor', 'B minor']);
    expect(describeKey(sheetOf(lesson).key)).toBe('D major');
  });

  it('of a section that is clearly another than the teacher chose is offered, and written in the chart', () => {
    const chosen = setKey(lessonWith(`${TWO_KEYS}\nEnd:\n| C | F | G7 | C |`), PIECE, key('C'));
    const [offer, ...others] = sheetOf(chosen).otherKeys;
    expect(others).toEqual([]);
    expect(offer && [offer.section, describeKey(offer.key)]).toEqual([1, 'E major']);
    const written = writeSectionKey(chosen, PIECE, 1, key('E'));
    expect(keysOf(written).join()).toBe(
      [4, 4, 4].map((_, at) => Array(4).fill(`${['C', 'E', 'C'][at]} major`)).join(),
    );
    expect(sheetOf(written).otherKeys).toEqual([]);
    expect(linePiece(written, PIECE)?.bars).toEqual(linePiece(chosen, PIECE)?.bars);
  });

  it('after a section with a key of its own comes back where a section is used again by its name', () => {
    const chosen = setKey(lessonWith(`${TWO_KEYS}\nVerse`), PIECE, key('C'));
    const written = writeSectionKey(chosen, PIECE, 1, key('E'));
    expect(sheetOf(written).problems).toEqual([]);
    expect(keysOf(written).slice(4, 8)).toEqual(Array(4).fill('E major'));
    expect(keysOf(written).slice(8)).toEqual(Array(4).fill('C major'));
  });

  it('is written for every use of a section, and nothing after it is read in it', () => {
    const chart = `${TWO_KEYS}\nMiddle\n| C | F | G7 | C | ; out`;
    const chosen = setKey(lessonWith(chart), PIECE, key('C'));
    const written = writeSectionKey(chosen, PIECE, 1, key('E'));
    expect(linePiece(written, PIECE)?.chartText).toBe(
      'Verse:\n| C | F | G7 | C |\nMiddle:\n| (key: E) E | A | B7 | E |\nMiddle\n| (key: C) C | F | G7 | C | ; out',
    );
    expect(keysOf(written).slice(4, 12)).toEqual(Array(8).fill('E major'));
    expect(keysOf(written).slice(12)).toEqual(Array(4).fill('C major'));
  });

  it('of a third section is still offered and written when the second one has its own', () => {
    const chart = `${TWO_KEYS}\nTurn:\n| Bb | Eb | F7 | Bb |\nVerse`;
    const chosen = setKey(lessonWith(chart), PIECE, key('C'));
    const second = writeSectionKey(chosen, PIECE, 1, key('E'));
    expect(sheetOf(second).otherKeys).toEqual([{ section: 2, key: key('Bb') }]);
    const third = writeSectionKey(second, PIECE, 2, key('Bb'));
    expect(linePiece(third, PIECE)?.chartText).toBe(
      'Verse:\n| C | F | G7 | C |\nMiddle:\n| (key: E) E | A | B7 | E |\nTurn:\n| (key: Bb) Bb | Eb | F7 | Bb |\nVerse',
    );
    expect(sheetOf(third).otherKeys).toEqual([]);
    expect(keysOf(third).slice(12)).toEqual([...Array(4).fill('C major')]);
  });

  it('is written over numerals with the chords that they meant', () => {
    const numerals = 'Verse:\n| I | IV | V7 | I |\nMiddle:\n| III | VI | VII7 | III |';
    const chosen = setChartText(setKey(lessonWith(TWO_KEYS), PIECE, key('C')), PIECE, numerals);
    const written = writeSectionKey(chosen, PIECE, 1, key('E'));
    expect(linePiece(written, PIECE)?.chartText).toBe(
      'Verse:\n| I | IV | V7 | I |\nMiddle:\n| (key: E) E | A | B7 | E |',
    );
  });

  it('gives each chord its numeral in the key of its section', () => {
    const { chart, key: home } = sheetOf(lessonWith(TWO_KEYS));
    const numerals = chordFunctions(chart, home).map((bar) => bar[0]?.numeral);
    expect(numerals).toEqual(['I', 'IV', 'V7', 'I', 'I', 'IV', 'V7', 'I']);
  });

  it('gives numerals their chords, which need a key to be chosen', () => {
    const lesson = lessonWith('| I vi | IV V7 | 1 6- | 4 5 |');
    expect(sheetOf(lesson).problems[0]?.message).toMatch(/choose one/);
    const inG = setKey(lesson, PIECE, key('G'));
    expect(sheetOf(inG).problems).toEqual([]);
    expect(linePiece(inG, PIECE)?.bars.map((bar) => bar.harmony)).toEqual([
      'G@1920 Em@1920',
      'C@1920 D7@1920',
      'G@1920 Em@1920',
      'C@1920 D@1920',
    ]);
    expect(composePiece(inG, PIECE).lesson).not.toBe(inG);
  });

  it('takes the line of a numeral chart along, and brings it back', () => {
    for (const chart of ['| I | vi | IV | V7 |', '| 1 | 6- | 4 5 | 1 |']) {
      const inG = composePiece(setKey(lessonWith(chart), PIECE, key('G')), PIECE).lesson;
      const inA = setKey(inG, PIECE, key('A'));
      const [old, moved] = [inG, inA].map((lesson) => linePiece(lesson, PIECE));
      expect(moved?.parked).toEqual([]);
      expect(moved?.bars.map(({ id }) => id)).toEqual(old?.bars.map(({ id }) => id));
      const midi = (piece: typeof old) =>
        piece?.bars.flatMap(({ notes }) => notes.map(({ pitch }) => midiOf(pitch))) ?? [];
      expect(new Set(midi(moved).map((each, index) => each - (midi(old)[index] ?? 0)))).toEqual(new Set([2]));
      expect(setKey(inA, PIECE, key('G'))).toEqual(inG);
    }
  });

  it('leaves bars with chord symbols as they are beside numerals', () => {
    const inG = composePiece(setKey(lessonWith('| I | D7 | IV | D7 |'), PIECE, key('G')), PIECE).lesson;
    const inA = setKey(inG, PIECE, key('A'));
    const bars = (lesson: Lesson) => linePiece(lesson, PIECE)?.bars ?? [];
    expect([bars(inA)[1], bars(inA)[3]]).toEqual([bars(inG)[1], bars(inG)[3]]);
    expect(bars(inA).map(({ harmony }) => harmony)).toEqual(['A@3840', 'D7@3840', 'D@3840', 'D7@3840']);
    expect(linePiece(inA, PIECE)?.parked).toEqual([]);
  });
});

describe('the naming of notes', () => {
  it('is saved with the lesson and reaches the sheet; the chart stays in letters', () => {
    const german = setNoteNames(lessonWith('| Bb | F7 |'), 'german');
    expect(parseLesson(printLesson(german))).toEqual({ ok: true, value: german });
    const [sheet] = deriveSheets(german);
    expect(sheet?.kind === 'line' && sheet.noteNames).toBe('german');
    expect(deriveSheets(german)[0]).toBe(sheet);
    expect(linePiece(german, PIECE)?.chartText).toBe('| Bb | F7 |');
  });
});
