import { DYNAMIC_LEVELS, type DynamicLevel } from '../../base';
import type { FoundDynamic } from '../reading/found';
import { childrenOf, type XmlNode } from './xml-tree';

const levelOf = (name: string): DynamicLevel | null => {
  const shown = name.replace(/^p{4,}$/, 'ppp').replace(/^f{4,}$/, 'fff');
  return DYNAMIC_LEVELS.find((level) => level === shown) ?? null;
};

/** The levels of some `dynamics` elements; `others` says that they hold a sign which is none. */
export function readLevels(
  dynamics: readonly XmlNode[],
  at: number,
): { readonly signs: readonly FoundDynamic[]; readonly others: boolean } {
  const names = dynamics.flatMap(({ children }) => children.map(({ name }) => name));
  const levels = names.map(levelOf);
  return {
    signs: levels.flatMap((level) => (level === null ? [] : [{ at, level, hairpin: null, stops: false }])),
    others: levels.includes(null),
  };
}

/** The dynamics and hairpins of a direction that stands at a place. */
export function readDynamics(
  direction: XmlNode,
  at: number,
): { readonly signs: readonly FoundDynamic[]; readonly others: boolean } {
  const types = childrenOf(direction, 'direction-type').flatMap(({ children }) => children);
  const { signs, others } = readLevels(
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
  return { signs: [...signs, ...wedges], others };
}
