import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, pad, weights } from './rows';
import type { Feel } from './types';

const THREE_AND_TWO = 'a bar of three and a bar of two as one: common practice, no source';

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
  silence: { least: 0, source: 'the pulse goes through: common practice, no source' },
  weights: weights(0.7, 0.9, 0.1),
  figures: figures(COMMON_PRACTICE, 'R 2 3 5', 'R 3 5 6', 'R 3 5 3', 'R 5 3 2', '8 7 6 5', 'R 2 3', 'R 3 5'),
  bassTouch: { muted: false, source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'ride'], held: true, source: OURS },
  layBack: { bass: 0, chops: 6, organ: 6, source: OURS },
  bassRole: PLAIN_ROLE,
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: [drum('ride', 'x---x-x-x---x-x-'), drum('foot hat', '----x-------x---')],
      fill: [
        drum('ride', 'x---x-x-x-------'),
        drum('snare', '----------x-x-x-'),
        drum('foot hat', '----x-------x---'),
      ],
      dressing: [
        drum('snare', '------2-1---2-3-'),
        drum('kick', '1---1---2---1-2-'),
        drum('closed hat', '--------------1-'),
      ],
      variants: {
        hats: [[drum('ride', 'x---x-x-x---x---', OURS)], [drum('ride', 'x---x---x---x-x-', OURS)]],
        kicks: [drum('kick', 's---s---s---s---', OURS), drum('kick', '----------s-----', OURS)],
      },
      chops: { grid: 'x-----x---------', source: COMMON_PRACTICE },
      organ: pad(16),
    },
    {
      metre: { count: 3, unit: 4 },
      drums: [drum('ride', 'x---x-x-x---'), drum('foot hat', '----x-------')],
      fill: [drum('ride', 'x---x-------'), drum('snare', '------x-x-x-'), drum('foot hat', '----x-------')],
      chops: { grid: 'x-----x-----', source: COMMON_PRACTICE },
      organ: pad(12),
    },
    {
      metre: { count: 5, unit: 4 },
      drums: [
        drum('ride', 'x---x-x-x---x---x-x-', THREE_AND_TWO),
        drum('foot hat', '----x-----------x---', THREE_AND_TWO),
      ],
      fill: [
        drum('ride', 'x---x-x-x-----------'),
        drum('snare', '------------x-x-x-x-'),
        drum('foot hat', '----x-----------x---'),
      ],
      dressing: [
        drum('snare', '------2-1-----2---1-'),
        drum('kick', '1-------1---2-----1-'),
        drum('closed hat', '------------------1-'),
      ],
      chops: { grid: 'x-----x-----x-------', source: THREE_AND_TWO },
      organ: pad(20),
    },
  ],
};
