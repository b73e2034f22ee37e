/** Students who play a line with known faults, and how an ear is judged by them. */
import { createRandom } from '../../src/core/base';
import { type Expected, type ExpectedNote, expectedOf, type HeardNote } from '../../src/core/listening';
import type { Performance } from '../../src/core/performance';
import { createNoteEar } from '../../src/sound';
import { lineOf, roundsOf } from './players';
import { RATE, type StruckNote } from './studio';

/** What a student does to a note. */
export type Fault = 'wrong' | 'late' | 'missing' | 'extra' | 'filled';

export interface Played {
  readonly expected: Expected;
  readonly performance: Performance;
  /** What is really played, by its start. */
  readonly struck: readonly StruckNote[];
  /** The fault of each written note; null where it is played as written. */
  readonly faults: readonly (Fault | null)[];
  readonly seconds: number;
}

const struckAs = ({ start, end, midi }: ExpectedNote, velocity: number): StruckNote => ({
  start,
  end,
  midi,
  velocity,
});

/** Lines of two kinds: space and syncopation, and quarters that walk down to low B and up to the highest frets. */
export const LINES = {
  space: [
    '2 A1 q, 3 C2 8, 3& E2 8, 4 A1 q',
    '1 D2 q, 1& D2 8, 3 A1 q',
    '2 E1 8, 2& G1 8, 3 B1 q, 4 E2 8',
    '1 A1 q., 2& G1 8, 3 A1 h',
  ],
  walking: [
    '1 A1 q, 2 G1 q, 3 E1 q, 4 D1 q',
    '1 B0 q, 2 D1 q, 3 F1 q, 4 A1 q',
    '1 E2 q, 2 G2 q, 3 B2 q, 4 D3 q',
    '1 C3 q, 2 A2 q, 3 E2 8, 3& E2 8, 4 A1 q',
  ],
  repeated: [
    '1 A1 8, 1& A1 8, 2 A1 8, 2& A1 8, 3 C2 8, 3& C2 8, 4 E2 8',
    '1 D2 16, 1e D2 16, 1& D2 8, 2 A1 q, 3 D2 8, 4 A1 8',
    '1 E1 q, 2 E1 8, 2& E1 8, 3 G1 q, 4 B1 q',
    '1 A1 h, 3 A1 8, 3& C2 8, 4 E2 8',
  ],
} as const;

/**
 * A student at a line: two rounds of it.
 * @param often - how many of the notes have a fault of the given kinds, from 0 to 1
 */
export function playedBy(
  line: readonly string[],
  tempo: number,
  faults: readonly Fault[],
  often: number,
  seed = 1,
): Played {
  const { next } = createRandom(seed);
  const performance = lineOf(tempo, line);
  const expected = expectedOf(roundsOf(performance, 2, 0.8));
  const struck: StruckNote[] = [];
  const made = expected.notes.map((note, index): Fault | null => {
    const velocity = 80 + Math.round(next() * 24);
    const fault = next() < often ? (faults[Math.floor(next() * faults.length)] ?? null) : null;
    const plain = struckAs(note, velocity);
    const following = expected.notes[index + 1]?.start ?? note.end + 1;
    const gap = following - note.end;
    switch (fault) {
      case 'missing':
        return fault;
      case 'wrong':
        struck.push({ ...plain, midi: note.midi + ([-2, -1, 1, 2, 3][Math.floor(next() * 5)] ?? 1) });
        return fault;
      case 'late': {
        const late = 0.01 + next() * 0.07;
        struck.push({ ...plain, start: note.start + late, end: Math.max(note.end, note.start + late + 0.1) });
        return fault;
      }
      case 'extra':
        struck.push(plain);
        if (note.end - note.start < 0.3) return null;
        struck.splice(-1, 1, { ...plain, end: (note.start + note.end) / 2 });
        struck.push({ ...plain, start: (note.start + note.end) / 2, midi: note.midi + 5 });
        return fault;
      case 'filled':
        struck.push(plain);
        if (gap < 0.4) return null;
        struck.push({ ...plain, start: note.end + gap / 2, end: following - 0.03 });
        return fault;
      default:
        struck.push(plain);
        return null;
    }
  });
  return {
    expected,
    performance,
    struck: struck
      .sort((one, other) => one.start - other.start)
      // A string is stopped by the next note on it.
      .map((note, index, all) => ({ ...note, end: Math.min(note.end, all[index + 1]?.start ?? note.end) })),
    faults: made,
    seconds: Math.max(...expected.bars.map(({ end }) => end)) + 1,
  };
}

/**
 * Everything that an ear hears of a sound, taken in blocks as a browser hands them over.
 * @param output - what a loudspeaker played meanwhile, to be taken off
 */
export function hear(sound: Float32Array, { output = null }: { readonly output?: Float32Array | null } = {}) {
  const ear = createNoteEar(RATE);
  const heard: HeardNote[] = [];
  for (let from = 0; from < sound.length; from += 128)
    heard.push(...ear.push(sound.subarray(from, from + 128), output?.subarray(from, from + 128) ?? null));
  return { heard: [...heard, ...ear.finish()], deafness: ear.deafness(), below: ear.below() };
}

export interface Score {
  /** Harmonic mean of how many heard notes were played, and how many played ones were heard. */
  readonly f: number;
  /** Milliseconds between the begin of a note and where it was heard, the bias left in. */
  readonly onsets: readonly number[];
  readonly missed: readonly StruckNote[];
  readonly invented: readonly HeardNote[];
}

/** A note was heard where its begin is within 50 ms and its pitch within a quarter tone, octaves left out. */
const isSame = (struck: StruckNote, heard: HeardNote): boolean => {
  const apart = heard.midi === null ? 6 : Math.abs(heard.midi - struck.midi) % 12;
  return Math.abs(heard.start - struck.start) <= 0.05 && Math.min(apart, 12 - apart) <= 0.5;
};

/** Holds what was heard against what was played. Sounds without a pitch, of which nothing is said, are left out. */
export function scoreOf(struck: readonly StruckNote[], all: readonly HeardNote[]): Score {
  const heard = all.filter(({ midi }) => midi !== null);
  const taken = new Set<HeardNote>();
  const onsets: number[] = [];
  const missed: StruckNote[] = [];
  for (const note of struck) {
    const found = heard.find((each) => !taken.has(each) && isSame(note, each));
    if (found === undefined) missed.push(note);
    else {
      taken.add(found);
      onsets.push((found.start - note.start) * 1000);
    }
  }
  const invented = heard.filter((each) => !taken.has(each));
  const right = taken.size;
  return { f: (2 * right) / Math.max(1, struck.length + heard.length), onsets, missed, invented };
}

/** The value that so many of a hundred are below. */
export const share = (values: readonly number[], percent: number): number => {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor((percent / 100) * sorted.length))] ?? 0;
};
