import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { barTicks } from '../../src/core/base';
import { matchBars, parseChart, playOrder, printChart, transposeChartText } from '../../src/core/chart';
import { chart, metre, read, withoutPlaces } from './read';

// Many cases in one test; a busy machine needs its time.
vi.setConfig({ testTimeout: 60_000 });

/** What charts are made of, right and wrong, for texts that look like charts. */
const PIECES = [
  'C',
  'Am',
  'F#m7b5',
  'B♭maj7',
  'G7/B',
  'C7(b9, #11)',
  'Foo',
  'h',
  '%',
  '/',
  '//',
  'N.C.',
  '|',
  '|',
  '|',
  '||',
  '|:',
  ':|',
  'x3',
  'x99',
  '1.',
  '2.',
  '1.-3.',
  '(3/4)',
  '(6/8)',
  '(2)',
  '(1.5)',
  '(key: Eb)',
  '(',
  ')',
  '; words',
  '\n',
  '\n',
  '\nVerse:\n',
  '\nVerse\n',
  '\nB:\n',
] as const;
const chartText = fc.array(fc.constantFrom(...PIECES), { maxLength: 60 }).map((pieces) => pieces.join(' '));
const metres = fc.constantFrom('4/4', '3/4', '2/2', '6/8', '12/8').map(metre);
const FIXED = { seed: 31, numRuns: 300 };
const LONG = 60_000;

describe('printing', () => {
  it.each([
    ['Am|F  C|G// E7|%', '| Am | F C | G / / E7 | G / / E7 |'],
    [
      'Verse:\n|: C | G |1. Am | F :|2. F | C |\nVerse',
      'Verse:\n|: C | G | 1. Am | F :|\n| 2. F | C ||\n\nVerse',
    ],
    ['(1) G7 | (3/4) C | (key: Bb) F', '| (1) G7 | (3/4) C | (key: B♭ major) F |'],
    ['C | D :| x3 |: E :|', '| C | D :| x3 |: E :|'],
  ])('%j', (text, printed) => {
    expect(printChart(chart(text))).toBe(printed);
  });

  it(
    'reads back as the same chart, whatever was typed',
    () => {
      fc.assert(
        fc.property(chartText, metres, (text, where) => {
          const first = parseChart(text, where).chart;
          const again = parseChart(printChart(first), where).chart;
          expect(withoutPlaces(again)).toEqual(withoutPlaces(first));
        }),
        FIXED,
      );
    },
    LONG,
  );
});

describe('any text', () => {
  it(
    'gives bars that are filled without gaps, problems that are placed, and a finite order',
    () => {
      fc.assert(
        fc.property(
          fc.oneof(chartText, fc.string({ unit: 'binary', maxLength: 200 })),
          metres,
          (text, where) => {
            const { chart: result, problems } = parseChart(text, where);
            for (const bar of result.bars) {
              let end = 0;
              for (const span of bar.spans) {
                expect(span.start).toBe(end);
                expect(span.duration).toBeGreaterThan(0);
                end += span.duration;
              }
              expect(end).toBe(barTicks(bar.metre));
            }
            const lines = text.split(/\r\n|\r|\n/);
            for (const problem of problems) {
              const line = lines[problem.line - 1] ?? '';
              expect(problem.length).toBeGreaterThan(0);
              expect(problem.column - 1 + problem.length).toBeLessThanOrEqual(line.length);
            }
            expect(playOrder(result).every((index) => index < result.bars.length)).toBe(true);
            const covered = result.sections.flatMap((section) =>
              Array.from({ length: section.length }, (_, i) => section.start + i),
            );
            expect(covered).toEqual(result.bars.map((_, index) => index));
          },
        ),
        FIXED,
      );
    },
    LONG,
  );
});

describe('following bars through an edit', () => {
  it.each([
    ['a b c d', 'a b c d', '0 1 2 3'],
    ['a b c d', 'x a b c d', '- 0 1 2 3'],
    ['a b c d', 'a b x c d', '0 1 - 2 3'],
    ['a b c d', 'a c d', '0 2 3'],
    ['a b c d', 'a x c d', '0 - 2 3'],
    ['a b c d', 'c d a b', '2 3 - -'],
    ['', 'a b', '- -'],
    ['a b', '', ''],
    ['a a a', 'a a a a', '0 1 2 -'],
  ])('%j to %j', (before, after, expected) => {
    const bars = (text: string) => text.split(' ').filter((bar) => bar !== '');
    const shown = matchBars(bars(before), bars(after)).map((index) => index ?? '-');
    expect(shown.join(' ')).toBe(expected);
  });

  it('keeps every old bar when one is inserted anywhere', () => {
    const bars = fc.array(fc.constantFrom('C', 'F', 'G', 'Am'), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(bars, fc.nat(), fc.constantFrom('C', 'Dm'), (before, place, inserted) => {
        const at = place % (before.length + 1);
        const after = [...before.slice(0, at), inserted, ...before.slice(at)];
        const kept = matchBars(before, after).filter((index) => index !== null);
        expect(kept).toEqual(before.map((_, index) => index));
      }),
      FIXED,
    );
  });
});

describe('transposing the text', () => {
  const UP_A_TONE = { steps: 1, halfSteps: 2 };

  it('moves symbols and keys, and nothing else', () => {
    const text =
      'Verse A:  ; Am C\n|:  Am7/G |Foo | C//  Bb7 ; Dm\n| (key: C) N.C. | % :| x2\n\nVerse A\nIntro';
    expect(transposeChartText(text, UP_A_TONE)).toBe(
      'Verse A:  ; Am C\n|:  Bm7/A |Foo | D//  C7 ; Dm\n| (key: D) N.C. | % :| x2\n\nVerse A\nIntro',
    );
  });

  it('writes accidentals the way the text does', () => {
    expect(transposeChartText('C Gm', { steps: 2, halfSteps: 3 })).toBe('Eb Bbm');
    expect(transposeChartText('C B♭', { steps: 2, halfSteps: 3 })).toBe('E♭ D♭');
  });

  it(
    'comes back letter for letter',
    () => {
      const tidy = fc
        .array(
          fc.constantFrom(
            'C',
            'Am7/G',
            'F#-7',
            'Bb7',
            '|',
            '%',
            'Foo',
            '; Am',
            '\n',
            '(key: Eb)',
            'C7(b9, #11)',
          ),
          {
            maxLength: 40,
          },
        )
        .map((pieces) => pieces.join(' '));
      const interval = fc.constantFrom(
        UP_A_TONE,
        { steps: 2, halfSteps: 3 },
        { steps: -1, halfSteps: -1 },
        { steps: 3, halfSteps: 5 },
      );
      fc.assert(
        fc.property(tidy, interval, (text, up) => {
          const there = transposeChartText(text, up);
          expect(transposeChartText(there, { steps: -up.steps, halfSteps: -up.halfSteps })).toBe(text);
        }),
        FIXED,
      );
    },
    LONG,
  );

  it('is heard an interval away', () => {
    const roots = (text: string) => read(text).chart.bars.map((bar) => bar.spans[0]?.harmony);
    const [harmony] = roots(transposeChartText('| Gm7 |', UP_A_TONE));
    expect(harmony?.kind === 'chord' && harmony.chord.symbol).toBe('Am7');
  });
});
