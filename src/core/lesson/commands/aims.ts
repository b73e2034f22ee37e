import { aimFor, followSections } from '../aims';
import { freshIds } from '../identity';
import { readPiece } from '../request';
import type { AimTerms, AimWhere, Lesson, LessonAim, LinePiece } from '../types';
import { changeLine } from './piece';

/** The terms without empty lists, and null when nothing is left. */
function askedTerms({ wanted = [], allowed = [], forbidden = [], ...rest }: AimTerms): AimTerms | null {
  const asked: AimTerms = {
    ...rest,
    ...(wanted.length === 0 ? {} : { wanted }),
    ...(allowed.length === 0 ? {} : { allowed }),
    ...(forbidden.length === 0 ? {} : { forbidden }),
  };
  return Object.keys(asked).length === 0 ? null : asked;
}

/** The piece with these terms asked at a place, in place of what was asked there. */
export function withAim(piece: LinePiece, where: AimWhere, terms: AimTerms): LinePiece {
  const asked = askedTerms(terms);
  const before = aimFor(piece.aims, where);
  if (asked === null && before === null) return piece;
  const aim: readonly LessonAim[] = asked === null ? [] : [{ ...asked, where }];
  const aims =
    before === null
      ? [...piece.aims, ...aim]
      : piece.aims.flatMap((each) => (each === before ? aim : [each]));
  return { ...piece, aims };
}

/** Asks something of the line, a section or a bar, in place of what was asked there; empty terms ask nothing. */
export const setAim = (lesson: Lesson, pieceId: string, where: AimWhere, terms: AimTerms): Lesson =>
  changeLine(lesson, pieceId, (piece) => withAim(piece, where, terms));

/** Changes what is asked of several bars at once, by their indices: each keeps what else is asked of it. */
export const changeBarAims = (
  lesson: Lesson,
  pieceId: string,
  bars: readonly number[],
  change: (terms: AimTerms) => AimTerms,
): Lesson =>
  changeLine(lesson, pieceId, (piece) =>
    bars.reduce((changed, bar) => {
      const id = piece.bars[bar]?.id;
      if (id === undefined) return changed;
      const { where, ...terms }: LessonAim = aimFor(changed.aims, { kind: 'bar', id }) ?? {
        where: { kind: 'bar', id },
      };
      return withAim(changed, where, change(terms));
    }, piece),
  );

/** As {@link setAim}, for a section by its index in the chart, which need not have an id yet. */
export const setSectionAim = (lesson: Lesson, pieceId: string, section: number, terms: AimTerms): Lesson =>
  changeLine(lesson, pieceId, (piece) => {
    const named = withSections(lesson, piece);
    const id = named.sections[section]?.id;
    const changed = id === undefined ? named : withAim(named, { kind: 'section', id }, terms);
    return changed.aims === piece.aims ? piece : changed;
  });

/** The piece with an id for every section of its chart. */
function withSections(lesson: Lesson, piece: LinePiece): LinePiece {
  const { chart } = readPiece(piece);
  if (piece.sections.length === chart.sections.length) return piece;
  const fresh = freshIds(lesson);
  return { ...piece, ...followSections(piece, chart, () => fresh('section')) };
}
