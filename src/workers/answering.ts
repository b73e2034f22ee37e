import type { GivenBack, WorkerCall, WorkerReply } from './messages';

/**
 * In a worker: answers every job that comes in. What is called off ends with the worker, so nothing is heard of that.
 * @param work - tells how much of it is done, from 0 to 1, which is a sign of life
 * @param failed - the answer where the work throws
 * @param transferOf - what of an answer is given away instead of copied
 * @param onGivenBack - hears of the memory that comes back
 */
export function answerJobs<Job, Answer>(
  work: (job: Job, onShare: (share: number) => void) => Answer | Promise<Answer>,
  failed: Answer,
  transferOf: (answer: Answer) => Transferable[],
  onGivenBack: (buffers: readonly ArrayBuffer[]) => void = () => {},
): void {
  self.addEventListener('message', async ({ data }: MessageEvent<WorkerCall<Job> | GivenBack>) => {
    if ('givenBack' in data) onGivenBack(data.givenBack);
    if (!('job' in data)) return;
    const { id, job } = data;
    const tell = (reply: WorkerReply<Answer>, transfer: Transferable[] = []): void =>
      self.postMessage(reply, { transfer });
    let answer = failed;
    try {
      answer = await work(job, (share) => tell({ id, alive: true, share }));
    } catch {
      // The page has a sentence for it.
    }
    tell({ id, answer }, transferOf(answer));
  });
}
