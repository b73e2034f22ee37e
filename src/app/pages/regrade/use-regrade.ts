import { useEffect, useState } from 'react';
import type { PieceRegrade } from '../../../core/composing';
import type { LinePiece } from '../../../core/lesson';
import type { Level } from '../../../core/line';
import { useAtWork } from '../at-work';

export type Way = 'easier' | 'harder';

interface Made {
  readonly of: LinePiece;
  readonly level: Level;
  readonly regrade: PieceRegrade | null;
  readonly failed: boolean;
}

/** The line of a piece at a level, made in the worker; nothing for no level. */
export function useRegrade(piece: LinePiece, level: Level | null) {
  const { session } = useAtWork();
  const [made, setMade] = useState<Made | null>(null);
  useEffect(() => {
    if (level === null) return;
    let gone = false;
    session.composer.regrade(session.lessons.getState().lesson, piece.id, level).then((answer) => {
      if (gone) return;
      setMade({ of: piece, level, regrade: answer.ok ? answer.value : null, failed: !answer.ok });
    });
    return () => {
      gone = true;
    };
  }, [session, piece, level]);
  const here = level !== null && made?.of === piece && made.level === level ? made : null;
  return {
    regrade: here?.regrade ?? null,
    busy: level !== null && here === null,
    problem:
      here?.failed === true ? 'It could not be made just now. The line is as it was; try again.' : null,
  };
}
