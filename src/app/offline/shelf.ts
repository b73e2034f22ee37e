/**
 * The files of the app as the service worker keeps them: one cache a version, so that a page never gets files of two
 * versions mixed. Everything it needs of the browser comes as an argument.
 */

/** What a build consists of: made by `build/offline.ts` and written at the head of the worker's script. */
export interface Build {
  readonly version: string;
  /** Addresses below the scope. */
  readonly files: readonly string[];
}

interface Kept {
  match(address: string, options?: CacheQueryOptions): Promise<Response | undefined>;
}

interface Shelf extends Kept {
  put(address: string, response: Response): Promise<void>;
}

interface Shelves extends Kept {
  open(name: string): Promise<Shelf>;
  keys(): Promise<readonly string[]>;
  delete(name: string): Promise<boolean>;
}

/** The parts of the browser that keeping files takes. */
export interface World {
  readonly caches: Shelves;
  readonly fetch: (request: Request) => Promise<Response>;
  /** The address below which the worker answers, with a slash at its end. */
  readonly scope: string;
}

/** Files fetched at a time: few enough that the page's own requests get through. */
const AT_A_TIME = 4;

/** Files whose name changes with their content. */
const HASHED = 'assets/';

/** Other apps of the same host have caches too; ours name the scope. */
const nameOf = (scope: string, version: string): string => `ground-bass ${version} ${scope}`;
const isOurs = (scope: string, name: string): boolean =>
  name.startsWith('ground-bass ') && name.endsWith(` ${scope}`);

/** A browser refuses an answer that was redirected for a page, and has unpacked what is in it. */
async function plain(response: Response): Promise<Response> {
  const headers = new Headers(response.headers);
  headers.delete('content-encoding');
  headers.delete('content-length');
  return new Response(await response.blob(), { status: response.status, headers });
}

/**
 * Fetches every file of a build into its own cache; what an earlier version has already is not fetched again.
 * @throws the network's or the cache's error; then nothing of the build is kept, and the earlier version goes on.
 */
export async function install(build: Build, { caches, fetch, scope }: World): Promise<void> {
  const name = nameOf(scope, build.version);
  const waiting = [...build.files];
  try {
    const cache = await caches.open(name);
    const fetchNext = async (): Promise<void> => {
      for (let file = waiting.shift(); file !== undefined; file = waiting.shift()) {
        const address = new URL(file, scope).href;
        const kept = file.startsWith(HASHED) ? await caches.match(address) : undefined;
        const response = kept ?? (await fetch(new Request(address, { cache: 'reload' })));
        if (!response.ok) throw new Error(`${address} answered ${response.status}`);
        await cache.put(address, await plain(response));
      }
    };
    await Promise.all(Array.from({ length: AT_A_TIME }, fetchNext));
  } catch (problem) {
    waiting.length = 0;
    await caches.delete(name);
    throw problem;
  }
}

/** The text of a file as this very build keeps it; empty where it keeps none. */
export async function keptText(file: string, build: Build, { caches, scope }: World): Promise<string> {
  const cache = await caches.open(nameOf(scope, build.version));
  const response = await cache.match(new URL(file, scope).href, { ignoreVary: true });
  return (await response?.text()) ?? '';
}

/** Deletes what earlier versions kept. */
export async function tidy(build: Build, { caches, scope }: World): Promise<void> {
  const current = nameOf(scope, build.version);
  const old = (await caches.keys()).filter((name) => isOurs(scope, name) && name !== current);
  await Promise.all(old.map((name) => caches.delete(name)));
}

/**
 * The file that a request means; null for everything that is not the app's.
 * @param request - `page` says whether it is for a page, whose query the app itself reads
 */
export function fileFor(
  request: { readonly url: string; readonly method: string; readonly page: boolean },
  { files }: Build,
  scope: string,
): string | null {
  if (request.method !== 'GET') return null;
  const { href, search, hash } = new URL(request.url);
  const address = href.slice(0, href.length - hash.length - (request.page ? search.length : 0));
  if (!address.startsWith(scope)) return null;
  const file = address.slice(scope.length);
  if (file === '' && request.page) return 'index.html';
  // A page of an earlier version may still be open and ask for its parts.
  return files.includes(file) || file.startsWith(HASHED) ? file : null;
}

/** Answers from the build's own cache, else from an earlier version's, else from the network. */
export async function answer(file: string, build: Build, request: Request, world: World): Promise<Response> {
  const { caches, fetch, scope } = world;
  const address = new URL(file, scope).href;
  const kept = { ignoreVary: true };
  const cache = await caches.open(nameOf(scope, build.version));
  return (await cache.match(address, kept)) ?? (await caches.match(address, kept)) ?? fetch(request);
}
