import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, weights } from './rows';
import type { Feel } from './types';

const ROCKSTEADY_PATTERN = 'published: primidi.com/rocksteady/characteristics';

/** Slow count: short clusters, silence, and a set-up into the next chord. */
export const ROCKSTEADY: Feel = {
  id: 'rocksteady',
  name: 'Rocksteady',
  description:
    'The bass plays short clusters and leaves room, then sets up the next chord; listen for the rests between the clusters.',
  tempo: {
    least: bpm(75),
    usual: bpm(88),
    most: bpm(105),
    count: 'slow',
    source: COMMON_PRACTICE,
  },
  swing: [{ bpm: bpm(88), ratio: 1.2 }],
  phraseLength: 4,
  silence: {
    least: 0.25,
    source: 'common practice: at least a quarter of the time in reggae styles',
  },
  weights: weights(0.9, 0.3, 0.8, OURS),
  figures: figures(COMMON_PRACTICE, 'R 3 5', 'R R 5', 'R 5 8', 'R 3 5 3'),
  bassTouch: { muted: true, source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'rim'], held: false, source: OURS },
  layBack: { bass: 12, chops: 6, organ: 4, source: OURS },
  bassRole: { ...PLAIN_ROLE, mayRestOnOne: true },
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: [
        drum('kick', '----x-------x---', ROCKSTEADY_PATTERN),
        drum('snare', '----x-------x---', ROCKSTEADY_PATTERN),
        drum('closed hat', 'x-x-x-x-x-x-x-x-', COMMON_PRACTICE),
      ],
      fill: [
        drum('kick', '----x-------x---', OURS),
        drum('snare', '----x-----x-xxX-', OURS),
        drum('closed hat', 'x-x-x-x-x-------', OURS),
      ],
      dressing: [
        drum('snare', '-13-132-3-2-1333', OURS),
        drum('closed hat', '-3-4-3-4-3-4-3-4', OURS),
        drum('kick', '1-----1---1-----', OURS),
      ],
      variants: {
        hats: [
          [drum('closed hat', 'x-x-x-x-x-x-x---', OURS), drum('open hat', '--------------o-', OURS)],
          [drum('closed hat', 'xgx-xgx-xgx-xgx-', OURS)],
        ],
        strokes: [drum('kick', '----x-----s-x---', OURS), drum('kick', '----x-------x-s-', OURS)],
      },
      chops: {
        grid: '--x---x---x---x-',
        source: 'published: raggaemusicinfo.blogspot.com 2013/04; thepianoshed.com "the bubble"',
      },
      organ: {
        left: {
          grid: '-x-x-x-x-x-x-x-x',
          source: 'ours: derived from thepianoshed.com "the bubble" for the slow count',
        },
        right: {
          grid: '--x---x---x---x-',
          source: 'ours: derived from thepianoshed.com "the bubble" for the slow count',
        },
      },
    },
  ],
};
