import { strFromU8 } from 'fflate';

/** Two bytes a sign, as UTF-16 has them. */
function decodeUtf16(bytes: Uint8Array, highFirst: boolean): string {
  const parts: string[] = [];
  for (let from = 0; from < bytes.length; from += 8192) {
    const codes: number[] = [];
    for (let index = from; index + 1 < Math.min(bytes.length, from + 8192); index += 2) {
      const one = bytes[index] ?? 0;
      const other = bytes[index + 1] ?? 0;
      codes.push(highFirst ? one * 256 + other : other * 256 + one);
    }
    parts.push(String.fromCharCode(...codes));
  }
  return parts.join('');
}

/**
 * The text of an XML file: by its byte order mark UTF-16 or UTF-8, else by the encoding that its first line names,
 * of which only those are known that XML readers must know and the one-byte Latin 1; else UTF-8 (XML 1.0, 4.3.3).
 */
export function decodeText(bytes: Uint8Array): string {
  const [first = 0, second = 0, third = 0] = bytes;
  if (first === 0xfe && second === 0xff) return decodeUtf16(bytes.subarray(2), true);
  if (first === 0xff && second === 0xfe) return decodeUtf16(bytes.subarray(2), false);
  if (first === 0 && second === 0x3c) return decodeUtf16(bytes, true);
  if (first === 0x3c && second === 0) return decodeUtf16(bytes, false);
  const plain = first === 0xef && second === 0xbb && third === 0xbf ? bytes.subarray(3) : bytes;
  const head = strFromU8(plain.subarray(0, 200), true);
  const latin = /^<\?xml[^>]*encoding=["'](?:iso-8859-1|latin-?1|windows-1252|us-ascii)["']/i.test(head);
  return strFromU8(plain, latin);
}
