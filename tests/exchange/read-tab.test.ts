import { describe, expect, it } from 'vitest';
import { barTicks, hasMark, marksOf, midiOf } from '../../src/core/base';
import { barSignature } from '../../src/core/chart';
import { writeTextTab } from '../../src/core/exchange';
import type { LineSheet } from '../../src/core/lesson';
import { tiesOverBarLines } from '../../src/core/lesson';
import { syllableAt } from '../../src/core/notation';
import { describeKey, formatPitch } from '../../src/core/theory';
import { sheetOf } from '../support/score-sheets';
import { randomSheets } from './random-sheets';
import { lineSheetOf, readBack, refusal } from './read-back';

/** What is played in each bar: start, length, pitch; of dead notes no pitch, which tab does not say. */
const notesOf = ({ bars }: LineSheet) =>
  bars.map(({ notes }) =>
    notes.map(({ note, fingered }) => {
      const dead = hasMark(note, 'ghost');
      const place = dead ? 'x' : `${formatPitch(note.pitch)} ${fingered?.string}/${fingered?.fret}`;
      return `${note.start}+${note.duration} ${place}${note.tiedOn ? '~' : ''}`;
    }),
  );

const waysOf = ({ bars }: LineSheet) =>
  bars.map(({ written }) => [
    written.metre,
    written.pickup,
    written.repeatStart,
    written.repeatEnd,
    written.ending,
    written.navigation ?? [],
    barSignature(written),
  ]);

const VARIED = sheetOf({
  chart: '(1) N.C. |\nVerse:\n| F | Dm7 C7 |\nBridge:\n|: Bb |1. F :|2. F |\nVerse\nEnd:\n| (3/4) F |',
  notes:
    'C2/.5 r/.5 | F1/1 A1/.5 C2/.5 r/1 F2/.5 r/.5 | D2/.5 r/.5 F2/1x r/.5 C2/.5 E1/1~ | E1/.5 r/.5 D2/3 | F1/4 | F1/1 r/3 | F1/.25 r/.75 A1/1 r/2 | D2/4 | F1/1 r/2',
  key: 'F',
});

