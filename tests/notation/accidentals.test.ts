import { describe, expect, it } from 'vitest';
import { LETTERS, type SpelledPitch } from '../../src/core/base';
import { accidentalsOf } from '../../src/core/notation';
import type { Key } from '../../src/core/theory';

const SIGNS = { '𝄫': -2, '♭': -1, '': 0, '♯': 1, '𝄪': 2 } as const;
const isSign = (text: string): text is keyof typeof SIGNS => text in SIGNS;

function pitch(text: string): SpelledPitch {
  const letter = LETTERS.find((one) => one === text[0]);
  const octave = Number(text.at(-1));
  const sign = text.slice(1, -1);
  if (!letter || !isSign(sign)) throw new Error(`No pitch: ${text}`);
  return { letter, alteration: SIGNS[sign], octave };
}

/** Bars between `|`, `~` before a note tied from the bar before; answers with the sign of each note, `-` for none. */
function write(line: string, key: Key): string {
  const bars = line.split('|').map((bar) =>
    bar
      .trim()
      .split(' ')
      .map((note) => ({ pitch: pitch(note.replace('~', '')), continued: note.startsWith('~') })),
  );
  return accidentalsOf(bars, key)
    .map((bar) =>
      bar
        .map((sign) => {
          if (!sign) return '-';
          const text = ['𝄫', '♭', '♮', '♯', '𝄪'][sign.alteration + 2] ?? '?';
          return sign.courtesy ? `(${text})` : text;
        })
        .join(' '),
    )
    .join(' | ');
}

const C: Key = { tonic: { letter: 'C', alteration: 0 }, mode: 'major' };
const F: Key = { tonic: { letter: 'F', alteration: 0 }, mode: 'major' };
const A: Key = { tonic: { letter: 'A', alteration: 0 }, mode: 'major' };
const CSharp: Key = { tonic: { letter: 'C', alteration: 1 }, mode: 'major' };

/**
 * An accidental lasts its bar and its octave, the next bar is reminded (musictheoryde-mystified.com, accidental
 * meaning); reminders in brackets, and a tie that carries its accidental: common practice, no source.
 */
describe('accidentals', () => {
  it.each([
    ['the signature needs none', F, 'B♭1 B♭2', '- -'],
    ['an accidental lasts its bar', C, 'F♯2 G2 F♯2 F2', '♯ - - ♮'],
    ['and its octave only', C, 'F♯1 F♯2', '♯ ♯'],
    ['another octave going back is reminded', C, 'F♯1 F2 F2', '♯ (♮) -'],
    ['the next bar is reminded once', C, 'F♯1 | F1 F1', '♯ | (♮) -'],
    ['and must be told again when it is altered too', C, 'F♯1 | F♯1', '♯ | ♯'],
    ['the bar after the next is not', C, 'F♯1 | G1 | F1', '♯ | - | -'],
    ['a natural against the signature', F, 'B1 B♭1', '♮ ♭'],
    ['and its reminder', F, 'B1 | B♭1', '♮ | (♭)'],
    ['no second reminder after a sign', C, 'F♯1 F1 F2', '♯ ♮ -'],
    ['a tie carries its accidental over the bar line', C, 'F♯1 | ~F♯1 F♯1', '♯ | - ♯'],
    ['sharps of the signature', A, 'C♯2 G♯1 G1', '- - ♮'],
    ['double sharps', CSharp, 'F𝄪1 F♯1', '𝄪 ♯'],
  ] as const)('%s', (_, key, line, signs) => {
    expect(write(line, key)).toBe(signs);
  });
});
