/**
 * Shapes for the notes over one chord, counted in steps of its scale from the root: `R` the root, `8` its
 * octave, a comma lowers by an octave (`5,` is the fifth below). The shapes are common practice with no single
 * source: arpeggios in their useful orders, scale figures that stay by step, and repeated notes.
 */
export interface Contour {
  readonly text: string;
  /** Steps above the root: 0 the root, 7 its octave, −3 the fifth below. */
  readonly steps: readonly number[];
}

const SHAPES: readonly string[] = [
  'R',
  '5',
  '3',
  'R R',
  'R 5',
  'R 3',
  'R 5,',
  'R 8',
  '5 R',
  '3 R',
  '3 5',
  '8 5',
  '5 3',
  'R 7',
  'R 2',
  '5 8',
  'R 7,',
  'R R R',
  'R R 5',
  'R 5 R',
  'R 3 5',
  'R 5 8',
  'R 5 3',
  'R 3 R',
  'R 5, R',
  '5 3 R',
  '8 5 R',
  'R 8 5',
  'R R 3',
  'R 5 5',
  'R R 8',
  '3 5 8',
  '8 5 3',
  'R 8 R',
  'R 5 7',
  'R 7 5',
  'R 3 7',
  '8 7 5',
  'R 2 3',
  'R 7, R',
  'R 2 R',
  '3 2 R',
  '5 4 3',
  'R 5 6',
  'R 7, 6,',
  'R 3 2',
  '5 6 5',
  'R 6, 5,',
  'R 3 4',
  'R 5 4',
  'R R 5,',
  'R 3 5 8',
  'R 5 8 5',
  'R 3 5 3',
  'R 5 3 5',
  'R 5 R 5',
  'R R 5 5',
  'R R R 5',
  'R R 3 5',
  'R R 5 R',
  'R R R R',
  'R 5, R 5',
  'R 5 5 R',
  '8 6 5 3',
  '8 5 3 R',
  'R 8 5 3',
  'R 5 3 R',
  '3 5 8 5',
  'R 3 R 5',
  'R 5 8 8',
  'R R 5 8',
  'R R 5 3',
  'R 5 R 3',
  '5 3 R R',
  'R 8 R 8',
  'R R 8 8',
  'R R 8 5',
  'R 8 8 5',
  'R R 5, R',
  '5 8 5 R',
  'R 3 5 7',
  'R 5 7 5',
  'R 7 5 3',
  '8 7 5 3',
  'R 3 7 5',
  'R 5 7 8',
  'R 3 5 6',
  'R 5 6 5',
  'R 2 3 5',
  'R 3 2 R',
  'R 2 3 R',
  'R 2 3 2',
  'R R 2 3',
  'R R 3 2',
  'R 5 4 3',
  'R 3 4 5',
  'R 7, 6, 5,',
  'R R 7, R',
  '8 7 6 5',
  '5 4 3 2',
  '5 6 7 8',
  '3 2 R R',
  'R 2 R R',
  'R 5, 6, 7,',
  '3 4 5 8',
  '5 6 5 3',
  'R 3 5 4',
  'R R 3 5 8',
  'R R 5 8 5',
  'R 3 5 8 5',
  'R R R 5 5',
  'R R 5 5 R',
  'R 3 5 5 8',
  'R 5 5 8 5',
  'R R 3 3 5',
  'R R 3 5 3',
  'R 3 5 3 R',
  'R R R R 5',
  '8 8 5 3 R',
  'R R 5 R 5',
  'R 5 R R 5',
  'R R 8 8 5',
  'R 3 5 7 5',
  'R 2 3 5 5',
  'R R 2 3 5',
  'R 3 5 6 5',
  'R R 3 2 R',
  'R 5 4 3 2',
  '8 7 6 5 3',
  'R 2 3 2 R',
  'R R R 2 3',
  'R 3 4 5 8',
  'R 8 R 8 5',
  'R 8 R 8 R',
  'R R 8 R 8',
  'R 8 R 8 R 8',
  'R R 8 R R 8',
  'R 8 R 8 5 5',
  'R R 8 R 8 8',
  'R R 3 3 5 5',
  'R R 5 5 8 8',
  'R 3 5 8 5 3',
  'R R 5 5 R R',
  'R R R R 5 5',
  'R R 3 5 8 5',
  'R 5 8 5 R 5',
  '8 8 5 5 3 R',
  'R 3 5 5 3 R',
  'R R R 5 5 5',
  'R 3 5 6 5 3',
  'R 2 3 5 3 2',
  'R R 2 3 5 5',
  'R R 3 4 5 5',
  '8 7 6 5 4 3',
  'R R R 5 R R',
  'R 8 R 8 R 8 R',
  'R 8 R 8 R 8 5',
  'R R 3 3 5 5 8',
  'R R 3 5 5 3 R',
  'R R 5 5 8 8 5',
  'R 3 5 8 5 3 R',
  'R R R R 5 5 5',
  'R 3 5 6 8 6 5',
  'R 2 3 4 5 4 3',
  'R R 5 5 R R 5',
  'R 8 R 8 R 8 R 8',
  'R R 8 8 R R 8 8',
  'R 8 R 8 R 8 3 5',
  'R R 3 3 5 5 6 6',
  'R 5 R 5 R 5 R 5',
  'R R 3 3 5 5 8 8',
  'R R 3 3 5 5 3 3',
  'R R 5 5 8 8 5 5',
  'R 3 5 6 8 6 5 3',
  'R 2 3 4 5 4 3 2',
  'R 3 5 8 8 5 3 R',
  'R R R R 5 5 5 5',
  '8 7 6 5 4 3 2 R',
];

function stepOf(token: string): number {
  const lowered = token.endsWith(',');
  const number = token.startsWith('R') ? 1 : Number.parseInt(token, 10);
  return number - 1 - (lowered ? 7 : 0);
}

const readShape = (text: string): Contour => ({ text, steps: text.split(' ').map(stepOf) });

/** Where the fifth above lies too high, the one below does the same work: `R 5 R` is also `R 5, R`. */
function loweredFifths(text: string): readonly string[] {
  return /^[R35 ]+$/.test(text) && text.includes('5') && text.startsWith('R')
    ? [text, text.replaceAll('5', '5,')]
    : [text];
}

const BY_COUNT = new Map<number, Contour[]>();
for (const shape of [...new Set(SHAPES.flatMap(loweredFifths))].map(readShape)) {
  const known = BY_COUNT.get(shape.steps.length);
  if (known) known.push(shape);
  else BY_COUNT.set(shape.steps.length, [shape]);
}

/** The longest shape of the table, in notes. */
const LONGEST = 8;

/** The shapes for a number of notes; longer figures begin again after eight. */
export function contoursOf(count: number): readonly Contour[] {
  if (count <= LONGEST) return BY_COUNT.get(count) ?? [];
  const rest = contoursOf(count - LONGEST);
  return (BY_COUNT.get(LONGEST) ?? []).flatMap((first) => {
    const second = rest.find((shape) => shape.text.startsWith('R'));
    return second ? [{ text: `${first.text} ${second.text}`, steps: [...first.steps, ...second.steps] }] : [];
  });
}
