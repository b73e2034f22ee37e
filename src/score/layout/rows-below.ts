import { boxOf, type Mark, moveMark, textMark } from '../ink';
import type { InkRole } from '../types';
import { CHORD_SHIFT } from './measure-bar';
import { type PlacedBar, xOfTick } from './placed';
import { STAFF_HEIGHT, STAFF_LEFT, type Style } from './style';
import { numeralParts, symbolMark } from './symbols';

const ROW_GAP = 6;
/** Below a tab alone no bracket holds the rows off the frets of its lowest line. */
const TAB_ALONE_GAP = 4;

/**
 * Fingers, degrees, counting and the chords' numerals under the tab, one row each.
 * @param named whether the rows say what they are
 */
export function marksBelow(
  tab: readonly Mark[],
  bars: readonly PlacedBar[],
  named: boolean,
  style: Style,
): readonly Mark[] {
  const apart = style.options.parts === 'tab' ? TAB_ALONE_GAP : 0;
  let lowest = Math.max(STAFF_HEIGHT, boxOf(tab)?.bottom ?? 0) + apart;
  return rowsOf(style).flatMap(({ name, textsOf }) => {
    const texts = textsOf(bars);
    const box = boxOf(texts);
    if (!box) return [];
    const shift = lowest + ROW_GAP - box.top;
    lowest = box.bottom + shift;
    const heading = named ? [rowName(name, style)] : [];
    return [...texts, ...heading].map((mark) => moveMark(mark, 0, shift));
  });
}

interface RowKind {
  readonly name: string;
  readonly textsOf: (bars: readonly PlacedBar[]) => readonly Mark[];
}

/** The rows that are asked for, from top to bottom. */
function rowsOf(style: Style): readonly RowKind[] {
  const { options, sizes } = style;
  const row = (
    role: InkRole,
    name: string,
    size: number,
    textOf: (placed: PlacedBar) => readonly RowText[],
  ): RowKind => ({
    name,
    textsOf: (bars) =>
      bars.flatMap((placed) =>
        textOf(placed).map(({ tick, text }) =>
          textMark(role, text, xOfTick(placed, tick), 0, { size, anchor: 'middle' }),
        ),
      ),
  });
  const eventTexts =
    (name: 'finger' | 'degree') =>
    (placed: PlacedBar): readonly RowText[] =>
      placed.bar.content.events
        .filter((event) => event[name] !== '')
        .map((event) => ({ tick: event.start, text: event[name] }));
  return [
    ...(options.fingers ? [row('finger', 'finger', sizes.finger, eventTexts('finger'))] : []),
    ...(options.degrees ? [row('degree', 'degree', sizes.degree, eventTexts('degree'))] : []),
    ...(options.counting
      ? [row('counting', 'count', sizes.counting, (placed) => placed.bar.content.counts)]
      : []),
    ...(options.numerals
      ? [{ name: 'numeral', textsOf: (bars: readonly PlacedBar[]) => numeralMarks(bars, style) }]
      : []),
  ];
}

/** The chords' numerals, each under its chord; one is written again where the same chord comes to mean another thing. */
function numeralMarks(bars: readonly PlacedBar[], { sizes }: Style): readonly Mark[] {
  let before = '';
  return bars.flatMap((placed, index) =>
    placed.bar.content.chords.flatMap(({ tick, numeral, again }) => {
      const stands = !again || (index === 0 && tick === 0) || numeral !== before;
      before = numeral;
      return stands && numeral !== ''
        ? [
            symbolMark('numeral', numeralParts(numeral), xOfTick(placed, tick) - CHORD_SHIFT, {
              size: sizes.degree,
              bold: true,
            }),
          ]
        : [];
    }),
  );
}

/** What a row is, in the left margin. */
const rowName = (name: string, { sizes }: Style): Mark =>
  textMark('row-name', name, STAFF_LEFT, 0, { size: sizes.small, italic: true });

/** White after the name of a row. */
const NAME_GAP = 4;

/** From where on the texts of rows may stand in a system that names its rows; 0 where there are none. */
export const namesEnd = (style: Style): number =>
  Math.max(0, ...rowsOf(style).map(({ name }) => rowName(name, style).box.right + NAME_GAP));

interface RowText {
  readonly tick: number;
  readonly text: string;
}
