import { Unzip, UnzipInflate } from 'fflate';
import { failure, type Result, success } from '../../base';
import { decodeText } from '../reading/decode';
import { childrenOf, readXml, type XmlNode } from './xml-tree';

/** The score inside may grow to this, in bytes; what unpacks to more was made to harm. */
const LARGEST_SCORE = 20_000_000;
/** Packed bytes handed to the unpacker at a time: each may grow a thousandfold before the next look at the sum. */
const PORTION = 4_096;
const CONTAINER = 'META-INF/container.xml';

type Unpacked =
  | { readonly kind: 'found'; readonly bytes: Uint8Array }
  | { readonly kind: 'none' | 'too large' };

/** The bytes of one file of a zip; the others are passed over packed. */
function unpackFile(zip: Uint8Array, wanted: (name: string) => boolean): Unpacked {
  const parts: Uint8Array[] = [];
  let size = 0;
  let begun = false;
  let finished = false;
  const reader = new Unzip((file) => {
    if (begun || !wanted(file.name)) return;
    begun = true;
    file.ondata = (fault, part, final) => {
      if (fault) throw fault;
      parts.push(part);
      size += part.length;
      finished ||= final;
    };
    file.start();
  });
  reader.register(UnzipInflate);
  for (let from = 0; from < zip.length && !finished; from += PORTION) {
    reader.push(zip.subarray(from, from + PORTION), from + PORTION >= zip.length);
    if (size > LARGEST_SCORE) return { kind: 'too large' };
  }
  if (!finished) return { kind: 'none' };
  const bytes = new Uint8Array(size);
  let filled = 0;
  for (const part of parts) {
    bytes.set(part, filled);
    filled += part.length;
  }
  return { kind: 'found', bytes };
}

/** The path of the score by the container file: the first root file whose media type is none or MusicXML's. */
function scorePath(container: XmlNode): string | null {
  const files = childrenOf(container, 'rootfiles').flatMap((list) => childrenOf(list, 'rootfile'));
  const score = files.find(({ attributes }) => {
    const type = attributes['media-type'] ?? '';
    return type === '' || /musicxml|xml/i.test(type);
  });
  return score?.attributes['full-path'] ?? null;
}

const DAMAGED = 'This compressed file is damaged: what is packed in it cannot be read. Nothing was changed.';
const NO_SCORE = 'This compressed file holds no MusicXML score. Nothing was changed.';
const TOO_LARGE =
  'This compressed file unpacks to more than a score can be, so it was not read. Nothing was changed.';

/**
 * The text of the score in a compressed MusicXML file (MusicXML 4.0, "Compressed .mxl files"): the file that the
 * container names; without a container, the first that is called like a score. Never throws.
 */
export function unpackMxl(zip: Uint8Array): Result<string, { readonly message: string }> {
  try {
    const container = unpackFile(zip, (name) => name === CONTAINER);
    const read = container.kind === 'found' ? readXml(decodeText(container.bytes)) : null;
    const path = read?.ok ? scorePath(read.value) : null;
    const score = unpackFile(zip, (name) =>
      path === null ? /\.(musicxml|xml)$/i.test(name) && !name.startsWith('META-INF/') : name === path,
    );
    if (score.kind === 'found') return success(decodeText(score.bytes));
    return failure({ message: score.kind === 'none' ? NO_SCORE : TOO_LARGE });
  } catch {
    // The unpacker says what is wrong with the bytes; the person can only get the file anew.
    return failure({ message: DAMAGED });
  }
}
