import { pickupOfEighths } from './limits';
import { type Navigation, readNavigation } from './navigation';
import type { Token } from './scanner';
import { type BarLine, type TextChanges, tokensOf } from './text';
import type { ChartPlace } from './types';

/** A bar in its line: the bar lines around it, and what stands between them. */
export interface Cell {
  readonly line: number;
  readonly before: BarLine | null;
  readonly after: BarLine | null;
  /** `x3` right behind the bar line after it, and behind the one before it. */
  readonly timesAfter: Token | null;
  readonly timesBefore: Token | null;
  /** Ending number, metre, key or pickup before its chords. */
  readonly heads: readonly Token[];
  /** Signs of the way behind its chords. */
  readonly tails: readonly Token[];
  /** Whether other bars stand in the line before and after it. */
  readonly follows: boolean;
  readonly leads: boolean;
}

/** The cell of a bar that is written at a place. */
export function cellOf(text: TextChanges, place: ChartPlace): Cell {
  const tokens = tokensOf(text.line(place.line));
  const isBarLine = (token: Token): token is BarLine => token.kind === 'bar line';
  const first = tokens.findIndex((token) => token.kind === 'word' && token.place.column >= place.column);
  const from = tokens.findLastIndex((token, index) => index < first && isBarLine(token));
  const to = tokens.findIndex((token, index) => index > first && isBarLine(token));
  const barLine = (at: number) => {
    const token = tokens[at];
    return token !== undefined && isBarLine(token) ? token : null;
  };
  const times = (at: number) => {
    const token = at < 0 ? undefined : tokens[at + 1];
    return token?.kind === 'times' ? token : null;
  };
  return {
    line: place.line,
    before: barLine(from),
    after: barLine(to),
    timesBefore: times(from),
    timesAfter: times(to),
    heads: tokens
      .slice(from + 1, first)
      .filter((token) => token.kind === 'ending' || token.kind === 'directive'),
    tails: tokens
      .slice(first, to < 0 ? undefined : to)
      .filter((token) => readNavigation(bracketed(token)) !== null),
    follows: from > 0 && tokens.slice(0, from).some(({ kind }) => kind === 'word'),
    leads: to >= 0 && tokens.slice(to).some(({ kind }) => kind === 'word'),
  };
}

/** The place of a token in the text; tokens are counted in line 1. */
export const placed = (token: Token, line: number): ChartPlace => ({ ...token.place, line });

/** What stands in the brackets of a metre, key or pickup; '' for other tokens. */
const bracketed = (token: Token): string => (token.kind === 'directive' ? token.text : '');

type Head = 'ending' | 'key' | 'metre' | 'pickup' | Navigation;

/** What a token before the chords of a bar says. */
export function headKind(token: Token): Head {
  if (token.kind === 'ending') return 'ending';
  const sign = readNavigation(bracketed(token));
  if (sign !== null) return sign;
  if (/^key/i.test(bracketed(token))) return 'key';
  return bracketed(token).includes('/') && pickupOfEighths(bracketed(token)) === null ? 'metre' : 'pickup';
}
