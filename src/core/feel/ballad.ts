import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, pad, weights } from './rows';
import type { Feel } from './types';

const SIX_EIGHT_BEAT =
  'published: learndrumsforfree.com 2015/04 "10 drum beats in a 6/8 time signature": kick on one, snare on the fourth eighth, hi-hat on all six';

const THREE_DOTTED_BEATS =
  'common practice: three slow beats of three eighths, the weight on one, the snare on three';

/** Two slow beats of three; the bass holds the one and leans into the second. */
export const BALLAD: Feel = {
  id: 'ballad',
  name: 'Ballad in six',
  description:
    'Two slow beats of three: the bass holds the first, and its last eighth leans into the next; listen for the snare on four of six.',
  tempo: {
    least: bpm(44),
    usual: bpm(58),
    most: bpm(76),
    count: 'one way',
    source: 'common practice: dotted quarters a minute',
  },
  swing: [{ bpm: bpm(58), ratio: 1 }],
  phraseLength: 4,
  silence: { least: 0, source: 'common practice: the one rings' },
  weights: weights(0.9, 0.5, 0.2, OURS),
  figures: figures(COMMON_PRACTICE, 'R 5', 'R 5 8', 'R 5 3', 'R 3 5', 'R R 5', 'R 5,'),
  bassTouch: { muted: false, source: COMMON_PRACTICE },
  crash: { source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'crash'], held: true, source: OURS },
  layBack: { bass: 12, chops: 8, organ: 8, source: OURS },
  bassRole: PLAIN_ROLE,
  metres: [
    {
      metre: { count: 6, unit: 8 },
      drums: [
        drum('kick', 'x-----', SIX_EIGHT_BEAT),
        drum('snare', '---x--', SIX_EIGHT_BEAT),
        drum('closed hat', 'XxxXxx', SIX_EIGHT_BEAT),
      ],
      evenBars: [
        drum('kick', 'x----x', OURS),
        drum('snare', '---x--', SIX_EIGHT_BEAT),
        drum('closed hat', 'XxxXxx', SIX_EIGHT_BEAT),
      ],
      fill: [drum('kick', 'x-----', OURS), drum('snare', '---xxX', OURS), drum('closed hat', 'Xxx---', OURS)],
      dressing: [
        drum('snare', '-1--12', OURS),
        drum('kick', '--1--1', OURS),
        drum('open hat', '-----1', OURS),
      ],
      variants: {
        hats: [
          [drum('ride', 'XxxXxx', OURS)],
          [drum('closed hat', 'XxxXx-', OURS), drum('open hat', '-----o', OURS)],
        ],
        strokes: [drum('kick', 'x----s', OURS), drum('kick', 'x--s--', OURS)],
      },
      chops: { grid: '-xx-xx', source: 'common practice: the chord after each beat' },
      organ: pad(6, COMMON_PRACTICE),
    },
    {
      metre: { count: 12, unit: 8 },
      drums: [
        drum('kick', 'x-----x-----', 'ours: two bars of 6/8 as one'),
        drum('snare', '---x-----x--', 'ours: two bars of 6/8 as one'),
        drum('closed hat', 'XxxXxxXxxXxx', 'ours: two bars of 6/8 as one'),
      ],
      fill: [
        drum('kick', 'x-----x-----', OURS),
        drum('snare', '---x-----xxX', OURS),
        drum('closed hat', 'XxxXxxXxx---', OURS),
      ],
      variants: {
        hats: [
          [drum('ride', 'XxxXxxXxxXxx', OURS)],
          [drum('closed hat', 'XxxXxxXxxXx-', OURS), drum('open hat', '-----------o', OURS)],
        ],
        strokes: [drum('kick', 'x-----x----s', OURS), drum('kick', 'x----sx-----', OURS)],
      },
      chops: { grid: '-xx-xx-xx-xx', source: 'common practice: the chord after each beat' },
      organ: pad(12, COMMON_PRACTICE),
    },
    {
      metre: { count: 9, unit: 8 },
      drums: [
        drum('kick', 'x--------', THREE_DOTTED_BEATS),
        drum('snare', '------x--', THREE_DOTTED_BEATS),
        drum('rim', '---x-----', THREE_DOTTED_BEATS),
        drum('closed hat', 'XxxXxxXxx', THREE_DOTTED_BEATS),
      ],
      evenBars: [
        drum('kick', 'x-------x', THREE_DOTTED_BEATS),
        drum('snare', '------x--', THREE_DOTTED_BEATS),
        drum('rim', '---x-----', THREE_DOTTED_BEATS),
        drum('closed hat', 'XxxXxxXxx', THREE_DOTTED_BEATS),
      ],
      fill: [
        drum('kick', 'x--------', OURS),
        drum('snare', '---x--xxX', OURS),
        drum('closed hat', 'XxxXxx---', OURS),
      ],
      dressing: [
        drum('snare', '-1--1--12', OURS),
        drum('kick', '--1--1---', OURS),
        drum('open hat', '--------1', OURS),
      ],
      chops: { grid: '-xx-xx-xx', source: 'common practice: the chord after each beat' },
      organ: pad(9, COMMON_PRACTICE),
    },
  ],
};
