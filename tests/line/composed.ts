import { type ComposedLine, type ComposeRequest, composeLine } from '../../src/core/line';
import { request, type Wish } from './notation';
import { type WideWish, wideRequest } from './wide-charts';

/** So many lines are remembered; a long run forgets and begins anew. */
const MOST = 400;
const lines = new Map<string, ComposedLine>();

function remembered(key: string, asked: ComposeRequest): ComposedLine {
  const known = lines.get(key) ?? composeLine(asked);
  if (lines.size >= MOST) lines.clear();
  lines.set(key, known);
  return known;
}

/** A request for a chart with its line, composed once however many tests look at it. */
export function composed(chart: string, wish: Wish = {}): { asked: ComposeRequest; line: ComposedLine } {
  const asked = request(chart, wish);
  return { asked, line: remembered(JSON.stringify([chart, wish]), asked) };
}

/** The same for a wide wish. */
export function composedWide(wish: WideWish): { asked: ComposeRequest; line: ComposedLine } {
  const asked = wideRequest(wish);
  return { asked, line: remembered(JSON.stringify(wish), asked) };
}
