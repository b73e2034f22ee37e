/**
 * What another app of the device shares with this one. It comes to the service worker as a form; a file waits in a cache of
 * its own until the page asks for it, and a link to a lesson is opened as it is.
 */
import type { World } from './shelf';

/** Where the manifest has shares sent, below the scope. */
export const SHARE_ADDRESS = 'share';
/** The query with which the page learns that something waits. */
const SHARED_QUERY = '?shared';

const placeOf = (scope: string): string => `ground-bass-shared ${scope}`;
const NAME = 'x-file-name';
const COUNT = 'x-file-count';

/** How the address of the practice page ends, now and before it had one of its own. */
const TO_PRACTICE = /[/?]practice(?:\.html)?$/;

/** The part of an address in a text that holds a lesson, with the page that it is for. */
function linkIn(text: string): string | null {
  const address = text.split(/\s/).find((word) => word.indexOf('#') < word.length - 1 && word.includes('#'));
  if (address === undefined) return null;
  const [before, held] = [address.slice(0, address.indexOf('#')), address.slice(address.indexOf('#'))];
  return TO_PRACTICE.test(before) ? `practice.html${held}` : held;
}

/**
 * Takes what was shared.
 * @returns the address of the page that is to show it
 */
export async function receiveShare(form: FormData, { caches, scope }: World): Promise<string> {
  const values = [...form.values()];
  const link = values.map((value) => (typeof value === 'string' ? linkIn(value) : null));
  const files = values.flatMap((value) => (typeof value === 'string' ? [] : [value]));
  const [file] = files;
  if (file === undefined) return scope + (link.find((each) => each !== null) ?? SHARED_QUERY);
  const cache = await caches.open(placeOf(scope));
  const headers = { [NAME]: encodeURIComponent(file.name), [COUNT]: String(files.length) };
  await cache.put(scope + SHARED_QUERY, new Response(file, { headers }));
  return scope + SHARED_QUERY;
}

/** The first file that was shared, and how many came with it. */
export interface SharedFile {
  readonly file: File;
  readonly count: number;
}

/** Hands out the file that waits, once; null where none does. */
export async function takeShared({ caches, scope }: World): Promise<SharedFile | null> {
  const cache = await caches.open(placeOf(scope));
  const kept = await cache.match(scope + SHARED_QUERY);
  if (kept === undefined) return null;
  await caches.delete(placeOf(scope));
  const file = new File([await kept.blob()], decodeURIComponent(kept.headers.get(NAME) ?? 'lesson'));
  return { file, count: Number(kept.headers.get(COUNT) ?? 1) };
}
