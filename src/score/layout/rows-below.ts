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
  const { options, sizes } = style;
  const rows: { name: string; texts: readonly Mark[] }[] = [];
  const row = (
    role: InkRole,
    name: string,
    size: number,
    textOf: (placed: PlacedBar) => readonly RowText[],
  ): void => {
    const texts = bars.flatMap((placed) =>
      textOf(placed).map(({ tick, text }) =>
        textMark(role, text, xOfTick(placed, tick), 0, { size, anchor: 'middle' }),
      ),
    );
    rows.push({ name, texts });
  };
  const eventTexts =
    (name: 'finger' | 'degree') =>
    (placed: PlacedBar): readonly RowText[] =>
      placed.bar.content.events
        .filter((event) => event[name] !== '')
        .map((event) => ({ tick: event.start, text: event[name] }));
  if (options.fingers) row('finger', 'finger', sizes.finger, eventTexts('finger'));
  if (options.degrees) row('degree', 'degree', sizes.degree, eventTexts('degree'));
  if (options.counting) row('counting', 'count', sizes.counting, (placed) => placed.bar.content.counts);
  if (options.numerals) rows.push({ name: 'numeral', texts: numeralMarks(bars, style) });
  const apart = options.parts === 'tab' ? TAB_ALONE_GAP : 0;
  let lowest = Math.max(STAFF_HEIGHT, boxOf(tab)?.bottom ?? 0) + apart;
  return rows.flatMap(({ name, texts }) => {
    const box = boxOf(texts);
    if (!box) return [];
    const shift = lowest + ROW_GAP - box.top;
    lowest = box.bottom + shift;
    const heading = named ? rowName(name, texts, style) : [];
    return [...texts, ...heading].map((mark) => moveMark(mark, 0, shift));
  });
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

/** What a row is, where its left margin has room. */
function rowName(name: string, texts: readonly Mark[], { sizes }: Style): readonly Mark[] {
  const mark = textMark('row-name', name, STAFF_LEFT, 0, { size: sizes.small, italic: true });
  return texts.some(({ box }) => box.left < mark.box.right + 4) ? [] : [mark];
}

interface RowText {
  readonly tick: number;
  readonly text: string;
}
