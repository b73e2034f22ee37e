import type { LineSheet, Sheet } from '../../core/lesson';
import { proposeLadder } from '../../core/performance';
import type { Mark } from '../layout/marks';
import { joinRows, paragraphRows, type Row, textRow } from '../layout/rows';
import type { BlockContext } from './context';
import { tempoText } from './facts';

/** The order of practising: clap, drums only, with a guiding bass, without it, answer (common practice, no source). */
const STEPS = [
  'Clap the rhythm and count aloud; whisper the rests.',
  'Loop one or two bars with the drums only, then four, then all.',
  'Play along with the bass as a guide, then without it.',
  'Play a bar as it is written, and answer with a bar of your own.',
] as const;

/** Practice steps with boxes to tick, and a tempo ladder for every line. */
export function practiceRows(sheets: readonly Sheet[], context: BlockContext): readonly Row[] {
  const lines = sheets.flatMap((sheet) => (sheet.kind === 'line' ? [sheet] : []));
  if (lines.length === 0) return [];
  const rows = [
    ...STEPS.map((step) => tickRow(step, context)),
    ...lines.map((line) => ladderRow(line, lines.length > 1, context)),
  ];
  return [
    textRow('Practice', context.sizes.heading, { gap: context.spacing.blockGap, keepWithNext: true }),
    ...rows.map((row, index) => ({ ...row, keepWithNext: index === 0 || index === rows.length - 2 })),
  ];
}

function tickRow(step: string, context: BlockContext): Row {
  const { body } = context.sizes;
  const indent = body.size * 1.7;
  const words = joinRows(paragraphRows(step, body, context.width - indent, context.measure, { x: indent }));
  return { ...words, gap: 2, marks: [tickBox(0, body.size), ...words.marks] };
}

/** A box to tick whose foot stands on the first line of text of a size. */
const tickBox = (x: number, size: number): Mark => ({
  kind: 'box',
  x,
  y: size * 0.15,
  width: size * 0.85,
  height: size * 0.85,
});

function ladderRow(line: LineSheet, named: boolean, context: BlockContext): Row {
  const { body } = context.sizes;
  const label = `${named ? `${line.name}: tempo` : 'Tempo'} ladder up to ${tempoText(line.metre, line.tempo)}, a step up after three good times in a row`;
  const words = joinRows(paragraphRows(label, body, context.width, context.measure));
  const step = body.size * 5;
  const rungs = proposeLadder(line.tempo).flatMap(({ tempo }, index): readonly Mark[] => [
    { ...tickBox(index * step, body.size), y: words.height + 2 + body.size * 0.15 },
    {
      kind: 'text',
      text: String(tempo),
      ...body,
      x: index * step + body.size * 1.25,
      y: words.height + 2 + body.size * 0.95,
      anchor: 'start',
    },
  ]);
  return {
    height: words.height + 2 + body.size * 1.3,
    gap: 6,
    keepWithNext: false,
    marks: [...words.marks, ...rungs],
  };
}
