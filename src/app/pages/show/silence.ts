import { barTicks, beatTicks, type Metre } from '../../../core/base';
import type { InkRole, SystemLayout } from '../../../score';
import { spaceOf } from './reading';

interface Sounding {
  readonly start: number;
  readonly duration: number;
}

/** A stretch of a bar in ticks from its beginning. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/** Where nothing sounds for half a beat or longer. */
export function silencesOf(notes: readonly Sounding[], metre: Metre): readonly Stretch[] {
  const least = beatTicks(metre) / 2;
  const gaps: Stretch[] = [];
  let from = 0;
  for (const { start, duration } of [...notes, { start: barTicks(metre), duration: 0 }]) {
    if (start - from >= least) gaps.push({ start: from, end: start });
    from = Math.max(from, start + duration);
  }
  return gaps;
}

/** The rows of texts under the staves. */
const ROWS: ReadonlySet<InkRole> = new Set(['degree', 'counting', 'finger', 'numeral']);

/**
 * The word in a silence: at most so many staff spaces high and so much of the silence's width, as its type size. The letters
 * reach over `letters` of that, and their middle lies `middle` of it below the line's top. `clear` staff spaces of white
 * are over and under them, and below a single staff or tab they have `below` of these where no text is nearer.
 */
const WORD = { most: 2.6, ofWidth: 0.4, clear: 0.12, below: 1.8, letters: 0.72, middle: 0.5 } as const;

/** Where the word of a silence stands, in CSS pixels from the system's top: the top of its line, and its type size. */
export interface SilenceWord {
  readonly top: number;
  readonly size: number;
}

/**
 * Places the word of a silence where no line, sign or text is: between staff and tab, or under the one that is drawn.
 * @param width of the silence, in CSS pixels
 */
export function silenceWord(
  system: Pick<SystemLayout, 'staff' | 'tab' | 'scale' | 'ink'>,
  width: number,
): SilenceWord {
  const { staff, tab, scale, ink } = system;
  const space = spaceOf(system);
  const rows = ink.flatMap(({ role, box }) => (ROWS.has(role) ? [box.top * scale] : []));
  const [from, to] =
    tab.top > staff.bottom
      ? [staff.bottom, tab.top]
      : [tab.bottom, Math.min(...rows, tab.bottom + WORD.below * space)];
  const room = to - from - 2 * WORD.clear * space;
  const size = Math.max(0, Math.min(WORD.most * space, WORD.ofWidth * width, room / WORD.letters));
  return { top: (from + to) / 2 - WORD.middle * size, size };
}
