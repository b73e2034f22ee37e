import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, weights } from './rows';
import type { Feel } from './types';

const HALF_OF_FOUR = 'common practice: half of the 4/4 row';
const AFTER_BEATS =
  'common practice: a kick on each of the beats, two, two and three eighths long, chords on the eighths after them';

/** Straight and fast: running arpeggios over four kicks. */
export const REVIVAL_SKA: Feel = {
  id: 'revival-ska',
  name: 'Fast revival ska',
  description:
    'The bass runs arpeggios in quarters and eighths without looking back; listen for the straight off-beats.',
  tempo: { least: bpm(140), usual: bpm(158), most: bpm(180), count: 'one way', source: COMMON_PRACTICE },
  swing: [{ bpm: bpm(158), ratio: 1 }],
  phraseLength: 4,
  silence: { least: 0, source: 'common practice: busy throughout' },
  weights: weights(1, 0.4, 0.2, OURS),
  figures: figures(COMMON_PRACTICE, 'R 3 5 3', 'R 3 5 6', 'R R 3 3 5 5', 'R R 3 3 5 5 3 3', 'R 3 5 8'),
  bassTouch: { muted: false, source: COMMON_PRACTICE },
  crash: { source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'snare', 'crash'], held: false, source: OURS },
  layBack: { bass: 0, chops: 0, organ: 0, source: OURS },
  bassRole: PLAIN_ROLE,
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: [
        drum('kick', 'x---x---x---x---', 'published: drummagazine.com lesson "Ska punk"'),
        drum('snare', '----x-------x---', COMMON_PRACTICE),
        drum('open hat', '--o---o---o---o-', COMMON_PRACTICE),
      ],
      fill: [drum('kick', 'x---x---x---x---', OURS), drum('snare', '----x---x-x-xxxx', OURS)],
      dressing: [
        drum('snare', '--1---1-2-1---2-', OURS),
        drum('closed hat', '1-1-1-1-1-1-1-1-', OURS),
        drum('kick', '------2-------2-', OURS),
      ],
      variants: {
        hats: [[drum('closed hat', '--x---x---x---x-', OURS)], [drum('ride', '--x---x---x---x-', OURS)]],
        strokes: [drum('kick', 'x---x---x---x-s-', OURS), drum('kick', 'x-s-x---x-s-x---', OURS)],
      },
      chops: {
        grid: '--x---x---x---x-',
        source: 'published: raggaemusicinfo.blogspot.com 2013/04; thepianoshed.com "the bubble"',
      },
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
      metre: { count: 2, unit: 2 },
      beats: 2,
      drums: [
        drum('kick', 'x---x---x---x---', 'published: drummagazine.com lesson "Ska punk"'),
        drum('snare', '----x-------x---', COMMON_PRACTICE),
        drum('open hat', '--o---o---o---o-', COMMON_PRACTICE),
      ],
      fill: [drum('kick', 'x---x---x---x---', OURS), drum('snare', '----x---x-x-xxxx', OURS)],
      variants: {
        hats: [[drum('closed hat', '--x---x---x---x-', OURS)], [drum('ride', '--x---x---x---x-', OURS)]],
        strokes: [drum('kick', 'x---x---x---x-s-', OURS), drum('kick', 'x-s-x---x-s-x---', OURS)],
      },
      chops: {
        grid: '--x---x---x---x-',
        source: 'published: raggaemusicinfo.blogspot.com 2013/04; thepianoshed.com "the bubble"',
      },
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
      metre: { count: 2, unit: 4 },
      drums: [
        drum('kick', 'x---x---', HALF_OF_FOUR),
        drum('snare', '----x---', HALF_OF_FOUR),
        drum('open hat', '--o---o-', HALF_OF_FOUR),
      ],
      fill: [drum('kick', 'x---x---', OURS), drum('snare', 'x-x-xxxx', OURS)],
      dressing: [
        drum('snare', '--1--12-', OURS),
        drum('closed hat', '1-1-1-1-', OURS),
        drum('kick', '------1-', OURS),
      ],
      chops: { grid: '--x---x-', source: HALF_OF_FOUR },
      organ: {
        left: { grid: '-x-x-x-x', source: HALF_OF_FOUR },
        right: { grid: '--x---x-', source: HALF_OF_FOUR },
      },
    },
    {
      metre: { count: 7, unit: 8 },
      drums: [
        drum('kick', 'x---x---x-----', AFTER_BEATS),
        drum('snare', '----x-------x-', 'common practice: the backbeat, with an eighth cut from the bar'),
        drum('open hat', '--o---o---o-o-', AFTER_BEATS),
      ],
      fill: [drum('kick', 'x---x---x-----', OURS), drum('snare', '----x---x-xxX-', OURS)],
      dressing: [
        drum('snare', '--1---1-2-1---', OURS),
        drum('closed hat', '1-1-1-1-1-1-1-', OURS),
        drum('kick', '------------1-', OURS),
      ],
      chops: { grid: '--x---x---x-x-', source: AFTER_BEATS },
      organ: {
        left: { grid: '-x-x-x-x-x-x-x', source: AFTER_BEATS },
        right: { grid: '--x---x---x-x-', source: AFTER_BEATS },
      },
    },
  ],
};
