import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, pad, weights } from './rows';
import type { Feel } from './types';

const TRAIN_BEAT = 'published: drumpaper.com "The train beat"';
const POLKA_BEAT = 'common practice: bass on the beats, chords and snare after them';

/** Root on one, fifth on three, a walk-up to turn. */
export const TWO_BEAT: Feel = {
  id: 'two-beat',
  name: 'Two-beat',
  description:
    'Root on one, fifth on three, a walk-up in the last bar; listen for the snare brushing every eighth.',
  tempo: {
    least: bpm(90),
    usual: bpm(116),
    most: bpm(150),
    count: 'one way',
    source: 'common practice; also written at 160–190 in the double count',
  },
  swing: [{ bpm: bpm(116), ratio: 1 }],
  phraseLength: 4,
  silence: { least: 0, source: 'common practice: the pulse goes through' },
  weights: weights(1, 0.4, 0.1, OURS),
  figures: figures(COMMON_PRACTICE, 'R 5,', 'R 5', 'R 5, R', 'R 5 R', 'R 5 3', 'R 5, 5,', 'R 5 5'),
  bassTouch: { muted: false, source: COMMON_PRACTICE },
  crash: { source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'snare'], held: false, source: OURS },
  layBack: { bass: 2, chops: 3, organ: 3, source: OURS },
  bassRole: PLAIN_ROLE,
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: [
        drum('kick', 'x-------x-------', TRAIN_BEAT),
        drum('snare', 'x-x-X-x-x-x-X-x-', TRAIN_BEAT),
        drum('foot hat', '----x-------x---', TRAIN_BEAT),
      ],
      fill: [
        drum('kick', 'x-------x-------', OURS),
        drum('snare', 'x-x-X-x-xxx-X-x-', OURS),
        drum('foot hat', '----x-------x---', OURS),
      ],
      dressing: [drum('snare', '-2-1-2-2-1-2-2-3', OURS), drum('kick', '------1-------2-', OURS)],
      variants: {
        hats: [[drum('foot hat', '--x---x---x---x-', OURS)], [drum('foot hat', '----x-------x-s-', OURS)]],
        strokes: [drum('kick', 'x-------x-----s-', OURS), drum('kick', 'x-----s-x-------', OURS)],
      },
      chops: { grid: '----x-------x---', source: COMMON_PRACTICE },
      organ: pad(16, COMMON_PRACTICE),
    },
    {
      metre: { count: 2, unit: 2 },
      beats: 2,
      drums: [
        drum('kick', 'x-------x-------', TRAIN_BEAT),
        drum('snare', 'x-x-X-x-x-x-X-x-', TRAIN_BEAT),
        drum('foot hat', '----x-------x---', TRAIN_BEAT),
      ],
      fill: [
        drum('kick', 'x-------x-------', OURS),
        drum('snare', 'x-x-X-x-xxx-X-x-', OURS),
        drum('foot hat', '----x-------x---', OURS),
      ],
      variants: {
        hats: [[drum('foot hat', '--x---x---x---x-', OURS)], [drum('foot hat', '----x-------x-s-', OURS)]],
        strokes: [drum('kick', 'x-------x-----s-', OURS), drum('kick', 'x-----s-x-------', OURS)],
      },
      chops: { grid: '----x-------x---', source: COMMON_PRACTICE },
      organ: pad(16, COMMON_PRACTICE),
    },
    {
      metre: { count: 3, unit: 4 },
      drums: [
        drum('kick', 'x-----------', OURS),
        drum('snare', '----x---x---', OURS),
        drum('foot hat', '----x---x---', OURS),
      ],
      fill: [
        drum('kick', 'x-----------', OURS),
        drum('snare', '----x---xxx-', OURS),
        drum('foot hat', '----x---x---', OURS),
      ],
      chops: { grid: '----x---x---', source: COMMON_PRACTICE },
      organ: pad(12, COMMON_PRACTICE),
    },
    {
      metre: { count: 2, unit: 4 },
      drums: [
        drum('kick', 'x---x---', POLKA_BEAT),
        drum('snare', '--x---x-', POLKA_BEAT),
        drum('foot hat', '--x---x-', POLKA_BEAT),
      ],
      fill: [
        drum('kick', 'x---x---', OURS),
        drum('snare', '--x-xxX-', OURS),
        drum('foot hat', '--x-----', OURS),
      ],
      dressing: [drum('snare', '-1-1-1-2', OURS), drum('kick', '------1-', OURS)],
      chops: { grid: '--x---x-', source: POLKA_BEAT },
      organ: pad(8, COMMON_PRACTICE),
    },
  ],
};
