import type { Chart } from './types';

/** What an ending that loses its only bar leaves to the endings beside it. */
export interface EndingGone {
  /** The repeat sign behind the bar goes to the bar before the endings. */
  readonly signStays: boolean;
  /** How often the passage is then played, where its sign stays and does not say so by itself. */
  readonly times: number | null;
  /** New numbers for other endings, by the index of their first bar; an empty list takes the number away. */
  readonly numbers: ReadonlyMap<number, readonly number[]>;
}

/** What goes with a bar that is the whole of an ending; null for a bar outside endings, or one of several. */
export function endingGone(chart: Chart, index: number): EndingGone | null {
  const bar = chart.bars[index];
  const own = bar?.ending;
  if (bar === undefined || own == null) return null;
  const inEnding = (at: number) =>
    chart.bars[at]?.section === bar.section ? (chart.bars[at]?.ending ?? null) : null;
  if (inEnding(index - 1) === own || inEnding(index + 1) === own) return null;
  let first = index;
  while (inEnding(first - 1) !== null && chart.bars[first]?.repeatStart === false) first -= 1;
  const others: number[] = [];
  let open = false;
  for (let at = first; inEnding(at) !== null && (at === first || !chart.bars[at]?.repeatStart); at += 1) {
    if (at === index || inEnding(at) === inEnding(at - 1)) continue;
    others.push(at);
    open = chart.bars[at]?.repeatEnd === null && inEnding(at + 1) === null;
  }
  const lone = others.length === 0 || (others.length === 1 && first === index && open);
  if (lone) {
    const numbers = new Map(others.map((at): [number, readonly number[]] => [at, []]));
    return { signStays: true, times: bar.repeatEnd === 2 ? null : bar.repeatEnd, numbers };
  }
  const lower = (number: number) => number - own.filter((gone) => gone < number).length;
  const numbers = new Map(
    others.map((at): [number, readonly number[]] => [
      at,
      (inEnding(at) ?? []).filter((number) => !own.includes(number)).map(lower),
    ]),
  );
  return { signStays: false, times: null, numbers };
}
