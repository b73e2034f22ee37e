import { DYNAMIC_LEVELS, type DynamicLevel, type Mark, withMark } from '../../base';
import type { FoundDynamic } from '../reading/found';
import type { RawNote } from './raw';
import { childrenOf, type XmlNode } from './xml-tree';

const levelOf = (name: string): DynamicLevel | null => {
  const shown = name.replace(/^p{4,}$/, 'ppp').replace(/^f{4,}$/, 'fff');
  return DYNAMIC_LEVELS.find((level) => level === shown) ?? null;
};

type Stress = Extract<Mark, 'accent' | 'strong accent'>;

/**
 * Signs that stress one note, and the level in which the music goes on after it: MusicXML 4.0, children of `dynamics`;
 * their meanings as music dictionaries have them (common practice, no source).
 */
const STRESSES: Readonly<Record<string, { readonly mark: Stress; readonly after: DynamicLevel | null }>> = {
  sf: { mark: 'accent', after: null },
  fz: { mark: 'accent', after: null },
  rf: { mark: 'accent', after: null },
  rfz: { mark: 'accent', after: null },
  sfz: { mark: 'strong accent', after: null },
  sffz: { mark: 'strong accent', after: null },
  fp: { mark: 'accent', after: 'p' },
  sfp: { mark: 'accent', after: 'p' },
  sfpp: { mark: 'accent', after: 'pp' },
  sfzp: { mark: 'strong accent', after: 'p' },
};

/** What the dynamics at a place say. */
export interface ReadDynamics {
  readonly signs: readonly FoundDynamic[];
  /** Signs like `sf` on the note that begins there. */
  readonly stresses: readonly { readonly at: number; readonly mark: Stress }[];
  /** Whether there is a sign that is neither. */
  readonly others: boolean;
}

/** The levels and stresses of some `dynamics` elements. */
export function readLevels(dynamics: readonly XmlNode[], at: number): ReadDynamics {
  const names = dynamics.flatMap(({ children }) => children.map(({ name }) => name));
  const read = names.map((name) => {
    const stress = Object.hasOwn(STRESSES, name) ? (STRESSES[name] ?? null) : null;
    return { stress, level: stress === null ? levelOf(name) : stress.after };
  });
  return {
    signs: read.flatMap(({ level }) => (level === null ? [] : [{ at, level, hairpin: null, stops: false }])),
    stresses: read.flatMap(({ stress }) => (stress === null ? [] : [{ at, mark: stress.mark }])),
    others: read.some(({ stress, level }) => stress === null && level === null),
  };
}

/** The dynamics and hairpins of a direction that stands at a place. */
export function readDynamics(direction: XmlNode, at: number): ReadDynamics {
  const types = childrenOf(direction, 'direction-type').flatMap(({ children }) => children);
  const { signs, stresses, others } = readLevels(
    types.filter(({ name }) => name === 'dynamics'),
    at,
  );
  const wedges = types.flatMap(({ name, attributes: { type } }): readonly FoundDynamic[] => {
    if (name !== 'wedge') return [];
    if (type === 'stop') return [{ at, level: null, hairpin: null, stops: true }];
    return type === 'crescendo' || type === 'diminuendo'
      ? [{ at, level: null, hairpin: type, stops: false }]
      : [];
  });
  return { signs: [...signs, ...wedges], stresses, others };
}

/** A note with the stress of a sign like `sf` that stands at its beginning; its own accent goes before. */
export function stressed(note: RawNote, stresses: readonly StressAt[]): RawNote {
  const stress = stresses.find(({ at, staff }) => staff === note.staff && isAt(note, at));
  if (stress === undefined || note.marks?.stress !== undefined) return note;
  const { marks } = withMark(note.marks === null ? {} : { marks: note.marks }, stress.mark);
  return { ...note, marks: marks ?? null };
}

/** A stress of {@link ReadDynamics} and the staff at which it stands. */
export type StressAt = ReadDynamics['stresses'][number] & { readonly staff: number };

/** Whether a note begins at a place, within a tick: places are computed from different durations. */
export const isAt = ({ start }: RawNote, at: number): boolean => Math.abs(start - at) < 1;
