import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { bpm } from '../../src/core/base';
import { buildPerformance, type Performance, type PerformanceOptions } from '../../src/core/performance';
import { renderMix } from '../../src/sound/synthesis/mix';
import { placePerformance, sampleAt } from '../../src/sound/synthesis/score';
import { renderHead } from '../../src/sound/synthesis/segment';
import { createKit } from '../../src/sound/synthesis/voices';
import { sheetOf } from '../performance/sheets';
import { decibels, onsetsAfterSilence, peak } from '../sound/measure';
import { SKA_LINE, skaTune } from '../sound/tunes';
import { openBench } from '../support/browser';

const EVERYTHING = { bass: true, drums: true, chops: true, organ: true, click: true };
const CLICK = { bass: false, drums: false, chops: false, organ: false, click: true };

/** Plays the listener inside the page: everything that reaches the loudspeakers passes by it. */
async function listen(page: Page): Promise<void> {
  await page.evaluate(() => {
    const blocks: { frame: number; left: Float32Array | null }[] = [];
    let rate = 0;
    window.listen((block, sampleRate) => {
      rate = sampleRate;
      blocks.push(block);
    });
    const taken = () => {
      const first = blocks[0]?.frame ?? 0;
      const left = new Float32Array((blocks.at(-1)?.frame ?? first) + 128 - first);
      for (const block of blocks) {
        if (block.left !== null) left.set(block.left, block.frame - first);
      }
      const bytes = new Uint8Array(left.buffer);
      let text = '';
      for (let index = 0; index < bytes.length; index += 8192) {
        text += String.fromCharCode(...bytes.subarray(index, index + 8192));
      }
      return { rate, samples: btoa(text) };
    };
    const forget = () => {
      blocks.length = 0;
    };
    Object.assign(window, { taken, forget });
  });
}

/** What has been taken down since the player was opened. */
async function taken(page: Page): Promise<{ readonly rate: number; readonly left: Float32Array }> {
  const { rate, samples } = await page.evaluate((): { rate: number; samples: string } =>
    Reflect.get(window, 'taken')(),
  );
  const bytes = Buffer.from(samples, 'base64');
  return { rate, left: new Float32Array(bytes.buffer, bytes.byteOffset, bytes.length / 4) };
}

/** Starts a player as `window.player` and lets the first sound, which fades in, pass before the test's own. */
async function openPlayer(page: Page): Promise<void> {
  await page.evaluate(
    async ({ mix, performance }) => {
      const { createPlayer } = await window.rooms.sound();
      const player = createPlayer();
      Object.assign(window, { player });
      const result = await player.play({ steps: [{ performance, rounds: 'endless' }], mix });
      if (!result.ok) throw new Error(result.problem);
      player.stop();
    },
    { mix: CLICK, performance: skaTune() },
  );
  await page.waitForTimeout(300);
  await page.evaluate(() => Reflect.get(window, 'forget')());
}

type Performances = readonly Performance[];

/** A tune whose round is too long to be held whole. */
const longTune = (options: Partial<PerformanceOptions>): Performance =>
  buildPerformance(
    sheetOf({
      chart: Array.from({ length: 6 }, () => '| F | Dm | Gm | C7 |').join('\n'),
      feel: 'early-ska',
      bars: Array.from({ length: 24 }, (_, bar) => SKA_LINE[bar % 4] ?? ''),
    }),
    { tempo: bpm(126), countIn: 1, passage: null, ...options },
  );

/** A tune of whole notes. */
const heldTune = (tempo: number): Performance =>
  buildPerformance(sheetOf({ chart: '| F | C |', feel: 'early-ska', bars: ['1 F1 w', '1 C2 w'] }), {
    tempo: bpm(tempo),
    countIn: 0,
    passage: null,
  });

/** Keeps the page's main thread busy for 100 ms again and again. */
const BUSY = `
  (() => {
    const work = () => {
      const end = performance.now() + 100;
      while (performance.now() < end);
      setTimeout(work, 20);
    };
    work();
  })();
`;

