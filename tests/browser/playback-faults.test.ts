import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { PlayerState } from '../../src/sound';
import { skaTune } from '../sound/tunes';
import { openApp, openBench } from '../support/browser';

const MIX = { bass: true, drums: true, chops: true, organ: true, click: false };

interface Outcome {
  readonly ok: boolean;
  readonly problem: string | null;
  readonly states: readonly PlayerState['kind'][];
  readonly fault: string | null;
}

/** Presses play and tells what came of it. */
const play = (page: Page): Promise<Outcome> =>
  page.evaluate(
    async ({ mix, performance }) => {
      const { createPlayer } = await window.rooms.sound();
      const player = createPlayer();
      Object.assign(window, { player });
      const states: PlayerState['kind'][] = [];
      player.subscribe((state) => states.push(state.kind));
      const result = await player.play({ steps: [{ performance, rounds: 'endless' }], mix });
      const state = player.state();
      return {
        ok: result.ok,
        problem: result.ok ? null : result.problem,
        states,
        fault: state.kind === 'stopped' ? state.fault : null,
      };
    },
    { mix: MIX, performance: skaTune({ countIn: 0 }) },
  );

/** Each is a machine on which no sound can be played, and what the person reads then. */
const MACHINES: readonly (readonly [name: string, script: string, sentence: RegExp])[] = [
  [
    'a browser without Web Audio',
    'delete window.AudioContext; delete window.webkitAudioContext;',
    /cannot play sound from a page/,
  ],
  [
    'no audio device',
    `window.AudioContext = class { constructor() { throw new DOMException('', 'NotSupportedError'); } };`,
    /found no working audio device/,
  ],
  [
    'a device whose clock stands still',
    `Object.defineProperty(BaseAudioContext.prototype, 'currentTime', { get: () => 0 });`,
    /found no working audio device/,
  ],
  [
    'a page that may not make a sound by itself',
    `Object.defineProperty(BaseAudioContext.prototype, 'state', { get: () => 'suspended' });
     AudioContext.prototype.resume = () => new Promise(() => {});`,
    /kept the page silent. Click the page once/,
  ],
  [
    'a page that may not start a worker',
    `window.Worker = class { constructor() { throw new DOMException('', 'SecurityError'); } };`,
    /did not let the page compute its sound/,
  ],
  [
    'a worker that dies at once',
    `{ const Own = window.Worker;
       window.Worker = class extends Own { constructor() { super('no-such-worker.js', { type: 'module' }); } }; }`,
    /did not let the page compute its sound/,
  ],
];

describe('where no sound can be played, a sentence says why, and nothing is thrown', () => {
  test.each(MACHINES)('%s', async (name, script, sentence) => {
    const { page, complaints } = await openBench({
      prepare: async (fresh) => {
        await fresh.addInitScript(script);
      },
    });
    const outcome = await play(page);
    expect(outcome.ok).toBe(false);
    expect(outcome.problem).toMatch(sentence);
    expect(outcome.fault).toBe(outcome.problem);
    expect(outcome.states).toEqual(['preparing', 'stopped']);
    if (name !== 'a worker that dies at once') {
      expect(complaints.filter((complaint) => complaint.startsWith('uncaught'))).toEqual([]);
    }
  });
});

describe('a device taken away', () => {
  test('stops with a sentence, and play goes on when it is back', async () => {
    const { page, expectClean } = await openBench({
      prepare: async (fresh) => {
        await fresh.addInitScript(() => {
          const connect = AudioNode.prototype.connect;
          Reflect.set(AudioNode.prototype, 'connect', function (this: AudioNode, ...to: unknown[]) {
            Object.assign(window, { device: this.context });
            return Reflect.apply(connect, this, to);
          });
        });
      },
    });
    expect((await play(page)).ok).toBe(true);
    const after = await page.evaluate(async () => {
      const player = Reflect.get(window, 'player');
      const stopped = new Promise((resolve) => player.subscribe(resolve));
      await Reflect.get(window, 'device').suspend();
      return stopped;
    });
    expect(after).toMatchObject({ kind: 'stopped' });
    expect(after).toHaveProperty('fault', expect.stringMatching(/took the sound away/));
    expect((await play(page)).ok).toBe(true);
    expectClean();
  });
});

/** Outputs that a test plugs in and out: `plug(['', 'headphones'])` in the page. */
const PLUGS = `{
  let outputs = ['default', 'headphones'];
  const devices = navigator.mediaDevices;
  devices.enumerateDevices = async () => [
    { kind: 'audioinput', deviceId: 'microphone' },
    ...outputs.map((deviceId) => ({ kind: 'audiooutput', deviceId })),
  ];
  window.plug = (next) => {
    outputs = next;
    devices.dispatchEvent(new Event('devicechange'));
  };
}`;

