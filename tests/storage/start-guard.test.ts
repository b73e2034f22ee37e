import { expect, test } from 'vitest';
import { createStartGuard } from '../../src/app/storage/start-guard';

/** A browser whose pages come and go as the test says. */
function browser() {
  const notes = new Map<string, string>();
  const held = new Map<string, number>();
  const waits: string[] = [];
  let pages = 0;
  const openPage = () => {
    pages += 1;
    const page = `page-${pages}`;
    const own: string[] = [];
    let rest: () => void = () => {};
    let leave: () => void = () => {};
    const guard = createStartGuard({
      page,
      notes: {
        names: () => [...notes.keys()],
        read: (name) => notes.get(name) ?? null,
        write: (name, text) => notes.set(name, text),
        remove: (name) => notes.delete(name),
      },
      locks: {
        hold: (name) => {
          held.set(name, (held.get(name) ?? 0) + 1);
          own.push(name);
          return () => held.delete(name);
        },
        free: async (name) => {
          if (held.has(name)) waits.push(name);
        },
      },
      atRest: (work) => {
        rest = work;
      },
      onLeave: (work) => {
        leave = work;
      },
    });
    return {
      guard,
      comesToRest: () => rest(),
      leaves: () => leave(),
      dies: () => {
        for (const name of own) held.delete(name);
      },
    };
  };
  return { openPage, notes, waits };
}

test('a start that came to its end, or was left on the way, leaves nothing behind', async () => {
  const { openPage, notes } = browser();
  const [done, left] = [openPage(), openPage()];
  done.guard.opening('lesson-1');
  expect(notes.size).toBe(1);
  done.guard.drawn();
  expect(notes.size, 'drawn, and not yet at rest').toBe(1);
  done.comesToRest();
  left.guard.opening('lesson-2');
  left.leaves();
  expect(notes.size).toBe(0);
  expect(await openPage().guard.begin()).toEqual(new Set());
});

test('what a start that froze was opening is told to the next one, once', async () => {
  const { openPage } = browser();
  const frozen = openPage();
  frozen.guard.opening('lesson-1');
  frozen.dies();
  expect(await openPage().guard.begin()).toEqual(new Set(['lesson-1']));
  expect(await openPage().guard.begin()).toEqual(new Set());
});

test('what is opened later freezes the page the same way, and an earlier rest does not speak for it', async () => {
  const { openPage } = browser();
  const page = openPage();
  page.guard.opening('lesson-1');
  page.guard.drawn();
  page.guard.opening('lesson-2');
  page.comesToRest();
  page.dies();
  expect(await openPage().guard.begin()).toEqual(new Set(['lesson-2']));
});

test('a page that failed keeps its note when it is loaded again', async () => {
  const { openPage } = browser();
  const page = openPage();
  page.guard.opening('lesson-1');
  page.guard.failed();
  page.leaves();
  expect(await openPage().guard.begin()).toEqual(new Set(['lesson-1']));
});

test('a page that is starting beside this one is waited for', async () => {
  const { openPage, waits } = browser();
  const [one, other] = [openPage(), openPage()];
  one.guard.opening('lesson-1');
  await other.guard.begin();
  expect(waits).toHaveLength(1);
});
