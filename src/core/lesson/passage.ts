import { sameMetre } from '../base';
import { type Chart, type ChartBar, chordsIn, ownSpans, printChart, writtenMetres } from '../chart';
import { type Key, sameKey } from '../theory';
import { setChartText } from './commands/chart';
import { changeLine } from './commands/piece';
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
  const written = writtenMetres(chart);
  return chart.bars.filter((bar, index) => {
    const { from, metre } = written[index] ?? { from: 0, metre: bar.metre };
    return !bar.pickup && from === 0 && sameMetre(metre, bar.metre) && chordsIn(bar).length > 0;
  });
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
 * A line with the chords of another one in bars of its own: whole ones with a chord, in their order and from the first
 * again, each played once, in the key of the other.
 * @param pieceId - of the line that gets them
 * @param count of bars
 * @returns null where no whole bar of the other line has a chord
 */
export function overChordsOf(line: LinePiece, lesson: Lesson, pieceId: string, count: number): Lesson | null {
  const read = readPiece(line);
  const chart = plainChart(read, count);
  if (chart === null) return null;
  const keyed = changeLine(lesson, pieceId, (piece) => ({ ...piece, key: read.key }));
  return setChartText(keyed, pieceId, printChart(chart));
}
