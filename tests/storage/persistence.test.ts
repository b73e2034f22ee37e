import { expect, test } from 'vitest';
import { createKeeping } from '../../src/app/storage/persistence';

/** A browser that answers as it is told, and counts how often it is asked. */
function manager(answers: { granted: boolean; grants: boolean }) {
  const asked = { count: 0 };
  return {
    asked,
    manager: {
      persisted: async () => answers.granted,
      persist: async () => {
        asked.count += 1;
        answers.granted ||= answers.grants;
        return answers.granted;
      },
    },
  };
}

const settled = () => new Promise((resolve) => setTimeout(resolve));

test('the browser is asked once, and what it says is told', async () => {
  for (const grants of [true, false]) {
    const { manager: browser, asked } = manager({ granted: false, grants });
    const keeping = createKeeping(browser);
    expect(await keeping.state()).toBe('not granted');
    keeping.ask();
    keeping.ask();
    await settled();
    expect(asked.count).toBe(1);
    expect(await keeping.state()).toBe(grants ? 'granted' : 'not granted');
  }
});

test('what was granted before is not asked for again', async () => {
  const { manager: browser, asked } = manager({ granted: true, grants: true });
  createKeeping(browser).ask();
  await settled();
  expect(asked.count).toBe(0);
});

test('a browser that says nothing, or fails, is not waited for and not believed', async () => {
  const silent = createKeeping(null);
  silent.ask();
  expect(await silent.state()).toBe('unknown');
  const refuse = async (): Promise<boolean> => {
    throw new DOMException('', 'SecurityError');
  };
  const failing = createKeeping({ persisted: refuse, persist: refuse });
  failing.ask();
  expect(await failing.state()).toBe('unknown');
});
