import type { WorkerCall, WorkerReply } from '../../workers';
import { answerReading } from './answer';
import type { ReadingAnswer, ReadingJob } from './messages';

self.addEventListener('message', async ({ data }: MessageEvent<WorkerCall<ReadingJob>>) => {
  if (!('job' in data)) return;
  const { id, job } = data;
  try {
    const send = (reply: WorkerReply<ReadingAnswer>): void => self.postMessage(reply);
    send({ id, answer: await answerReading(job, (share) => send({ id, alive: true, share })) });
  } catch (fault) {
    // Its part could not be fetched: the page hears of it as of a worker that died.
    setTimeout(() => {
      throw fault;
    });
  }
});
