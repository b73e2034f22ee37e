/** All that a file says to whoever looks into it, however it is packed. */
import { inflateSync, strFromU8, unzipSync } from 'fflate';

const bytesOf = (text: string): Uint8Array => new Uint8Array(Buffer.from(text, 'latin1'));

const isZip = ([one, other, third, fourth]: Uint8Array): boolean =>
  one === 0x50 && other === 0x4b && third === 3 && fourth === 4;

/** Bytes read as UTF-8, as Latin 1 and as UTF-16 from either end (PDF 1.7, 7.9.2.2: texts of the file's own facts). */
const readings = (bytes: Uint8Array): readonly string[] => [
  strFromU8(bytes),
  Buffer.from(bytes).toString('latin1'),
  ...[0, 1].map((from) => {
    const whole = Buffer.from(bytes.subarray(from));
    return whole.subarray(0, whole.length - (whole.length % 2)).toString('utf16le');
  }),
];

/** What was packed by DEFLATE, in whichever of its two dresses; nothing where it was not. */
function inflated(bytes: Uint8Array): readonly Uint8Array[] {
  try {
    // The streams of a PDF have the header of zlib (RFC 1950), the lesson of a link has none.
    const isZlib = ((bytes[0] ?? 0) & 15) === 8 && ((bytes[0] ?? 0) * 256 + (bytes[1] ?? 0)) % 31 === 0;
    return [inflateSync(isZlib ? bytes.subarray(2) : bytes)];
  } catch {
    return [];
  }
}

/** The streams of a PDF (PDF 1.7, 7.3.8). */
const streamsIn = (text: string): readonly Uint8Array[] =>
  text.startsWith('%PDF')
    ? text
        .split(/(?<!end)stream\r?\n/)
        .slice(1)
        .map((from) => bytesOf(from.slice(0, from.indexOf('endstream'))))
    : [];

/** Everything that bytes say, what is packed in them included: archives, streams of a PDF, the lesson of a link. */
export function openedUp(bytes: Uint8Array): string {
  if (isZip(bytes))
    return Object.entries(unzipSync(bytes))
      .map(([name, inner]) => `${name}\n${openedUp(inner)}`)
      .join('\n');
  const text = Buffer.from(bytes).toString('latin1');
  const link = /#lesson=([\w-]+)/.exec(text)?.[1];
  return [
    ...readings(bytes),
    ...streamsIn(text).flatMap(inflated).flatMap(readings),
    ...(link === undefined ? [] : inflated(new Uint8Array(Buffer.from(link, 'base64url')))).flatMap(readings),
  ].join('\n');
}
