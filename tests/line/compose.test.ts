import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { barTicks, midiOf } from '../../src/core/base';
import { placesOf } from '../../src/core/fretboard';
import {
  analyseLine,
  type ComposeRequest,
  checkLine,
  composeLine,
  LEVELS,
  type LineNotes,
  limitsIn,
  musicFindings,
  type Technique,
} from '../../src/core/line';
import { charts, wishes } from './charts';
import { composed } from './composed';
import { line, request } from './notation';

const RUNS = { numRuns: 8, seed: 20260101 };

/** Whether the notes lie in order inside their bars. */
function fits(asked: ComposeRequest, bars: LineNotes): boolean {
  return asked.chart.bars.every((bar, index) => {
    let end = 0;
    for (const note of bars[index] ?? []) {
      if (note.start < end || note.duration <= 0) return false;
      end = note.start + note.duration;
    }
    return end <= barTicks(bar.metre);
  });
}

const allows = (asked: ComposeRequest, technique: Technique): boolean =>
  technique === 'chord tones' || asked.techniques.has(technique);

describe('every composed line', () => {
  test('fills its bars, stays on the neck and in the range, and breaks no rule', () => {
    fc.assert(
      fc.property(charts, wishes, (chart, wish) => {
        const { asked, line } = composed(chart, wish);
        const { bars } = line;
        expect(bars.length).toBe(asked.chart.bars.length);
        expect(fits(asked, bars)).toBe(true);
        for (const note of bars.flat()) {
          const midi = midiOf(note.pitch);
          expect(midi).toBeGreaterThanOrEqual(28);
          expect(midi).toBeLessThanOrEqual(limitsIn(asked.level, asked.feel.bassRole).highestMidi);
          expect(placesOf(midi, asked.instrument).some((place) => place.fret <= 12)).toBe(true);
        }
        expect(checkLine(asked, bars)).toEqual([]);
      }),
      RUNS,
    );
  });

  test('shows only the techniques that are switched on', () => {
    fc.assert(
      fc.property(charts, wishes, (chart, wish) => {
        const { asked, line } = composed(chart, wish);
        const shown = analyseLine(asked, line.bars).flatMap((bar) => bar.techniques);
        expect(shown.filter((technique) => !allows(asked, technique))).toEqual([]);
      }),
      RUNS,
    );
  });

  test('is the same for the same request and seed', () => {
    fc.assert(
      fc.property(charts, wishes, (chart, wish) => {
        expect(composeLine(request(chart, wish))).toEqual(composed(chart, wish).line);
      }),
      { ...RUNS, numRuns: 4 },
    );
  });

  test('leaves kept bars exactly as they are', () => {
    fc.assert(
      fc.property(charts, wishes, fc.nat(11), fc.nat(11), (chart, wish, one, other) => {
        const { asked, line } = composed(chart, wish);
        const first = line.bars;
        const kept = first.map((notes, index) => (index === one || index === other ? notes : null));
        const again = composeLine({ ...asked, seed: asked.seed + 1, kept }).bars;
        kept.forEach((notes, index) => {
          if (notes) expect(again[index]).toEqual(notes);
        });
      }),
      RUNS,
    );
  });

  test('sounds in every bar that has a chord, and rests in those that have none', () => {
    fc.assert(
      fc.property(charts, wishes, (chart, wish) => {
        const { asked, line } = composed(chart, wish);
        const { bars } = line;
        asked.chart.bars.forEach((bar, index) => {
          const chorded = bar.spans.some((span) => span.harmony.kind === 'chord');
          expect((bars[index]?.length ?? 0) > 0).toBe(chorded);
        });
      }),
      RUNS,
    );
  });
});

const EIGHT_BARS = '| F | C7 | F | C7 | B♭ | F | C7 | F |';

