import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, weights } from './rows';
import type { Feel } from './types';

const ROCKERS_PATTERN = 'published: artsentertainment.cc Music-Genres 14211';

/** Others have the snare on two and four, or the kick on every eighth. */
const TWO_AND_FOUR = 'published: rhythmnotes.net/reggae-drum-beats';
const EVERY_EIGHTH = 'published: es.knowledger.de/0571690';

/** Counted fast: the kick marks beat one, the snare drops on three. */
export const ROCKERS: Feel = {
  id: 'rockers',
  name: 'Rockers',
  description: 'The kick answers on beat one and the bass drives on; listen for the snare on three.',
  tempo: {
    least: bpm(110),
    usual: bpm(132),
    most: bpm(150),
    count: 'fast',
    source: COMMON_PRACTICE,
  },
  swing: [{ bpm: bpm(132), ratio: 1.1 }],
  phraseLength: 4,
  silence: { least: 0.2, source: 'ours: a little denser than one drop' },
  weights: weights(0.9, 0.3, 0.6, OURS),
  figures: figures(COMMON_PRACTICE, 'R R 5', 'R 5 R', 'R R 3 5', 'R 5 8 5'),
  bassTouch: { muted: true, source: COMMON_PRACTICE },
  crash: { source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'snare', 'crash'], held: false, source: OURS },
  layBack: { bass: 10, chops: 6, organ: 4, source: OURS },
  bassRole: PLAIN_ROLE,
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: [
        drum('kick', 'x-------x-------', ROCKERS_PATTERN),
        drum('snare', '--------x-------', ROCKERS_PATTERN),
        drum('closed hat', 'x-x-X-x-x-x-X-x-', COMMON_PRACTICE),
      ],
      fill: [
        drum('kick', 'x-------x-------', OURS),
        drum('snare', '--------x-x-xxX-', OURS),
        drum('closed hat', 'x-x-X-x---------', OURS),
      ],
      dressing: [
        drum('snare', '---1--2----1-2-1', OURS),
        drum('closed hat', '-1---2-1-1---2-2', OURS),
        drum('kick', '------2---2---2-', OURS),
      ],
      variants: {
        hats: [
          [drum('closed hat', 'x-xgX-xgx-xgX-xg', OURS)],
          [drum('closed hat', 'x-x-X-x-x-x-X---', OURS), drum('open hat', '--------------o-', OURS)],
        ],
        strokes: [drum('kick', 'x-------x-----s-', OURS), drum('kick', 'x-----s-x-------', OURS)],
      },
      ways: {
        usual: 'kick on one, snare on three',
        others: [
          {
            name: 'snare on two and four',
            drums: [
              drum('kick', 'x-------x-------', ROCKERS_PATTERN),
              drum('snare', '----x-------x---', TWO_AND_FOUR),
              drum('closed hat', 'x-x-X-x-x-x-X-x-', COMMON_PRACTICE),
            ],
          },
          {
            name: 'kick on every eighth',
            drums: [
              drum('kick', 'x-x-x-x-x-x-x-x-', EVERY_EIGHTH),
              drum('snare', '--------x-------', ROCKERS_PATTERN),
              drum('closed hat', 'x-x-X-x-x-x-X-x-', COMMON_PRACTICE),
            ],
          },
        ],
      },
      chops: {
        grid: '----x-------x---',
        source: 'published: raggaemusicinfo.blogspot.com 2013/04; thepianoshed.com "the bubble"',
      },
      organ: {
        left: { grid: '--x---x---x---x-', source: 'published: thepianoshed.com "the bubble"' },
        right: { grid: '----x-------x---', source: 'published: thepianoshed.com "the bubble"' },
      },
    },
  ],
};
