import { createRandom } from '../core/base';
import type { StereoSound } from './types';

const HEADER = 44;
const BYTES_PER_FRAME = 4;

/** The seed of the dither: the same sound always gives the same file. */
const DITHER_SEED = 1;

function writeText(view: DataView, at: number, text: string): void {
  for (let index = 0; index < text.length; index += 1) {
    view.setUint8(at + index, text.charCodeAt(index));
  }
}

/** What the file says of itself: name of the title, product, comment (INFO list of the same specification). */
export type WavInfo = Readonly<Partial<Record<'INAM' | 'IPRD' | 'ICMT', string>>>;

/** The INFO list behind the samples; nothing where nothing is said. Texts end with a zero and take an even number of bytes. */
function infoChunk(info: WavInfo): Uint8Array {
  const texts = Object.entries(info).map(([name, text]) => {
    const said = new TextEncoder().encode(text);
    const padded = new Uint8Array(8 + 2 * Math.ceil((said.length + 1) / 2));
    const view = new DataView(padded.buffer);
    writeText(view, 0, name);
    view.setUint32(4, said.length + 1, true);
    padded.set(said, 8);
    return padded;
  });
  if (texts.length === 0) return new Uint8Array(0);
  const length = 4 + texts.reduce((sum, text) => sum + text.length, 0);
  const chunk = new Uint8Array(8 + length);
  const view = new DataView(chunk.buffer);
  writeText(view, 0, 'LIST');
  view.setUint32(4, length, true);
  writeText(view, 8, 'INFO');
  let at = 12;
  for (const text of texts) {
    chunk.set(text, at);
    at += text.length;
  }
  return chunk;
}

/**
 * A WAV file: two channels of 16-bit linear PCM in a RIFF container (IBM and Microsoft, "Multimedia Programming
 * Interface and Data Specifications 1.0", 1991). Triangular dither of one step either way keeps quiet endings
 * from turning into distortion; samples beyond full scale are held there; digital silence stays silent.
 */
export function encodeWav(
  { left, right, sampleRate }: StereoSound,
  info: WavInfo = {},
): Uint8Array<ArrayBuffer> {
  const frames = Math.min(left.length, right.length);
  const list = infoChunk(info);
  const bytes = new Uint8Array(HEADER + frames * BYTES_PER_FRAME + list.length);
  bytes.set(list, HEADER + frames * BYTES_PER_FRAME);
  const view = new DataView(bytes.buffer);
  writeText(view, 0, 'RIFF');
  view.setUint32(4, bytes.length - 8, true);
  writeText(view, 8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 2, true);
  view.setUint32(24, sampleRate, true);
  view.setUint32(28, sampleRate * BYTES_PER_FRAME, true);
  view.setUint16(32, BYTES_PER_FRAME, true);
  view.setUint16(34, 16, true);
  writeText(view, 36, 'data');
  view.setUint32(40, frames * BYTES_PER_FRAME, true);

  const { next } = createRandom(DITHER_SEED);
  const quantise = (sample: number): number => {
    if (sample === 0) {
      return 0;
    }
    const dithered = sample * 32767 + next() - next();
    return Math.max(-32768, Math.min(32767, Math.round(dithered)));
  };
  for (let frame = 0; frame < frames; frame += 1) {
    const at = HEADER + frame * BYTES_PER_FRAME;
    view.setInt16(at, quantise(left[frame] ?? 0), true);
    view.setInt16(at + 2, quantise(right[frame] ?? 0), true);
  }
  return bytes;
}
