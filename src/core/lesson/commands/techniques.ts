import { TECHNIQUES, type Technique } from '../../line';
import { aimFor, type Say, sayOf } from '../aims';
import type { AimTerms, Lesson, LinePiece } from '../types';
import { withAim } from './aims';
import { changeLine } from './piece';

/** What a piece asks of a technique: shown in a bar at least, in every phrase, or used only where it suits. */
export type TechniqueMark = 'shown' | 'in every phrase' | 'used';

const LINE = { kind: 'line' } as const;
const SILENT_ONE: Technique = 'beat one silent';

/** The terms with what they say of a technique changed; of the silent one a wish of its own yields to that. */
export function withSay(terms: AimTerms, technique: Technique, say: Say | null): AimTerms {
  const without = (techniques: readonly Technique[] = []) => techniques.filter((each) => each !== technique);
  const { silentOnes, ...others } = terms;
  const cleared: AimTerms = {
    ...(technique === SILENT_ONE && say !== null ? others : terms),
    wanted: without(terms.wanted),
    allowed: without(terms.allowed),
    forbidden: without(terms.forbidden),
  };
  return say === null ? cleared : { ...cleared, [say]: [...(cleared[say] ?? []), technique] };
}

/** What is asked of a technique in the whole line; null where it is not used. */
export function markOf({ techniques, aims }: LinePiece, technique: Technique): TechniqueMark | null {
  const terms: AimTerms = aimFor(aims, LINE) ?? {};
  switch (sayOf(terms, technique)) {
    case 'wanted':
      return 'in every phrase';
    case 'forbidden':
      return null;
    default:
      if (technique === SILENT_ONE && terms.silentOnes !== undefined)
        return terms.silentOnes === 'never' ? null : 'shown';
      return techniques.includes(technique) ? 'shown' : sayOf(terms, technique) && 'used';
  }
}

/** Marks a technique as to be shown in the line or as one that may be used, or takes it out of the line. */
export const markTechnique = (
  lesson: Lesson,
  pieceId: string,
  technique: Technique,
  mark: TechniqueMark | null,
): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    const shown = mark === 'shown' || mark === 'in every phrase';
    const { where: _, ...terms } = aimFor(piece.aims, LINE) ?? { where: LINE };
    const { silentOnes, ...others }: AimTerms = terms;
    const say = mark === 'used' ? 'allowed' : mark === 'in every phrase' ? 'wanted' : null;
    return {
      ...withAim(piece, LINE, withSay(technique === SILENT_ONE ? others : terms, technique, say)),
      techniques: TECHNIQUES.filter((each) => (each === technique ? shown : piece.techniques.includes(each))),
    };
  });
