import type { SpelledName } from '../../base';
import { nameOfDegree } from '../../theory';
import type { Ladder } from './ladder';

/**
 * The name of a pitch over its chord; a note from outside is named by where it goes.
 * @param after the pitch that follows, null where none does
 * @param ahead names by pitch class over the chord that comes
 */
export function spell(
  ladder: Ladder,
  midi: number,
  after: number | null,
  ahead: readonly (SpelledName | null)[] | null,
): SpelledName {
  const pitchClass = ((midi % 12) + 12) % 12;
  const own = ladder.names[pitchClass];
  if (own) return own;
  const target = after === null ? null : (ahead?.[after % 12] ?? ladder.names[after % 12] ?? null);
  if (target && after !== null && Math.abs(after - midi) === 1) {
    return nameOfDegree(target, after > midi ? { step: 7, alteration: 0 } : { step: 2, alteration: -1 });
  }
  return ahead?.[pitchClass] ?? NATURAL[pitchClass] ?? { letter: 'C', alteration: 0 };
}

/** Common names of the twelve notes, sharps up and flats down from C as charts have them most. */
const NATURAL: readonly SpelledName[] = [
  { letter: 'C', alteration: 0 },
  { letter: 'C', alteration: 1 },
  { letter: 'D', alteration: 0 },
  { letter: 'E', alteration: -1 },
  { letter: 'E', alteration: 0 },
  { letter: 'F', alteration: 0 },
  { letter: 'F', alteration: 1 },
  { letter: 'G', alteration: 0 },
  { letter: 'A', alteration: -1 },
  { letter: 'A', alteration: 0 },
  { letter: 'B', alteration: -1 },
  { letter: 'B', alteration: 0 },
];
