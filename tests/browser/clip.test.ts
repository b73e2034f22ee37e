import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { openApp } from '../support/browser';
import { pinnedPath } from '../support/pinned';

/** A number of EBML with its length in bytes (RFC 8794, 4); `whole` keeps the marker, as ids have it. */
function vint(bytes: Buffer, at: number, whole: boolean): readonly [value: number, length: number] {
  const first = bytes[at] ?? 0;
  const length = Math.clz32(first) - 23;
  let value = whole ? first : first & ((1 << (8 - length)) - 1);
  for (let index = 1; index < length; index += 1) value = value * 256 + (bytes[at + index] ?? 0);
  return [value, length];
}

const SEGMENT = 0x18538067;
const INFO = 0x1549a966;
const CLUSTER = 0x1f43b675;
const BLOCK_GROUP = 0xa0;
const BLOCKS: ReadonlySet<number> = new Set([0xa3, 0xa1]);
const DURATION = 0x4489;

/** Blocks of each track and the duration in milliseconds, read as Matroska is laid down (RFC 9559). */
function readWebm(bytes: Buffer) {
  const blocks = new Map<number, number>();
  let duration = 0;
  const walk = (from: number, to: number): void => {
    for (let at = from; at < to; ) {
      const [id, idLength] = vint(bytes, at, true);
      const [size, sizeLength] = vint(bytes, at + idLength, false);
      const begin = at + idLength + sizeLength;
      const end = Math.min(to, begin + size);
      if ([SEGMENT, INFO, CLUSTER, BLOCK_GROUP].includes(id)) walk(begin, end);
      if (BLOCKS.has(id)) {
        const [track] = vint(bytes, begin, false);
        blocks.set(track, (blocks.get(track) ?? 0) + 1);
      }
      if (id === DURATION) duration = size === 4 ? bytes.readFloatBE(begin) : bytes.readDoubleBE(begin);
      at = begin + size;
    }
  };
  walk(0, bytes.length);
  return { blocks: [...blocks.values()], duration };
}

/** At 126 quarters a minute, 30 pictures a second. */
const BEAT = 60 / 126;
const FRAME = 1 / 30;

/** Beats into the clip at which bass and drums begin to sound: the first bar's first two, and the second bar's first. */
const ONSETS = [4, 5, 8];

describe('a clip', () => {
  test('is as long as its music, and playhead and sound agree within a picture', async () => {
    const { page, expectClean } = await openApp({ path: pinnedPath() });
    await page.getByRole('button', { name: 'Export' }).click();
    await page.getByRole('menuitem', { name: 'Clip', exact: true }).click();
    await page.getByRole('spinbutton', { name: 'Last bar of the clip' }).fill('2');
    await page.getByRole('button', { name: 'Make the clip' }).click();
    await page.getByRole('progressbar', { name: 'Making the clip' }).waitFor();
    const save = page.getByRole('button', { name: /^Save .*wide\.webm$/ });
    await save.waitFor({ timeout: 110_000 });
    const [download] = await Promise.all([page.waitForEvent('download'), save.click()]);
    const bytes = await readFile(await download.path());

    // A bar of count-in, two bars, and a second and a half for the last hit and its ring.
    const seconds = (end: number) => end + 1.5;
    const read = readWebm(bytes);
    const frames = Math.max(...read.blocks.filter((count) => count % 1 === 0 && count < 400));
    const least = Math.ceil(seconds(12 * BEAT) * 30);
    expect(frames).toBeGreaterThanOrEqual(least);
    expect(Math.abs(read.duration / 1000 - frames * FRAME)).toBeLessThan(FRAME * 2);

    const seen = await page.evaluate(
      async ({ file, times, around }) => {
        const raw = Uint8Array.from(atob(file), (letter) => letter.charCodeAt(0));
        const video = document.createElement('video');
        video.src = URL.createObjectURL(new Blob([raw], { type: 'video/webm' }));
        await new Promise((resolve, reject) => {
          video.onloadeddata = resolve;
          video.onerror = reject;
        });
        const canvas = document.createElement('canvas');
        canvas.width = video.videoWidth;
        canvas.height = video.videoHeight;
        const pen = canvas.getContext('2d', { willReadFrequently: true });
        if (pen === null) throw new Error('no canvas');
        const places: (number | null)[] = [];
        for (const time of times) {
          await new Promise((resolve) => {
            video.onseeked = resolve;
            video.currentTime = time;
          });
          pen.drawImage(video, 0, 0);
          const { data, width } = pen.getImageData(0, 0, canvas.width, canvas.height);
          let place: number | null = null;
          for (let at = 0; at < data.length && place === null; at += 4) {
            const [red, green, blue] = [data[at] ?? 0, data[at + 1] ?? 0, data[at + 2] ?? 0];
            if (Math.abs(red - 176) < 30 && Math.abs(green - 106) < 30 && blue < 50) place = (at / 4) % width;
          }
          places.push(place);
        }
        const sound = await new OfflineAudioContext(1, 1, 48_000).decodeAudioData(raw.buffer.slice(0));
        const samples = sound.getChannelData(0);
        const loud = (from: number) =>
          samples
            .slice(Math.round(from * 48_000), Math.round((from + 0.02) * 48_000))
            .reduce((most, each) => Math.max(most, Math.abs(each)), 0);
        /** Where the sound rises most steeply near a time: by how much a hundredth of a second is louder than the one before. */
        const energy = (from: number) =>
          samples
            .slice(Math.round(from * 48_000), Math.round((from + 0.01) * 48_000))
            .reduce((sum, each) => sum + each * each, 1e-6);
        const onsets = around.map((time) => {
          let [steepest, found] = [0, Number.NaN];
          for (let at = time - 0.1; at <= time + 0.1; at += 0.002) {
            const rise = energy(at) / energy(at - 0.01);
            if (rise > steepest) [steepest, found] = [rise, at];
          }
          return found;
        });
        return {
          places,
          size: [video.videoWidth, video.videoHeight],
          duration: video.duration,
          sound: sound.duration,
          click: loud(0) > 0.02,
          onsets,
        };
      },
      {
        file: bytes.toString('base64'),
        around: ONSETS.map((beat) => beat * BEAT),
        times: [4, 8, 12].flatMap((beat) =>
          [-1, 1].map((side) => Math.round(beat * BEAT * 30 + side) * FRAME + FRAME / 2),
        ),
      },
    );
    expect(seen.size).toEqual([1920, 1080]);
    expect(Math.abs(seen.duration - frames * FRAME)).toBeLessThan(2 * FRAME);
    expect(Math.abs(seen.sound - seen.duration)).toBeLessThan(2 * FRAME);
    expect(seen.click).toBe(true);
    for (const [index, beat] of ONSETS.entries())
      expect(Math.abs((seen.onsets[index] ?? 0) - beat * BEAT), `beat ${beat}`).toBeLessThan(FRAME);
    // The playhead comes with the first note, leaps over the bar line with the next bar, and goes with the last one.
    const [before, first, ending, next, last, after] = seen.places;
    expect(before).toBeNull();
    expect(first).not.toBeNull();
    expect((next ?? 0) - (ending ?? 0)).toBeGreaterThan(20);
    expect(last).not.toBeNull();
    expect(after).toBeNull();
    expectClean();
  });
});
