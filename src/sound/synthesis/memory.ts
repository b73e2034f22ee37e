/** Bytes that are kept at most: a few pieces of all stems. */
const KEPT = 40_000_000;

/** Memory for samples that is used again: to fresh memory the system lends its pages one by one, which takes longer than mixing. */
export interface Memory {
  /** @returns samples that are all zero; their buffer may be longer */
  take(length: number): Float32Array;
  /** Takes back what nobody reads any more. */
  giveBack(buffers: readonly ArrayBuffer[]): void;
}

/** @param most - bytes; what is given back beyond them is let go */
export function createMemory(most = KEPT): Memory {
  const kept: ArrayBuffer[] = [];
  let bytes = 0;

  /** The shortest that is long enough, unless most of it would lie idle. */
  const fitting = (needed: number): number => {
    let best = -1;
    let shortest = 2 * needed + 1;
    for (const [index, { byteLength }] of kept.entries()) {
      if (byteLength >= needed && byteLength < shortest) {
        best = index;
        shortest = byteLength;
      }
    }
    return best;
  };

  return {
    take: (length) => {
      const index = fitting(length * Float32Array.BYTES_PER_ELEMENT);
      const [buffer] = index < 0 ? [] : kept.splice(index, 1);
      if (buffer === undefined) return new Float32Array(length);
      bytes -= buffer.byteLength;
      return new Float32Array(buffer, 0, length).fill(0);
    },
    giveBack: (buffers) => {
      for (const buffer of buffers) {
        if (buffer.byteLength === 0 || bytes + buffer.byteLength > most) continue;
        kept.push(buffer);
        bytes += buffer.byteLength;
      }
    },
  };
}
