import { useCallback, useDeferredValue, useEffect, useMemo, useState } from 'react';
import { barName, capitalised } from '../../../core/base';
import {
  describeBar,
  type HandoutSettings,
  type InstrumentSettings,
  type LinePiece,
  type LineSheet,
} from '../../../core/lesson';
import type { Pencil } from '../../../core/writing';
import { Later, laterPart, useAtWork, useEditor } from '../at-work';
import { whenIdle } from '../common';
import { type BarButton, ScoreFigure } from '../score';
import { chordsOf, describePiece, describeScore } from '../words';
import { PieceHead, type PlaceOnSheet } from './piece-head';

const BELOW = laterPart('What stands under the line', async () => (await import('./below')).BelowLine);

const DRAWER = laterPart('The drawer of ideas', async () => (await import('../ideas')).IdeaDrawer);

const PENCIL = laterPart('The pencil', async () => (await import('../pencil')).PencilSurface);

interface LinePieceViewProps {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
  readonly place: PlaceOnSheet;
  readonly atHand: boolean;
  readonly instrument: InstrumentSettings;
  readonly handout: HandoutSettings;
  readonly onWriteChart: () => void;
}

/** A line on the sheet: its score, whose bars can be chosen, and the drawer with the ideas for the chosen one. */
export function LinePieceView({
  piece,
  sheet,
  place,
  atHand,
  instrument,
  handout,
  onWriteChart,
}: LinePieceViewProps) {
  const { session } = useAtWork();
  const chosen = useChosenBar(piece);
  const pencil = useEditor((state) => (state.pencil?.pieceId === piece.id ? state.pencil : null));
  const composing = useEditor((state) => state.composing === piece.id);
  // The new line is shown a moment after it was composed.
  const shown = !useDeferredValue(composing);
  const told = useTold(piece, sheet, pencil !== null);
  const bars = useMemo(
    () =>
      told.sheet.bars.map((bar): BarButton => {
        const chords = chordsOf(bar.written, told.sheet.noteNames);
        return {
          name: atHand
            ? `${capitalised(barName(bar.written.number))}, ${chords}`
            : `${told.sheet.name}, ${barName(bar.written.number)} (${chords})`,
          description: describeBar(told.sheet, bar),
          kept: bar.kept,
        };
      }),
    [told, atHand],
  );
  const close = useCallback(() => session.chooseBar(piece.id, null), [session, piece.id]);
  const rows = useMemo(
    () => ({ degrees: handout.degrees, fingers: handout.fingers, numerals: handout.numerals ?? false }),
    [handout.degrees, handout.fingers, handout.numerals],
  );
  return (
    <section className={`piece${atHand ? ' piece--at-hand' : ''}`}>
      <PieceHead
        piece={piece}
        place={place}
        action={
          atHand ? null : (
            <button
              type="button"
              className="button button--quiet"
              aria-label={`Work on ${piece.name}`}
              onClick={() => session.choosePiece(piece.id)}
            >
              Work on this
            </button>
          )
        }
      >
        {sheet.bars.length > 0 && describePiece(told.sheet)}
        {sheet.bars.length === 0 && atHand && (
          <>
            It begins with its chords:{' '}
            <button type="button" className="word" onClick={onWriteChart}>
              write the chart
            </button>
          </>
        )}
      </PieceHead>
      {sheet.bars.length > 0 && (
        <ScoreFigure
          sheet={sheet}
          name={atHand ? 'Score' : `${piece.name} on staff and tab`}
          description={describeScore(told.sheet)}
          rows={rows}
          busy={composing || !shown}
          bars={{
            buttons: bars,
            chosen,
            choose: (bar) => session.chooseBar(piece.id, bar),
            ...(pencil === null
              ? {}
              : {
                  over: {
                    isOver: (bar: number) => isSelected(pencil, bar),
                    view: (box, system) =>
                      isSelected(pencil, box.bar) && (
                        <Later
                          key={box.bar}
                          part={PENCIL}
                          given={{ box, system, number: sheet.bars[box.bar]?.written.number ?? box.bar + 1 }}
                        />
                      ),
                  },
                }),
            drawer: (bar) => (
              <Later
                key={piece.id}
                part={DRAWER}
                meanwhile={<div className="drawer" />}
                given={{ ...told, bar, instrument, onClose: close }}
              />
            ),
          }}
        />
      )}
      <Later key={`below ${piece.id}`} part={BELOW} given={{ ...told, instrument, rows, atHand }} />
    </section>
  );
}

/** The longest that what is told about a line is behind its notes, in milliseconds. */
const BEHIND_MS = 300;

interface Told {
  readonly piece: LinePiece;
  readonly sheet: LineSheet;
}

/** A line for what only tells about it: while notes are written, that follows them when they are on the page. */
function useTold(piece: LinePiece, sheet: LineSheet, writing: boolean): Told {
  const now = useMemo(() => ({ piece, sheet }), [piece, sheet]);
  const [before, setBefore] = useState<Told>(now);
  useEffect(() => whenIdle(() => setBefore(now), BEHIND_MS), [now]);
  const behind = writing && before.piece.id === piece.id && before.sheet.chart === sheet.chart;
  return behind ? before : now;
}

/** Whether the pencil stands in a bar, or it lies between the ends of what is selected. */
const isSelected = ({ bar, from }: Pencil, index: number): boolean =>
  index >= Math.min(bar, from?.bar ?? bar) && index <= Math.max(bar, from?.bar ?? bar);

/**
 * The chosen bar of a piece as it is drawn. An edit that chooses another bar draws both together: until its score is
 * there, the bar that was chosen in the score before stays so, and the drawer does not move twice.
 */
function useChosenBar(piece: LinePiece): number | null {
  const { session } = useAtWork();
  const chosen = useEditor((state) => (state.pieceId === piece.id ? state.bar : null));
  const settled = useDeferredValue(chosen);
  return session.lessons.getState().lesson.pieces.includes(piece) ? chosen : settled;
}
