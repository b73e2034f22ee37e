import { type MidiNumber, midiNumber, pitchClassOf } from '../base';
import type { Chord } from '../theory';

/** Where a hand of the rhythm section plays, in MIDI numbers, and how many voices it has. */
export interface Register {
  readonly lowest: number;
  readonly highest: number;
  /** The middle the voicings keep returning to. */
  readonly centre: number;
  readonly voices: number;
}

/** From low to high. */
export type Voicing = readonly MidiNumber[];

/**
 * The pitch classes to play when there are fewer voices than tones: the perfect fifth goes first, then the
 * root, which the bass has (common practice, no source); the third, the seventh and altered fifths stay.
 */
function chosenTones(chord: Chord, voices: number): readonly number[] {
  const spare = [
    (step: number, alteration: number) => step === 5 && alteration === 0,
    (step: number) => step === 1,
    (step: number) => step === 5,
    () => true,
  ];
  let tones = chord.tones;
  for (const isSpare of spare) {
    while (tones.length > voices) {
      const kept = tones.filter((tone) => !isSpare(tone.degree.step, tone.degree.alteration));
      if (kept.length === tones.length) {
        break;
      }
      tones = kept.length >= voices ? kept : tones.slice(0, voices);
    }
  }
  return [...new Set(tones.map((tone) => pitchClassOf(tone.name)))];
}

/** Every close position of the pitch classes inside the register, each inversion in each octave. */
function positionsOf(pitchClasses: readonly number[], register: Register): readonly Voicing[] {
  const sorted = [...pitchClasses].sort((one, other) => one - other);
  const positions: Voicing[] = [];
  for (let lowest = register.lowest; lowest <= register.highest; lowest += 1) {
    if (!sorted.includes(lowest % 12)) {
      continue;
    }
    const above = sorted.map((pitchClass) => lowest + ((pitchClass - lowest + 1200) % 12));
    const voicing = above.sort((one, other) => one - other);
    if ((voicing.at(-1) ?? 0) <= register.highest) {
      positions.push(voicing.map((pitch) => midiNumber(pitch)));
    }
  }
  return positions;
}

/** Half steps that all voices move together; voices that have no partner go to the nearest one. */
function movement(from: Voicing, to: Voicing): number {
  if (from.length === to.length) {
    return to.reduce((sum, pitch, voice) => sum + Math.abs(pitch - (from[voice] ?? pitch)), 0);
  }
  return to.reduce((sum, pitch) => sum + Math.min(...from.map((other) => Math.abs(pitch - other))), 0);
}

/** A half step between the two highest voices grates; half steps of distance from the middle cost half. */
function ownCost(voicing: Voicing, register: Register): number {
  const top = voicing.at(-1) ?? register.centre;
  const next = voicing.at(-2) ?? 0;
  const mean = voicing.reduce((sum, pitch) => sum + pitch, 0) / Math.max(1, voicing.length);
  return Math.abs(mean - register.centre) / 2 + (top - next === 1 ? 4 : 0);
}

interface Step {
  readonly voicing: Voicing;
  readonly cost: number;
  readonly from: Step | null;
}

/**
 * One voicing a chord with the least movement over the whole sequence (shortest path through all close
 * positions). A chord that has no tones gets an empty voicing.
 */
export function leadVoices(chords: readonly Chord[], register: Register): readonly Voicing[] {
  let steps: readonly Step[] = [];
  for (const chord of chords) {
    const positions = positionsOf(chosenTones(chord, register.voices), register);
    const candidates: readonly Voicing[] = positions.length === 0 ? [[]] : positions;
    steps = candidates.map((voicing): Step => {
      const own = ownCost(voicing, register);
      let best: Step | null = null;
      let cost = own;
      for (const from of steps) {
        const total = from.cost + movement(from.voicing, voicing) + own;
        if (best === null || total < cost) {
          best = from;
          cost = total;
        }
      }
      return { voicing, cost, from: best };
    });
  }
  let last: Step | null = null;
  for (const step of steps) {
    last = last === null || step.cost < last.cost ? step : last;
  }
  const voicings: Voicing[] = [];
  for (let step = last; step !== null; step = step.from) {
    voicings.unshift(step.voicing);
  }
  return voicings;
}
