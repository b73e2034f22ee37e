import { describe, expect, it } from 'vitest';
import { checkLesson, composePiece } from '../../src/core/composing';
import {
  deriveSheets,
  type LineSheet,
  linePiece,
  printLesson,
  readLesson,
  SAMPLE_TITLES,
  sampleLesson,
  whyNotKept,
} from '../../src/core/lesson';
import { describeKey } from '../../src/core/theory';

const FILES = ['ferry-queue', 'last-tram-home'];

function sheetOf(index: number): LineSheet {
  const sheet = deriveSheets(sampleLesson(index, 'test'))[0];
  if (sheet?.kind !== 'line') throw new Error('a sample begins with its line');
  return sheet;
}

describe.each(SAMPLE_TITLES.map((title, index) => ({ title, index })))('the sample $title', ({ index }) => {
  const sheet = sheetOf(index);

  it('is what the validator makes of its file', () => {
    const sample = sampleLesson(index, 'test');
    expect(readLesson(sample)).toEqual({ ok: true, value: sample });
    expect(whyNotKept(sample)).toBeNull();
  });

  it('has nothing to mend', () => {
    expect(checkLesson(sampleLesson(index, 'test'))).toEqual([]);
  });

  it('is the lesson file that its composer would write today', async () => {
    const sample = sampleLesson(index, 'sample');
    const composed = composePiece(sample, sample.pieces[0]?.id ?? '');
    await expect(printLesson(composed.lesson)).toMatchFileSnapshot(
      `../../src/core/lesson/samples/${FILES[index]}.json`,
    );
  });

  it('shows the three techniques it teaches', () => {
    const shown = new Set(sheet.bars.flatMap((bar) => bar.analysis.techniques));
    const silence = sheet.feel.bassRole.mayRestOnOne ? 'beat one silent' : 'long silences';
    expect(linePiece(sampleLesson(index, 'test'), 'piece-1')?.techniques).toContain(silence);
    expect([...shown]).toEqual(expect.arrayContaining(['chord tones', 'scale steps', silence]));
  });

  it('leaves beat one silent somewhere where its feel does, but not at its beginning', () => {
    const silent = sheet.bars.map((bar) => bar.notes[0]?.note.start !== 0);
    expect(silent.includes(true)).toBe(sheet.feel.bassRole.mayRestOnOne);
    expect(silent[0]).toBe(false);
  });

  it('tells its teacher nothing that another chart, line or feel makes untrue', () => {
    const { notes } = sampleLesson(index, 'test');
    expect(notes).not.toBe('');
    expect(notes).not.toMatch(/\b(bars?|beat|silences?|one|two|three|four|chops|organ|\d+)\b|drums drop/i);
  });

  it('lies under one hand, every note on the neck', () => {
    const positions = sheet.bars.flatMap((bar) => bar.notes.map(({ fingered }) => fingered?.position));
    expect(positions).not.toContain(undefined);
    expect(sheet.fingering.shifts).toBeLessThanOrEqual(4);
  });
});

describe('the samples', () => {
  it('are one in major and one in minor, in different feels', () => {
    const sheets = SAMPLE_TITLES.map((_, index) => sheetOf(index));
    expect(sheets.map((sheet) => describeKey(sheet.key))).toEqual(['F major', 'A minor']);
    expect(new Set(sheets.map((sheet) => sheet.feel.id)).size).toBe(2);
  });
});
