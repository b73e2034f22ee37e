/** The practice page listens. The microphone is fed with what the page itself sounds, or with a student's own sound. */
import { mkdtemp, readFile, rm, stat, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { fillPracticePage } from '../../src/core/exchange/practice/embed';
import { type Lesson, printLesson, setHandout, setPlaying } from '../../src/core/lesson';
import { EMPTY_RECORD, withHearingDelay } from '../../src/core/practising';
import { openApp } from '../support/browser';
import { openedUp } from '../support/opened-up';
import { pinnedSample } from '../support/pinned';

const PATIENT = { timeout: 60_000 };

const lessonWith = (bass: boolean): Lesson => {
  const lesson = setHandout(pinnedSample(0, 'heard'), { student: 'Adalind' });
  return setPlaying(lesson, lesson.pieces[0]?.id ?? '', {
    ...{ bass, drums: false, chops: false, organ: false, click: !bass },
    ...{ loop: false, countIn: 1, passage: { first: 1, last: 4 } },
  });
};

/** From now on the microphone hears what the page sends to the loudspeaker: a student who plays exactly along. */
async function loopBack(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const connect = AudioNode.prototype.connect;
    const streams = new Map<BaseAudioContext, MediaStreamAudioDestinationNode>();
    const ear: { context: AudioContext | null; node: MediaStreamAudioDestinationNode | null } = {
      context: null,
      node: null,
    };
    const take = (stream: MediaStream) => {
      if (ear.context === null || ear.node === null) return;
      Reflect.apply(connect, ear.context.createMediaStreamSource(stream), [ear.node]);
    };
    Reflect.set(AudioNode.prototype, 'connect', function (this: AudioNode, ...to: unknown[]) {
      if (to[0] instanceof AudioDestinationNode && this.context instanceof AudioContext) {
        const known = streams.get(this.context);
        const stream = known ?? this.context.createMediaStreamDestination();
        streams.set(this.context, stream);
        Reflect.apply(connect, this, [stream]);
        if (known === undefined) take(stream.stream);
      }
      return Reflect.apply(connect, this, to);
    });
    navigator.mediaDevices.getUserMedia = async () => {
      const context = new AudioContext();
      ear.context = context;
      ear.node = context.createMediaStreamDestination();
      for (const stream of streams.values()) take(stream.stream);
      return ear.node.stream;
    };
  });
}

async function openPractice(lesson: Lesson, prepare: (page: Page) => Promise<void>) {
  const opened = await openApp({ path: 'practice.html', prepare });
  const { page } = opened;
  await page
    .locator('input[type="file"]')
    .first()
    .setInputFiles({
      name: 'heard.lesson.json',
      mimeType: 'application/json',
      buffer: Buffer.from(printLesson(lesson)),
    });
  await askToListen(page);
  return opened;
}

async function askToListen(page: Page): Promise<void> {
  await page.getByRole('figure', { name: 'Score', exact: true }).locator('svg').first().waitFor();
  await page.getByText('Play, and be heard').click();
  await page.getByRole('button', { name: 'Listen to my playing' }).click();
}

const status = (page: Page, name: string) => page.getByRole('status', { name, exact: true });

/** Why it does not listen is said in a sentence; it can be asked again, and everything else goes on. */
async function expectPlaysWithoutEar(page: Page, sentence: string): Promise<void> {
  await page.getByRole('alert').getByText(sentence, { exact: true }).waitFor();
  expect(await page.getByRole('button', { name: 'Listen to my playing' }).isEnabled()).toBe(true);
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await expect.poll(() => status(page, 'Playback').textContent(), PATIENT).toMatch(/^Playing bar/);
}

