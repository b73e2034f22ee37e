import { failure, type Result, success } from '../../core/base';
import type { Deafness, HeardNote } from '../../core/listening';
import type { Ear } from '../listener';
import { FAULTS, openMicrophone } from '../microphone';
import { EAR_ADDRESS } from './address';
import type { EarReport, HeardLevel } from './messages';

/** What was heard since it was told last; times are seconds on the page's own clock (`performance.now`). */
export interface EarNews {
  readonly heard: readonly HeardNote[];
  readonly level: HeardLevel;
  /** All since the ear was opened. */
  readonly deafness: readonly Deafness[];
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
export async function hearNotes(onNews: (news: EarNews) => void): Promise<Result<Ear, string>> {
  if (EAR_ADDRESS === null || typeof AudioWorkletNode === 'undefined') return failure(FAULTS.unsupported);
  const opened = await openMicrophone();
  if (!opened.ok) return opened;
  const { context, source, close } = opened.value;
  try {
    await context.audioWorklet.addModule(EAR_ADDRESS);
  } catch {
    close();
    return failure(FAULTS.unsupported);
  }
  const node = new AudioWorkletNode(context, 'note-ear', { numberOfOutputs: 0 });
  const apart = createClocks();
  node.port.onmessage = ({ data }: MessageEvent<EarReport>) => {
    const moved = data.begin + apart(data.now);
    onNews({
      heard: data.heard.map((note) => ({ ...note, start: note.start + moved, end: note.end + moved })),
      level: data.level,
      deafness: data.deafness.map(({ from, to }) => ({ from: from + moved, to: to + moved })),
    });
  };
  source.connect(node);
  return success({ close });
}
