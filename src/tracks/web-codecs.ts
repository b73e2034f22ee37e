import type { StereoSound } from '../sound';
import { TRACK_RATE } from './loudness';

/** An encoded stretch of sound. */
export interface SoundPacket {
  readonly data: Uint8Array;
  /** Samples from the beginning of the sound; negative while only the encoder's lead is heard. */
  readonly at: number;
  readonly samples: number;
}

export interface EncodedSound {
  readonly packets: readonly SoundPacket[];
  readonly config: AudioDecoderConfig;
}

const CODECS = { aac: 'mp4a.40.2', opus: 'opus' } as const;
export type SoundCodec = keyof typeof CODECS;

/** Bits a second. */
const BITRATES = { aac: 192_000, opus: 128_000 } as const;

const configOf = (codec: SoundCodec): AudioEncoderConfig => ({
  codec: CODECS[codec],
  sampleRate: TRACK_RATE,
  numberOfChannels: 2,
  bitrate: BITRATES[codec],
});

/** Whether this browser encodes sound so. */
export async function canEncodeSound(codec: SoundCodec): Promise<boolean> {
  if (typeof AudioEncoder === 'undefined') return false;
  try {
    return (await AudioEncoder.isConfigSupported(configOf(codec))).supported === true;
  } catch {
    return false;
  }
}

const audioData = ({ left, right }: StereoSound, from: number, to: number): AudioData => {
  const data = new Float32Array(2 * (to - from));
  data.set(left.subarray(from, to));
  data.set(right.subarray(from, to), to - from);
  return new AudioData({
    format: 'f32-planar',
    sampleRate: TRACK_RATE,
    numberOfFrames: to - from,
    numberOfChannels: 2,
    timestamp: Math.round((from * 1e6) / TRACK_RATE),
    data,
  });
};

/** How many stretches may wait in an encoder before it is given more. */
const MOST_WAITING = 8;

/** @throws the encoder's error. */
async function chunksOf(sound: StereoSound, codec: SoundCodec, onShare: (share: number) => void) {
  const chunks: EncodedAudioChunk[] = [];
  let config: AudioDecoderConfig | null = null;
  let fault: unknown = null;
  const encoder = new AudioEncoder({
    output: (chunk, metadata) => {
      chunks.push(chunk);
      config = metadata?.decoderConfig ?? config;
    },
    error: (problem) => {
      fault = problem;
    },
  });
  encoder.configure(configOf(codec));
  const { length } = sound.left;
  for (let from = 0; from < length && fault === null; from += TRACK_RATE / 10) {
    const data = audioData(sound, from, Math.min(length, from + TRACK_RATE / 10));
    encoder.encode(data);
    data.close();
    while (encoder.encodeQueueSize > MOST_WAITING && fault === null)
      await new Promise((resolve) => setTimeout(resolve, 1));
    onShare(from / length);
  }
  await encoder.flush();
  encoder.close();
  if (fault !== null) throw fault;
  if (config === null) throw new TypeError('The encoder does not say how its sound is decoded.');
  return { chunks, config: config as AudioDecoderConfig };
}

/** A short tone that swells and dies away, in the middle of a second of silence: what the lead of an encoder is measured by. */
function probe(): StereoSound {
  const left = new Float32Array(TRACK_RATE);
  for (let index = -600; index <= 600; index += 1) {
    const swell = 0.5 + 0.5 * Math.cos((Math.PI * index) / 600);
    left[TRACK_RATE / 2 + index] = 0.5 * swell * Math.sin((2 * Math.PI * 1500 * index) / TRACK_RATE);
  }
  return { sampleRate: TRACK_RATE, left, right: left.slice() };
}

/** Everything a decoder gives of some chunks, its left channel. */
async function decoded(
  chunks: readonly EncodedAudioChunk[],
  config: AudioDecoderConfig,
): Promise<Float32Array> {
  const parts: Float32Array[] = [];
  const decoder = new AudioDecoder({
    output: (data) => {
      const part = new Float32Array(data.numberOfFrames);
      data.copyTo(part, { planeIndex: 0, format: 'f32-planar' });
      parts.push(part);
      data.close();
    },
    error: () => undefined,
  });
  decoder.configure(config);
  for (const chunk of chunks) decoder.decode(chunk);
  await decoder.flush();
  decoder.close();
  const all = new Float32Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

/** Lags at which the lead is looked for: more than any encoder of AAC has. */
const MOST_LEAD = 6000;

/** Samples by which what comes out of an encoder lies later than what went in, as this browser's own decoder hears it. */
async function leadOf(codec: SoundCodec): Promise<number> {
  const sound = probe();
  const { chunks, config } = await chunksOf(sound, codec, () => undefined);
  const heard = await decoded(chunks, config);
  const [begin, end] = [TRACK_RATE / 2 - 600, TRACK_RATE / 2 + 600];
  let [best, lead] = [0, 0];
  for (let lag = 0; lag <= MOST_LEAD; lag += 1) {
    let alike = 0;
    for (let index = begin; index <= end; index += 1)
      alike += (sound.left[index] ?? 0) * (heard[index + lag] ?? 0);
    if (alike > best) [best, lead] = [alike, lag];
  }
  return lead;
}

/** Samples that a chunk holds. */
const samplesOf = (codec: SoundCodec, chunk: EncodedAudioChunk): number =>
  codec === 'aac' ? 1024 : Math.round(((chunk.duration ?? 20_000) * TRACK_RATE) / 1e6);

/** The samples that a decoder of Opus leaves out at the beginning (RFC 7845, 5.1). */
function preSkipOf({ description }: AudioDecoderConfig): number {
  if (description === undefined) return 0;
  const head = ArrayBuffer.isView(description)
    ? new DataView(description.buffer, description.byteOffset, description.byteLength)
    : new DataView(description);
  return head.byteLength < 12 ? 0 : head.getUint16(10, true);
}

/**
 * A sound encoded by the browser. Its packets are placed so that the encoder's lead lies before the beginning, and the
 * last one ends where the sound does.
 * @throws the encoder's error
 */
export async function encodeSound(
  sound: StereoSound,
  codec: SoundCodec,
  onShare: (share: number) => void,
): Promise<EncodedSound> {
  const { chunks, config } = await chunksOf(sound, codec, onShare);
  // Opus tells its lead itself, and its packets are counted from the lead's beginning on (RFC 7845, 4.2).
  const lead = codec === 'aac' ? await leadOf(codec) : 0;
  const length = sound.left.length + (codec === 'opus' ? preSkipOf(config) : 0);
  let at = -lead;
  const packets: SoundPacket[] = [];
  for (const chunk of chunks) {
    if (at >= length) break;
    const data = new Uint8Array(chunk.byteLength);
    chunk.copyTo(data);
    const samples = samplesOf(codec, chunk);
    packets.push({ data, at, samples: Math.min(samples, length - at) });
    at += samples;
  }
  return { packets, config };
}
