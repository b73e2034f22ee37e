import type { WorkerCall, WorkerReply } from '../workers';
import type { RenderAnswer, RenderJob } from './messages';
import { renderMix } from './synthesis/mix';
import { buffersOf, renderSegment } from './synthesis/segment';
import { createKit, type Kit } from './synthesis/voices';
import { encodeWav } from './wav';

/** The sounds made so far, for the sample rate in use: a change of tempo or line needs few new ones. */
let kit: Kit | null = null;

function kitFor(sampleRate: number): Kit {
  const current = kit?.sampleRate === sampleRate ? kit : createKit(sampleRate);
  kit = current;
  return current;
}

function work(job: RenderJob): { readonly answer: RenderAnswer; readonly transfer: ArrayBuffer[] } {
  const sounds = kitFor(job.sampleRate);
  if (job.kind === 'segment') {
    const segment = renderSegment(job.request, sounds);
    return { answer: { kind: 'segment', segment }, transfer: buffersOf(segment) };
  }
  const bytes = encodeWav(renderMix(job.performance, job.mix, sounds, job.rounds));
  return { answer: { kind: 'wav', bytes }, transfer: [bytes.buffer] };
}

self.addEventListener('message', ({ data }: MessageEvent<WorkerCall<RenderJob>>) => {
  // What is called off ends with the worker.
  if (!('job' in data)) return;
  let done: ReturnType<typeof work>;
  try {
    done = work(data.job);
  } catch {
    done = { answer: { kind: 'failed' }, transfer: [] };
  }
  const reply: WorkerReply<RenderAnswer> = { id: data.id, answer: done.answer };
  self.postMessage(reply, { transfer: done.transfer });
});
