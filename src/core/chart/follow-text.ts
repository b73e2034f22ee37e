import { barSignature } from './harmony';
import { matchBars } from './match';
import { isAgain } from './text';
import type { Chart } from './types';

/** A chart as it stands in its text. */
interface Written {
  readonly text: string;
  readonly chart: Chart;
}

/**
 * {@link matchBars} for a change made in the text, told from where the caret stands behind it: bars that stand in
 * what was not touched are followed by their place. Among bars of the same chord, that is the only way to tell which
 * one is new or gone.
 */
export function matchByCaret(before: Written, after: Written, caret: number): readonly (number | null)[] {
  const rest = after.text.slice(caret);
  const old = before.chart.bars.map(barSignature);
  const now = after.chart.bars.map(barSignature);
  if (!before.text.endsWith(rest)) return matchBars(old, now);
  const most = Math.min(caret, before.text.length - rest.length);
  let head = 0;
  while (head < most && before.text[head] === after.text[head]) head += 1;

  const [from, to] = [spansOf(before), spansOf(after)];
  const matches: (number | null)[] = now.map(() => null);
  const fix = (one: Span | undefined, other: Span | undefined): boolean => {
    if (one === undefined || other === undefined || old[one.bar] !== now[other.bar]) return false;
    matches[other.bar] = one.bar;
    return true;
  };
  let first = 0;
  while (endOf(from[first]) <= head && endOf(to[first]) <= head && fix(from[first], to[first])) first += 1;
  // A bar that is typed before another is one with it until its bar line comes: then the other is the old one.
  const tail = before.text.length - rest.length;
  for (let last = 1; last <= Math.min(from.length, to.length) - first; last += 1) {
    const [one, other] = [from.at(-last), to.at(-last)];
    if (endOf(one) <= tail || (other?.start ?? 0) < caret || !fix(one, other)) break;
  }
  return filled(matches, old, now);
}

const endOf = (span: Span | undefined): number => span?.end ?? Number.POSITIVE_INFINITY;

/** A written bar and where it stands in the text, in characters from its beginning. */
interface Span {
  readonly bar: number;
  readonly start: number;
  readonly end: number;
}

function spansOf({ text, chart }: Written): readonly Span[] {
  const starts = [0];
  for (const { index, 0: end } of text.matchAll(/\r\n|\r|\n/g)) starts.push(index + end.length);
  return chart.bars.flatMap((bar, index): readonly Span[] => {
    if (isAgain(chart, bar)) return [];
    const start = (starts[bar.place.line - 1] ?? 0) + bar.place.column - 1;
    return [{ bar: index, start, end: start + bar.place.length }];
  });
}

/** The bars between those that are followed, matched by their content. */
function filled(
  fixed: readonly (number | null)[],
  old: readonly string[],
  now: readonly string[],
): readonly (number | null)[] {
  const matches: (number | null)[] = [];
  let from = 0;
  for (let to = 0; to <= now.length; to += 1) {
    const own = to === now.length ? old.length : (fixed[to] ?? null);
    if (own === null) continue;
    const gap = matchBars(old.slice(from, own), now.slice(matches.length, to));
    const begin = from;
    matches.push(...gap.map((index) => (index === null ? null : begin + index)));
    if (to < now.length) matches.push(own);
    from = own + 1;
  }
  return matches;
}
