import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, weights } from './rows';
import type { Feel } from './types';

const OFF_BEAT_CHOPS = 'published: raggaemusicinfo.blogspot.com 2013/04; thepianoshed.com "the bubble"';

/** Walking quarters under off-beat chops; drums as in a shuffle with the weight on 2 and 4. */
export const EARLY_SKA: Feel = {
  id: 'early-ska',
  name: 'Early ska',
  description:
    'The bass walks in quarter notes through the chord tones; listen for the chops on every "and" between them.',
  tempo: { least: bpm(110), usual: bpm(126), most: bpm(140), count: 'one way', source: COMMON_PRACTICE },
  swing: [
    { bpm: bpm(110), ratio: 1.7 },
    { bpm: bpm(140), ratio: 1.2 },
  ],
  phraseLength: 4,
  silence: { least: 0, source: 'common practice: early ska walks' },
  weights: weights(0.9, 0.5, 0.3, OURS),
  figures: figures(COMMON_PRACTICE, 'R 3 5 3', 'R 3 5 6', 'R 3 5 8', 'R R 3 5'),
  bassTouch: { muted: false, source: COMMON_PRACTICE },
  crash: { source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'snare'], held: false, source: OURS },
  layBack: { bass: 4, chops: 0, organ: 0, source: OURS },
  bassRole: PLAIN_ROLE,
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: [
        drum('kick', '----x-------x---', COMMON_PRACTICE),
        drum('snare', '----x-------x---', COMMON_PRACTICE),
        drum('closed hat', 'x-x-x---x-x-x---', COMMON_PRACTICE),
        drum('open hat', '------o-------o-', COMMON_PRACTICE),
      ],
      fill: [
        drum('kick', '----x-------x---', OURS),
        drum('snare', '----x---x-x-xxX-', OURS),
        drum('closed hat', 'x-x-x-----------', OURS),
        drum('open hat', '------o---------', OURS),
      ],
      dressing: [
        drum('snare', '--1---2---1---2-', OURS),
        drum('closed hat', '---1---2---1-2--', OURS),
        drum('kick', '2-------2-----1-', OURS),
      ],
      variants: {
        hats: [
          [drum('closed hat', 'x-x-x-x-x-x-x-x-', OURS)],
          [drum('ride', 'x-x-x-x-x-x-x-x-', OURS), drum('foot hat', '----x-------x---', OURS)],
        ],
        strokes: [drum('kick', '----x-------x-s-', OURS), drum('kick', 's---x---s---x---', OURS)],
      },
      chops: { grid: '--x---x---x---x-', source: OFF_BEAT_CHOPS },
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
    {
      metre: { count: 3, unit: 4 },
      drums: [
        drum('kick', 'x-----------', OURS),
        drum('snare', '----x---x---', OURS),
        drum('closed hat', 'x-x-x-x-x---', OURS),
        drum('open hat', '----------o-', OURS),
      ],
      fill: [
        drum('kick', 'x-----------', OURS),
        drum('snare', '----x-x-xxX-', OURS),
        drum('closed hat', 'x-x---------', OURS),
      ],
      chops: {
        grid: '--x---x---x-',
        source: 'ours: the off-beats of the 4/4 row, carried over',
      },
      organ: {
        left: { grid: '-x-x-x-x-x-x', source: 'ours: the 4/4 row carried over' },
        right: { grid: '--x---x---x-', source: 'ours: the 4/4 row carried over' },
      },
    },
  ],
};
