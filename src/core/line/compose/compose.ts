import { stressed } from '../stress';
import type { ComposedLine, ComposeRequest } from '../types';
import { aimMisses } from './aim-misses';
import { deskFor } from './desks';
import { draftOf } from './draft';
import { mended } from './mend';
import { remarksFor } from './remarks';

/**
 * Composes a whole line from the feel's phrases: for many plans of the form the cheapest way through it, and of
 * those lines the one that reads best. The seed chooses the theme and draws the plans; the same request and seed
 * give the same line. Bars in `kept` stay as they are. Never throws for a parsed chart; what could not be done is
 * said in the remarks.
 */
export function composeLine(request: ComposeRequest): ComposedLine {
  const desk = deskFor(request);
  const { model } = desk;
  const { bars: played, cost } = mended(desk, request.seed, draftOf(desk, request.seed));
  const bars = model.bars.map((bar) => {
    const notes = played[bar.index] ?? [];
    return request.kept[bar.index] ? notes : stressed(model, bar, notes);
  });
  const misses = aimMisses(model, bars);
  return { bars, cost, misses, remarks: remarksFor(request, model, bars, misses) };
}
