import { describe, expect, it } from 'vitest';
import { engrave } from '../../src/score/engrave';
import { playheadSpan, playheadX } from '../../src/score/playhead';
import type { Ink, ScoreOptions, SystemLayout } from '../../src/score/types';
import { SCORE_FIXTURES } from '../support/score-fixtures';
import { blankSheet, sheetOf } from '../support/score-sheets';

const OPTIONS: ScoreOptions = {
  width: 1000,
  degrees: true,
  fingers: true,
  counting: false,
  barsPerSystem: 4,
  measureNumbers: true,
};

const EIGHT = sheetOf({
  key: 'F',
  chart: '| F | Dm | Gm | C7 |\n| F | F7 | Bb C | F |',
  notes:
    'F1/1 A1/1 C2/.5 C2/.5 A1/1 | r/1 D2/.5 D2/.5 A1/1 F1/1 | G1/1 B♭1/1 D2/.5 D2/.5 B♭1/1 | r/1 C2/.5 C2/.5 G1/1 E1/1 | F1/1 A1/1 C2/.5 C2/.5 A1/1 | r/1 F1/.5 F1/.5 C2/1 A1/1 | B♭1/1 D2/1 C2/1 E2/1 | F2/1 C2/1 A1/1 F1/1',
});

const barsOf = (width: number, sheet = EIGHT): readonly (readonly number[])[] =>
  engrave(sheet, { ...OPTIONS, width }).systems.map(({ bars }) => bars.map(({ bar }) => bar));

const texts = (system: SystemLayout, role: Ink['role']): readonly string[] =>
  system.ink.flatMap((ink) => (ink.kind === 'text' && ink.role === role ? [ink.text] : []));

const found = <Item>(item: Item | undefined): Item => {
  if (item === undefined) throw new Error('Nothing there.');
  return item;
};

describe('line breaks', () => {
  it('puts four bars in a system when there is room, and fewer when there is not', () => {
    expect(barsOf(1000)).toEqual([
      [0, 1, 2, 3],
      [4, 5, 6, 7],
    ]);
    expect(barsOf(400)).toEqual([
      [0, 1],
      [2, 3],
      [4, 5],
      [6, 7],
    ]);
    expect(barsOf(230).every((bars) => bars.length === 1)).toBe(true);
  });

  it('starts a system at every section, after a double bar', () => {
    const sheet = sheetOf({
      key: 'F',
      chart: 'Intro:\n| F | C |\nVerse:\n| F | Bb | C | F |',
      notes: Array(6).fill('F1/1 A1/1 r/1 C2/1').join(' | '),
    });
    const layout = engrave(sheet, OPTIONS);
    expect(layout.systems.map(({ bars }) => bars.length)).toEqual([2, 4]);
    expect(layout.systems.map((system) => texts(system, 'section'))).toEqual([['Intro'], ['Verse']]);
  });

  it('sets a pickup before the four bars that it leads into, also where a section begins behind it', () => {
    const pickup = (chart: string) => {
      const sheet = sheetOf({
        key: 'F',
        chart,
        notes: `F1/1 | ${Array(8).fill('F1/1 A1/1 r/1 C2/1').join(' | ')}`,
      });
      return engrave(sheet, OPTIONS).systems;
    };
    const own = pickup('(1) C7\nVerse:\n| F | Bb | C | F |\n| F | Bb | C | F |');
    expect(own.map(({ bars }) => bars.length)).toEqual([5, 4]);
    expect(own.map((system) => texts(system, 'section'))).toEqual([['Verse'], []]);
    const name = found(own[0]?.ink.find((ink) => ink.kind === 'text' && ink.role === 'section'));
    expect(name.kind === 'text' && name.x).toBeGreaterThan(found(own[0]?.bars[1]).x);
    const within = pickup('Verse:\n(1) C7 | F | Bb | C | F |\n| F | Bb | C | F |');
    expect(within.map(({ bars }) => bars.length)).toEqual([5, 4]);
  });

  it('finds a system again that has only moved, with its bars and its number where they are now', () => {
    const engraved = (bars: number, measureNumbers: boolean) => {
      const sheet = sheetOf({
        key: 'F',
        chart: `A:\n${'| Gm '.repeat(bars)}|\nB:\n| F | C | Bb | C |`,
        notes: `${'G1/4 | '.repeat(bars)}F1/4 | C2/4 | B♭1/4 | C2/4`,
      });
      return found(engrave(sheet, { ...OPTIONS, measureNumbers }).systems.at(-1));
    };
    expect(engraved(4, true).bars.map(({ bar }) => bar)).toEqual([4, 5, 6, 7]);
    expect(engraved(5, true).bars.map(({ bar }) => bar)).toEqual([5, 6, 7, 8]);
    expect(texts(engraved(4, true), 'bar-number')).toEqual(['5']);
    expect(texts(engraved(5, true), 'bar-number')).toEqual(['6']);
    expect(engraved(5, false).ink).toBe(engraved(4, false).ink);
  });

  it('fills a system to its right edge, and leaves a short last one ragged', () => {
    const sheet = sheetOf({
      key: 'F',
      chart: 'Verse:\n| F | Dm | Gm | C7 |\nEnd:\n| F |',
      notes: Array(5).fill('F1/1 A1/1 r/1 C2/1').join(' | '),
    });
    const [full, last] = engrave(sheet, OPTIONS).systems.map(({ bars }) => {
      const bar = found(bars.at(-1));
      return bar.x + bar.width;
    });
    expect(full).toBeCloseTo(1000, 0);
    expect(last).toBeLessThan(500);
  });

  it('shrinks the staff when one bar is wider than the page', () => {
    const sheet = sheetOf({ key: 'E', chart: '| E |', notes: Array(16).fill('E1/.25').join(' ') });
    const [system] = engrave(sheet, { ...OPTIONS, width: 220 }).systems;
    const bar = found(found(system).bars[0]);
    expect(bar.x + bar.width).toBeLessThanOrEqual(220.5);
    expect(found(system).scale).toBeLessThan(1);
  });
});

