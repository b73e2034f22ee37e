import { type EncodedAudioPacketSource, EncodedPacket } from 'mediabunny';
import { TRACK_RATE } from './loudness';
import type { SoundPacket } from './web-codecs';

/** Adds an encoded stretch of sound to a file, at its place in it. */
export const addSound = (
  source: EncodedAudioPacketSource,
  { data, at, samples }: SoundPacket,
  decoderConfig: AudioDecoderConfig,
): Promise<void> =>
  source.add(new EncodedPacket(data, 'key', at / TRACK_RATE, samples / TRACK_RATE), { decoderConfig });
