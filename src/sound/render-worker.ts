import { unreachable } from '../core/base';
import { answerJobs } from '../workers';
import type { RenderAnswer, RenderJob } from './messages';
import { renderMix } from './synthesis/mix';
import { buffersOf, renderHead, renderRest, renderSegment } from './synthesis/segment';
import { createKit, type Kit } from './synthesis/voices';
import { encodeWav } from './wav';

/**
 * The sounds made so far, by sample rate: a change of tempo or line needs few new ones. Heads are made for several rates
 * while the device's own is not known; whatever else is asked for needs one.
 */
const kits = new Map<number, Kit>();

function kitFor({ kind, sampleRate }: RenderJob): Kit {
  const kit = kits.get(sampleRate) ?? createKit(sampleRate);
  if (kind !== 'head') kits.clear();
  kits.set(sampleRate, kit);
  return kit;
}

function work(job: RenderJob): RenderAnswer {
  const sounds = kitFor(job);
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
