import { describe, expect, test } from 'vitest';
import type { LineSheet } from '../../src/core/lesson';
import { engrave } from '../../src/score/engrave';
import type { Ink, InkBox, InkRole, ScoreOptions, SystemLayout } from '../../src/score/types';
import { SCORE_FIXTURES } from '../support/score-fixtures';
import { sheetOf } from '../support/score-sheets';

const OPTIONS: ScoreOptions = {
  width: 1000,
  staffSpace: 8,
  degrees: false,
  fingers: true,
  counting: false,
  barsPerSystem: 4,
  measureNumbers: true,
};

const fixture = (name: string): readonly SystemLayout[] => {
  const make = SCORE_FIXTURES[name];
  if (!make) throw new Error(`There is no fixture ${name}.`);
  return engrave(make(), OPTIONS).systems;
};
const systemsOf = (sheet: LineSheet) => engrave(sheet, OPTIONS).systems;

const inkOf = (system: SystemLayout | undefined, role: InkRole): readonly Ink[] =>
  system?.ink.filter((ink) => ink.role === role) ?? [];
const textsOf = (system: SystemLayout | undefined, role: InkRole) =>
  inkOf(system, role).flatMap((ink) => (ink.kind === 'text' ? [ink] : []));
const middle = ({ left, right }: InkBox): number => (left + right) / 2;
const found = <Item>(item: Item | undefined): Item => {
  if (item === undefined) throw new Error('Nothing there.');
  return item;
};

// SMuFL 1.4, Dynamics: dynamicMP; Repeats: coda.
const MP = '\ue52c';
const CODA = '\ue048';

// E. Gould, Behind Bars (2011), from memory, no page: a dynamic stands under the note that it is first heard at, and a
// hairpin leads up to it.
describe('how loud it is from a bar’s end on', () => {
  const risen = (chart: string) =>
    sheetOf({
      key: 'F',
      chart,
      notes: 'F1/4 | C2/4 | F1/4 | C2/4',
      over: {
        0: {
          dynamics: [
            { at: 2, hairpin: 'crescendo' },
            { at: 4, level: 'mp' },
          ],
        },
      },
    });
  const placeOf = (system: SystemLayout | undefined) => {
    const mark = found(textsOf(system, 'dynamic').find(({ text }) => text === MP));
    const [bar] = (system?.bars ?? [])
      .filter(({ x }) => x / (system?.scale ?? 1) < middle(mark.box))
      .slice(-1);
    return { bar: bar?.bar, middle: middle(mark.box), system: found(system) };
  };

  test('stands under the next bar’s first note, with its hairpin before it', () => {
    const { bar, middle: at, system } = placeOf(fixture('playing-signs')[1]);
    expect(bar).toBe(5);
    const first = found(system.bars[1]?.positions[0]).x / system.scale;
    expect(at).toBeCloseTo(first, 0);
    const leading = inkOf(system, 'hairpin').filter(({ box }) => box.left < at);
    expect(Math.max(...leading.map(({ box }) => box.right))).toBeGreaterThan(at - 20);
  });

  test('stays before a repeat’s end, behind which the music goes back', () => {
    expect(placeOf(systemsOf(risen('|: F :| C | F | C |'))[0]).bar).toBe(0);
    expect(placeOf(systemsOf(risen('| F | C | F | C |'))[0]).bar).toBe(1);
  });

  test('opens no hairpin again in the next system that has been closed in the one before', () => {
    const [first, second] = fixture('playing-signs');
    expect(inkOf(first, 'hairpin').length).toBeGreaterThan(0);
    const ppp = found(textsOf(second, 'dynamic')[0]);
    expect(inkOf(second, 'hairpin').filter(({ box }) => box.left < ppp.box.left)).toEqual([]);
  });
});

// Common practice, no source: H and P of the fretting hand stand over their curves; the plucking hand's letters, of
// which P is a pop, have a line of their own.
test('the P of a pull-off and the P of a pop never stand in one row', () => {
  const [, system] = fixture('playing-signs');
  const heights = (...letters: readonly string[]) =>
    textsOf(system, 'playing-sign').flatMap(({ text, y }) => (letters.includes(text) ? [y] : []));
  const slapped = Math.max(...heights('S'));
  expect(heights('H').length).toBe(2);
  expect(heights('P').filter((y) => y > slapped).length).toBe(1);
  expect(Math.min(...heights('H')) - slapped).toBeGreaterThan(6);
});

