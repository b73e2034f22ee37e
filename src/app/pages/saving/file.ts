import { FILE_KINDS, type FileKind } from './kinds';

/** A name every system accepts as a file name: `Ferry queue, week 3` gives `ferry-queue-week-3`. */
export function fileStem(title: string): string {
  const stem = title
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
    .slice(0, 120);
  return stem === '' ? 'lesson' : stem;
}

/** Long enough for the browser to begin saving before the address is taken back. */
const KEEP_MS = 60_000;

/**
 * Hands a file to the browser to be saved.
 * @param name - without its ending
 */
export function saveFile(name: string, content: BlobPart | readonly BlobPart[], kind: FileKind): void {
  const { ending, type } = FILE_KINDS[kind];
  const parts = Array.isArray(content) ? content : [content];
  const address = URL.createObjectURL(new Blob(parts, { type }));
  saveAddress(address, `${name}${ending}`);
}

function saveAddress(address: string, name: string): void {
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(address), KEEP_MS);
}
