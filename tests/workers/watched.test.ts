import { expect, test } from 'vitest';
import { failure, success } from '../../src/core/base';
import { type WorkerReply, watchWorker } from '../../src/workers';

/** A worker whose every word the test speaks. */
class FakeWorker {
  readonly heard: unknown[] = [];
  readonly given: unknown[] = [];
  ended = false;
  private readonly listeners = new Map<string, ((event: MessageEvent) => void)[]>();
  postMessage(message: unknown, transfer: readonly unknown[] = []): void {
    this.heard.push(message);
    this.given.push(...transfer);
  }
  terminate(): void {
    this.ended = true;
  }
  addEventListener(type: string, listener: (event: MessageEvent) => void): void {
    this.listeners.set(type, [...(this.listeners.get(type) ?? []), listener]);
  }
  emit(type: string, data?: WorkerReply<string>): void {
    for (const listener of this.listeners.get(type) ?? []) listener(new MessageEvent(type, { data }));
  }
}

/** A watched worker, every one that was started, and a clock that the test lets beat. */
function watched() {
  const started: FakeWorker[] = [];
  const beats = new Set<() => void>();
  const worker = watchWorker<string, string>(
    () => {
      const fresh = new FakeWorker();
      started.push(fresh);
      return fresh;
    },
    (beat) => {
      beats.add(beat);
      return () => beats.delete(beat);
    },
  );
  const seconds = (count: number): void => {
    for (let second = 0; second < count; second += 1) for (const beat of [...beats]) beat();
  };
  const nth = (index: number): FakeWorker => {
    const found = started[index];
    if (found === undefined) throw new Error(`No worker ${index} was started.`);
    return found;
  };
  return { worker, started, nth, seconds, beats };
}

test('answers come to those who asked, and a worker at rest is not watched', async () => {
  const { worker, started, nth, seconds, beats } = watched();
  const [one, other] = [worker.ask('one'), worker.ask('other')];
  nth(0).emit('message', { id: 2, answer: 'second' });
  nth(0).emit('message', { id: 1, answer: 'first' });
  expect(await one).toEqual(success('first'));
  expect(await other).toEqual(success('second'));
  expect(beats.size).toBe(0);
  seconds(1000);
  expect(nth(0).ended).toBe(false);
  expect(started).toHaveLength(1);
});

test('a silent worker is ended, its question is without an answer, and those behind it go to a fresh one', async () => {
  const { worker, nth, seconds } = watched();
  const [stuck, behind] = [worker.ask('stuck', { patience: 5 }), worker.ask('behind', { patience: 5 })];
  seconds(4);
  expect(nth(0).ended).toBe(false);
  seconds(1);
  expect(await stuck).toEqual(failure('silent'));
  expect(nth(0).ended).toBe(true);
  expect(nth(1).heard).toEqual([{ id: 2, job: 'behind' }]);
  // What the ended one still had on its way is nobody's.
  nth(0).emit('message', { id: 2, answer: 'too late' });
  nth(0).emit('error');
  nth(1).emit('message', { id: 2, answer: 'in time' });
  expect(await behind).toEqual(success('in time'));
});

test('where the fresh worker is silent as well, nobody waits for a third', async () => {
  const { worker, started, seconds } = watched();
  const questions = ['one', 'two', 'three', 'four'].map((job) => worker.ask(job, { patience: 5 }));
  seconds(10);
  expect(await Promise.all(questions)).toEqual(questions.map(() => failure('silent')));
  expect(started).toHaveLength(2);
  const again = worker.ask('again', { patience: 5 });
  started[2]?.emit('message', { id: 5, answer: 'here' });
  expect(await again).toEqual(success('here'));
});

test('a sign of life, and every answer, begins the count anew', async () => {
  const { worker, nth, seconds } = watched();
  const shares: number[] = [];
  const [long, next] = [
    worker.ask('long', { patience: 5, onShare: (share) => shares.push(share) }),
    worker.ask('next', { patience: 5 }),
  ];
  for (let step = 0; step < 4; step += 1) {
    seconds(4);
    nth(0).emit('message', { id: 1, alive: true, share: 0.5 });
  }
  nth(0).emit('message', { id: 1, answer: 'done' });
  expect(await long).toEqual(success('done'));
  expect(shares).toEqual([0.5, 0.5, 0.5, 0.5]);
  seconds(4);
  nth(0).emit('message', { id: 2, answer: 'done, too' });
  expect(await next).toEqual(success('done, too'));
  // A question after a rest has all its time.
  const later = worker.ask('later', { patience: 5 });
  seconds(4);
  nth(0).emit('message', { id: 3, answer: 'at last' });
  expect(await later).toEqual(success('at last'));
});

test('a worker that dies, or cannot be started, fails every question at once; the next one starts another', async () => {
  const { worker, nth } = watched();
  const questions = [worker.ask('one'), worker.ask('other')];
  nth(0).emit('error');
  expect(await Promise.all(questions)).toEqual([failure('failed'), failure('failed')]);
  const again = worker.ask('again');
  nth(1).emit('message', { id: 3, answer: 'here' });
  expect(await again).toEqual(success('here'));

  const none = watchWorker<string, string>(() => {
    throw new DOMException('', 'SecurityError');
  });
  none.warm();
  expect(await none.ask('anything')).toEqual(failure('failed'));
});

test('what is called off is told to the worker, what is cancelled ends with it', async () => {
  const { worker, started, nth } = watched();
  const stop = new AbortController();
  const told = worker.ask('told', { signal: stop.signal });
  stop.abort();
  expect(nth(0).heard.at(-1)).toEqual({ id: 1, calledOff: true });
  nth(0).emit('message', { id: 1, answer: 'called off' });
  expect(await told).toEqual(success('called off'));

  const cancelled = worker.ask('cancelled');
  worker.cancel();
  expect(await cancelled).toEqual(failure('called off'));
  expect(nth(0).ended).toBe(true);
  worker.cancel();
  worker.warm();
  expect(started).toHaveLength(2);
  worker.cancel();
  expect(nth(1).ended, 'nothing is being done by it').toBe(false);
  worker.dispose();
  expect(nth(1).ended).toBe(true);
});

test('memory goes back to the worker that runs, without a question, and nowhere where none does', () => {
  const { worker, started, seconds } = watched();
  worker.giveBack([new ArrayBuffer(8)]);
  expect(started).toHaveLength(0);
  worker.warm();
  const memory = new ArrayBuffer(16);
  worker.giveBack([memory]);
  expect(started[0]?.heard).toEqual([{ givenBack: [memory] }]);
  expect(started[0]?.given).toEqual([memory]);
  seconds(100);
  expect(started[0]?.ended).toBe(false);
});
