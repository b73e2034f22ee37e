import { PHRASE_BOOKS } from '../../feel';
import { modelOf } from '../read-request';
import { writeNotes } from '../tones';
import type { ComposeRequest, LineNotes } from '../types';
import { composeWithBook } from './engine';

/** Plans that are tried on a short chart, and over all bars of a long one. */
const MOST_PLANS = 160;
const PLANNED_BARS = 1600;

/** A line by the feel's phrase book; null where the feel has none yet. */
export function composeByBook(request: ComposeRequest): LineNotes | null {
  const book = PHRASE_BOOKS[request.feel.id];
  const model = modelOf(request);
  const own = book?.metres.find(
    ({ metre }) => metre.count === request.chart.metre.count && metre.unit === request.chart.metre.unit,
  );
  const metre = own ?? book?.metres[0];
  if (!book || !metre) return null;
  const plans = Math.max(6, Math.min(MOST_PLANS, Math.floor(PLANNED_BARS / Math.max(1, model.bars.length))));
  const draft = composeWithBook({ model, book, metre, seed: request.seed, kept: request.kept, plans });
  return draft ? draft.heard.map(writeNotes) : null;
}
