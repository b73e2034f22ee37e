import { barName, capitalised, counted, type LineNote, midiOf, samePitch } from '../base';
import { rangeOf } from '../fretboard';
import {
  type InstrumentSettings,
  instrumentOf,
  type Lesson,
  type LinePiece,
  lineRequest,
  readPiece,
} from '../lesson';
import { type LineNotes, withoutChanges } from '../line';
import { formatPitchIn } from '../theory';

/** A bar of which the neck does not have every note, as it can be played there. */
export interface NeckChange {
  /** Index of the written bar. */
  readonly bar: number;
  readonly notes: LineNotes[number];
  /** `Bar 3: 2 notes an octave higher.` */
  readonly what: string;
  /** Why, in sentences. */
  readonly why: readonly string[];
}

const OCTAVE = 12;

/** What it costs beside the intervals that become other ones, in half steps: a note that moves, one that turns round, a tie that breaks (ours). */
const PER_NOTE = 0.5;
const TURNED = 6;
const BROKEN_TIE = 48;

/** What is lost over a bar line weighs less than what is lost within the bar (ours). */
const OVER_BAR_LINE = 0.5;

type Range = ReturnType<typeof rangeOf>;

const lies = ({ lowest, highest }: Range, midi: number): boolean => midi >= lowest && midi <= highest;

/** How many octaves a pitch must move to lie in the range; 0 where it does, or no octave of it does. */
function octavesInto(range: Range, midi: number): number {
  const way = midi < range.lowest ? 1 : -1;
  for (let octaves = 0; Math.abs(octaves) <= 4; octaves += way) {
    if (lies(range, midi + octaves * OCTAVE)) return octaves;
  }
  return 0;
}

function moved(note: LineNote, octaves: number): LineNote {
  if (octaves === 0) return note;
  const { pins: _, ...plain } = note;
  return { ...plain, pitch: { ...note.pitch, octave: note.pitch.octave + octaves } };
}

/** A note before a bar or behind it: as the line has it, and as it can be played. */
interface Beside {
  readonly own: LineNote;
  readonly now: LineNote;
}

interface Neighbours {
  readonly before: Beside | null;
  readonly after: Beside | null;
}

/** How much of the tune's contour is lost between notes that follow each other. */
function lostBetween(own: readonly LineNote[], now: readonly LineNote[]): number {
  return own.slice(1).reduce((cost, note, index) => {
    const [ownBefore, before, after] = [own[index], now[index], now[index + 1]];
    if (!ownBefore || !before || !after) return cost;
    const was = midiOf(note.pitch) - midiOf(ownBefore.pitch);
    const is = midiOf(after.pitch) - midiOf(before.pitch);
    const tie = ownBefore.tiedOn === true && was === 0 && is !== 0 ? BROKEN_TIE : 0;
    return cost + Math.abs(Math.abs(is) - Math.abs(was)) + (was * is < 0 ? TURNED : 0) + tie;
  }, 0);
}

/** Smaller leaps hold a figure together; a greater one, or a silence, parts it from what stands beside it (ours). */
const LEAP = 7;

/** The places of the figures that some notes stand in: runs of notes without a silence or a great leap between them. */
function figuresAround(notes: readonly LineNote[], places: readonly number[]): ReadonlySet<number> {
  const joined = (first: LineNote | undefined, second: LineNote | undefined) =>
    first !== undefined &&
    second !== undefined &&
    first.start + first.duration >= second.start &&
    Math.abs(midiOf(second.pitch) - midiOf(first.pitch)) < LEAP;
  const found = new Set<number>();
  for (const place of places) {
    let [from, to] = [place, place];
    while (joined(notes[from - 1], notes[from])) from -= 1;
    while (joined(notes[to], notes[to + 1])) to += 1;
    for (let at = from; at <= to; at += 1) found.add(at);
  }
  return found;
}

