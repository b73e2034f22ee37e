import { describe, expect, test } from 'vitest';
import { beatsInBar } from '../../src/core/base';
import { type Contour, FEELS, type MetrePhrases, PHRASE_BOOKS, slotBeats } from '../../src/core/feel';
import { phraseBook } from '../../src/core/feel/phrases/notation';
import { LEVELS } from '../../src/core/line';
import { roleLevel } from '../../src/core/line/phrase/cells';

const rows = FEELS.flatMap((feel) => {
  const book = PHRASE_BOOKS[feel.id];
  return (book?.metres ?? []).map((metre) => ({
    name: `${feel.id} ${metre.metre.count}/${metre.metre.unit}`,
    feel,
    book,
    metre,
  }));
});

const allContours = ({ themes }: MetrePhrases): readonly Contour[] =>
  themes.flatMap((theme) => [
    ...Object.values(theme.contours).flat(),
    ...theme.models.flatMap(({ bars }) => bars),
  ]);

describe.each(rows)('the phrases of $name', ({ feel, book, metre }) => {
  const [plain, ...others] = metre.themes;

  test('stand in a metre of the feel, with a source', () => {
    expect(
      feel.metres.some((row) => row.metre.count === metre.metre.count && row.metre.unit === metre.metre.unit),
    ).toBe(true);
    expect(book?.source).not.toBe('');
  });

  test('begin with a plain theme that is whole from level 0 on', () => {
    expect(plain?.levels.least).toBe(0);
    for (const slot of ['S', 'A', 'L', 'C', 'T', 'E', 'H', 'Q'] as const) {
      if (slot === 'H' && beatsInBar(metre.metre) < 2) continue;
      const playable = plain?.contours[slot]?.filter((contour) =>
        contour.roles.every((role) => roleLevel(role) <= 1),
      );
      expect(playable?.length, slot).toBeGreaterThan(0);
    }
  });

  test('have several themes for every level', () => {
    for (const level of LEVELS) {
      const fitting = metre.themes.filter(({ levels }) => levels.least <= level && level <= levels.most);
      expect(fitting.length, `level ${level}`).toBeGreaterThanOrEqual(
        level >= 3 && metre === book?.metres[0] ? 3 : 1,
      );
    }
  });

  test('have statements, answers and turnarounds in every theme, and words', () => {
    for (const theme of others) {
      expect(theme.words, theme.id).toMatch(/^[a-z]/);
      for (const slot of ['S', 'A', 'T'] as const) {
        expect(theme.contours[slot]?.length ?? 0, `${theme.id} ${slot}`).toBeGreaterThanOrEqual(
          slot === 'T' ? 2 : 4,
        );
      }
    }
    expect(new Set(metre.themes.map(({ id }) => id)).size).toBe(metre.themes.length);
  });

  test('divide their beats evenly, and never overlap', () => {
    for (const contour of allContours(metre)) {
      expect(
        Number.isInteger((contour.grid.length / slotBeats(contour.slot, metre.metre)) * 2),
        contour.id,
      ).toBe(true);
      contour.beats.forEach(({ start, duration }, index) => {
        const next = contour.beats[index + 1]?.start ?? slotBeats(contour.slot, metre.metre);
        expect(start + duration, contour.id).toBeLessThanOrEqual(next + 1e-9);
      });
      expect(contour.roles.length, contour.id).toBeGreaterThan(0);
      expect(contour.roles[0]?.kind, contour.id).not.toBe('repeat');
    }
  });

  test('keep passing colours short', () => {
    for (const contour of allContours(metre)) {
      contour.roles.forEach((role, index) => {
        if (role.kind !== 'blue third' && role.kind !== 'sharp fourth') return;
        const most = book?.chromatics === 'a beat' ? 1 : 0.5;
        expect(contour.beats[index]?.duration, contour.id).toBeLessThanOrEqual(most);
      });
    }
  });

  test('have contours and models in full', () => {
    expect(new Set(allContours(metre).map(({ id }) => id)).size).toBe(allContours(metre).length);
    if (book?.manner === 'riff' && metre === book.metres[0]) {
      const models = others.filter(({ levels }) => levels.most >= 3).map((theme) => theme.models.length);
      expect(Math.min(...models)).toBeGreaterThanOrEqual(6);
    }
  });
});

describe('the phrase notation', () => {
  const about = { manner: 'walk', chromatics: 'short', blues: false, source: 'test' } as const;

  test('reads rhythm, roles, leads and tags', () => {
    const book = phraseBook(about, 'metre 4/4\ntheme one 0-5: a word\nS x=xx==-- 3 _5 > !co');
    const [contour] = book.metres[0]?.themes[0]?.contours.S ?? [];
    expect(contour?.beats).toEqual([
      { start: 0, duration: 1 },
      { start: 1, duration: 0.5 },
      { start: 1.5, duration: 1.5 },
    ]);
    expect(contour?.roles).toEqual([
      { kind: 'step', step: 3, octave: 0 },
      { kind: 'step', step: 5, octave: -1 },
    ]);
    expect(contour?.leads).toBe(1);
    expect(contour?.tags).toEqual(['goes on']);
  });

  test('reads models of several bars', () => {
    const book = phraseBook(about, 'metre 4/4\ntheme one 0-5: a word\nS+A x=x=x=x= x===x=== R 3 5 3 / R >');
    expect(book.metres[0]?.themes[0]?.models[0]?.bars.map(({ text }) => text)).toEqual(['R 3 5 3', 'R >']);
  });

  test.each([
    ['S x=x= R'],
    ['S x=x= R 3 5'],
    ['S x=x= R ?'],
    ['Z x=x= R 3'],
    ['S x=x= %none'],
    ['S+A x=x= x=x= R 3'],
    ['S xo R 3'],
  ])('refuses %s', (row) => {
    expect(() => phraseBook(about, `metre 4/4\ntheme one 0-5: a word\n${row}`).metres).toThrow(RangeError);
  });
});
