import { expect, test } from 'vitest';
import { engrave } from '../../src/score/engrave';
import { fontMark, glyphMark, textMark } from '../../src/score/ink';
import { textWidth } from '../../src/score/metrics/measure';
import { OUTLINES } from '../../src/score/metrics/outlines';
import { outlineOf } from '../../src/score/outline';
import type { ScoreFont, TextInk } from '../../src/score/types';
import { SCORE_FIXTURES } from '../support/score-fixtures';

/** The corners and handles of path data whose strokes are relative, from where its outlines begin. */
function pointsOf(data: string): readonly (readonly [number, number])[] {
  const points: (readonly [number, number])[] = [];
  let [at, start]: (readonly [number, number])[] = [
    [0, 0],
    [0, 0],
  ];
  for (const [, command, digits = ''] of data.matchAll(/([mlcqz])([^mlcqz]*)/g)) {
    const numbers = (digits.match(/-?[\d.]+/g) ?? []).map(Number);
    const [x, y] = at ?? [0, 0];
    for (let index = 0; index < numbers.length; index += 2)
      points.push([x + (numbers[index] ?? 0), y + (numbers[index + 1] ?? 0)]);
    at = command === 'z' ? start : points.at(-1);
    if (command === 'm') start = at;
  }
  return points;
}

const asText = (text: string, font: ScoreFont, size: number): TextInk =>
  fontMark(font === 'Bravura' ? 'note' : 'fret', text, 0, 0, font, size, false, false);

test.each([40, 32, 26, 15, 13.37])(
  "at size %s an outline is the font's, to a hundredth at every point",
  (size) => {
    for (const font of ['Bravura', 'Academico'] as const) {
      for (const [letter, data] of OUTLINES[font]) {
        const inFont = pointsOf(data).map((point) => point.map((value) => (value * size) / 1000));
        const drawn = pointsOf(outlineOf(asText(letter, font, size)) ?? '');
        expect(drawn.length).toBe(inFont.length);
        const off = drawn.flatMap((point, index) =>
          point.map((value, axis) => Math.abs(value - (inFont[index]?.[axis] ?? Number.NaN))),
        );
        expect(Math.max(...off), letter).toBeLessThan(0.0051);
      }
    }
  },
);

test('letters of a number stand one behind the other, each where its own outline is moved to', () => {
  const [one, two] = ['1', '2'].map((letter) => pointsOf(outlineOf(asText(letter, 'Academico', 15)) ?? ''));
  const twelve = pointsOf(outlineOf(asText('12', 'Academico', 15)) ?? '');
  expect(twelve.slice(0, one?.length)).toEqual(one);
  const second = twelve.slice(one?.length ?? 0);
  expect(second.length).toBe(two?.length);
  second.forEach(([x, y], index) => {
    expect(x).toBeCloseTo((two?.[index]?.[0] ?? Number.NaN) + textWidth('1', 15), 1);
    expect(y).toBeCloseTo(two?.[index]?.[1] ?? Number.NaN, 6);
  });
});

test('what is read, searched and copied has no outline, nor has a letter that is not in the table', () => {
  const size = 15;
  expect(outlineOf(textMark('chord', '5', 0, 0, { size }) as TextInk)).toBeNull();
  expect(outlineOf(textMark('section', 'A', 0, 0, { size, bold: true }) as TextInk)).toBeNull();
  expect(outlineOf(textMark('fret', '5 Ω', 0, 0, { size }) as TextInk)).toBeNull();
  expect(outlineOf(glyphMark('note', 0xe0a4, 0, 0))).not.toBeNull();
});

test('every fret, degree, finger and count has one, and nearly every sign of a bar', () => {
  const numbers = ['fret', 'degree', 'finger', 'counting'];
  const signs = ['note', 'rest', 'flag', 'dot', 'accidental', 'key-signature'];
  const without: string[] = [];
  let drawn = 0;
  for (const make of Object.values(SCORE_FIXTURES)) {
    const layout = engrave(make(), {
      width: 800,
      degrees: true,
      fingers: true,
      counting: true,
      barsPerSystem: 4,
      measureNumbers: true,
    });
    for (const ink of layout.systems.flatMap((system) => system.ink)) {
      if (ink.kind !== 'text') continue;
      if (numbers.includes(ink.role)) expect(ink.outline, `${ink.role} ${ink.text}`).toBeDefined();
      else if (signs.includes(ink.role)) drawn += 1;
      if (signs.includes(ink.role) && ink.outline === undefined) without.push(ink.text);
    }
  }
  expect(drawn).toBeGreaterThan(1000);
  expect(without.length / drawn).toBeLessThan(0.05);
});
