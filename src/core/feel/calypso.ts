import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, pad, weights } from './rows';
import type { Feel } from './types';

const SOCA_GROOVE =
  'published: rhythmhouse.com.sg "Groove of the week #7": snare before two, on the and of two, before four and on the and of four, kick on all four';
const OPEN_HATS =
  'published: mattdeanworld.co.uk 2015/10/9 "Soca and calypso": the hi-hat opens on every and';
const HALF_A_BAR = 'ours: half a bar of the 4/4 row';

/** Dance music of Trinidad: a kick on all four, a snare that runs round it, and a bouncing bass. */
export const CALYPSO: Feel = {
  id: 'calypso',
  name: 'Calypso and soca',
  description:
    'The bass bounces round the chord and pushes on the and of two; listen for the snare that runs ahead of two and four.',
  tempo: { least: bpm(96), usual: bpm(116), most: bpm(144), count: 'one way', source: COMMON_PRACTICE },
  swing: [{ bpm: bpm(116), ratio: 1 }],
  phraseLength: 4,
  silence: { least: 0.08, source: 'ours: a hole on four for the drums' },
  weights: weights(0.9, 0.4, 0.3, OURS),
  figures: figures(COMMON_PRACTICE, 'R 5 R', 'R 3 5', 'R R 5', 'R 5 8', 'R 5, R', 'R 3 5 6'),
  bassTouch: { muted: true, source: COMMON_PRACTICE },
  crash: { source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'rim', 'crash'], held: false, source: OURS },
  layBack: { bass: 3, chops: 2, organ: 2, source: OURS },
  // A line leans on its one; what begins after it is for a teacher to ask for.
  bassRole: { ...PLAIN_ROLE, dotsEarly: true },
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: [
        drum('kick', 'x---x---x---x---', SOCA_GROOVE),
        drum('snare', '---x--x----x--x-', SOCA_GROOVE),
        drum('closed hat', 'x-o-x-o-x-o-x-o-', OPEN_HATS),
      ],
      fill: [
        drum('kick', 'x---x---x---x---', OURS),
        drum('snare', '---x--x---xxxxX-', OURS),
        drum('closed hat', 'x-o-x-o-x-------', OURS),
      ],
      dressing: [drum('snare', '-1--1-1--2-1-1-2', OURS), drum('kick', '------1-------1-', OURS)],
      variants: {
        hats: [[drum('closed hat', 'x-x-x-x-x-x-x-x-', OURS)], [drum('ride', 'x-x-x-x-x-x-x-x-', OURS)]],
        strokes: [drum('kick', 'x---x---x---x-s-', OURS), drum('kick', 'x---x-s-x---x---', OURS)],
      },
      chops: { grid: '--x---x---x---x-', source: COMMON_PRACTICE },
      organ: pad(16, COMMON_PRACTICE),
    },
    {
      metre: { count: 2, unit: 4 },
      drums: [
        drum('kick', 'x---x---', HALF_A_BAR),
        drum('snare', '---x--x-', HALF_A_BAR),
        drum('closed hat', 'x-o-x-o-', HALF_A_BAR),
      ],
      fill: [
        drum('kick', 'x---x---', OURS),
        drum('snare', '---xxxX-', OURS),
        drum('closed hat', 'x-------', OURS),
      ],
      dressing: [drum('snare', '-1--1--2', OURS), drum('kick', '------1-', OURS)],
      chops: { grid: '--x---x-', source: COMMON_PRACTICE },
      organ: pad(8, COMMON_PRACTICE),
    },
  ],
};
