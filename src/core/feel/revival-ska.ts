import { bpm } from '../base';
import { bass, COMMON_PRACTICE, drum, figures, PLAIN_ROLE, weights } from './rows';
import type { Feel } from './types';

/** Straight and fast: running arpeggios over four kicks. */
export const REVIVAL_SKA: Feel = {
  id: 'revival-ska',
  name: 'Fast revival ska',
  description:
    'The bass runs arpeggios in quarters and eighths without looking back; listen for the straight off-beats.',
  tempo: { least: bpm(140), usual: bpm(158), most: bpm(180), count: 'one way', source: COMMON_PRACTICE },
  swing: [{ bpm: bpm(158), ratio: 1 }],
  phraseLength: 4,
  silence: { least: 0, source: 'busy throughout: common practice, no source' },
  weights: weights(1, 0.4, 0.2),
  figures: figures(COMMON_PRACTICE, 'R 3 5 3', 'R 3 5 6', 'R R 3 3 5 5', 'R R 3 3 5 5 3 3', 'R 3 5 8'),
  bassTouch: { muted: false, source: COMMON_PRACTICE },
  crash: { source: COMMON_PRACTICE },
  bassRole: PLAIN_ROLE,
  metres: [
    {
      metre: { count: 4, unit: 4 },
      cells: [
        bass('x=x=x=x=', 0, 'sat'),
        bass('x===x=x=', 0, 'sat'),
        bass('x=x=x===', 0, 'sa', 1),
        bass('x===x===', 0, 'sa', 1),
        bass('x=x=x=--', 0, 'sa'),
        bass('xxx=x=x=', 1, 'sat'),
        bass('x=xxx=x=', 1, 'sat'),
        bass('x=x=xxx=', 1, 'sat'),
        bass('x=x=x=xx', 1, 'at'),
        bass('xxx=xxx=', 1, 'sat'),
        bass('x=xxx=xx', 1, 'sat'),
        bass('x=xxxxxx', 1, 't'),
        bass('xxxxxxxx', 1, 'sat'),
        bass('xxxxx=x=', 1, 'sa'),
        bass('x==xx=x=', 2, 'sat'),
        bass('x==xx==x', 2, 'sa'),
        bass('x=-xx=x=', 3, 'a'),
        bass('x==x==x=', 3, 'sa'),
        bass('--x=x=x=', 0, 'a'),
        bass('--x=x===', 0, ''),
        bass('----x=x=', 0, ''),
        bass('--xxx=x=', 1, ''),
        bass('--xxxxxx', 1, ''),
        bass('-xxxx=x=', 3, ''),
        bass('-xxxxxxx', 3, ''),
      ],
      drums: [
        drum('kick', 'x---x---x---x---', 'drummagazine.com lesson "Ska punk"'),
        drum('snare', '----x-------x---'),
        drum('open hat', '--o---o---o---o-'),
      ],
      fill: [drum('kick', 'x---x---x---x---'), drum('snare', '----x---x-x-xxxx')],
      dressing: [
        drum('snare', '--1---1-2-1---2-'),
        drum('closed hat', '1-1-1-1-1-1-1-1-'),
        drum('kick', '------2-------2-'),
      ],
      chops: {
        grid: '--x---x---x---x-',
        source: 'raggaemusicinfo.blogspot.com 2013/04; thepianoshed.com "the bubble"',
      },
      organ: {
        left: { grid: '-x-x-x-x-x-x-x-x', source: 'derived from thepianoshed.com "the bubble", slow count' },
        right: { grid: '--x---x---x---x-', source: 'derived from thepianoshed.com "the bubble", slow count' },
      },
    },
    {
      metre: { count: 2, unit: 2 },
      beats: 2,
      cells: [
        bass('x=x=x=x=', 1, 'sat'),
        bass('x===x===', 0, 'sat', 1),
        bass('x===x=x=', 1, 'sat'),
        bass('x=x=x===', 1, 'sa', 1),
        bass('x===----', 0, 'a', 1),
        bass('x=x=xxx=', 4, 'at'),
        bass('x=x=x=xx', 4, 't'),
        bass('x=====x=', 2, 'sat'),
        bass('x=x=x=--', 1, 'sa'),
        bass('----x===', 0, ''),
        bass('----x=x=', 1, ''),
        bass('--x=x=x=', 3, 'a'),
      ],
      drums: [
        drum('kick', 'x---x---x---x---', 'drummagazine.com lesson "Ska punk"'),
        drum('snare', '----x-------x---'),
        drum('open hat', '--o---o---o---o-'),
      ],
      fill: [drum('kick', 'x---x---x---x---'), drum('snare', '----x---x-x-xxxx')],
      chops: {
        grid: '--x---x---x---x-',
        source: 'raggaemusicinfo.blogspot.com 2013/04; thepianoshed.com "the bubble"',
      },
      organ: {
        left: { grid: '-x-x-x-x-x-x-x-x', source: 'derived from thepianoshed.com "the bubble", slow count' },
        right: { grid: '--x---x---x---x-', source: 'derived from thepianoshed.com "the bubble", slow count' },
      },
    },
  ],
};
