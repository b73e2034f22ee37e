import { midiNumber } from '../../base';
import { type Chord, formatName, type Key, parseChord, spellMidi } from '../../theory';
import type { FoundChord } from './found';
import type { Remarks } from './remarks';
import type { FileChoice } from './score-read';

/** A note that sounds in a bar, in ticks from the bar's beginning. */
export interface SoundingNote {
  readonly start: number;
  readonly end: number;
  readonly midi: number;
}

/** A bar whose chords are to be told from its notes. */
export interface SoundingBar {
  readonly notes: readonly SoundingNote[];
  /** In ticks. */
  readonly length: number;
  /** Ticks of a beat: no chord begins elsewhere. */
  readonly beat: number;
  readonly key: Key;
}

interface Kind {
  readonly suffix: string;
  /** Half steps above the root, the tones that must sound first. */
  readonly tones: readonly number[];
  /** How many of the tones, from the first, must sound. */
  readonly needed: number;
}

/** Triads, the sevenths of the trade, and what a guitar plays of them; a fifth may be missing (common practice, no source). */
const KINDS: readonly Kind[] = [
  { suffix: '', tones: [0, 4, 7], needed: 2 },
  { suffix: 'm', tones: [0, 3, 7], needed: 2 },
  { suffix: 'dim', tones: [0, 3, 6], needed: 3 },
  { suffix: 'aug', tones: [0, 4, 8], needed: 3 },
  { suffix: '7', tones: [0, 4, 10, 7], needed: 3 },
  { suffix: 'm7', tones: [0, 3, 10, 7], needed: 3 },
  { suffix: 'maj7', tones: [0, 4, 11, 7], needed: 3 },
  { suffix: 'm7b5', tones: [0, 3, 6, 10], needed: 4 },
  { suffix: 'dim7', tones: [0, 3, 6, 9], needed: 4 },
  { suffix: 'sus4', tones: [0, 5, 7], needed: 3 },
  { suffix: '5', tones: [0, 7], needed: 2 },
];

/*
 * How clear a chord must be, measured on what it costs to read it otherwise (chosen by the tests, no source): a share
 * of the sounding time.
 */
/** A tone that sounds for less is a passing one. */
const HEARD = 0.06;
const LEAST_INSIDE = 0.75;
const NO_FIFTH = 0.1;
const EACH_TONE_MORE = 0.04;
/** A lone third or fifth is a poor chord. */
const BARE = 0.2;
const ROOT_LOWEST = 0.05;
const SUSPENDED = 0.08;
/** Beats' worth of doubt that a change of chord within a bar must save. */
const CHANGE = 0.3;
/** What a beat costs of which nothing can be told. */
const UNKNOWN = 0.6;

interface Reading {
  readonly root: number;
  readonly suffix: string;
  readonly doubt: number;
}

function weightsOf(notes: readonly SoundingNote[], from: number, to: number) {
  const weights = Array.from({ length: 12 }, () => 0);
  let lowest: number | null = null;
  for (const { start, end, midi } of notes) {
    const time = Math.min(end, to) - Math.max(start, from);
    if (time <= 0) continue;
    const tone = midi % 12;
    weights[tone] = (weights[tone] ?? 0) + time;
    lowest = lowest === null ? midi : Math.min(lowest, midi);
  }
  return { weights, lowest, total: weights.reduce((sum, each) => sum + each, 0) };
}

/** How much of the sounding time a tone has. */
type Share = (tone: number) => number;

/** What speaks against reading a chord of a kind on a root; null where it cannot be that chord. */
function doubtOf(
  { suffix, tones, needed }: Kind,
  root: number,
  share: Share,
  lowest: number | null,
): number | null {
  if (tones.slice(0, needed).some((tone) => share(root + tone) < HEARD)) return null;
  const inside = tones.reduce((sum, tone) => sum + share(root + tone), 0);
  if (inside < LEAST_INSIDE) return null;
  const heard = tones.filter((tone) => share(root + tone) >= HEARD).length;
  return (
    1 -
    inside +
    (heard < tones.length ? NO_FIFTH : 0) +
    (heard < 3 ? BARE : 0) +
    EACH_TONE_MORE * Math.max(0, tones.length - 3) +
    (suffix === 'sus4' ? SUSPENDED : 0) -
    (lowest !== null && lowest % 12 === root ? ROOT_LOWEST : 0)
  );
}

/** The chord that the notes between two ticks make; null where they make none. */
function readingOf(notes: readonly SoundingNote[], from: number, to: number): Reading | null {
  const { weights, lowest, total } = weightsOf(notes, from, to);
  if (total === 0) return null;
  const share: Share = (tone) => (weights[tone % 12] ?? 0) / total;
  let best: Reading | null = null;
  for (let root = 0; root < 12; root += 1) {
    // Every kind begins with its root.
    if (share(root) < HEARD) continue;
    for (const kind of KINDS) {
      const doubt = doubtOf(kind, root, share, lowest);
      if (doubt !== null && (best === null || doubt < best.doubt - 1e-9))
        best = { root, suffix: kind.suffix, doubt };
    }
  }
  return best;
}

