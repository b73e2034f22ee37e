import { describe, expect, test } from 'vitest';
import { openBench } from '../support/browser';
import { loudnessByOthers, truePeakByOthers } from '../support/ebur128';

const EVERYONE = { bass: true, drums: true, chops: true, organ: true, click: false };

interface Wanted {
  readonly coding: 'every telephone' | 'wav' | 'opus';
  readonly repeats: boolean;
  readonly rounds: number;
}

/** Makes a track on the bench, and has the browser decode it. */
async function trackOf(wanted: Wanted) {
  const { page, expectClean } = await openBench();
  const made = await page.evaluate(
    async ({ wanted: { coding, repeats, rounds }, mix }) => {
      const [lessons, composing, performance, tracks, base] = await Promise.all([
        window.rooms.lesson(),
        window.rooms.composing(),
        window.rooms.performance(),
        window.rooms.tracks(),
        window.rooms.base(),
      ]);
      const empty = lessons.newLesson('lesson', 'Ferry quéue');
      const id = empty.pieces[0]?.id ?? '';
      const { lesson } = composing.composePiece(lessons.setChartText(empty, id, '| F | Dm |'), id);
      const [piece] = lesson.pieces;
      const sheet = piece && lessons.deriveSheet(piece, lesson.instrument, lesson.noteNames);
      if (piece?.kind !== 'line' || sheet?.kind !== 'line') throw new Error('no line');
      const shares: number[] = [];
      const began = performance.trackRounds(piece, sheet, {
        tempo: base.bpm(150),
        rounds,
        countIn: 1,
        passage: null,
        repeats,
      });
      const result = await tracks.makeTracks(
        [
          {
            rounds: began,
            repeats,
            mix,
            coding,
            tags: { title: '150 bpm, with bass', lesson: 'Ferry quéue', piece: 'Line', tempo: 150 },
          },
        ],
        { signal: new AbortController().signal, onShare: (share) => shares.push(share) },
      );
      if (!result.ok || !result.value?.[0]) throw new Error(result.ok ? 'called off' : result.problem);
      const [{ bytes, kind, seconds }] = result.value;
      const context = new OfflineAudioContext(2, 1, 48_000);
      const buffer = await context.decodeAudioData(bytes.slice().buffer);
      const text = (samples: Float32Array) => {
        const raw = new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength);
        let out = '';
        for (let at = 0; at < raw.length; at += 8192)
          out += String.fromCharCode(...raw.subarray(at, at + 8192));
        return btoa(out);
      };
      // RFC 7845: pre-skip in the first page, and the position of the last page, in samples of 48 kHz.
      const view = new DataView(bytes.buffer);
      const letters = new TextDecoder('latin1').decode(bytes);
      const head = letters.indexOf('OpusHead');
      const opus =
        head < 0
          ? null
          : {
              skip: view.getUint16(head + 10, true),
              end: Number(view.getBigUint64(letters.lastIndexOf('OggS') + 6, true)),
            };
      return {
        kind,
        opus,
        seconds,
        shares,
        head: new TextDecoder('latin1').decode(bytes.slice(0, 400)),
        tail: new TextDecoder().decode(bytes.slice(-300)),
        left: text(buffer.getChannelData(0)),
        right: text(buffer.getChannelData(1)),
      };
    },
    { wanted, mix: EVERYONE },
  );
  const samples = (text: string): Float32Array => {
    const bytes = Buffer.from(text, 'base64');
    return new Float32Array(bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength));
  };
  expectClean();
  return { ...made, sampleRate: 48_000, left: samples(made.left), right: samples(made.right) };
}

/** Two bars of four at 150 bpm, in samples at 48 kHz. */
const ROUND = (2 * 4 * 60 * 48_000) / 150;

/** By how many samples one sound lies behind another, where both are about alike. */
function lagOf(sound: Float32Array, reference: Float32Array): number {
  let [best, lag] = [0, 0];
  for (let shift = -1500; shift <= 1500; shift += 1) {
    let alike = 0;
    for (let index = 24_000; index < 40_000; index += 1)
      alike += (reference[index] ?? 0) * (sound[index + shift] ?? 0);
    if (alike > best) [best, lag] = [alike, shift];
  }
  return lag;
}

describe('tracks that a browser makes and decodes', () => {
  test('a compressed one that repeats has no gap: exactly its bars, where they should be', async () => {
    const wav = await trackOf({ coding: 'wav', repeats: true, rounds: 2 });
    const small = await trackOf({ coding: 'every telephone', repeats: true, rounds: 2 });
    expect(wav.kind).toBe('wav');
    expect(wav.left.length).toBe(2 * ROUND);
    expect(wav.tail).toContain('Ferry quéue');
    expect(small.kind).toBe('mp3');
    expect(small.left.length).toBe(2 * ROUND);
    expect(lagOf(small.left, wav.left)).toBe(0);
    expect(small.head).toContain('ID3');
    expect(small.shares.at(-1)).toBeGreaterThan(0.9);
    for (const track of [wav, small]) {
      expect(Math.abs(loudnessByOthers(track) + 16)).toBeLessThan(0.5);
      expect(truePeakByOthers(track)).toBeLessThan(-1);
    }
  });

  test('Opus, on request, begins where it should', async () => {
    const wav = await trackOf({ coding: 'wav', repeats: false, rounds: 1 });
    const opus = await trackOf({ coding: 'opus', repeats: false, rounds: 1 });
    expect(opus.kind).toBe('opus');
    const { skip, end } = opus.opus ?? { skip: 0, end: 0 };
    expect(end - skip).toBe(wav.left.length);
    // This browser's `decodeAudioData` leaves the pre-skip out twice; its decoder of packets, and other players, once.
    expect([0, -skip]).toContain(lagOf(opus.left, wav.left));
    expect(Math.abs(loudnessByOthers(opus) + 16)).toBeLessThan(0.5);
    // One bar of count-in, two of music, and the last hit.
    expect(opus.seconds).toBeGreaterThan((4 * 4 * 60) / 150);
  });
});
