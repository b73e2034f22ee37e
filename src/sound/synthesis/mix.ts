import type { Performance } from '../../core/performance';
import type { Mix, StereoSound } from '../types';
import { placePerformance, renderWindow } from './score';
import { partOf, STEMS, type Stem, type Stems } from './stems';
import type { Kit } from './voices';

/** Where each stem sits between left (−1) and right (1): a small stage with the bass in its middle. */
export const PAN: Readonly<Record<Stem, number>> = {
  bass: 0,
  drums: 0,
  chops: -0.3,
  organ: 0.35,
  click: 0,
  hats: 0.25,
  'count-in': 0,
};

/** Equal power, as the Web Audio specification defines the stereo panner for one channel. */
function panGains(pan: number): { readonly left: number; readonly right: number } {
  const angle = ((pan + 1) / 2) * (Math.PI / 2);
  return { left: Math.cos(angle), right: Math.sin(angle) };
}

/** What a stem is scaled by: 0 where it is not heard; the count-in always is as it is. */
export function levelOf(mix: Mix, stem: Stem): number {
  const part = partOf(stem);
  if (part === null) return 1;
  return mix[part] ? (mix.volumes?.[part] ?? 1) : 0;
}

function addStem(sound: StereoSound, samples: Float32Array, pan: number, level: number, from: number): void {
  const gains = panGains(pan);
  for (let index = 0; index < samples.length; index += 1) {
    const sample = level * (samples[index] ?? 0);
    sound.left[from + index] = (sound.left[from + index] ?? 0) + sample * gains.left;
    sound.right[from + index] = (sound.right[from + index] ?? 0) + sample * gains.right;
  }
}

/** Adds the stems to a sound from a sample on, each at its level and in its place. */
export function addMixed(sound: StereoSound, stems: Stems, mix: Mix, from: number): void {
  for (const stem of STEMS) {
    const level = levelOf(mix, stem);
    if (level > 0) addStem(sound, stems[stem], PAN[stem], level, from);
  }
}

/**
 * The performance as it is heard from beginning to end, count-in and last ring included, played so many rounds
 * through: the same stems, levels and places as live playback.
 */
export function renderMix(performance: Performance, mix: Mix, kit: Kit, rounds = 1): StereoSound {
  const placed = placePerformance(performance, kit);
  const end = placed.round * rounds + placed.longest;
  const stems = renderWindow(placed, rounds, -placed.countIn, -placed.countIn, end);
  const length = placed.countIn + Math.max(0, end);
  const sound: StereoSound = {
    sampleRate: kit.sampleRate,
    left: new Float32Array(length),
    right: new Float32Array(length),
  };
  addMixed(sound, stems, mix, 0);
  return sound;
}
