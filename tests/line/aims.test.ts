import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fret, midiNumber, midiOf } from '../../src/core/base';
import { placesOf } from '../../src/core/fretboard';
import { type Aim, analyseLine, type ComposeRequest, composeLine } from '../../src/core/line';
import { charts, wishes } from './charts';
import { barsOf, brokenIn } from './held-aims';
import { request, type Wish } from './notation';
import { anyAims } from './wide-charts';

const CHART = '| F | C7 | F | C7 | B♭ | F | C7 | F |';

const asking = (aims: readonly Aim[], wish: Wish = {}): ComposeRequest => ({
  ...request(CHART, { feel: 'early-ska', level: 4, ...wish }),
  aims,
});

const composed = (asked: ComposeRequest) => {
  const { bars, remarks } = composeLine(asked);
  return { bars, remarks, techniques: analyseLine(asked, bars).map((bar) => bar.techniques) };
};

describe('aims of the teacher', () => {
  test.each([
    'chord tones',
    'scale steps',
    'beat one silent',
    'long silences',
    'octave',
    'approach note',
  ] as const)('a bar shows the technique that is wanted there: %s', (technique) => {
    for (const bar of [1, 3, 6]) {
      const { techniques, remarks } = composed(
        asking([{ where: { kind: 'bar', bar }, wanted: [technique] }]),
      );
      expect(techniques[bar]).toContain(technique);
      // A feel that sounds its one says where it does not.
      expect(remarks.filter((remark) => !remark.includes('as it is asked for'))).toEqual([]);
    }
  });

  test('what is forbidden in the line is nowhere', () => {
    const { techniques } = composed(
      asking([{ where: { kind: 'line' }, forbidden: ['scale steps', 'long silences'] }]),
    );
    expect(techniques.flat()).not.toContain('scale steps');
    expect(techniques.flat()).not.toContain('long silences');
  });

  test('what is forbidden in a section may be shown outside it', () => {
    const asked = {
      ...request('Verse:\n| F | C7 | F | C7 |\nChorus:\n| B♭ | F | C7 | F |', { feel: 'one-drop', level: 3 }),
      aims: [{ where: { kind: 'section', section: 0 }, forbidden: ['beat one silent'] }] as const,
    };
    const { techniques } = composed(asked);
    expect(techniques.slice(0, 4).flat()).not.toContain('beat one silent');
  });

  test.each(['beat one silent', 'long silences', 'octave', 'scale steps', 'approach note'] as const)(
    'a technique wanted for the whole line is shown in every phrase: %s',
    (technique) => {
      for (const feel of ['early-ska', 'rocksteady', 'walking-swing', 'disco'] as const) {
        const asked = asking([{ where: { kind: 'line' }, wanted: [technique] }], { feel });
        const { techniques, remarks } = composed(asked);
        const length = asked.feel.phraseLength;
        for (let start = 0; start < techniques.length; start += length) {
          expect(techniques.slice(start, start + length).flat()).toContain(technique);
        }
        // A feel that sounds its one says where it does not.
        expect(remarks.filter((remark) => !remark.includes('as it is asked for'))).toEqual([]);
      }
    },
  );

  test('a technique wanted for a section is shown in every phrase of it', () => {
    const asked = {
      ...request('Verse:\n| F | C7 | F | C7 |\nChorus:\n| B♭ | F | C7 | F | B♭ | F | C7 | F |', {
        feel: 'early-ska',
        level: 4,
      }),
      aims: [{ where: { kind: 'section', section: 1 }, wanted: ['octave'] }] as const,
    };
    const { techniques } = composed(asked);
    expect(techniques.slice(4, 8).flat()).toContain('octave');
    expect(techniques.slice(8, 12).flat()).toContain('octave');
  });

  test('a phrase that cannot show what is wanted is named', () => {
    const { misses, bars } = composeLine(
      asking([{ where: { kind: 'line' }, wanted: ['approach note'] }], { level: 2 }),
    );
    expect(bars.flat().length).toBeGreaterThan(0);
    expect(misses.map((miss) => [miss.aim, miss.bars])).toEqual([
      [0, [0, 1, 2, 3]],
      [0, [4, 5, 6, 7]],
    ]);
    expect(misses[0]?.message).toBe(
      'No bar of bars 1 to 4 can show approach note with these chords, level and range.',
    );
  });

  test('sparse and busy bars have fewer and more notes than beats', () => {
    const { bars } = composed(
      asking([
        { where: { kind: 'bar', bar: 1 }, density: 'sparse' },
        { where: { kind: 'bar', bar: 3 }, density: 'busy' },
      ]),
    );
    expect(bars[1]?.length).toBeLessThan(4);
    expect(bars[3]?.length).toBeGreaterThan(4);
  });

  test('a bar keeps its share of silence', () => {
    const asked = asking([{ where: { kind: 'line' }, silence: 0.25 }], { feel: 'one-drop' });
    for (const notes of composed(asked).bars) {
      expect(notes.reduce((sum, note) => sum + note.duration, 0)).toBeLessThanOrEqual(0.75 * 3840);
    }
  });

  test('the range is kept', () => {
    const aim = { where: { kind: 'line' }, lowest: midiNumber(29), highest: midiNumber(41) } as const;
    for (const note of composed(asking([aim])).bars.flat()) {
      expect(midiOf(note.pitch)).toBeGreaterThanOrEqual(29);
      expect(midiOf(note.pitch)).toBeLessThanOrEqual(41);
    }
  });

  test('a hand position is kept: every note lies within four frets or on an open string', () => {
    const asked = asking([{ where: { kind: 'line' }, position: fret(1) }]);
    for (const note of composed(asked).bars.flat()) {
      const places = placesOf(midiOf(note.pitch), asked.instrument);
      expect(places.some((place) => place.fret <= 4)).toBe(true);
    }
  });

  test('what cannot be kept is said with its bar, and the nearest is offered', () => {
    const { bars, remarks } = composed(
      asking([{ where: { kind: 'bar', bar: 1 }, wanted: ['scale steps'] }], { level: 1 }),
    );
    expect(bars[1]?.length).toBeGreaterThan(0);
    expect(remarks).toEqual([
      expect.stringMatching(
        /^Bar 2 cannot show scale steps with this chord, level and range\. It shows chord tones.* instead\.$/,
      ),
      'No bar shows scale steps: that comes with level 3.',
    ]);
  });

  test('a range that has the fifth but not the root is kept, and the bar stands on its fifth', () => {
    const aim = { where: { kind: 'bar', bar: 1 }, lowest: midiNumber(39), highest: midiNumber(43) } as const;
    const { bars, remarks } = composed(asking([aim]));
    const midis = (bars[1] ?? []).map((note) => midiOf(note.pitch));
    expect(midis).toContain(43);
    expect(midis.every((midi) => midi >= 39 && midi <= 43)).toBe(true);
    expect(remarks.filter((remark) => remark.includes('range'))).toEqual([]);
  });

  test('a range without the root is left, and the line says so', () => {
    const aim = { where: { kind: 'bar', bar: 1 }, lowest: midiNumber(37), highest: midiNumber(41) } as const;
    const { bars, remarks } = composed(asking([aim]));
    expect(bars[1]?.length).toBeGreaterThan(0);
    expect(remarks).toContain(
      'Bar 2 has neither root nor fifth in the range asked for, so it leaves it. It stays in the range of the level instead.',
    );
  });
});

