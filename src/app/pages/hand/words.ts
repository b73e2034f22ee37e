import { HAND_SPANS, type HandSettings, LONG_SCALE, SHORT_SCALE } from '../../../core/fretboard';

export const SIZES = [
  { value: 'child', label: 'Child' },
  { value: 'adult', label: 'Adult' },
  { value: 'own', label: 'Own measure' },
] as const;

type Size = (typeof SIZES)[number]['value'];

/** The hand's size by its measures. */
export const sizeOf = (hand: HandSettings): Size =>
  (['child', 'adult'] as const).find(
    (size) =>
      HAND_SPANS[size].comfortableSpan === hand.comfortableSpan && HAND_SPANS[size].reach === hand.reach,
  ) ?? 'own';

/** What a player calls a scale length, in millimetres. */
export const scaleName = (millimetres: number): string =>
  millimetres === LONG_SCALE
    ? 'long scale'
    : millimetres === SHORT_SCALE
      ? 'short scale'
      : `${Math.round(millimetres)} mm`;
