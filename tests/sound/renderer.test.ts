import { expect, test } from 'vitest';
import { failure, success } from '../../src/core/base';
import { createRenderer } from '../../src/sound/renderer';
import type { AskOptions, NoAnswer } from '../../src/workers';
import { skaTune } from './tunes';

const JOB = {
  kind: 'wav' as const,
  sampleRate: 44_100,
  performance: skaTune({ countIn: 0 }),
  mix: { bass: true, drums: true, chops: true, organ: true, click: false },
  rounds: 10,
};

/** A renderer whose worker has no answer, for a reason. */
function without(why: NoAnswer) {
  const asked: (AskOptions | undefined)[] = [];
  const renderer = createRenderer({
    warm: () => {},
    ask: async (_, options) => {
      asked.push(options);
      return failure(why);
    },
    giveBack: () => {},
    cancel: () => {},
    dispose: () => {},
  });
  return { renderer, asked };
}

test('sound that is not computed has a sentence for each reason, and what was cancelled has none', async () => {
  expect(await without('silent').renderer.render(JOB)).toEqual(
    failure(expect.stringMatching(/no longer answered.*starts afresh/)),
  );
  expect(await without('failed').renderer.render(JOB)).toEqual(
    failure(expect.stringMatching(/did not let the page compute/)),
  );
  expect(await without('called off').renderer.render(JOB)).toEqual(success(null));
});

test('a sound is given half a minute and as long as it lasts', async () => {
  const { renderer, asked } = without('called off');
  await renderer.render(JOB);
  const { end, beat, tempo } = JOB.performance;
  expect(asked).toEqual([{ patience: 30 + (10 * (end / beat) * 60) / tempo }]);
});
