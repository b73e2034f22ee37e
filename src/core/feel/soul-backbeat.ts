import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, pad, weights } from './rows';
import type { Feel } from './types';

/** Kick and bass together on one and before three, the snare on two and four. */
export const SOUL_BACKBEAT: Feel = {
  id: 'soul-backbeat',
  name: 'Soul backbeat',
  description:
    'The bass locks with the kick on one and the push before three; the snare answers on two and four.',
  tempo: { least: bpm(95), usual: bpm(110), most: bpm(125), count: 'one way', source: COMMON_PRACTICE },
  swing: [{ bpm: bpm(110), ratio: 1 }],
  phraseLength: 4,
  silence: { least: 0.12, source: 'room for the backbeat: common practice, no source' },
  weights: weights(0.8, 0.4, 0.4),
  figures: figures(COMMON_PRACTICE, 'R R 5', 'R 5 8', 'R R 5 8', 'R R 7 8', 'R 3 5 6'),
  bassTouch: { muted: true, source: COMMON_PRACTICE },
  crash: { source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'snare', 'crash'], held: true, source: OURS },
  layBack: { bass: 8, chops: 5, organ: 4, source: OURS },
  bassRole: PLAIN_ROLE,
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: [
        drum('kick', 'x-------x-x-----'),
        drum('snare', '----x-------x---'),
        drum('closed hat', 'x-x-x-x-x-x-x-x-'),
      ],
      fill: [
        drum('kick', 'x-------x-x-----'),
        drum('snare', '----x---x-xxxxX-'),
        drum('closed hat', 'x-x-x-x---------'),
      ],
      dressing: [
        drum('snare', '-1-2---3-2-3-1-2'),
        drum('closed hat', '-1---1-2-1---2-2'),
        drum('kick', '--2---2----2--2-'),
        drum('open hat', '--------------1-'),
      ],
      variants: {
        hats: [
          [drum('closed hat', 'x-x-x-x-x-x-x---', OURS), drum('open hat', '--------------o-', OURS)],
          [drum('ride', 'x-x-x-x-x-x-x-x-', OURS), drum('foot hat', '----x-------x---', OURS)],
        ],
        kicks: [drum('kick', 'x-----s-x-x-----', OURS), drum('kick', 'x-------x-x---s-', OURS)],
      },
      chops: { grid: '----x-------x---', source: COMMON_PRACTICE },
      organ: pad(16),
    },
    {
      metre: { count: 6, unit: 8 },
      drums: [drum('kick', 'x-----'), drum('snare', '---x--'), drum('closed hat', 'xxxxxx')],
      fill: [drum('kick', 'x-----'), drum('snare', '---xxx'), drum('closed hat', 'xxx---')],
      chops: { grid: '---x--', source: COMMON_PRACTICE },
      organ: pad(6),
    },
    {
      metre: { count: 12, unit: 8 },
      drums: [
        drum('kick', 'x-----x-----'),
        drum('snare', '---x-----x--'),
        drum('closed hat', 'xxxxxxxxxxxx'),
      ],
      fill: [drum('kick', 'x-----x-----'), drum('snare', '---x-----xxx'), drum('closed hat', 'xxxxxxxxx---')],
      chops: { grid: '---x-----x--', source: COMMON_PRACTICE },
      organ: pad(12),
    },
  ],
};
