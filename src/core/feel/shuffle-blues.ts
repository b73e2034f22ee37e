import { bpm } from '../base';
import { bass, COMMON_PRACTICE, drum, figures, pad, weights } from './rows';
import type { Feel } from './types';

const SHUFFLE = 'mattdeanworld.co.uk 2015/10/25, its triplets as swung eighths';

/** Swung eighths at two to one under climbing sixths. */
export const SHUFFLE_BLUES: Feel = {
  id: 'shuffle-blues',
  name: 'Shuffle blues',
  description:
    'The bass climbs 1-3-5-6 and comes back down; every pair of eighths is long and short like the first and last of a triplet.',
  tempo: { least: bpm(80), usual: bpm(108), most: bpm(130), count: 'one way', source: COMMON_PRACTICE },
  swing: [{ bpm: bpm(108), ratio: 2 }],
  phraseLength: 4,
  silence: { least: 0, source: 'the pulse goes through: common practice, no source' },
  weights: weights(0.9, 0.5, 0.1),
  figures: figures(COMMON_PRACTICE, 'R 3 5 6', '8 6 5 3', 'R 3 5 6 8 6 5 3', 'R R 3 3 5 5 6 6', 'R 3 5 3'),
  bassTouch: { muted: false, source: COMMON_PRACTICE },
  metres: [
    {
      metre: { count: 4, unit: 4 },
      cells: [
        bass('x=x=x=x=', 0, 'sat'),
        bass('x===x=x=', 0, 'sat', 1),
        bass('x===x===', 0, 'sa', 1),
        bass('x=x=x===', 0, 'sa', 1),
        bass('x=x=x=--', 0, 'sa'),
        bass('x=xxx=xx', 1, 'sat'),
        bass('xxxxxxxx', 1, 'sat'),
        bass('x=x=xxx=', 1, 'sat'),
        bass('x=x=x=xx', 1, 'at'),
        bass('xxx=x=x=', 1, 'sa'),
        bass('xxx=xxx=', 1, 'sat'),
        bass('x=xxx=x=', 1, 'sat'),
        bass('x=xxxxxx', 1, 't'),
        bass('x==xx=x=', 2, 'sat'),
        bass('x==xx=xx', 2, 't'),
        bass('x=-xx=x=', 3, 'sa'),
        bass('x=x=x=-x', 3, 't'),
        bass('--x=x=x=', 0, 'sat'),
        bass('----x=x=', 0, 'at'),
        bass('--x=x===', 0, 'sa'),
        bass('--xxx=xx', 1, 'sat'),
        bass('--x=xxxx', 1, 't'),
        bass('-xx=x=x=', 3, 'sa'),
        bass('---xx=x=', 3, 'at'),
      ],
      drums: [
        drum('kick', 'x-------x-------', SHUFFLE),
        drum('snare', '----x-------x---', SHUFFLE),
        drum('ride', 'x-x-x-x-x-x-x-x-', SHUFFLE),
      ],
      fill: [
        drum('kick', 'x-------x-------'),
        drum('snare', '----x---x-x-x-x-'),
        drum('ride', 'x-x-x-x---------'),
      ],
      chops: { grid: '----x-------x---', source: COMMON_PRACTICE },
      organ: pad(16),
    },
    {
      metre: { count: 12, unit: 8 },
      cells: [
        bass('x==x==x==x==', 0, 'sat'),
        bass('x=====x==x==', 0, 'sat', 1),
        bass('x=====x=====', 0, 'sa', 1),
        bass('x==x==x=====', 0, 'sa'),
        bass('x==x==x==---', 0, 'sa'),
        bass('x=xx=xx=xx=x', 1, 'sat'),
        bass('x==x=xx==x=x', 1, 'sat'),
        bass('x==x==x==x=x', 1, 'at'),
        bass('x==x==x==xxx', 1, 't'),
        bass('x=xx==x==x==', 1, 'sa'),
        bass('x==x==x=xx==', 1, 'sat'),
        bass('x====xx==x==', 2, 'sat'),
        bass('---x==x==x==', 0, 'sat'),
        bass('------x==x==', 0, 'at'),
        bass('---x=xx==x==', 1, 'sat'),
        bass('---x==x==xxx', 1, 't'),
        bass('--xx==x==x==', 3, 'sa'),
      ],
      drums: [
        drum('kick', 'x-----x-----', SHUFFLE),
        drum('snare', '---x-----x--', SHUFFLE),
        drum('ride', 'x-xx-xx-xx-x', SHUFFLE),
      ],
      fill: [drum('kick', 'x-----x-----'), drum('snare', '---x--x-xx-x'), drum('ride', 'x-xx-x------')],
      chops: { grid: '---x-----x--', source: COMMON_PRACTICE },
      organ: pad(12),
    },
  ],
};
