import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, pad, weights } from './rows';
import type { Feel } from './types';

const THREE_AND_TWO = 'common practice: the dotted pairs in three beats and in two';

/** Root and fifth in dotted pairs; the rim has a pattern of two bars. */
export const BOSSA: Feel = {
  id: 'bossa',
  name: 'Bossa',
  description:
    "Root on one, fifth on three, preferably below, each with a short push before it from level 1 on; listen for the rim's two-bar pattern.",
  tempo: { least: bpm(110), usual: bpm(128), most: bpm(150), count: 'one way', source: COMMON_PRACTICE },
  swing: [{ bpm: bpm(128), ratio: 1 }],
  phraseLength: 4,
  silence: { least: 0, source: 'common practice: the pulse goes through' },
  weights: weights(1, 0.3, 0.2, OURS),
  figures: figures(
    'published: activemusician.com Bossa Nova lesson t13i114',
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
  ending: { drums: ['kick', 'rim'], held: true, source: OURS },
  layBack: { bass: 5, chops: 3, organ: 3, source: OURS },
  bassRole: { ...PLAIN_ROLE, dotsEarly: true },
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: [
        drum('kick', 'x-----x-x-----x-', COMMON_PRACTICE),
        drum('rim', 'x-----x-----x---', COMMON_PRACTICE),
        drum('closed hat', 'x-x-x-x-x-x-x-x-', COMMON_PRACTICE),
        drum('foot hat', '----x-------x---', COMMON_PRACTICE),
      ],
      evenBars: [
        drum('kick', 'x-----x-x-----x-', COMMON_PRACTICE),
        drum('rim', '----x-----x-----', COMMON_PRACTICE),
        drum('closed hat', 'x-x-x-x-x-x-x-x-', COMMON_PRACTICE),
        drum('foot hat', '----x-------x---', COMMON_PRACTICE),
      ],
      fill: [
        drum('kick', 'x-----x-x-----x-', OURS),
        drum('rim', '----x---x-x-x-x-', OURS),
        drum('closed hat', 'x-x-x-x---------', OURS),
        drum('foot hat', '----x-------x---', OURS),
      ],
      dressing: [
        drum('closed hat', '-2-1-2-2-1-2-1-2', OURS),
        drum('rim', '-2-3-24--3-4-233', OURS),
        drum('open hat', '--------------1-', OURS),
        drum('kick', '---1-------1----', OURS),
      ],
      variants: {
        hats: [[drum('closed hat', 'xsxsxsxsxsxsxsxs', OURS)], [drum('ride', 'x-x-x-x-x-x-x-x-', OURS)]],
        strokes: [drum('kick', 'x-----x-x-------', OURS), drum('kick', 'x-------x-----x-', OURS)],
      },
      chops: { grid: 'x-----x-----x---', source: COMMON_PRACTICE },
      organ: pad(16, COMMON_PRACTICE),
    },
    {
      metre: { count: 5, unit: 4 },
      drums: [
        drum('kick', 'x-----x-x---x-----x-', THREE_AND_TWO),
        drum('rim', 'x-----x-----x---x---', THREE_AND_TWO),
        drum('closed hat', 'x-x-x-x-x-x-x-x-x-x-', THREE_AND_TWO),
        drum('foot hat', '----x-----------x---', THREE_AND_TWO),
      ],
      fill: [
        drum('kick', 'x-----x-x---x-----x-', OURS),
        drum('rim', '----x---x---x-x-x-x-', OURS),
        drum('closed hat', 'x-x-x-x-x-----------', OURS),
        drum('foot hat', '----x-----------x---', OURS),
      ],
      dressing: [
        drum('closed hat', '-2-1-2-2-1-2-1-2-1-2', OURS),
        drum('rim', '-1-2-1---2--2-1-1-2-', OURS),
        drum('kick', '---1-----------1----', OURS),
      ],
      chops: { grid: 'x-----x-----x---x---', source: THREE_AND_TWO },
      organ: pad(20, COMMON_PRACTICE),
    },
  ],
};
