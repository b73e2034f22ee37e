import type { Chart } from '../chart';
import type { LineRequest } from '../line';
import { barsInPosition } from './composer-aims';
import { fingerBars, type LineFingering, lineContext, playingHand, strikeNotes } from './fingering';
import { LastOf } from './last-of';
import type { InstrumentSettings, LineBar, LinePiece } from './types';

/** A line with all that its fingering depends on. */
interface FingeredLine {
  readonly piece: LinePiece;
  readonly settings: InstrumentSettings;
  readonly chart: Chart;
}

interface LineInBars extends FingeredLine {
  /** The bars with the positions in which aims keep the hand. */
  readonly bars: readonly LineBar[];
}

const last = new LastOf<LineInBars & { readonly fingering: LineFingering }>();

/** Whether two lines have the same notes in bars of the same lengths, and ask the same of the hand in each. */
const sameBars = (one: LineInBars, other: LineInBars): boolean =>
  one.chart.bars.length === other.chart.bars.length &&
  one.chart.bars.every(({ metre }, index) => {
    const [bar, before] = [one.bars[index], other.bars[index]];
    const measured = other.chart.bars[index]?.metre;
    return (
      bar?.notes === before?.notes &&
      bar?.position === before?.position &&
      metre.count === measured?.count &&
      metre.unit === measured.unit
    );
  });

/** Whether the hand meets two lines alike: chords are nothing to it. */
const sameForHand = (one: LineInBars, other: LineInBars): boolean =>
  one.settings === other.settings &&
  one.piece.hand === other.piece.hand &&
  one.piece.level === other.piece.level &&
  one.piece.tempo === other.piece.tempo &&
  one.piece.feel === other.piece.feel &&
  one.chart.metre.count === other.chart.metre.count &&
  one.chart.metre.unit === other.chart.metre.unit &&
  sameBars(one, other);

/** The fingering of a line; the same again while only chords are typed over its notes. */
export function fingeredLine(line: FingeredLine, { instrument, feel }: LineRequest): LineFingering {
  const { piece, chart } = line;
  const now = { ...line, bars: barsInPosition(piece, chart) };
  const before = last.get(piece.id);
  if (before !== null && sameForHand(before, now)) return before.fingering;
  const struck = strikeNotes(chart, now.bars);
  const context = lineContext(struck, chart, piece, feel);
  const fingering = fingerBars(struck, instrument, playingHand(piece), context);
  last.set(piece.id, { ...now, fingering });
  return fingering;
}