/** A bar as it can be played in a range: notes that must move, alone or with their figures, whichever leaves more of the contour. */
function fitted(range: Range, notes: readonly LineNote[], { before, after }: Neighbours): LineNotes[number] {
  const needs = notes.map(({ pitch }) => octavesInto(range, midiOf(pitch)));
  const off = needs.flatMap((octaves, place) => (octaves === 0 ? [] : [place]));
  const octaves = needs[off[0] ?? -1] ?? 0;
  if (octaves === 0) return notes;
  const figures = figuresAround(notes, off);
  const alone = notes.map((note, place) => moved(note, needs[place] ?? 0));
  const together = notes.map((note, place) => moved(note, figures.has(place) ? octaves : 0));
  const ways = together.every(({ pitch }) => lies(range, midiOf(pitch))) ? [alone, together] : [alone];
  const cost = (way: readonly LineNote[]) => {
    const lost = (from: Beside | null, to: Beside | null) =>
      from === null || to === null ? 0 : lostBetween([from.own, to.own], [from.now, to.now]);
    const besides = notes.flatMap((own, place) => {
      const now = way[place];
      return now === undefined ? [] : [{ own, now }];
    });
    return (
      lostBetween(notes, way) +
      OVER_BAR_LINE * (lost(before, besides[0] ?? null) + lost(besides.at(-1) ?? null, after)) +
      PER_NOTE * way.filter((note, place) => note !== notes[place]).length
    );
  };
  return ways.reduce((best, way) => (cost(way) < cost(best) ? way : best), alone);
}

function sentencesOf(
  range: Range,
  notes: readonly LineNote[],
  now: readonly LineNote[],
  name: (note: LineNote) => string,
): Pick<NeckChange, 'what' | 'why'> {
  const others = notes.flatMap((note, place) => {
    const after = now[place];
    return after === undefined || samePitch(note.pitch, after.pitch)
      ? []
      : [{ note, octaves: after.pitch.octave - note.pitch.octave }];
  });
  const ways = new Map<number, number>();
  for (const { octaves } of others) ways.set(octaves, (ways.get(octaves) ?? 0) + 1);
  const far = (octaves: number) =>
    `${Math.abs(octaves) === 1 ? 'an octave' : `${Math.abs(octaves)} octaves`} ${octaves > 0 ? 'higher' : 'lower'}`;
  const off = others.filter(({ note }) => !lies(range, midiOf(note.pitch)));
  const low = off.find(({ note }) => midiOf(note.pitch) < range.lowest);
  const high = off.find(({ note }) => midiOf(note.pitch) > range.highest);
  return {
    what: `${[...ways].map(([octaves, count]) => `${counted(count, 'note')} ${far(octaves)}`).join(', ')}.`,
    why: [
      ...(low ? [`${name(low.note)} lies below the lowest string.`] : []),
      ...(high ? [`${name(high.note)} lies beyond the last fret.`] : []),
      ...(off.length < others.length
        ? ['What stands beside it goes along, so that the tune keeps its shape.']
        : []),
    ],
  };
}

/**
 * The bars of a line that a neck does not have every note of, as they can be played there: by octaves, so that each note
 * keeps its name. What no octave brings onto the neck stays, for the lesson check to tell.
 * @param settings - the neck that the line is to be played on
 */
export function neckChanges(
  piece: LinePiece,
  settings: InstrumentSettings,
  noteNames: Lesson['noteNames'] = 'letters',
): readonly NeckChange[] {
  const { chart } = readPiece(piece);
  const range = rangeOf(instrumentOf(settings));
  const line = piece.bars.map(({ notes }) => notes);
  const alone = (note: LineNote): LineNote => moved(note, octavesInto(range, midiOf(note.pitch)));
  let before: Beside | null = null;
  return line.flatMap((notes, bar): NeckChange[] => {
    const next = line.slice(bar + 1).find((each) => each.length > 0)?.[0];
    const now = fitted(range, notes, {
      before,
      after: next === undefined ? null : { own: next, now: alone(next) },
    });
    const [own, played] = [notes.at(-1), now.at(-1)];
    if (own && played) before = { own, now: played };
    if (now.every((note, place) => note === notes[place])) return [];
    const { what, why } = sentencesOf(range, notes, now, ({ pitch }) => formatPitchIn(noteNames, pitch));
    const name = capitalised(barName(chart.bars[bar]?.number ?? bar + 1));
    return [{ bar, notes: now, what: `${name}: ${what}`, why }];
  });
}

/**
 * The piece with what brings it onto a neck, but for what is refused.
 * @param refused indices of bars
 */
export function withNeckChanges(
  piece: LinePiece,
  settings: InstrumentSettings,
  changes: readonly NeckChange[],
  refused: ReadonlySet<number>,
): LinePiece {
  if (changes.every(({ bar }) => refused.has(bar))) return piece;
  const { chart, key } = readPiece(piece);
  const line = withoutChanges(
    lineRequest(piece, chart, key, settings),
    piece.bars.map(({ notes }) => notes),
    changes,
    refused,
  );
  return {
    ...piece,
    bars: piece.bars.map((bar, index) => {
      const notes = line[index] ?? bar.notes;
      return notes === bar.notes ? bar : { ...bar, notes };
    }),
  };
}
