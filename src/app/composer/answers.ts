import { type Steps, unreachable } from '../../core/base';
import {
  anotherTake,
  barsAtSight,
  broughtBy,
  type Composition,
  checkLesson,
  composePiece,
  explainPiece,
  type Finding,
  keysFor,
  rankTakes,
  regradePiece,
  severalTakes,
} from '../../core/composing';
import {
  deriveSheet,
  type InstrumentSettings,
  type Lesson,
  type LinePiece,
  type LineSheet,
  linePiece,
} from '../../core/lesson';
import type { ComposerAnswer, ComposerJob, Deed } from './messages';

/** The steps of the answers; between two of them the worker hears what else it is asked. */
export function createAnswers(): (job: ComposerJob) => Steps<ComposerAnswer> {
  let checked: { readonly lesson: Lesson; readonly findings: readonly Finding[] } | null = null;

  const check = (lesson: Lesson): ComposerAnswer => {
    checked = { lesson, findings: checkLesson(lesson) };
    return {
      kind: 'findings',
      findings: checked.findings.map(({ repair, ...finding }) => ({
        ...finding,
        mendable: repair !== undefined,
      })),
    };
  };

  const repair = (finding: number): ComposerAnswer => {
    const found = checked?.findings[finding]?.repair?.() ?? null;
    return {
      kind: 'repair',
      repair:
        found === null || checked === null
          ? null
          : { label: found.label, lesson: found.apply(checked.lesson) },
    };
  };

  return function* answer(job) {
    switch (job.kind) {
      case 'compose':
        return { kind: 'composition', composition: yield* deedOf(job.deed, job.lesson, job.pieceId) };
      case 'check':
        return check(job.lesson);
      case 'brought':
        return {
          kind: 'brought',
          messages: broughtBy(job.before, job.after, job.pieceId, job.bar).map(({ message }) => message),
        };
      case 'repair':
        return repair(job.finding);
      case 'explain':
        return { kind: 'explanation', sentences: aboutLine(job.lesson, job.pieceId, explainPiece) };
      case 'rank takes':
        return {
          kind: 'ranking',
          takes: aboutLine(job.lesson, job.pieceId, rankTakes).map(({ take, ...ranked }) => ({
            takeId: take.id,
            ...ranked,
          })),
        };
      case 'regrade': {
        const piece = linePiece(job.lesson, job.pieceId);
        const { instrument, noteNames } = job.lesson;
        return { kind: 'regraded', regrade: piece && regradePiece(piece, instrument, job.level, noteNames) };
      }
      case 'keys':
        return { kind: 'keys', keys: keysFor(job.lesson, job.pieceId, job.how) };
      default:
        return unreachable(job);
    }
  };
}

function* deedOf(deed: Deed, lesson: Lesson, pieceId: string): Steps<Composition> {
  switch (deed) {
    case 'compose line':
      return composePiece(lesson, pieceId);
    case 'another take':
      return anotherTake(lesson, pieceId);
    case 'compose several takes':
      return yield* severalTakes(lesson, pieceId);
    case 'add 4 bars to read at sight':
      return barsAtSight(lesson, pieceId, 4);
    case 'add 8 bars to read at sight':
      return barsAtSight(lesson, pieceId, 8);
    default:
      return unreachable(deed);
  }
}

/** What can be told of the line of a piece; nothing where it has none. */
function aboutLine<Told>(
  lesson: Lesson,
  pieceId: string,
  tell: (piece: LinePiece, sheet: LineSheet, settings: InstrumentSettings) => readonly Told[],
): readonly Told[] {
  const piece = linePiece(lesson, pieceId);
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  return piece !== null && sheet?.kind === 'line' ? tell(piece, sheet, lesson.instrument) : [];
}
