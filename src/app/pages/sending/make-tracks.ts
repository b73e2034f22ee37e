import { failure, type Result, success } from '../../../core/base';
import type { Lesson, LinePiece, LineSheet } from '../../../core/lesson';
import type { MakeOptions } from '../../../tracks';
import { fileStem, type MadeFile } from '../saving';
import { plansOf, type TracksWishes } from './wishes';

/** A track that is ready, with its length in seconds. */
export interface MadeTrack extends MadeFile {
  readonly title: string;
  readonly seconds: number;
}

/**
 * Makes the tracks that are asked of a line; null where they were called off.
 * @throws TypeError where a part of the page cannot be fetched
 */
export async function tracksOf(
  { title }: Lesson,
  piece: LinePiece,
  sheet: LineSheet,
  wishes: TracksWishes,
  options: MakeOptions,
): Promise<Result<readonly MadeTrack[] | null, string>> {
  const [{ makeTracks }, { trackRounds }, { exportName }] = await Promise.all([
    import('../../../tracks'),
    import('../../../core/performance'),
    import('../../../core/exchange'),
  ]);
  const plans = plansOf(piece, sheet, wishes);
  const made = await makeTracks(
    plans.map(({ mix, rounds, title: tag }) => ({
      rounds: trackRounds(piece, sheet, rounds),
      repeats: rounds.repeats,
      mix,
      coding: wishes.coding,
      tags: { title: tag, lesson: title, piece: piece.name, tempo: rounds.tempo },
    })),
    options,
  );
  if (!made.ok) return failure(made.problem);
  if (made.value === null) return success(null);
  return success(
    made.value.flatMap(({ kind, bytes, seconds }, index): readonly MadeTrack[] => {
      const plan = plans[index];
      if (plan === undefined) return [];
      const { parts, rounds, more, title: tag } = plan;
      const name = `${exportName(sheet, title, { tempo: rounds.tempo, parts })}${more === '' ? '' : `, ${more}`}`;
      return [{ stem: fileStem(name), kind, content: bytes, title: tag, seconds }];
    }),
  );
}
