import { failure, type Result, success } from '../../core/base';
import type { Clock } from '../clock';
import type { Database } from './database';
import { describeStorageFault, isClosed, SILENT } from './faults';

/** How long the storage may take over one thing, in milliseconds; then the page goes on without it. */
export const PATIENCE = 3000;

/** Time before a silent storage is tried again, in milliseconds; what is asked meanwhile fails at once. */
const BETWEEN_TRIES = 5000;

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
  /** When the storage was found silent; null while it answers. */
  let silentSince: number | null = null;

  const letGo = (): void => {
    opened?.then(
      (database) => database.close(),
      () => {},
    );
    opened = null;
  };

  const database = (): Promise<Kept> => {
    const opening = open(() => {
      if (opened !== opening) return;
      opened = null;
      onLost();
    });
    return opening;
  };

  const isBack = (): void => {
    if (silentSince === null) return;
    silentSince = null;
    onBack();
  };

  /** A database that was closed under the page is opened once more. */
  const perform = async <Value>(work: (database: Kept) => Promise<Value>): Promise<Value> => {
    const wasOpen = opened !== null;
    opened ??= database();
    try {
      return await work(await opened);
    } catch (fault) {
      letGo();
      if (!wasOpen || !isClosed(fault)) throw fault;
      opened = database();
      return work(await opened);
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
