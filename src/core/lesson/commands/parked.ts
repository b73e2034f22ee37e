import { barTicks } from '../../base';
import { editBar, parseChart, typedSignature } from '../../chart';
import type { Lesson, LineBar, LinePiece } from '../types';
import { withChart } from './chart';
import { changeLine } from './piece';

/** The piece with a parked bar back in its line, in a bar of its own behind another (index from 0); null without room. */
function withParked(lesson: Lesson, piece: LinePiece, id: string, bar: number): LinePiece | null {
  const parked = piece.parked.find((each) => each.id === id);
  const { chart } = parseChart(piece.chartText, piece.metre, piece.key);
  const place = chart.bars[bar];
  const own = piece.bars[bar];
  if (parked === undefined || place === undefined || own === undefined) return null;
  const rest = { ...piece, parked: piece.parked.filter((each) => each !== parked) };
  if (own.harmony === parked.harmony && own.notes.length === 0 && !own.kept) {
    return { ...rest, bars: piece.bars.map((each) => (each === own ? parked : each)) };
  }
  const written = typedSignature(parked.harmony, place.metre);
  const text = /[♭♯]/.test(piece.chartText) ? written : written.replace(/♭/g, 'b').replace(/♯/g, '#');
  const edited = editBar(piece.chartText, piece.metre, { kind: 'append', bar, text }, piece.key);
  if (edited === null) return null;
  const order = edited.origins.map((origin, index): LineBar | null =>
    origin === null ? (index === bar + 1 ? parked : null) : (piece.bars[origin] ?? null),
  );
  const back = withChart(lesson, rest, { chartText: edited.text }, order);
  return back.bars.includes(parked) ? back : null;
}

/**
 * Puts a parked bar back: into the bar at an index where that is empty and has its chords, else into a new bar with
 * its chords behind that one. The same lesson where its length does not fit there.
 */
export const putParkedBack = (lesson: Lesson, pieceId: string, id: string, bar: number): Lesson =>
  changeLine(lesson, pieceId, (piece) => withParked(lesson, piece, id, bar) ?? piece);

/** Whether a parked bar is as long as another (index from 0), so that it can be put back behind it. */
export function fitsBehind(piece: LinePiece, parked: LineBar, bar: number): boolean {
  const metre = parseChart(piece.chartText, piece.metre, piece.key).chart.bars[bar]?.metre;
  const length = [...parked.harmony.matchAll(/@(\d+)/g)].reduce((sum, [, each]) => sum + Number(each), 0);
  return metre !== undefined && barTicks(metre) === length;
}

/** Throws the parked bars and sections of a piece away, with the aims for them. */
export const discardParked = (lesson: Lesson, pieceId: string): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    const gone = new Set([...piece.parked, ...piece.parkedSections].map(({ id }) => id));
    return gone.size === 0
      ? piece
      : {
          ...piece,
          parked: [],
          parkedSections: [],
          aims: piece.aims.filter(({ where }) => where.kind === 'line' || !gone.has(where.id)),
        };
  });
