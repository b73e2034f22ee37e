import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COMMON_TIME } from '../../src/core/base';
import {
  barSignature,
  chartInLetters,
  guessedIn,
  parseChart,
  printChart,
  signatureText,
  typedChartIn,
  typedProblem,
} from '../../src/core/chart';
import { NAMINGS, type Naming, parseChord } from '../../src/core/theory';
import { randomCharts } from './random-charts';

/*
 * German names: H is the letters' B, B their B♭, -is raises, -es lowers (bernhardt-iner.de). Fixed do: Do to Si on
 * C to B (happynote.com, "Solfège"). Chord endings are the same everywhere (common practice, no source).
 */

describe('charts in other note names', () => {
  it.each<[Naming, string, string]>([
    ['german', '| Hm7 | E7 | A | B |', '| Bm7 | E7 | A | Bb |'],
    ['german', '| Bb7 | Fis7/Ais | Es | Asmaj7 |', '| Bb7 | F#7/A# | Eb | Abmaj7 |'],
    ['german', '| Asus4 | Essus4 | Edim | Esdim |', '| Asus4 | Ebsus4 | Edim | Ebdim |'],
    ['german', '| Hb5 | H7(b9) | B(b5) | H/H |', '| B(b5) | B7(b9) | Bb(b5) | B/B |'],
    ['german', '(key: B) F7 / B / | % | N.C. ; H', '(key: Bb) F7 / Bb / | % | N.C. ; H'],
    [
      'german',
      '(key: Fis minor) H | (key: Bm) F | (key: H) H',
      '(key: F# minor) B | (key: Bbm) F | (key: B) B',
    ],
    ['german', 'H:\n| Es | H |\nH', 'H:\n| Eb | B |\nH'],
    ['german', 'Gismaj7 Cism', 'G#maj7 C#m'],
    ['german', '| Eb | Ab F#m |', '| Eb | Ab F#m |'],
    ['fixed do', '| Do | Lam7 | Sib | Sol7/Si |', '| C | Am7 | Bb | G7/B |'],
    ['fixed do', '| Dom7 | Do#dim | Ré7 | Fa(#5) |', '| Cm7 | C#dim | D7 | F(#5) |'],
    ['fixed do', 'Solm Do7', 'Gm C7'],
    ['fixed do', 'Solm Do R', 'Gm C R'],
    ['fixed do', '| C | Am7 |', '| C | Am7 |'],
    ['fixed do', '(key: Mib) I vi | IV V7', '(key: Eb) I vi | IV V7'],
    ['letters', '| H | Do |', '| H | Do |'],
  ])('%s: %j is stored as %j', (naming, typed, stored) => {
    expect(chartInLetters(naming, typed)).toBe(stored);
    const meaning = (text: string) => printChart(parseChart(text, COMMON_TIME).chart);
    expect(meaning(chartInLetters(naming, typedChartIn(naming, stored)))).toBe(meaning(stored));
  });

  it.each<[Naming, string, string]>([
    ['german', '| B7 | Bb | F# | Abm |', '| H7 | B | Fis | Asm |'],
    ['german', '| Bbb5 | B(b5) |', '| B(b5) | H(b5) |'],
    ['fixed do', '| Bb | F#m7 | C/E |', '| Sib | Fa#m7 | Do/Mi |'],
    ['fixed do', '| B♭ |', '| Si♭ |'],
    ['german', '| Solo | what |', '| Solo | what |'],
  ])('%s: %j is shown as %j', (naming, stored, typed) => {
    expect(typedChartIn(naming, stored)).toBe(typed);
  });

  it('name the chords of a bar for a person, also one that cannot be read yet', () => {
    const { chart } = parseChart('| Bmx7 G7/B N.C. |', COMMON_TIME);
    const told = (naming: Naming) => chart.bars.map((bar) => signatureText(barSignature(bar), naming));
    expect(told('german')).toEqual(['Hmx7 G7/H N.C.']);
    expect(told('fixed do')).toEqual(['Simx7 Sol7/Si N.C.']);
  });

  it('leave "Solo" a word, and a section its name', () => {
    expect(chartInLetters('fixed do', 'Solo\nDo:\nDo Fa')).toBe('Solo\nDo:\nC F');
    expect(chartInLetters('fixed do', 'Solo Do\nRefrain Do')).toBe('Solo Do\nRefrain Do');
  });

  it('mean the same when they are shown and stored again, whatever the chart', () => {
    fc.assert(
      fc.property(randomCharts, fc.constantFrom(...NAMINGS), (stored, naming) => {
        const again = chartInLetters(naming, typedChartIn(naming, stored));
        const chartOf = (text: string) => {
          const { chart, problems } = parseChart(text, COMMON_TIME);
          return [printChart(chart), problems.map(({ line, message }) => `${line} ${message}`)];
        };
        expect(chartOf(again)).toEqual(chartOf(stored));
        expect(typedChartIn(naming, again)).toBe(typedChartIn(naming, stored));
      }),
      { seed: 47, numRuns: 300 },
    );
  });

  it('name every chord so that it comes back', () => {
    const roots = ['C', 'Db', 'D#', 'Eb', 'F', 'F#', 'Ab', 'A', 'Bb', 'B', 'Cb', 'B#', 'Abb', 'Bbb', 'F##'];
    const endings = [
      '',
      'm',
      '7',
      'm7b5',
      '(b5)',
      '5',
      'b5',
      '#5',
      '+',
      'sus4',
      'add9',
      'dim7',
      'ø',
      'o',
      '6/9',
      'b9',
      'maj7#11',
      'aug',
      'alt',
    ];
    const symbols = roots
      .flatMap((root) => endings.map((ending) => root + ending))
      .flatMap((symbol) => ['', '/Bb', '/B', '/Ab'].map((bass) => symbol + bass))
      .filter((symbol) => parseChord(symbol).ok);
    const drawn = (symbol: string) => {
      const chord = parseChord(symbol);
      return chord.ok ? chord.value.symbol : symbol;
    };
    const backOf = (naming: Naming, symbol: string) =>
      chartInLetters(naming, typedChartIn(naming, `| ${symbol} |`)).slice(2, -2);
    const wrong = NAMINGS.flatMap((naming) =>
      symbols.filter((symbol) => drawn(backOf(naming, symbol)) !== drawn(symbol)),
    );
    expect(symbols.length).toBeGreaterThan(800);
    expect(wrong).toEqual([]);
  });
});

