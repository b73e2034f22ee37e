import { failure, type Result, success } from '../core/base';
import { findPitch, type HeardPitch } from './pitch';

/** Samples that are looked at, at the device's rate: long enough for the lowest string. */
const WINDOW = 8192;

/** Milliseconds between two looks. */
const EVERY = 80;

const FAULTS = {
  unsupported:
    'This browser lets no page listen here. A page that was opened from the downloads may not; open the lesson’s practice page on the web, or use another browser.',
  refused: 'The browser was not allowed to listen. Allow the microphone for this page, and try again.',
  missing: 'No microphone was found. Connect one, and try again.',
} as const;

/** An ear that is open until it is closed. What it hears is looked at and forgotten: nothing is kept or sent. */
export interface Ear {
  close(): void;
}

/**
 * Asks for the microphone and tells the pitch that it hears, again and again. Call it from a click.
 * @param onPitch - null while nothing clear is heard
 */
export async function listen(onPitch: (pitch: HeardPitch | null) => void): Promise<Result<Ear, string>> {
  if (typeof AudioContext === 'undefined' || navigator.mediaDevices?.getUserMedia === undefined)
    return failure(FAULTS.unsupported);
  let stream: MediaStream;
  try {
    // What is meant for speech takes a bass for noise.
    const audio = { echoCancellation: false, noiseSuppression: false, autoGainControl: false };
    stream = await navigator.mediaDevices.getUserMedia({ audio });
  } catch (problem) {
    const missing = problem instanceof DOMException && problem.name === 'NotFoundError';
    return failure(missing ? FAULTS.missing : FAULTS.refused);
  }
  const context = new AudioContext();
  const analyser = new AnalyserNode(context, { fftSize: WINDOW });
  context.createMediaStreamSource(stream).connect(analyser);
  const samples = new Float32Array(WINDOW);
  const timer = setInterval(() => {
    analyser.getFloatTimeDomainData(samples);
    onPitch(findPitch(samples, context.sampleRate));
  }, EVERY);
  return success({
    close: () => {
      clearInterval(timer);
      for (const track of stream.getTracks()) track.stop();
      void context.close();
    },
  });
}
