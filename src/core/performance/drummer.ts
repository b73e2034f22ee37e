import { barTicks, beatAt, createRandom, hashText, type Metre } from '../base';
import {
  type DrumRow,
  type DrumSound,
  type DrumWay,
  type FeelMetre,
  type GridNote,
  readGrid,
  type Stroke,
} from '../feel';

/** MIDI velocities of the four strokes that a grid writes. The figures are ours. */
export const STROKES: Readonly<Record<Stroke, number>> = { ghost: 38, soft: 62, plain: 88, accent: 112 };

/** A stroke before it is moved off the grid. */
export interface Hit {
  readonly sound: DrumSound;
  /** Ticks from the beginning of the bar, straight. */
  readonly start: number;
  readonly duration: number;
  readonly velocity: number;
}

/** What decides how a bar is played: the same numbers give the same bar. Without a seed it is played as written. */
export interface Turn {
  readonly seed: number | null;
  /** Index of the bar as it is played, from the beginning of the round. */
  readonly index: number;
  readonly fill: 'none' | 'phrase' | 'section';
  /** Where the bar stands in the form, which asks for other hats or another kick. */
  readonly place: Place;
}

/** A bar's place in the form, each counted from 0: its section, or half of a long one; its phrase; its bar in that. */
export interface Place {
  readonly section: number;
  readonly phrase: number;
  readonly bar: number;
}

const HAND: ReadonlySet<DrumSound> = new Set(['closed hat', 'open hat', 'ride']);
const isHand = ({ sound }: DrumRow): boolean => HAND.has(sound);

/** The pattern with other rows for what they play: one hand has hats and ride. */
function exchanged(rows: readonly DrumRow[], others: readonly DrumRow[]): readonly DrumRow[] {
  const sounds = new Set(others.map(({ sound }) => sound));
  const hand = others.some(isHand);
  return [...rows.filter((row) => !sounds.has(row.sound) && !(hand && isHand(row))), ...others];
}

/** The metre with the pattern that was chosen for it; what would undo the choice elsewhere in the form is left out. */
export function inWay(known: FeelMetre, way: DrumWay | null): FeelMetre {
  const drums = known.ways?.others.find(({ name }) => name === way)?.drums;
  if (drums === undefined) return known;
  const gridOf = (rows: readonly DrumRow[], sound: DrumSound) =>
    rows.find((row) => row.sound === sound)?.grid;
  const { variants } = known;
  const strokes = variants?.strokes.filter(
    ({ sound }) => gridOf(drums, sound) === gridOf(known.drums, sound),
  );
  return { ...known, drums, ...(variants && strokes ? { variants: { ...variants, strokes } } : {}) };
}

/** In its phrases' third bars the kick moves, or the snare; from section to section other hats lead (common practice; the rows are ours). */
function variedBy(place: Place, rows: readonly DrumRow[], { variants }: FeelMetre): readonly DrumRow[] {
  if (variants === undefined) return rows;
  const { hats, strokes } = variants;
  const hat = hats[(place.section % (hats.length + 1)) - 1];
  const stroke = place.bar === 2 ? strokes[place.phrase % strokes.length] : undefined;
  const withHats = hat === undefined ? rows : exchanged(rows, hat);
  return stroke === undefined ? withHats : exchanged(withHats, [stroke]);
}

/** Hands that keep time lean on the beats and pass lightly over what lies between; a train of strokes likewise. */
const KEEPS_TIME: ReadonlySet<DrumSound> = new Set(['closed hat', 'ride']);
const TRAIN = 6;

const isOnBeat = (metre: Metre, tick: number): boolean => beatAt(metre, tick).start === tick;

/** How a written hit of a row is struck: what keeps time gets lighter the farther it lies from the beat. */
function strokeOf(row: DrumRow, hit: GridNote, hits: readonly GridNote[], metre: Metre): Stroke {
  if (hit.stroke !== 'plain') return hit.stroke;
  const onBeat = (one: GridNote): boolean => isOnBeat(metre, one.start);
  const train = KEEPS_TIME.has(row.sound) || hits.length >= TRAIN;
  if (row.sound === 'foot hat') return 'soft';
  if (row.sound === 'kick') return onBeat(hit) ? 'plain' : 'soft';
  if (!train || !hits.some(onBeat)) return 'plain';
  const accented = hits.some(({ stroke }) => stroke === 'accent');
  if (onBeat(hit)) return accented && !KEEPS_TIME.has(row.sound) ? 'soft' : 'plain';
  const beat = beatAt(metre, hit.start);
  return (hit.start - beat.start) % (beat.length / 2) === 0 && KEEPS_TIME.has(row.sound) ? 'soft' : 'ghost';
}

function written(rows: readonly DrumRow[], metre: Metre): readonly Hit[] {
  return rows.flatMap((row) => {
    const hits = readGrid(row.grid, metre);
    return hits.map(
      (hit): Hit => ({
        sound:
          row.grid[Math.round((hit.start * row.grid.length) / barTicks(metre))] === 'o'
            ? 'open hat'
            : row.sound,
        start: hit.start,
        duration: hit.duration,
        velocity: STROKES[strokeOf(row, hit, hits, metre)],
      }),
    );
  });
}

