import { failure, type Result, success } from '../../core/base';

export const FAULTS = {
  unsupported:
    'This browser lets no page listen here. A page that was opened from the downloads may not; open the lesson’s practice page on the web, or use another browser.',
  refused: 'The browser was not allowed to listen. Allow the microphone for this page, and try again.',
  missing: 'No microphone was found. Connect one, and try again.',
  gone: 'That input is not there any more. Choose another one, or connect it and try again.',
  busy: 'The input gives no sound: another program may hold it. Close that one, and try again.',
  ended: 'The input was taken away, so nothing is listened to any more. Connect it, and listen again.',
} as const;

/** A microphone, or the input of an instrument. */
export interface SoundInput {
  readonly id: string;
  readonly name: string;
}

/** An open microphone, or the input of an instrument. */
export interface Microphone {
  readonly context: AudioContext;
  readonly source: MediaStreamAudioSourceNode;
  readonly stream: MediaStream;
  /** Which one it is; '' where the browser does not tell. */
  readonly input: string;
  /** What belongs to one device has the same group, as long as the page is open; '' where the browser does not tell. */
  readonly group: string;
  /** It is taken as for speech, and the browser does not let that be: soft and long notes may be lost. */
  readonly forSpeech: boolean;
  close(): void;
}

const PROBLEMS: Readonly<Record<string, string>> = {
  NotFoundError: FAULTS.missing,
  OverconstrainedError: FAULTS.gone,
  NotReadableError: FAULTS.busy,
  // Allowed and there, and yet it could not be used.
  AbortError: FAULTS.busy,
  NotSupportedError: FAULTS.busy,
};

/** All inputs that can be chosen, once one was allowed; none where the browser does not tell. */
export async function soundInputs(): Promise<readonly SoundInput[]> {
  try {
    const devices = await navigator.mediaDevices.enumerateDevices();
    return devices
      .filter(({ kind, deviceId }) => kind === 'audioinput' && deviceId !== '')
      .map(({ deviceId, label }, index) => ({
        id: deviceId,
        name: label === '' ? `Input ${index + 1}` : label,
      }));
  } catch {
    return [];
  }
}

/** Ids that name a choice of the browser or the system, and no device: another one may stand behind them tomorrow. */
const CHOICES = ['', 'default', 'communications'];

/** The device itself behind what was opened, by an id that stays; '' where the browser does not tell. */
export async function deviceBehind({ input, group }: Microphone): Promise<string> {
  if (!CHOICES.includes(input)) return input;
  if (group === '') return '';
  try {
    const devices = await navigator.mediaDevices.enumerateDevices();
    const same = devices.filter(
      ({ kind, groupId, deviceId }) =>
        kind === 'audioinput' && groupId === group && !CHOICES.includes(deviceId),
    );
    return same.length === 1 ? (same[0]?.deviceId ?? '') : '';
  } catch {
    return '';
  }
}

/**
 * Asks for the microphone, as it hears: what is meant for speech takes a bass for noise. Call it from a click.
 * @param input - one of `soundInputs`; the browser's own choice where it is left out
 * @param onEnded - is told when it was taken away
 */
export async function openMicrophone(
  input?: string,
  onEnded = (): void => {},
): Promise<Result<Microphone, string>> {
  if (typeof AudioContext === 'undefined' || navigator.mediaDevices?.getUserMedia === undefined)
    return failure(FAULTS.unsupported);
  let stream: MediaStream | null = null;
  try {
    const audio = {
      ...{ echoCancellation: false, noiseSuppression: false, autoGainControl: false },
      ...(input === undefined ? {} : { deviceId: { exact: input } }),
    };
    stream = await navigator.mediaDevices.getUserMedia({ audio });
    const tracks = stream.getTracks();
    const context = new AudioContext();
    const [track] = stream.getAudioTracks();
    track?.addEventListener('ended', onEnded);
    const settings = track?.getSettings();
    return success({
      ...{ context, stream },
      source: context.createMediaStreamSource(stream),
      input: settings?.deviceId ?? '',
      group: settings?.groupId ?? '',
      forSpeech: settings?.echoCancellation === true || settings?.noiseSuppression === true,
      close: () => {
        for (const each of tracks) each.stop();
        void context.close();
      },
    });
  } catch (problem) {
    // What was opened and cannot be heard is given back.
    for (const each of stream?.getTracks() ?? []) each.stop();
    const name = problem instanceof DOMException ? problem.name : '';
    return failure(PROBLEMS[name] ?? FAULTS.refused);
  }
}
