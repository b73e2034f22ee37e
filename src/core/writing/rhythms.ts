import {
  beatAt,
  beatTicks,
  halfStepsAboveC,
  type LineNote,
  type Metre,
  midiOf,
  type SpelledPitch,
  sameMetre,
  type Ticks,
  ticks,
} from '../base';
import { BAR_SLOTS, PHRASE_BOOKS, readGrid, rhythmCellsOf } from '../feel';
import { type Desk, harmonyAt, lengthOf, metreAt, notesIn, playable, refused, rewritten } from './context';
import { barAhead } from './passages';
import { HOME, midiOfAny } from './pitch';
import { letGoInto } from './ties';
import { BEGINNING, type Done, type Gesture, type Moment } from './types';
import { onLine } from './write';

/** When a note begins and how long it lasts, in ticks from the beginning of its bar. */
export interface Struck {
  readonly start: Ticks;
  readonly duration: Ticks;
}

/** A rhythm that the bar at hand can take. */
export interface RhythmChoice {
  /** Unique among those of one bar. */
  readonly id: string;
  /** Index of the bar that it is taken from; null for one of the feel's own. */
  readonly bar: number | null;
  /** Where its notes begin: `1 2& 4`. */
  readonly text: string;
  readonly gesture: Gesture;
}

/**
 * The bar at hand gets a rhythm: its notes keep their order, and where it has too few, the last one, or the note
 * before the bar, is struck again. The pencil stands on the first note, for its degree.
 * @param rhythm - in order, without overlapping; a note keeps the marks that the rhythm's have
 */
export function inRhythm(
  desk: Desk,
  bar: number,
  rhythm: readonly (Struck | LineNote)[],
  detail: string,
): Done {
  const own = notesIn(desk, bar);
  const notes = rhythm.flatMap((each, index): LineNote[] => {
    const source = own[Math.min(index, own.length - 1)];
    const given = 'pitch' in each ? each.pitch : null;
    const pitch =
      source?.pitch ?? homeIn(desk, { bar, tick: each.start }) ?? given ?? desk.instrument.openStrings.at(-1);
    const marks = 'pitch' in each ? each.marks : undefined;
    const { start, duration } = each;
    return pitch === undefined ? [] : [{ start, duration, pitch, ...(marks === undefined ? {} : { marks }) }];
  });
  if (sameRhythm(own, notes)) return refused(desk, 'same rhythm already');
  return rewritten(
    desk,
    letGoInto(desk, bar, notes),
    { bar, tick: notes[0]?.start ?? 0, next: null, from: null },
    {
      kind: 'rhythm',
      bars: [bar],
      detail,
      ...(notes.length < own.length ? { replaced: own.length - notes.length } : {}),
    },
  );
}

function inRhythmOf(desk: Desk, bar: number, from: number): Done {
  const whole = notesIn(desk, from);
  const length = lengthOf(desk, bar);
  // A longer bar's rhythm ends at the bar line.
  const rhythm = whole
    .filter(({ start }) => start < length)
    .map((note) =>
      note.start + note.duration <= length ? note : { ...note, duration: ticks(length - note.start) },
    );
  if (rhythm.length === 0) return refused(desk, 'bar before is silent');
  return inRhythm(desk, bar, rhythm, sameRhythm(rhythm, whole) ? String(from) : `${BEGINNING}${from}`);
}

/** What a note is before it has got its degree: the root nearest to the notes around. */
function homeIn(desk: Desk, at: Moment): SpelledPitch | null {
  const { chord } = harmonyAt(desk, at);
  const around = [...Array(at.bar).keys()].reverse().flatMap((bar) => notesIn(desk, bar).slice(-1))[0];
  if (chord === null) return around?.pitch ?? null;
  const middle = around === undefined ? HOME : midiOf(around.pitch);
  const octave = Math.floor((middle - halfStepsAboveC(chord.bass) + 6) / 12) - 1;
  const pitch = { letter: chord.bass.letter, alteration: chord.bass.alteration, octave };
  return (
    [0, 1, -1]
      .map((by) => ({ ...pitch, octave: octave + by }))
      .find((each) => playable(desk.instrument, midiOfAny(each))) ?? null
  );
}

const sameRhythm = (one: readonly Struck[], other: readonly Struck[]): boolean =>
  one.length === other.length &&
  one.every((note, index) => note.start === other[index]?.start && note.duration === other[index]?.duration);

/** Of some bars those with a rhythm that no other before them has. */
function differentRhythms(desk: Desk, bars: readonly number[]): readonly number[] {
  const found: number[] = [];
  for (const bar of bars) {
    const rhythm = notesIn(desk, bar);
    if (rhythm.length > 0 && !found.some((each) => sameRhythm(notesIn(desk, each), rhythm))) found.push(bar);
  }
  return found;
}

