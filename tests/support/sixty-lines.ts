/** Sixty-four composed lines to be looked at, fingered and listened to: every feel at four levels, over charts of our own. */
import { composePiece } from '../../src/core/composing';
import { FEEL_IDS, type FeelId } from '../../src/core/feel';
import { type Lesson, type LineSheet, linePiece } from '../../src/core/lesson';
import { LEVELS, type Level } from '../../src/core/line';
import { LINE, lineSheetIn, typedLesson } from './typed-lessons';

const CHARTS: readonly string[] = [
  '(key: F)\n| F | Dm | Gm | C7 |\n| F | F7 | Bb Bbm | F C7 |',
  '(key: A minor)\n| Am | Dm | E7 | Am |\n| F | Dm | E7 | Am |',
  '(key: Bb)\n(1) F7 | Bb | Gm | Cm7 | F7 |\n| Bb Bb7 | Eb Ebm | Bb F7 | Bb |',
  '(key: E minor)\n| Em | % | C | D |\n| Em | G D | Am B7 | Em |',
  '(key: G)\n[Verse]\n| G | Em | C | D7 |\n[Chorus]\n| C | G/B | Am7 | D7 |',
  '(key: D)\n|: D | Bm | G | A |\n| D | G A |1. D A :|2. D |',
  '(key: C minor)\n| Cm7 | Fm7 | Bb7 | Ebmaj7 |\n| Abmaj7 | Dm7b5 | G7 | Cm7 |',
  '(key: Ab)\n| Ab | Fm | Db | Eb7 |\n| Ab | Ab7 | Db Dbm | Eb7 |',
  '(key: C)\n| Cmaj7 | A7 | Dm7 | G7 |\n| Em7 | A7 | Dm7 G7 | C6 |',
  '(key: G minor)\n| Gm | F | Eb | D7 |\n| Gm | Cm | Eb D7 | Gm |',
  '(key: E)\n| E | A | E | B7 |\n| A | F#m7 | B7 | E |',
  '(key: Eb)\n| Eb | Cm7 | Ab | Bb7 |\n| Gm7 | Cm7 | Fm7 Bb7 | Eb |',
  '(key: B minor)\n| Bm | A | G | F#7 |\n| Bm | Em | G A | Bm |',
  '(key: A)\n| A | C#m | D | E7 |\n| F#m | D | A/E E7 | N.C. |',
  '(key: D minor)\n| Dm | Bb | C | A7 |\n| Dm | Gm | Bb A7 | Dm |',
  '(key: Db)\n| Db | Bbm7 | Gb | Ab7 |\n| Db | F7 | Bbm Gbm | Db |',
];

/** One of the lines. */
export interface ListedLine {
  /** `03 rocksteady, level 2`. */
  readonly name: string;
  readonly feel: FeelId;
  readonly level: Level;
  readonly lesson: Lesson;
  readonly sheet: LineSheet;
}

/** Composes the lines, four a feel, feel by feel. */
export const sixtyLines = (feels: readonly FeelId[] = FEEL_IDS): readonly ListedLine[] =>
  feels.flatMap((feel) => {
    const index = FEEL_IDS.indexOf(feel);
    return [0, 1, 2, 3].map((turn): ListedLine => {
      const number = index * 4 + turn;
      const level = LEVELS[number % LEVELS.length] ?? 0;
      const chart = CHARTS[(index + turn * 5) % CHARTS.length] ?? '';
      const { lesson } = composePiece(typedLesson(`listed-${number}`, { chart, feel, level }), LINE);
      const name = `${String(number + 1).padStart(2, '0')} ${feel}, level ${level}`;
      return { name, feel, level, lesson, sheet: lineSheetIn(lesson, linePiece(lesson, LINE)) };
    });
  });
