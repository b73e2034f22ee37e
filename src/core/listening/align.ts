import type { ExpectedNote, HeardNote } from './types';

/** A note that is written and heard, one that is only written, or one that was only heard: indices. */
export type Pairing =
  | { readonly expected: number; readonly heard: number }
  | { readonly expected: number; readonly heard: null }
  | { readonly expected: null; readonly heard: number };

/**
 * What an alignment is priced by; the figures are ours. A note that is left out and one that is too many cost one
 * each, so two notes are taken for one as long as that costs less than two.
 */
const PRICE = {
  /** At the edge of the window in which a note is looked for. */
  farthest: 0.9,
  /** An octave off: the ear may be wrong by one, and the string may ring so. */
  octave: 0.25,
  /** No pitch where one is written, and a pitch where none is. */
  noPitch: 0.35,
  otherPitch: 1.1,
} as const;

/** A note is looked for within this share of a beat around its place, between so many seconds. */
const WINDOW = { beat: 0.5, least: 0.12, most: 0.35 } as const;

/** Half steps within which a pitch is the written one: a bent or badly tuned string is still its note. */
export const IN_TUNE = 0.6;

/** Half steps between two pitches, octaves left out: from 0 to 6. */
export const apartWithinOctave = (one: number, other: number): number => {
  const apart = (((one - other) % 12) + 12) % 12;
  return Math.min(apart, 12 - apart);
};

function priceOfPitch({ midi, dead }: ExpectedNote, heard: HeardNote): number {
  if (dead || heard.midi === null) return dead === (heard.midi === null) ? 0 : PRICE.noPitch;
  if (Math.abs(heard.midi - midi) <= IN_TUNE) return 0;
  return apartWithinOctave(heard.midi, midi) <= IN_TUNE ? PRICE.octave : PRICE.otherPitch;
}

const windowOf = ({ beat }: ExpectedNote): number =>
  Math.min(WINDOW.most, Math.max(WINDOW.least, WINDOW.beat * beat));

/** What it costs to take one for the other; endless where they are too far apart. */
function priceOf(note: ExpectedNote, heard: HeardNote): number {
  const share = Math.abs(heard.start - note.start) / windowOf(note);
  return share > 1 ? Number.POSITIVE_INFINITY : share * PRICE.farthest + priceOfPitch(note, heard);
}

function alignAtOnce(expected: readonly ExpectedNote[], heard: readonly HeardNote[]): readonly Pairing[] {
  const width = heard.length + 1;
  // `best[e * width + h]` is the price of the first e written and the first h heard notes.
  const best = new Float64Array((expected.length + 1) * width);
  const at = (e: number, h: number): number => best[e * width + h] ?? Number.POSITIVE_INFINITY;
  const matched = (e: number, h: number): number => {
    const [note, sound] = [expected[e - 1], heard[h - 1]];
    return note === undefined || sound === undefined ? Number.POSITIVE_INFINITY : priceOf(note, sound);
  };
  for (let e = 0; e <= expected.length; e += 1) {
    for (let h = 0; h <= heard.length; h += 1) {
      if (e === 0 || h === 0) best[e * width + h] = e + h;
      else
        best[e * width + h] = Math.min(at(e - 1, h) + 1, at(e, h - 1) + 1, at(e - 1, h - 1) + matched(e, h));
    }
  }
  const pairings: Pairing[] = [];
  let [e, h] = [expected.length, heard.length];
  while (e > 0 || h > 0) {
    if (e > 0 && h > 0 && at(e, h) === at(e - 1, h - 1) + matched(e, h)) {
      e -= 1;
      h -= 1;
      pairings.push({ expected: e, heard: h });
    } else if (e > 0 && at(e, h) === at(e - 1, h) + 1) {
      e -= 1;
      pairings.push({ expected: e, heard: null });
    } else {
      h -= 1;
      pairings.push({ expected: null, heard: h });
    }
  }
  return pairings.reverse();
}

/** More notes than this are aligned piece by piece, cut where the line pauses longest: the table grows with the square. */
const AT_ONCE = 400;

/** Where a long line is cut: before the note, of those from a half of a piece on, that follows its neighbour the latest. */
function cutOf(expected: readonly ExpectedNote[]): number {
  const gap = (index: number): number => (expected[index]?.start ?? 0) - (expected[index - 1]?.start ?? 0);
  let cut = AT_ONCE / 2;
  for (let index = cut + 1; index < AT_ONCE; index += 1) if (gap(index) > gap(cut)) cut = index;
  return cut;
}

/**
 * The cheapest way to take what is heard for what is written, in order, by dynamic programming. Notes may be left out,
 * be too many, early, late and of another pitch.
 * @param expected - by their start, as `heard` is
 */
export function align(expected: readonly ExpectedNote[], heard: readonly HeardNote[]): readonly Pairing[] {
  const pairings: Pairing[] = [];
  let [e, h] = [0, 0];
  while (e < expected.length || h < heard.length) {
    const left = expected.slice(e);
    const cut = left.length > AT_ONCE ? cutOf(left) : left.length;
    const [before, after] = [left[cut - 1], left[cut]];
    const border = before && after ? (before.start + after.start) / 2 : Number.POSITIVE_INFINITY;
    const sounds = heard.slice(h).filter(({ start }) => start < border);
    for (const pair of alignAtOnce(left.slice(0, cut), sounds))
      pairings.push(
        pair.expected === null
          ? { expected: null, heard: pair.heard + h }
          : { expected: pair.expected + e, heard: pair.heard === null ? null : pair.heard + h },
      );
    e += cut;
    h += sounds.length;
  }
  return pairings;
}