describe('our own text tab', () => {
  it('comes back whole: title, key, metres, chords, repeats, sections, notes with their lengths', () => {
    const read = readBack(writeTextTab(VARIED, 'Ferry queue'));
    const again = lineSheetOf(read.lesson);
    expect(read.facts.own).toBe(true);
    expect(read.lesson.title).toBe('Ferry queue');
    expect(again.name).toBe(VARIED.name);
    expect(again.feel.id).toBe(VARIED.feel.id);
    expect(again.tempo).toBeCloseTo(VARIED.tempo, 0);
    expect(describeKey(again.key)).toBe('F major');
    expect(again.chart.sections.map(({ name }) => name)).toEqual(
      VARIED.chart.sections.map(({ name }) => name),
    );
    expect(waysOf(again)).toEqual(waysOf(VARIED));
    expect(notesOf(again)).toEqual(notesOf(VARIED));
  });

  it('counts a pickup as the end of a bar, as it is counted on the staff, and comes back', () => {
    const sheet = sheetOf({
      chart: '(2) C | C | F |',
      notes: 'r/.5 E1/.5 G1/.5 A1/.5 | C2/2 C2/2 | F1/4',
      over: { 0: { words: 'into it' } },
    });
    const tab = writeTextTab(sheet, 'Upbeat');
    const counts = tab.split('\n').find((line) => /^\s+-3/u.test(line));
    expect(counts?.trim().split(/\s+/u)).toEqual('-3 & 4 & 1 . 3 . 1 . . .'.split(' '));
    const again = lineSheetOf(readBack(tab).lesson);
    expect(waysOf(again)).toEqual(waysOf(sheet));
    expect(notesOf(again)).toEqual(notesOf(sheet));
    expect(again.bars[0]?.words).toBe('into it');
    // A tab that counts its pickup from one is read alike.
    const fromOne = tab.replace(counts ?? '', (row) => row.replace('-3', '-1').replace('4', '2'));
    expect(fromOne).toMatch(/^\s+-1 +& +2 /mu);
    expect(notesOf(lineSheetOf(readBack(fromOne).lesson))).toEqual(notesOf(sheet));
  });

  it.each([
    { metre: '6/8', pickup: '1/8', notes: 'E1/.5', counts: 'a' },
    { metre: '6/8', pickup: '2/8', notes: 'E1/.5 G1/.5', counts: '& a' },
    { metre: '6/8', pickup: '1', notes: 'r/.5 E1/.5 G1/.5', counts: '-2 & a' },
    { metre: '9/8', pickup: '1/8', notes: 'E1/.5', counts: 'a' },
    { metre: '9/8', pickup: '1', notes: 'E1/1 G1/.5', counts: '3 a' },
    { metre: '9/8', pickup: '2', notes: 'E1/1.5 r/.5 G1/1', counts: '2 -3 &' },
    { metre: '12/8', pickup: '1/8', notes: 'r/.5', counts: '-a' },
    { metre: '12/8', pickup: '2/8', notes: 'E1/1', counts: '&' },
    { metre: '12/8', pickup: '1', notes: 'E1/.5 F1/.5 G1/.5', counts: '4 & a' },
    { metre: '4/4', pickup: '0.5', notes: 'E1/.25 G1/.25', counts: '& a' },
  ])('counts a pickup ($pickup) of $notes before $metre as $counts', ({ metre, pickup, notes, counts }) => {
    const [count = 0] = metre.split('/').map(Number);
    const length = metre === '4/4' ? 4 : count / 2;
    const sheet = sheetOf({
      chart: `(${pickup}) C | C | F |`,
      notes: `${notes} | C2/${length} | F1/${length}`,
      metre: metre === '4/4' ? { count: 4, unit: 4 } : { count, unit: 8 },
    });
    const tab = writeTextTab(sheet, 'Upbeat');
    const row = tab.split('\n').find((line) => /^[\s\d&.a-]*\b1 [\s.]*1 [\s.]*$/u.test(line)) ?? '';
    const said = row.trim().split(/\s+/u);
    expect(said.slice(0, said.indexOf('1')).join(' ')).toBe(counts);
    const again = lineSheetOf(readBack(tab).lesson);
    expect(waysOf(again)).toEqual(waysOf(sheet));
    expect(notesOf(again)).toEqual(notesOf(sheet));
  });

  it('comes back with signs, dynamics and words', () => {
    const sheet = sheetOf({
      key: 'G',
      chart: '| G | C |',
      notes:
        "G1/.5{hammer} A1/.5{hammer} G1/1> B1/1{slide,palm_mute} C2/1x | C2/1{slide_from_below} C2/1{slap} D2/1{slide_down} G1/1'{i}",
      over: {
        0: { words: 'dig in', dynamics: [{ at: 0, level: 'p', hairpin: 'crescendo' }] },
        1: { dynamics: [{ at: 0, level: 'f' }] },
      },
    });
    const again = lineSheetOf(readBack(writeTextTab(sheet, 'Signs')).lesson);
    expect(again.bars.map(({ notes }) => notes.map(({ note }) => marksOf(note).join()))).toEqual(
      sheet.bars.map(({ notes }) => notes.map(({ note }) => marksOf(note).join())),
    );
    expect(again.bars.map(({ words, dynamics }) => [words, dynamics])).toEqual(
      sheet.bars.map(({ words, dynamics }) => [words, dynamics]),
    );
  });

  /** Notes one after the other; of dead ones no pitch. */
  const placesOf = (sheet: LineSheet) => {
    const ties = tiesOverBarLines(sheet);
    return sheet.bars.flatMap(({ notes, written: { number } }, bar) =>
      notes.slice(ties[bar]?.from ? 1 : 0).map(({ note, fingered }) => {
        const dead = hasMark(note, 'ghost');
        return `${number}: ${fingered?.string}/${dead ? 'x' : fingered?.fret}`;
      }),
    );
  };
  /** Begin and end of each note that are counted by a word. */
  const timesOf = ({ bars }: LineSheet, like: LineSheet) =>
    bars.flatMap(({ notes, written: { metre, number } }, bar) =>
      notes.map(({ note: { start, duration } }, index) => {
        const told = like.bars[bar]?.notes[index]?.note;
        const said = (tick: number, sure: number | undefined) =>
          sure === undefined || sure >= barTicks(metre) || syllableAt(metre, sure) !== null ? tick : '?';
        const end = told && told.start + told.duration;
        return `${number}: ${said(start, told?.start)}-${said(start + duration, end)}`;
      }),
    );
  const sheets = randomSheets(60).filter(({ bars }) => bars.some(({ notes }) => notes.length > 0));
  it.each(sheets.map((sheet, index) => ({ sheet, name: `line ${index}` })))(
    'is read back: $name',
    ({ sheet }) => {
      const again = lineSheetOf(readBack(writeTextTab(sheet, 'Lesson')).lesson);
      expect(again.bars.map(({ written }) => barTicks(written.metre))).toEqual(
        sheet.bars.map(({ written }) => barTicks(written.metre)),
      );
      expect(
        again.bars.map(({ written }) => [written.repeatStart, written.repeatEnd, written.ending]),
      ).toEqual(sheet.bars.map(({ written }) => [written.repeatStart, written.repeatEnd, written.ending]));
      expect(placesOf(again)).toEqual(placesOf(sheet));
      expect(timesOf(again, sheet)).toEqual(timesOf(sheet, sheet));
    },
  );
});