describe('what is heard', () => {
  test('the count-in of the first sound is at full level, while the music after it rises', async () => {
    const { page, expectClean } = await openBench();
    await listen(page);
    const tune = skaTune({ tempo: bpm(200) });
    await page.evaluate(
      async ({ mix, performance }) => {
        const { createPlayer } = await window.rooms.sound();
        const player = createPlayer();
        const result = await player.play({ steps: [{ performance, rounds: 1 }], mix });
        if (!result.ok) throw new Error(result.problem);
      },
      { mix: CLICK, performance: tune },
    );
    await page.waitForTimeout(4200);
    const { rate, left } = await taken(page);
    expectClean();
    const start = firstSound(left);
    const beat = Math.round((60 / 200) * rate);
    const peaks = Array.from({ length: 12 }, (_, index) =>
      decibels(peak(left.subarray(start + index * beat, start + index * beat + Math.round(0.1 * rate)))),
    );
    const [one = 0, two = 0, three = 0, four = 0, first = 0] = peaks;
    expect(one).toBeGreaterThan(two);
    expect(Math.abs(three - two)).toBeLessThan(0.5);
    expect(Math.abs(four - two)).toBeLessThan(0.5);
    // The first beat of the music is struck like the first of the count-in, and comes in softly.
    expect(first).toBeLessThan(one - 9);
    expect(Math.abs((peaks[11] ?? 0) - two)).toBeLessThan(0.5);
  });

  test('is the performance to the sample, while the page is busy for 100 ms again and again', async () => {
    const { page, expectClean } = await openBench({ prepare: async () => {} });
    await listen(page);
    await openPlayer(page);
    const tune = skaTune({ tempo: bpm(180) });
    await page.evaluate(BUSY);
    await page.evaluate(
      async ({ mix, performance }) => {
        const player = Reflect.get(window, 'player');
        const result = await player.play({ steps: [{ performance, rounds: 'endless' }], mix });
        if (!result.ok) throw new Error(result.problem);
      },
      { mix: EVERYTHING, performance: tune },
    );
    await page.waitForTimeout(8000);
    const { rate, left } = await taken(page);
    expectClean();

    const expected = renderMix(tune, EVERYTHING, createKit(rate), 2).left;
    const start = firstSound(left);
    const length = Math.min(expected.length, left.length - start, Math.round(7 * rate));
    expect(length).toBeGreaterThan(6 * rate);
    const shift = bestShift(left.subarray(start), expected, rate);
    const wrong: number[] = [];
    for (let index = 0; index < length; index += 1) {
      if (Math.abs((left[start + shift + index] ?? 0) - (expected[index] ?? 0)) > 1e-3) {
        wrong.push(index);
      }
    }
    expect(wrong.length, `wrong from sample ${wrong[0]} to ${wrong.at(-1)}`).toBe(0);
  });

  test('a long round, which comes in pieces, is the performance to the sample on a busy page', async () => {
    const { page, expectClean } = await openBench();
    await listen(page);
    await openPlayer(page);
    const tune = longTune({ tempo: bpm(220), countIn: 0, humaniseSeed: 2, drumSeed: 2 });
    await page.evaluate(BUSY);
    await page.evaluate(
      async ({ mix, performance }) => {
        const player = Reflect.get(window, 'player');
        const result = await player.play({ steps: [{ performance, rounds: 'endless' }], mix });
        if (!result.ok) throw new Error(result.problem);
      },
      { mix: EVERYTHING, performance: tune },
    );
    await page.waitForTimeout(12_500);
    const { rate, left } = await taken(page);
    expectClean();
    const kit = createKit(rate);
    expect(placePerformance(tune, kit).round).toBeGreaterThan(20 * rate);
    const expected = renderMix(tune, EVERYTHING, kit).left;
    const start = firstSound(left);
    // The lead of four seconds, the piece of six behind it, and the beginning of the next.
    const length = Math.min(expected.length, left.length - start, Math.round(11.5 * rate));
    expect(length).toBeGreaterThan(10.5 * rate);
    const shift = bestShift(left.subarray(start), expected, rate);
    const wrong: number[] = [];
    for (let index = 0; index < length; index += 1) {
      if (Math.abs((left[start + shift + index] ?? 0) - (expected[index] ?? 0)) > 1e-3) wrong.push(index);
    }
    expect(wrong.length, `wrong from sample ${wrong[0]} to ${wrong.at(-1)}`).toBe(0);
  });

  test.each([
    ['a short round', skaTune],
    ['a long one', longTune],
  ] as const)(
    'ten changes of tempo in %s come at any beat, without a gap or a double hit',
    async (_, tune) => {
      const { page, expectClean } = await openBench();
      await listen(page);
      await openPlayer(page);
      const tempos = [200, 220, 180, 216, 190, 210, 170, 205, 185, 220, 200];
      const tunes: Performances = tempos.map((tempo) => tune({ tempo: bpm(tempo), countIn: 0 }));
      await page.evaluate(
        async ({ mix, performances }) => {
          const player = Reflect.get(window, 'player');
          const steps = performances.map((performance) => [{ performance, rounds: 'endless' }]);
          await player.play({ steps: steps[0], mix });
          for (const [index, step] of steps.slice(1).entries()) {
            // Now here, now there in the beat.
            await new Promise((resolve) => setTimeout(resolve, 400 + 37 * index));
            const result = await player.change(step);
            if (!result.ok) throw new Error(result.problem);
            // The change is lined up: wait until it is heard.
            while (player.position()?.performance.tempo !== step[0]?.performance.tempo) {
              await new Promise((resolve) => setTimeout(resolve, 10));
            }
          }
          await new Promise((resolve) => setTimeout(resolve, 700));
          player.stop();
        },
        { mix: CLICK, performances: tunes },
      );
      const { rate, left } = await taken(page);
      expectClean();

      const from = firstSound(left);
      const clicks = onsetsAfterSilence(left.subarray(from), 0.05 * rate, 0.005).map(
        (sample) => sample / rate,
      );
      const beats = clicks.slice(1).map((second, index) => second - (clicks[index] ?? 0));
      const lengthOf = (change: number) => 60 / (tempos[change] ?? Number.NaN);
      const changedIn = new Set<number>();
      let changes = 0;
      for (const [index, beat] of beats.entries()) {
        if (Math.abs(beat - lengthOf(changes)) < 0.001) continue;
        // The beat in which the tempo changes has something of both.
        const [least = 0, most = 0] = [lengthOf(changes), lengthOf(changes + 1)].sort(
          (one, other) => one - other,
        );
        expect(beat, `beat after ${changes} changes`).toBeGreaterThan(least - 0.001);
        expect(beat, `beat after ${changes} changes`).toBeLessThan(most + 0.001);
        changes += 1;
        changedIn.add(index % 4);
      }
      expect(changes).toBe(10);
      // Not at bar lines alone.
      expect(changedIn.size).toBeGreaterThan(1);
    },
  );

  test('what is held over a change of the tempo goes on, and nothing is struck twice', async () => {
    const { page, expectClean } = await openBench();
    await listen(page);
    await openPlayer(page);
    const [slow, fast] = [heldTune(100), heldTune(150)];
    const place = await page.evaluate(
      async ({ mix, slow, fast }) => {
        const player = Reflect.get(window, 'player');
        await player.play({ steps: [{ performance: slow, rounds: 'endless' }], mix });
        await new Promise((resolve) => setTimeout(resolve, 700));
        await player.change([{ performance: fast, rounds: 'endless' }]);
        while (player.position()?.performance.tempo !== 150) {
          await new Promise((resolve) => setTimeout(resolve, 5));
        }
        const { tick } = player.position();
        await new Promise((resolve) => setTimeout(resolve, 2500));
        player.stop();
        return tick;
      },
      { mix: { ...CLICK, click: false, bass: true }, slow, fast },
    );
    const { rate, left } = await taken(page);
    expectClean();
    const heard = left.subarray(firstSound(left));
    const kit = createKit(rate);
    // Taken over at every place that can be: what was heard is one of them.
    const places = Array.from({ length: 16 }, (_, step) => (step + 1) * 240 - (step === 15 ? 0 : 12));
    const wrongAt = places
      .filter((tick) => tick <= place)
      .map((tick) => {
        const before = renderMix(slow, { ...CLICK, click: false, bass: true }, kit).left;
        const cut = sampleAt(slow, tick, rate);
        const request = { performance: fast, rounds: 'endless', begin: tick } as const;
        const leaving = { performance: slow, tick, round: 0, entered: 0, heldAt: fast.tempo, before: null };
        const { lead } = renderHead({ ...request, leaving }, kit);
        const after = lead.bass.map((sample) => sample * Math.SQRT1_2);
        const length = Math.min(heard.length, cut + after.length, Math.round(2.5 * rate));
        const expected = new Float32Array(length);
        expected.set(before.subarray(0, cut));
        expected.set(after.subarray(0, length - cut), cut);
        const start = firstSound(expected);
        let most = 0;
        for (let index = 0; index + start < length; index += 1)
          most = Math.max(most, Math.abs((heard[index] ?? 0) - (expected[index + start] ?? 0)));
        return most;
      });
    expect(Math.min(...wrongAt)).toBeLessThan(1e-3);
  });
});

