import { expect, test } from 'vitest';
import { failure, success } from '../../src/core/base';
import { type Fed, feed } from '../../src/sound/feeding';
import type { RenderJob } from '../../src/sound/messages';
import type { RenderResult } from '../../src/sound/renderer';
import { silence } from '../../src/sound/synthesis/stems';
import { skaTune } from './tunes';

const RATE = 1000;
const LEAD = 4 * RATE;
const PIECE = 6 * RATE;
const REQUEST = { performance: skaTune({ countIn: 0 }), rounds: 'endless', begin: 0, leaving: null } as const;
const LONG = {
  sampleRate: RATE,
  begin: 0,
  leadLength: LEAD,
  roundLength: 60 * RATE,
  roundOffset: LEAD,
  total: null,
};

/** A device whose time goes on when it is told to, and a worker that takes so many samples of it for a piece. */
function fed(
  head: Fed['head'],
  answer: (job: RenderJob) => RenderResult = (job) =>
    success(
      job.kind === 'piece'
        ? { kind: 'piece', piece: silence(job.length) }
        : { kind: 'rest', rest: { round: silence(1), after: null } },
    ),
) {
  let now = 0;
  let cut = Number.POSITIVE_INFINITY;
  const waiting: { readonly at: number; readonly callback: () => void }[] = [];
  const asked: { readonly kind: string; readonly at: number }[] = [];
  const brought: number[] = [];
  const faults: string[] = [];
  const givenBack: number[] = [];
  const done = feed(
    {
      render: async (job) => {
        asked.push({ kind: job.kind, at: now });
        return answer(job);
      },
      // Only what is on the deck already.
      giveBack: () => givenBack.push(brought.at(-1) ?? Number.NaN),
    },
    {
      sampleRate: RATE,
      now: () => now,
      after: (seconds, callback) => waiting.push({ at: now + seconds * RATE, callback }),
    },
    {
      cue: {
        complete: () => brought.push(-1),
        follow: (_, from) => brought.push(from),
        isOver: (from) => from >= cut,
      },
      request: REQUEST,
      head,
      start: 0,
    },
    (fault) => faults.push(fault),
  );
  const settle = async () => {
    for (let turn = 0; turn < 20; turn += 1) await Promise.resolve();
  };
  /** Lets the time go on to a sample, all that was to be called on its way included. */
  const goTo = async (sample: number) => {
    await settle();
    for (;;) {
      const next = waiting.findIndex(({ at }) => at <= sample);
      if (next < 0) break;
      const [due] = waiting.splice(next, 1);
      now = Math.max(now, due?.at ?? now);
      due?.callback();
      await settle();
    }
    now = sample;
    await settle();
  };
  /** The page stands still until a sample. */
  const halt = async (sample: number) => {
    now = sample;
    for (const { callback } of waiting.splice(0)) callback();
    await goTo(sample);
  };
  const cutAt = (sample: number) => {
    cut = sample;
  };
  return { done, goTo, halt, asked, brought, givenBack, faults, cutAt };
}

test('a long round comes in pieces that follow each other, two of them ahead of what sounds', async () => {
  const { goTo, brought, givenBack } = fed(LONG);
  for (let second = 0; second < 100; second += 1) {
    await goTo(second * RATE);
    expect(brought).toEqual(Array.from({ length: brought.length }, (_, piece) => LEAD + piece * PIECE));
    const made = LEAD + brought.length * PIECE - second * RATE;
    expect(made).toBeGreaterThanOrEqual(2 * PIECE);
    expect(made).toBeLessThanOrEqual(3 * PIECE);
    expect(givenBack).toEqual(brought);
  }
});

test('after a halt it goes on with what sounds by then', async () => {
  const { goTo, halt, brought } = fed(LONG);
  await goTo(RATE);
  expect(brought).toEqual([LEAD, LEAD + PIECE]);
  await halt(40.5 * RATE);
  expect(brought).toEqual([LEAD, LEAD + PIECE, 40.5 * RATE, 46.5 * RATE, 52.5 * RATE]);
});

test('what was cut, failed or is over is fed no more', async () => {
  const cut = fed(LONG);
  await cut.goTo(RATE);
  cut.cutAt(2 * RATE);
  const before = cut.brought.length;
  await cut.goTo(60 * RATE);
  expect(cut.brought).toHaveLength(before);
  await cut.done;

  const over = fed(LONG, (job) =>
    success({ kind: 'piece', piece: silence(job.kind === 'piece' && job.from < 20 * RATE ? job.length : 0) }),
  );
  await over.goTo(60 * RATE);
  await over.done;
  expect(over.brought).toEqual([LEAD, LEAD + PIECE, LEAD + 2 * PIECE]);

  const failed = fed(LONG, () => failure('Too large.'));
  await failed.done;
  expect(failed.faults).toEqual(['Too large.']);
});

test('a short round comes whole, once', async () => {
  const { done, asked, brought, givenBack } = fed({ ...LONG, roundLength: 20 * RATE });
  await done;
  expect(asked.map(({ kind }) => kind)).toEqual(['rest']);
  expect(brought).toEqual([-1]);
  expect(givenBack).toEqual([-1]);
});
