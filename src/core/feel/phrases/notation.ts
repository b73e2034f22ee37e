/**
 * How to write the phrases of a feel (twenty minutes for a first book)
 *
 * A book is a text, read once. Blank lines are free, and so are lines that begin with `;` (comments).
 *
 *     metre 4/4                            what follows is for bars of this metre
 *     pool up = R 3 5 > | R 3 5 6          contours with a name of their own; `%up` puts them in
 *     theme straight 2-5: four even quarters, up and answered down
 *     S x=x=x=x= %up | 8 5 6 7             slot, rhythm, contours
 *     A x=x=x=x= 8 6 5 > | 8 5 3 >
 *     S+A x=xxx=-- --xxx=xx R R 3 5 / 5 3 R >> > | R 5 6 8 / 8 6 5 >> >
 *
 * **Slots.** `S` statement, `A` answer, `L` lift (the high point), `C` cadence or breath, `T` turnaround (leads
 * into the beginning), `E` ending for good. Parts of a bar with several chords: `H` two beats, `H1` and `H2` only
 * the first or last two, `Q` one beat, `D` the long beat of 7/8. Two or four slots joined by `+` are a model: bars that are written as one
 * and stay together; a grid for each, the bars of a contour parted by `/`.
 *
 * **Rhythm.** One sign a step, the steps share the slot evenly (8 signs in 4/4 are eighths, 16 sixteenths, 12
 * triplets): `x` a note begins, `=` it goes on, `-` silence.
 *
 * **Pitches**, one for each `x`, counted from one anchor, which the search puts where the line needs it, even
 * below the neck when the contour begins higher:
 * - `R 2 3 4 5 6 7 8 9 10 …` steps of the chord's scale; `_5` an octave lower. Degrees take the chord's quality;
 *   over a slash chord the anchor is the written bass note.
 * - `c` the chord's colour: its own seventh; on a plain major chord the sixth, on a plain minor one the ♭7.
 * - `b3` (into a major third) and `#4` (into 5): short notes only.
 * - `=` the note before once more.
 * - `>`, `>> >`, `>>> >> >` at the end of a bar: **leads**. They have no pitch of their own and are solved
 *   against the next chord's first note: step, half step, run, enclosure, dominant, nearest chord tone, by level.
 *   A bar that ends in a lead suits every change; give each slot some that do, and some that come to rest.
 * - Tags after a contour: `!co` only where the chord goes on from before (contours that begin on 3, 5, 6), `!st`
 *   only before the same chord, `!ch` only before another.
 *
 * **Themes.** `theme NAME LEAST-MOST: words`, with the levels whose lines it carries. The first theme of a metre
 * is the plainest, whole from level 0 (`theme basic 0-2`), with all six slots, `H` and `Q`: other themes borrow from
 * it what they lack. What a contour asks of a player is computed from its roles, rhythm and leads, so one theme
 * may hold contours of several levels. Good measure: four to six themes a feel, eight contours or more in `S` and
 * `A`, four or more in `L`, `C` and `T`; in riff feels six models or more in each theme, two and four bars long.
 *
 * Write the signature first and sing it; then the answer: the other way round, fuller or thinner. A breath is a
 * bar that holds or rests; a turnaround is a pickup with two leads; a lift goes to 8, 9 or 10. Operations on the
 * motif (inversion, fragment, sequence) are the plan's work, so contours of one slot should differ in shape.
 *
 * **Tunes.** A line of eight bars that is written as one: `tune NAME LEAST-MOST: words`, then eight rows, a bar each in
 * its order, with the slot, one rhythm and the ways to play it (the best first), then rows for `H1` and `H2`. Rhythms
 * and roles of the bars stay as they are written; the search chooses among the ways by what leads best. Bar 5 names the
 * ways of bar 1 first, so that the tune comes back. Tunes are of the book's first metre and stand in a text of their own.
 *
 *     tune answers-low 1-2: a call on one, the answer goes down
 *     S x=--xxx= R 5 5 R | R 3 3 5 | R _5 _5 R | 5 3 R R !co
 */
import type { Metre } from '../../base';
import { barTicks, beatTicks } from '../../base';
import {
  BAR_SLOTS,
  type BarSlot,
  type Beat,
  type Contour,
  type ContourTag,
  type MetrePhrases,
  PART_SLOTS,
  type PhraseBook,
  type PhraseModel,
  type Role,
  type Slot,
  type Theme,
  type TuneBar,
} from './types';

