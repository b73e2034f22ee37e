import type { Lesson } from '../../../core/lesson';

/** What all versions share, and what is on the page while none of them is. */
export const THE_TUNE = 'the tune itself';

/** A name that no version of a lesson has yet. */
export function freeName({ versions = [] }: Lesson): string {
  const taken = new Set(versions.map(({ name }) => name));
  for (let number = versions.length + 1; ; number += 1) {
    const name = `Version ${number}`;
    if (!taken.has(name)) return name;
  }
}
