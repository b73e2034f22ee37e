import type { FretboardLayout } from '../../../score';

/** The string and fret at a place of the picture, in its own pixels; null off the neck. */
export function placeAt(
  { marks }: FretboardLayout,
  x: number,
  y: number,
): { string: number; fret: number } | null {
  const strings = marks.flatMap((mark) => (mark.kind === 'line' && mark.role === 'string' ? [mark.y1] : []));
  const frets = marks.flatMap((mark) =>
    mark.kind === 'text' && mark.role === 'fret-number' ? [{ x: mark.x, fret: Number(mark.text) }] : [],
  );
  const nut = marks.find((mark) => mark.kind === 'line' && mark.role === 'nut');
  const [first] = frets;
  if (first === undefined || strings.length === 0) return null;
  const string = strings.reduce(
    (best, each, index) => (Math.abs(each - y) < Math.abs((strings[best] ?? 0) - y) ? index : best),
    0,
  );
  const nearest = frets.reduce((best, each) => (Math.abs(each.x - x) < Math.abs(best.x - x) ? each : best));
  // Beyond the nut the string is open, whichever way round the neck is drawn.
  const open = nut?.kind === 'line' && (x - nut.x1) * (first.x - nut.x1) < 0;
  return { string: string + 1, fret: open ? 0 : nearest.fret };
}
