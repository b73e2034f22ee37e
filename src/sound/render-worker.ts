import { answerJobs } from '../workers';
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

function work(job: RenderJob): RenderAnswer {
  const sounds = kitFor(job.sampleRate);
  if (job.kind === 'segment') return { kind: 'segment', segment: renderSegment(job.request, sounds) };
  return { kind: 'wav', bytes: encodeWav(renderMix(job.performance, job.mix, sounds, job.rounds)) };
}

const transferOf = (answer: RenderAnswer): ArrayBuffer[] =>
  answer.kind === 'segment' ? buffersOf(answer.segment) : answer.kind === 'wav' ? [answer.bytes.buffer] : [];

answerJobs(work, { kind: 'failed' }, transferOf);
