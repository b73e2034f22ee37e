import { mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { printLesson, sampleLesson } from '../../src/core/lesson';
import { openApp } from '../support/browser';
import { button, PATIENT, playback, practiceFile } from '../support/practising';

const LESSON = sampleLesson(1, 'asks');

/**
 * Writes down whatever the page asks the browser for that a person could be asked about, that reaches something of the
 * device, or that keeps something on it. What it answers with is nothing, so that nothing opens.
 */
async function writeDownAsks(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const asked: string[] = [];
    Object.assign(window, { asked });
    /** @param told - what of the call is written down beside its name */
    const watch = (owner: unknown, name: string, word: string, told = (_: unknown[]): string => '') => {
      if (typeof owner !== 'object' || owner === null) return;
      const own: unknown = Reflect.get(owner, name);
      if (typeof own !== 'function') return;
      Reflect.set(owner, name, function (this: unknown, ...given: unknown[]) {
        asked.push(`${word}${told(given)}`);
        return Reflect.apply(own, this, given);
      });
    };
    const of = (name: string): unknown => Reflect.get(Reflect.get(window, name) ?? {}, 'prototype');
    const first = ([value]: unknown[]) => ` ${typeof value === 'string' ? value : JSON.stringify(value)}`;
    watch(of('MediaDevices'), 'getUserMedia', 'microphone or camera', first);
    watch(of('MediaDevices'), 'getDisplayMedia', 'screen');
    watch(of('MediaDevices'), 'enumerateDevices', 'list of devices');
    watch(of('WakeLock'), 'request', 'screen awake');
    watch(of('StorageManager'), 'persist', 'lasting storage');
    watch(of('StorageManager'), 'getDirectory', 'files of its own');
    watch(Reflect.get(window, 'Notification'), 'requestPermission', 'notifications');
    watch(of('Permissions'), 'query', 'permission', first);
    watch(of('Navigator'), 'requestMIDIAccess', 'MIDI');
    watch(of('Geolocation'), 'getCurrentPosition', 'place');
    watch(of('Geolocation'), 'watchPosition', 'place');
    for (const name of ['Bluetooth', 'USB', 'Serial', 'HID'])
      for (const call of ['requestDevice', 'requestPort', 'getDevices', 'getPorts'])
        watch(of(name), call, name);
    for (const name of ['read', 'readText', 'write', 'writeText']) watch(of('Clipboard'), name, 'clipboard');
    for (const name of ['showOpenFilePicker', 'showSaveFilePicker', 'queryLocalFonts'])
      watch(window, name, name);
    watch(of('IDBFactory'), 'open', 'database', first);
    watch(of('CacheStorage'), 'open', 'cache', first);
    watch(of('Storage'), 'setItem', 'kept', first);
    watch(of('ServiceWorkerContainer'), 'register', 'service worker');
    watch(of('CredentialsContainer'), 'get', 'credentials');
    watch(of('Navigator'), 'sendBeacon', 'beacon');
    watch(of('Navigator'), 'share', 'sharing');
  });
}

const asked = async (page: Page): Promise<readonly string[]> => [
  ...new Set(await page.evaluate((): string[] => Reflect.get(window, 'asked'))),
];

/** Plays, loops, pauses and stops, opens every part of the page, and looks at it in large. */
async function tryEverything(page: Page): Promise<void> {
  await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
  await button(page, 'Play').click();
  await expect.poll(() => playback(page).textContent(), PATIENT).toMatch(/^Playing bar [1-9]/);
  await button(page, 'Pause').click();
  await button(page, 'loop by two taps').click();
  await page.getByRole('button', { name: /^Bar 1, / }).click();
  await page.getByRole('button', { name: /^Bar 2, / }).click();
  await button(page, 'Stop').click();
  await button(page, 'Faster').click();
  await button(page, 'Fretboard').click();
  await page.getByText('in words, bar by bar').first().click();
  await page.getByText('Metronome and tuning').click();
  await page.getByRole('heading', { name: 'Metronome' }).waitFor();
  await button(page, 'Large view').click();
  await page.locator('.show svg').first().waitFor();
  await button(page, 'Close').click();
}

/**
 * What playing and remembering take, and nothing of it is asked of a person. The list of devices is nameless, and is
 * looked at while it sounds: headphones that are pulled out must not turn the loudspeakers on.
 */
const NEEDED = ['kept practice-record', 'list of devices', 'screen awake'];

test('the practice page asks for the microphone alone, and only when the tuner is to listen', async () => {
  const { page, expectClean } = await openApp({
    path: 'practice.html',
    context: { permissions: ['microphone'] },
    prepare: writeDownAsks,
  });
  expect(await asked(page)).toEqual([]);
  await page.locator('input[type="file"]').setInputFiles({
    name: 'asks.lesson.json',
    mimeType: 'application/json',
    buffer: Buffer.from(printLesson(LESSON)),
  });
  await tryEverything(page);
  expect([...(await asked(page))].sort()).toEqual(NEEDED);
  await button(page, 'Listen and tune').click();
  await expect
    .poll(async () => (await asked(page)).filter((ask) => !NEEDED.includes(ask)), PATIENT)
    .toEqual([expect.stringMatching(/^microphone or camera \{"audio":/)]);
  expect((await asked(page)).join()).not.toContain('video');
  expectClean();
});

test('the practice page that is a file asks for nothing more, and keeps nothing but its own record', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'downloads-'));
  try {
    const { page, address } = await openApp();
    const file = await practiceFile(address, LESSON, folder);
    expect((await stat(file)).size).toBeLessThan(2_500_000);
    const context = await page.context().browser()?.newContext({ offline: true });
    if (!context) throw new Error('The browser is gone.');
    const own = await context.newPage();
    await writeDownAsks(own);
    await own.goto(pathToFileURL(file).href);
    await tryEverything(own);
    expect((await asked(own)).filter((ask) => !NEEDED.includes(ask))).toEqual([]);
    expect(await own.evaluate(() => Object.keys(window.localStorage))).toEqual(['practice-record']);
    expect(await context.cookies()).toEqual([]);
    await context.close();
  } finally {
    await rm(folder, { recursive: true });
  }
});

test('nobody is listened to who has folded the tuner away before the microphone was given', async () => {
  const { page, expectClean } = await openApp({
    path: 'practice.html',
    prepare: async (fresh) => {
      await fresh.addInitScript(() => {
        MediaDevices.prototype.getUserMedia = async () => {
          await new Promise((resolve) => Object.assign(window, { give: resolve }));
          const { stream } = new MediaStreamAudioDestinationNode(new AudioContext());
          Object.assign(window, { given: stream.getTracks() });
          return stream;
        };
      });
    },
  });
  await page.locator('input[type="file"]').setInputFiles({
    name: 'asks.lesson.json',
    mimeType: 'application/json',
    buffer: Buffer.from(printLesson(LESSON)),
  });
  const fold = page.getByText('Metronome and tuning');
  await fold.click();
  await button(page, 'Listen and tune').click();
  await expect.poll(() => page.evaluate(() => typeof Reflect.get(window, 'give')), PATIENT).toBe('function');
  await fold.click();
  await expect.poll(() => button(page, 'Listen and tune').count()).toBe(0);
  await page.evaluate(() => Reflect.get(window, 'give')());
  const states = () =>
    page.evaluate(() => {
      const given: readonly MediaStreamTrack[] = Reflect.get(window, 'given') ?? [];
      return given.map(({ readyState }) => readyState);
    });
  await expect.poll(states, PATIENT).toEqual(['ended']);
  expectClean();
});
