import { bpm } from '../base';
import { COMMON_PRACTICE, drum, figures, OURS, PLAIN_ROLE, weights } from './rows';
import type { Feel } from './types';

const EIGHTH_NOTE_LESSON = 'published: drummagazine.com lesson "Reggae: the 8th-note subdivision"';
const CHOPS = 'published: raggaemusicinfo.blogspot.com 2013/04; thepianoshed.com "the bubble"';
const BUBBLE = 'published: thepianoshed.com "the bubble"';
const ACCENTS = 'published: weigu.lu/music/drumppy (accents on 2 and 4)';

/** Counted fast: the drop falls on beat 3. */
export const ONE_DROP: Feel = {
  id: 'one-drop',
  name: 'One drop',
  description:
    'Kick and rim drop together on beat 3; the bass often leaves beat one empty and answers with a short figure.',
  tempo: { least: bpm(120), usual: bpm(138), most: bpm(156), count: 'fast', source: EIGHTH_NOTE_LESSON },
  swing: [{ bpm: bpm(138), ratio: 1.2 }],
  phraseLength: 4,
  silence: {
    least: 0.25,
    source: 'common practice: at least a quarter of the time in reggae styles',
  },
  weights: weights(0.9, 0.3, 0.9, OURS),
  figures: figures(COMMON_PRACTICE, 'R R 5', 'R 3 5', 'R 5 8', 'R R 3 5'),
  bassTouch: { muted: true, source: COMMON_PRACTICE },
  ending: { drums: ['kick', 'rim'], held: false, source: OURS },
  layBack: { bass: 14, chops: 8, organ: 5, source: OURS },
  bassRole: { ...PLAIN_ROLE, mayRestOnOne: true, carriesThree: true },
  metres: [
    {
      metre: { count: 4, unit: 4 },
      drums: [
        drum('kick', '--------x-------', COMMON_PRACTICE),
        drum('rim', '--------x-------', COMMON_PRACTICE),
        drum('closed hat', 'x-x-X-x-x-x-X-x-', ACCENTS),
      ],
      fill: [
        drum('kick', '--------x-------', OURS),
        drum('rim', '--------x---x-x-', OURS),
        drum('closed hat', 'x-x-X-x-x-------', OURS),
        drum('open hat', '--------------o-', OURS),
      ],
      dressing: [
        drum('rim', '----1-1---2---2-', OURS),
        drum('closed hat', '-1-2-1-2-1-2-1-3', OURS),
        drum('open hat', '--------------2-', OURS),
        drum('snare', '-----------2--12', OURS),
      ],
      variants: {
        hats: [
          [drum('closed hat', 'x-xgX-xgx-xgX-xg', OURS)],
          [drum('closed hat', 'x-x-X-x-x-x-X---', OURS), drum('open hat', '--------------o-', OURS)],
        ],
        strokes: [drum('kick', '--------x-----s-', OURS), drum('kick', '------s-x-------', OURS)],
      },
      chops: { grid: '----x-------x---', source: CHOPS },
      organ: {
        left: { grid: '--x---x---x---x-', source: BUBBLE },
        right: { grid: '----x-------x---', source: BUBBLE },
      },
    },
    {
      metre: { count: 3, unit: 4 },
      drums: [
        drum('kick', '----x-------', OURS),
        drum('rim', '----x-------', OURS),
        drum('closed hat', 'x-x-x-x-X-x-', OURS),
      ],
      fill: [
        drum('kick', '----x-------', OURS),
        drum('rim', '----x---x-x-', OURS),
        drum('closed hat', 'x-x-x-------', OURS),
        drum('open hat', '----------o-', OURS),
      ],
      chops: { grid: '----x---x---', source: COMMON_PRACTICE },
      organ: {
        left: { grid: '--x---x---x-', source: 'ours: the 4/4 row carried over' },
        right: { grid: '----x---x---', source: 'ours: the 4/4 row carried over' },
      },
    },
  ],
};
