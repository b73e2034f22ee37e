import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, pad, weights } from './rows';
import type { Feel } from './types';

const WALTZ_BEAT =
  'published: drumsplayerworld.com "Waltz beats": kick with the hi-hat on one, snare on two and three';

/** One heavy beat and two light ones; two bars are one step and its answer. */
export const WALTZ: Feel = {
  id: 'waltz',
  name: 'Waltz',
  description:
    'The bass is heavy on one and leaves two and three to the chords; two bars belong together, and the second leads on.',
  tempo: { least: bpm(84), usual: bpm(120), most: bpm(180), count: 'one way', source: COMMON_PRACTICE },
  swing: [{ bpm: bpm(120), ratio: 1 }],
  phraseLength: 4,
  silence: { least: 0, source: 'common practice: the one rings' },
  weights: weights(0.9, 0.5, 0.3, OURS),
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
      fill: [
        drum('kick', 'x-----------', OURS),
        drum('snare', '----x-x-x-X-', OURS),
        drum('closed hat', 'X-----------', OURS),
      ],
      dressing: [
        drum('snare', '--1---2---2-', OURS),
        drum('closed hat', '--2---1---2-', OURS),
        drum('kick', '------1---2-', OURS),
      ],
      variants: {
        hats: [[drum('ride', 'X---x---x-x-', OURS)], [drum('closed hat', 'X-x-x-x-x-x-', OURS)]],
        strokes: [drum('kick', 'x---------s-', OURS), drum('kick', 'x-----s-----', OURS)],
      },
      chops: { grid: '----x---x---', source: 'common practice: the chords on two and three' },
      organ: pad(12, COMMON_PRACTICE),
    },
  ],
};
