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
  expect(taken?.name).toBe('Übung 3.lesson.json');
  expect(await taken?.text()).toBe('{"format":"x"}');
  expect(await takeShared(here)).toBeNull();
});

test('a shared link to a lesson is opened as it is, and nothing else leads anywhere', async () => {
  const link = 'Practise this: https://host.example/some/where/practice.html#lesson=abc';
  expect(await receiveShare(form({ text: link }), world())).toBe(`${SCOPE}#lesson=abc`);
  expect(await receiveShare(form({ text: 'hello' }), world())).toBe(`${SCOPE}?shared`);
});
