import { headedRows, paragraphRows, type Row } from '../layout/rows';
import type { BlockContext } from './context';

const PARAGRAPH_GAP = 4;

/** The teacher's notes, a paragraph a line as typed; nothing when there are none. */
export function noteRows(notes: string, context: BlockContext): readonly Row[] {
  const paragraphs = notes.split('\n').filter((paragraph) => paragraph.trim() !== '');
  if (paragraphs.length === 0) return [];
  return headedRows(
    'Notes',
    context.sizes.heading,
    context.spacing.blockGap,
    paragraphs.flatMap((paragraph, index) =>
      paragraphRows(paragraph, context.sizes.body, context.width, context.measure, {
        gap: index === 0 ? 0 : PARAGRAPH_GAP,
      }),
    ),
  );
}
