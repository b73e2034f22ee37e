import { type Result, success } from '../../core/base';
import { FAULTS, openMicrophone } from './microphone';
import { findPitch, type HeardPitch } from './pitch';

/** Samples that are looked at, at the device's rate: long enough for the lowest string. */
const WINDOW = 8192;

/** Milliseconds between two looks. */
const EVERY = 80;

/** An ear that is open until it is closed. What it hears is looked at and forgotten: nothing is kept or sent. */
export interface Ear {
  close(): void;
}

/**
 * Asks for the microphone and tells the pitch that it hears, again and again. Call it from a click.
 * @param onPitch - null while nothing clear is heard
 * @param onFault - why nothing is heard any more: a sentence
 */
export async function listen(
  onPitch: (pitch: HeardPitch | null) => void,
  onFault: (problem: string) => void,
): Promise<Result<Ear, string>> {
  const opened = await openMicrophone(undefined, () => onFault(FAULTS.ended));
  if (!opened.ok) return opened;
  const { context, source, close } = opened.value;
  const analyser = new AnalyserNode(context, { fftSize: WINDOW });
  source.connect(analyser);
  const samples = new Float32Array(WINDOW);
  const timer = setInterval(() => {
    analyser.getFloatTimeDomainData(samples);
    onPitch(findPitch(samples, context.sampleRate));
  }, EVERY);
  return success({
    close: () => {
      clearInterval(timer);
      close();
    },
  });
}
