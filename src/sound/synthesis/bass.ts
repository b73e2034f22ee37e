import type { Hz, Tone } from '../../core/base';
import { biquad, drive, fadeOut, filter, scale } from './filters';
import { addFalling, noise } from './strike';
import { pluckString } from './string';

/** How hard a bass note is struck, 0 (a touch) to 1 (an accent): harder is brighter. */
export interface BassStroke {
  readonly frequency: Hz;
  readonly seconds: number;
  readonly force: number;
  /** Damped by the hand: a short knock with hardly a pitch. */
  readonly muted: boolean;
  /** Another colour than a finger's pluck. */
  readonly tone?: Exclude<Tone, 'dead'>;
}

/** What makes the colour of a bass note. */
interface Colour {
  /** Seconds until low E's fundamental, and until a bright partial has fallen by 60 dB. */
  readonly decay: number;
  readonly brightDecay: number;
  readonly pluckedAt: number;
  /** Length of the pluck in seconds. */
  readonly pulse: number;
  /** Where the amplifier's treble ends, in hertz. */
  readonly treble: number;
  /** The knock of the attack, and where it lies in hertz. */
  readonly knock: number;
  readonly knockAt: number;
}

/** By how hard the string is struck. What each colour does to a string is common practice; the numbers are ours. */
function colourOf(tone: BassStroke['tone'], force: number): Colour {
  const plucked: Colour = {
    decay: 7,
    brightDecay: 0.4 + 0.3 * force,
    pluckedAt: 0.23,
    pulse: 0.0013 - 0.0007 * force,
    treble: 2000 + 3000 * force,
    knock: 0.05 + 0.1 * force,
    knockAt: 1300,
  };
  switch (tone) {
    case undefined:
      return plucked;
    case 'palm muted':
      return { ...plucked, decay: 0.9, brightDecay: 0.09, pulse: 0.0015, treble: 900, knock: 0.04 };
    case 'slapped':
      return { ...plucked, brightDecay: 0.8, pulse: 0.0003, treble: 7000, knock: 0.3, knockAt: 2200 };
    case 'popped':
      return {
        ...plucked,
        brightDecay: 0.9,
        pluckedAt: 0.12,
        pulse: 0.00025,
        treble: 8000,
        knock: 0.35,
        knockAt: 3000,
      };
  }
}

const LOW_E = 41.2;
const FINGERTIP_SEED = 5;

/**
 * A plucked bass string through a pickup and a small amplifier. A pickup hears the string's speed, whose
 * partials fall by 6 dB an octave: hence the one pole; the low shelf makes up for what the pickup's place takes
 * from the fundamental, so that low notes are heard as low.
 */
export function bassNote(stroke: BassStroke, sampleRate: number): Float32Array {
  const { frequency, force, muted, tone } = stroke;
  const colour = colourOf(tone, force);
  const seconds = muted ? Math.min(stroke.seconds, 0.22) : stroke.seconds;
  const samples = pluckString(
    {
      frequency,
      seconds,
      decay: muted ? 0.16 : colour.decay * (LOW_E / frequency) ** 0.45,
      brightDecay: muted ? 0.03 : colour.brightDecay,
      pluckedAt: colour.pluckedAt,
      heardAt: 0.17,
      pulse: colour.pulse,
      stiffness: -0.12,
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
  filter(samples, biquad('low shelf', 60, sampleRate, Math.SQRT1_2, 5));
  filter(samples, biquad('low-pass', colour.treble, sampleRate));
  drive(samples, 1.1);
  if (muted) {
    scale(samples, 0.6);
  }
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
