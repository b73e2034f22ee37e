import { unreachable } from '../core/base';
import { answerJobs } from '../workers';
import type { RenderAnswer, RenderJob } from './messages';
import { renderMix } from './synthesis/mix';
import { buffersOf, renderHead, renderRest, renderSegment } from './synthesis/segment';
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
  switch (job.kind) {
    case 'segment':
      return { kind: 'segment', segment: renderSegment(job.request, sounds) };
    case 'head':
      return { kind: 'head', head: renderHead(job.request, sounds) };
    case 'rest':
      return { kind: 'rest', rest: renderRest(job.request, sounds) };
    case 'wav':
      return { kind: 'wav', bytes: encodeWav(renderMix(job.performance, job.mix, sounds, job.rounds)) };
    default:
      return unreachable(job);
  }
}

function transferOf(answer: RenderAnswer): ArrayBuffer[] {
  switch (answer.kind) {
    case 'segment':
      return buffersOf(answer.segment);
    case 'head':
      return buffersOf(answer.head);
    case 'rest':
      return buffersOf(answer.rest);
    case 'wav':
      return [answer.bytes.buffer];
    default:
      return [];
  }
}

answerJobs(work, { kind: 'failed' }, transferOf);
