import { barRange, capitalised } from '../base';
import { type Jump, jumpOf, type Navigation } from './navigation';
import { followedAs, walk } from './order';
import type { ProblemList } from './problems';
import type { Chart, ChartPlace } from './types';

/** A sign with the bar it stands in and its place in the text. */
export interface PlacedSign {
  readonly bar: number;
  readonly sign: Navigation;
  readonly place: ChartPlace;
}

/** Says which bars are never played, and which signs lead nowhere: what is written can be heard, or is told. */
export function reportUnplayed(chart: Chart, signs: readonly PlacedSign[], problems: ProblemList): void {
  const { order, followed } = walk(chart);
  const played = new Set(order);
  for (const each of signs) {
    const message = followed.has(followedAs(each.bar, each.sign))
      ? lacksItsEnd(each.sign, signs)
      : leadsNowhere(each, signs, played);
    if (message !== null) problems.push({ ...each.place, message });
  }
  chart.bars.forEach((bar, index) => {
    const before = chart.bars[index - 1];
    const goesOn = before !== undefined && !played.has(index - 1) && sameNumbers(before.ending, bar.ending);
    if (played.has(index) || goesOn) return;
    let last = index;
    while (
      chart.bars[last + 1] &&
      !played.has(last + 1) &&
      sameNumbers(chart.bars[last + 1]?.ending ?? null, bar.ending)
    ) {
      last += 1;
    }
    const to = chart.bars[last]?.number ?? bar.number;
    const which = `${capitalised(barRange(bar.number, to))} ${to === bar.number ? 'is' : 'are'}`;
    problems.push({ ...bar.place, message: `${which} never played: ${reason(bar.ending, signs)}` });
  });
}

const sameNumbers = (one: readonly number[] | null, other: readonly number[] | null): boolean =>
  one?.join() === other?.join();

function reason(ending: readonly number[] | null, signs: readonly PlacedSign[]): string {
  if (ending !== null) {
    const number = ending[0] ?? 1;
    const missing = number > 1 ? number - 1 : null;
    return missing === null
      ? 'its ending has no turn of its own. Give each ending another number.'
      : `no time through leads to ending ${number}. Number the endings from 1 on without a gap, each but the last closed by :|.`;
  }
  return signs.some(({ sign }) => jumpOf([sign]) !== null)
    ? 'the music goes back before it, and nothing leads to it. Write (to coda) where it leaves and (coda) where it goes on.'
    : 'no way through the chart leads to it.';
}

/** A jump that names a fine or a coda the chart has not. */
function lacksItsEnd(sign: Navigation, signs: readonly PlacedSign[]): string | null {
  const until = jumpOf([sign])?.until ?? null;
  const has = (other: Navigation): boolean => signs.some((each) => each.sign === other);
  if (until === 'fine' && !has('fine')) {
    return `(${sign}) goes on to the fine, and no bar has a fine: write (fine) in the bar where the music ends.`;
  }
  return until === 'coda' && !has('to coda')
    ? `(${sign}) goes on to the coda, and no bar leaves for a coda: write (to coda) in the bar after which it does.`
    : null;
}

function leadsNowhere(
  { sign, bar }: PlacedSign,
  signs: readonly PlacedSign[],
  played: ReadonlySet<number>,
): string | null {
  const has = (other: Navigation): boolean => signs.some((each) => each.sign === other);
  const jumps = signs.flatMap((each): readonly Jump[] => {
    const jump = jumpOf([each.sign]);
    return jump === null ? [] : [jump];
  });
  switch (sign) {
    case 'segno':
      return jumps.some(({ to }) => to === 'segno')
        ? 'Another (segno) is gone back to, not this one.'
        : 'Nothing goes back to this sign: write (D.S. al coda) or (D.S. al fine) where the music does.';
    case 'coda':
      return has('to coda')
        ? 'The way to this coda is never taken: write (D.S. al coda) or (D.C. al coda) before it.'
        : 'Nothing leads to this coda: write (to coda) in the bar after which the music leaves for it.';
    case 'to coda':
      if (jumps.every(({ until }) => until === 'fine')) {
        return '(to coda) holds after (D.C. al coda) or (D.S. al coda), and the chart has neither.';
      }
      return 'The music never leaves for the coda here: write (coda) before the bar where it goes on, and (to coda) between the sign and the jump back.';
    case 'fine':
      return jumps.length === 0
        ? 'The music never ends here: write (D.C. al fine) or (D.S. al fine) where it goes back.'
        : 'The music does not come by this (fine) after its jump back.';
    default:
      if (!played.has(bar)) return null;
      return sign.startsWith('D.S.') && !has('segno')
        ? `(${sign}) goes back to the sign, and no bar has one: write (segno) before the bar.`
        : `(${sign}) is not taken here.`;
  }
}
