import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AT_SIGHT } from '../../src/core/asking';
import { midiOf } from '../../src/core/base';
import { harmonyText } from '../../src/core/chart';
import { barsAtSight, composePiece } from '../../src/core/composing';
import type { FeelId } from '../../src/core/feel';
import {
  type LinePiece,
  type LineSheet,
  linePiece,
  lineRequest,
  newLesson,
  parseLesson,
  printLesson,
  setChartText,
} from '../../src/core/lesson';
import { LEVELS, musicFindings, TECHNIQUES } from '../../src/core/line';
import { LINE, lineSheetIn, typedLesson } from '../support/typed-lessons';

const CHARTS = [
  '| F | Dm | Gm | C7 | F | Dm | Gm | C7 |',
  '(1) C | C | Am | C | Dm | G7 | % |',
  '|: B♭ | N.C. | Cm7 F7 | B♭ |1. E♭ :|2. B♭ |',
  'Verse:\n| Em | Bm7♭5 |\nChorus:\n(key: A) | A | E7 |\nVerse',
  '| D♭ | <G♭ | A♭7 | D♭/F |',
];

const lessons = fc
  .record({
    chart: fc.constantFrom(...CHARTS),
    feel: fc.constantFrom<FeelId>('one-drop', 'rocksteady', 'soul-backbeat', 'early-ska', 'disco'),
    level: fc.constantFrom(...LEVELS),
    techniques: fc.subarray([...TECHNIQUES]),
  })
  .map((typed) => composePiece(typedLesson('sight', typed), LINE).lesson);

const midisIn = ({ bars }: LineSheet) =>
  bars.flatMap(({ notes }) => notes.map(({ note }) => midiOf(note.pitch)));

const positionsIn = ({ bars }: LineSheet) =>
  new Set(bars.flatMap(({ notes }) => notes.flatMap(({ fingered }) => fingered?.position ?? [])));

const shownIn = ({ bars }: LineSheet) => new Set(bars.flatMap(({ analysis }) => analysis.techniques));

const chordsOf = ({ bars }: LineSheet) =>
  bars.map(({ written }) => written.spans.map(({ harmony }) => harmonyText(harmony, 'letters')).join(' '));

const readAs = ({ bars }: LineSheet) =>
  bars.map(({ written, notes }) =>
    JSON.stringify([
      written.spans.map(({ harmony }) => harmonyText(harmony, 'letters')),
      notes.map(({ note }) => [note.start, note.duration, midiOf(note.pitch)]),
    ]),
  );

describe('bars to read at sight', () => {
  it('keep level, techniques, chords, key, range and position of the line, and are not in it', () => {
    let plain = 0;
    fc.assert(
      fc.property(lessons, fc.constantFrom(...AT_SIGHT), (lesson, count) => {
        const before = lineSheetIn(lesson, linePiece(lesson, LINE));
        const { lesson: made, remarks } = barsAtSight(lesson, LINE, count);
        expect(made.pieces.slice(0, 1)).toEqual(lesson.pieces);
        const [, piece] = made.pieces;
        if (piece?.kind !== 'line') throw new Error('A line was added.');
        const sheet = lineSheetIn(made, piece);
        expect(sheet.problems).toEqual([]);
        expect(sheet.bars).toHaveLength(count);
        expect(sheet.bars.every(({ notes }) => notes.length > 0)).toBe(true);
        expect(sheet.key).toEqual(before.key);
        const heard = new Set(chordsOf(before));
        for (const chord of chordsOf(sheet))
          expect([...heard].some((each) => each.includes(chord))).toBe(true);

        const request = lineRequest(piece, sheet.chart, sheet.key, made.instrument);
        const notes = piece.bars.map((bar) => bar.notes);
        const beyond = musicFindings(request, notes).filter(
          ({ kind }) => kind === 'level' || kind === 'fret',
        );
        expect(beyond.map(({ message }) => message)).toEqual([]);
        expect(piece.level).toBe(linePiece(lesson, LINE)?.level);
        const taught = new Set<string>([...piece.techniques, 'chord tones']);
        expect([...shownIn(sheet)].filter((each) => !taught.has(each))).toEqual([]);

        if (remarks.length > 0) return;
        plain += 1;
        expect(Math.min(...midisIn(sheet))).toBeGreaterThanOrEqual(Math.min(...midisIn(before)));
        expect(Math.max(...midisIn(sheet))).toBeLessThanOrEqual(Math.max(...midisIn(before)));
        const positions = positionsIn(before);
        if (positions.size === 1) expect([...positionsIn(sheet)]).toEqual([...positions]);
        const known = new Set(readAs(before));
        expect(readAs(sheet).filter((bar) => known.has(bar))).toEqual([]);
      }),
      { numRuns: Number(process.env.AT_SIGHT ?? 8), seed: 22 },
    );
    expect(plain).toBeGreaterThan(1);
  }, 600_000);

  it('stand behind the line, and can be saved, played and changed like any other', () => {
    const typed = setChartText(newLesson('sight', 'At sight'), LINE, '| F | Dm | Gm | C7 |');
    const { lesson, remarks } = barsAtSight(composePiece(typed, LINE).lesson, LINE, 8);
    // Twice over the same four bars a lead may come back.
    expect(remarks.filter((each) => !each.endsWith('is in the line, too.'))).toEqual([]);
    expect(lesson.pieces.map(({ name }) => name)).toEqual(['Line', 'At sight: Line']);
    const read = parseLesson(printLesson(lesson));
    expect(read.ok && read.value).toEqual(lesson);
    const again = barsAtSight(lesson, LINE, 8).lesson;
    expect(again.pieces).toHaveLength(3);
    expect(readAs(lineSheetIn(again, again.pieces[1] as LinePiece))).not.toEqual(
      readAs(lineSheetIn(again, again.pieces[2] as LinePiece)),
    );
  });

  it('are not made of nothing, and it is said why', () => {
    const empty = setChartText(newLesson('sight', 'At sight'), LINE, '| F | Dm |');
    expect(barsAtSight(empty, LINE, 4)).toEqual({
      lesson: empty,
      remarks: ['The line has no notes yet, so there is nothing to make bars of that read like it.'],
    });
  });
});
