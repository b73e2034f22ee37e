import { describe, expect, it } from 'vitest';
import { hasMark, samePitch } from '../../src/core/base';
import { writeTextTab } from '../../src/core/exchange';
import type { LineSheet } from '../../src/core/lesson';
import { sheetOf } from '../support/score-sheets';
import { randomSheets } from './random-sheets';

/** Lines of music: the strings of each system, in order. */
function systemsOf(tab: string, strings: number): readonly (readonly string[])[] {
  const lines = tab.split('\n').filter((line) => /^[A-G][b#]?\s?\|/.test(line));
  const systems: string[][] = [];
  lines.forEach((line, index) => {
    if (index % strings === 0) systems.push([]);
    systems.at(-1)?.push(line.slice(line.indexOf('|') + 1));
  });
  return systems;
}

/** What a player reads off the page: `string/fret` from left to right, and where the bar lines stand. */
function readBack(tab: string, strings: number): readonly string[] {
  return systemsOf(tab, strings).flatMap((lines) =>
    lines
      .flatMap((line, string) => [
        ...[...line.matchAll(/\d+|x|\?/g)].map(({ 0: sign, index }) => ({
          at: index,
          read: `${string + 1}/${sign}`,
        })),
        ...(string === 0 ? [...line.matchAll(/\|/g)].map(({ index }) => ({ at: index, read: '|' })) : []),
      ])
      .sort((one, other) => one.at - other.at)
      .map(({ read }) => read),
  );
}

function expected({ bars }: LineSheet): readonly string[] {
  return bars.flatMap((bar, index) => {
    const struck = bar.notes.filter(({ note }, place) => {
      const before = bars[index - 1]?.notes.at(-1)?.note;
      const tied = place === 0 && note.start === 0 && before?.tiedOn === true;
      return !(tied && samePitch(before.pitch, note.pitch));
    });
    return [
      ...struck.map(({ note, fingered }) => {
        const dead = hasMark(note, 'ghost');
        return `${fingered?.string}/${dead ? 'x' : fingered?.fret}`;
      }),
      '|',
    ];
  });
}

describe('chord symbols', () => {
  it('stand above the moment at which they begin', () => {
    const sheet = sheetOf({
      chart: '| F#m7b5 C7 | Bbmaj7 / Eb7 / |',
      notes: 'A1/2 C2/2 | B♭1/2 E♭2/2',
      key: 'F',
    });
    const lines = writeTextTab(sheet, 'Lesson').split('\n');
    const chords = lines.find((line) => line.includes('F#m7b5')) ?? '';
    const counts = lines.at(-2) ?? '';
    for (const symbol of ['F#m7b5', 'C7', 'Bbmaj7', 'Eb7']) {
      expect(counts[chords.indexOf(symbol)]).toBe(symbol === 'F#m7b5' || symbol === 'Bbmaj7' ? '1' : '3');
    }
  });
});

const short = sheetOf({
  chart: 'Verse:\n| F | Dm7 C7 |\nBridge:\n|: Bb |1. F :|2. F |',
  notes: 'F1/1 A1/.5 C2/.5 r/1 F2/1 | D2/.5 r/.5 F2/1x r/.5 C2/.5 E1/1~ | B♭1/2 D2/2 | F1/4 | F1/4',
  key: 'F',
});

describe('a line as text tab', () => {
  it('names the key where another begins', () => {
    const tab = writeTextTab(
      sheetOf({
        chart: 'Verse:\n| F |\nBridge:\n(key: Ab) | Ab |\nVerse',
        notes: 'F1/4 | A♭1/4 | F1/4',
        key: 'F',
      }),
      'Keys',
    );
    expect(tab.match(/^\[.*$/gm)).toEqual(['[Verse]', '[Bridge] Ab major', '[Verse] F major']);
  });

  it('looks as players post it', () => {
    expect(writeTextTab(short, 'Ferry queue, week 3')).toMatchInlineSnapshot(`
      "Ferry queue, week 3
      Line
      F major, 4/4, 126 bpm in the fast count, One drop, eighths swung
      Tuning, lowest string first: E A D G. The lowest line is the lowest string.
      Counting stands below; a dot is a beat that is not struck, a minus where silence
      begins, x a dead note.

      [Verse]
        1                  2
         F                  Dm7      C7
      G|------------------|-------------------|
      D|--------------3---|------x------------|
      A|-----0-3----------|-5-----------3-----|
      E|-1----------------|---------------0---|
         1   2 & -3   4     1 -& 2   -3 & 4

      [Bridge]
        3                  4 1.               5 2.
          Bb                F                  F
      G|:-----------------|-----------------:|-----------------|
      D|:---------0-------|-----------------:|-----------------|
      A|:-1---------------|-----------------:|-----------------|
      E|:-----------------|-1---------------:|-1---------------|
          1   .   3   .     1   .   .   .      1   .   .   .
      "
    `);
  });

  it.each(randomSheets(40).map((sheet, index) => ({ sheet, name: `line ${index}` })))(
    'has no line over 80 signs and no tab stop: $name',
    ({ sheet }) => {
      const lines = writeTextTab(sheet, `A title\nwith\tevil \u2028 signs ${'and no end'.repeat(30)}`).split(
        '\n',
      );
      expect(lines.filter((line) => line.length > 80)).toEqual([]);
      expect(lines.filter((line) => /[\t\r\u2028]/.test(line))).toEqual([]);
      const { length } = sheet.instrument.openStrings;
      for (const system of systemsOf(lines.join('\n'), length)) {
        expect(new Set(system.map((line) => line.length)).size).toBe(1);
      }
    },
  );

  const withoutEndings = randomSheets(60).filter((sheet) =>
    sheet.bars.every((bar) => bar.written.ending === null && !bar.written.repeatStart),
  );

  it.each(withoutEndings.map((sheet, index) => ({ sheet, name: `line ${index}` })))(
    'is read back note by note: $name',
    ({ sheet }) => {
      expect(readBack(writeTextTab(sheet, 'Lesson'), sheet.instrument.openStrings.length)).toEqual(
        expected(sheet),
      );
    },
  );
});
