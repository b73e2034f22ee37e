import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, weights } from './rows';
import type { Feel } from './types';

/** Counted fast: four kicks a bar under one-drop lines. */
export const STEPPERS: Feel = {
  id: 'steppers',
  name: 'Steppers',
  description:
    'Four kicks a bar push the bass on; the line is that of one drop with more drive, and one note may be hammered.',
  tempo: {
    least: bpm(120),
    usual: bpm(127),
    most: bpm(145),
    count: 'fast',
    source:
      'drummagazine.com lesson "Reggae: the 8th-note subdivision" (125–128); range: common practice, no source',
  },
  swing: [{ bpm: bpm(127), ratio: 1 }],
  phraseLength: 4,
  silence: { least: 0.15, source: 'a steady drive with air between the figures: common practice, no source' },
  weights: weights(0.9, 0.3, 0.5),
  figures: figures(COMMON_PRACTICE, 'R R R 5', 'R R R R', 'R R 5 5', 'R R R 3'),
  bassTouch: { muted: true, source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'rim'], held: false, source: OURS },
  layBack: { bass: 8, chops: 5, organ: 3, source: OURS },
  bassRole: { ...PLAIN_ROLE, mayRestOnOne: true, mayHammer: true },
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: [
        drum('kick', 'x---x---x---x---'),
        drum('rim', '--------x-------'),
        drum('closed hat', 'x-x-x-x-x-x-x-x-'),
      ],
      fill: [
        drum('kick', 'x---x---x---x---'),
        drum('rim', '--------x-x-x-xx'),
        drum('closed hat', 'x-x-x-x-x-------'),
      ],
      dressing: [
        drum('rim', '---1--2---1-1-2-'),
        drum('closed hat', '-1-2-1-1-2-1-1-2'),
        drum('snare', '-------1------2-'),
      ],
      variants: {
        hats: [
          [drum('closed hat', 'x-xgx-xgx-xgx-xg', OURS)],
          [drum('closed hat', 'x-x-x-x-x-x-x---', OURS), drum('open hat', '--------------o-', OURS)],
        ],
        kicks: [drum('kick', 'x---x---x---x-s-', OURS), drum('kick', 'x--sx---x---x---', OURS)],
      },
      chops: {
        grid: '----x-------x---',
        source: 'raggaemusicinfo.blogspot.com 2013/04; thepianoshed.com "the bubble"',
      },
      organ: {
        left: { grid: '--x---x---x---x-', source: 'thepianoshed.com "the bubble"' },
        right: { grid: '----x-------x---', source: 'thepianoshed.com "the bubble"' },
      },
    },
  ],
};
