import type { ScoreLayout, SystemLayout } from '../../score';
import type { Tag } from '../layout/marks';
import type { Row } from '../layout/rows';
import type { BlockContext } from './context';

/** The systems of a score, each of which stays whole. */
export const systemRows = (
  layout: ScoreLayout,
  score: number,
  { spacing }: BlockContext,
  tagOf: (system: SystemLayout) => Tag,
): readonly Row[] =>
  layout.systems.map(
    (system, index): Row => ({
      height: system.height,
      gap: index === 0 ? spacing.systemGap / 2 : spacing.systemGap,
      keepWithNext: false,
      marks: [{ kind: 'system', score, system: system.index, x: 0, y: 0, tag: tagOf(system) }],
    }),
  );