describe('any aims', () => {
  test('are kept, or the line says which bar does not keep which', () => {
    fc.assert(
      fc.property(charts, wishes, anyAims, (chart, wish, aims) => {
        const asked = { ...request(chart, wish), aims };
        const { bars, misses, remarks } = composeLine(asked);
        const techniques = analyseLine(asked, bars).map((bar) => bar.techniques);
        aims.forEach((aim, index) => {
          const scope = barsOf(asked, aim);
          for (const bar of scope) {
            const broken = brokenIn(asked, aim, bars[bar] ?? [], techniques[bar] ?? [], bar);
            const said = misses.filter((miss) => miss.aim === index && miss.bars.includes(bar));
            expect(said.length > 0 || broken.length === 0, broken.join()).toBe(true);
          }
          if (aim.where.kind === 'bar') return;
          for (const technique of aim.wanted ?? []) {
            const missing = misses.filter((miss) => miss.aim === index && miss.message.includes(technique));
            const heard = scope.some((bar) => techniques[bar]?.includes(technique));
            expect(scope.length === 0 || heard || missing.length > 0).toBe(true);
          }
        });
        for (const miss of misses) expect(remarks).toContain(`${miss.message} ${miss.nearest}`);
      }),
      { numRuns: 8, seed: 20260105 },
    );
  });
});
