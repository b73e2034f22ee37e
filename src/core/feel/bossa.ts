import { bpm } from '../base';
import { bass, COMMON_PRACTICE, drum, figures, pad, weights } from './rows';
import type { Feel } from './types';

/** Root and fifth in dotted pairs; the rim has a pattern of two bars. */
export const BOSSA: Feel = {
  id: 'bossa',
  name: 'Bossa',
  description:
    "Root on one, fifth on three, preferably below, each with a short push before it; listen for the rim's two-bar pattern.",
  tempo: { least: bpm(110), usual: bpm(128), most: bpm(150), count: 'one way', source: COMMON_PRACTICE },
  swing: [{ bpm: bpm(128), ratio: 1 }],
  phraseLength: 4,
  silence: { least: 0, source: 'the pulse goes through: common practice, no source' },
  weights: weights(1, 0.3, 0.2),
  figures: figures(
    'activemusician.com Bossa Nova lesson t13i114',
    'R 5,',
    'R 5',
    'R 5, 5, R',
    'R 5 5 R',
    'R R 5, 5,',
    'R R 5 5',
    'R 5, 5,',
    'R 5 5',
  ),
  bassTouch: { muted: false, source: COMMON_PRACTICE },
  metres: [
    {
      metre: { count: 4, unit: 4 },
      cells: [
        bass('x===x===', 0, 'sa', 1),
        bass('x===x=--', 0, 'sa', 1),
        bass('x===x=x=', 0, 'sat', 1),
        bass('x=--x=--', 0, 'sa', 1),
        bass('x=x=x===', 0, 'at', 1),
        bass('x=x=x=x=', 0, 't'),
        bass('x=--xxx=', 1, 'at', 1),
        bass('x=x=xxx=', 1, 't'),
        bass('x==xx===', 2, 'sa'),
        bass('x==xx==x', 2, 'sat'),
        bass('x==xx=x=', 2, 'sat'),
        bass('x===x==x', 2, 'sat'),
        bass('x==xx=xx', 2, 't'),
        bass('x--xx--x', 3, ''),
        bass('x--xx---', 3, ''),
        bass('x==x-xx=', 3, 't'),
        bass('----x===', 0, ''),
        bass('----x=x=', 0, ''),
        bass('--x=x===', 0, ''),
        bass('--x=x=x=', 0, ''),
        bass('----x==x', 2, ''),
        bass('--x=x==x', 2, ''),
        bass('---xx==x', 3, ''),
        bass('---xx===', 3, ''),
      ],
      drums: [
        drum('kick', 'x-----x-x-----x-'),
        drum('rim', 'x-----x-----x---'),
        drum('closed hat', 'x-x-x-x-x-x-x-x-'),
        drum('foot hat', '----x-------x---'),
      ],
      evenBars: [
        drum('kick', 'x-----x-x-----x-'),
        drum('rim', '----x-----x-----'),
        drum('closed hat', 'x-x-x-x-x-x-x-x-'),
        drum('foot hat', '----x-------x---'),
      ],
      fill: [
        drum('kick', 'x-----x-x-----x-'),
        drum('rim', '----x---x-x-x-x-'),
        drum('closed hat', 'x-x-x-x---------'),
        drum('foot hat', '----x-------x---'),
      ],
      chops: { grid: 'x-----x-----x---', source: COMMON_PRACTICE },
      organ: pad(16),
    },
  ],
};
