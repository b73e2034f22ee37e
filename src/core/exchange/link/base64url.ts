/** The alphabet of RFC 4648, section 5: nothing in it needs escaping in an address. */
const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

/** Bytes as text, without padding. */
export function toBase64Url(bytes: Uint8Array): string {
  let text = '';
  for (let index = 0; index < bytes.length; index += 3) {
    const [one = 0, two = 0, three = 0] = bytes.subarray(index, index + 3);
    const group = (one << 16) | (two << 8) | three;
    const signs = Math.min(4, bytes.length - index + 1);
    for (let sign = 0; sign < signs; sign += 1) text += ALPHABET[(group >> (18 - 6 * sign)) & 63] ?? '';
  }
  return text;
}

/** The bytes of a text, or null when a sign of it is not in the alphabet. */
export function fromBase64Url(text: string): Uint8Array | null {
  if (text.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let filled = 0;
  let bits = 0;
  let held = 0;
  for (const sign of text) {
    const value = ALPHABET.indexOf(sign);
    if (value < 0) return null;
    held = ((held << 6) | value) & 0xffff;
    bits += 6;
    if (bits >= 8) {
      bits -= 8;
      bytes[filled] = (held >> bits) & 0xff;
      filled += 1;
    }
  }
  return bytes;
}
