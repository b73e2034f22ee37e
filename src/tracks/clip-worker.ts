import {
  BufferTarget,
  EncodedAudioPacketSource,
  EncodedPacket,
  EncodedVideoPacketSource,
  Mp4OutputFormat,
  Output,
  WebMOutputFormat,
} from 'mediabunny';
import { createKit, renderRounds, type StereoSound } from '../sound';
import { answerJobs } from '../workers';
import { CLIP_RATE, type ClipAnswer, type ClipFilm, type ClipJob } from './clip-messages';
import { drawFrame } from './clip-picture';
import { clipCoding } from './clip-support';
import { levelled } from './level';
import { TRACK_RATE } from './loudness';
import { addSound } from './packets';
import { encodeSound } from './web-codecs';

/** What of the work the sound is, about. */
const SOUND = 0.2;

/** Seconds from one picture that stands for itself to the next. */
const KEY = 2;

/** Pictures that may wait in the encoder before it is given more. */
const MOST_WAITING = 6;

/** Seconds over which the sound fades where the film ends. */
const FADE = 0.3;

/** The sound as long as the film: what rings beyond it fades out. */
function asLong(sound: StereoSound, seconds: number): StereoSound {
  const length = Math.round(seconds * TRACK_RATE);
  const fade = Math.round(FADE * TRACK_RATE);
  const cut = (samples: Float32Array): Float32Array => {
    const fitted = new Float32Array(length);
    fitted.set(samples.subarray(0, length));
    for (let index = Math.max(0, length - fade); index < length; index += 1)
      fitted[index] = ((fitted[index] ?? 0) * (length - index)) / fade;
    return fitted;
  };
  return { sampleRate: sound.sampleRate, left: cut(sound.left), right: cut(sound.right) };
}

type Chunk = readonly [chunk: EncodedVideoChunk, metadata: EncodedVideoChunkMetadata | undefined];

/**
 * The film's pictures one after the other as they come from the encoder.
 * @param take - is given each, in the order of time
 * @throws the encoder's error
 */
async function encodePictures(
  film: ClipFilm<ImageBitmap>,
  pen: OffscreenCanvasRenderingContext2D,
  config: VideoEncoderConfig,
  take: (...chunk: Chunk) => Promise<void>,
  onShare: (share: number) => void,
): Promise<void> {
  const ready: Chunk[] = [];
  let fault: unknown = null;
  const encoder = new VideoEncoder({
    output: (...chunk) => ready.push(chunk),
    error: (problem) => {
      fault = problem;
    },
  });
  const handOver = async (): Promise<void> => {
    for (const chunk of ready.splice(0)) await take(...chunk);
  };
  encoder.configure(config);
  for (const [index, frame] of film.frames.entries()) {
    drawFrame(pen, film, frame);
    const shot = new VideoFrame(pen.canvas, {
      timestamp: Math.round((index * 1e6) / CLIP_RATE),
      duration: Math.round(1e6 / CLIP_RATE),
    });
    encoder.encode(shot, { keyFrame: index % (KEY * CLIP_RATE) === 0 });
    shot.close();
    while (encoder.encodeQueueSize > MOST_WAITING && fault === null)
      await new Promise((resolve) => setTimeout(resolve, 2));
    if (fault !== null) throw fault;
    await handOver();
    if (index % 10 === 0) onShare(index / film.frames.length);
  }
  await encoder.flush();
  encoder.close();
  await handOver();
}

async function made(
  { film, rounds, mix, title }: ClipJob,
  onShare: (share: number) => void,
): Promise<ClipAnswer> {
  const { width, height, frames } = film;
  const seconds = frames.length / CLIP_RATE;
  const coding = await clipCoding(width, height);
  const pen = new OffscreenCanvas(width, height).getContext('2d', { alpha: false });
  if (coding === null || pen === null) return null;
  const mixed = renderRounds(rounds, mix, createKit(TRACK_RATE), {
    repeats: false,
    onShare: (share) => onShare((SOUND * share) / 2),
  });
  const heard = await encodeSound(asLong(levelled(mixed, false), seconds), coding.sound, () => undefined);
  onShare(SOUND);

  const target = new BufferTarget();
  const format =
    coding.kind === 'mp4' ? new Mp4OutputFormat({ fastStart: 'in-memory' }) : new WebMOutputFormat();
  const output = new Output({ format, target });
  const picture = new EncodedVideoPacketSource(coding.picture);
  const sound = new EncodedAudioPacketSource(coding.sound);
  output.addVideoTrack(picture, { frameRate: CLIP_RATE });
  output.addAudioTrack(sound);
  output.setMetadataTags({ title });
  await output.start();

  let added = 0;
  /** What is heard until then: sound and picture go into the file in the order of time. */
  const addSoundUntil = async (until: number): Promise<void> => {
    for (let next = heard.packets[added]; next !== undefined; next = heard.packets[added]) {
      if (next.at / TRACK_RATE > until) return;
      added += 1;
      await addSound(sound, next, heard.config);
    }
  };
  await encodePictures(
    film,
    pen,
    coding.config,
    async (chunk, metadata) => {
      await addSoundUntil(chunk.timestamp / 1e6);
      await picture.add(EncodedPacket.fromEncodedChunk(chunk), metadata);
    },
    (share) => onShare(SOUND + (1 - SOUND) * share),
  );
  await addSoundUntil(Number.POSITIVE_INFINITY);
  await output.finalize();
  return { kind: coding.kind, bytes: new Uint8Array(target.buffer ?? new ArrayBuffer(0)), seconds };
}

answerJobs(made, null, (answer) => (answer === null ? [] : [answer.bytes.buffer]));
