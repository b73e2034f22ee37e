import type { ChartPlace } from './types';
import { timesIn } from './word-signs';
import { withoutUnseen, wordEnd } from './words';

/** A piece of a line of bars; `place` covers it exactly. */
export type Token =
  | {
      readonly kind: 'bar line';
      /** `|:` */
      readonly opens: boolean;
      /** `:|` */
      readonly closes: boolean;
      /** `||` */
      readonly double: boolean;
      readonly place: ChartPlace;
    }
  /** `x3` */
  | { readonly kind: 'times'; readonly count: number; readonly text: string; readonly place: ChartPlace }
  /** `1.`, `1.-3.` */
  | { readonly kind: 'ending'; readonly numbers: readonly number[]; readonly place: ChartPlace }
  /** `(3/4)`: what stands in the brackets. */
  | { readonly kind: 'directive'; readonly text: string; readonly place: ChartPlace }
  | { readonly kind: 'word'; readonly text: string; readonly place: ChartPlace };

export type Word = Extract<Token, { kind: 'word' }>;

const BAR_LINE = /:\|:|:\|\|?|\|\|:|\|:|\|\||\|/y;
/** Blanks only where a metre, a key, a pickup or a sign of the way may have them, so that stray brackets do not swallow what is between. */
const DIRECTIVE =
  /\((\d{1,2}\s*\/\s*\d{1,2}|key[\s:][^()|]{0,40}|pickup[\s:]{0,2}\d{1,2}(?:\.5)?|to coda|(?:d\.? ?[cs]\.?|da capo|dal segno)(?: al (?:fine|coda))?|[^\s()|]{1,40})\)(?=\s|\||:\||$)/iy;
const ENDING = /^\d{1,2}(?:(?:[,-]|\.[,-]?)\d{1,2})*\.$/;

function matchAt(pattern: RegExp, text: string, index: number): RegExpExecArray | null {
  pattern.lastIndex = index;
  return pattern.exec(text);
}

/** `1.` is 1, `1.,2.` is 1 and 2, `1.-3.` is 1, 2 and 3. */
function endingNumbers(text: string): readonly number[] {
  const numbers = new Set<number>();
  for (const [, from, to] of text.matchAll(/(\d{1,2})\.?(?:-(\d{1,2})\.?)?/g)) {
    const last = Number(to ?? from);
    for (let number = Number(from); number <= last; number += 1) numbers.add(number);
  }
  return [...numbers].sort((one, other) => one - other);
}

function wordToken(text: string, place: ChartPlace): Token {
  const count = timesIn(text);
  if (count !== null) return { kind: 'times', count, text, place };
  if (ENDING.test(text)) return { kind: 'ending', numbers: endingNumbers(text), place };
  return { kind: 'word', text, place };
}

/** Cuts a line of bars into tokens; every character that is not blank belongs to exactly one. Linear time. */
export function scanLine(written: string, line: number): readonly Token[] {
  const text = withoutUnseen(written);
  const tokens: Token[] = [];
  let index = 0;
  while (index < text.length) {
    const place = (length: number): ChartPlace => ({ line, column: index + 1, length });
    const barLine = matchAt(BAR_LINE, text, index);
    const directive = barLine ? null : matchAt(DIRECTIVE, text, index);
    const end = barLine || directive ? index : wordEnd(text, index);
    if (barLine) {
      const [sign] = barLine;
      tokens.push({
        kind: 'bar line',
        opens: sign.endsWith(':'),
        closes: sign.startsWith(':'),
        double: sign.includes('||'),
        place: place(sign.length),
      });
      index += sign.length;
    } else if (directive) {
      tokens.push({
        kind: 'directive',
        text: (directive[1] ?? '').trim(),
        place: place(directive[0].length),
      });
      index += directive[0].length;
    } else if (end > index) {
      tokens.push(wordToken(text.slice(index, end), place(end - index)));
      index = end;
    } else {
      index += 1;
    }
  }
  return tokens;
}
