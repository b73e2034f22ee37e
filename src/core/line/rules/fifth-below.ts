import type { Stretch } from '../harmony';
import { isHome, type Tone } from '../tones';
import { type Rule, TEACHERS_LIST, type Whole } from './types';

/** A change that begins with the chord's fifth under its root. */
function beginsOnFifthBelow(tones: readonly Tone[], stretch: Stretch): boolean {
  const inside = tones.filter((tone) => tone.stretch === stretch);
  const first = inside[0];
  if (!first?.member || isHome(first) || first.interval < 6 || first.interval > 8) return false;
  const root = inside.find((tone) => tone.interval === 0);
  return root === undefined || root.midi > first.midi;
}

/** Bars within which it is heard once. */
const APART = 4;

function places({ model, heard }: Whole): readonly number[] {
  const found: number[] = [];
  let last = Number.NEGATIVE_INFINITY;
  let label = '';
  model.order.forEach((index, played) => {
    for (const stretch of model.bars[index]?.stretches ?? []) {
      const begins = stretch.label !== label && beginsOnFifthBelow(heard[index] ?? [], stretch);
      if (begins && played - last < APART) found.push(index);
      if (begins) last = played;
      label = stretch.label;
    }
  });
  return found;
}

export const FIFTH_BELOW: Rule = {
  number: 11,
  rule: 'A chord change begins with the fifth below at most once in four bars.',
  source: TEACHERS_LIST,
  heard: 'chords begin with their fifth below twice within four bars',
  mend: 'begin with the root',
  caution: { own: 'the fifth below comes again within four bars', entering: null },
  alone: null,
  inParts: false,
  meeting: null,
  tied: null,
  whole: {
    places,
    concerns: (line, bar) => {
      const tones = line.heard[bar.index] ?? [];
      if (!bar.stretches.some((stretch) => beginsOnFifthBelow(tones, stretch))) return false;
      const near = new Set([bar.index, ...bar.before, ...bar.after]);
      return places(line).some((place) => near.has(place));
    },
  },
};
