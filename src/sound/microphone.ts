import { failure, type Result, success } from '../core/base';

export const FAULTS = {
  unsupported:
    'This browser lets no page listen here. A page that was opened from the downloads may not; open the lesson’s practice page on the web, or use another browser.',
  refused: 'The browser was not allowed to listen. Allow the microphone for this page, and try again.',
  missing: 'No microphone was found. Connect one, and try again.',
} as const;

/** An open microphone, or the input of an instrument. */
export interface Microphone {
  readonly context: AudioContext;
  readonly source: MediaStreamAudioSourceNode;
  close(): void;
}

/** Asks for the microphone, as it hears: what is meant for speech takes a bass for noise. Call it from a click. */
export async function openMicrophone(): Promise<Result<Microphone, string>> {
  if (typeof AudioContext === 'undefined' || navigator.mediaDevices?.getUserMedia === undefined)
    return failure(FAULTS.unsupported);
  try {
    const audio = { echoCancellation: false, noiseSuppression: false, autoGainControl: false };
    const stream = await navigator.mediaDevices.getUserMedia({ audio });
    const context = new AudioContext();
    return success({
      context,
      source: context.createMediaStreamSource(stream),
      close: () => {
        for (const track of stream.getTracks()) track.stop();
        void context.close();
      },
    });
  } catch (problem) {
    const missing = problem instanceof DOMException && problem.name === 'NotFoundError';
    return failure(missing ? FAULTS.missing : FAULTS.refused);
  }
}
