import { expect, test } from 'vitest';
import { pageClock } from '../../src/app/clock';
import { attempt } from '../../src/app/pages/saving/attempt';
import { startSession } from '../../src/app/state';
import { failure } from '../../src/core/base';
import { device } from '../storage/device';

const noAnswer = async () => failure('failed' as const);

/** What is said where something was to be made and `problem` was thrown. */
async function saidOf(problem: Error): Promise<string | null> {
  const composer = {
    ...{ compose: noAnswer, check: noAnswer, brought: noAnswer, repair: noAnswer },
    ...{ explain: noAnswer, rankTakes: noAnswer, regrade: noAnswer, keysFor: noAnswer },
  };
  const session = await startSession(device().openWindow(pageClock), composer, { watch: () => () => {} });
  await attempt(session, 'The picture', async (): Promise<void> => {
    throw problem;
  });
  session.end();
  return session.editor.getState().notice;
}

// HTML, module map: a browser may not fetch again what it could not fetch once; only the page loaded anew does.
test('where a part of the page could not be fetched, loading the page again is asked for, not another try', async () => {
  for (const words of ['Failed to fetch dynamically imported module', 'error loading module', 'Load failed'])
    expect(await saidOf(new TypeError(words))).toBe(
      'The picture could not be made. The part of the page that makes it could not be loaded. Check that the page is still reachable and load it again.',
    );
  expect(await saidOf(new Error('The canvas is full.'))).toBe(
    'The picture could not be made. The lesson is as it was.',
  );
});
