/**
 * Notes with one head, and rests, which are all that a bass line has: their ink is where the engraving library puts it
 * (`../vexflow/signs.ts`, which draws what has several heads), worked out from the font's tables without making the
 * library's objects. Units are those of the ink: a staff space is ten, the staff's top line is at 0.
 */
import { fontMark, glyphMark, lineMark, type Mark, MUSIC_SIZE } from '../ink';
import { glyphOf, textWidth } from '../metrics/measure';
import { tidy } from './tidy';
import type { SignSpec } from './types';

/** Glyphs by SMuFL 1.4. */
const HEADS = { whole: 0xe0a2, half: 0xe0a3, black: 0xe0a4 } as const;
const CROSSES = { whole: 0xe0a7, half: 0xe0a8, black: 0xe0a9 } as const;
const RESTS: Readonly<Record<number, number>> = {
  1: 0xe4e3,
  2: 0xe4e4,
  4: 0xe4e5,
  8: 0xe4e6,
  16: 0xe4e7,
  32: 0xe4e8,
  64: 0xe4e9,
};
/** With the stem upwards; downwards it is the next one. */
const FLAGS: Readonly<Record<number, number>> = { 8: 0xe240, 16: 0xe242, 32: 0xe244, 64: 0xe246 };
const ACCIDENTALS: Readonly<Record<string, number>> = {
  b: 0xe260,
  n: 0xe261,
  '#': 0xe262,
  '##': 0xe263,
  bb: 0xe264,
};
const BRACKETS = { left: 0xe26a, right: 0xe26b } as const;
const DOT = 0xe1e7;
/** The dot of a rest that reaches high stands beside its highest hook. */
const RAISED_DOTS: Readonly<Record<number, number>> = { 32: 10, 64: 10 };

const HALF_SPACE = 5;
const MIDDLE_LINE = 20;
/** The first ledger line over the staff, and the first under it. */
const LEDGERS = { over: -10, under: 50 } as const;
const LEDGER_REACH = 4;
const LEDGER_STROKE = 1.6;
export const STEM_STROKE = 1.5;
export const STEM = 35;
/** Heights from which on a stem is longer: more than three and a half spaces from the middle line. */
const FAR = 7;
/** A flag begins over the stem's end. */
const FLAG_OVERLAP = 3;
const ACCIDENTAL_GAP = 3;
const COURTESY_SIZE = 32;
const DOT_GAP = 2;

const widthOf = (code: number): number => textWidth(String.fromCodePoint(code), MUSIC_SIZE);

/** Middle of a head. */
export const headMiddle = (height: number): number => MIDDLE_LINE - height * HALF_SPACE;

function headOf({ value, ghost }: SignSpec): number {
  const codes = ghost ? CROSSES : HEADS;
  return value === 1 ? codes.whole : value === 2 ? codes.half : codes.black;
}

/** 1 for a stem that leads up from its head, −1 for one that leads down. */
export const directionOf = ({ stem }: SignSpec): 1 | -1 => (stem === 'up' ? 1 : -1);

/** How much longer than usual the stem of a head far from the middle line is that leads there. */
export function farther(spec: SignSpec): number {
  const leadsThere = (spec.stem === 'up') === spec.height < 0;
  return leadsThere ? Math.max(0, Math.abs(spec.height) - FAR) * HALF_SPACE : 0;
}

/** Where the stem of a head stands whose middle is at `centre`. */
export function stemAt(spec: SignSpec, centre: number): number {
  const width = widthOf(headOf(spec));
  const left = centre - width / 2;
  return (spec.stem === 'up' ? left + width : left) - (directionOf(spec) * STEM_STROKE) / 2;
}

/**
 * A note or rest with its accidental, dot and ledger lines, and unless it is beamed with its stem and flag; the
 * middle of its head is at x = 0.
 */
