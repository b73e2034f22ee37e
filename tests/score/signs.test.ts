import { describe, expect, test } from 'vitest';
import { engrave } from '../../src/score/engrave';
import { chartFacts } from '../../src/score/notation/facts';
import type { Ink, InkBox, InkRole, ScoreOptions, SystemLayout } from '../../src/score/types';
import { SCORE_FIXTURES } from '../support/score-fixtures';
import { sheetOf } from '../support/score-sheets';

const OPTIONS: ScoreOptions = {
  width: 900,
  degrees: true,
  fingers: false,
  counting: false,
  barsPerSystem: 4,
  measureNumbers: true,
};

function systemsOf(name: string, options: Partial<ScoreOptions> = {}): readonly SystemLayout[] {
  const make = SCORE_FIXTURES[name];
  if (!make) throw new Error(`There is no fixture ${name}.`);
  return engrave(make(), { ...OPTIONS, ...options }).systems;
}

const inkOf = (system: SystemLayout | undefined, ...roles: readonly InkRole[]): readonly Ink[] =>
  system?.ink.filter(({ role }) => roles.includes(role)) ?? [];

/** Right edge of the last bar, in the ink's units. */
function lastBarLine(system: SystemLayout | undefined): number {
  const bar = system?.bars.at(-1);
  return bar && system ? (bar.x + bar.width) / system.scale : Number.NaN;
}

const leftOf = ({ box }: { readonly box: InkBox }): number => box.left;

// E. Gould, Behind Bars (2011), from memory, no page: a change of key or metre at a new system is announced at
// the end of the one before.
describe('what changes with the next system', () => {
  test('is announced after the last bar line, key before metre', () => {
    const [first, second, third] = systemsOf('signatures-at-break');
    const announced = (system: SystemLayout | undefined, role: InkRole) =>
      inkOf(system, role).filter((ink) => leftOf(ink) > lastBarLine(system));
    expect(announced(first, 'key-signature').length).toBe(2);
    expect(announced(first, 'time-signature').length).toBe(2);
    expect(announced(second, 'key-signature').length).toBe(2);
    expect(announced(third, 'key-signature')).toEqual([]);
    const [key, time] = (['key-signature', 'time-signature'] as const).map((role) =>
      Math.min(...announced(first, role).map(leftOf)),
    );
    expect(key).toBeLessThan(time ?? 0);
  });

  test('is cancelled there too: naturals do not come again where the system without a signature begins', () => {
    const line = '| E | A | B7 | E |\n(key: C) | C | F | G7 | C |';
    const [, second] = engrave(
      sheetOf({ chart: line, key: 'E', notes: Array(8).fill('r/4').join(' | ') }),
      OPTIONS,
    ).systems;
    expect(inkOf(second, 'key-signature')).toEqual([]);
  });

  test('stands on the staff, whose lines go on to it and to the system’s edge', () => {
    const [first] = systemsOf('signatures-at-break');
    const ends = inkOf(first, 'staff-line', 'tab-line').map(({ box }) => box.right);
    expect(Math.max(...ends)).toBeGreaterThan(lastBarLine(first) + 20);
    expect(Math.max(...ends)).toBeLessThanOrEqual(900.5);
  });
});

describe('a tab alone', () => {
  test('has its time signature in the middle of its lines, and no room for a key', () => {
    const [system] = systemsOf('six-sharps', { parts: 'tab' });
    const lines = inkOf(system, 'tab-line').map(({ box }) => (box.top + box.bottom) / 2);
    const time = inkOf(system, 'time-signature');
    const [top, bottom] = [
      Math.min(...time.map(({ box }) => box.top)),
      Math.max(...time.map(({ box }) => box.bottom)),
    ];
    expect(time.length).toBe(2);
    expect((top + bottom) / 2).toBeCloseTo((Math.min(...lines) + Math.max(...lines)) / 2, 0);
    const [clef] = inkOf(system, 'clef');
    expect(Math.min(...time.map(leftOf)) - (clef?.box.right ?? 0)).toBeLessThan(12);
    expect(inkOf(system, 'key-signature')).toEqual([]);
  });
});

