/**
 * AAC in MP4 where the browser encodes it. The browser of the tests does not, so its encoder and decoder have stand-ins
 * here that keep the sound as it is but come late, as an encoder of AAC does: 2112 samples before the first that was
 * meant (Apple, QuickTime File Format, "Audio priming"; the number is from memory).
 */
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { writeTrack } from '../../src/tracks/files';
import { TRACK_RATE } from '../../src/tracks/loudness';

const LEAD = 2112;
/** Samples in a packet of AAC-LC (ISO/IEC 14496-3). */
const PACKET = 1024;

class StandInData {
  readonly numberOfFrames: number;
  readonly #samples: Float32Array;
  constructor({ data, numberOfFrames }: { data: Float32Array; numberOfFrames: number }) {
    this.numberOfFrames = numberOfFrames;
    this.#samples = data.slice(0, numberOfFrames);
  }
  copyTo(target: Float32Array): void {
    target.set(this.#samples);
  }
  close(): void {}
}

interface StandInChunk {
  readonly byteLength: number;
  copyTo(target: Uint8Array): void;
}

class StandInEncoder {
  static isConfigSupported(config: AudioEncoderConfig) {
    return Promise.resolve({ supported: config.codec === 'mp4a.40.2', config });
  }
  readonly encodeQueueSize = 0;
  readonly #output: (chunk: StandInChunk, metadata?: unknown) => void;
  #waiting: number[] = new Array<number>(LEAD).fill(0);
  constructor({ output }: { output: (chunk: StandInChunk, metadata?: unknown) => void }) {
    this.#output = output;
  }
  configure(): void {}
  encode(data: StandInData): void {
    const samples = new Float32Array(data.numberOfFrames);
    data.copyTo(samples);
    this.#waiting.push(...samples);
    this.#give(false);
  }
  flush(): Promise<void> {
    this.#give(true);
    return Promise.resolve();
  }
  close(): void {}
  #give(all: boolean): void {
    while (this.#waiting.length >= PACKET || (all && this.#waiting.length > 0)) {
      const samples = new Float32Array(PACKET);
      samples.set(this.#waiting.splice(0, PACKET));
      const bytes = new Uint8Array(samples.buffer);
      this.#output(
        { byteLength: bytes.length, copyTo: (target) => target.set(bytes) },
        {
          decoderConfig: {
            codec: 'mp4a.40.2',
            sampleRate: TRACK_RATE,
            numberOfChannels: 2,
            // AudioSpecificConfig: AAC-LC, 48 kHz, two channels (ISO/IEC 14496-3, 1.6.2.1).
            description: Uint8Array.of(0x11, 0x90),
          },
        },
      );
    }
  }
}

class StandInDecoder {
  readonly #output: (data: StandInData) => void;
  constructor({ output }: { output: (data: StandInData) => void }) {
    this.#output = output;
  }
  configure(): void {}
  decode(chunk: StandInChunk): void {
    const bytes = new Uint8Array(chunk.byteLength);
    chunk.copyTo(bytes);
    this.#output(new StandInData({ data: new Float32Array(bytes.buffer), numberOfFrames: PACKET }));
  }
  flush(): Promise<void> {
    return Promise.resolve();
  }
  close(): void {}
}

/** The boxes of an MP4 file by their path (ISO/IEC 14496-12, 4.2), the content of each. */
function boxesOf(file: Uint8Array, path = ''): Map<string, DataView> {
  const found = new Map<string, DataView>();
  const view = new DataView(file.buffer, file.byteOffset, file.byteLength);
  for (let at = 0; at + 8 <= file.length; ) {
    const size = view.getUint32(at);
    const name = `${path}/${String.fromCharCode(...file.subarray(at + 4, at + 8))}`;
    const content = file.subarray(at + 8, at + size);
    found.set(name, new DataView(content.buffer, content.byteOffset, content.byteLength));
    if (/\/(moov|trak|edts|mdia|minf|stbl|udta)$/.test(name))
      for (const [inner, each] of boxesOf(content, name)) found.set(inner, each);
    at += Math.max(8, size);
  }
  return found;
}

/** What a player plays of the file: its packets in a row, without what its edit list leaves out (14496-12, 8.6.6). */
function played(file: Uint8Array): Float32Array {
  const boxes = boxesOf(file);
  const box = (name: string): DataView => {
    const found = boxes.get(name);
    if (found === undefined) throw new Error(`no ${name} among ${[...boxes.keys()].join(' ')}`);
    return found;
  };
  const mdat = box('/mdat');
  const samples = new Float32Array(mdat.byteLength / 4);
  for (let index = 0; index < samples.length; index += 1) samples[index] = mdat.getFloat32(4 * index, true);
  const list = box('/moov/trak/edts/elst');
  const wide = list.getUint8(0) === 1;
  expect(list.getUint32(4)).toBe(1);
  const whole = (at: number) => (wide ? Number(list.getBigInt64(at)) : list.getInt32(at));
  const [lasts, from] = [whole(8), whole(wide ? 16 : 12)];
  // Lengths count in the movie's time, beginnings in that of the track.
  const movie = box('/moov/mvhd');
  const track = box('/moov/trak/mdia/mdhd');
  const scale = (header: DataView) => header.getUint32(header.getUint8(0) === 1 ? 20 : 12);
  const start = Math.round((from * TRACK_RATE) / scale(track));
  return samples.slice(start, start + Math.round((lasts * TRACK_RATE) / scale(movie)));
}

const noise = (length: number): Float32Array => {
  let state = 12345;
  return Float32Array.from({ length }, () => {
    state = (state * 1103515245 + 12345) % 2147483648;
    return state / 1073741824 - 1;
  });
};

const TAGS = { title: '126 bpm, without bass', lesson: 'Ferry quéue', piece: 'Line', tempo: 126 };

describe('a track in AAC', () => {
  beforeEach(() => {
    vi.stubGlobal('AudioEncoder', StandInEncoder);
    vi.stubGlobal('AudioDecoder', StandInDecoder);
    vi.stubGlobal('AudioData', StandInData);
  });
  afterEach(() => vi.unstubAllGlobals());

  test.each([2 * TRACK_RATE, 100_001, 65_536])(
    'of %i samples is played without lead and tail',
    async (length) => {
      const left = noise(length);
      const { kind, bytes } = await writeTrack(
        { sampleRate: TRACK_RATE, left, right: left },
        'every telephone',
        TAGS,
        () => undefined,
      );
      expect(kind).toBe('m4a');
      const heard = played(bytes);
      // The movie counts in parts of a second that are a little longer than a sample.
      expect(heard.length - length).toBeLessThanOrEqual(1);
      expect(heard.slice(0, length)).toEqual(left);
      expect(heard.slice(length)).toEqual(new Float32Array(heard.length - length));
    },
  );

  test('says in its tags what it is', async () => {
    const left = noise(TRACK_RATE);
    const { bytes } = await writeTrack(
      { sampleRate: TRACK_RATE, left, right: left },
      'every telephone',
      TAGS,
      () => undefined,
    );
    const words = new TextDecoder().decode(bytes);
    expect(words).toContain('Line, 126 bpm, without bass');
    expect(words).toContain('Ferry quéue');
  });
});
