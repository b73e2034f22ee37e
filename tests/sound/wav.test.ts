import { describe, expect, test } from 'vitest';
import { encodeWav } from '../../src/sound/wav';

/** Reads the chunks of a RIFF file as the format's description of 1991 lays them out. */
function readWav(bytes: Uint8Array) {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const text = (at: number) => String.fromCharCode(...bytes.subarray(at, at + 4));
  const chunks = new Map<string, { at: number; length: number }>();
  for (let at = 12; at < bytes.length; ) {
    const length = view.getUint32(at + 4, true);
    chunks.set(text(at), { at: at + 8, length });
    at += 8 + length + (length % 2);
  }
  const format = chunks.get('fmt ')?.at ?? 0;
  const data = chunks.get('data') ?? { at: 0, length: 0 };
  const samples = Array.from({ length: data.length / 2 }, (_, index) =>
    view.getInt16(data.at + 2 * index, true),
  );
  return {
    riff: text(0),
    kind: text(8),
    size: view.getUint32(4, true),
    coding: view.getUint16(format, true),
    channels: view.getUint16(format + 2, true),
    sampleRate: view.getUint32(format + 4, true),
    bytesASecond: view.getUint32(format + 8, true),
    bits: view.getUint16(format + 14, true),
    left: samples.filter((_, index) => index % 2 === 0),
    right: samples.filter((_, index) => index % 2 === 1),
  };
}

const sine = (level: number, length = 4410) =>
  Float32Array.from({ length }, (_, index) => level * Math.sin((2 * Math.PI * 441 * index) / 44_100));

describe('a WAV file', () => {
  test('says what it holds', () => {
    const bytes = encodeWav({ sampleRate: 44_100, left: sine(0.5), right: sine(0.25) });
    expect(readWav(bytes)).toMatchObject({
      riff: 'RIFF',
      kind: 'WAVE',
      size: bytes.length - 8,
      coding: 1,
      channels: 2,
      sampleRate: 44_100,
      bytesASecond: 176_400,
      bits: 16,
    });
  });

  test('holds the samples within the dither, channels kept apart', () => {
    const [left, right] = [sine(0.5), sine(0.25)];
    const read = readWav(encodeWav({ sampleRate: 44_100, left, right }));
    expect(read.left).toHaveLength(left.length);
    for (const [index, sample] of left.entries()) {
      expect(Math.abs((read.left[index] ?? 0) - sample * 32767)).toBeLessThan(1.6);
      expect(Math.abs((read.right[index] ?? 0) - (right[index] ?? 0) * 32767)).toBeLessThan(1.6);
    }
  });

  test('keeps a sound smaller than a step audible, silence silent, and holds what is too loud', () => {
    const faint = readWav(
      encodeWav({ sampleRate: 44_100, left: sine(0.4 / 32767), right: new Float32Array(4410) }),
    );
    const likeness = faint.left.reduce(
      (sum, value, index) => sum + value * Math.sin((2 * Math.PI * index) / 100),
      0,
    );
    expect(likeness).toBeGreaterThan(0);
    expect(new Set(faint.right)).toEqual(new Set([0]));
    const loud = readWav(encodeWav({ sampleRate: 44_100, left: sine(3), right: sine(-3) }));
    expect(Math.max(...loud.left)).toBe(32767);
    expect(Math.min(...loud.left)).toBe(-32768);
  });
});
