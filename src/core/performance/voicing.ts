import { type MidiNumber, midiNumber, pitchClassOf, sameName } from '../base';
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

type Kind = (tone: Chord['tones'][number]) => boolean;

/**
 * What a hand leaves out when a chord has more tones than the hand has voices, the first first: the root where the
 * bass has it, the perfect fifth, a root that only the slash takes from the bass, any fifth. The third, the seventh and
 * what colours the chord stay (common practice, no source).
 */
function spareKinds(chord: Chord): readonly Kind[] {
  const rootInBass = sameName(chord.root, chord.bass);
  return [
    ({ degree }) => rootInBass && degree.step === 1,
    ({ degree }) => degree.step === 5 && degree.alteration === 0,
    ({ degree }) => degree.step === 1,
    ({ degree }) => degree.step === 5,
  ];
}

/** The pitch classes a hand of so many voices plays. */
function chosenTones(chord: Chord, voices: number): readonly number[] {
  let { tones } = chord;
  for (const isSpare of spareKinds(chord)) {
    const kept = tones.filter((tone) => !isSpare(tone));
    if (tones.length > voices && kept.length < tones.length) {
      tones = kept.length >= Math.min(voices, 2) ? kept : tones;
    }
  }
  return [...new Set(tones.slice(0, voices).map((tone) => pitchClassOf(tone.name)))];
}

/** Third and seventh with one tone of colour or the fifth, the root left to the bass; null for a chord without both. */
function guideTones(chord: Chord): readonly number[] | null {
  const step = (wanted: number) => chord.tones.find(({ degree }) => degree.step === wanted);
  const [third, seventh] = [step(3), step(7)];
  const colour = chord.tones.findLast(({ degree }) => ![1, 3, 7].includes(degree.step));
  if (!third || !seventh || !colour || !sameName(chord.root, chord.bass)) return null;
  return [third, seventh, colour].map((tone) => pitchClassOf(tone.name));
}

/** Close positions of the pitch classes from a pitch on, and of four voices the same with the second from above dropped. */
function positionsFrom(pitchClasses: readonly number[], lowest: number): readonly (readonly number[])[] {
  const close = pitchClasses
    .map((pitchClass) => lowest + ((((pitchClass - lowest) % 12) + 12) % 12))
    .sort((one, other) => one - other);
  const dropped = close.at(-2);
  return close.length === 4 && dropped !== undefined
    ? [close, [dropped - 12, ...close.filter((pitch) => pitch !== dropped)]]
    : [close];
}

/** Half steps between voices, and minor ninths, which grate as much. */
const gratings = (voicing: readonly number[]): number =>
  voicing.flatMap((low, index) => voicing.slice(index + 1).filter((high) => [1, 13].includes(high - low)))
    .length;

/**
 * Every position of the pitch classes inside the register: close and drop two, in each inversion and octave. Those that
 * grate least, which is not at all wherever the tones can be laid apart.
 */
function positionsOf(pitchClasses: readonly number[], register: Register): readonly Voicing[] {
  const positions: (readonly number[])[] = [];
  for (let lowest = register.lowest; lowest <= register.highest + 12; lowest += 1) {
    if (pitchClasses.includes(lowest % 12)) positions.push(...positionsFrom(pitchClasses, lowest));
  }
  const inside = positions.filter(
    (pitches) => (pitches[0] ?? 0) >= register.lowest && (pitches.at(-1) ?? 0) <= register.highest,
  );
  const least = Math.min(...inside.map(gratings));
  return inside
    .filter((pitches) => gratings(pitches) === least)
    .map((pitches) => pitches.map((pitch) => midiNumber(pitch)));
}

/** Every way a hand can play a chord, apart from what another hand sounds already where there is a choice. */
function candidatesOf(chord: Chord, register: Register, taken: Voicing): readonly Voicing[] {
  const full = positionsOf(chosenTones(chord, register.voices), register);
  const guide = register.voices > 3 ? guideTones(chord) : null;
  const all = [...full, ...(guide === null ? [] : positionsOf(guide, register))];
  const apart = all.filter((voicing) => !voicing.some((pitch) => taken.includes(pitch)));
  if (apart.length > 0) return apart;
  return all.length > 0 ? all : [[]];
}

/** Half steps that all voices move together; voices that have no partner go to the nearest one. */
function movement(from: Voicing, to: Voicing): number {
  if (from.length === to.length) {
    return to.reduce((sum, pitch, voice) => sum + Math.abs(pitch - (from[voice] ?? pitch)), 0);
  }
  return to.reduce((sum, pitch) => sum + Math.min(...from.map((other) => Math.abs(pitch - other))), 0);
}

/** Half steps of distance from the middle cost half; a voice that is missing in the hand costs one and a half (ours). */
function ownCost(voicing: Voicing, register: Register): number {
  const mean = voicing.reduce((sum, pitch) => sum + pitch, 0) / Math.max(1, voicing.length);
  const missing = Math.max(0, Math.min(register.voices, 4) - voicing.length);
  return Math.abs(mean - register.centre) / 2 + missing * 1.5;
}

interface Step {
  readonly voicing: Voicing;
  readonly cost: number;
  readonly from: Step | null;
}

/**
 * One voicing a chord with the least movement over the whole sequence (shortest path through close and drop-two
 * positions and guide-tone grips). A chord that has no tones gets an empty voicing.
 * @param taken what another hand sounds with each chord, which this one leaves to it where it can
 */
export function leadVoices(
  chords: readonly Chord[],
  register: Register,
  taken: readonly Voicing[] = [],
): readonly Voicing[] {
  let steps: readonly Step[] = [];
  for (const [index, chord] of chords.entries()) {
    const candidates = candidatesOf(chord, register, taken[index] ?? []);
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
