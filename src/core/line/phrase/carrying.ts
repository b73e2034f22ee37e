import { remembered } from '../../base';
import type { Theme } from '../../feel';
import type { Pool } from './pools';
import type { Workshop } from './workshop';

/** A statement has a choice from so many bars on; fewer over more of the chart than this share, and it is no tune. */
const CHOICE = 2;
const POOR = 0.25;

/** Whether the chords, the range and the level leave a theme enough of its own statements to make a line of. */
function carries({ segments, pools }: Workshop, theme: Theme): boolean {
  const place = { theme, slot: 'S', models: null, tuneBar: null, asks: 0, wide: false, lends: true } as const;
  const rich = new Map<Pool, boolean>();
  const free = segments.filter(({ whole, ladder, kept }) => whole && ladder !== null && !kept);
  const poor = free.filter((segment) => {
    const pool = pools.poolOf(segment, place);
    return !remembered(
      rich,
      pool,
      () => pool.nodes.filter(({ borrowed, contour }) => !borrowed && contour?.slot === 'S').length >= CHOICE,
    );
  });
  return poor.length <= free.length * POOR;
}

/** The first two themes that carry a line: octaves over D have no room below B2, and what is left of them is a scrap. */
export function carryingThemes(workshop: Workshop, themes: readonly Theme[]): readonly Theme[] {
  const found: Theme[] = [];
  for (const theme of themes) {
    if (found.length === 2) break;
    if (carries(workshop, theme)) found.push(theme);
  }
  return found.length > 0 ? found : themes;
}