describe('a composed line', () => {
  test('another seed gives another rhythm', () => {
    const rhythms = [1, 2, 3, 4, 5].map((seed) =>
      composed(EIGHT_BARS, { feel: 'one-drop', seed })
        .line.bars.map((bar) => bar.map((note) => note.start).join(' '))
        .join('|'),
    );
    expect(new Set(rhythms).size).toBe(5);
  });

  test('carries the statement’s rhythm, its last beat apart, through half of the bars or of the pairs', () => {
    const BEAT_FOUR = 3 * 960;
    const most = (texts: readonly string[]) =>
      Math.max(...texts.map((text) => texts.filter((other) => other === text).length));
    for (const feel of ['early-ska', 'one-drop'] as const) {
      for (const seed of [1, 2, 3, 4]) {
        const { bars } = composed(EIGHT_BARS, { feel, seed }).line;
        const heads = bars.map((bar) =>
          bar.flatMap(({ start }) => (start < BEAT_FOUR ? [start] : [])).join(' '),
        );
        const pairs = [0, 2, 4, 6].map((place) => heads.slice(place, place + 2).join(' / '));
        expect(most(heads) >= 4 || most(pairs) >= 2).toBe(true);
      }
    }
  });

  test('leaves a quarter of the time silent in one drop', () => {
    for (const seed of [1, 2, 3, 4, 5, 6]) {
      const { bars } = composed(EIGHT_BARS, { feel: 'one-drop', seed }).line;
      const sounding = bars.flat().reduce((sum, note) => sum + note.duration, 0);
      expect(sounding / (8 * 3840)).toBeLessThanOrEqual(0.75);
    }
  });

  test('says which chord it could not read and where the bass rests', () => {
    const { bars, remarks } = composeLine(request('| C | Hxy | N.C. | G |'));
    expect(bars[1]).toEqual([]);
    expect(bars[2]).toEqual([]);
    expect(remarks).toEqual([
      'Bar 2: the chord “Hxy” is not understood, so the bass rests under it.',
      'Bar 3 has no chord, so the bass rests.',
    ]);
  });

  test('does not say that the bass rests where a bar that is kept has notes', () => {
    const kept = [null, line('C2 . C2 .')[0] ?? null, line('. . G1 .')[0] ?? null, null];
    const { bars, remarks } = composeLine(request('| C | Hxy | N.C. | G |', { kept }));
    expect(bars.slice(1, 3)).toEqual(kept.slice(1, 3));
    expect(remarks.join()).not.toMatch(/the bass rests/);
  });

  test('an empty chart gives an empty line', () => {
    expect(composeLine(request(''))).toEqual({ bars: [], cost: 0, remarks: [], misses: [] });
  });

  test('keeps to the notes of its level', () => {
    const degrees = (level: 0 | 1 | 2) => {
      const asked = request(EIGHT_BARS, { level, feel: 'early-ska' });
      const texts = analyseLine(asked, composeLine(asked).bars).flatMap((bar) =>
        bar.notes.map((note) => note.degreeText),
      );
      return [...new Set(texts)].sort().join(' ');
    };
    expect(degrees(0)).toBe('R');
    expect(degrees(1)).toMatch(/^5( 8)? R$|^5 8 R$|^5 R$/);
    expect(degrees(2)).toMatch(/^3 5( 8)? R$/);
  });

  test('bars kept by the teacher that break a rule are named', () => {
    const kept = [line('F1 . B♭1 . E2 . B♭1 .')[0] ?? null, null, null, null];
    const { bars, remarks } = composeLine(request('| F | B♭ | C7 | F |', { kept }));
    expect(bars[0]).toEqual(kept[0]);
    expect(remarks.some((remark) => remark.startsWith('Bar 1: '))).toBe(true);
  });

  test.each(['octave', 'anticipation', 'approach note'] as const)(
    'shows a technique that is switched on, where level and chords have it: %s',
    (technique) => {
      for (const feel of ['early-ska', 'one-drop', 'disco', 'bossa'] as const) {
        const asked = request('| Am | F | C | G | Am | F | E7 | Am |', {
          feel,
          level: 4,
          techniques: ['chord tones', 'scale steps', technique],
        });
        const { bars, remarks } = composeLine(asked);
        expect(analyseLine(asked, bars).flatMap((bar) => bar.techniques)).toContain(technique);
        expect(remarks).toEqual([]);
      }
    },
  );

  test('says when a technique that is switched on cannot be shown', () => {
    const asked = request('| C | F |', { level: 2, techniques: ['chord tones', 'anticipation'] });
    expect(composeLine(asked).remarks).toEqual(['No bar shows anticipation: that comes with level 3.']);
  });

  test.each(['walking-swing', 'two-beat', 'bossa', 'shuffle-blues', 'disco'] as const)(
    '%s keeps its pulse: beat one sounds in every bar, and every section opens on its root',
    (feel) => {
      for (const level of LEVELS) {
        for (const seed of [level]) {
          const asked = request('| F | C7 | F | C7 | B♭ | F | C7 | F |', { feel, level, seed });
          const { bars } = composeLine(asked);
          for (const notes of bars) expect(notes[0]?.start).toBe(0);
          expect(midiOf(bars[0]?.[0]?.pitch ?? { letter: 'C', alteration: 0, octave: 2 }) % 12).toBe(5);
        }
      }
    },
  );

  // Funk's level 2 has the seventh of a chord that has one of its own: the first chord decided it for all.
  test.each(['shuffle-blues', 'funk'] as const)(
    'of %s at level 2 has the sevenths of its seventh chords, and of no other',
    (feel) => {
      for (const chart of ['| C | F7 | C | F7 | C | F | G7 | C |', '| C7 | F | C7 | F | C7 | F | G7 | C |'])
        for (let seed = 0; seed < 12; seed += 1) {
          const asked = request(chart, { feel, level: 2, seed });
          expect(musicFindings(asked, composeLine(asked).bars)).toEqual([]);
        }
    },
  );
});
