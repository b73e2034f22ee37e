import { describe, expect, test } from 'vitest';
import { FEEL_IDS, type FeelId } from '../../src/core/feel/types';
import type { Level } from '../../src/core/line';
import { hearLine } from '../../src/core/line/hearing';
import { countedIn } from '../../src/core/line/phrase/counted';
import { featuresOf } from '../../src/core/line/phrase/features';
import { HABIT_NAMES, habitsOf } from '../../src/core/line/phrase/habits';
import { unusualIn } from '../../src/core/line/phrase/unusual';
import { SPREADS, USUAL } from '../../src/core/line/phrase/usual';
import { modelOf } from '../../src/core/line/read-request';
import { linesRead } from '../jury/read-lines';
import { usualOf, withHabits } from '../jury/usual-habits';
import { line, request } from './notation';

/* What is usual in a feel comes from lines that blind readers liked (tests/jury/pairs.json, written for this project). */

/** How far off a line of eighths is, in half beats: `.` goes on, `-` is a rest. */
function unusual(feel: FeelId, level: Level, chart: string, eighths: string): number {
  const model = modelOf(request(chart, { feel, level }));
  return featuresOf(model, hearLine(model, line(eighths))).unusual;
}

describe('what is usual in a feel', () => {
  test('is what the readings give', () => {
    const { usual, spreads } = usualOf(withHabits(linesRead()));
    expect(Object.fromEntries(usual)).toEqual(USUAL);
    expect(spreads).toEqual(SPREADS);
  });

  test('has every habit of every feel and level, as the share that it is', () => {
    const counts = ['density', 'rhythms'];
    for (const feel of FEEL_IDS)
      for (const row of USUAL[feel]) {
        expect(row).toHaveLength(HABIT_NAMES.length);
        HABIT_NAMES.forEach((name, at) => {
          expect(row[at], `${feel}, ${name}`).toBeGreaterThanOrEqual(0);
          if (!counts.includes(name)) expect(row[at], `${feel}, ${name}`).toBeLessThanOrEqual(1000);
        });
      }
  });

  const vamp = '| Dm7 | G7 | Dm7 | G7 |';

  test('is root, fifth and a lead in a bossa, not a scale', () => {
    const fifths = 'D2 . . A2 A2 . . F♯2 | G2 . . B2 D3 . . E♭3 | D3 . . A2 A2 . . F2 | G2 . . D2 D2 . . C♯2';
    const scale = 'D2 . . E2 F2 . . A2 | G2 . . A2 B2 . . D3 | D2 . . E2 F2 . . A2 | G2 . . F2 E2 . . D2';
    expect(unusual('bossa', 4, vamp, fifths)).toBeLessThan(unusual('bossa', 4, vamp, scale) - 0.1);
  });

  test('is one note a beat in a walk, not a riff with holes', () => {
    const walk = 'D2 . F2 . A2 . A♭2 . | G2 . F2 . D2 . E♭2 . | D2 . F2 . A2 . A♭2 . | G2 . B2 . D3 . C♯3 .';
    const riff = 'D2 D2 - - - - A2 - | G2 G2 - - - - D2 - | D2 D2 - - - - A2 - | G2 G2 - - - - D2 -';
    expect(unusual('walking-swing', 4, vamp, walk)).toBeLessThan(
      unusual('walking-swing', 4, vamp, riff) - 0.4,
    );
  });
});

test('a line that has just the usual habits is 0 off, and one that has none of them two spreads at most', () => {
  const model = modelOf(request('| C |', { feel: 'disco', level: 3 }));
  const heard = hearLine(model, line('C2 - - - - - - -'));
  const habits = habitsOf(countedIn(model, heard), featuresOf(model, heard));
  const row = HABIT_NAMES.map((name) => habits[name] * 1000);
  const levels = Array.from({ length: 6 }, () => row);
  expect(unusualIn('disco', 3, habits, { usual: new Map([['disco', levels]]), spreads: SPREADS })).toBe(0);
  expect(unusualIn('disco', 3, habits)).toBeGreaterThan(0);
  expect(unusualIn('disco', 3, habits)).toBeLessThanOrEqual(2);
});