describe('what is written', () => {
  it('writes every chord where it changes and again at the start of a system', () => {
    const sheet = sheetOf({
      key: 'F',
      chart: '| F | F | F Bb | Bb |\n| Bb | N.C. | C | C |',
      notes: Array(8).fill('F1/4').join(' | '),
    });
    const [first, second] = engrave(sheet, OPTIONS).systems;
    expect(texts(found(first), 'chord')).toEqual(['F', 'B♭']);
    expect(texts(found(second), 'chord')).toEqual(['B♭', 'N.C.', 'C']);
  });

  it('writes frets, fingers and degrees of struck notes, and a tied-on fret in brackets', () => {
    const sheet = sheetOf({ key: 'F', chart: '| F | F |', notes: 'A1/3 F1/1~ | F1/4' });
    const [system] = engrave(sheet, OPTIONS).systems;
    expect(texts(found(system), 'fret')).toEqual(['0', '1', '(1)']);
    expect(texts(found(system), 'degree')).toEqual(['3', 'R']);
  });

  it('says how often a repeat is played when it is not twice', () => {
    const repeated = (chart: string) =>
      engrave(sheetOf({ key: 'F', chart, notes: 'F1/4 | F1/4' }), OPTIONS).systems.flatMap((system) =>
        texts(system, 'repeat-count'),
      );
    expect(repeated('|: F | C :| x3')).toEqual(['x3']);
    expect(repeated('|: F | C :|')).toEqual([]);
  });

  it('numbers the systems after the first', () => {
    expect(engrave(EIGHT, OPTIONS).systems.map((system) => texts(system, 'bar-number'))).toEqual([[], ['5']]);
  });

  it('gives a blank piece empty staff and tab', () => {
    const layout = engrave(blankSheet(8), OPTIONS);
    expect(layout.systems.map(({ bars }) => bars.length)).toEqual([4, 4]);
    const roles = new Set(layout.systems.flatMap(({ ink }) => ink.map(({ role }) => role)));
    expect([...roles].sort()).toEqual([
      'bar-line',
      'bar-number',
      'clef',
      'staff-line',
      'tab-line',
      'time-signature',
    ]);
  });

  it('writes as many tab lines as the instrument has strings', () => {
    const lines = (tuning?: string) =>
      found(engrave(blankSheet(1, undefined, tuning), OPTIONS).systems[0]).ink.filter(
        ({ role }) => role === 'tab-line',
      ).length;
    expect([lines(), lines('five-strings'), lines('six-strings')]).toEqual([4, 5, 6]);
  });
});