describe('the player', () => {
  test('steps follow each other without a gap, and the end is an end', async () => {
    const { page, expectClean } = await openBench();
    await listen(page);
    await openPlayer(page);
    const slow = skaTune({ tempo: bpm(150), countIn: 1, passage: { first: 1, last: 1 } });
    const fast = skaTune({ tempo: bpm(200), countIn: 0, passage: { first: 1, last: 1 } });
    await page.evaluate(
      async ({ mix, slow, fast }) => {
        const player = Reflect.get(window, 'player');
        const steps = [
          { performance: slow, rounds: 2 },
          { performance: fast, rounds: 1 },
        ];
        await player.play({ steps, mix });
        while (player.state().kind !== 'stopped') {
          await new Promise((resolve) => setTimeout(resolve, 20));
        }
        await new Promise((resolve) => setTimeout(resolve, 300));
      },
      { mix: CLICK, slow, fast },
    );
    const { rate, left } = await taken(page);
    expectClean();
    const clicks = onsetsAfterSilence(left.subarray(firstSound(left)), 0.05 * rate, 0.005);
    const beats = clicks.slice(1).map((sample, index) => (sample - (clicks[index] ?? 0)) / rate);
    expect(beats).toHaveLength(15);
    for (const [index, beat] of beats.entries()) {
      expect(Math.abs(beat - (index < 12 ? 0.4 : 0.3)), `beat ${index}`).toBeLessThan(0.001);
    }
  });

  test('what rings at the end of a step rings on in the next, once', async () => {
    const { page, expectClean } = await openBench();
    await listen(page);
    await openPlayer(page);
    const passage = { first: 3, last: 4 };
    const tunes: Performances = [160, 200].map((tempo) =>
      skaTune({ tempo: bpm(tempo), countIn: 0, passage }),
    );
    await page.evaluate(
      async ({ mix, tunes }) => {
        const player = Reflect.get(window, 'player');
        await player.play({ steps: tunes.map((performance) => ({ performance, rounds: 1 })), mix });
        while (player.state().kind !== 'stopped') await new Promise((resolve) => setTimeout(resolve, 20));
        await new Promise((resolve) => setTimeout(resolve, 1000));
      },
      { mix: EVERYTHING, tunes },
    );
    const { rate, left } = await taken(page);
    expectClean();
    const kit = createKit(rate);
    const expected = new Float32Array(10 * rate);
    let at = 0;
    for (const tune of tunes) {
      for (const [index, sample] of renderMix(tune, EVERYTHING, kit).left.entries())
        expected[at + index] = (expected[at + index] ?? 0) + sample;
      at += placePerformance(tune, kit).round;
    }
    const start = firstSound(left) - firstSound(expected);
    const shift = bestShift(left.subarray(start), expected, rate);
    const wrong: number[] = [];
    for (let index = 0; index < at + rate / 2; index += 1) {
      if (Math.abs((left[start + shift + index] ?? 0) - (expected[index] ?? 0)) > 1e-3) wrong.push(index);
    }
    expect(wrong.length, `wrong from ${wrong[0]} to ${wrong.at(-1)}`).toBe(0);
  });

  test('every round is another one, and they follow each other to the sample with all their rings', async () => {
    const { page, expectClean } = await openBench();
    await listen(page);
    await openPlayer(page);
    const passage = { first: 3, last: 4 };
    const tunes: Performances = [1, 2, 3].map((seed) =>
      skaTune({ tempo: bpm(150), countIn: 0, passage, drumSeed: seed, humaniseSeed: seed }),
    );
    const heard = await page.evaluate(
      async ({ mix, tunes }) => {
        const player = Reflect.get(window, 'player');
        const again = (round: number) => tunes[round];
        const step = { performance: tunes[0], rounds: tunes.length, again };
        const rounds: number[] = [];
        await player.play({ steps: [step], mix });
        while (player.state().kind !== 'stopped') {
          const position = player.position();
          if (position !== null) rounds[position.place.round] = tunes.indexOf(position.performance);
          await new Promise((resolve) => setTimeout(resolve, 20));
        }
        await new Promise((resolve) => setTimeout(resolve, 1000));
        return rounds;
      },
      { mix: EVERYTHING, tunes },
    );
    const { rate, left } = await taken(page);
    expectClean();
    // A round that does not come in time is played again; on a machine that is not laden none is.
    expect(heard).toHaveLength(3);
    expect(new Set(heard).size).toBeGreaterThan(1);
    const kit = createKit(rate);
    const length = placePerformance(tunes[0] as Performance, kit).round;
    const expected = new Float32Array(4 * length);
    for (const [round, tune] of heard.entries()) {
      const sound = renderMix(tunes[tune] as Performance, EVERYTHING, kit).left;
      const at = round * length;
      const heardOfIt = Math.min(sound.length, expected.length - at);
      for (let index = 0; index < heardOfIt; index += 1) {
        expected[at + index] = (expected[at + index] ?? 0) + (sound[index] ?? 0);
      }
    }
    const start = firstSound(left) - firstSound(expected);
    const shift = bestShift(left.subarray(start), expected, rate);
    const wrong: number[] = [];
    for (let index = 0; index < 3 * length + rate / 2; index += 1) {
      if (Math.abs((left[start + shift + index] ?? 0) - (expected[index] ?? 0)) > 1e-3) wrong.push(index);
    }
    expect(wrong.length, `of ${heard.join()} wrong from ${wrong[0]} to ${wrong.at(-1)} by ${length}`).toBe(0);
  });

  test('stops at once, and switches parts while it plays', async () => {
    const { page, expectClean } = await openBench();
    await listen(page);
    await openPlayer(page);
    const times = await page.evaluate(
      async ({ everything, none, performance }) => {
        const player = Reflect.get(window, 'player');
        const wait = (time: number) => new Promise((resolve) => setTimeout(resolve, time));
        await player.play({ steps: [{ performance, rounds: 'endless' }], mix: everything });
        await wait(1500);
        player.setMix(none);
        await wait(800);
        const bar = player.position()?.bar;
        player.setMix(everything);
        await wait(800);
        player.stop();
        await wait(400);
        return { bar, after: player.position(), state: player.state() };
      },
      {
        everything: EVERYTHING,
        none: { ...CLICK, click: false },
        performance: skaTune({ countIn: 0, tempo: bpm(180) }),
      },
    );
    const { rate, left } = await taken(page);
    expectClean();
    expect(times.bar).toBeTypeOf('number');
    expect(times.after).toBeNull();
    expect(times.state).toEqual({ kind: 'stopped', fault: null });
    const loud = loudness(left.subarray(firstSound(left)), rate);
    // Sound, silence while nothing is switched on, sound again, and silence after the stop.
    expect(loud.replace(/(.)\1+/g, '$1')).toMatch(/^x-x-$/);
    expect(loud.split('-').filter(Boolean)).toHaveLength(2);
  });
});

/** A letter for every tenth of a second: `x` where something sounds. */
function loudness(samples: Float32Array, rate: number): string {
  const length = Math.round(rate / 10);
  return Array.from({ length: Math.floor(samples.length / length) }, (_, index) =>
    peak(samples.subarray(index * length, (index + 1) * length)) > 1e-4 ? 'x' : '-',
  ).join('');
}

/** The first sample at which anything is heard. */
const firstSound = (left: Float32Array): number => left.findIndex((sample) => Math.abs(sample) > 1e-5);

/** How many samples, within two thousandths of a second, the sound lies later than expected. */
function bestShift(heard: Float32Array, expected: Float32Array, rate: number): number {
  const reach = Math.round(0.002 * rate);
  let best = { shift: 0, difference: Number.POSITIVE_INFINITY };
  for (let shift = -reach; shift <= reach; shift += 1) {
    let difference = 0;
    for (let index = reach; index < rate / 2; index += 7) {
      difference += Math.abs((heard[index + shift] ?? 0) - (expected[index] ?? 0));
    }
    if (difference < best.difference) {
      best = { shift, difference };
    }
  }
  return best.shift;
}
