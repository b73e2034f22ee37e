import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, pad, weights } from './rows';
import type { Feel } from './types';

const WALTZ_BEAT = 'drumsplayerworld.com "Waltz beats": kick with the hi-hat on one, snare on two and three';

/** One heavy beat and two light ones; two bars are one step and its answer. */
export const WALTZ: Feel = {
  id: 'waltz',
  name: 'Waltz',
  description:
    'The bass is heavy on one and leaves two and three to the chords; two bars belong together, and the second leads on.',
  tempo: { least: bpm(84), usual: bpm(120), most: bpm(180), count: 'one way', source: COMMON_PRACTICE },
  swing: [{ bpm: bpm(120), ratio: 1 }],
  phraseLength: 4,
  silence: { least: 0, source: 'the one rings: common practice, no source' },
  weights: weights(0.9, 0.5, 0.3),
  figures: figures(COMMON_PRACTICE, 'R 5', 'R 5,', 'R 5 5', 'R 3 5', 'R 5 8', 'R 3'),
  bassTouch: { muted: false, source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'ride'], held: true, source: OURS },
  layBack: { bass: 4, chops: 5, organ: 5, source: OURS },
  bassRole: PLAIN_ROLE,
  metres: [
    {
      metre: { count: 3, unit: 4 },
      drums: [
        drum('kick', 'x-----------', WALTZ_BEAT),
        drum('snare', '----x---x---', WALTZ_BEAT),
        drum('closed hat', 'X---x---x---', WALTZ_BEAT),
      ],
      fill: [drum('kick', 'x-----------'), drum('snare', '----x-x-x-X-'), drum('closed hat', 'X-----------')],
      dressing: [
        drum('snare', '--1---2---2-'),
        drum('closed hat', '--2---1---2-'),
        drum('kick', '------1---2-'),
      ],
      variants: {
        hats: [[drum('ride', 'X---x---x-x-', OURS)], [drum('closed hat', 'X-x-x-x-x-x-', OURS)]],
        kicks: [drum('kick', 'x---------s-', OURS), drum('kick', 'x-----s-----', OURS)],
      },
      chops: { grid: '----x---x---', source: 'the chords on two and three: common practice, no source' },
      organ: pad(12),
    },
  ],
};
