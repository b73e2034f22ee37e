import type { Hz, Tone } from '../../core/base';
import { biquad, drive, fadeOut, filter, scale } from './filters';
import { addFalling, noise } from './strike';
import { pluckString } from './string';

/** How hard a bass note is struck, 0 (a touch) to 1 (an accent): harder is brighter. */
export interface BassStroke {
  readonly frequency: Hz;
  /** Where the string is stopped; 0 where it is not known or open. A fraction on a fretless neck. */
  readonly fret?: number;
  readonly seconds: number;
  readonly force: number;
  /** Damped by the hand: a short knock with hardly a pitch. */
  readonly muted: boolean;
  /** Played with the hand lightly on the strings, as the style does throughout: darker, and soon gone. */
  readonly damped?: boolean;
  /** Another colour than a finger's pluck. */
  readonly tone?: Exclude<Tone, 'dead'>;
}

/** What makes the colour of a bass note. */
interface Colour {
  /** Seconds until low E's fundamental, and until a bright partial has fallen by 60 dB. */
  readonly decay: number;
  readonly brightDecay: number;
  /** Centimetres from the bridge. */
  readonly pluckedAt: number;
  /** Length of the pluck in seconds. */
  readonly pulse: number;
  /** Where the amplifier's treble ends, in hertz. */
  readonly treble: number;
  /** Against a finger's plain pluck. */
  readonly level: number;
  /** The knock of the attack, and where it lies in hertz. */
  readonly knock: number;
  readonly knockAt: number;
}

/** What a hand does that lies lightly on the strings: the treble goes first, and the note is soon gone. */
const dampedBy = (force: number) => ({
  decay: 3,
  brightDecay: 0.16 + 0.12 * force,
  pulse: 0.0016 - 0.0007 * force,
  treble: 1300 + 1500 * force,
  // A muted string is dug into, so that the line still leads.
  level: 1.15,
});

/** By how hard the string is struck. What each colour does to a string is common practice; the numbers are ours. */
function colourOf(tone: BassStroke['tone'], force: number, damped: boolean): Colour {
  const plucked: Colour = {
    decay: 8,
    brightDecay: 0.4 + 0.3 * force,
    pluckedAt: 12,
    pulse: 0.0013 - 0.0007 * force,
    treble: 2000 + 3000 * force,
    level: 1,
    knock: 0.05 + 0.1 * force,
    knockAt: 1300,
  };
  switch (tone) {
    case undefined:
      return damped ? { ...plucked, ...dampedBy(force) } : plucked;
    case 'palm muted':
      return { ...plucked, decay: 0.9, brightDecay: 0.09, pulse: 0.0015, treble: 900, knock: 0.04 };
    case 'slapped':
      return { ...plucked, brightDecay: 0.8, pulse: 0.0003, treble: 7000, knock: 0.3, knockAt: 2200 };
    case 'popped':
      return {
        ...plucked,
        brightDecay: 0.9,
        pluckedAt: 7,
        pulse: 0.00025,
        treble: 8000,
        knock: 0.35,
        knockAt: 3000,
      };
  }
}

const LOW_E = 41.2;

/** Centimetres: a scale of 34 inches, and where its pickup sits. The usual long scale; the pickup's place is ours. */
const SCALE = 86.36;
const PICKUP = 7;

/** A share of the sounding length, kept away from the middle, where a string has no even partials at all. */
const shareOf = (centimetres: number, fret: number): number =>
  Math.min(0.4, centimetres / (SCALE * 2 ** (-fret / 12)));

/**
 * Necks swing along at some pitch and take it from the string: on long scales mostly around C♯3 on the highest string.
 * Common practice, no source; the figures are ours.
 */
const DEAD_SPOT = { hertz: 139, width: 9, taken: 0.45, fromFret: 4 } as const;

const sustainOf = (frequency: number, fret: number): number =>
  fret < DEAD_SPOT.fromFret
    ? 1
    : 1 - DEAD_SPOT.taken * Math.exp(-(((frequency - DEAD_SPOT.hertz) / DEAD_SPOT.width) ** 2));

/** A short length of a string is stiffer than a long one: its partials stretch more. The figures are ours. */
const stiffnessOf = (fret: number): number => -Math.min(0.3, 0.09 * 2 ** (fret / 12));
const FINGERTIP_SEED = 5;

/**
 * A plucked bass string through a pickup and a small amplifier. A pickup hears the string's speed, whose
 * partials fall by 6 dB an octave: hence the one pole. Pluck and pickup lie near the bridge, so that the partials are there
 * by which a small loudspeaker tells a low note; the low shelf gives back to the fundamental what their place takes.
 */
export function bassNote(stroke: BassStroke, sampleRate: number): Float32Array {
  const { frequency, muted, fret = 0 } = stroke;
  const colour = colourOf(stroke.tone, stroke.force, stroke.damped ?? false);
  const seconds = muted ? Math.min(stroke.seconds, 0.22) : stroke.seconds;
  const samples = pluckString(
    {
      frequency,
      seconds,
      decay: muted ? 0.16 : colour.decay * sustainOf(frequency, fret) * (LOW_E / frequency) ** 0.45,
      first: { faster: 1.2, seconds: 0.18 },
      brightDecay: muted ? 0.03 : colour.brightDecay,
      pluckedAt: shareOf(colour.pluckedAt, fret),
      heardAt: shareOf(PICKUP, fret),
      pulse: colour.pulse,
      stiffness: stiffnessOf(fret),
    },
    sampleRate,
  );
  const pole = Math.exp((-2 * Math.PI * 25) / sampleRate);
  let slow = 0;
  for (let index = 0; index < samples.length; index += 1) {
    slow = (samples[index] ?? 0) * (1 - pole) + slow * pole;
    samples[index] = slow;
  }
  filter(samples, biquad('high-pass', 18, sampleRate));
  filter(samples, biquad('low shelf', 1.3 * frequency, sampleRate, Math.SQRT1_2, 9));
  filter(samples, biquad('low-pass', colour.treble, sampleRate));
  drive(samples, 1.6);
  // Rounding a wave that is not even leaves a direct current behind, which only takes headroom.
  filter(samples, biquad('high-pass', 18, sampleRate));
  scale(samples, muted ? 0.6 : colour.level);
  addKnock(samples, colour, sampleRate);
  fadeOut(samples, Math.round(0.01 * sampleRate));
  return samples;
}

/** The soft scrape of a fingertip leaving the string, or a thumb's knock: it tells the ear when the note begins. */
function addKnock(samples: Float32Array, { knock, knockAt }: Colour, sampleRate: number): void {
  const scrape = noise(Math.min(samples.length, Math.round(0.04 * sampleRate)), FINGERTIP_SEED);
  filter(scrape, biquad('band-pass', knockAt, sampleRate, 0.8));
  addFalling(samples, scrape, knock, 0.006, sampleRate);
}