const TAGS: Readonly<Record<string, ContourTag>> = {
  '!co': 'goes on',
  '!st': 'before same',
  '!ch': 'before change',
};

const isBarSlot = (text: string): text is BarSlot => BAR_SLOTS.some((slot) => slot === text);
const isSlot = (text: string): text is Slot => isBarSlot(text) || PART_SLOTS.some((slot) => slot === text);

const PART_BEATS: Readonly<Partial<Record<Slot, number>>> = { Q: 1, D: 1.5 };

/** Beats of a slot in a metre: three and a half quarters in 7/8. */
export const slotBeats = (slot: Slot, metre: Metre): number =>
  isBarSlot(slot) ? barTicks(metre) / beatTicks(metre) : (PART_BEATS[slot] ?? 2);

/** @throws RangeError for a text that is no role */
function roleOf(token: string): Role {
  const octave = token.startsWith('_') ? -1 : 0;
  const text = token.replace(/^_/u, '');
  if (text === '=') return { kind: 'repeat' };
  if (text === 'R') return { kind: 'step', step: 1, octave };
  if (text === 'c') return { kind: 'colour', octave };
  if (text === 'b3') return { kind: 'blue third', octave };
  if (text === '#4') return { kind: 'sharp fourth', octave };
  if (/^([2-9]|1[0-3])$/u.test(text)) return { kind: 'step', step: Number(text), octave };
  throw new RangeError(`Not a pitch of the phrase notation: ${token}`);
}

function beatsOf(grid: string, beats: number): Beat[] {
  const step = beats / grid.length;
  return [...grid].flatMap((sign, index): Beat[] => {
    if (sign !== 'x' && sign !== '=' && sign !== '-') throw new RangeError(`Not a rhythm: ${grid}`);
    if (sign !== 'x') return [];
    let end = index + 1;
    while (grid[end] === '=') end += 1;
    return [{ start: index * step, duration: (end - index) * step }];
  });
}

const isLead = (token: string | undefined): boolean => token !== undefined && /^>{1,3}$/u.test(token);

/** @throws RangeError where rhythm and pitches do not belong together */
export function contourOf(slot: Slot, metre: Metre, grid: string, text: string, id: string): Contour {
  const tokens = text.split(/\s+/u).filter((token) => token !== '');
  const tags = tokens.flatMap((token) => TAGS[token] ?? []);
  const pitches = tokens.filter((token) => !token.startsWith('!'));
  let leads = 0;
  while (isLead(pitches[pitches.length - 1 - leads])) leads += 1;
  const beats = beatsOf(grid, slotBeats(slot, metre));
  if (beats.length !== pitches.length)
    throw new RangeError(`${id}: ${grid} has not as many notes as ${text}`);
  return {
    id,
    slot,
    grid,
    text: pitches.join(' '),
    beats,
    roles: pitches.slice(0, pitches.length - leads).map(roleOf),
    leads,
    tags,
  };
}

interface Reading {
  readonly metre: Metre;
  readonly pools: Map<string, readonly string[]>;
  readonly theme: {
    readonly id: string;
    readonly words: string;
    readonly least: number;
    readonly most: number;
  };
  readonly contours: Partial<Record<Slot, Contour[]>>;
  readonly models: PhraseModel[];
  /** Bars of a tune as they come; null in a theme. */
  readonly tune: TuneBar[] | null;
}

function textsOf(body: string, pools: ReadonlyMap<string, readonly string[]>): readonly string[] {
  return body.split('|').flatMap((part) => {
    const text = part.trim();
    if (!text.startsWith('%')) return text === '' ? [] : [text];
    const pool = pools.get(text.slice(1));
    if (!pool) throw new RangeError(`There is no pool ${text}`);
    return pool;
  });
}

