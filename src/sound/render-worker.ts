import { unreachable } from '../core/base';
import { answerJobs } from '../workers';
import type { RenderAnswer, RenderJob, SentJob } from './messages';
import { createReceived } from './sending';
import { createMemory } from './synthesis/memory';
import { renderMix } from './synthesis/mix';
import { placePerformance } from './synthesis/score';
import { buffersOf, renderHead, renderPiece, renderRest } from './synthesis/segment';
import { createKit, type Kit } from './synthesis/voices';
import { encodeWav } from './wav';

/**
 * The sounds made so far, by sample rate: a change of tempo or line needs few new ones. Heads are made for several rates
 * while the device's own is not known; whatever else is asked for needs one.
 */
const kits = new Map<number, Kit>();

/** What the page has played. */
const memory = createMemory();

function kitFor({ kind, sampleRate }: RenderJob): Kit {
  const kit = kits.get(sampleRate) ?? createKit(sampleRate, memory);
  if (kind !== 'head') kits.clear();
  kits.set(sampleRate, kit);
  return kit;
}

const received = createReceived();

function work(sent: SentJob): RenderAnswer {
  const job = received.unpack(sent);
  if (job === null) return { kind: 'unknown' };
  const sounds = kitFor(job);
  switch (job.kind) {
    case 'place':
      placePerformance(job.performance, sounds);
      return { kind: 'placed' };
    case 'piece':
      return { kind: 'piece', piece: renderPiece(job.request, sounds, job.from, job.length) };
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
    case 'head':
      return buffersOf(answer.head.lead);
    case 'rest':
      return buffersOf(answer.rest.round, answer.rest.after);
    case 'piece':
      return buffersOf(answer.piece);
    case 'wav':
      return [answer.bytes.buffer];
    default:
      return [];
  }
}

answerJobs(work, { kind: 'failed' }, transferOf, memory.giveBack);