test('headphones taken away stop the sound with a sentence; another device plugged in does not', async () => {
  const { page, expectClean } = await openBench({
    prepare: async (fresh) => {
      await fresh.addInitScript(PLUGS);
    },
  });
  expect((await play(page)).ok).toBe(true);
  const seen = await page.evaluate(async () => {
    const player = Reflect.get(window, 'player');
    const plug: (outputs: readonly string[]) => void = Reflect.get(window, 'plug');
    plug(['default', 'headphones', 'television']);
    await new Promise((resolve) => setTimeout(resolve, 100));
    const plugged = player.state();
    const stopped = new Promise((resolve) => player.subscribe(resolve));
    plug(['default', 'television']);
    return { plugged, stopped: await stopped };
  });
  expect(seen.plugged).toEqual({ kind: 'playing' });
  expect(seen.stopped).toMatchObject({ kind: 'stopped', fault: expect.stringMatching(/were taken away/) });
  expect((await play(page)).ok).toBe(true);
  expectClean();
});

test('a tab that is put to sleep plays on, or says why not, when it wakes', async () => {
  const { page, expectClean } = await openBench();
  expect((await play(page)).ok).toBe(true);
  const session = await page.context().newCDPSession(page);
  await session.send('Page.setWebLifecycleState', { state: 'frozen' });
  await new Promise((resolve) => setTimeout(resolve, 1000));
  await session.send('Page.setWebLifecycleState', { state: 'active' });
  const after = await page.evaluate(async () => {
    const player = Reflect.get(window, 'player');
    const first = player.position()?.tick;
    for (let look = 0; look < 100; look += 1) {
      await new Promise((resolve) => setTimeout(resolve, 50));
      const state: PlayerState = player.state();
      if (state.kind === 'stopped') return state.fault;
      if (player.position()?.tick !== first) return 'plays on';
    }
    return 'stands still';
  });
  expect(after).toMatch(/plays on|Press Play/);
  expectClean();
});

test('on the page, a fault is a sentence, and the lesson goes on', async () => {
  const { page } = await openApp({
    prepare: async (fresh) => {
      await fresh.addInitScript(`{
        let device = false;
        const Own = window.AudioContext;
        window.AudioContext = class extends Own {
          constructor(options) {
            if (!device) throw new DOMException('', 'NotSupportedError');
            super(options);
          }
        };
        window.giveDevice = () => { device = true; };
      }`);
    },
  });
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await page
    .getByRole('alert')
    .getByText(/found no working audio device/)
    .waitFor();
  await page.getByRole('textbox', { name: 'Chord chart' }).fill('| C | F | G | C |');
  await page.getByRole('button', { name: 'Bar 2, F' }).waitFor();
  expect(await page.getByRole('button', { name: 'Undo' }).isEnabled()).toBe(true);
  await page.evaluate(() => Reflect.get(window, 'giveDevice')());
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await page
    .getByRole('status', { name: 'Playback' })
    .getByText(/Playing bar/)
    .waitFor();
  expect(await page.getByText(/found no working audio device/).count()).toBe(0);
});

test('a step that cannot be computed ends the playing with a sentence', async () => {
  const { page } = await openBench({
    prepare: async (fresh) => {
      await fresh.addInitScript(() => {
        const Own = window.Worker;
        let jobs = 0;
        window.Worker = class extends Own {
          override postMessage(message: unknown) {
            jobs += 1;
            if (jobs === 1) super.postMessage(message);
            else this.dispatchEvent(new Event('error'));
          }
        };
      });
    },
  });
  const ended = await page.evaluate(
    async ({ mix, performance }) => {
      const { createPlayer } = await window.rooms.sound();
      const player = createPlayer();
      const stopped = new Promise<PlayerState>((resolve) => {
        player.subscribe((state) => {
          if (state.kind === 'stopped') resolve(state);
        });
      });
      const steps = [
        { performance, rounds: 1 },
        { performance, rounds: 1 },
      ];
      const result = await player.play({ steps, mix });
      return { started: result.ok, state: await stopped };
    },
    { mix: MIX, performance: skaTune({ countIn: 0, passage: { first: 1, last: 1 } }) },
  );
  expect(ended.started).toBe(true);
  expect(ended.state).toMatchObject({ kind: 'stopped', fault: expect.stringMatching(/compute its sound/) });
});

describe('every usual sample rate', () => {
  test.each([44_100, 48_000, 96_000])('%i Hz', async (sampleRate) => {
    const { page, expectClean } = await openBench({
      prepare: async (fresh) => {
        await fresh.addInitScript((rate) => {
          const Own = window.AudioContext;
          window.AudioContext = class extends Own {
            constructor(options?: AudioContextOptions) {
              super({ ...options, sampleRate: rate });
            }
          };
        }, sampleRate);
      },
    });
    expect((await play(page)).ok).toBe(true);
    const ticks = await page.evaluate(async () => {
      const player = Reflect.get(window, 'player');
      const wait = () => new Promise((resolve) => setTimeout(resolve, 400));
      await wait();
      const first = player.position()?.tick;
      await wait();
      return [first, player.position()?.tick];
    });
    expect(ticks[1]).toBeGreaterThan(ticks[0]);
    expectClean();
  });
});
