import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, weights } from './rows';
import type { DrumRow, Feel } from './types';

/** Its snare on three is played on the rim here, which is common practice. */
const STEPPER = 'published: Drummer magazine 98, "Reggae part 2: the stepper"';

/** The magazine has the stepper straight or swung, and states no ratio. */
const SWUNG = {
  ratio: 1.8,
  source: 'ours: close to the triplet, so that it is heard as swung at any tempo',
} as const;

/** Four kicks under straight or swung hats. */
const stepper = (onThree: DrumRow): readonly DrumRow[] => [
  drum('kick', 'x---x---x---x---', STEPPER),
  onThree,
  drum('closed hat', 'x-x-x-x-x-x-x-x-', STEPPER),
];
const ON_THE_RIM = drum('rim', '--------x-------', COMMON_PRACTICE);
const ON_THE_SNARE = drum('snare', '--------x-------', STEPPER);

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
      'common practice: the range, about the 125–128 of drummagazine.com lesson "Reggae: the 8th-note subdivision"',
  },
  swing: [{ bpm: bpm(127), ratio: 1 }],
  phraseLength: 4,
  silence: { least: 0.15, source: 'ours: a steady drive with air between the figures' },
  weights: weights(0.9, 0.3, 0.5, OURS),
  figures: figures(COMMON_PRACTICE, 'R R R 5', 'R R R R', 'R R 5 5', 'R R R 3'),
  bassTouch: { muted: true, source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'rim'], held: false, source: OURS },
  layBack: { bass: 8, chops: 5, organ: 3, source: OURS },
  bassRole: { ...PLAIN_ROLE, mayRestOnOne: true, mayHammer: true },
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: stepper(ON_THE_RIM),
      fill: [
        drum('kick', 'x---x---x---x---', OURS),
        drum('rim', '--------x-x-x-xx', OURS),
        drum('closed hat', 'x-x-x-x-x-------', OURS),
      ],
      dressing: [
        drum('rim', '---1--2---1-1-2-', OURS),
        drum('closed hat', '-1-2-1-1-2-1-1-2', OURS),
        drum('snare', '-------1------2-', OURS),
      ],
      variants: {
        hats: [
          [drum('closed hat', 'x-xgx-xgx-xgx-xg', OURS)],
          [drum('closed hat', 'x-x-x-x-x-x-x---', OURS), drum('open hat', '--------------o-', OURS)],
        ],
        strokes: [drum('kick', 'x---x---x---x-s-', OURS), drum('kick', 'x--sx---x---x---', OURS)],
      },
      ways: {
        usual: 'rim on three',
        others: [
          { name: 'snare on three', drums: stepper(ON_THE_SNARE) },
          { name: 'rim on three, swung', drums: stepper(ON_THE_RIM), swing: SWUNG },
          { name: 'snare on three, swung', drums: stepper(ON_THE_SNARE), swing: SWUNG },
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
