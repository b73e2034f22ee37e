import { deflateSync } from 'fflate';

/** What a file of a ZIP is made of. */
export interface ZipEntry {
  /** With its folders, a slash between them. */
  readonly path: string;
  /** Texts are packed; sounds and pictures are as small as they get. */
  readonly content: Uint8Array<ArrayBuffer> | string;
}

/** Content as it stands in the file: made once, however many entries hold it. */
interface Packed {
  readonly method: 0 | 8;
  readonly check: number;
  readonly size: number;
  readonly bytes: Uint8Array;
}

/** The checksum of ISO 3309, a byte at a time. */
const CHECKS = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit += 1) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value;
});

function checkOf(bytes: Uint8Array): number {
  let value = 0xffffffff;
  for (const byte of bytes) value = (value >>> 8) ^ (CHECKS[(value ^ byte) & 0xff] ?? 0);
  return ~value >>> 0;
}

function pack(content: ZipEntry['content']): Packed {
  if (typeof content !== 'string')
    return { method: 0, check: checkOf(content), size: content.length, bytes: content };
  const text = new TextEncoder().encode(content);
  return { method: 8, check: checkOf(text), size: text.length, bytes: deflateSync(text, { level: 6 }) };
}

/** Numbers of two or four bytes in a row, the low byte first. */
function numbers(...fields: readonly (readonly [bytes: 2 | 4, value: number])[]): Uint8Array<ArrayBuffer> {
  const made = new DataView(new ArrayBuffer(fields.reduce((sum, [bytes]) => sum + bytes, 0)));
  let at = 0;
  for (const [bytes, value] of fields) {
    if (bytes === 2) made.setUint16(at, value, true);
    else made.setUint32(at, value, true);
    at += bytes;
  }
  return new Uint8Array(made.buffer);
}

/** Names are UTF-8. */
const FLAGS = 0x0800;
/** What is needed to read it: 2.0, for packed content and folders. */
const NEEDED = 20;

/** Lets the page answer between two files. */
const nextTurn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

/** Date and time as MS-DOS keeps them: years from 1980, seconds by two. */
const stampOf = (now: Date) => ({
  time: (now.getHours() << 11) | (now.getMinutes() << 5) | (now.getSeconds() >> 1),
  date: ((now.getFullYear() - 1980) << 9) | ((now.getMonth() + 1) << 5) | now.getDate(),
});

/** Writes files into one ZIP (PKWARE, APPNOTE 6.3, 4.3). Content that several of them hold is packed once. */
export async function writeZip(
  entries: readonly ZipEntry[],
  now = new Date(),
): Promise<Uint8Array<ArrayBuffer>> {
  const { time, date } = stampOf(now);
  const known = new Map<ZipEntry['content'], Packed>();
  const body: Uint8Array[] = [];
  const index: Uint8Array[] = [];
  let at = 0;
  for (const { path, content } of entries) {
    const packed = known.get(content) ?? pack(content);
    if (!known.has(content)) await nextTurn();
    known.set(content, packed);
    const name = new TextEncoder().encode(path);
    const facts = numbers(
      [2, FLAGS],
      [2, packed.method],
      [2, time],
      [2, date],
      [4, packed.check],
      [4, packed.bytes.length],
      [4, packed.size],
      [2, name.length],
      [2, 0],
    );
    const before = at;
    for (const part of [numbers([4, 0x04034b50], [2, NEEDED]), facts, name, packed.bytes]) {
      body.push(part);
      at += part.length;
    }
    index.push(
      numbers([4, 0x02014b50], [2, NEEDED], [2, NEEDED]),
      facts,
      numbers([2, 0], [2, 0], [2, 0], [4, 0], [4, before]),
      name,
    );
  }
  const length = index.reduce((sum, part) => sum + part.length, 0);
  const end = numbers(
    [4, 0x06054b50],
    [2, 0],
    [2, 0],
    [2, entries.length],
    [2, entries.length],
    [4, length],
    [4, at],
    [2, 0],
  );
  const zip = new Uint8Array(at + length + end.length);
  let to = 0;
  for (const part of [...body, ...index, end]) {
    zip.set(part, to);
    to += part.length;
  }
  return zip;
}
