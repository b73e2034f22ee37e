import { createEncoder } from 'wasm-media-encoders';
import mp3Code from 'wasm-media-encoders/wasm/mp3?url';
import type { StereoSound } from '../sound';
import { TRACK_RATE } from './loudness';

/** Samples of a frame (ISO/IEC 11172-3, layer III). */
export const FRAME = 1152;

/** Kilobits a second; constant, so that a telephone finds every place by counting. */
const BITRATE = 192;

/** Samples that LAME puts ahead of the sound (its ENCDELAY); decoders know of the 529 that they add themselves. */
const LEAD = 576;

/** The bit rates of layer III in kilobits a second, by their number in a frame's header. */
const RATES = [0, 32, 40, 48, 56, 64, 80, 96, 112, 128, 160, 192, 224, 256, 320];

/** Bytes of the frame that begins here, by its header; at 48 kHz. */
const frameLength = (bytes: Uint8Array, at: number): number => {
  const setting = bytes[at + 2] ?? 0;
  return Math.floor((144_000 * (RATES[setting >> 4] ?? 0)) / TRACK_RATE) + ((setting >> 1) & 1);
};

/** Cuts a stream into its frames; what is not whole is left out. */
function framesOf(bytes: Uint8Array): Uint8Array[] {
  const frames: Uint8Array[] = [];
  for (let at = 0; at + 4 <= bytes.length; ) {
    const length = frameLength(bytes, at);
    if (bytes[at] !== 0xff || length === 0 || at + length > bytes.length) break;
    frames.push(bytes.subarray(at, at + length));
    at += length;
  }
  return frames;
}

/** Bytes between the header of a stereo frame of MPEG-1 and where its sound would begin. */
const SIDE = 32;

/**
 * A frame without sound ahead of all others, which tells how many frames and bytes follow and how many samples are to be
 * left out at both ends, so that a repeated file has no gap: the tag of the LAME project ("Mp3 Info Tag revision 1", 2005).
 */
function infoFrame(frames: readonly Uint8Array[], samples: number): Uint8Array {
  const [first] = frames;
  const frame = new Uint8Array(first === undefined ? 0 : frameLength(first, 0));
  if (first === undefined) return frame;
  frame.set(first.subarray(0, 4));
  const view = new DataView(frame.buffer);
  const write = (at: number, text: string): void => {
    for (let index = 0; index < text.length; index += 1) view.setUint8(at + index, text.charCodeAt(index));
  };
  const begin = 4 + SIDE;
  const bytes = frames.reduce((sum, each) => sum + each.length, frame.length);
  write(begin, 'Info');
  view.setUint32(begin + 4, 0b111);
  view.setUint32(begin + 8, frames.length);
  view.setUint32(begin + 12, bytes);
  for (let part = 0; part < 100; part += 1) view.setUint8(begin + 16 + part, Math.floor((part * 256) / 100));
  const tag = begin + 116;
  write(tag, 'LAME3.100');
  const padding = frames.length * FRAME - LEAD - samples;
  view.setUint8(tag + 9, 1);
  view.setUint8(tag + 20, Math.min(255, BITRATE));
  view.setUint8(tag + 21, LEAD >> 4);
  view.setUint8(tag + 22, ((LEAD & 15) << 4) | (padding >> 8));
  view.setUint8(tag + 23, padding & 255);
  view.setUint32(tag + 28, bytes);
  return frame;
}

/**
 * The frames of an MP3 file by LAME, the silent one that holds its measures first.
 * @param onShare - hears how much is encoded, from 0 to 1
 */
export async function encodeMp3(
  { left, right }: StereoSound,
  onShare: (share: number) => void,
): Promise<readonly Uint8Array[]> {
  const encoder = await createEncoder('audio/mpeg', await mp3Module());
  encoder.configure({ channels: 2, sampleRate: TRACK_RATE, bitrate: BITRATE });
  const pieces: Uint8Array[] = [];
  for (let from = 0; from < left.length; from += TRACK_RATE) {
    const to = Math.min(left.length, from + TRACK_RATE);
    pieces.push(encoder.encode([left.subarray(from, to), right.subarray(from, to)]).slice());
    onShare(to / left.length);
  }
  pieces.push(encoder.finalize().slice());
  const stream = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    stream.set(piece, at);
    at += piece.length;
  }
  const frames = framesOf(stream);
  return [infoFrame(frames, left.length), ...frames];
}

const mp3Module = async (): Promise<WebAssembly.Module> =>
  WebAssembly.compile(await (await fetch(mp3Code)).arrayBuffer());
