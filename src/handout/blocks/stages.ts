import { buildUpOf, deriveSheet, type LinePiece, type Sheet } from '../../core/lesson';
import { stageTask } from '../../core/line';
import { headedRows, paragraphRows, type Row } from '../layout/rows';
import type { BlockContext } from './context';

/**
 * A line's build-up, its stages one under the other, each with what it adds and what to do. Where the line itself is
 * printed too, the last stage, which is the line, is left out.
 * @param music - sets the systems of a sheet
 */
export function stageRows(
  { sheet, piece }: { readonly sheet: Sheet; readonly piece: LinePiece | undefined },
  context: BlockContext,
  music: (sheet: Sheet) => readonly Row[],
): readonly Row[] {
  if (sheet.kind !== 'line' || piece === undefined) return [];
  const { stages } = buildUpOf(piece, sheet.instrument);
  const { blocks } = context.settings;
  const printed = blocks.includes('music') ? stages.slice(0, -1) : stages;
  const { sizes, spacing, width, measure } = context;
  return printed.flatMap((stage) => {
    const task = stage.things.map(stageTask).join(' ');
    const words = paragraphRows(task, sizes.body, width, measure, { gap: 2 });
    const systems = music(deriveSheet(stage.piece, sheet.instrument, sheet.noteNames));
    return headedRows(stage.name, sizes.heading, spacing.blockGap, [
      ...words.map((row) => ({ ...row, keepWithNext: true })),
      ...systems,
    ]);
  });
}