export function singleInk(spec: SignSpec, beamed: boolean): readonly Mark[] {
  if (spec.kind === 'rest') return restMarks(spec);
  const code = headOf(spec);
  const width = widthOf(code);
  const y = headMiddle(spec.height);
  const [stem, ...flag] = beamed || spec.value === 1 ? [] : stemMarks(spec, y);
  return tidy([
    ...ledgerMarks(spec.height, width),
    ...(stem ? [stem] : []),
    glyphMark('note', code, -(width / 2), y),
    ...accidentalMarks(spec, -(width / 2) - ACCIDENTAL_GAP, y),
    ...dotMarks(spec, width / 2 + (spec.stem === 'up' ? flagWidth(flag) : 0), y),
    ...flag,
  ]);
}

function restMarks(spec: SignSpec): readonly Mark[] {
  const code = RESTS[spec.value] ?? 0;
  const half = widthOf(code) / 2;
  // A whole rest hangs from the fourth line.
  const rest = glyphMark('rest', code, -half, spec.value === 1 ? MIDDLE_LINE - 2 * HALF_SPACE : MIDDLE_LINE);
  return [rest, ...dotMarks({ ...spec, height: 0 }, half, MIDDLE_LINE - (RAISED_DOTS[spec.value] ?? 0))];
}

function ledgerMarks(height: number, width: number): readonly Mark[] {
  const y = headMiddle(height);
  const reach = width / 2 + LEDGER_REACH;
  const marks: Mark[] = [];
  for (let line: number = LEDGERS.over; line >= y; line -= 2 * HALF_SPACE)
    marks.push(lineMark('ledger-line', -reach, line, reach, line, LEDGER_STROKE));
  for (let line: number = LEDGERS.under; line <= y; line += 2 * HALF_SPACE)
    marks.push(lineMark('ledger-line', -reach, line, reach, line, LEDGER_STROKE));
  return marks;
}

/** The stem, and the flag of a value that has one. */
function stemMarks(spec: SignSpec, y: number): readonly Mark[] {
  const up = directionOf(spec);
  const x = stemAt(spec, 0);
  const first = FLAGS[spec.value];
  const code = first === undefined ? null : spec.stem === 'up' ? first : first + 1;
  const { top = 0, bottom = 0 } = code === null ? {} : (glyphOf(String.fromCodePoint(code)) ?? {});
  const length = STEM + Math.max(0, (top - bottom) * 2 * HALF_SPACE - STEM) + farther(spec);
  const tip = y - length * up;
  if (code === null) return [lineMark('stem', x, y, x, tip, STEM_STROKE)];
  const reach = spec.stem === 'up' ? top : bottom;
  return [
    lineMark('stem', x, y, x, tip + FLAG_OVERLAP * up, STEM_STROKE),
    glyphMark('flag', code, x - STEM_STROKE / 2, tip + reach * 2 * HALF_SPACE),
  ];
}

const flagWidth = (flag: readonly Mark[]): number =>
  flag.reduce((width, mark) => width + (mark.kind === 'text' ? textWidth(mark.text, mark.size) : 0), 0);

/** A courtesy accidental stands in brackets and is smaller. */
function accidentalMarks({ accidental, courtesy }: SignSpec, right: number, y: number): readonly Mark[] {
  const code = accidental === null ? undefined : ACCIDENTALS[accidental];
  if (code === undefined) return [];
  const text = String.fromCodePoint(...(courtesy ? [BRACKETS.left, code, BRACKETS.right] : [code]));
  const size = courtesy ? COURTESY_SIZE : MUSIC_SIZE;
  return [fontMark('accidental', text, right - textWidth(text, size), y, 'Bravura', size, false, false)];
}

/** A dot stands in a space: beside a head on a line, in the one above. */
const dotMarks = ({ dots, height }: SignSpec, right: number, y: number): readonly Mark[] =>
  dots === 0 ? [] : [glyphMark('dot', DOT, right + DOT_GAP, height % 2 === 0 ? y - HALF_SPACE : y)];
