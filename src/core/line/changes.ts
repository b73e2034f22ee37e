import type { Stretch } from './harmony';
import type { BarModel, LineModel } from './model';

/** A chord that is new where it begins. */
export interface Change {
  readonly bar: BarModel;
  readonly stretch: Stretch;
}

/** Found once for each model: plans are laid out with them again and again. */
const known = new WeakMap<LineModel, readonly Change[]>();

/** The chord changes of one round, in the order they are played. */
export function changesOf(model: LineModel): readonly Change[] {
  const found = known.get(model) ?? findChanges(model);
  known.set(model, found);
  return found;
}

function findChanges(model: LineModel): readonly Change[] {
  const changes: Change[] = [];
  const lastBar = model.bars[model.order.at(-1) ?? -1];
  let label = lastBar?.stretches.at(-1)?.label;
  for (const index of model.order) {
    const bar = model.bars[index];
    if (!bar) continue;
    for (const stretch of bar.stretches) {
      if (stretch.label !== label && stretch.chord) changes.push({ bar, stretch });
      label = stretch.label;
    }
  }
  return changes;
}