test('who plays exactly along is told so; the delay is measured by the click, and kept', async () => {
  const { page, expectClean } = await openPractice(lessonWith(true), loopBack);
  // Nothing is recorded unless it is ticked.
  const record = page.getByRole('checkbox', { name: 'Record what I play, for my teacher' });
  expect(await record.isChecked()).toBe(false);
  await record.check();
  await page.getByRole('button', { name: 'Measure the delay' }).click();
  await expect.poll(() => status(page, 'Delay of the device').textContent(), PATIENT).toMatch(/^Measured/);
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await expect.poll(() => status(page, 'Listening').textContent(), PATIENT).toBe('Listening to your line.');
  const said = page.getByRole('list', { name: 'What was heard' });
  await expect.poll(() => said.count(), PATIENT).toBe(1);
  const words = await said.textContent();
  // On a busy machine the sound itself may have a gap: a note may be lost to it, no more.
  const [, right, all] = /(?:All|(\d+) of) (\d+) notes/.exec(words ?? '') ?? [];
  expect(Number(all)).toBeGreaterThan(10);
  expect(Number(right ?? all)).toBeGreaterThanOrEqual(Number(all) - 1);
  // Each bar says so on the score, to eyes and ears.
  await expect.poll(() => page.locator('.heard-mark').allTextContents(), PATIENT).toHaveLength(4);
  expect(await page.locator('.listening pre').textContent()).toMatch(/^Heard at home\nLesson: /);
  expect(await page.locator('.listening pre').textContent()).toContain('the recording beside it');
  const [report] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the report for your teacher' }).click(),
  ]);
  // The lesson's file names a student for the paper: the report tells of the lesson, and of nobody.
  const letter = await readFile(await report.path(), 'utf8');
  expect(letter).toMatch(/^Heard at home\nLesson: /);
  expect(letter).not.toContain('Adalind');
  const [saved] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the recording beside it' }).click(),
  ]);
  expect(saved.suggestedFilename()).toBe('heard-at-home.webm');
  expect((await stat(await saved.path())).size).toBeGreaterThan(1000);
  expect(openedUp(await readFile(await saved.path()))).not.toContain('Adalind');
  // The tick taken away, it is gone.
  await record.uncheck();
  expect(await page.getByRole('button', { name: 'Save the recording beside it' }).count()).toBe(0);
  expect(await page.locator('.listening pre').textContent()).toContain('no sound was kept');
  const kept = await page.evaluate(() => JSON.parse(localStorage.getItem('practice-record') ?? '{}'));
  expect(kept.hearing ?? kept.inputs[0].delay).toBeTypeOf('number');
  expectClean();
});

test('who plays nothing is told which bars to practise, and loops them with a ladder in one click', async () => {
  const { page, expectClean } = await openPractice(lessonWith(false), async (each) => {
    await each.addInitScript(() => {
      navigator.mediaDevices.getUserMedia = async () => {
        const context = new AudioContext();
        return context.createMediaStreamDestination().stream;
      };
    });
  });
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  const loop = page.getByRole('button', { name: /^Loop bars \d to \d, from \d+ bpm up$/ });
  const [, bars, slow] =
    /^Loop bars (\d to \d), from (\d+) bpm up$/.exec((await loop.textContent(PATIENT)) ?? '') ?? [];
  await loop.click();
  await expect
    .poll(() => status(page, 'Loop').textContent(), PATIENT)
    .toMatch(new RegExp(`^Bars ${bars} round and round`));
  // It is climbed from the tempo that was named: three times on each of five rungs.
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await page.getByText(`Rung 1 of 5: ${slow} bpm, time 1 of 3`).waitFor(PATIENT);
  expect(Number(slow)).toBeLessThan(126);
  expectClean();
});

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
    const template = await (await fetch(new URL('practice-page.html', address))).text();
    const html = fillPracticePage(template, lessonWith(true));
    if (html === null) throw new Error('The lesson found no place in the page.');
    const file = join(folder, 'heard.practice.html');
    await writeFile(file, html);
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

test('beside the loudspeaker it says whether its sound was taken off', async () => {
  const { page, expectClean } = await openPractice(lessonWith(false), loopBack);
  await page.getByRole('radio', { name: 'from the loudspeaker' }).check();
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await expect.poll(() => status(page, 'Listening').textContent(), PATIENT).toBe('Listening to your line.');
  // The click of the page is all that the microphone hears: no note of it may be taken for the student's.
  await expect
    .poll(() => status(page, 'Listening').textContent(), PATIENT)
    .toMatch(/^Listened beside the loudspeaker/);
  expect(await page.getByRole('list', { name: 'What was heard' }).textContent()).not.toContain(
    'more than written',
  );
  expectClean();
});