interface Stretch {
  readonly from: number;
  readonly reading: Reading | null;
}

/** The cheapest way to divide a bar into chords at its beats. */
function stretchesOf({ notes, length, beat }: SoundingBar): readonly Stretch[] {
  const beats = Math.max(1, Math.ceil(length / Math.max(1, beat) - 1e-6));
  const at = (index: number): number => Math.min(length, index * beat);
  const ways: { readonly cost: number; readonly stretches: readonly Stretch[] }[] = [
    { cost: 0, stretches: [] },
  ];
  for (let to = 1; to <= beats; to += 1) {
    let best: (typeof ways)[number] | null = null;
    for (let from = 0; from < to; from += 1) {
      const before = ways[from];
      if (before === undefined) continue;
      const reading = readingOf(notes, at(from), at(to));
      const cost =
        before.cost + (to - from) * (reading?.doubt ?? UNKNOWN) + (before.stretches.length > 0 ? CHANGE : 0);
      if (best === null || cost < best.cost - 1e-9) {
        best = { cost, stretches: [...before.stretches, { from: at(from), reading }] };
      }
    }
    ways.push(best ?? { cost: 0, stretches: [] });
  }
  return ways.at(-1)?.stretches ?? [];
}

function chordOf({ root, suffix }: Reading, key: Key): Chord | null {
  const name = formatName(spellMidi(midiNumber(48 + root), { key }));
  const chord = parseChord(`${name}${suffix}`);
  return chord.ok ? chord.value : null;
}

/**
 * The chords that the notes of each bar make, at the beats where they begin; where none can be told, the one before
 * sounds on, so a bar may have none. Only tones are read: which note is lowest decides no more than between chords of
 * the same tones.
 */
export function chordsByTriads(bars: readonly SoundingBar[]): readonly (readonly FoundChord[])[] {
  let last = '';
  return bars.map((bar) =>
    stretchesOf(bar).flatMap(({ from, reading }): FoundChord[] => {
      const chord = reading === null ? null : chordOf(reading, bar.key);
      if (chord === null || chord.symbol === last) return [];
      last = chord.symbol;
      return [{ at: from, chord }];
    }),
  );
}

/** In how many bars notes of three names or more sound, some of them together: chords rather than a tune. */
export function chordalBars(bars: readonly (readonly SoundingNote[])[]): number {
  return bars.filter((notes) => {
    const names = new Set(notes.map(({ midi }) => midi % 12));
    if (names.size < 3) return false;
    const starts = new Map<number, Set<number>>();
    for (const { start, midi } of notes) {
      starts.set(Math.round(start), (starts.get(Math.round(start)) ?? new Set()).add(midi % 12));
    }
    return [...starts.values()].some((tones) => tones.size > 1);
  }).length;
}

/** A part plays chords where it does in one of so many bars. */
const SELDOM = 4;

function playsChords(bars: readonly (readonly SoundingNote[])[]): boolean {
  const chordal = chordalBars(bars);
  return chordal > 0 && chordal * SELDOM >= bars.length;
}

/** A part of a file that may play chords. */
export interface SoundingPart {
  readonly id: string;
  readonly name: string;
  /** Its notes bar by bar. */
  readonly bars: readonly (readonly SoundingNote[])[];
}

const ALL_PARTS = 'all triads';
const triadsId = ({ id }: Pick<SoundingPart, 'id'>): string => `${id} triads`;

/** The triads of each part that plays some, those first that play the most, and in the end those of all together. */
export function triadChoices(parts: readonly SoundingPart[]): readonly FileChoice[] {
  const playing = parts
    .filter(({ bars }) => playsChords(bars))
    .sort((one, other) => chordalBars(other.bars) - chordalBars(one.bars));
  return [
    ...playing.map((part) => ({ id: triadsId(part), name: `Triads of “${part.name}”` })),
    ...(parts.length > 1 && playsChords(together(parts))
      ? [{ id: ALL_PARTS, name: 'Triads of all parts together' }]
      : []),
  ];
}

/** What sounds in each bar, whichever part plays it. */
const together = (parts: readonly SoundingPart[]): SoundingPart['bars'] =>
  (parts[0]?.bars ?? []).map((_, bar) => parts.flatMap(({ bars }) => bars[bar] ?? []));

/** The parts that a choice of {@link triadChoices} means, with a sentence that says so; null where it is none. */
export function triadParts<Part extends Pick<SoundingPart, 'id' | 'name'>>(
  source: string | null,
  parts: readonly Part[],
  remarks: Remarks,
): readonly Part[] | null {
  const part = parts.find((one) => triadsId(one) === source);
  if (part === undefined && source !== ALL_PARTS) return null;
  remarks.say(
    `The chords are read from the notes of ${part === undefined ? 'all parts together' : `the part “${part.name}”`}: look them over.`,
  );
  return part === undefined ? parts : [part];
}
