import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { composeLine, musicFindings } from '../../src/core/line';
import { charts, wishes } from './charts';
import { line, request, type Wish } from './notation';

const found = (chart: string, notes: string, wish: Wish = {}) =>
  musicFindings(request(chart, { feel: 'early-ska', level: 5, ...wish }), line(notes)).map(
    ({ kind, bar, message, repair }) => `${kind} ${bar}: ${message} ${repair}`,
  );

describe('the musical side of the lesson check', () => {
  test('says which of two a finding is, with its numbers', () => {
    const uneven = (notes: string) => found('| C | C | C |', notes).filter((each) => each.startsWith('rule'));
    const four = 'C2 . E2 . G2 . E2 .';
    expect(uneven(`C2 C2 C2 C2 C2 . . . | ${four} | ${four}`)).toEqual([
      'rule 0: Bar 1: one note is struck five times. Even it out.',
    ]);
    expect(uneven(`${four} | C2 . . . . . . . | ${four}`)).toEqual([
      'rule 1: Bar 2: it has 1 note, less than half the 4 of bar 1. Even it out.',
      'rule 2: Bar 3: it has 4 notes, more than twice the 1 of bar 2. Even it out.',
    ]);
  });

  test.each([
    [
      '| C | C |',
      'C2 . E♭2 . G2 . E2 . | C2 . E2 . G2 . E2 .',
      {},
      'chord 0: Bar 1, beat 2: E♭ contradicts C. Play E, the nearest note of the chord.',
    ],
    [
      '(1) C | C | C |',
      'E♭2 . | C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 .',
      {},
      'chord 0: The pickup, beat 4: E♭ contradicts C. Play E, the nearest note of the chord.',
    ],
    [
      '| F | F |',
      'F1 . A1 . A♯1 . A1 . | F1 . A1 . C2 . A1 .',
      {},
      'spelling 0: Bar 1, beat 3: A♯ is written where F has B♭. Write B♭; it sounds the same.',
    ],
    [
      '| C | C |',
      'C2 . E2 . G2 . E2 . | E2 . D2 . E2 . D2 .',
      {},
      'foundation 1: Bar 2: C gets neither its root nor its fifth. Play C within its first two beats.',
    ],
    [
      '| C | C |',
      'C2 . E2 . G2 . E2 . | C2 . E2 . C2 . E2 .',
      { level: 1 },
      'level 0: Bar 1, beat 2: E over C is a note of a later level. Keep to the notes of level 1 or raise it.',
    ],
    [
      '| C | C |',
      'C2 . . C2 . . C2 . | C2 . . C2 . . C2 .',
      { level: 0 },
      'level 0: Bar 1 has a rhythm of level 3. Choose a simpler idea or raise the level from 0.',
    ],
    [
      '| C | C |',
      'C2 . E2 . G2 . E2 . | C2 . E2 . G2 . E2 .',
      { tempo: 200 },
      'tempo null: 200 bpm lies outside early ska, which is played at 110 to 140. Set the tempo between 110 and 140, or keep it as a practice tempo.',
    ],
    [
      '| D♭ | D♭ |',
      'D♭2 . F2 . A♭2 . F2 . | D♭2 . F2 . A♭2 . F2 .',
      { level: 2, key: 'D♭' },
      'key null: D♭ major has 5 accidentals; level 2 reads 3 at most. Transpose to a nearer key or raise the level.',
    ],
  ] as const)('%s %s', (chart, notes, wish, expected) => {
    expect(found(chart, notes, wish)).toContain(expected);
  });

  test.each([
    ['chord', '| C | C |', 'C2 . E♭2 . G2 . E2 . | C2 . E2 . G2 . E2 .', {}, 'C2 . E2 . G2 . E2 .'],
    ['spelling', '| F | F |', 'F1 . A1 . A♯1 . A1 . | F1 . A1 . C2 . A1 .', {}, 'F1 . A1 . B♭1 . A1 .'],
    ['foundation', '| C | C |', 'E2 . D2 . E2 . D2 . | C2 . E2 . G2 . E2 .', {}, 'C2 . D2 . E2 . D2 .'],
    ['fret', '| C | C |', 'C2 . E3 . C2 . C2 . | C2 . C2 . C2 . C2 .', { level: 2 }, 'C2 . E2 . C2 . C2 .'],
    ['level', '| C | C |', 'C2 . E2 . C2 . G1 . | C2 . C2 . C2 . C2 .', { level: 1 }, 'C2 . G2 . C2 . G1 .'],
  ] as const)(
    'says which note, and gives the bar with the repair made: %s',
    (kind, chart, notes, wish, mended) => {
      const finding = musicFindings(
        request(chart, { feel: 'early-ska', level: 5, ...wish }),
        line(notes),
      ).find((one) => one.kind === kind);
      expect(finding?.bar).toBe(0);
      expect(finding?.note).toBe(kind === 'spelling' ? 2 : kind === 'foundation' ? 0 : 1);
      expect(finding?.mended?.notes).toEqual(line(mended)[0]);
      expect(finding?.repair.startsWith(finding.mended?.deed ?? '?')).toBe(true);
    },
  );

  test('raises no false alarm on composed lines, but for key and frets that the chart asks for', () => {
    fc.assert(
      fc.property(charts, wishes, (chart, wish) => {
        const asked = request(chart, wish);
        const findings = musicFindings(asked, composeLine(asked).bars).filter(
          ({ message }) => !/accidentals|lies beyond fret/.test(message),
        );
        expect(findings).toEqual([]);
      }),
      { numRuns: 8, seed: 20260104 },
    );
  });

  test('a beat that leads into the next chord by a half step contradicts nothing', () => {
    const contradicted = (notes: string) =>
      found('| C | F |', notes, { feel: 'walking-swing' }).filter((text) => text.startsWith('chord'));
    expect(contradicted('C2 . E2 . G2 . G♭2 . | F2 . C2 . A1 . C2 .')).toEqual([]);
    expect(contradicted('C2 . E2 . G♭2 . E2 . | F2 . C2 . A1 . C2 .')).toHaveLength(1);
  });

  test('an unwritten line has nothing to find', () => {
    expect(musicFindings(request('| C | F |'), [])).toEqual([]);
  });
});
