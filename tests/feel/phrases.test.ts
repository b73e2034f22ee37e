import { describe, expect, test } from 'vitest';
import { beatsInBar, beatTicks, type Metre } from '../../src/core/base';
import {
  type Contour,
  FEELS,
  type Feel,
  type MetrePhrases,
  PHRASE_BOOKS,
  slotBeats,
} from '../../src/core/feel';
import { phraseBook } from '../../src/core/feel/phrases/notation';
import { LEVELS } from '../../src/core/line';
import { EARLY_SEVENTH, rhythmLevelIn } from '../../src/core/line/level';
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
      const models = others
        .filter(({ levels, tune }) => levels.most >= 3 && tune === null)
        .map((theme) => theme.models.length);
      expect(Math.min(...models)).toBeGreaterThanOrEqual(6);
    }
  });
});

const tunes = rows.flatMap(({ name, feel, metre }) =>
  metre.themes.flatMap(({ id, levels, tune }) =>
    tune === null ? [] : [{ name: `${name}: ${id}`, feel, metre: metre.metre, levels, tune }],
  ),
);

/** The lowest level that may play a way of a bar. */
function levelOf(contour: Contour, metre: Metre, feel: Feel): number {
  const beat = beatTicks(metre);
  const onsets = contour.beats.map(({ start, duration }) => ({
    start: start * beat,
    duration: duration * beat,
  }));
  const roles = contour.roles.map((role) =>
    feel.bassRole.seventhsEarly && role.kind === 'colour' ? EARLY_SEVENTH : roleLevel(role),
  );
  return Math.max(...roles, contour.leads, rhythmLevelIn(onsets, metre, feel.bassRole));
}

describe('the tunes', () => {
  test('are several in every feel at every level but the first', () => {
    for (const { id } of FEELS)
      for (const level of LEVELS.filter((one) => one > 0)) {
        const fitting = tunes.filter(
          ({ feel, levels }) => feel.id === id && levels.least <= level && level <= levels.most,
        );
        expect(fitting.length, `${id} ${level}`).toBeGreaterThanOrEqual(2);
      }
  });

  test.each(tunes)(
    '$name has ways to play every bar at each of its levels',
    ({ feel, metre, levels, tune }) => {
      for (let level = levels.least; level <= levels.most; level += 1)
        tune.forEach(({ contours }, bar) => {
          const playable = contours.filter((contour) => levelOf(contour, metre, feel) <= level);
          expect(playable.length, `bar ${bar + 1} at level ${level}`).toBeGreaterThanOrEqual(2);
        });
    },
  );

  test.each(tunes)('$name is as silent as its feel', ({ feel, metre, tune }) => {
    const beats = beatsInBar(metre);
    const silent = tune.map(
      ({ contours }) => beats - (contours[0]?.beats ?? []).reduce((sum, { duration }) => sum + duration, 0),
    );
    const share = silent.reduce((sum, one) => sum + one, 0) / (beats * tune.length);
    expect(share).toBeGreaterThanOrEqual(feel.silence.least);
  });

  test.each(tunes)('$name keeps a signature, lifts at most once and turns round at its end', ({ tune }) => {
    const rhythms = tune.map(({ contours }) => contours[0]?.grid);
    expect(new Set(rhythms).size).toBeLessThanOrEqual(4);
    expect(rhythms.filter((grid) => grid === rhythms[0]).length).toBeGreaterThanOrEqual(3);
    expect(tune.filter(({ slot }) => slot === 'L').length).toBeLessThanOrEqual(1);
    expect(tune.at(-1)?.slot).toBe('T');
    for (const { contours } of tune) expect(new Set(contours.map(({ grid }) => grid)).size).toBe(1);
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

  test('reads the eight bars of a tune in their order, and its halves', () => {
    const bars = ['S', 'A', 'S', 'C', 'S', 'A', 'L', 'T'].map((slot) => `${slot} x=x=x=x= R 3 5 > | R 5 3 >`);
    const text = ['tune one 1-2: a word', ...bars, 'H1 x=x= R 5'].join('\n');
    const [plain, tune] = phraseBook(about, 'metre 4/4\ntheme plain 0-5: a word\nS x===x=== R 5', text)
      .metres[0].themes;
    expect(plain?.tune).toBe(null);
    expect(tune?.tune?.map(({ slot }) => slot).join('')).toBe('SASCSALT');
    expect(tune?.tune?.[0]?.contours.map((way) => way.text)).toEqual(['R 3 5 >', 'R 5 3 >']);
    expect(tune?.contours.H1?.length).toBe(1);
    const short = ['tune one 1-2: a word', ...bars.slice(1)].join('\n');
    expect(() => phraseBook(about, 'metre 4/4\ntheme plain 0-5: a word\nS x=== R', short).metres).toThrow(
      RangeError,
    );
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
