import { failure, type Result, success } from '../../core/base';
import type { Deafness, HeardNote } from '../../core/listening';
import { EAR_ADDRESS } from './address';
import type { Ear } from './listener';
import type { EarReport, HeardLevel } from './messages';
import { deviceBehind, FAULTS, openMicrophone, type SoundInput, soundInputs } from './microphone';
import { type Recording, record } from './recording';

/** What was heard since it was told last; times are seconds on the page's own clock (`performance.now`). */
export interface EarNews {
  readonly heard: readonly HeardNote[];
  readonly level: HeardLevel;
  /** All since the ear was opened. */
  readonly deafness: readonly Deafness[];
  /** How far what is left of the loudspeaker is below what is heard, in decibels; 0 where nothing of it is known. */
  readonly below: number;
}

/** An open ear for notes. */
export interface OpenEar extends Ear {
  /** Which input it listens to, by its id; '' where the browser does not tell. */
  readonly input: string;
  /** The same, or the one that stands behind the browser's own choice: what was measured of it is kept by this. */
  readonly device: string;
  /** All that can be chosen. */
  readonly inputs: readonly SoundInput[];
  /** The browser takes the input as for speech, and does not let that be. */
  readonly forSpeech: boolean;
  /** From now on takes off what the page plays; null lets it be. */
  takeOff(played: MediaStream | null): void;
  /** Records what comes in, into memory; null where the browser does not. */
  record(): Recording | null;
}

interface EarOptions {
  /** One of the inputs; the browser's own choice where it is left out. */
  readonly input?: string | undefined;
  readonly onNews: (news: EarNews) => void;
  /** The input was taken away: a sentence. */
  readonly onFault: (problem: string) => void;
}

/** Reports over which the two clocks are held together: ten seconds. */
const REPORTS = 200;

/**
 * How far the page's clock is before the device's, in seconds. A report comes late by chance and never early, so the
 * least of many is right but for a constant, which the measured delay takes off.
 */
function createClocks() {
  const apart: number[] = [];
  return (device: number): number => {
    apart.push(performance.now() / 1000 - device);
    if (apart.length > REPORTS) apart.shift();
    return Math.min(...apart);
  };
}

/**
 * Opens an ear for the notes of a bass in the browser's audio thread. What it hears is looked at and forgotten. Call it
 * from a click.
 */
export async function hearNotes({ input, onNews, onFault }: EarOptions): Promise<Result<OpenEar, string>> {
  if (EAR_ADDRESS === null || typeof AudioWorkletNode === 'undefined') return failure(FAULTS.unsupported);
  const opened = await openMicrophone(input, () => onFault(FAULTS.ended));
  if (!opened.ok) return opened;
  const { context, source, forSpeech, close } = opened.value;
  try {
    await context.audioWorklet.addModule(EAR_ADDRESS);
  } catch {
    close();
    return failure(FAULTS.unsupported);
  }
  const node = new AudioWorkletNode(context, 'note-ear', { numberOfInputs: 2, numberOfOutputs: 0 });
  const apart = createClocks();
  node.port.onmessage = ({ data }: MessageEvent<EarReport>) => {
    const moved = data.begin + apart(data.now);
    onNews({
      heard: data.heard.map((note) => ({ ...note, start: note.start + moved, end: note.end + moved })),
      level: data.level,
      below: data.below,
      deafness: data.deafness.map(({ from, to }) => ({ from: from + moved, to: to + moved })),
    });
  };
  source.connect(node);
  let taken: { readonly stream: MediaStream; readonly source: MediaStreamAudioSourceNode } | null = null;
  const takeOff = (stream: MediaStream | null): void => {
    if (taken?.stream === stream) return;
    taken?.source.disconnect();
    taken = stream && { stream, source: context.createMediaStreamSource(stream) };
    taken?.source.connect(node, 0, 1);
  };
  return success({
    close,
    takeOff,
    record: () => record(opened.value.stream),
    forSpeech,
    input: opened.value.input,
    device: await deviceBehind(opened.value),
    inputs: await soundInputs(),
  });
}