const tab = (...lines: readonly string[]) => `${lines.join('\n')}\n`;
const pitchesOf = (text: string) =>
  lineSheetOf(readBack(text).lesson).bars.map(({ notes }) =>
    notes.map(({ note }) => `${formatPitch(note.pitch)}@${note.start / 480}`).join(' '),
  );

/* Tab as players type it in mail and forums: common practice, no source. */
describe('tab that other people typed', () => {
  const PLAIN = tab(
    'Harbour steps',
    'play it slowly, 96 bpm',
    '',
    '   Am              F',
    'G|-----------------|-----------------|',
    'D|-----------------|-------3---3-----|',
    'A|-0---0---3---0---|---3-------------|',
    'E|-----------------|-1-----------1-3-|',
  );

  it('is read as pitches on an even grid, and what was assumed is said', () => {
    const read = readBack(PLAIN);
    expect(pitchesOf(PLAIN)).toEqual(['A1@0 A1@2 C2@4 A1@6', 'F1@0 C2@1 F2@3 F2@5 F1@6 G1@7']);
    expect(read.facts.own).toBe(false);
    expect(read.facts.tempo).toBe(96);
    const said = read.sentences.join('\n');
    expect(said).toContain('read on the strings E A D G');
    expect(said).toContain('The tab names no metre; 4/4 is taken.');
    expect(said).toMatch(/does not say when its notes come.*even grid/);
    expect(said).toMatch(/does not say how long its notes are/);
    expect(read.lesson.notes).toContain('play it slowly');
    expect(lineSheetOf(read.lesson).bars.map(({ written }) => barSignature(written))).toEqual([
      'Am@3840',
      'F@3840',
    ]);
  });

  it('has its lengths from a counting, over or under the strings', () => {
    const strings = ['G|--------------|', 'D|--------------|', 'A|----0--3------|', 'E|-3----------5-|'];
    const counting = '   1  e  &    3 ';
    const expected = ['G1@0 A1@0.5 C2@1 A1@4'];
    expect(pitchesOf(tab(...strings, counting))).toEqual(expected);
    expect(pitchesOf(tab(counting, ...strings))).toEqual(expected);
    expect(readBack(tab(...strings, counting)).sentences.join(' ')).not.toContain('even grid');
  });

  it.each([
    { metre: '6/8', counted: ' a', beats: '1 & a 2 & a ', pickup: '1/8', at: 'E1@0' },
    { metre: '6/8', counted: ' 6', beats: '1 2 3 4 5 6 ', pickup: '1/8', at: 'E1@0' },
    { metre: '12/8', counted: ' 4 & a', beats: '1 & a 2 & a 3 & a 4 & a ', pickup: '3/8', at: 'E1@0 G1@2' },
    { metre: '4/4', counted: ' &', beats: '1 & 2 & 3 & 4 & ', pickup: '1/8', at: 'E1@0' },
    { metre: '4/4', counted: ' 4 &', beats: '1 & 2 & 3 & 4 & ', pickup: '1/4', at: 'E1@0 G1@1' },
  ])('has the upbeat that is counted$counted before $metre', ({ metre, counted, beats, pickup, at }) => {
    const upbeat = counted.replace(/\S/gu, '-').replaceAll(' ', '-');
    const fret = (text: string, column: number, sign: string) =>
      text.slice(0, column) + sign + text.slice(column + 1);
    const bar = '-'.repeat(beats.length + 1);
    const low =
      counted.length > 3 ? fret(fret(upbeat, 1, '0'), counted.length - 1, '3') : fret(upbeat, 1, '0');
    const strings = ['G', 'D', 'A'].map((name) => `${name}|${upbeat}-|${bar}|`);
    const read = lineSheetOf(
      readBack(
        tab(metre, `  ${counted}   ${beats}`, ...strings, `E|${low}-|-1${'-'.repeat(beats.length - 1)}|`),
      ).lesson,
    );
    expect(read.bars.map(({ written }) => written.pickup)).toEqual([true, false]);
    const first = read.bars[0];
    expect(barTicks(first?.written.metre ?? { count: 0, unit: 4 })).toBe(
      (Number(pickup.split('/')[0]) / Number(pickup.split('/')[1])) * 3840,
    );
    expect(first?.notes.map(({ note }) => `${formatPitch(note.pitch)}@${note.start / 480}`).join(' ')).toBe(
      at,
    );
    expect(read.bars[1]?.notes.map(({ note }) => note.start)).toEqual([0]);
  });

  it('has the metre, tuning, repeats and sections that it names', () => {
    const read = lineSheetOf(
      readBack(
        tab(
          '3/4',
          '[Verse]',
          'G ||:------------|------------:||',
          'D ||*------------|------------*||',
          'A ||*----2---4---|------------*||',
          'D ||:0-----------|0---5---5---:||',
        ),
      ).lesson,
    );
    expect(
      read.bars.map(({ written }) => [written.metre.count, written.repeatStart, written.repeatEnd]),
    ).toEqual([
      [3, true, null],
      [3, false, 2],
    ]);
    expect(read.chart.sections[0]?.name).toBe('Verse');
    expect(read.bars[0]?.notes.map(({ note }) => midiOf(note.pitch))).toEqual([26, 35, 37]);
  });

  it.each([
    ['five strings', ['G|----|', 'D|----|', 'A|----|', 'E|----|', 'B|-3--|'], 'D1'],
    ['six lines without names', ['|----|', '|----|', '|----|', '|----|', '|----|', '|-3--|'], 'D1'],
    ['low case and a flat', ['gb|----|', 'db|----|', 'ab|----|', 'eb|-3--|'], 'F♯1'],
    ['a guitar, an octave lower', ['e|----|', 'B|----|', 'G|----|', 'D|----|', 'A|----|', 'E|-3--|'], 'G1'],
    [
      'long dashes',
      ['G|\u2013\u2013\u2013\u2013|', 'D|\u2014\u2014\u2014\u2014|', 'A|----|', 'E|-3--|'],
      'G1',
    ],
  ])('may have %s', (_, lines, pitch) => {
    const [bar = ''] = pitchesOf(tab(...lines));
    expect(bar.split('@')[0]).toBe(pitch);
  });

  it('keeps hammer-ons, slides and dead notes, and names signs that it leaves out', () => {
    const text = tab('G|-----------|', 'D|-----------|', 'A|-3h5-5/7~--|', 'E|---------x-|');
    const sheet = lineSheetOf(readBack(text).lesson);
    expect(sheet.bars[0]?.notes.map(({ note }) => marksOf(note).join())).toEqual([
      'hammer',
      '',
      'slide',
      '',
      'ghost',
    ]);
    expect(readBack(text).sentences.join('\n')).toContain('The sign ~ on a string is left out (bar 1).');
  });

  it.each([
    ['', 'neither MusicXML nor MIDI'],
    ['G|----|\nD|----|\nA|-3--|\n', 'neither MusicXML nor MIDI'],
    ['Title\n-----\n\nSome words - and more -- of them.\n', 'neither MusicXML nor MIDI'],
    ['X|----|\nD|----|\nA|-3--|\nE|----|\n', 'names of the strings cannot be read'],
  ])('is refused where it is none: %j', (text, sentence) => {
    expect(refusal(text)).toContain(sentence);
  });

  it('is read in time in proportion to its length, whatever it holds', () => {
    const line = (signs: string) => `E|${signs}|`;
    for (const signs of [
      '-'.repeat(50_000),
      '-1'.repeat(25_000),
      '|'.repeat(50_000),
      '1|-'.repeat(15_000),
      ' -'.repeat(20_000),
    ]) {
      const text = tab(...['G', 'D', 'A', 'E'].map((name) => line(signs).replace('E', name)));
      expect(typeof (refusal(text) ?? '')).toBe('string');
    }
  });
});
