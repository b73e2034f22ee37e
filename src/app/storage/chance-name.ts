/** A name that no other window or page has: 64 bits of chance, in hexadecimal digits. */
export const chanceName = (): string =>
  [...crypto.getRandomValues(new Uint8Array(8))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
