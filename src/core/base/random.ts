/** A seeded source of chance: the same seed gives the same numbers on every machine. */
export interface Random {
  /** A number from 0 up to, not including, 1. */
  next(): number;
  /** A whole number from 0 up to, not including, `limit`. */
  below(limit: number): number;
}

/** Mulberry32 (Tommy Ettinger, public domain): 32 bits of state, plenty for choosing between musical ideas. */
export function createRandom(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  return { next, below: (limit) => Math.floor(next() * limit) };
}

/**
 * FNV-1a over the text's UTF-16 units: a stable 32-bit number for a text, to seed {@link createRandom}.
 * @param before - the number of what stands before the text: `hashText('b', hashText('a'))` is `hashText('ab')`
 */
export function hashText(text: string, before = 0x811c9dc5): number {
  let hash = before;
  for (let index = 0; index < text.length; index += 1) {
    hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193);
  }
  return hash >>> 0;
}
