import { TICKS_PER_QUARTER } from '../../base';
import type { Tone } from '../tones';
import { type Alone, NO_CAUTION, type Rule, TEACHERS_LIST, type Whole } from './types';

/** Beat three, where the drums drop in the fast count. */
const DROP = TICKS_PER_QUARTER * 2;

/** The chops fall on 2 and 4. */
const CHOPS: ReadonlySet<number> = new Set([TICKS_PER_QUARTER, TICKS_PER_QUARTER * 3]);

const onlyDoublesChops = ({ bar, tones }: Alone): boolean =>
  bar.metre.count === 4 && tones.length > 0 && tones.every((tone) => CHOPS.has(tone.start));

const soundsOn = (tones: readonly Tone[], tick: number): boolean =>
  tones.some((tone) => tone.start <= tick && tone.start + tone.duration > tick);

/** The first bar that leaves the drop empty, where half of the bars do. */
function places({ model, heard }: Whole): readonly number[] {
  if (!model.request.feel.bassRole.carriesThree) return [];
  const bars = model.bars.filter(
    (bar) => bar.metre.count === 4 && bar.metre.unit === 4 && (heard[bar.index]?.length ?? 0) > 0,
  );
  const empty = bars.filter((bar) => !soundsOn(heard[bar.index] ?? [], DROP));
  const first = empty[0];
  return first && empty.length * 2 >= bars.length ? [first.index] : [];
}

export const DROP_ON_THREE: Rule = {
  number: 14,
  rule: 'Where the drums drop on three, the bass sounds there in most bars, and it never only doubles the chops.',
  source: TEACHERS_LIST,
  heard: 'the bass leaves beat three empty in most bars or only doubles the chops',
  mend: 'sound on three',
  caution: NO_CAUTION,
  alone: (at) => at.model.request.feel.bassRole.carriesThree && onlyDoublesChops(at),
  inParts: false,
  meeting: null,
  tied: null,
  whole: { places, concerns: () => false },
};