describe('a chord name', () => {
  test('keeps a staff space from a fermata under it', () => {
    const [, system] = fixture('playing-signs');
    const last = found(textsOf(system, 'chord').at(-1)).box;
    const under = inkOf(system, 'fermata').filter(
      ({ box }) => box.left < last.right && box.right > last.left,
    );
    expect(under.length).toBe(1);
    expect(Math.min(...under.map(({ box }) => box.top)) - last.bottom).toBeGreaterThanOrEqual(10);
  });

  test('has no triplet’s figure beside it that would read as part of it', () => {
    const [system] = fixture('triplets');
    const chords = textsOf(system, 'chord').map(({ box }) => box);
    const beside = textsOf(system, 'tuplet').filter(({ box: figure }) =>
      chords.some(
        (chord) =>
          figure.left - chord.right < 24 && figure.right > chord.left && figure.top < chord.bottom + 5,
      ),
    );
    expect(beside).toEqual([]);
  });
});

// E. Gould, Behind Bars (2011), from memory, no page: `To Coda` has the coda's sign with it, and the coda is set off.
describe('the coda', () => {
  test('is named with its sign where the way leads to it', () => {
    const [system] = fixture('way-through');
    const words = found(textsOf(system, 'way').find(({ text }) => text === 'To Coda'));
    const sign = found(textsOf(system, 'way').find(({ text }) => text === CODA));
    expect(sign.box.left - words.box.right).toBeGreaterThan(0);
    expect(sign.box.left - words.box.right).toBeLessThan(6);
    expect(sign.box.top).toBeLessThan(words.box.bottom);
    expect(sign.box.bottom).toBeGreaterThan(words.box.top);
  });

  test('begins a system of its own behind a double bar line', () => {
    const systems = fixture('way-through');
    expect(systems.map(({ bars }) => bars.map(({ bar }) => bar))).toEqual([
      [0, 1, 2, 3],
      [4, 5, 6, 7],
      [8, 9],
    ]);
    const [, before] = systems;
    const end = Math.max(...inkOf(before, 'bar-line').map(({ box }) => box.right));
    expect(inkOf(before, 'bar-line').filter(({ box }) => box.left > end - 8).length).toBe(2);
  });
});

// Common practice, no source: what is said of the way is read apart from beams and chord names, with a staff space of white.
test('To Coda, D.S. and Fine keep clear of beams, and the segno of the chord beside it', () => {
  const systems = systemsOf(
    sheetOf({
      key: 'G',
      chart: '| G | (segno) C | G/B (to coda) | G (D.S. al coda) |\n| (coda) C | G (fine) |',
      notes:
        'G1/1 B1/1 D2/1 G2/1 | C2/1 E2/1 G2/2 | B1/1 D2/1 G1/.5 A1/.5 C2/.5 C2/.5 | G1/1 A1/1 C2/.5 C2/.5 A1/.5 C2/.5 | C2/4 | G1/2 C2/.5 C2/.5 C2/.5 C2/.5',
    }),
  );
  const said = systems.flatMap((system) => inkOf(system, 'way'));
  expect(said.length).toBeGreaterThan(5);
  for (const system of systems)
    for (const { box } of inkOf(system, 'way')) {
      const near = [
        ...inkOf(system, 'beam'),
        ...inkOf(system, 'stem'),
        ...inkOf(system, 'staff-line'),
      ].filter((one) => one.box.left < box.right + 6 && one.box.right > box.left - 6);
      expect(Math.min(...near.map((one) => one.box.top)) - box.bottom).toBeGreaterThan(8);
      for (const chord of inkOf(system, 'chord'))
        expect(
          chord.box.left > box.right + 6 || chord.box.right < box.left - 6 || chord.box.top > box.bottom + 6,
        ).toBe(true);
    }
});
