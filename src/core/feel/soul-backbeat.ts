import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, pad, weights } from './rows';
import type { Feel } from './types';

/** Kick and bass together on one and before three, the snare on two and four. */
export const SOUL_BACKBEAT: Feel = {
  id: 'soul-backbeat',
  name: 'Soul backbeat',
  description:
    'The bass locks with the kick on one and, from level 1 on, the push before three; the snare answers on two and four.',
  tempo: { least: bpm(95), usual: bpm(110), most: bpm(125), count: 'one way', source: COMMON_PRACTICE },
  swing: [{ bpm: bpm(110), ratio: 1 }],
  phraseLength: 4,
  silence: { least: 0.12, source: 'ours: room for the backbeat' },
  weights: weights(0.8, 0.4, 0.4, OURS),
  figures: figures(COMMON_PRACTICE, 'R R 5', 'R 5 8', 'R R 5 8', 'R R 7 8', 'R 3 5 6'),
  bassTouch: { muted: true, source: COMMON_PRACTICE },
  crash: { source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'snare', 'crash'], held: true, source: OURS },
  layBack: { bass: 8, chops: 5, organ: 4, source: OURS },
  bassRole: { ...PLAIN_ROLE, dotsEarly: true },
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: [
        drum('kick', 'x-------x-x-----', COMMON_PRACTICE),
        drum('snare', '----x-------x---', COMMON_PRACTICE),
        drum('closed hat', 'x-x-x-x-x-x-x-x-', COMMON_PRACTICE),
      ],
      fill: [
        drum('kick', 'x-------x-x-----', OURS),
        drum('snare', '----x---x-xxxxX-', OURS),
        drum('closed hat', 'x-x-x-x---------', OURS),
      ],
      dressing: [
        drum('snare', '-1-2---3-2-3-1-2', OURS),
        drum('closed hat', '-3-2-3-4-3-2-3-4', OURS),
        drum('kick', '--2---2----2--2-', OURS),
        drum('open hat', '--------------1-', OURS),
      ],
      variants: {
        hats: [
          [drum('closed hat', 'x-x-x-x-x-x-x---', OURS), drum('open hat', '--------------o-', OURS)],
          [drum('ride', 'x-x-x-x-x-x-x-x-', OURS), drum('foot hat', '----x-------x---', OURS)],
        ],
        strokes: [drum('kick', 'x-----s-x-x-----', OURS), drum('kick', 'x-------x-x---s-', OURS)],
      },
      chops: { grid: '----x-------x---', source: COMMON_PRACTICE },
      organ: pad(16, COMMON_PRACTICE),
    },
    {
      metre: { count: 6, unit: 8 },
      drums: [
        drum('kick', 'x-----', COMMON_PRACTICE),
        drum('snare', '---x--', COMMON_PRACTICE),
        drum('closed hat', 'xxxxxx', COMMON_PRACTICE),
      ],
      fill: [drum('kick', 'x-----', OURS), drum('snare', '---xxx', OURS), drum('closed hat', 'xxx---', OURS)],
      chops: { grid: '---x--', source: COMMON_PRACTICE },
      organ: pad(6, COMMON_PRACTICE),
    },
    {
      metre: { count: 12, unit: 8 },
      drums: [
        drum('kick', 'x-----x-----', COMMON_PRACTICE),
        drum('snare', '---x-----x--', COMMON_PRACTICE),
        drum('closed hat', 'xxxxxxxxxxxx', COMMON_PRACTICE),
      ],
      fill: [
        drum('kick', 'x-----x-----', OURS),
        drum('snare', '---x-----xxx', OURS),
        drum('closed hat', 'xxxxxxxxx---', OURS),
      ],
      chops: { grid: '---x-----x--', source: COMMON_PRACTICE },
      organ: pad(12, COMMON_PRACTICE),
    },
  ],
};
