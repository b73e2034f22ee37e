import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barTicks, type LineNote, midiOf } from '../../src/core/base';
import { playOrder } from '../../src/core/chart';
import { composePiece } from '../../src/core/composing';
import type { FeelId } from '../../src/core/feel';
import {
  changeLine,
  deriveSheets,
  linePiece,
  type SheetNote,
  sampleLesson,
  studyFacts,
} from '../../src/core/lesson';
import type { Level } from '../../src/core/line';
import { formOf } from '../../src/core/line/study/form';
import { LINE, lineSheetIn, typedLesson } from '../support/typed-lessons';

const octaveUp = (note: LineNote): LineNote => ({
  ...note,
  pitch: { ...note.pitch, octave: note.pitch.octave + 1 },
});

describe('what is said of a line', () => {
  const read = [0, 1].flatMap((index) => {
    const lesson = sampleLesson(index, 'sample');
    return deriveSheets(lesson).flatMap((sheet) => {
      const piece = lesson.pieces.find(({ id }) => id === sheet.id);
      if (sheet.kind !== 'line' || piece?.kind !== 'line') return [];
      return [{ sheet, facts: studyFacts(piece, sheet, lesson.instrument) }];
    });
  });

  test('does not say a fact’s name again, which stands before it', () => {
    expect(read.length).toBeGreaterThan(0);
    for (const { name, sentence } of read.flatMap(({ facts }) => facts)) {
      expect(sentence).not.toMatch(new RegExp(`^(\\d+ )?${name}`, 'i'));
    }
  });

  test('counts every note once', () => {
    for (const { sheet, facts } of read) {
      const said = facts.find(({ name }) => name === 'Notes')?.sentence ?? '';
      const written = sheet.bars.reduce((sum, { notes }) => sum + notes.length, 0);
      expect(said).toMatch(new RegExp(`, ${written} in all\\.$`));
    }
  });

  test('gives no two parts of a form the same letter', () => {
    const shapes = Array.from({ length: 60 }, (_, bar) => ({ rhythm: `${bar}`, figure: '' }));
    const letters = formOf(
      shapes.map((_, bar) => [bar]),
      shapes,
    ).map(({ letter }) => letter);
    expect(new Set(letters).size).toBe(60);
    expect(letters.slice(24, 28)).toEqual(['y', 'z', 'a2', 'b2']);
  });

  test('says of any line what its notes say, bar by bar', () => {
    const lines = fc.record({
      chart: fc.constantFrom(
        '(1) C7 | F | Dm |1. Gm | C7 :|2. Gm C7 | F |',
        '|: B♭ | N.C. | Cm7 | F7 :| x3 | B♭ |',
        'Verse:\n| Em | Am |\nBridge:\n| C | B7 |\nVerse',
      ),
      feel: fc.constantFrom<FeelId>('one-drop', 'walking-swing', 'soul-backbeat'),
      level: fc.constantFrom<Level>(1, 3, 5),
      silent: fc.array(fc.nat(8), { maxLength: 3 }),
      raised: fc.array(fc.nat(8), { maxLength: 3 }),
    });
    fc.assert(
      fc.property(lines, ({ chart, feel, level, silent, raised }) => {
        const typed = typedLesson('said', { chart, feel, level });
        const lesson = changeLine(composePiece(typed, LINE).lesson, LINE, (piece) => ({
          ...piece,
          bars: piece.bars.map((bar, index) => ({
            ...bar,
            notes: silent.includes(index) ? [] : raised.includes(index) ? bar.notes.map(octaveUp) : bar.notes,
          })),
        }));
        const piece = linePiece(lesson, LINE);
        const sheet = lineSheetIn(lesson, piece);
        if (piece === null) return;
        const facts = new Map(studyFacts(piece, sheet, lesson.instrument).map((fact) => [fact.name, fact]));
        if (facts.size === 0) return;
        const said = (name: string) => facts.get(name)?.sentence ?? '';
        const first = (name: string) => Number(/\d+/.exec(said(name))?.[0] ?? 0);

        const { bars } = sheet;
        const late = bars.flatMap(({ notes, written }, index) =>
          notes[0] !== undefined && notes[0].note.start > 0 && !written.pickup ? [index] : [],
        );
        expect(facts.get('Beat one')?.bars).toEqual(late);
        expect(first('Beat one')).toBe(late.length);
        const everywhere = facts.get('Hardest rhythm')?.bars.length === bars.length;
        expect(said('Hardest rhythm').endsWith(', in every bar.')).toBe(everywhere);
        const empty = bars.flatMap(({ notes }, index) => (notes.length === 0 ? [index] : []));
        expect(facts.get('Silence')?.bars).toEqual(empty);
        expect(said('Silence').includes('without a note')).toBe(empty.length > 0);
        const time = bars.reduce((sum, { written }) => sum + barTicks(written.metre), 0);
        const sounding = bars.reduce(
          (sum, { notes }) => sum + notes.reduce((own, { note }) => own + note.duration, 0),
          0,
        );
        expect(first('Silence')).toBe(Math.round(100 * (1 - sounding / time)));

        // As it is played once through: between two endings nobody moves.
        const played = playOrder(sheet.chart).flatMap((bar) => bars[bar]?.notes ?? []);
        const pairs = new Set<string>();
        const shifts = new Set<string>();
        const placeOf = (each: SheetNote) => bars.findIndex(({ notes }) => notes.includes(each));
        const key = (one: SheetNote, other: SheetNote) =>
          [one, other].map((each) => `${placeOf(each)} ${each.note.start}`).join(' to ');
        played.forEach((note, index) => {
          const before = played[index - 1];
          if (before !== undefined && Math.abs(midiOf(note.note.pitch) - midiOf(before.note.pitch)) > 2)
            pairs.add(key(before, note));
        });
        const stopped = played.filter(({ fingered }) => (fingered?.fret ?? 0) > 0);
        stopped.forEach((note, index) => {
          const before = stopped[index - 1];
          if (before !== undefined && before.fingered?.position !== note.fingered?.position)
            shifts.add(key(before, note));
        });
        expect(first('Leaps')).toBe(pairs.size);
        expect(first('Shifts')).toBe(shifts.size);
      }),
      { numRuns: Number(process.env.SAID_LINES ?? 25), seed: 22 },
    );
  });
});