describe('problems of a chart in other note names', () => {
  it.each<[Naming, string, RegExp]>([
    ['german', '(key: HH) Es', /: F, B, Dm, Es minor\.$/],
    ['fixed do', '(key: xx) Do', /: Fa, Si♭, Rem, Mi♭ minor\.$/],
    ['fixed do', '(key: H) Do', /^In letters the German H is B/],
  ])('%s: say of %j what keys are', (naming, typed, message) => {
    const stored = chartInLetters(naming, typed);
    const [found] = parseChart(stored, COMMON_TIME).problems;
    expect(found && typedProblem(naming, stored, typed, found).message).toMatch(message);
  });

  it.each([
    ['b7', 'B7', 'B♭7'],
    ['hm', 'Hm', 'Bm'],
    ['es7', 'Es7', 'E♭7'],
    ['fis7', 'Fis7', 'F♯7'],
    ['asus4', 'Asus4', 'Asus4'],
  ])('take %s in German names for %s', (word, shown, meant) => {
    const typed = `| H | ${word} |`;
    const stored = chartInLetters('german', typed);
    const [found] = parseChart(stored, COMMON_TIME).problems;
    const guessed = found && guessedIn('german', stored, typed, found);
    expect(guessed?.suggestion).toBe(meant);
    expect(guessed && typedProblem('german', stored, typed, guessed).suggestion).toBe(shown);
  });

  it.each<[Naming, string, RegExp, string | undefined, number]>([
    ['german', '| As | Fismx7 |', /“Fismx7” begins like a chord on Fis.*Fism7 or Fis7/, 'Fism7', 8],
    ['german', '| Es B | Bmx7 |', /“Bmx7” begins like a chord on B,/, 'Bm7', 10],
    ['fixed do', '| Sib Mib | Solmx7 |', /“Solmx7” begins like a chord on Sol,/, 'Solm7', 13],
    [
      'fixed do',
      '| Do | xyz |',
      /“xyz” is not a chord symbol. Write for example Rem7, Si♭maj7 or Fa\/La/,
      undefined,
      8,
    ],
  ])('%s: %j', (naming, typed, message, suggestion, column) => {
    const stored = chartInLetters(naming, typed);
    const [problem] = parseChart(stored, COMMON_TIME).problems;
    if (problem === undefined) throw new Error('no problem');
    const shown = typedProblem(naming, stored, typed, problem);
    expect(shown.message).toMatch(message);
    expect(shown.suggestion).toBe(suggestion);
    expect(shown.column).toBe(column);
    expect(typed.slice(shown.column - 1, shown.column - 1 + shown.length)).toBe(typed.split(' ').at(-2));
  });
});
