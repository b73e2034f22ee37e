import { expect, test } from 'vitest';
import { bpm } from '../../src/core/base';
import { skaTune } from '../sound/tunes';
import { openBench } from '../support/browser';
import { minutesOf, tell } from './minutes';

const TEMPO = 170;
const CLICK = { bass: false, drums: false, chops: false, organ: false, click: true };

/**
 * A round is a whole number of samples and repeats exactly, so that the parts can never come apart; what is lost to
 * the rounding comes to less than half a sample a round: here about a millionth, 0.7 ms in ten minutes.
 */
const MOST = 0.001;

interface Heard {
  readonly rate: number;
  /** Samples of the device at which a click began. */
  readonly onsets: readonly number[];
}

const MINUTES = minutesOf('SOAK_DRIFT_MINUTES', 10);

test(`${MINUTES} minutes at ${TEMPO} bpm come out of the loudspeaker without drift, gap or double hit`, async () => {
  const { page, expectClean } = await openBench();
  await page.evaluate(() => {
    const onsets: number[] = [];
    let rate = 0;
    let quiet = Number.POSITIVE_INFINITY;
    window.listen(({ frame, left }, sampleRate) => {
      rate = sampleRate;
      if (left === null) {
        quiet += 128;
        return;
      }
      for (const [index, sample] of left.entries()) {
        if (Math.abs(sample) < 0.005) quiet += 1;
        else {
          if (quiet > rate * 0.05) onsets.push(frame + index);
          quiet = 0;
        }
      }
    });
    Object.assign(window, { heard: () => ({ rate, onsets }) });
  });
  const started = await page.evaluate(
    async ({ mix, performance }) => {
      const { createPlayer } = await window.rooms.sound();
      const player = createPlayer();
      Object.assign(window, { player });
      return player.play({ steps: [{ performance, rounds: 'endless' }], mix });
    },
    { mix: CLICK, performance: skaTune({ tempo: bpm(TEMPO), countIn: 0 }) },
  );
  expect(started.ok).toBe(true);
  for (let minute = 1; minute <= MINUTES; minute += 1) {
    await page.waitForTimeout(60_000);
    const { rate, onsets } = await page.evaluate((): Heard => Reflect.get(window, 'heard')());
    tell(
      `${minute} min: ${onsets.length} clicks, ${(worst({ rate, onsets }) * 1000).toFixed(3)} ms off at most`,
    );
  }
  await page.waitForTimeout(Math.max(0, (MINUTES % 1) * 60_000));
  const heard = await page.evaluate((): Heard => Reflect.get(window, 'heard')());
  expectClean();
  expect(heard.onsets.length).toBeGreaterThan(MINUTES * TEMPO * 0.95);
  expect(worst(heard)).toBeLessThan(MOST);
});

/** The first sound fades in, and its onsets come late: they are not counted. */
const FADED_IN = 8;

/** Seconds by which any click lies off the beat that the first ones set; a missing or a doubled one is off by far. */
function worst({ rate, onsets }: Heard): number {
  const first = onsets[FADED_IN] ?? 0;
  const beat = (60 / TEMPO) * rate;
  return onsets
    .slice(FADED_IN)
    .reduce((most, onset, index) => Math.max(most, Math.abs(onset - first - index * beat) / rate), 0);
}
