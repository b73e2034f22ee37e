/**
 * Golden pictures: SVG files that a person can open (with the fonts Bravura and Academico at hand) and compare. One
 * mark a line, in staff-space tenths to a tenth, so that a change shows as the marks that moved. The layout is pure
 * arithmetic on the fonts' own tables, so the files are the same on every machine. After a wanted change, look at
 * the pictures and write them anew with `npx vitest run --project unit tests/score/golden.test.ts -u`.
 */
import { describe, expect, test } from 'vitest';
import { engrave } from '../../src/score/engrave';
import type { Ink, SystemLayout, TextInk } from '../../src/score/types';
import { SCORE_FIXTURES } from '../support/score-fixtures';

const tenth = (value: number): number => Math.round(value * 10) / 10;
const shorter = (data: string): string =>
  data.replace(/-?\d+\.\d+/g, (digits) => String(tenth(Number(digits))));
const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');

function lineOf(ink: Ink): string {
  if (ink.kind === 'path') {
    const stroke = ink.stroke > 0 ? ` fill="none" stroke="#000" stroke-width="${ink.stroke}"` : '';
    return `<path class="${ink.role}" d="${shorter(ink.d)}"${stroke}/>`;
  }
  const face = `font-family="${ink.font}" font-size="${tenth(ink.size)}"`;
  const look = `${ink.bold ? ' font-weight="bold"' : ''}${ink.italic ? ' font-style="italic"' : ''}`;
  return `<text class="${ink.role}" x="${tenth(ink.x)}" y="${tenth(ink.y)}" ${face}${look}>${contentsOf(ink)}</text>`;
}

function contentsOf({ text, runs }: TextInk): string {
  let rise = 0;
  const spans = runs?.map((run) => {
    const dy = tenth(rise - run.rise);
    rise = run.rise;
    return `<tspan dy="${dy}" font-size="${tenth(run.size)}">${escaped(run.text)}</tspan>`;
  });
  return spans?.join('') ?? escaped(text);
}

function svgOf(name: string, { width, height, scale, ink }: SystemLayout): string {
  const [wide, high] = [tenth(width / scale), tenth(height / scale)];
  const head = `<svg xmlns="http://www.w3.org/2000/svg" width="${wide}" height="${high}" viewBox="0 0 ${wide} ${high}">`;
  return `${[head, `<title>${name}</title>`, ...ink.map(lineOf), '</svg>'].join('\n')}\n`;
}

/** Between them: beams, ties, triplets, rests, accidentals, repeats, endings, a change announced, a tab alone. */
const GOLDEN = [
  { name: 'ties', system: 0 },
  { name: 'triplets', system: 0 },
  { name: 'seven-flats', system: 0 },
  { name: 'twelve-eight', system: 0 },
  { name: 'three-endings', system: 1 },
  { name: 'signatures-at-break', system: 0 },
  { name: 'way-through', system: 0 },
  { name: 'off-beats', system: 0, parts: 'tab' },
  { name: 'playing-signs', system: 0 },
  { name: 'playing-signs-2', system: 1, of: 'playing-signs' },
  { name: 'playing-signs-tab', system: 0, parts: 'tab', of: 'playing-signs' },
  { name: 'playing-signs-staff', system: 1, parts: 'staff', of: 'playing-signs' },
] as const;

describe('golden pictures', () => {
  test.each(GOLDEN)('$name', async ({ name, system, ...more }) => {
    const { of = name, ...options } = { of: undefined, ...more };
    const make = SCORE_FIXTURES[of];
    if (!make) throw new Error(`There is no fixture ${name}.`);
    const { systems } = engrave(make(), {
      width: 900,
      degrees: true,
      fingers: true,
      counting: true,
      positions: true,
      barsPerSystem: 4,
      measureNumbers: true,
      ...options,
    });
    const layout = systems[system];
    if (!layout) throw new Error(`${name} has no system ${system}.`);
    await expect(svgOf(name, layout)).toMatchFileSnapshot(`golden/${name}.svg`);
  });
});
