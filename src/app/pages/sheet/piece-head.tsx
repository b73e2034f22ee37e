import type { ReactNode } from 'react';
import {
  copyPiece,
  LESSON_LIMITS,
  movePiece,
  type Piece,
  removePiece,
  renamePiece,
} from '../../../core/lesson';
import { MenuButton } from '../../controls';
import { useAtWork, usePieceNow } from '../at-work';

/** Where a piece stands on the sheet. */
export interface PlaceOnSheet {
  readonly index: number;
  readonly count: number;
}

interface PieceHeadProps {
  readonly piece: Piece;
  readonly place: PlaceOnSheet;
  /** The computed line under the name. */
  readonly children: ReactNode;
  readonly action?: ReactNode;
}

/** The name of a piece, written where it is printed, and what can be done with the piece as a whole. */
export function PieceHead({ piece: settled, place, children, action }: PieceHeadProps) {
  const { session } = useAtWork();
  const piece = usePieceNow(settled);
  const { lessons } = session;
  const move = (by: -1 | 1) =>
    lessons.change((lesson) => movePiece(lesson, piece.id, by), { label: `move ${piece.name}` });
  return (
    <div className="piece__head">
      <div className="piece__heading">
        <h2 className="visually-hidden">{piece.name}</h2>
        <input
          className="piece__name"
          aria-label={`Name of piece ${place.index + 1}`}
          value={piece.name}
          maxLength={LESSON_LIMITS.title}
          onChange={(event) => {
            const name = event.currentTarget.value;
            lessons.change((lesson) => renamePiece(lesson, piece.id, name), {
              label: 'rename a piece',
              join: `name ${piece.id}`,
            });
          }}
        />
        {action}
        <MenuButton
          label="Copy or move"
          name={`Copy or move ${piece.name}`}
          className="button button--quiet"
          groups={[
            {
              items: [
                ...(place.index > 0 ? [{ label: 'Move up', onChoose: () => move(-1) }] : []),
                ...(place.index < place.count - 1 ? [{ label: 'Move down', onChoose: () => move(1) }] : []),
                {
                  label: 'Copy',
                  onChoose: () =>
                    lessons.change((lesson) => copyPiece(lesson, piece.id), { label: `copy ${piece.name}` }),
                },
                ...(place.count > 1
                  ? [
                      {
                        label: 'Remove from the sheet',
                        onChoose: () =>
                          lessons.change((lesson) => removePiece(lesson, piece.id), {
                            label: `remove ${piece.name}`,
                          }),
                      },
                    ]
                  : []),
              ],
            },
          ]}
        />
      </div>
      <div className="piece__facts">{children}</div>
    </div>
  );
}
