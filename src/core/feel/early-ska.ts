import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, weights } from './rows';
import type { Feel } from './types';

const OFF_BEAT_CHOPS = 'raggaemusicinfo.blogspot.com 2013/04; thepianoshed.com "the bubble"';

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
  silence: { least: 0, source: 'early ska walks: common practice, no source' },
  weights: weights(0.9, 0.5, 0.3),
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
        drum('kick', '----x-------x---'),
        drum('snare', '----x-------x---'),
        drum('closed hat', 'x-x-x---x-x-x---'),
        drum('open hat', '------o-------o-'),
      ],
      fill: [
        drum('kick', '----x-------x---'),
        drum('snare', '----x---x-x-xxX-'),
        drum('closed hat', 'x-x-x-----------'),
        drum('open hat', '------o---------'),
      ],
      dressing: [
        drum('snare', '--1---2---1---2-'),
        drum('closed hat', '---1---2---1-2--'),
        drum('kick', '2-------2-----1-'),
      ],
      variants: {
        hats: [
          [drum('closed hat', 'x-x-x-x-x-x-x-x-', OURS)],
          [drum('ride', 'x-x-x-x-x-x-x-x-', OURS), drum('foot hat', '----x-------x---', OURS)],
        ],
        kicks: [drum('kick', '----x-------x-s-', OURS), drum('kick', 's---x---s---x---', OURS)],
      },
      chops: { grid: '--x---x---x---x-', source: OFF_BEAT_CHOPS },
      organ: {
        left: { grid: '-x-x-x-x-x-x-x-x', source: 'derived from thepianoshed.com "the bubble", slow count' },
        right: { grid: '--x---x---x---x-', source: 'derived from thepianoshed.com "the bubble", slow count' },
      },
    },
    {
      metre: { count: 3, unit: 4 },
      drums: [
        drum('kick', 'x-----------'),
        drum('snare', '----x---x---'),
        drum('closed hat', 'x-x-x-x-x---'),
        drum('open hat', '----------o-'),
      ],
      fill: [drum('kick', 'x-----------'), drum('snare', '----x-x-xxX-'), drum('closed hat', 'x-x---------')],
      chops: {
        grid: '--x---x---x-',
        source: 'the off-beats of the 4/4 row, carried over: common practice, no source',
      },
      organ: {
        left: { grid: '-x-x-x-x-x-x', source: 'the 4/4 row carried over: common practice, no source' },
        right: { grid: '--x---x---x-', source: 'the 4/4 row carried over: common practice, no source' },
      },
    },
  ],
};
