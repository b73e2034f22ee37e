import { beatsOf, beatTicks, isCompound, type Metre, rememberedFor } from '../../base';
import { type Contour, contourOf, type MetrePhrases, type Theme } from '../../feel';

/**
 * Bars that a teacher writes on the board beside those of the book: the notes of the chord in every useful order,
 * and walks by step through the whole bar or the end of it (common practice, no source).
 */
const ORDERS = [
  'R 3 5 8',
  'R 5 3 8',
  'R 8 5 3',
  'R 5 8 5',
  'R 3 5 3',
  'R 5 3 5',
  'R 5 R 5',
  '8 5 3 R',
  '8 5 R 5',
  'R _5 R 3',
  'R 3 5 6',
  'R 3 5 c',
];
const WALKS = [
  '8 9 8 7 6 5 4 3',
  'R _7 R 2 3 4 5 6',
  'R 2 3 4 5 6 7 8',
  '8 7 6 5 4 3 2 R',
  '5 4 3 2 R 2 3 4',
  'R 2 3 2 R 2 3 4',
  '5 6 7 8 7 6 5 4',
];

const words = (text: string): readonly string[] => text.split(' ');

/** So many notes of an order, gone through again where they do not reach; the last one leads where asked. */
function filled(text: string, count: number, leads: number): string {
  const roles = words(text);
  const own = Array.from({ length: count - leads }, (_, index) => roles[index % roles.length] ?? 'R');
  return [...own, ...['>>>', '>>', '>'].slice(3 - leads)].join(' ');
}

const notesIn = (grid: string): number => grid.split('x').length - 1;

/** By beat of a bar, how many parts it has: two, three in compound time and in a long last beat. */
const partsOf = (metre: Metre): readonly number[] => {
  const part = beatTicks(metre) / (isCompound(metre) ? 3 : 2);
  return beatsOf(metre).map(({ length }) => length / part);
};

const held = (parts: number): string => 'x'.padEnd(parts, '=');
const even = (beats: readonly number[]): string => beats.map(held).join('');
const total = (beats: readonly number[]): number => beats.reduce((sum, parts) => sum + parts, 0);

/** The grids of even beats: all of them, with a rest or a longer note at either end. */
function grids(beats: readonly number[]): readonly string[] {
  if (beats.length < 3) return [even(beats)];
  const [first = 2, second = 2] = beats;
  return [
    even(beats),
    `${'-'.repeat(first)}${even(beats.slice(1))}`,
    `${even(beats.slice(0, -1))}${'-'.repeat(beats.at(-1) ?? 2)}`,
    `${held(first + second)}${even(beats.slice(2))}`,
  ];
}

/** What is played in so many even beats. */
function rowsFor(count: number): readonly string[] {
  const orders = ORDERS.map((text) => filled(text, count, 0));
  const led = count > 1 ? ORDERS.map((text) => filled(text, count, 1)) : [];
  const runs = count > 3 ? [2, 3].map((leads) => filled('R 3 5', count, leads)) : [];
  return [...orders, ...led, ...runs, ...WALKS.map((text) => filled(text, count, 0))];
}

/** Half of a bar or a pickup, of two beats. */
const HALVES = ['x=x=', 'xxxx', 'x=xx', 'xxx=', '--x=', 'x==='];
const COMPOUND_HALVES = ['x==x==', 'xxxxxx', 'x==xxx', '---x==', 'x====='];

/** Bars that begin in beats and end in parts of them, for walks that set out late. */
const lateRuns = (beats: readonly number[]): readonly string[] =>
  beats.slice(1).flatMap((_, place) => {
    const before = beats.slice(0, place + 1);
    const left = 'x'.repeat(total(beats.slice(place + 1)));
    return [`${even(before)}${left}`, `${held(total(before))}${left}`];
  });

/** A theme of such bars in a metre: even beats, and eighths for walks; the same one again for the same phrases. */
export const manyOrders = rememberedFor(({ metre }: MetrePhrases): Theme => {
  const beats = partsOf(metre);
  const contours = { S: new Map<string, Contour>(), H: new Map<string, Contour>() };
  const add = (grid: string, text: string, slot: 'S' | 'H' = 'S'): void => {
    const id = `orders ${slot} ${grid} ${text}`;
    contours[slot].set(id, contourOf(slot, metre, grid, text, id));
  };
  for (const grid of grids(beats)) for (const text of rowsFor(notesIn(grid))) add(grid, text);
  const quick = 'x'.repeat(total(beats));
  for (const text of WALKS) for (const leads of [0, 2]) add(quick, filled(text, quick.length, leads));
  if (!isCompound(metre))
    for (const grid of lateRuns(beats)) for (const text of WALKS) add(grid, filled(text, notesIn(grid), 0));
  for (const grid of isCompound(metre) ? COMPOUND_HALVES : HALVES)
    for (const text of rowsFor(notesIn(grid))) add(grid, text, 'H');
  return {
    id: 'orders',
    words: 'the chord in every useful order, and walks',
    levels: { least: 0, most: 5 },
    contours: { S: [...contours.S.values()], H: [...contours.H.values()] },
    models: [],
    tune: null,
  };
});
