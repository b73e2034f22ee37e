import type { Mark, Tag } from '../layout/marks';
import { headedRows, type Row, taggedRow } from '../layout/rows';
import type { BlockContext } from './context';

/** What is filled in at the head of a test, and its share of the width (common practice, no source). */
const FIELDS = [
  { label: 'Name', share: 0.52 },
  { label: 'Date', share: 0.28 },
  { label: 'Mark', share: 0.2 },
] as const;
const FIELD_GAP = 10;
/** Handwriting asks for about 8 mm from line to line, as ruled paper has (common practice, no source). */
const WRITING = 23;

/** Places for name, date and mark, to be filled in by hand. */
export function nameRows({ sizes, width, spacing, measure }: BlockContext): readonly Row[] {
  const { body } = sizes;
  const height = Math.max(WRITING, body.size * 1.6);
  const room = width - FIELD_GAP * (FIELDS.length - 1);
  let left = 0;
  const marks = FIELDS.flatMap(({ label, share }): readonly Mark[] => {
    const x = left;
    const own = room * share;
    left += own + FIELD_GAP;
    const from = measure(`${label} `, body);
    const words: Mark = {
      kind: 'text',
      text: label,
      ...body,
      x,
      y: height - body.size * 0.25,
      anchor: 'start',
    };
    return label === 'Mark'
      ? [words, { kind: 'box', x: x + from, y: 0, width: own - from, height }]
      : [words, { kind: 'rule', x: x + from, y: height, width: own - from, height: 0 }];
  });
  return [{ height: height + 2, gap: spacing.blockGap / 2, keepWithNext: false, marks }];
}

const COLUMNS = [
  { label: 'Day', share: 0.18 },
  { label: 'Minutes', share: 0.16 },
  { label: 'Tempo reached', share: 0.22 },
  { label: 'What went well, what to ask', share: 0.44 },
] as const;
const DAYS = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;
const INSET = 4;

/** A table of a week: how long was practised, at which tempo it went, and what the lesson should hear of. */
export function diaryRows(context: BlockContext): readonly Row[] {
  const { sizes, spacing } = context;
  const rows = [
    lineOf(
      COLUMNS.map(({ label }) => label),
      sizes.bodyBold.size * 1.5,
      true,
      context,
    ),
    ...DAYS.map((day) => lineOf([day], Math.max(WRITING, sizes.body.size * 1.7), false, context)),
  ];
  return headedRows(
    'Practice diary',
    sizes.heading,
    spacing.blockGap,
    rows.map((row, index) => ({ ...row, keepWithNext: index === 0 || index === rows.length - 2 })),
  );
}

/** A line of the table with its words, framed; it shares a rule with the line above it. */
function lineOf(words: readonly string[], height: number, head: boolean, context: BlockContext): Row {
  const { width, sizes } = context;
  const style = head ? sizes.bodyBold : sizes.body;
  const tag: Tag = { role: 'P' };
  const edges = [0];
  for (const { share } of COLUMNS) edges.push((edges.at(-1) ?? 0) + share * width);
  const baseline = height / 2 + style.size * 0.35;
  const rules: readonly Mark[] = [
    ...(head ? [{ kind: 'rule' as const, x: 0, y: 0, width, height: 0 }] : []),
    { kind: 'rule', x: 0, y: height, width, height: 0 },
    ...edges.map((x): Mark => ({ kind: 'rule', x, y: 0, width: 0, height })),
  ];
  const texts = words.map(
    (text, index): Mark => ({
      kind: 'text',
      text,
      ...style,
      x: (edges[index] ?? 0) + INSET,
      y: baseline,
      anchor: 'start',
    }),
  );
  const drawn = taggedRow({ height, gap: head ? 2 : 0, keepWithNext: false, marks: texts }, tag);
  return { ...drawn, marks: [...rules, ...drawn.marks] };
}
