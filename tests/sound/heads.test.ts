import { expect, test, vi } from 'vitest';
import { failure, success } from '../../src/core/base';
import { beginningOf, createHeads } from '../../src/sound/heads';
import type { RenderResult } from '../../src/sound/renderer';
import type { SegmentHead } from '../../src/sound/synthesis/segment';
import { silence } from '../../src/sound/synthesis/stems';
import { skaTune } from './tunes';

const RATE = 48_000;

const REQUEST = beginningOf({ performance: skaTune({ countIn: 0 }), rounds: 'endless' });

const headOf = (seconds: number): SegmentHead => ({
  sampleRate: RATE,
  begin: 0,
  leadLength: seconds * RATE,
  roundLength: 60 * RATE,
  roundOffset: seconds * RATE,
  total: null,
  lead: silence(0),
});

/** Heads of a renderer that answers when it is told to, and writes down at which rates it was asked. */
function heads() {
  const asked: number[] = [];
  const answers: ((result: RenderResult) => void)[] = [];
  const cancel = vi.fn(() => {
    for (const answer of answers.splice(0)) answer(success(null));
  });
  const made = createHeads({
    render: ({ sampleRate }) => {
      asked.push(sampleRate);
      return new Promise((answer) => answers.push(answer));
    },
    cancel,
  });
  const answer = (seconds = 4) => answers.shift()?.(success({ kind: 'head', head: headOf(seconds) }));
  return { ...made, asked, answers, answer, cancelled: cancel };
}

test('what was made ready is there at once, and again after it was played', async () => {
  const { head, asked, answer } = heads();
  const first = head(RATE, REQUEST);
  const meanwhile = head(RATE, REQUEST);
  answer();
  expect(await first).toEqual(success(headOf(4)));
  expect(await meanwhile).toBe(await first);
  expect(await head(RATE, { ...REQUEST })).toBe(await first);
  expect(asked).toEqual([RATE]);
});

test('another line, place, number of rounds or sample rate is computed by itself', async () => {
  const { head, asked } = heads();
  for (const request of [
    REQUEST,
    { ...REQUEST, performance: skaTune({ countIn: 1 }) },
    { ...REQUEST, begin: 960 },
    { ...REQUEST, rounds: 2 },
  ])
    void head(RATE, request);
  void head(44_100, { ...REQUEST, rounds: 2 });
  void head(RATE, { ...REQUEST, rounds: 2 });
  expect(asked).toEqual([RATE, RATE, RATE, RATE, 44_100]);
});

test('what was cancelled, even in the same moment, or failed, is computed anew', async () => {
  const { head, asked, answers, answer, cancel, cancelled } = heads();
  const ended = head(RATE, REQUEST);
  cancel();
  const next = head(RATE, REQUEST);
  answer();
  expect(await ended).toEqual(success(null));
  expect(await next).toEqual(success(headOf(4)));
  cancel();
  expect(cancelled).toHaveBeenCalledTimes(2);
  expect(await head(RATE, REQUEST)).toEqual(success(headOf(4)));
  expect(asked).toHaveLength(2);

  const other = { ...REQUEST, rounds: 3 };
  const failed = head(RATE, other);
  answers.shift()?.(failure('Too large.'));
  expect(await failed).toEqual(failure('Too large.'));
  void head(RATE, other);
  expect(asked).toHaveLength(4);
});

test('a head of more than 20 seconds is not kept, and none of another rate than the device has', async () => {
  const { head, asked, answer, keepOnly, cancelled } = heads();
  const long = head(RATE, REQUEST);
  answer(21);
  expect(await long).toEqual(success(headOf(21)));
  void head(RATE, REQUEST);
  expect(asked).toHaveLength(2);
  answer();
  const own = head(44_100, REQUEST);
  answer();
  await own;
  keepOnly(44_100);
  void head(44_100, REQUEST);
  expect(asked).toEqual([RATE, RATE, 44_100]);
  expect(cancelled).not.toHaveBeenCalled();
  void head(RATE, REQUEST);
  expect(asked).toHaveLength(4);
  keepOnly(44_100);
  expect(cancelled).toHaveBeenCalledTimes(1);
});
