import type { Steps } from '../../core/base';
import { createAnswers } from './answers';
import type { ComposerAnswer, ComposerCall, ComposerReply } from './messages';

const answers = createAnswers();

/** Questions that nobody waits for any more; each leaves with its answer. */
const calledOff = new Set<number>();

/** Lets what came in meanwhile be heard. */
const nextTurn = () => new Promise((resolve) => setTimeout(resolve));

async function work(id: number, steps: Steps<ComposerAnswer>): Promise<ComposerAnswer> {
  for (;;) {
    if (calledOff.has(id)) return { kind: 'called off' };
    const step = steps.next();
    if (step.done === true) return step.value;
    await nextTurn();
  }
}

self.addEventListener('message', async ({ data: { id, job } }: MessageEvent<ComposerCall>) => {
  if (job === 'called off') {
    calledOff.add(id);
    return;
  }
  const answer = await work(id, answers(job)).catch((): ComposerAnswer => ({ kind: 'failed' }));
  calledOff.delete(id);
  const reply: ComposerReply = { id, answer };
  self.postMessage(reply);
});