function readRow(reading: Reading, row: string): void {
  const [slotText = '', ...rest] = row.split(/\s+/u);
  const slots = slotText.split('+').filter(isSlot);
  const grids = rest.slice(0, slots.length);
  const body = rest.slice(slots.length).join(' ');
  const [first] = slots;
  if (!first || slots.join('+') !== slotText) throw new RangeError(`Not a row of a phrase book: ${row}`);
  const { metre, theme, contours, models } = reading;
  if (slots.length === 1) {
    const known = contours[first] ?? [];
    const row = textsOf(body, reading.pools).map((text) => {
      const id = `${theme.id} ${first} ${grids[0]} ${text}`;
      const same = known.find((one) => one.id === id);
      if (same) return same;
      const made = contourOf(first, metre, grids[0] ?? '', text, id);
      known.push(made);
      return made;
    });
    contours[first] = known;
    if (reading.tune && isBarSlot(first)) reading.tune.push({ slot: first, contours: row });
    return;
  }
  for (const text of textsOf(body, reading.pools)) {
    const id = `${theme.id} ${slotText} ${grids.join(' ')} ${text}`;
    const bars = text.split('/').map((bar, place) => {
      const slot = slots[place];
      if (!slot) throw new RangeError(`${id}: more bars than slots`);
      return contourOf(slot, metre, grids[place] ?? '', bar, `${id} ${place + 1}`);
    });
    if (bars.length !== slots.length) throw new RangeError(`${id}: fewer bars than slots`);
    models.push({ id, bars });
  }
}

const METRE = /^metre (\d+)\/([248])$/u;
const POOL = /^pool (\S+) = (.*)$/u;
const THEME = /^(theme|tune) (\S+) (\d)-(\d): (.+)$/u;
const UNITS: Readonly<Record<string, Metre['unit']>> = { '2': 2, '4': 4, '8': 8 };

const blankTheme = { id: '', words: '', least: 0, most: 5 };

const startReading = (metre: Metre): Reading => ({
  metre,
  pools: new Map(),
  theme: blankTheme,
  contours: {},
  models: [],
  tune: null,
});

/** Bars of a tune. */
const TUNE_BARS = 8;

function themeRead({ theme, contours, models, tune }: Reading): readonly Theme[] {
  const { id, words, least, most } = theme;
  if (tune && tune.length !== TUNE_BARS) throw new RangeError(`${id}: a tune has ${TUNE_BARS} bars`);
  return id === '' ? [] : [{ id, words, levels: { least, most }, contours, models, tune }];
}

/** The themes of one metre, from the rows below its name. */
function readMetre(metre: Metre, rows: readonly string[]): MetrePhrases {
  let reading = startReading(metre);
  const themes: Theme[] = [];
  for (const row of rows) {
    const [, pool, texts] = POOL.exec(row) ?? [];
    const [, kind, id, least, most, words] = THEME.exec(row) ?? [];
    if (pool !== undefined) reading.pools.set(pool, textsOf(texts ?? '', reading.pools));
    else if (id !== undefined) {
      themes.push(...themeRead(reading));
      const theme = { id, words: words ?? '', least: Number(least), most: Number(most) };
      const tune = kind === 'tune' ? [] : null;
      reading = { ...startReading(metre), pools: reading.pools, theme, tune };
    } else readRow(reading, row);
  }
  return { metre, themes: [...themes, ...themeRead(reading)] };
}

/**
 * The book of a text, which is read when its phrases are first asked for: of sixteen books a line needs one.
 * Asking for them throws a RangeError with the row that cannot be read: a fault of the book, found by its tests.
 */
export function phraseBook(about: Omit<PhraseBook, 'metres'>, text: string, tunes = ''): PhraseBook {
  let read: PhraseBook['metres'] | null = null;
  return {
    ...about,
    get metres() {
      read ??= metresIn(text, tunes);
      return read;
    },
  };
}

const rowsOf = (text: string): readonly string[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((row) => row !== '' && !row.startsWith(';'));

function metresIn(text: string, tunes: string): PhraseBook['metres'] {
  const metres: { readonly metre: Metre; readonly rows: string[] }[] = [];
  for (const row of rowsOf(text)) {
    const [, count, unit] = METRE.exec(row) ?? [];
    if (count !== undefined)
      metres.push({ metre: { count: Number(count), unit: UNITS[unit ?? ''] ?? 4 }, rows: [] });
    else if (metres.length === 0) throw new RangeError(`A book begins with its metre, not with ${row}`);
    else metres.at(-1)?.rows.push(row);
  }
  metres[0]?.rows.push(...rowsOf(tunes));
  const [first, ...others] = metres.map(({ metre, rows }) => readMetre(metre, rows));
  if (!first) throw new RangeError('A book begins with its metre');
  return [first, ...others];
}