/** The rhythm of the bar before; asked again, the one before that which is another. */
export const rhythmOfBefore: Gesture = onLine((desk) => {
  const bar = barAhead(desk);
  if (bar === 0) return refused(desk, 'no bar before');
  const rhythms = differentRhythms(desk, [...Array(bar).keys()].reverse());
  const own = notesIn(desk, bar);
  const now = rhythms.findIndex((each) => sameRhythm(notesIn(desk, each), own));
  const from = rhythms[(now + 1) % rhythms.length];
  return from === undefined ? refused(desk, 'bar before is silent') : inRhythmOf(desk, bar, from);
});

/** The rhythm of another bar (index from 0), before or behind. */
const rhythmOf = (from: number): Gesture => onLine((desk) => inRhythmOf(desk, barAhead(desk), from));

/** The feel's own rhythms for a bar of this metre, at the piece's level and below: its cells, then its phrases'. */
function feelRhythms(desk: Desk, bar: number): readonly (readonly Struck[])[] {
  const written = desk.bars[bar];
  if (written === undefined) return [];
  const { metre } = written;
  const { feel, level } = desk.piece;
  const cells = (rhythmCellsOf(feel, metre) ?? [])
    .filter((cell) => cell.level <= level)
    .map(({ grid }) => readGrid(grid, metre));
  const beat = beatTicks(metre);
  const phrases = (PHRASE_BOOKS[feel]?.metres ?? [])
    .filter((each) => sameMetre(each.metre, metre))
    .flatMap(({ themes }) => themes.filter(({ levels }) => levels.least <= level))
    .flatMap(({ contours }) => BAR_SLOTS.flatMap((slot) => contours[slot] ?? []))
    .map(({ beats }) =>
      beats.map(({ start, duration }) => ({ start: ticks(start * beat), duration: ticks(duration * beat) })),
    );
  return [...cells, ...phrases].reduce<(readonly Struck[])[]>((found, rhythm) => {
    if (!found.some((each) => sameRhythm(each, rhythm))) found.push(rhythm);
    return found;
  }, []);
}

const inFeelRhythm = (rhythm: readonly Struck[]): Gesture =>
  onLine((desk) => inRhythm(desk, barAhead(desk), rhythm, 'feel'));

/** A rhythm of the feel; asked again, the next one. */
export const rhythmOfFeel: Gesture = onLine((desk) => {
  const bar = barAhead(desk);
  const rhythms = feelRhythms(desk, bar);
  const now = rhythms.findIndex((each) => sameRhythm(each, notesIn(desk, bar)));
  const next = rhythms[(now + 1) % rhythms.length];
  return next === undefined ? refused(desk, 'feel has no rhythm') : inRhythm(desk, bar, next, 'feel');
});

/** `1 2& 4`: where notes begin, counted in beats; sixteenths and triplets by what they are counted with. */
function onsetsText(rhythm: readonly Struck[], metre: Metre): string {
  return rhythm
    .map(({ start }) => {
      const beat = beatAt(metre, start);
      const within = (start - beat.start) / beat.length;
      const sign = COUNTS.find(([share]) => Math.abs(within - share) < 0.001)?.[1];
      return `${beat.index + 1}${sign ?? '+'}`;
    })
    .join(' ');
}

const COUNTS = [
  [0, ''],
  [1 / 4, 'e'],
  [1 / 3, 't'],
  [1 / 2, '&'],
  [2 / 3, 'l'],
  [3 / 4, 'a'],
] as const;

/** Every rhythm that the bar at hand can take: those of the line's other bars, then the feel's own. */
export function rhythmChoices(desk: Desk): readonly RhythmChoice[] {
  const bar = barAhead(desk);
  const metre = metreAt(desk, bar);
  const own = notesIn(desk, bar);
  const others = desk.piece.bars.flatMap((_, index) => (index === bar ? [] : [index]));
  const inLine = differentRhythms(desk, others)
    .filter((each) => !sameRhythm(notesIn(desk, each), own))
    .map((from) => ({
      id: `bar ${from}`,
      bar: from,
      text: onsetsText(notesIn(desk, from), metre),
      gesture: rhythmOf(from),
    }));
  const inFeel = feelRhythms(desk, bar)
    .filter((rhythm) => !sameRhythm(rhythm, own))
    .map((rhythm, index) => ({
      id: `feel ${index}`,
      bar: null,
      text: onsetsText(rhythm, metre),
      gesture: inFeelRhythm(rhythm),
    }));
  return [...inLine, ...inFeel];
}
