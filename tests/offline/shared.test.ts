import { expect, test } from 'vitest';
import { receiveShare, takeShared } from '../../src/app/offline/shared';
import type { World } from '../../src/app/offline/shelf';

const SCOPE = 'https://host.example/some/where/';

function world(): World {
  const stores = new Map<string, Map<string, Response>>();
  return {
    scope: SCOPE,
    fetch: () => Promise.reject(new Error('no network')),
    caches: {
      open: async (name) => {
        const store = stores.get(name) ?? new Map<string, Response>();
        stores.set(name, store);
        return {
          match: async (address) => store.get(address)?.clone(),
          put: async (address, response) => void store.set(address, response),
        };
      },
      match: async () => undefined,
      keys: async () => [...stores.keys()],
      delete: async (name) => stores.delete(name),
    },
  };
}

const form = (entries: Readonly<Record<string, string | File>>): FormData => {
  const made = new FormData();
  for (const [name, value] of Object.entries(entries)) made.append(name, value);
  return made;
};

test('a shared file waits for the page under its own name, and is handed out once', async () => {
  const here = world();
  const file = new File(['{"format":"x"}'], 'Übung 3.lesson.json', { type: 'application/json' });
  expect(await receiveShare(form({ title: 'Week 3', file }), here)).toBe(`${SCOPE}?shared`);
  const taken = await takeShared(here);
  expect(taken?.file.name).toBe('Übung 3.lesson.json');
  expect(await taken?.file.text()).toBe('{"format":"x"}');
  expect(taken?.count).toBe(1);
  expect(await takeShared(here)).toBeNull();
});

test('of several files the first one waits, and how many came is told', async () => {
  const here = world();
  const several = form({});
  for (const name of ['week-1.json', 'week-2.json']) several.append('file', new File(['{}'], name));
  await receiveShare(several, here);
  expect(await takeShared(here)).toMatchObject({ file: { name: 'week-1.json' }, count: 2 });
});

test('a shared link to a lesson is opened where it leads to, and nothing else leads anywhere', async () => {
  const shared = (text: string) => receiveShare(form({ text }), world());
  const address = 'https://host.example/some/where/';
  expect(await shared(`Practise this: ${address}practice.html#lesson=abc`)).toBe(
    `${SCOPE}practice.html#lesson=abc`,
  );
  expect(await shared(`${address}?practice#lesson=abc`)).toBe(`${SCOPE}practice.html#lesson=abc`);
  expect(await shared(`${address}#lesson=abc`)).toBe(`${SCOPE}#lesson=abc`);
  // A link to another place is not followed: what it holds is read here.
  expect(await shared('https://elsewhere.example/x.html#lesson=abc')).toBe(`${SCOPE}#lesson=abc`);
  expect(await shared('hello')).toBe(`${SCOPE}?shared`);
});
