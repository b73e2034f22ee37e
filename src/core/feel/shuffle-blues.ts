import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, pad, weights } from './rows';
import type { Feel } from './types';

const SHUFFLE = 'published: mattdeanworld.co.uk 2015/10/25';

/** Swung eighths at two to one under climbing sixths. */
export const SHUFFLE_BLUES: Feel = {
  id: 'shuffle-blues',
  name: 'Shuffle blues',
  description:
    'The bass climbs 1-3-5-6 and comes back down, with the chord’s seventh from level 2 on; every pair of eighths is long and short like the first and last of a triplet.',
  tempo: { least: bpm(80), usual: bpm(108), most: bpm(130), count: 'one way', source: COMMON_PRACTICE },
  swing: [{ bpm: bpm(108), ratio: 2 }],
  phraseLength: 4,
  silence: { least: 0, source: 'common practice: the pulse goes through' },
  weights: weights(0.9, 0.5, 0.1, OURS),
  figures: figures(
    COMMON_PRACTICE,
    'R 3 5 6',
    '8 6 5 3',
    'R 3 5 6 8 6 5 3',
    'R R 3 3 5 5 6 6',
    'R 3 5 3',
    'R R 3 3 5 5 3 3',
  ),
  bassTouch: { muted: false, source: COMMON_PRACTICE },
  crash: { source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'snare', 'crash'], held: true, source: OURS },
  layBack: { bass: 10, chops: 8, organ: 6, source: OURS },
  bassRole: { ...PLAIN_ROLE, seventhsEarly: true },
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: [
        drum('kick', 'x-------x-------', SHUFFLE),
        drum('snare', '----x-------x---', SHUFFLE),
        drum('ride', 'x-x-x-x-x-x-x-x-', COMMON_PRACTICE),
      ],
      fill: [
        drum('kick', 'x-------x-------', OURS),
        drum('snare', '----x---x-x-x-x-', OURS),
        drum('ride', 'x-x-x-x---------', OURS),
      ],
      dressing: [
        drum('snare', '--5---5---5---5-', OURS),
        drum('kick', '------2-------2-', OURS),
        drum('foot hat', '----9-------9---', OURS),
      ],
      variants: {
        hats: [[drum('closed hat', 'x-x-x-x-x-x-x-x-', OURS)], [drum('ride', 'x---x-x-x---x-x-', OURS)]],
        strokes: [drum('kick', 'x-----s-x-------', OURS), drum('kick', 'x---s---x---s---', OURS)],
      },
      chops: { grid: '----x-------x---', source: COMMON_PRACTICE },
      organ: pad(16, COMMON_PRACTICE),
    },
    {
      metre: { count: 12, unit: 8 },
      drums: [
        drum('kick', 'x-----x-----', SHUFFLE),
        drum('snare', '---x-----x--', SHUFFLE),
        drum('ride', 'x-xx-xx-xx-x', COMMON_PRACTICE),
      ],
      fill: [
        drum('kick', 'x-----x-----', OURS),
        drum('snare', '---x--x-xx-x', OURS),
        drum('ride', 'x-xx-x------', OURS),
      ],
      dressing: [
        drum('snare', '--2--2--2-12', OURS),
        drum('kick', '-----2-----2', OURS),
        drum('foot hat', '---9-----9--', OURS),
      ],
      variants: {
        hats: [[drum('closed hat', 'x-xx-xx-xx-x', OURS)], [drum('ride', 'x--x-xx--x-x', OURS)]],
        strokes: [drum('kick', 'x-----x----s', OURS), drum('kick', 'x--s--x--s--', OURS)],
      },
      chops: { grid: '---x-----x--', source: COMMON_PRACTICE },
      organ: pad(12, COMMON_PRACTICE),
    },
  ],
};
