import { pitchClassOf, TICKS_PER_QUARTER } from '../../base';
import { classAbove } from '../harmony';
import { isHome, isStep, type Tone } from '../tones';

/** What the rules ask about the end of a bar. */
export interface Exit {
  readonly last: Tone;
  readonly exposed: boolean;
  /** Whether it is a dominant's seventh, which another chord has to resolve. */
  readonly seventh: boolean;
  readonly leadingTone: boolean;
  readonly leaps: number;
  readonly run: number;
}

/** What the rules ask about the beginning of a bar. */
export interface Entry {
  readonly first: Tone;
  readonly exposed: boolean;
  /** Whether it is the root or the bass note of its chord. */
  readonly root: boolean;
  /** Signed sum of the leaps in one direction that the bar begins with. */
  readonly leaps: number;
}

/** What rules tell beginnings apart by: a new question about the beginning of a bar has its row here. */
const TOLD_APART: { readonly [Name in keyof Entry]: (entry: Entry) => string } = {
  first: ({ first }) => `${first.midi} ${first.start === 0}`,
  exposed: ({ exposed }) => String(exposed),
  root: ({ root }) => String(root),
  leaps: ({ leaps }) => String(leaps),
};
const TELLING = Object.values(TOLD_APART);

/** Equal for beginnings that no rule can tell apart. */
export const entryKey = (entry: Entry): string => TELLING.map((tell) => tell(entry)).join(' ');

/** Outside its chord and long enough to be heard as a note of its own. */
export const isExposed = (tone: Tone): boolean =>
  tone.stretch?.chord !== null && tone.stretch !== null && !tone.member && tone.duration >= TICKS_PER_QUARTER;

export const isDominantSeventh = (tone: Tone): boolean =>
  tone.stretch?.chord?.family === 'dominant' && tone.interval === 10 && !isHome(tone);

/** Whether a tone is the root or the bass note of its chord. */
export const isRoot = (tone: Tone): boolean => isHome(tone) || tone.interval === 0;

/** Over the key's fifth or seventh degree, where its seventh step pulls up to the tonic. */
function isLeadingTone(tone: Tone): boolean {
  const chord = tone.stretch?.chord;
  if (!tone.stretch || !chord) return false;
  const tonic = pitchClassOf(tone.stretch.key.tonic);
  const degree = classAbove(pitchClassOf(chord.root), tonic);
  const pulls =
    (degree === 7 && tone.interval === 4) ||
    (degree === 11 && (chord.family === 'diminished' || chord.family === 'half-diminished'));
  return pulls && classAbove(tone.midi, tonic) === 11;
}

/** Sum of the leaps in one direction that end at an index, signed. */
export function leapsUpTo(tones: readonly Tone[], index: number): number {
  let sum = 0;
  for (let place = index; place > 0; place -= 1) {
    const distance = (tones[place]?.midi ?? 0) - (tones[place - 1]?.midi ?? 0);
    if (Math.abs(distance) <= 2 || sum * distance < 0) break;
    sum += distance;
  }
  return sum;
}

/** Direction of a run of three or more notes by step that ends at an index; 0 where there is none. */
export function runUpTo(tones: readonly Tone[], index: number): number {
  const [one, two, three] = [tones[index - 2], tones[index - 1], tones[index]];
  if (!one || !two || !three || !isStep(one.midi, two.midi) || !isStep(two.midi, three.midi)) return 0;
  const direction = Math.sign(two.midi - one.midi);
  return Math.sign(three.midi - two.midi) === direction ? direction : 0;
}

export function exitOf(tones: readonly Tone[]): Exit | null {
  const last = tones.at(-1);
  if (!last) return null;
  return {
    last,
    exposed: isExposed(last),
    seventh: isDominantSeventh(last),
    leadingTone: isLeadingTone(last),
    leaps: leapsUpTo(tones, tones.length - 1),
    run: runUpTo(tones, tones.length - 1),
  };
}

export function entryOf(tones: readonly Tone[]): Entry | null {
  const first = tones[0];
  if (!first) return null;
  let leaps = 0;
  for (let index = 1; index < tones.length; index += 1) {
    const distance = (tones[index]?.midi ?? 0) - (tones[index - 1]?.midi ?? 0);
    if (Math.abs(distance) <= 2 || leaps * distance < 0) break;
    leaps += distance;
  }
  return { first, exposed: isExposed(first), root: isRoot(first), leaps };
}
