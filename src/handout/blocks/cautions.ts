import { CAUTIONS, CAUTIONS_HEADING, cautionInBrief } from '../../core/lesson';
import { joinRows, paragraphRows, type Row, textRow } from '../layout/rows';
import type { BlockContext } from './context';

const INSET = 7;

/** The cautions for hands and ears, each with the name of its source, in a thin box that is never cut. */
export function cautionRows(context: BlockContext): readonly Row[] {
  const { sizes } = context;
  const width = context.width - 2 * INSET;
  const text = CAUTIONS.map(cautionInBrief).join(' ');
  const inside = joinRows([
    textRow(CAUTIONS_HEADING, sizes.smallBold, { x: INSET }),
    ...paragraphRows(text, sizes.small, width, context.measure, { x: INSET }),
  ]);
  const height = inside.height + 2 * INSET;
  return [
    {
      height,
      gap: context.spacing.blockGap,
      keepWithNext: false,
      marks: [
        { kind: 'box', x: 0, y: 0, width: context.width, height },
        ...inside.marks.map((mark) => ({ ...mark, y: mark.y + INSET })),
      ],
    },
  ];
}
