import type { Performance } from '../../core/performance';
import type { Mix, StereoSound } from '../types';
import { addMixed } from './mix';
import { addVoices, type PlacedVoice, placePerformance } from './score';
import { silence } from './stems';
import type { Kit } from './voices';

export interface RoundsOptions {
  /** The end leads into the beginning: what rings beyond it rings on there. */
  readonly repeats: boolean;
  /** Hears how much is mixed, from 0 to 1. */
  readonly onShare?: (share: number) => void;
}

/** Seconds that are mixed at once: all parts of a long track side by side would not fit into a telephone's memory. */
const WINDOW = 10;

/** Every voice of performances that follow each other, in samples from the beginning of the first. */
function placeAll(rounds: readonly Performance[], kit: Kit) {
  let end = 0;
  let longest = 0;
  const voices: PlacedVoice[] = [];
  for (const round of rounds) {
    const placed = placePerformance(round, kit);
    const begin = end + placed.countIn;
    for (const voice of [...placed.before, ...placed.within]) voices.push({ ...voice, at: voice.at + begin });
    end = begin + placed.round;
    longest = Math.max(longest, placed.longest);
  }
  return { voices, end, longest };
}

/**
 * Performances played one after the other without a gap, as they are heard: each rings on into the next, and the last
 * one rings out, or, where the whole repeats, rings on into the beginning.
 */
export function renderRounds(
  rounds: readonly Performance[],
  mix: Mix,
  kit: Kit,
  { repeats, onShare }: RoundsOptions,
): StereoSound {
  const { sampleRate } = kit;
  const { voices, end, longest } = placeAll(rounds, kit);
  const length = repeats ? end : end + longest;
  const cycles = repeats && end > 0 ? Math.ceil(longest / end) : 0;
  const all = [
    ...Array.from({ length: cycles }, (_, cycle) =>
      voices.map((voice) => ({ ...voice, at: voice.at - (cycle + 1) * end })),
    ).flat(),
    ...voices,
  ];
  const sound = { sampleRate, left: new Float32Array(length), right: new Float32Array(length) };
  for (let from = 0; from < length; from += WINDOW * sampleRate) {
    const to = Math.min(length, from + WINDOW * sampleRate);
    const stems = silence(to - from);
    addVoices(
      stems,
      all.map((voice) => ({ voice, at: voice.at - from })),
    );
    addMixed(sound, stems, mix, from);
    onShare?.(to / length);
  }
  return sound;
}
