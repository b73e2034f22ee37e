import { CLIP_RATE } from './clip-messages';
import { canEncodeSound, type SoundCodec } from './web-codecs';

/** Bits a second: staff lines and letters that stand still need few. */
const BITRATE = 3_000_000;

export interface ClipCoding {
  readonly kind: 'mp4' | 'webm';
  readonly picture: 'avc' | 'vp9';
  readonly sound: SoundCodec;
  readonly config: VideoEncoderConfig;
}

/** H.264, high profile, level 4.0, and VP9, profile 0, level 4.0: both hold 1920 × 1080 at 30 pictures a second. */
const PICTURES = { avc: 'avc1.640028', vp9: 'vp09.00.40.08' } as const;

const configOf = (picture: ClipCoding['picture'], width: number, height: number): VideoEncoderConfig => ({
  codec: PICTURES[picture],
  width,
  height,
  bitrate: BITRATE,
  framerate: CLIP_RATE,
  // Several times faster than the best quality, which staff lines do not need.
  latencyMode: 'realtime',
});

async function canEncode(config: VideoEncoderConfig): Promise<boolean> {
  try {
    return (await VideoEncoder.isConfigSupported(config)).supported === true;
  } catch {
    return false;
  }
}

/**
 * How this browser can write a clip: H.264 with AAC, which every telephone plays, else VP9 with Opus; null where it can do
 * neither.
 */
export async function clipCoding(width: number, height: number): Promise<ClipCoding | null> {
  if (typeof VideoEncoder === 'undefined') return null;
  const avc = configOf('avc', width, height);
  if ((await canEncodeSound('aac')) && (await canEncode(avc)))
    return { kind: 'mp4', picture: 'avc', sound: 'aac', config: avc };
  const vp9 = configOf('vp9', width, height);
  if ((await canEncodeSound('opus')) && (await canEncode(vp9)))
    return { kind: 'webm', picture: 'vp9', sound: 'opus', config: vp9 };
  return null;
}
