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

/**
 * Takes what was shared.
 * @returns the address of the page that is to show it
 */
export async function receiveShare(form: FormData, { caches, scope }: World): Promise<string> {
  const link = [...form.values()].map((value) =>
    typeof value === 'string' ? /#\S+/.exec(value)?.[0] : undefined,
  );
  const file = [...form.values()].find((value) => typeof value !== 'string');
  if (file === undefined) return scope + (link.find((each) => each !== undefined) ?? SHARED_QUERY);
  const cache = await caches.open(placeOf(scope));
  const headers = { [NAME]: encodeURIComponent(file.name) };
  await cache.put(scope + SHARED_QUERY, new Response(file, { headers }));
  return scope + SHARED_QUERY;
}

/** Hands out the file that waits, once; null where none does. */
export async function takeShared({ caches, scope }: World): Promise<File | null> {
  const cache = await caches.open(placeOf(scope));
  const kept = await cache.match(scope + SHARED_QUERY);
  if (kept === undefined) return null;
  await caches.delete(placeOf(scope));
  return new File([await kept.blob()], decodeURIComponent(kept.headers.get(NAME) ?? 'lesson'));
}
