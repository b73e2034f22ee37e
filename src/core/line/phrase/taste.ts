/** A number from 0 to 1 for a plan's taste in a thing: the same number for the same arguments. */
export function tasteOf(seed: number, scope: number, tag: number): number {
  let mixed = Math.imul(seed ^ Math.imul(scope + 1, 0x9e3779b1) ^ tag, 0x85ebca6b);
  mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
  return ((mixed ^ (mixed >>> 16)) >>> 0) / 4294967296;
}
