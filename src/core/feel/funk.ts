import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, pad, weights } from './rows';
import type { Feel } from './types';

const SYNCOPATED_KICK =
  'published: drummagazine.com "50 ways to get funky" (winter 2018): the second kick on the and of two or of three, snare on two and four';
const SIXTEENTH_HAT = 'published: learn-to-play-drums.com "The basic drum beats": the hi-hat in sixteenths';

const CUT_SHORT = 'common practice: the 4/4 row with an eighth cut from its end, two and two and three';

/** Everything hangs on the one; short notes and tight holes in sixteenths. */
export const FUNK: Feel = {
  id: 'funk',
  name: 'Funk in sixteenths',
  description:
    'The one is struck hard and short; the rest is a cell of short notes and holes in sixteenths that comes back until it dances.',
  tempo: { least: bpm(84), usual: bpm(98), most: bpm(116), count: 'one way', source: COMMON_PRACTICE },
  swing: [{ bpm: bpm(98), ratio: 1 }],
  phraseLength: 4,
  silence: { least: 0.2, source: 'ours: holes as tight as the notes' },
  weights: weights(0.9, 0.3, 0.6, OURS),
  figures: figures(COMMON_PRACTICE, 'R R 8', 'R R 5', 'R R 7 8', 'R 8 7 5', 'R R 5 7'),
  bassTouch: { muted: true, source: COMMON_PRACTICE },
  crash: { source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'snare', 'crash'], held: false, source: OURS },
  layBack: { bass: 5, chops: 2, organ: 2, source: OURS },
  bassRole: { ...PLAIN_ROLE, seventhsEarly: true, sixteenthsEarly: true },
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: [
        drum('kick', 'x-----x---x-----', SYNCOPATED_KICK),
        drum('snare', '----x-------x---', SYNCOPATED_KICK),
        drum('closed hat', 'XxxxXxxxXxxxXxxx', SIXTEENTH_HAT),
      ],
      fill: [
        drum('kick', 'x-----x---------', OURS),
        drum('snare', '----x--x-xxxxxX-', OURS),
        drum('closed hat', 'XxxxXxxx--------', OURS),
      ],
      dressing: [
        drum('snare', '-1-2-2-3-4-2-2-3', OURS),
        drum('kick', '--1----2---2--2-', OURS),
        drum('open hat', '--------------2-', OURS),
      ],
      variants: {
        hats: [
          [drum('closed hat', 'XxxxXxxxXxxxXx--', OURS), drum('open hat', '--------------o-', OURS)],
          [drum('ride', 'X-x-X-x-X-x-X-x-', OURS)],
        ],
        strokes: [drum('kick', 'x--s--x---x-----', OURS), drum('kick', 'x-----x---x--s--', OURS)],
      },
      chops: {
        grid: '---x--x----x--x-',
        source: 'common practice: short chords off the beat, in sixteenths',
      },
      organ: pad(16, COMMON_PRACTICE),
    },
    {
      metre: { count: 7, unit: 8 },
      drums: [
        drum('kick', 'x-----x-x-----', CUT_SHORT),
        drum('snare', '----x-------x-', CUT_SHORT),
        drum('closed hat', 'XxxxXxxxXxxxxx', CUT_SHORT),
      ],
      fill: [
        drum('kick', 'x-----x-------', OURS),
        drum('snare', '----x---xxxxX-', OURS),
        drum('closed hat', 'XxxxXxxx------', OURS),
      ],
      dressing: [
        drum('snare', '-1-2-2-3-2-2-3', OURS),
        drum('kick', '--1----2--2---', OURS),
        drum('open hat', '-------------2', OURS),
      ],
      chops: { grid: '---x--x----x--', source: CUT_SHORT },
      organ: pad(14, COMMON_PRACTICE),
    },
  ],
};
