import { type Chart, type ChartBar, ownSpans, printChart, writtenMetres } from '../chart';
import { type Key, sameKey } from '../theory';
import { type PieceChart, readPiece } from './request';
import type { Lesson, LinePiece } from './types';

/** The line that a piece belongs to: the nearest above it on the sheet, else the first below it. */
export function lineBeside({ pieces }: Pick<Lesson, 'pieces'>, pieceId: string): LinePiece | null {
  const place = pieces.findIndex(({ id }) => id === pieceId);
  const isLine = (piece: Lesson['pieces'][number]): piece is LinePiece => piece.kind === 'line';
  return pieces.slice(0, Math.max(0, place)).findLast(isLine) ?? pieces.slice(place + 1).find(isLine) ?? null;
}

/** The bars of a chart that can stand by themselves: whole ones, in which there is a chord. */
const wholeBars = (chart: Chart): readonly ChartBar[] => {
  const metres = writtenMetres(chart);
  return chart.bars.filter(
    (bar, index) =>
      !bar.pickup &&
      (metres[index]?.from ?? 0) === 0 &&
      metres[index]?.metre.count === bar.metre.count &&
      metres[index]?.metre.unit === bar.metre.unit &&
      bar.spans.some(({ harmony }) => harmony.kind === 'chord'),
  );
};

/** A bar as it is played once, on its place among others: without what leads elsewhere, and without pushes. */
function plainBar(bar: ChartBar, index: number, key: Key | null): ChartBar {
  const { pushed: _, tail: __, navigation: ___, ...own } = bar;
  return {
    ...own,
    number: index + 1,
    section: 0,
    key,
    spans: ownSpans(bar),
    repeatStart: false,
    repeatEnd: null,
    ending: null,
  };
}

/** So many bars with a chord, in the order they are written and from the first again, with their keys. */
function plainChart({ chart, key: home }: Pick<PieceChart, 'chart' | 'key'>, count: number): Chart | null {
  const whole = wholeBars(chart);
  if (whole.length === 0) return null;
  const bars = Array.from({ length: count }, (_, index) => whole[index % whole.length]).filter(
    (bar) => bar !== undefined,
  );
  const keys = bars.map(({ key }) => key ?? home);
  const isInOne = keys.every((key) => sameKey(key, home));
  return {
    metre: chart.metre,
    sections: [{ name: null, start: 0, length: bars.length, again: false }],
    bars: bars.map((bar, index) => plainBar(bar, index, isInOne ? null : (keys[index] ?? home))),
  };
}

/**
 * Bars of a line's chart as a chart of their own: whole ones with a chord, in their order and from the first again, each
 * played once, in the line's key.
 * @param count of bars
 * @returns null where no whole bar has a chord
 */
export function chartOver(
  line: LinePiece,
  count: number,
): { readonly key: Key; readonly chartText: string } | null {
  const read = readPiece(line);
  const chart = plainChart(read, count);
  return chart === null ? null : { key: read.key, chartText: printChart(chart) };
}
