import type { Deafness, HeardNote } from '../../core/listening';
import { createHops, type Hop } from './hops';
import type { HeardLevel } from './messages';
import { type HeardPitch, pitchOf } from './pitch';
import { createStrokes, type Stroke } from './strokes';

/** Figures of the ear; they are ours, found on the bench (`tests/listening`). Levels in decibels, times in seconds. */
const OURS = {
  /** After a stroke its pitch is looked for from here, when the pluck is over, up to here or to the next stroke. */
  pitchFrom: 0.014,
  pitchTo: 0.115,
  /** Less sound than this says nothing of a pitch. */
  leastPitch: 0.04,
  /** A note is at least this much louder than the quietest of the last seconds, and no softer than this below the loud ones; it begins no softer than this. */
  aboveQuiet: 9,
  belowLoud: 24,
  struckBelowLoud: 15,
  /** A string that sounds already is struck again for sure where the bands rise so far; below that it may be a drum. */
  sure: 3.5,
  /** The same beside a loudspeaker, and how long ago its note may have been. */
  sureBeside: 8,
  rang: 0.25,
  /** A stroke without a pitch is one where it is sure, and nearly as strong as others. */
  deadWeaker: 8,
  /** A note has ended where it fell so far in so long, faster than any string dies away by itself; it lasts so long at least. */
  fall: 9,
  falling: 0.07,
  shortest: 0.05,
  /** Between two looks at the pitch of what sounds, and how many that agree make a note that nobody struck. */
  look: 0.021,
  looks: 4,
  lookBack: 0.09,
} as const;

/** Hz of A4 and its number, and half steps from it. */
const midiOf = ({ hz }: HeardPitch): number => 69 + 12 * Math.log2(hz / 440);

type Open = Omit<HeardNote, 'end'>;

const faintIf = (faint: boolean): Pick<HeardNote, 'faint'> => (faint ? { faint: true } : {});

/** Hears notes in a stream of sound. */
export interface NoteEar {
  /**
   * @param sounded - what the loudspeaker played meanwhile, to be taken off; null where it plays nothing
   * @returns the notes that have ended by now
   */
  push(samples: Float32Array, sounded?: Float32Array | null): readonly HeardNote[];
  /** How far what is left of the loudspeaker is below what is heard, in decibels; 0 where nothing of it is known. */
  below(): number;
  /** Ends the note that still sounds. */
  finish(): readonly HeardNote[];
  level(): HeardLevel;
  deafness(): readonly Deafness[];
}

/**
 * An ear for a bass: strokes by the rise of loudness in bands, their pitches by the method of P. McLeod and G. Wyvill,
 * their ends by the fall of loudness. Times are seconds from the beginning of the stream.
 */
