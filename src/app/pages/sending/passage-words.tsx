import type { LineSheet } from '../../../core/lesson';
import { boundsOf } from '../../../core/playing';
import { NumberWord } from '../../controls';
import type { PassageWishes } from './wishes';

interface PassageWordsProps {
  /** What they are said of, for those who hear the page: `tracks`. */
  readonly of: string;
  readonly sheet: LineSheet;
  readonly wishes: PassageWishes;
  readonly mostRounds: number;
  readonly change: (part: Partial<PassageWishes>) => void;
}

/** Which bars are played and how often: `Bars 1 to 8, played 4 times`. */
export function PassageWords({ of, sheet, wishes, mostRounds, change }: PassageWordsProps) {
  const bounds = boundsOf(sheet);
  return (
    <>
      {'Bars '}
      <NumberWord
        label={`First bar of the ${of}`}
        value={wishes.first}
        {...bounds}
        onChange={(first) => change({ first })}
      />
      {' to '}
      <NumberWord
        label={`Last bar of the ${of}`}
        value={wishes.last}
        {...bounds}
        onChange={(last) => change({ last })}
      />
      {', played '}
      <NumberWord
        label={`Rounds of the ${of}`}
        value={wishes.rounds}
        least={1}
        most={mostRounds}
        onChange={(rounds) => change({ rounds })}
      />
      {wishes.rounds === 1 ? ' time' : ' times'}
    </>
  );
}
