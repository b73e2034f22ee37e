import { type Lesson, type LineSheet, type Rung, type Sheet, toldTempo } from '../../core/lesson';
import { proposeLadder } from '../../core/playing';
import { type Mark, tagged } from '../layout/marks';
import { headedRows, joinRows, paragraphRows, type Row } from '../layout/rows';
import type { BlockContext } from './context';
import { toldTempoText } from './facts';

/** A line with the rungs of its ladder. */
interface Climb {
  readonly line: LineSheet;
  readonly rungs: readonly Rung[];
}

/** Practice steps with boxes to tick, and a tempo ladder for every line: the teacher's own, where there is one. */
export function practiceRows(
  lesson: Lesson,
  sheets: readonly Sheet[],
  context: BlockContext,
): readonly Row[] {
  const climbs = sheets.flatMap((line): readonly Climb[] => {
    if (line.kind !== 'line') return [];
    const piece = lesson.pieces.find(({ id }) => id === line.id);
    const own = piece?.kind === 'line' ? piece.playing.ladder?.rungs : undefined;
    return [{ line, rungs: own ?? proposeLadder(line.tempo) }];
  });
  if (climbs.length === 0) return [];
  const rows = [
    ...context.settings.steps.filter((step) => step.trim() !== '').map((step) => tickRow(step, context)),
    ...climbs.map((climb) => ladderRow(climb, climbs.length > 1, context)),
  ];
  return headedRows(
    'Practice',
    context.sizes.heading,
    context.spacing.blockGap,
    rows.map((row, index) => ({ ...row, keepWithNext: index < rows.length - 1 })),
  );
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

const ROUND_WORDS = ['', 'one good time', 'two good times', 'three good times', 'four good times'] as const;

/** How long to stay on a rung; nothing where the rungs differ, for then each says it. */
function stepUp(rungs: readonly Rung[]): string {
  const [first] = rungs;
  if (first === undefined || rungs.some(({ rounds }) => rounds !== first.rounds)) return '';
  const times = ROUND_WORDS[first.rounds] ?? `${first.rounds} good times`;
  return `, a step up after ${times}${first.rounds > 1 ? ' in a row' : ''}`;
}

function ladderRow({ line, rungs }: Climb, named: boolean, context: BlockContext): Row {
  const { body } = context.sizes;
  const rule = stepUp(rungs);
  const top = rungs.at(-1)?.tempo ?? line.tempo;
  const label = `${named ? `${line.name}: tempo` : 'Tempo'} ladder up to ${toldTempoText(line, top)}${rule}`;
  const words = joinRows(paragraphRows(label, body, context.width, context.measure));
  const texts = rungs.map(({ tempo, rounds }) =>
    rule === '' ? `${toldTempo(line, tempo)} (${rounds} times)` : String(toldTempo(line, tempo)),
  );
  const step = Math.max(body.size * 5, ...texts.map((text) => context.measure(text, body) + body.size * 2.5));
  const inLine = Math.max(1, Math.floor((context.width + body.size) / step));
  const lineHeight = body.size * 1.5;
  const marks = texts.flatMap((text, index): readonly Mark[] => {
    const x = (index % inLine) * step;
    const y = words.height + 2 + Math.floor(index / inLine) * lineHeight;
    const box = tickBox(x, body.size);
    return [
      { ...box, y: y + box.y },
      { kind: 'text', text, ...body, x: x + body.size * 1.25, y: y + body.size * 0.95, anchor: 'start' },
    ];
  });
  return {
    height: words.height + 2 + body.size * 1.3 + (Math.ceil(texts.length / inLine) - 1) * lineHeight,
    gap: 6,
    keepWithNext: false,
    marks: [...words.marks, ...tagged(marks, { role: 'P' })],
  };
}