describe('systems', () => {
  it('follow each other without gaps', () => {
    const layout = engrave(EIGHT, OPTIONS);
    let y = 0;
    for (const system of layout.systems) {
      expect(system.y).toBeCloseTo(y, 1);
      y += system.height;
    }
    expect(layout.height).toBeCloseTo(y, 1);
  });

  it('keep their fingerprint while nothing in them changes', () => {
    const print = (notes: string) =>
      engrave(sheetOf({ key: 'F', chart: `${'| F '.repeat(8)}|`, notes }), OPTIONS).systems.map(
        ({ fingerprint }) => fingerprint,
      );
    const before = print(`${'F1/4 | '.repeat(6)}A1/4 | A1/4`);
    const after = print(`${'F1/4 | '.repeat(6)}A1/4 | C2/4`);
    expect(after[0]).toBe(before[0]);
    expect(after[1]).not.toBe(before[1]);
  });

  it('scale with the staff space', () => {
    const large = engrave(EIGHT, { ...OPTIONS, width: 2000, staffSpace: 20 });
    const small = engrave(EIGHT, OPTIONS);
    const [one, two] = [found(large.systems[0]), found(small.systems[0])];
    expect(one.height).toBeCloseTo(two.height * 2, 0);
    expect(one.staff.bottom - one.staff.top).toBeCloseTo(80, 1);
    expect(one.ink.length).toBe(two.ink.length);
  });
});

describe('the playhead', () => {
  it('moves forward through a bar, from its first note to its bar line', () => {
    const layout = engrave(EIGHT, OPTIONS);
    const at = (bar: number, tick: number) => found(playheadX(layout, bar, tick) ?? undefined);
    const places = Array.from({ length: 33 }, (_, index) => at(5, index * 120).x);
    expect(places.every((x, index) => index === 0 || x > (places[index - 1] ?? 0))).toBe(true);
    expect(at(5, 3840).x).toBeCloseTo(
      found(layout.systems[1]?.bars[1]).x + found(layout.systems[1]?.bars[1]).width,
      1,
    );
    expect(at(0, 0).system).toBe(0);
    expect(at(5, 0).system).toBe(1);
    expect(playheadX(layout, 8, 0)).toBeNull();
  });

  it('runs through staff and tab, and strikes no word over them or under them', () => {
    const words: readonly Ink['role'][] = [
      ...(['chord', 'feel', 'swing', 'section', 'way', 'ending', 'repeat-count', 'words'] as const),
      ...(['degree', 'numeral', 'finger', 'counting'] as const),
    ];
    const met = new Set<Ink['role']>();
    for (const [name, make] of Object.entries(SCORE_FIXTURES)) {
      for (const parts of ['both', 'staff', 'tab'] as const) {
        for (const system of engrave(make(), { ...OPTIONS, counting: true, numerals: true, parts }).systems) {
          const { top, bottom } = playheadSpan(system);
          expect(top, name).toBeLessThan(system.staff.top);
          expect(bottom, name).toBeGreaterThan(system.tab.bottom);
          for (const { role, box } of system.ink.filter((ink) => words.includes(ink.role))) {
            met.add(role);
            const between =
              box.top * system.scale > system.staff.bottom && box.bottom * system.scale < system.tab.top;
            const apart = box.bottom * system.scale <= top || box.top * system.scale >= bottom;
            expect(apart || between, `${name}, ${parts}: ${role}`).toBe(true);
          }
        }
      }
    }
    expect([...met]).toEqual(expect.arrayContaining(['chord', 'swing', 'section', 'degree', 'finger']));
  });
});