// E. Gould, Behind Bars (2011), from memory, no page: a tie curves away from the stems, and over the heads where
// they go both ways.
describe('a tie', () => {
  const tieAndHead = (notes: string) => {
    const [system] = engrave(sheetOf({ key: 'C', chart: '| C |', notes }), OPTIONS).systems;
    const [tie] = inkOf(system, 'tie');
    const [head] = inkOf(system, 'note');
    if (!tie || !head) throw new Error('nothing is tied');
    return { tie: tie.box, head: head.box };
  };

  test('hangs under notes with stems up, and bows over notes with stems down', () => {
    const low = tieAndHead('F1/1.5 F1/2.5');
    const high = tieAndHead('F2/1.5 F2/2.5');
    expect(low.tie.bottom).toBeGreaterThan(low.head.bottom);
    expect(high.tie.top).toBeLessThan(high.head.top);
  });

  test('is the same shape on either side, and long enough to be seen', () => {
    const size = ({ left, right, top, bottom }: InkBox) => [right - left, bottom - top];
    const [low, high] = [tieAndHead('F1/1.5 F1/2.5').tie, tieAndHead('F2/1.5 F2/2.5').tie].map(size);
    expect(low?.[1]).toBeCloseTo(high?.[1] ?? 0, 2);
    for (const { ink } of ['ties', 'three-four-ties', 'ties-over-the-break'].flatMap((name) =>
      systemsOf(name),
    )) {
      for (const { box } of ink.filter(({ role }) => role === 'tie')) {
        expect(box.right - box.left).toBeGreaterThan(7);
      }
    }
  });
});

test('numbered endings say how often a repeat is played, and nothing says it again', () => {
  const texts = systemsOf('three-endings').flatMap((system) => inkOf(system, 'repeat-count'));
  expect(texts).toEqual([]);
  expect(systemsOf('three-endings').flatMap((system) => inkOf(system, 'ending')).length).toBeGreaterThan(3);
});

test('a repeat begins with its sign wherever one goes back to, and a jump back asks for none', () => {
  const begun = (chart: string) => {
    const sheet = sheetOf({ key: 'F', chart, notes: Array(6).fill('F1/4').join(' | ') });
    return chartFacts(sheet, 'bass', false).flatMap(({ repeatStart }, bar) => (repeatStart ? [bar] : []));
  };
  expect(begun('| F | (segno) C | F (to coda) | C (D.S. al coda) | (coda) F | F |')).toEqual([]);
  expect(begun('Verse:\n| F | C |\nChorus:\n| F | C :|\n| F | F |')).toEqual([2]);
});

test('what is said of the whole line stands over its chords, never beside them', () => {
  for (const name of ['seven-flats', 'six-sharps', 'split-bars-long', 'f-major', 'sections-repeats']) {
    const [system] = systemsOf(name, { positions: true });
    const [feel] = inkOf(system, 'feel');
    const highest = Math.min(...inkOf(system, 'chord').map(({ box }) => box.top));
    expect(feel?.box.bottom, name).toBeLessThan(highest);
  }
});

describe('chord names', () => {
  /** From the staff's top line up to the feet of the letters, in staff spaces. */
  const lift = (system: SystemLayout | undefined) => {
    const baseline = Math.max(...inkOf(system, 'chord').map((ink) => (ink.kind === 'text' ? ink.y : 0)));
    const top = Math.min(...inkOf(system, 'staff-line').map(({ box }) => box.top));
    return (top - baseline) / 10;
  };

  test('stand within a space and a half of the staff when nothing is in the way', () => {
    for (const system of systemsOf('sixty-four')) expect(lift(system)).toBeLessThan(1.5);
  });
});

test('frets on the lowest line stand clear of what is written under the tab', () => {
  for (const name of Object.keys(SCORE_FIXTURES)) {
    for (const system of systemsOf(name)) {
      const frets = Math.max(...inkOf(system, 'fret').map(({ box }) => box.bottom));
      const under = Math.min(...inkOf(system, 'degree').map(({ box }) => box.top));
      expect(under - frets, name).toBeGreaterThan(3);
    }
  }
});
