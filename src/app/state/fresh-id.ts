/**
 * A name for a new lesson on this device that no other lesson has: 128 bits of chance. A host without HTTPS has no
 * `crypto.randomUUID`.
 */
export const freshLessonId = (): string =>
  `lesson-${[...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
