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

/**
 * A WAV file: two channels of 16-bit linear PCM in a RIFF container (IBM and Microsoft, "Multimedia Programming
 * Interface and Data Specifications 1.0", 1991). Triangular dither of one step either way keeps quiet endings
 * from turning into distortion; samples beyond full scale are held there; digital silence stays silent.
 */
export function encodeWav({ left, right, sampleRate }: StereoSound): Uint8Array<ArrayBuffer> {
  const frames = Math.min(left.length, right.length);
  const bytes = new Uint8Array(HEADER + frames * BYTES_PER_FRAME);
  const view = new DataView(bytes.buffer);
  writeText(view, 0, 'RIFF');
  view.setUint32(4, HEADER - 8 + frames * BYTES_PER_FRAME, true);
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
