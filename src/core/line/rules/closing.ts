import { classAbove, type Stretch } from '../harmony';
import { isHome, type Tone } from '../tones';
import { type Rule, TEACHERS_LIST, type Whole } from './types';

/** Half steps above the roots that lead home from the end of a line that loops: 2, 3, 5 and 7. */
const LEADS_HOME = new Set([1, 2, 3, 4, 7, 10, 11]);

/** Whether a line that ends on this note leads back into the bar that follows at the seam. */
export function leadsHome(last: Tone, start: Stretch | null): boolean {
  // A note that is tied over the seam is the first note of the round, ahead of its time.
  if (last.tiedOn || last.interval < 0 || (last.member && last.interval > 0)) return true;
  if (LEADS_HOME.has(last.interval)) return true;
  return start?.chord !== null && start !== null && LEADS_HOME.has(classAbove(last.midi, start.rootClass));
}

/** The last bar of the round; a level that knows nothing but roots closes as it can. */
function places({ model, heard }: Whole): readonly number[] {
  const index = model.order.at(-1);
  const last = index === undefined ? undefined : heard[index]?.at(-1);
  if (index === undefined || !last || model.request.level === 0) return [];
  const start = model.bars[model.order[0] ?? 0]?.stretches[0] ?? null;
  return isHome(last) || last.interval === 0 || leadsHome(last, start) ? [] : [index];
}

export const CLOSING: Rule = {
  number: 10,
  rule: 'A closing bar ends on the root; a bar that loops ends on 2, 3, 5 or 7 and leads home.',
  source: TEACHERS_LIST,
  heard: 'the line neither closes on its root nor leads back to the start',
  mend: 'end on 2, 3, 5 or 7',
  caution: { own: 'as the last bar it does not lead back to the start', entering: null },
  alone: null,
  inParts: false,
  meeting: null,
  tied: null,
  whole: { places, concerns: (line, bar) => places(line).includes(bar.index) },
};
