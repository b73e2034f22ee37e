/** Where there is nothing to hear: no microphone, one that is taken, a silent one, a page that may not listen. */
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { EMPTY_RECORD, withHearingDelay } from '../../src/core/practising';
import { askToListen, lessonWith, openPractice, PATIENT, status } from '../support/asked-to-listen';
import { openApp } from '../support/browser';
import { practiceFile } from '../support/practising';

/** Why it does not listen is said in a sentence; it can be asked again, and everything else goes on. */
async function expectPlaysWithoutEar(page: Page, sentence: string): Promise<void> {
  await page.getByRole('alert').getByText(sentence, { exact: true }).waitFor();
  expect(await page.getByRole('button', { name: 'Listen to my playing' }).isEnabled()).toBe(true);
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await expect.poll(() => status(page, 'Playback').textContent(), PATIENT).toMatch(/^Playing bar/);
}

test.each([
  ['NotFoundError', 'No microphone was found. Connect one, and try again.'],
  [
    'NotReadableError',
    'The input gives no sound: another program may hold it. Close that one, and try again.',
  ],
])('where the browser answers %s, a sentence says so, and the page plays on', async (name, sentence) => {
  const { page, expectClean } = await openPractice(lessonWith(true), async (each) => {
    await each.addInitScript((fault) => {
      navigator.mediaDevices.getUserMedia = async () => {
        throw new DOMException('none', fault);
      };
    }, name);
  });
  await expectPlaysWithoutEar(page, sentence);
  expectClean();
});

test('the page that is a file says that it cannot listen, and plays on', async () => {
  const folder = await mkdtemp(join(tmpdir(), 'downloads-'));
  try {
    const { page, address } = await openApp();
    const file = await practiceFile(address, lessonWith(true), folder);
    const complaints: string[] = [];
    const own = await page.context().newPage();
    own.on('console', (message) => complaints.push(message.text()));
    own.on('pageerror', (problem) => complaints.push(problem.message));
    await own.goto(pathToFileURL(file).href);
    await askToListen(own);
    await expectPlaysWithoutEar(
      own,
      'This browser lets no page listen here. A page that was opened from the downloads may not; open the lesson’s practice page on the web, or use another browser.',
    );
    expect(complaints).toEqual([]);
  } finally {
    await rm(folder, { recursive: true });
  }
});

/** From now on every microphone is silent; which one was asked for is written down. */
async function twoSilentInputs(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const asked: string[] = [];
    Object.assign(window, { askedFor: asked });
    const device = (deviceId: string, label: string): MediaDeviceInfo => ({
      ...{ deviceId, label, kind: 'audioinput', groupId: '', toJSON: () => ({}) },
    });
    MediaDevices.prototype.enumerateDevices = async () => [
      device('room', 'Microphone in the lid'),
      device('cable', 'Instrument input'),
    ];
    MediaDevices.prototype.getUserMedia = async (wanted) => {
      const audio = typeof wanted?.audio === 'object' ? wanted.audio : {};
      const id = audio.deviceId === undefined ? 'room' : JSON.stringify(audio.deviceId);
      asked.push(id);
      const { stream } = new MediaStreamAudioDestinationNode(new AudioContext());
      for (const track of stream.getTracks()) {
        Object.assign(window, { track });
        track.getSettings = () => ({
          deviceId: asked.length === 1 ? 'room' : 'cable',
          echoCancellation: true,
        });
      }
      return stream;
    };
  });
}

test('the level is checked first, in words, and another input can be chosen', async () => {
  const { page, expectClean } = await openPractice(lessonWith(false), async (each) => {
    await twoSilentInputs(each);
    await each.addInitScript(
      (record) => localStorage.setItem('practice-record', record),
      JSON.stringify(withHearingDelay(EMPTY_RECORD, 'cable', 23)),
    );
  });
  const check = status(page, 'Check of the level');
  await expect.poll(() => check.textContent(), PATIENT).toContain('be silent for a moment');
  await expect.poll(() => check.textContent(), PATIENT).toContain('Now play your lowest string');
  await expect.poll(() => check.textContent(), PATIENT).toContain('muted or not connected');
  await page.getByText('takes the microphone as for speech').waitFor();
  await page.getByText('How late this device hears by this input is not measured yet').waitFor();
  const inputs = page.getByRole('combobox', { name: 'Microphone or input' });
  expect(await inputs.locator('option').allTextContents()).toEqual([
    'Microphone in the lid',
    'Instrument input',
  ]);
  await inputs.selectOption('cable');
  await expect
    .poll(() => page.evaluate(() => Reflect.get(window, 'askedFor')))
    .toEqual(['room', '{"exact":"cable"}']);
  await expect.poll(() => inputs.inputValue(), PATIENT).toBe('cable');
  // What was measured of an input is its own.
  await page.getByText('The delay of this device and this input: 23 ms.').waitFor();
  await page.getByRole('button', { name: 'Go on without the check' }).click();
  await page.getByRole('button', { name: 'Check the level again' }).click();
  await expect.poll(() => check.textContent(), PATIENT).toContain('be silent for a moment');
  // Pulled out, it says so, and the page plays on.
  await page.evaluate(() => Reflect.get(window, 'track').dispatchEvent(new Event('ended')));
  await page.getByText('The input was taken away, so nothing is listened to any more.').waitFor();
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await expect.poll(() => status(page, 'Playback').textContent(), PATIENT).toMatch(/^Playing bar/);
  expectClean();
});
