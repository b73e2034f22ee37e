/** The practice page listens. The microphone is fed with what the page itself sounds. */
import { readFile, stat } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { lessonWith, openPractice, PATIENT, status } from '../support/asked-to-listen';
import { openedUp } from '../support/opened-up';

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
