import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, pad, weights } from './rows';
import type { Feel } from './types';

const THREE_AND_TWO = 'common practice: a bar of three and a bar of two as one';

/** A note a beat, on to the next chord. */
export const WALKING_SWING: Feel = {
  id: 'walking-swing',
  name: 'Walking swing',
  description:
    'Quarter notes all the way: chord tones on one and three, connecting notes on two and four, and an approach into the next bar.',
  tempo: { least: bpm(120), usual: bpm(144), most: bpm(200), count: 'one way', source: COMMON_PRACTICE },
  swing: [
    { bpm: bpm(120), ratio: 2.5 },
    { bpm: bpm(200), ratio: 1.8 },
    { bpm: bpm(300), ratio: 1 },
  ],
  phraseLength: 4,
  silence: { least: 0, source: 'common practice: the pulse goes through' },
  weights: weights(0.7, 0.9, 0.1, OURS),
  figures: figures(COMMON_PRACTICE, 'R 2 3 5', 'R 3 5 6', 'R 3 5 3', 'R 5 3 2', '8 7 6 5', 'R 2 3', 'R 3 5'),
  bassTouch: { muted: false, source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'ride'], held: true, source: OURS },
  layBack: { bass: 0, chops: 6, organ: 6, source: OURS },
  bassRole: PLAIN_ROLE,
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: [
        drum('ride', 'x---x-x-x---x-x-', COMMON_PRACTICE),
        drum('foot hat', '----x-------x---', COMMON_PRACTICE),
      ],
      fill: [
        drum('ride', 'x---x-x-x-------', OURS),
        drum('snare', '----------x-x-x-', OURS),
        drum('foot hat', '----x-------x---', OURS),
      ],
      dressing: [
        drum('snare', '------2-1---2-3-', OURS),
        drum('kick', '1---1---2---1-2-', OURS),
        drum('closed hat', '--------------1-', OURS),
      ],
      variants: {
        hats: [[drum('ride', 'x---x-x-x---x---', OURS)], [drum('ride', 'x---x---x---x-x-', OURS)]],
        strokes: [drum('kick', 's---s---s---s---', OURS), drum('kick', '----------s-----', OURS)],
      },
      chops: { grid: 'x-----x---------', source: COMMON_PRACTICE },
      organ: pad(16, COMMON_PRACTICE),
    },
    {
      metre: { count: 3, unit: 4 },
      drums: [drum('ride', 'x---x-x-x---', OURS), drum('foot hat', '----x-------', OURS)],
      fill: [
        drum('ride', 'x---x-------', OURS),
        drum('snare', '------x-x-x-', OURS),
        drum('foot hat', '----x-------', OURS),
      ],
      chops: { grid: 'x-----x-----', source: COMMON_PRACTICE },
      organ: pad(12, COMMON_PRACTICE),
    },
    {
      metre: { count: 5, unit: 4 },
      drums: [
        drum('ride', 'x---x-x-x---x---x-x-', THREE_AND_TWO),
        drum('foot hat', '----x-----------x---', THREE_AND_TWO),
      ],
      fill: [
        drum('ride', 'x---x-x-x-----------', OURS),
        drum('snare', '------------x-x-x-x-', OURS),
        drum('foot hat', '----x-----------x---', OURS),
      ],
      dressing: [
        drum('snare', '------2-1-----2---1-', OURS),
        drum('kick', '1-------1---2-----1-', OURS),
        drum('closed hat', '------------------1-', OURS),
      ],
      chops: { grid: 'x-----x-----x-------', source: THREE_AND_TWO },
      organ: pad(20, COMMON_PRACTICE),
    },
  ],
};
