import {
  BufferTarget,
  EncodedAudioPacketSource,
  type MetadataTags,
  Mp3OutputFormat,
  Mp4OutputFormat,
  OggOutputFormat,
  Output,
  type OutputFormat,
} from 'mediabunny';
import { encodeWav, type StereoSound } from '../sound';
import type { Coding, TrackKind, TrackTags } from './codings';
import { TRACK_RATE } from './loudness';
import { encodeMp3, FRAME } from './mp3';
import { addSound } from './packets';
import { canEncodeSound, type EncodedSound, encodeSound } from './web-codecs';

const tagsOf = ({ title, lesson, piece, tempo }: TrackTags): MetadataTags => ({
  title: `${piece}, ${title}`,
  album: lesson,
  beatsPerMinute: Math.round(tempo),
  comment: `${title}. Made with Ground Bass.`,
});

/** Puts packets into a file with its tags. */
async function fileOf(
  format: OutputFormat,
  codec: 'aac' | 'mp3' | 'opus',
  { packets, config }: EncodedSound,
  tags: TrackTags,
): Promise<Uint8Array<ArrayBuffer>> {
  const target = new BufferTarget();
  const output = new Output({ format, target });
  const source = new EncodedAudioPacketSource(codec);
  output.addAudioTrack(source);
  output.setMetadataTags(tagsOf(tags));
  await output.start();
  for (const packet of packets) await addSound(source, packet, config);
  await output.finalize();
  return new Uint8Array(target.buffer ?? new ArrayBuffer(0));
}

async function mp3File(
  sound: StereoSound,
  tags: TrackTags,
  onShare: (share: number) => void,
): Promise<Uint8Array<ArrayBuffer>> {
  const frames = await encodeMp3(sound, onShare);
  const packets = frames.map((data, index) => ({ data, at: index * FRAME, samples: FRAME }));
  const config = { codec: 'mp3', sampleRate: TRACK_RATE, numberOfChannels: 2 };
  return fileOf(new Mp3OutputFormat({ xingHeader: false }), 'mp3', { packets, config }, tags);
}

export interface TrackFile {
  readonly kind: TrackKind;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/**
 * Writes a sound as a file. Where the browser does not encode as was asked, the file is an MP3, which the program can
 * always write.
 * @param onShare - hears how much is written, from 0 to 1
 */
export async function writeTrack(
  sound: StereoSound,
  coding: Coding,
  tags: TrackTags,
  onShare: (share: number) => void,
): Promise<TrackFile> {
  if (coding === 'wav') {
    const { title, album, comment } = tagsOf(tags);
    return {
      kind: 'wav',
      bytes: encodeWav(sound, { INAM: title ?? '', IPRD: album ?? '', ICMT: comment ?? '' }),
    };
  }
  if (coding === 'opus' && (await canEncodeSound('opus'))) {
    const encoded = await encodeSound(sound, 'opus', onShare);
    return { kind: 'opus', bytes: await fileOf(new OggOutputFormat(), 'opus', encoded, tags) };
  }
  if (coding === 'every telephone' && (await canEncodeSound('aac'))) {
    const encoded = await encodeSound(sound, 'aac', onShare);
    const format = new Mp4OutputFormat({ fastStart: 'in-memory' });
    return { kind: 'm4a', bytes: await fileOf(format, 'aac', encoded, tags) };
  }
  return { kind: 'mp3', bytes: await mp3File(sound, tags, onShare) };
}
