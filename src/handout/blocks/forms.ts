import type { Mark, Tag, TextStyle } from '../layout/marks';
import { headedRows, type Row, taggedRow, wrap } from '../layout/rows';
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
  const columns = columnsOf(context);
  const rows = [
    lineOf(headOf(columns, context), sizes.bodyBold, columns, context),
    ...DAYS.map((day) => lineOf([[day]], sizes.body, columns, context)),
  ];
  return headedRows(
    'Practice diary',
    sizes.heading,
    spacing.blockGap,
    rows.map((row, index) => ({ ...row, keepWithNext: index === 0 || index === rows.length - 2 })),
  );
}

/** The widths of the columns: their share, but room for each word in them; the last has what is left. */
function columnsOf({ width, sizes, measure }: BlockContext): readonly number[] {
  const widest = (words: readonly string[], style: TextStyle): number =>
    Math.max(...words.map((word) => measure(word, style)));
  const first = COLUMNS.slice(0, -1).map(({ label, share }, index) => {
    const days = index === 0 ? widest(DAYS, sizes.body) : 0;
    return Math.max(share * width, Math.max(days, widest(label.split(' '), sizes.bodyBold)) + 2 * INSET);
  });
  return [...first, width - first.reduce((sum, column) => sum + column, 0)];
}

/** The heads of the columns, in as many lines as each needs. */
const headOf = (
  columns: readonly number[],
  { sizes, measure }: BlockContext,
): readonly (readonly string[])[] =>
  COLUMNS.map(({ label }, index) =>
    wrap(label, (columns[index] ?? 0) - 2 * INSET, (part) => measure(part, sizes.bodyBold)),
  );

const LINE = 1.2;

/** A line of the table with the words of its cells, framed; it shares a rule with the line above it. */
function lineOf(
  cells: readonly (readonly string[])[],
  style: TextStyle,
  columns: readonly number[],
  { width, sizes }: BlockContext,
): Row {
  const head = style === sizes.bodyBold;
  const most = Math.max(...cells.map(({ length }) => length));
  const height = head ? style.size * (0.3 + LINE * most) : Math.max(WRITING, style.size * 1.7);
  const tag: Tag = { role: 'P' };
  const edges = [0];
  for (const column of columns) edges.push((edges.at(-1) ?? 0) + column);
  const rules: readonly Mark[] = [
    ...(head ? [{ kind: 'rule' as const, x: 0, y: 0, width, height: 0 }] : []),
    { kind: 'rule', x: 0, y: height, width, height: 0 },
    ...edges.map((x): Mark => ({ kind: 'rule', x, y: 0, width: 0, height })),
  ];
  const texts = cells.flatMap((lines, index) =>
    lines.map(
      (text, line): Mark => ({
        kind: 'text',
        text,
        ...style,
        x: (edges[index] ?? 0) + INSET,
        y: height / 2 + style.size * (0.35 + LINE * (line - (lines.length - 1) / 2)),
        anchor: 'start',
      }),
    ),
  );
  const drawn = taggedRow({ height, gap: head ? 2 : 0, keepWithNext: false, marks: texts }, tag);
  return { ...drawn, marks: [...rules, ...drawn.marks] };
}
