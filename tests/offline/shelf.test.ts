import { describe, expect, test } from 'vitest';
import { answer, type Build, fileFor, install, tidy, type World } from '../../src/app/offline/shelf';

const SCOPE = 'https://host.example/some/where/';
const FILES = ['index.html', 'sw-list.txt', 'assets/page-1.js', 'practice-page.html'];
const build = (version: string, files: readonly string[] = FILES): Build => ({ version, files });

/** A host and a browser's caches in memory; `asked` lists what was fetched, `full` is the number of files it takes. */
function world(options: { readonly missing?: string; readonly full?: number } = {}) {
  const stores = new Map<string, Map<string, Response>>();
  const asked: string[] = [];
  let room = options.full ?? Number.POSITIVE_INFINITY;
  const cacheOf = (store: Map<string, Response>) => ({
    match: async (address: string) => store.get(address)?.clone(),
    put: async (address: string, response: Response) => {
      room -= 1;
      if (room < 0) throw new DOMException('', 'QuotaExceededError');
      store.set(address, response);
    },
  });
  const caches = {
    open: async (name: string) => {
      const store = stores.get(name) ?? new Map<string, Response>();
      stores.set(name, store);
      return cacheOf(store);
    },
    match: async (address: string) =>
      [...stores.values()].flatMap((store) => store.get(address) ?? [])[0]?.clone(),
    keys: async () => [...stores.keys()],
    delete: async (name: string) => stores.delete(name),
  };
  const host = async (request: Request) => {
    asked.push(request.url.slice(SCOPE.length));
    return request.url.endsWith(options.missing ?? 'nothing')
      ? new Response('Not found', { status: 404 })
      : new Response(request.url, { headers: { 'content-type': 'text/plain', 'content-encoding': 'gzip' } });
  };
  const made: World = { caches, fetch: host, scope: SCOPE };
  return { world: made, stores, asked };
}

describe('the files that are kept', () => {
  test('are all files of the build, and a second version fetches only what has changed', async () => {
    const { world: browser, stores, asked } = world();
    await install(build('1'), browser);
    expect([...(stores.get(`ground-bass 1 ${SCOPE}`)?.keys() ?? [])].sort()).toEqual(
      FILES.map((file) => SCOPE + file).sort(),
    );
    asked.length = 0;
    await install(build('2', [...FILES, 'assets/page-2.js']), browser);
    expect(asked).not.toContain('assets/page-1.js');
    expect(asked).toContain('index.html');
    expect(asked).toContain('assets/page-2.js');
  });

  test('lose what told how they were packed on the way: they are unpacked already', async () => {
    const { world: browser } = world();
    await install(build('1'), browser);
    const kept = await answer('index.html', build('1'), new Request(SCOPE), browser);
    expect(kept.headers.get('content-type')).toBe('text/plain');
    expect(kept.headers.has('content-encoding')).toBe(false);
  });

  test.each([
    ['a file is missing', { missing: 'practice-page.html' }],
    ['the device is full', { full: FILES.length - 2 }],
  ])('are those of the earlier version when %s', async (_, fault) => {
    const { world: browser, stores } = world();
    await install(build('1'), browser);
    const faulty = world(fault);
    for (const [name, store] of stores) faulty.stores.set(name, store);
    await expect(install(build('2'), faulty.world)).rejects.toThrow();
    expect([...faulty.stores.keys()]).toEqual([`ground-bass 1 ${SCOPE}`]);
  });

  test('of earlier versions go, those of other apps and of the same app elsewhere stay', async () => {
    const { world: browser, stores } = world();
    await install(build('1'), browser);
    await install(build('2'), browser);
    stores.set('another app', new Map());
    stores.set('ground-bass 1 https://host.example/', new Map());
    await tidy(build('2'), browser);
    expect([...stores.keys()].sort()).toEqual([
      'another app',
      'ground-bass 1 https://host.example/',
      `ground-bass 2 ${SCOPE}`,
    ]);
  });
});

describe('a request', () => {
  const page = (address: string) => fileFor({ url: address, method: 'GET', page: true }, build('1'), SCOPE);
  const part = (address: string) => fileFor({ url: address, method: 'GET', page: false }, build('1'), SCOPE);

  test.each([
    [SCOPE, 'index.html'],
    [`${SCOPE}?practice`, 'index.html'],
    [`${SCOPE}index.html?practice`, 'index.html'],
    [`${SCOPE}practice-page.html`, 'practice-page.html'],
    [`${SCOPE}#lesson=abc`, 'index.html'],
    [`${SCOPE}another.html`, null],
    ['https://host.example/some/', null],
    ['https://host.example/some/where', null],
    ['https://other.example/some/where/', null],
  ])('for the page %s means %s', (address, file) => expect(page(address)).toBe(file));

  test.each([
    [`${SCOPE}assets/page-1.js`, 'assets/page-1.js'],
    // A part of an earlier version, which a page that is still open may ask for.
    [`${SCOPE}assets/page-0.js`, 'assets/page-0.js'],
    [`${SCOPE}sw-list.txt`, 'sw-list.txt'],
    [`${SCOPE}sw-list.txt?fresh`, null],
    [`${SCOPE}sw.js`, null],
    ['https://other.example/assets/page-1.js', null],
  ])('for %s means %s', (address, file) => expect(part(address)).toBe(file));

  test('that would change something is never answered from what is kept', () => {
    expect(fileFor({ url: SCOPE, method: 'POST', page: true }, build('1'), SCOPE)).toBeNull();
  });

  test('is answered from its own version, else from an earlier one, else from the network', async () => {
    const { world: browser, asked } = world();
    await install(build('1'), browser);
    await install(build('2', ['index.html']), browser);
    asked.length = 0;
    const ask = (file: string) =>
      answer(file, build('2', ['index.html']), new Request(SCOPE + file), browser);
    expect((await ask('index.html')).status).toBe(200);
    expect((await ask('assets/page-1.js')).status).toBe(200);
    expect(asked).toEqual([]);
    await ask('assets/page-3.js');
    expect(asked).toEqual(['assets/page-3.js']);
  });
});
