import { frequencyOf } from '../../core/base';
import type { DrumEvent, PerformanceEvent, PitchedEvent } from '../../core/performance';
import { bassNote } from './bass';
import { clickSound, stickSound } from './click';
import { drumHit, fullHit } from './drums';
import { glideRoom, type SoundGlide, slid } from './glide';
import { guitarNote } from './guitar';
import { gainOf } from './levels';
import { createMemory, type Memory } from './memory';
import { organNote } from './organ';
import { createRoomedSounds, type RoomedSounds } from './roomed';
import { type Stems, silence } from './stems';

/** A sound ready to be added to a stem. */
export interface Voice {
  readonly samples: Float32Array;
  readonly gain: number;
  /** Samples until the sound is let go; it ends there, faded out over the last `release` samples. */
  readonly length: number;
  readonly release: number;
}

/** Bass strokes are computed in so many grades of force between these velocities. */
const FORCE = { least: 30, most: 120, grades: 5 } as const;

/** Drum strokes likewise, from a ghost stroke to an accent. */
const STICK = { least: 38, most: 112, grades: 3 } as const;

/** Hits of one drum that differ in their noise and follow each other by turns. */
const VARIATIONS = 3;

/** Seconds of fading before a note ends, so that it ends without a click. */
const RELEASE: Readonly<Record<PitchedEvent['part'], number>> = { bass: 0.028, chops: 0.02, organ: 0.014 };

/**
 * A bass note that is not plucked begins this many seconds after the pluck of one that is, and comes in over so
 * many: a hammering finger is heard, a string that goes on is not.
 */
const UNPLUCKED = { after: 0.05, hammered: 0.003, joined: 0.014 } as const;

/** Notes are computed in steps of this many seconds, so that few lengths of each are needed. */
const LENGTH_STEP = 0.25;

/** Seconds at a sound's end in which it fades: beyond what is heard, whatever length has been made before. */
const ENDING = 0.012;

/**
 * Chords are let go in steps of this many seconds, less than half of their fading: at another tempo most of them are
 * sounds again that have been made.
 */
const LET_GO_STEP = 0.005;

/** Makes each sound once and remembers it. One kit serves one sample rate. */
export interface Kit {
  readonly sampleRate: number;
  /**
   * @param turn counts the hits of the same drum.
   * @param glides of the event
   */
  voice(event: PerformanceEvent, seconds: number, turn: number, glides: readonly SoundGlide[]): Voice;
  /** The voices in their rooms. */
  readonly roomed: RoomedSounds;
  /** Where they are mixed into: all zero. */
  silence(length: number): Stems;
}

/** @param memory - for what is mixed */
export function createKit(sampleRate: number, memory: Memory = createMemory(0)): Kit {
  const made = new Map<string, Float32Array>();

  const once = (name: string, seconds: number, make: (seconds: number) => Float32Array): Float32Array => {
    const needed = seconds + ENDING;
    const wanted = Math.ceil(needed / LENGTH_STEP) * LENGTH_STEP;
    const known = made.get(name);
    if (known !== undefined && known.length >= needed * sampleRate) {
      return known;
    }
    const samples = make(wanted);
    made.set(name, samples);
    return samples;
  };

  /** A bass note that is joined to the one before it: without its pluck, and coming in softly. */
  const withoutPluck = (event: PitchedEvent, seconds: number): Float32Array => {
    const { attack } = event;
    if (attack === undefined) return pitchedSamples(event, seconds);
    const first = Math.round(UNPLUCKED.after * sampleRate);
    const plucked = pitchedSamples(event, seconds + UNPLUCKED.after);
    const samples = plucked.slice(first);
    const rise = Math.round(UNPLUCKED[attack] * sampleRate);
    for (let index = 0; index < Math.min(rise, samples.length); index += 1) {
      samples[index] = ((samples[index] ?? 0) * (index + 0.5)) / rise;
    }
    return samples;
  };

  /** What bends or joins is made for each such note by itself: they are few. */
  const played = (event: PitchedEvent, seconds: number, glides: readonly SoundGlide[]): Float32Array =>
    glides.length === 0
      ? withoutPluck(event, seconds)
      : slid(withoutPluck(event, seconds * glideRoom(glides)), seconds, glides, sampleRate);

  const pitched = (event: PitchedEvent, seconds: number, glides: readonly SoundGlide[]): Voice => {
    // A note that another follows from the same string fades under it: no hole between them.
    const written = event.leadsOn ? seconds + RELEASE[event.part] : seconds;
    const held =
      event.part === 'bass'
        ? written
        : Math.max(LET_GO_STEP, Math.round(written / LET_GO_STEP) * LET_GO_STEP);
    const samples = played(event, held, glides);
    const length = Math.min(samples.length, Math.max(1, Math.round(held * sampleRate)));
    const release = Math.min(Math.round(RELEASE[event.part] * sampleRate), Math.ceil(length / 3));
    return { samples, gain: gainOf(event), length, release };
  };

  const pitchedSamples = (event: PitchedEvent, seconds: number): Float32Array => {
    const frequency = frequencyOf(event.midi);
    const { fret, damped, tone, muted } = event;
    const name = `${event.part} ${event.midi} ${fret} ${muted} ${damped} ${tone}`;
    switch (event.part) {
      case 'bass': {
        const share = (event.velocity - FORCE.least) / (FORCE.most - FORCE.least);
        const grade = Math.round(Math.min(1, Math.max(0, share)) * FORCE.grades);
        return once(`${name} ${grade}`, seconds, (wanted) =>
          bassNote(
            {
              frequency,
              seconds: wanted,
              force: grade / FORCE.grades,
              muted,
              ...(fret === undefined ? {} : { fret }),
              ...(damped === undefined ? {} : { damped }),
              ...(tone === undefined ? {} : { tone }),
            },
            sampleRate,
          ),
        );
      }
      case 'chops':
        return once(name, seconds, (wanted) => guitarNote({ frequency, seconds: wanted, muted }, sampleRate));
      case 'organ':
        return once(name, seconds, (wanted) => organNote(frequency, wanted, sampleRate));
    }
  };

  const struck = (event: DrumEvent, turn: number): Voice => {
    const variation = turn % VARIATIONS;
    const share = (event.velocity - STICK.least) / (STICK.most - STICK.least);
    const grade = Math.round(Math.min(1, Math.max(0, share)) * STICK.grades);
    const { sound } = event;
    const samples = once(`${sound} ${variation} ${grade}`, 0, () => {
      const full = once(`${sound} ${variation}`, 0, () =>
        fullHit(sound, variation, sampleRate, (name, make) => once(name, 0, make)),
      );
      return drumHit(sound, variation, sampleRate, grade / STICK.grades, full);
    });
    return { samples, gain: gainOf(event), length: samples.length, release: 0 };
  };

  return {
    sampleRate,
    roomed: createRoomedSounds(sampleRate),
    silence: (length) => silence(length, memory.take),
    voice: (event, seconds, turn, glides) => {
      switch (event.part) {
        case 'drums':
          return struck(event, turn);
        case 'click': {
          const make = event.countIn ? stickSound : clickSound;
          const samples = once(`${event.countIn ? 'sticks' : 'click'} ${event.accent}`, 0, () =>
            make(event.accent, sampleRate),
          );
          return { samples, gain: gainOf(event), length: samples.length, release: 0 };
        }
        default:
          return pitched(event, seconds, glides);
      }
    },
  };
}
