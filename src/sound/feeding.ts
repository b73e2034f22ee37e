import type { Cue } from './deck';
import type { Renderer } from './renderer';
import { isInPieces, type SegmentHead, type SegmentRequest } from './synthesis/segment';

/** Seconds of a piece: short enough to be made in a moment, long enough that few are. */
const PIECE = 6;

/** Pieces that lie ready behind the one that sounds, so that a page that is held up does not tear the music. */
const AHEAD = 2;

/** The device, as far as what is fed to it needs it. */
export interface FedDevice {
  readonly sampleRate: number;
  /** The device's time in samples. */
  readonly now: () => number;
  /** Calls back after so many seconds of the device's time. */
  readonly after: (seconds: number, callback: () => void) => void;
}

/** A segment that has been started, whose lead sounds or will. */
export interface Fed {
  readonly cue: Pick<Cue, 'complete' | 'follow' | 'isOver'>;
  readonly request: SegmentRequest;
  readonly head: Omit<SegmentHead, 'lead'>;
  /** In the device's samples. */
  readonly start: number;
}

type Source = Pick<Renderer, 'render' | 'giveBack'>;

type OnFault = (fault: string) => void;

async function feedRound(
  renderer: Source,
  { sampleRate }: FedDevice,
  fed: Fed,
  onFault: OnFault,
): Promise<void> {
  const { cue, request, head } = fed;
  const result = await renderer.render({ kind: 'rest', sampleRate, request });
  if (cue.isOver(head.leadLength)) return;
  if (!result.ok) onFault(result.problem);
  else if (result.value?.kind === 'rest') {
    const { rest } = result.value;
    cue.complete(rest);
    renderer.giveBack(rest.round, rest.after);
  }
}

async function feedPieces(renderer: Source, device: FedDevice, fed: Fed, onFault: OnFault): Promise<void> {
  const { sampleRate, now, after } = device;
  const { cue, request, head, start } = fed;
  const length = PIECE * sampleRate;
  for (let from = head.leadLength; ; from += length) {
    const early = start + from - AHEAD * length - now();
    if (early > 0) await new Promise<void>((resolve) => after(early / sampleRate, resolve));
    if (cue.isOver(from)) return;
    // What the page was held up for is over: nobody would hear it.
    from = Math.max(from, Math.ceil(now()) - start);
    const result = await renderer.render({ kind: 'piece', sampleRate, request, from, length });
    if (cue.isOver(from)) return;
    if (!result.ok) onFault(result.problem);
    const piece = result.ok && result.value?.kind === 'piece' ? result.value.piece : null;
    if (piece === null || piece.bass.length === 0) return;
    cue.follow(piece, from);
    renderer.giveBack(piece);
  }
}

/**
 * Brings what comes after the lead of a segment: its round, where that is short enough to be held whole, or piece after
 * piece, each made while those before it sound.
 * @param onFault - hears why no more can be computed
 */
export const feed = (renderer: Source, device: FedDevice, fed: Fed, onFault: OnFault): Promise<void> =>
  (isInPieces(fed.head) ? feedPieces : feedRound)(renderer, device, fed, onFault);
