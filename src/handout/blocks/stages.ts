import { buildUpOf, deriveSheet, type LinePiece, type Sheet } from '../../core/lesson';
import { stageTask } from '../../core/line';
import type { Steps } from '../../score';
import { headedRows, paragraphRows, type Row } from '../layout/rows';
import type { BlockContext } from './context';

/**
 * A line's build-up, its stages one under the other, each with what it adds and what to do. Where the line itself is
 * printed too, the last stage, which is the line, is left out.
 * @param music - sets the systems of a sheet
 */
export function* stageRows(
  { sheet, piece }: { readonly sheet: Sheet; readonly piece: LinePiece | undefined },
  context: BlockContext,
  music: (sheet: Sheet) => Steps<readonly Row[]>,
): Steps<readonly Row[]> {
  if (sheet.kind !== 'line' || piece === undefined) return [];
  const { stages } = buildUpOf(piece, sheet.instrument);
  const { blocks } = context.settings;
  const printed = blocks.includes('music') ? stages.slice(0, -1) : stages;
  const { sizes, spacing, width, measure } = context;
  const rows: Row[] = [];
  for (const stage of printed) {
    const task = stage.things.map(stageTask).join(' ');
    const words = paragraphRows(task, sizes.body, width, measure, { gap: 2 });
    const systems = yield* music(deriveSheet(stage.piece, sheet.instrument, sheet.noteNames));
    const said = words.map((row) => ({ ...row, keepWithNext: true }));
    rows.push(...headedRows(stage.name, sizes.heading, spacing.blockGap, [...said, ...systems]));
  }
  return rows;
}
