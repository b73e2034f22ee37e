import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, weights } from './rows';
import type { Feel } from './types';

const HALF_OF_FOUR = 'half of the 4/4 row: common practice, no source';
const AFTER_BEATS =
  'a kick on each of the beats, two, two and three eighths long, chords on the eighths after them: common practice, no source';

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
  ending: { drums: ['kick', 'snare', 'crash'], held: false, source: OURS },
  layBack: { bass: 0, chops: 0, organ: 0, source: OURS },
  bassRole: PLAIN_ROLE,
  metres: [
    {
      metre: { count: 4, unit: 4 },
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
      variants: {
        hats: [[drum('closed hat', '--x---x---x---x-', OURS)], [drum('ride', '--x---x---x---x-', OURS)]],
        kicks: [drum('kick', 'x---x---x---x-s-', OURS), drum('kick', 'x-s-x---x-s-x---', OURS)],
      },
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
      drums: [
        drum('kick', 'x---x---x---x---', 'drummagazine.com lesson "Ska punk"'),
        drum('snare', '----x-------x---'),
        drum('open hat', '--o---o---o---o-'),
      ],
      fill: [drum('kick', 'x---x---x---x---'), drum('snare', '----x---x-x-xxxx')],
      variants: {
        hats: [[drum('closed hat', '--x---x---x---x-', OURS)], [drum('ride', '--x---x---x---x-', OURS)]],
        kicks: [drum('kick', 'x---x---x---x-s-', OURS), drum('kick', 'x-s-x---x-s-x---', OURS)],
      },
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
      metre: { count: 2, unit: 4 },
      drums: [
        drum('kick', 'x---x---', HALF_OF_FOUR),
        drum('snare', '----x---', HALF_OF_FOUR),
        drum('open hat', '--o---o-', HALF_OF_FOUR),
      ],
      fill: [drum('kick', 'x---x---'), drum('snare', 'x-x-xxxx')],
      dressing: [drum('snare', '--1--12-'), drum('closed hat', '1-1-1-1-'), drum('kick', '------1-')],
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
        drum(
          'snare',
          '----x-------x-',
          'the backbeat, with an eighth cut from the bar: common practice, no source',
        ),
        drum('open hat', '--o---o---o-o-', AFTER_BEATS),
      ],
      fill: [drum('kick', 'x---x---x-----'), drum('snare', '----x---x-xxX-')],
      dressing: [
        drum('snare', '--1---1-2-1---'),
        drum('closed hat', '1-1-1-1-1-1-1-'),
        drum('kick', '------------1-'),
      ],
      chops: { grid: '--x---x---x-x-', source: AFTER_BEATS },
      organ: {
        left: { grid: '-x-x-x-x-x-x-x', source: AFTER_BEATS },
        right: { grid: '--x---x---x-x-', source: AFTER_BEATS },
      },
    },
  ],
};