export function createNoteEar(sampleRate: number): NoteEar {
  const waiting: Stroke[] = [];
  const ended: HeardNote[] = [];
  const deafness: Deafness[] = [];
  const levels: { readonly at: number; readonly level: number }[] = [];
  /** Pitches of what sounds, one after the other, that are not the note's. */
  let others: number[] = [];
  let open: Open | null = null;
  /** The last note with a pitch. */
  let last: HeardNote | null = null;
  let [quiet, loud, strong] = [-55, -45, -60];
  let [looked, endLooked] = [0, 0];
  let latest: Hop | null = null;

  const levelBetween = (from: number, to: number, of: (...values: number[]) => number): number => {
    const found = levels.filter(({ at }) => at >= from && at <= to).map(({ level }) => level);
    return found.length === 0 ? -100 : of(...found);
  };

  const close = (end: number): void => {
    if (open !== null) {
      const note = { ...open, end: Math.max(open.start + 0.02, end) };
      ended.push(note);
      if (note.midi !== null) last = note;
    }
    open = null;
    others = [];
  };

  /** Whether a string of this pitch sounds already, a stroke without a pitch on top of it left out. */
  const rings = (midi: number, at: number): boolean => {
    if (open !== null && open.midi !== null) return Math.abs(open.midi - midi) < 0.6;
    if (open?.faint !== true || last === null || at - last.end > OURS.rang) return false;
    return last.midi !== null && Math.abs(last.midi - midi) < 0.6;
  };

  const begin = (note: Open): void => {
    close(note.start);
    open = note;
  };

  const isHeard = (level: number, below: number): boolean =>
    level > Math.max(quiet + OURS.aboveQuiet, loud - below);

  const beginPitched = ({ at, rise, attack }: Stroke, midi: number, after: number): void => {
    const sure = hops.besideLoudspeaker() ? OURS.sureBeside : OURS.sure;
    const faint = rings(midi, at) && rise < sure;
    loud += (after - loud) * (after > loud ? 0.5 : 0.1);
    strong += (attack - strong) * (attack > strong ? 0.5 : 0.1);
    begin({ start: at, midi, ...faintIf(faint) });
  };

  const decide = (stroke: Stroke, until: number): void => {
    const from = stroke.at + OURS.pitchFrom;
    const sound = hops.between(from, until);
    const pitch = until - from < OURS.leastPitch ? null : pitchOf(sound, hops.lowRate);
    const after = levelBetween(stroke.at, stroke.at + 0.08, Math.max);
    if (!isHeard(after, OURS.struckBelowLoud)) return;
    if (pitch !== null) beginPitched(stroke, midiOf(pitch), after);
    else if (stroke.rise >= OURS.sure && stroke.attack > strong - OURS.deadWeaker)
      // Beside a loudspeaker it may be one of its drums.
      begin({ start: stroke.at, midi: null, ...faintIf(hops.besideLoudspeaker()) });
  };

  const decideAll = (now: number, atLast: boolean): void => {
    for (let [first, next] = waiting; first !== undefined; [first, next] = waiting) {
      const until = Math.min(first.at + OURS.pitchTo, (next?.at ?? Number.POSITIVE_INFINITY) - 0.004);
      if (until > now && !atLast) return;
      waiting.shift();
      decide(first, Math.min(until, now));
    }
  };

  /** A note that nobody struck: another pitch that stays. */
  const lookAtPitch = (now: number): void => {
    if (open === null || waiting.length > 0 || now - open.start < OURS.pitchTo + OURS.lookBack) return;
    const pitch = pitchOf(hops.between(now - OURS.lookBack, now), hops.lowRate);
    if (pitch === null) return;
    const midi = midiOf(pitch);
    const apart = open.midi === null ? 1 : Math.abs(midi - open.midi);
    // Twice and three times the pitch is the same string heard otherwise.
    const same = apart < 0.7 || [12, 19, 24].some((harmonic) => Math.abs(apart - harmonic) < 0.7);
    const agrees = others.every((other) => Math.abs(other - midi) < 0.5);
    others = same ? [] : agrees ? [...others, midi] : [midi];
    if (others.length >= OURS.looks) {
      const start = now - OURS.look * OURS.looks - OURS.lookBack / 2;
      const again = hops.besideLoudspeaker() && rings(midi, start);
      begin({ start, midi, joined: true, ...faintIf(again) });
    }
  };

  /** Looks for the end of what sounds in all that came in since it was looked for last. */
  const lookAtEnd = (): void => {
    for (const { at, level } of levels) {
      if (open === null) break;
      if (at <= endLooked || at - open.start < OURS.shortest) continue;
      const before = levelBetween(at - OURS.falling, at - OURS.falling / 2, Math.max);
      if (before - level > OURS.fall) close(at - OURS.falling / 2);
      else if (!isHeard(level, OURS.belowLoud)) close(at);
    }
    endLooked = latest?.at ?? 0;
  };

  const strokes = createStrokes((stroke) => waiting.push(stroke));
  const hops = createHops(sampleRate, (hop) => {
    latest = hop;
    levels.push({ at: hop.at, level: hop.level });
    if (levels.length > 200) levels.splice(0, 100);
    quiet = Math.min(hop.level, quiet + 0.004);
    loud -= 0.002;
    strong -= 0.002;
    if (hop.clipped) {
      const last = deafness.at(-1);
      if (last !== undefined && hop.at - last.to < 0.3)
        deafness[deafness.length - 1] = { from: last.from, to: hop.at };
      else deafness.push({ from: hop.at - 0.01, to: hop.at });
    }
    strokes.push(hop);
    decideAll(hop.at, false);
    if (waiting.length === 0) lookAtEnd();
    if (hop.at - looked >= OURS.look) {
      looked = hop.at;
      lookAtPitch(hop.at);
    }
  });

  return {
    push: (samples, sounded) => {
      hops.push(samples, sounded ?? null);
      return ended.splice(0);
    },
    finish: () => {
      decideAll(hops.now(), true);
      lookAtEnd();
      close(hops.now());
      return ended.splice(0);
    },
    below: hops.below,
    level: () => ({ now: latest?.level ?? -100, quiet, clipped: latest?.clipped ?? false }),
    deafness: () => deafness,
  };
}
