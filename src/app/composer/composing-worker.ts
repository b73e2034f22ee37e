import type { Steps } from '../../core/base';
import type { WorkerCall, WorkerReply } from '../../workers';
import { createAnswers } from './answers';
import type { ComposerAnswer, ComposerJob } from './messages';

const answers = createAnswers();

/** Questions that nobody waits for any more; each leaves with its answer. */
const calledOff = new Set<number>();

const tell = (reply: WorkerReply<ComposerAnswer>): void => self.postMessage(reply);

/** Lets what came in meanwhile be heard. */
const nextTurn = () => new Promise((resolve) => setTimeout(resolve));

async function work(id: number, steps: Steps<ComposerAnswer>): Promise<ComposerAnswer> {
  for (;;) {
    if (calledOff.has(id)) return { kind: 'called off' };
    const step = steps.next();
    if (step.done === true) return step.value;
    tell({ id, alive: true });
    await nextTurn();
  }
}

self.addEventListener('message', async ({ data }: MessageEvent<WorkerCall<ComposerJob>>) => {
  const { id } = data;
  if (!('job' in data)) {
    calledOff.add(id);
    return;
  }
  const answer = await work(id, answers(data.job)).catch((): ComposerAnswer => ({ kind: 'failed' }));
  calledOff.delete(id);
  tell({ id, answer });
});
