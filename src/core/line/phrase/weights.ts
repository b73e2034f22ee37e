import type { Feature } from './features';

/**
 * What each feature of a line costs (positive) or is worth (negative). `hand` weights are set by ear; `fitted` ones
 * come from pairs of lines that blind readers compared (see tests/jury).
 */
export const WEIGHTS: Readonly<
  Record<Feature, { readonly weight: number; readonly origin: 'hand' | 'fitted' }>
> = {
  ledByStep: { weight: -4, origin: 'hand' },
  ledByLeap: { weight: 4, origin: 'hand' },
  ledByTritone: { weight: 8, origin: 'hand' },
  stuck: { weight: 4, origin: 'hand' },
  stutter: { weight: 4, origin: 'hand' },
  uniformLeads: { weight: 4, origin: 'hand' },
  oneSided: { weight: 4, origin: 'hand' },
  seamByStep: { weight: -1.2, origin: 'hand' },
  seamPickup: { weight: -0.8, origin: 'hand' },
  lateRoot: { weight: 4, origin: 'hand' },
  seventhsHeard: { weight: -5, origin: 'hand' },
  colourHeard: { weight: -1.6, origin: 'hand' },
  bare: { weight: 1.6, origin: 'hand' },
  pasted: { weight: 5, origin: 'hand' },
  twins: { weight: 8, origin: 'hand' },
  alikeNeighbours: { weight: 3, origin: 'hand' },
  rhythms: { weight: 1.5, origin: 'hand' },
  signature: { weight: -3, origin: 'hand' },
  noBreath: { weight: 1.6, origin: 'hand' },
  breaths: { weight: 0.4, origin: 'hand' },
  topHeld: { weight: 0.8, origin: 'hand' },
  topEarly: { weight: 4, origin: 'hand' },
  narrow: { weight: 3, origin: 'hand' },
  wide: { weight: 3, origin: 'hand' },
  unturned: { weight: 12, origin: 'hand' },
  tritones: { weight: 16, origin: 'hand' },
  piledLeaps: { weight: 14, origin: 'hand' },
  jolts: { weight: 24, origin: 'hand' },
  longChromatic: { weight: 14, origin: 'hand' },
  shortChromatic: { weight: 0, origin: 'hand' },
  seesaw: { weight: 10, origin: 'hand' },
  scaleRuns: { weight: 3, origin: 'hand' },
  backToRoot: { weight: 2.5, origin: 'hand' },
  onePitch: { weight: 3, origin: 'hand' },
  grinding: { weight: 14, origin: 'hand' },
  strongOutside: { weight: 2.5, origin: 'hand' },
  marked: { weight: 8, origin: 'hand' },
  high: { weight: 2, origin: 'hand' },
  fuller: { weight: 240, origin: 'hand' },
  crowded: { weight: 3, origin: 'hand' },
};
