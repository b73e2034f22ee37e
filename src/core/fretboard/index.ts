export { readTuning } from './custom-tuning';
export { fingerLine } from './finger-line';
export { createHandGauge, type HandGauge, type HandOutlook } from './gauge';
export { DEFAULT_HAND, HAND_SPANS, ticksPerSecond } from './hand';
export { createInstrument, LONG_SCALE, rangeOf, SHORT_SCALE, TUNINGS, type Tuning } from './instruments';
export { fretDistance, handSpan, pitchAt, placesOf } from './neck';
export type * from './types';
