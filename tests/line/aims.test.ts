import { describe, expect, test } from 'vitest';
import { fret, midiNumber, midiOf } from '../../src/core/base';
import { placesOf } from '../../src/core/fretboard';
import { type Aim, analyseLine, type ComposeRequest, composeLine } from '../../src/core/line';
import { request, type Wish } from './notation';

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
  test.each(['chord tones', 'scale steps', 'space', 'octave', 'approach note'] as const)(
    'a bar shows the technique that is wanted there: %s',
    (technique) => {
      for (const bar of [1, 3, 6]) {
        const { techniques, remarks } = composed(
          asking([{ where: { kind: 'bar', bar }, wanted: [technique] }]),
        );
        expect(techniques[bar]).toContain(technique);
        expect(remarks).toEqual([]);
      }
    },
  );

  test('what is forbidden in the line is nowhere', () => {
    const { techniques } = composed(
      asking([{ where: { kind: 'line' }, forbidden: ['scale steps', 'space'] }]),
    );
    expect(techniques.flat()).not.toContain('scale steps');
    expect(techniques.flat()).not.toContain('space');
  });

  test('what is forbidden in a section may be shown outside it', () => {
    const asked = {
      ...request('Verse:\n| F | C7 | F | C7 |\nChorus:\n| B♭ | F | C7 | F |', { feel: 'one-drop', level: 3 }),
      aims: [{ where: { kind: 'section', section: 0 }, forbidden: ['space'] }] as const,
    };
    const { techniques } = composed(asked);
    expect(techniques.slice(0, 4).flat()).not.toContain('space');
  });

  test('a wish for the whole line is shown somewhere', () => {
    const { techniques } = composed(asking([{ where: { kind: 'line' }, wanted: ['octave'] }]));
    expect(techniques.flat()).toContain('octave');
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
    expect(remarks).toContain('Bar 2 cannot show scale steps with this chord, level and range.');
  });

  test('a range without the root is left, and the line says so', () => {
    const aim = { where: { kind: 'bar', bar: 1 }, lowest: midiNumber(37), highest: midiNumber(41) } as const;
    const { bars, remarks } = composed(asking([aim]));
    expect(bars[1]?.length).toBeGreaterThan(0);
    expect(remarks).toContain('Bar 2 has no root in the range and position asked for, so it leaves them.');
  });
});