/**
 * Ends of a fill by the number of steps in a bar, for the hand that plays it: from the first sign on they take the place of
 * the pattern. They are ours.
 */
const FILL_ENDS: Readonly<Record<number, readonly string[]>> = {
  16: [
    '------------xsxX',
    '----------x-xsX-',
    '------------sxxX',
    '--------xgsxX-x-',
    '--------s-x-xgxX',
    '----------xxX-xX',
  ],
  20: ['----------------xsxX', '--------------x-xsX-', '------------xgsxX-x-', '--------x---s-x-xgxX'],
  14: ['----------xsxX', '--------x-xsX-', '--------sxxxX-', '----x---s-x-xX'],
  12: ['---------xsX', '------x-xsxX', '------xsxX-x', '---------s-X', '------s-xx-X'],
  8: ['------xX', '----xsxX', '----x-sX', '----sxX-'],
  9: ['------xsX', '-----sxsX', '------x-X', '---x--sxX'],
  6: ['----xX', '---xsX', '---x-X', '---sxX'],
};

/** The part of a grid before a step, and silence after it. */
const before = (grid: string, step: number): string => grid.slice(0, step).padEnd(grid.length, '-');

/** Every fill of a metre: the feel's own, and its pattern with other ends on the drum that plays the feel's fill. */
export function fillsOf(known: FeelMetre): readonly (readonly DrumRow[])[] {
  if (known.fill.length === 0) return [];
  const hand = known.fill.find(({ sound }) => sound === 'snare' || sound === 'rim');
  const ends = hand === undefined ? [] : (FILL_ENDS[hand.grid.length] ?? []);
  const others = ends.map((end): readonly DrumRow[] => {
    const first = end.search(/[^-]/);
    const rows = known.drums.flatMap((row): readonly DrumRow[] => {
      if (row.sound === 'kick' || row.sound === 'foot hat' || row.grid.length !== end.length) return [row];
      return row.sound === hand?.sound ? [] : [{ ...row, grid: before(row.grid, first) }];
    });
    const pattern = known.drums.find(({ sound }) => sound === hand?.sound)?.grid ?? '';
    const played =
      hand === undefined || pattern.length !== end.length
        ? end
        : before(pattern, first).slice(0, first) + end.slice(first);
    return [...rows, { sound: hand?.sound ?? 'snare', grid: played, source: 'ours, no source' }];
  });
  return [known.fill, ...others];
}

/** Whether time is kept until the last quarter of the bar. */
const isShort = (rows: readonly DrumRow[]): boolean =>
  rows.some(
    ({ sound, grid }) =>
      KEEPS_TIME.has(sound) && [...grid].findLastIndex((sign) => sign !== '-') >= grid.length / 2,
  );

const chanceOf = (sign: string | undefined): number => (/[1-9]/.test(sign ?? '') ? Number(sign) / 10 : 0);

/** Softly added strokes: ghosts on drums and soft ones elsewhere, never where that drum or its other hat sounds already. */
function dressed(hits: readonly Hit[], rows: readonly DrumRow[], metre: Metre, seed: string): readonly Hit[] {
  const struck = new Set(hits.map(({ sound, start }) => `${sound.endsWith('hat') ? 'hat' : sound} ${start}`));
  return rows.flatMap(({ sound, grid }) => {
    const step = barTicks(metre) / grid.length;
    const { next } = createRandom(hashText(`${seed} ${sound}`));
    return [...grid].flatMap((sign, index): readonly Hit[] => {
      const played = next() < chanceOf(sign);
      const place = `${sound.endsWith('hat') ? 'hat' : sound} ${index * step}`;
      if (!played || struck.has(place)) return [];
      const onBeat = isOnBeat(metre, index * step);
      const ghost = sound === 'snare' || sound === 'rim' || (sound === 'closed hat' && !onBeat);
      const stroke = ghost ? 'ghost' : 'soft';
      return [{ sound, start: index * step, duration: step, velocity: STROKES[stroke] }];
    });
  });
}

/**
 * One bar of drums. With a seed every bar is played a little otherwise: dressed with ghost strokes, ended by one of the
 * fills, the longer ones where a section ends.
 */
export function drumBar(
  known: FeelMetre,
  even: boolean,
  metre: Metre,
  { seed, index, fill, place }: Turn,
): readonly Hit[] {
  const pattern = even && known.evenBars !== undefined ? known.evenBars : known.drums;
  const text = `${seed ?? 0} drums ${index}`;
  const fills = fill === 'none' ? [] : fillsOf(known);
  if (fills.length > 0) {
    if (seed === null) return written(known.fill, metre);
    const fitting = fills.filter((rows) => fill === 'section' || rows === known.fill || isShort(rows));
    const chosen = Math.floor(createRandom(hashText(`${text} fill`)).next() * fitting.length);
    return written(fitting[chosen] ?? known.fill, metre);
  }
  if (seed === null) return written(pattern, metre);
  const hits = written(variedBy(place, pattern, known), metre);
  return [...hits, ...dressed(hits, known.dressing ?? [], metre, text)];
}
