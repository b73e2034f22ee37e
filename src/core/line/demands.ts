import type { Freedom } from './techniques/freedoms';
import type { Technique } from './types';

/** What the level and the teacher's aims ask of one bar. */
export interface Demands {
  /** Techniques that the bar may show; chord tones are always allowed. */
  readonly techniques: ReadonlySet<Technique>;
  /** What those allow. */
  readonly freedoms: ReadonlySet<Freedom>;
  /** Techniques that the bar has to show. */
  readonly wanted: ReadonlySet<Technique>;
  /** Techniques that it or another bar has to show, by an aim for several. */
  readonly hoped: ReadonlySet<Technique>;
  readonly density: 'sparse' | 'busy' | null;
  readonly silence: number;
  /** Steps above the chord's root that the bar keeps to; null for all. */
  readonly degrees: ReadonlySet<number> | null;
  readonly reach: Reach;
  /** The aims leave room for the fifth of a chord in the bar, but not for its root. */
  readonly rootless: boolean;
  /** Equal for equal demands. */
  readonly key: string;
}

/** The pitches a bar may use. */
export interface Reach {
  readonly low: number;
  readonly high: number;
  /** By MIDI number: whether the pitch lies on the neck within the allowed frets. */
  readonly onNeck: readonly boolean[];
}

export const inReach = (reach: Reach, midi: number): boolean =>
  midi >= reach.low && midi <= reach.high && reach.onNeck[midi] === true;

/** Pitches of a class within reach, lowest first. */
export function pitchesOf(reach: Reach, pitchClass: number): readonly number[] {
  const found: number[] = [];
  for (let midi = reach.low; midi <= reach.high; midi += 1) {
    if (midi % 12 === pitchClass && inReach(reach, midi)) found.push(midi);
  }
  return found;
}
