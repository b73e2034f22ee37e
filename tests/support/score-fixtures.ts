/** Lines that between them hold every sign of the score, at its most crowded; read by eye and by the geometry test. */
import type { Sheet } from '../../src/core/lesson';
import { blankSheet, sheetOf } from './score-sheets';

const times = (text: string, count: number): string => Array(count).fill(text).join(' | ');

const SIX_EIGHT = { count: 6, unit: 8 } as const;
const TWELVE_EIGHT = { count: 12, unit: 8 } as const;
const THREE_FOUR = { count: 3, unit: 4 } as const;
const TWO_TWO = { count: 2, unit: 2 } as const;

export const SCORE_FIXTURES: Readonly<Record<string, () => Sheet>> = {
  'f-major': () =>
    sheetOf({
      key: 'F',
      chart: '| F | Dm | Gm | C7 |\n| F | F7 | Bb C | F |',
      notes:
        'F1/1 A1/1 C2/.5 C2/.5 A1/1 | r/1 D2/.5 D2/.5 A1/1 F1/1 | G1/1 B♭1/1 D2/.5 D2/.5 B♭1/1 | r/1 C2/.5 C2/.5 G1/1 E1/1 | F1/1 A1/1 C2/.5 C2/.5 A1/1 | r/1 F1/.5 F1/.5 C2/1 A1/1 | B♭1/1 D2/1 C2/1 E2/1 | F2/1 C2/1 A1/1 F1/1',
    }),
  'sections-repeats': () =>
    sheetOf({
      key: 'Dm',
      chart:
        'Verse:\n|: Dm | Gm7 | A7 | Dm :| x3\nChorus:\n|: B♭maj7 | C | F | A7/C♯ :|\nEnd:\n| Dm | N.C. |',
      notes:
        'D1/.5 r/.5 F1/1 A1/1.5 A1/.5 | G1/2 r/.5 B♭1/.5 D2/1 | A1/.5 C♯2/.5 E2/.5 G2/.5 A2/1 E2/1 | D2/4~ | D2/1 F2/1 r/2 | C2/.25 C2/.25 C2/.25 C2/.25 E2/.5 G2/.5 r/2 | F1/.75 F1/.25 r/.5 A1/.5 C2/1 r/1 | C♯2/1 C2/1 C♯2/1 E2/1~ | E2/1 D2/3 |',
    }),
  'busy-16': () =>
    sheetOf({
      key: 'E',
      chart: '| E | A | B7 | E |',
      notes: times('E1/.25 E1/.25 G♯1/.5 B1/.25 B1/.5 C♯2/.25 E2/.5 D2/.25 C♯2/.25 B1/.5 G♯1/.5', 4),
    }),
  triplets: () =>
    sheetOf({
      key: 'B♭',
      feel: 'early-ska',
      tempo: 120,
      chart: '| B♭ | E♭ | F7 | B♭ |',
      notes:
        'B♭1/1/3 D2/1/3 F2/1/3 B♭1/1 r/1/3 D2/1/3 F2/1/3 F1/1 | E♭2/2/3 G2/2/3 B♭2/2/3 G2/2/3 E♭2/1/3 r/1 | F1/2/3 A1/1/3 C2/2/3 E♭2/1/3 F1/2 | B♭1/4',
    }),
  ledger: () =>
    sheetOf({
      key: 'C',
      chart: '| C | Am | F | G |',
      notes:
        'E1/1 G2/1 C3/1 E3/1 | E1/.5 F1/.5 G1/.5 E1/.5 C3/.5 D3/.5 E3/.5 F3/.5 | G3/2 E1/2 | E1/.5 G3/.5 E1/.5 G3/.5 r/2',
    }),
  'seven-flats': () =>
    sheetOf({
      key: 'C♭',
      chart: '| C♭ | D♭m7 | E♭m7♭5 A♭7(♭9) | G♭7sus4 G♭7 |',
      notes:
        'C♭2/1 E♭2/1 G♭2/.5 A♭2/.5 E♭2/1 | D♭2/1 F♭2/1 A♭1/1 A1/1 | E♭1/1 B♭♭1/1 A♭1/1 C2/1 | G♭1/1 C♭2/1 D♭2/1 B♭1/1',
    }),
  'seven-sharps': () =>
    sheetOf({
      key: 'C♯',
      chart: '| C♯ | F♯ | G♯7 | C♯ |',
      notes: 'C♯2/1 E♯2/1 G♯2/.5 G♯2/.5 E♯2/1 | F♯1/1 A♯1/1 C♯2/1 F♯♯1/1 | G♯1/2 F♯1/2 | C♯2/4',
    }),
  'six-eight': () =>
    sheetOf({
      key: 'G',
      metre: SIX_EIGHT,
      chart: '| G | Em | C | D7 |',
      notes:
        'G1/.5 B1/.5 D2/.5 G1/1 D2/.5 | E1/1.5 B1/1.5 | r/1 C2/.5 E2/1.5 | D2/.75 C2/.25 A1/.5 F♯1/.5 r/1',
    }),
  'twelve-eight': () =>
    sheetOf({
      key: 'A',
      metre: TWELVE_EIGHT,
      chart: '| A7 | D7 | A7 | E7 |',
      notes: times('A1/1 A1/.5 C♯2/1 C♯2/.5 E2/1 E2/.5 F♯2/.5 E2/.5 C♯2/.5', 4),
    }),
  'three-four': () =>
    sheetOf({
      key: 'Am',
      metre: THREE_FOUR,
      chart: '| Am | Dm E7 | Am | (4/4) E7 |',
      notes: 'A1/1 C2/1 E2/1 | D2/2 E2/1 | r/1 A1/2~ | A1/1 E1/1 G♯1/.5 B1/.5 E2/1',
    }),
  'two-two': () =>
    sheetOf({
      key: 'D',
      metre: TWO_TWO,
      chart: '| D | A7 | Bm G | A |',
      notes: 'D2/2 A1/2 | A1/1 C♯2/3 | B1/2 G1/1 F♯1/.5 G1/.5 | A1/4',
    }),
  'long-chords': () =>
    sheetOf({
      key: 'F',
      chart: '| Fmaj7 Em7♭5 A7♭9 Dm(maj7) | B♭maj7/D C7sus4 | F♯dim7 Gm7 C7♯5 F6/9 | F |',
      notes: times('F1/1 E1/1 A1/1 D2/1', 4),
    }),
  'five-strings': () =>
    sheetOf({
      key: 'Em',
      tuning: 'five-strings',
      chart: '| Em | D | C | B7 |',
      notes: 'E1/1 D1/1 C1/.5 B0/.5 E1/1 | D1/1.5 F♯1/.5 A1/2 | C1/4 | B0/1 D♯1/1 F♯1/1 B1/1',
    }),
  'six-strings': () =>
    sheetOf({
      key: 'Em',
      tuning: 'six-strings',
      chart: '| Em | D | C | B7 |',
      notes: "E1/1' D1/1> C1/.5x B0/.5x E1/1 | D1/1.5 F♯1/.5 A1/2 | C1/4 | B0/1 D♯1/1 F♯3/1' B3/1>",
    }),
  ties: () =>
    sheetOf({
      key: 'C',
      chart: '| C | C | F | G |\n| C | C | F | G |',
      notes:
        'C2/1.5 E2/2.5 | r/.5 G1/1 A1/1.5 G1/1~ | G1/1.5 F1/1 r/.5 A1/1~ | A1/.5 G1/3 B1/.5~ | B1/.5 C2/3.5 | r/1.5 E1/.5 G1/2 | F1/.25 A1/.75 C2/.25 F1/.5 A1/.25 C2/.75 D2/.25 C2/1 | G1/3.5 r/.5',
    }),
  'thirteen-bars': () =>
    sheetOf({
      key: 'F',
      chart: 'Intro:\n| F | C |\nVerse:\n| F | Bb | C | F | Dm | Gm | C |\nCoda:\n| F | C | F | F |',
      notes: times('F1/1 A1/.5 A1/.5 r/1 C2/1', 13),
    }),
  endings: () =>
    sheetOf({
      key: 'C',
      chart: 'Verse:\n|: C | G |1. Am | F :|2. F | C |',
      notes: 'C2/1 E2/1 G2/1 E2/1 | G1/1 B1/1 D2/1 G1/1 | A1/2 E2/2 | F1/2 r/2 | F1/1 A1/1 G1/1 B1/1 | C2/4',
    }),
  'keys-pickup': () =>
    sheetOf({
      key: 'D',
      chart: '(1) | A7 | D | A7 | (key: F) F | C7 | (key: C) C | (3/4) G7 | (key: E♭) E♭ | B♭7 |',
      notes:
        'C♯2/.5 A1/.5 | D2/1 A1/1 F♯1/1 A1/1 | A1/4 | F1/1 A1/1 C2/1 A1/1 | C2/2 B♭1/2 | C2/2 E2/2 | G1/1 B1/1 F2/1 | E♭1/1 G1/1 B♭1/1 | B♭1/3',
    }),
  'keys-mid': () =>
    sheetOf({
      key: 'D',
      chart: '| D | (key: F) F | (key: C) C | (3/4) G7 |',
      notes: 'D2/1 A1/1 F♯1/1 A1/1 | F1/1 A1/1 C2/1 A1/1 | C2/2 B2/2 | G1/1 B1/1 F2/1',
    }),
  'playing-signs': () =>
    sheetOf({
      key: 'Em',
      chart: '| Em | G | C | D |\n| Em | G | C | B7 |',
      notes:
        "E1/.5{hammer} G1/.5{hammer} E1/.5 A1/.5{slide} B1/1 D2/1{slide_down} | G1/1>{slide_from_below} B1/1' D2/.5{tenuto} G2/.5{slide_from_above} B1/1{slide} | C2/.5{palm_mute} C2/.5{palm_mute} E2/.5{palm_mute} C2/.5{palm_mute} G1/1{let_ring} C2/1{let_ring} | D2/.5{slap} D2/.5x{slap} D2/.5x C♯2/.5{pop} D2/1{i} A1/1{m,slur} | G1/1{slur} E1/1 r/1 E1/1{fermata} | G1/.5{slap,hammer} A1/.5{hammer} B1/.5{slap} G1/.5>{pop,tenuto} F♯1/2~ | F♯1/1{slide} C2/1{slide} C♯2/1{slide} D♯2/1{hammer} | B1/3>'{fermata} r/.5 B1/.5{slide}",
      over: {
        0: { words: 'round and dark', dynamics: [{ at: 0, level: 'p', hairpin: 'crescendo' }] },
        1: {
          dynamics: [
            { at: 0, level: 'mf' },
            { at: 2, hairpin: 'crescendo' },
          ],
        },
        2: { dynamics: [{ at: 0 }, { at: 2, level: 'f', hairpin: 'diminuendo' }] },
        4: {
          words: 'let the last note of every second bar die away slowly, as if somebody closed a door',
          dynamics: [
            { at: 0, level: 'ppp' },
            { at: 1, level: 'ff', hairpin: 'diminuendo' },
            { at: 4, level: 'mp' },
          ],
        },
        7: {
          words: 'slower',
          dynamics: [{ at: 1, hairpin: 'crescendo' }, { at: 3 }, { at: 3.5, level: 'fff' }],
        },
      },
    }),
  blank: () => blankSheet(8),
  rests: () =>
    sheetOf({
      key: 'C',
      chart: '| C | F | G | C |',
      notes: ' | r/2 F1/2 | r/.5 G1/.5 r/1 r/.25 G1/.25 r/.5 r/1 | r/3.5 C2/.5',
    }),
  'sixty-four': () =>
    sheetOf({
      key: 'F',
      chart: Array(16).fill('| F | Dm | Gm | C7 |').join('\n'),
      notes: times(
        'F1/1 A1/1 C2/.5 C2/.5 A1/1 | r/1 D2/.5 D2/.5 A1/1 F1/1 | G1/1 B♭1/1 D2/.5 D2/.5 B♭1/1 | r/1 C2/.5 C2/.5 G1/1 E1/1',
        16,
      ),
    }),
  'low-ledger': () =>
    sheetOf({
      key: 'C',
      tuning: 'five-strings',
      chart: '| C | G7 | C | G |',
      notes:
        'B0/.5 C1/.5 D1/.5 E1/.5 B0/1 C1/1 | D1/.25 C1/.25 B0/.25 C1/.25 D1/.5 E1/.5 G1/2 | B0/4 | C♯1/1 D♯1/1 B0/2',
    }),
  'high-ledger': () =>
    sheetOf({
      key: 'E♭',
      chart: '| E♭maj7 | A♭ | B♭7 | E♭ |',
      notes:
        'E♭3/.5 D3/.5 C3/.5 B♭2/.5 E♭3/2 | E3/1 F3/1 G3/.75 F3/.25 G3/.5 F3/.5 | G3/.25 F3/.25 E♭3/.25 D3/.25 C3/1 r/1 B♭2/1/3 C3/1/3 D3/1/3 | E♭3/4',
    }),
  'six-flats-minor': () =>
    sheetOf({
      key: 'E♭m',
      chart: '| E♭m | A♭m7 | B♭7 | E♭m |',
      notes: 'E♭2/1 G♭2/1 B♭1/1 C♭2/1 | A♭1/1 C♭2/1 E♭2/1 D2/1 | B♭1/1 D2/1 F2/1 A♭2/1 | E♭2/2 r/2',
    }),
  'six-sharps': () =>
    sheetOf({
      key: 'F♯',
      chart: '| F♯ | B | C♯7 | F♯ |',
      notes:
        'F♯1/.5 A♯1/.5 C♯2/.5 E♯2/.5 F♯2/1 C♯2/1 | B1/1 D♯2/1 F♯2/1 D2/.5 D♯2/.5 | C♯2/1 B1/1 A♯1/1 G♯♯1/1 | F♯1/4',
    }),
  dotted: () =>
    sheetOf({
      key: 'G',
      chart: '| G | C | D7 | G |',
      notes:
        'G1/1.5 B1/.5 D2/1.5 B1/.5 | C2/.75 C2/.25 E2/.75 E2/.25 G2/1.5 E2/.5 | D2/3 A1/1 | G1/.5 B1/1.5 D2/.5 G1/1.5',
    }),
  'off-beats': () =>
    sheetOf({
      key: 'Am',
      chart: '| Am | Dm | E7 | Am |',
      notes:
        'r/.5 A1/.5 r/.5 C2/.5 r/.5 E2/.5 r/.5 A1/.5 | r/.25 D2/.25 r/.25 D2/.25 r/.5 F2/.5 r/1 D2/.5 r/.5 | r/.75 E1/.25 r/.5 G♯1/1 B1/.5 r/.25 E2/.75 | A1/.5 r/3.5',
    }),
  'sixteenth-triplets': () =>
    sheetOf({
      key: 'C',
      chart: '| C | F | G7 | C |',
      notes:
        'C2/1/6 D2/1/6 E2/1/6 F2/1/6 E2/1/6 D2/1/6 C2/1 r/1/3 G1/2/3 G1/1 | F1/4/3 A1/4/3 C2/4/3 | G1/1/3 r/1/3 G1/1/3 B1/1/3 D2/1/3 r/1/3 F2/1 G1/1 | C2/2/3 C2/1/3 C2/3',
    }),
  'split-bars-long': () =>
    sheetOf({
      key: 'D♭',
      chart: '| D♭maj7/F B♭m7♭5 | E♭m9 A♭13(♭9) | D♭maj7 G♭maj7♯11 | D♭6/9 A♭7sus4/E♭ |',
      notes: times('D♭2/1 F2/1 A♭1/1 B♭1/1', 4),
    }),
  'unknown-chord': () =>
    sheetOf({ key: 'C', chart: '| C | Xyz | N.C. | C |', notes: 'C2/4 | | r/2 C2/2 | C2/4' }),
  'long-section-name': () =>
    sheetOf({
      key: 'C',
      chart:
        'A rather long name for the second verse with the slow ending:\n| C | F | G | C |\nB:\n| F | F | C | C |',
      notes: times('C2/1 E2/1 G2/1 C3/1', 8),
    }),
  'repeat-each-bar': () =>
    sheetOf({
      key: 'C',
      chart: '|: C :|: F :| x4 |: G :|: C :| x8',
      notes: 'C2/1 E2/1 G2/1 r/1 | F1/.5 A1/.5 C2/1 F2/2 | G1/.5 B1/.5 D2/.5 F2/.5 G2/2 | C2/4',
    }),
  'three-four-ties': () =>
    sheetOf({
      key: 'B♭',
      metre: THREE_FOUR,
      chart: '| B♭ | Gm | E♭ | F7 |',
      notes: 'B♭1/1.5 D2/1.5~ | D2/1 G1/1.5 B♭1/.5~ | B♭1/3~ | B♭1/.5 A1/2.5',
    }),
  'six-eight-sixteenths': () =>
    sheetOf({
      key: 'Dm',
      metre: SIX_EIGHT,
      chart: '| Dm | A7 | B♭ C | Dm |',
      notes:
        'D2/.25 E2/.25 F2/.25 G2/.25 A1/.5 D2/.5 r/.5 D2/.5 | A1/.75 C♯2/.25 E2/.5 A1/1 r/.5 | B♭1/.5 D2/1 C2/.5 E2/1 | D2/3',
    }),
  'drop-d': () =>
    sheetOf({
      key: 'D',
      tuning: 'drop-d',
      chart: '| D | G | A | D |',
      notes: "D1/.5 D2/.5 D1/.5 D2/.5 D1/1' A1/1> | G1/1 B1/1 D2/1 G1/1 | A1/.5x A1/.5x A1/1 C♯2/2 | D1/4",
    }),
  'signatures-at-break': () =>
    sheetOf({
      key: 'D',
      chart: '| D | Bm | G | A7 |\n| (key: B♭) (3/4) B♭ | Gm | E♭ | F7 |\n| (key: C) (4/4) C | F | G7 | C |',
      notes:
        'D2/1 A1/1 F♯1/1 A1/1 | B1/1 D2/1 F♯2/1 D2/1 | G1/1 B1/1 D2/1 B1/1 | A1/1 C♯2/1 E2/1 A1/1 | B♭1/1 D2/1 F2/1 | G1/1 B♭1/1 D2/1 | E♭2/1 G2/1 B♭1/1 | F1/1 A1/1 C2/1 | C2/1 E2/1 G2/1 E2/1 | F1/4 | G1/2 B1/2 | C2/4',
    }),
  'repeat-into-new-key': () =>
    sheetOf({
      key: 'E♭',
      chart: '|: E♭ | A♭ | B♭7 | E♭ :|\n|: (key: A) A | D | E7 | A :|',
      notes: `${times('E♭2/1 G2/1 B♭1/1 E♭2/1', 4)} | ${times('A1/1 C♯2/1 E2/1 A1/1', 4)}`,
    }),
  'three-endings': () =>
    sheetOf({
      key: 'C',
      chart: 'Tune:\n|: C | F |1. G | G :|2. Am | G :|3. F | C |',
      notes:
        'C2/1 E2/1 G2/1 E2/1 | F1/1 A1/1 C2/1 A1/1 | G1/2 B1/2 | G1/2 D2/2~ | A1/2 E2/2 | G1/4 | F1/2 A1/2 | C2/4',
    }),
  'way-through': () =>
    sheetOf({
      key: 'G',
      chart:
        'Tune:\n| G | (segno) C | G/B (to coda) | D7 |\n|: Em | Am :| D7 | G (D.S. al coda) |\n| (coda) C | G |',
      notes: `${times('G1/1 B1/1 D2/1 G2/1', 2)} | C2/1 E2/1 G2/2 | D2/4 | E2/4 | A1/4 | D2/4 | G1/4 | C2/4 | G1/4`,
    }),
  'ties-over-the-break': () =>
    sheetOf({
      key: 'F',
      chart: '| F | Dm | Gm | C7 |\n| F | Dm | Gm | C7 |',
      notes:
        'F1/3 A1/1~ | A1/1 D2/3~ | D2/1 G1/2 C2/1~ | C2/1 G1/2.5 F2/.5~ | F2/1.5 C2/2.5~ | C2/4~ | C2/.5 G1/1 C2/2.5~ | C2/2 r/2',
    }),
  shifts: () =>
    sheetOf({
      key: 'F',
      chart: '| F | Dm | B♭m7 E♭7 | C7 |\n| F7 | Dm | Gm | C7 |',
      notes:
        'F1/.5 A1/.5 C2/1 F2/.5 A2/.5 C3/1 | D3/.5 F3/.5 D1/1 A2/1 F1/1 | B♭1/1 F2/1 E♭3/1 B♭2/1 | E3/.5 C3/.5 G2/.5 E2/.5 C2/.5 G1/.5 E1/1 | F1/1 F3/1 F1/1 F3/1 | D2/1 A2/1 D3/1 F3/1 | G3/.25 F3/.25 D3/.25 B♭2/.25 G2/.5 D2/.5 G1/2 | C2/1 E2/1 C3/1 E3/1',
    }),
  'swing-mix': () =>
    sheetOf({
      key: 'B♭',
      feel: 'shuffle-blues',
      chart: '| B♭7 | E♭7 E°7 | B♭7/F G7 | Cm7 F7 |',
      notes:
        'B♭1/2/3 D2/1/3 F2/2/3 G2/1/3 A♭2/1 G2/.5 F2/.5 | E♭2/1/3 E♭2/1/3 E♭2/1/3 r/1 E2/1/3 r/1/3 E2/1/3 G2/1 | F2/1.5 D2/.5 D2/1 r/1 | C2/1 E♭2/1/3 G2/1/3 E♭2/1/3 F1/.25 A1/.25 C2/.25 E♭2/.25 F2/1',
    }),
  'four-chords-a-bar': () =>
    sheetOf({
      key: 'G',
      chart: '| G Em Am D7 | G7 C C♯dim7 G/D | Em7 A7 Dsus4 D | G N.C. |',
      notes:
        'G1/.25 B1/.25 D2/.25 G2/.25 E1/.25 G1/.25 B1/.25 E2/.25 A1/.25 C2/.25 E2/.25 A1/.25 D2/.25 F♯2/.25 A2/.25 C2/.25 | G1/.5 B1/.5 C2/.5 E2/.5 C♯2/.5 E2/.5 D2/.5 B1/.5 | E1/.75 G1/.25 A1/.75 C♯2/.25 D2/.75 G2/.25 F♯2/.5 D2/.5 | G1/1 r/3',
    }),
  syncopated: () =>
    sheetOf({
      key: 'Cm',
      chart: '| Cm | Fm | G7 | Cm |',
      notes:
        'C2/.75 E♭2/.75 G2/.5 r/.25 C2/.5 E♭2/.25 G1/1 | F1/.5 A♭1/1 C2/1 F1/1 C2/.5 | G1/.25 G1/.5 G1/.25 r/.25 B1/.5 D2/.25 r/.5 F2/1 r/.5 | C2/3.5 G1/.5',
    }),
  chromatic: () =>
    sheetOf({
      key: 'E',
      chart: '| E | A | F♯7 | B7 |',
      notes:
        'E1/.5 F1/.5 F♯1/.5 G1/.5 G♯1/.5 A1/.5 A♯1/.5 B1/.5 | C2/.5 C♯2/.5 D2/.5 D♯2/.5 E2/.5 D♯2/.5 D2/.5 C♯2/.5 | C2/.25 C♯2/.25 C2/.25 C♯2/.25 A♯1/.5 A1/.5 G♯1/1 G1/1 | F♯1/1 F1/1 F♯1/.5 E♯1/.5 F♯1/1',
    }),
  'signs-before-sixteenths': () =>
    sheetOf({
      key: 'Gm',
      feel: 'funk',
      chart: '| Gm7 | C7 | E♭maj7 | D7 |\n| Gm7 | C7 | A♭ | D7 |',
      notes:
        'G1/.25 G1/.25 r/1 F1/.5 r/1 F♯1/.25 A1/.25 B♭1/.5 | C2/.5 r/1 C2/.5 r/1 G2/.25 E2/.25 D2/.5 | E♭2/.25 E♭2/.25 r/1 D2/.5 r/.5 E♭2/1 C2/.25 B1/.25 | D2/.25 D2/.25 r/1 C2/.5 r/1 D2/.5 A1/.25 F♯1/.25 | G1/.5 r/1 F1/.5 r/.5 F2/.5 G2/.25 F♯2/.25 D2/.5 | C2/.5 r/1 C2/.5 r/1 B♭1/.25 G1/.25 E1/.5 | A♭1/.25 A1/.25 r/1 C2/.5 r/1 C2/.25 C♯2/.25 A♭1/.5 | D2/.5 r/1 D2/.5 r/1 F♯2/.5 E2/.25 F♯2/.25',
    }),
  'low-sixteenths': () =>
    sheetOf({
      key: 'E',
      feel: 'funk',
      chart: '| E | A | B7 | E |\n| A | Am | E | B7 |',
      notes:
        'E1/.25 E1/.25 r/1 E1/.5x r/1 G♯1/.25 A1/.25 B1/.5 | A1/.25 A1/.25 r/1 E2/.5 r/1 D♯2/.25 C♯2/.25 A1/.5 | B1/.25 B1/.25 r/1 D♯2/.5 r/1 D♯2/.25 C♯2/.25 F♯1/.5 | E1/.25 E1/.25x r/1 G♯1/.5 r/2 | A1/.25 A1/.25 r/1 C♯2/.5 r/1 E2/.25 F♯2/.25 E2/.5 | A1/.25 A1/.25 r/1 E2/.5 r/1 D2/.25 C2/.25 D2/.5 | E1/.25 E1/.25 r/1 G♯2/.5 r/1 G♯2/.25 F♯2/.25 E2/.5 | B1/.25 B1/.25 r/1 F♯2/.5 r/1 D♯2/.5 B1/.25 F♯1/.25',
    }),
};
