import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, pad, weights } from './rows';
import type { Feel } from './types';

/** Four kicks a bar and octaves in eighths. */
export const DISCO: Feel = {
  id: 'disco',
  name: 'Disco',
  description:
    'Low root on the beat and its octave on the and, where octaves are on; otherwise root and fifth in driving eighths.',
  tempo: { least: bpm(110), usual: bpm(120), most: bpm(130), count: 'one way', source: COMMON_PRACTICE },
  swing: [{ bpm: bpm(120), ratio: 1 }],
  phraseLength: 4,
  silence: { least: 0, source: 'common practice: the pulse goes through' },
  weights: weights(0.9, 0.3, 0.2, OURS),
  figures: figures(
    COMMON_PRACTICE,
    'R 8 R 8',
    'R 8 R 8 R 8 R 8',
    'R 8 R 8 R 8',
    'R 8 R 8 5',
    'R R 8 8',
    'R R 5 5',
    'R 5 R 5',
    'R R R R 5 5 5 5',
  ),
  bassTouch: { muted: true, source: COMMON_PRACTICE },
  crash: { source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'snare', 'crash'], held: false, source: OURS },
  layBack: { bass: 0, chops: 2, organ: 2, source: OURS },
  bassRole: { ...PLAIN_ROLE, mayPump: true },
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: [
        drum('kick', 'x---x---x---x---', COMMON_PRACTICE),
        drum('snare', '----x-------x---', COMMON_PRACTICE),
        drum('open hat', '--o---o---o---o-', COMMON_PRACTICE),
      ],
      fill: [drum('kick', 'x---x---x---x---', OURS), drum('snare', '----x---x-xxxxX-', OURS)],
      dressing: [
        drum('snare', '-------2-1-----2', OURS),
        drum('closed hat', '51-1513-511-5134', OURS),
        drum('kick', '------1-------2-', OURS),
      ],
      variants: {
        hats: [
          [drum('closed hat', 'x---x---x---x---', OURS), drum('open hat', '--o---o---o---o-', OURS)],
          [drum('closed hat', 'xsxsxsxsxsxsxsxs', OURS)],
        ],
        strokes: [drum('kick', 'x---x---x---x-s-', OURS), drum('kick', 'x---x--sx---x---', OURS)],
      },
      chops: { grid: '--x---x---x---x-', source: COMMON_PRACTICE },
      organ: pad(16, COMMON_PRACTICE),
    },
  ],
};
