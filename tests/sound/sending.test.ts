import { expect, test } from 'vitest';
import { success } from '../../src/core/base';
import type { RenderAnswer, RenderJob, SentJob } from '../../src/sound/messages';
import { createRenderer } from '../../src/sound/renderer';
import { createReceived, createSender } from '../../src/sound/sending';
import { skaTune } from './tunes';

const [one, other] = [skaTune({ countIn: 0 }), skaTune({ countIn: 1 })];

const jobOf = (performance: typeof one, left: typeof one | null = null): RenderJob => ({
  kind: 'head',
  sampleRate: 48_000,
  request: {
    performance,
    rounds: 'endless',
    begin: 0,
    leaving: left && { performance: left, tick: 960, round: 0, entered: 0, before: null },
  },
});

/** As it crosses to the worker: nothing of it is the same object there. */
const crossed = (sent: SentJob): SentJob => structuredClone(sent);

test('a performance is sent once, whatever is asked of it, and is the same object in the worker each time', () => {
  const sender = createSender();
  const received = createReceived();
  const first = sender.pack(jobOf(one));
  const second = sender.pack(jobOf(other, one));
  const third = sender.pack({ kind: 'place', sampleRate: 48_000, performance: other });
  expect([first, second, third].map(({ performances }) => performances.length)).toEqual([1, 1, 0]);
  const [a, b] = [first, second].map((sent) => received.unpack(crossed(sent)));
  expect(a).toEqual(jobOf(one));
  expect(b).toEqual(jobOf(other, one));
  expect(b?.kind === 'head' && b.request.leaving?.performance).toBe(
    a?.kind === 'head' && a.request.performance,
  );
});

test('the worker keeps the last ones, and says where it lacks one', () => {
  const sender = createSender();
  const received = createReceived(2);
  const tunes = [1, 2, 3].map((seed) => skaTune({ humaniseSeed: seed }));
  for (const tune of tunes) expect(received.unpack(crossed(sender.pack(jobOf(tune))))).not.toBeNull();
  expect(received.unpack(crossed(sender.pack(jobOf(tunes[1] ?? one))))).not.toBeNull();
  expect(received.unpack(crossed(sender.pack(jobOf(tunes[0] ?? one))))).toBeNull();
});

test('a worker that was started anew is sent what it lacks', async () => {
  let received = createReceived();
  const asked: number[] = [];
  const renderer = createRenderer({
    warm: () => {},
    ask: async (sent) => {
      asked.push(sent.performances.length);
      const answer: RenderAnswer = { kind: received.unpack(crossed(sent)) ? 'placed' : 'unknown' };
      return success(answer);
    },
    giveBack: () => {},
    cancel: () => {},
    dispose: () => {},
  });
  expect(await renderer.render(jobOf(one))).toEqual(success({ kind: 'placed' }));
  received = createReceived();
  expect(await renderer.render(jobOf(other, one))).toEqual(success({ kind: 'placed' }));
  expect(asked).toEqual([1, 1, 2]);
});
