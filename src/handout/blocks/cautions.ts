import { CAUTIONS_HEADING, cautionsInBrief, type HandoutBlock } from '../../core/lesson';
import { type TextMeasure, tagged } from '../layout/marks';
import { joinRows, type Row, textRow, wrap } from '../layout/rows';
import type { Sizes } from '../layout/sizes';
import type { BlockContext } from './context';

const RULE_GAP = 3;

/**
 * Whether the cautions stand at the foot of the first page, apart from the other parts: they do where they come last,
 * as they usually do.
 */
export const atFoot = (blocks: readonly HandoutBlock[]): boolean => blocks.at(-1) === 'cautions';

/** The cautions for hands and ears in a few small lines under a rule, never cut. */
export function cautionFoot(width: number, { small, smallBold }: Sizes, measure: TextMeasure): Row {
  const heading = `${CAUTIONS_HEADING}:`;
  const indent = measure(heading, smallBold) + measure(' ', small);
  const lines = wrap(cautionsInBrief(), width, (text) => measure(text, small), indent);
  const rows = lines.map((line, index) => textRow(line, small, { x: index === 0 ? indent : 0 }));
  const words = joinRows(rows);
  const { x, y, anchor } = { x: 0, y: small.size * 0.95, anchor: 'start' as const };
  return {
    height: words.height + RULE_GAP,
    gap: RULE_GAP * 2,
    keepWithNext: false,
    marks: [
      { kind: 'rule', x: 0, y: 0, width, height: 0 },
      ...tagged(
        [
          { kind: 'text', text: heading, ...smallBold, x, y: y + RULE_GAP, anchor },
          ...words.marks.map((mark) => ({ ...mark, y: mark.y + RULE_GAP })),
        ],
        { role: 'P' },
      ),
    ],
  };
}

/** The cautions as a part of the sheet, where the teacher has put others behind them. */
export const cautionRows = (context: BlockContext): readonly Row[] => [
  { ...cautionFoot(context.width, context.sizes, context.measure), gap: context.spacing.blockGap },
];
