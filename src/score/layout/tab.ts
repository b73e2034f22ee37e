import { lineMark, type Mark, textMark } from '../ink';
import { CAPITAL_HEIGHT } from '../metrics/measure';
import type { TextInk } from '../types';
import type { TabPlace } from './frame';
import { eventAt, eventsOf, type PlacedEvent } from './joints';
import { type FretPlace, tabLinks } from './links';
import type { PlacedBar } from './placed';
import { STAFF_LEFT, type Style, THICKNESS } from './style';

/** White between a fret number and its line. */
const GROUND = 2.5;

interface Fret {
  readonly string: number;
  readonly mark: TextInk;
}

function fretNumber({ event, x }: PlacedEvent, tab: TabPlace, style: Style): Fret | null {
  if (!event.fret) return null;
  const { string, text } = event.fret;
  const baseline = tab.top + (string - 1) * tab.space + (CAPITAL_HEIGHT * style.sizes.tab) / 2;
  return {
    string,
    mark: textMark('fret', text, x, baseline, { size: style.sizes.tab, anchor: 'middle' }),
  };
}

/** The number of an event's note: a note tied within its bar has it at its first piece. */
function fretPlace(placed: PlacedEvent, tab: TabPlace, style: Style): FretPlace | null {
  const { events } = placed.placed.bar.content;
  const first = events.findIndex(({ note }) => note === placed.event.note);
  const head = eventAt(placed.placed, first);
  const fret = placed.event.note === null || head === null ? null : fretNumber(head, tab, style);
  if (fret === null) return null;
  const { left, right, top } = fret.mark.box;
  return { left, right, top, y: tab.top + (fret.string - 1) * tab.space };
}

/** Fret numbers with the curves and slides between them, without their lines. */
export function tabNumbers(bars: readonly PlacedBar[], tab: TabPlace, style: Style): readonly Mark[] {
  const numbers = eventsOf(bars).flatMap((placed) => fretNumber(placed, tab, style)?.mark ?? []);
  return [...numbers, ...tabLinks(bars, (placed) => fretPlace(placed, tab, style))];
}

/**
 * Fret numbers on their lines. The lines leave out the ground of each number instead of being covered, so that the
 * tab can stand on paper of any colour.
 */
export function tabMarks(
  bars: readonly PlacedBar[],
  tab: TabPlace,
  right: number,
  style: Style,
): readonly Mark[] {
  const frets = eventsOf(bars).flatMap((placed) => fretNumber(placed, tab, style) ?? []);
  const lines: Mark[] = [];
  for (let string = 1; string <= tab.lines; string += 1) {
    const y = tab.top + (string - 1) * tab.space;
    let from = STAFF_LEFT;
    for (const { mark } of frets.filter((fret) => fret.string === string)) {
      const until = mark.box.left - GROUND;
      if (until > from) lines.push(lineMark('tab-line', from, y, until, y, THICKNESS.staff));
      from = Math.max(from, mark.box.right + GROUND);
    }
    lines.push(lineMark('tab-line', from, y, right, y, THICKNESS.staff));
  }
  return [...lines, ...tabNumbers(bars, tab, style)];
}
