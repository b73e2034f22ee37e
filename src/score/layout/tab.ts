import { lineMark, type Mark, textMark } from '../ink';
import { CAPITAL_HEIGHT } from '../metrics/measure';
import type { TabPlace } from './frame';
import { type PlacedBar, xOfTick } from './placed';
import { STAFF_LEFT, type Style, THICKNESS } from './style';

/** White between a fret number and its line. */
const GROUND = 2.5;

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
  const frets = bars.flatMap((placed) =>
    placed.bar.content.events.flatMap((event) => {
      if (!event.fret) return [];
      const { string, text } = event.fret;
      const y = tab.top + (string - 1) * tab.space;
      const baseline = y + (CAPITAL_HEIGHT * style.sizes.tab) / 2;
      const x = xOfTick(placed, event.start);
      return [
        { string, mark: textMark('fret', text, x, baseline, { size: style.sizes.tab, anchor: 'middle' }) },
      ];
    }),
  );
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
  return [...lines, ...frets.map(({ mark }) => mark)];
}
