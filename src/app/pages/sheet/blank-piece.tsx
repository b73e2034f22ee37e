import { type BlankPiece, type BlankSheet, setBlankBars } from '../../../core/lesson';
import { NumberWord } from '../../controls';
import { useAtWork, usePieceNow } from '../at-work';
import { ScoreFigure } from '../score';
import { PieceHead, type PlaceOnSheet } from './piece-head';

interface BlankPieceViewProps {
  readonly piece: BlankPiece;
  readonly sheet: BlankSheet;
  readonly place: PlaceOnSheet;
}

/** Empty staff and tab for the student's own line. */
export function BlankPieceView({ piece, sheet, place }: BlankPieceViewProps) {
  const { session } = useAtWork();
  const { bars } = usePieceNow(piece);
  return (
    <section className="piece">
      <PieceHead piece={piece} place={place}>
        <NumberWord
          label={`Number of blank bars, ${piece.name}`}
          value={bars}
          least={1}
          most={64}
          onChange={(count) =>
            session.lessons.change((lesson) => setBlankBars(lesson, piece.id, count), {
              label: 'change the blank bars',
              join: `blank ${piece.id}`,
            })
          }
        />{' '}
        blank {bars === 1 ? 'bar' : 'bars'}
      </PieceHead>
      <ScoreFigure
        sheet={sheet}
        name={`Blank bars, ${piece.name}`}
        description={`${piece.bars} empty bars of staff and tab.`}
        rows={NO_ROWS}
        bars={null}
      />
    </section>
  );
}

const NO_ROWS = { degrees: false, fingers: false };
