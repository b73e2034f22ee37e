import { failure, type Result, success } from '../../core/base';
import type { Clock } from '../clock';
import type { Database } from './database';
import { describeStorageFault, isGone, SILENT } from './faults';

/** How long the storage may take over one thing, in milliseconds; then the page goes on without it. */
export const PATIENCE = 3000;

/** Time before a silent storage is tried again, in milliseconds; what is asked meanwhile fails at once. */
const BETWEEN_TRIES = 5000;

/** How often a database that went away is opened again: while the site's data are being cleared, the browser refuses to. */
const AGAIN = 4;

/** The wait before it, in milliseconds: none at first, 1400 in all. */
const waitBefore = (time: number): number => 100 * time * time;

export type Attempt<Kept = Database> = <Value>(
  work: (database: Kept) => Promise<Value>,
) => Promise<Result<Value, string>>;

interface Surroundings<Kept> {
  readonly open: (onLost: () => void) => Promise<Kept>;
  readonly clock: Clock;
  /** The database was closed under the page. */
  readonly onLost: () => void;
  /** A silent storage has answered after all. */
  readonly onBack: () => void;
  /** What a refusal means to the teacher; of the lessons' database where nothing is said. */
  readonly describe?: (fault: unknown) => string;
  readonly silent?: string;
}

/**
 * Works with a database that may refuse, be closed at any time, or never answer. Every failure is a sentence; the
 * next attempt opens the database again.
 */
export function createAttempts<Kept extends { close(): void }>({
  open,
  clock,
  onLost,
  onBack,
  describe = describeStorageFault,
  silent = SILENT,
}: Surroundings<Kept>): Attempt<Kept> {
  let opened: Promise<Kept> | null = null;
  /** A database went away, and none has answered since. */
  let went = false;
  /** When the storage was found silent; null while it answers. */
  let silentSince: number | null = null;

  /** Lets a database go, unless another has taken its place. */
  const letGo = (opening = opened): void => {
    opening?.then(
      (database) => database.close(),
      () => {},
    );
    if (opened === opening) opened = null;
  };

  const database = (): Promise<Kept> => {
    const opening = open(() => {
      if (opened === opening) opened = null;
      // Told whatever is at hand by now: who met it first may have had something else to do.
      onLost();
    });
    return opening;
  };

  const isBack = (): void => {
    if (silentSince === null) return;
    silentSince = null;
    onBack();
  };

  /** A database that goes away under the hands is opened again. */
  const perform = async <Value>(work: (database: Kept) => Promise<Value>, tries = 0): Promise<Value> => {
    opened ??= database();
    const opening = opened;
    try {
      const value = await work(await opening);
      if (went) {
        went = false;
        onLost();
      }
      return value;
    } catch (fault) {
      const gone = isGone(fault);
      // One that was let go before has been told of, or has only been silent.
      if (gone && opened === opening) went = true;
      letGo(opening);
      if (!gone || tries === AGAIN) throw fault;
      if (tries > 0) await new Promise<void>((resolve) => clock.after(waitBefore(tries), resolve));
      return perform(work, tries + 1);
    }
  };

  return async (work) => {
    if (silentSince !== null) {
      if (clock.now() - silentSince < BETWEEN_TRIES) return failure(silent);
      letGo();
      silentSince = clock.now();
    }
    let settled = false;
    const answer = perform(work).then(
      (value) => success(value),
      (fault: unknown) => failure(describe(fault)),
    );
    return new Promise((resolve) => {
      const stop = clock.after(PATIENCE, () => {
        if (settled) return;
        silentSince = clock.now();
        resolve(failure(silent));
      });
      void answer.then((result) => {
        settled = true;
        stop();
        resolve(result);
        isBack();
      });
    });
  };
}
