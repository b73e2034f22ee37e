import { type Clock, pageClock } from '../clock';
import { PATIENCE } from './attempts';
import { chanceName } from './chance-name';

/**
 * Remembers which lesson is being opened until the page has been drawn with it, so that a lesson with which a start
 * froze or failed is not opened again by the next start. It stands in the storage that is written at once, because a
 * frozen page writes nothing later.
 */
export interface StartGuard {
  /** What was being opened by starts that did not reach their first look; their notes are taken away. */
  begin(): Promise<ReadonlySet<string>>;
  /** Something is about to be opened. */
  opening(name: string): void;
  /** The page has it on it: when it comes to rest, all is well. */
  drawn(): void;
  /** The page failed: what was being opened stays noted. */
  failed(): void;
}

/** Notes that outlive the page. */
export interface Notes {
  names(): readonly string[];
  read(name: string): string | null;
  write(name: string, text: string): void;
  remove(name: string): void;
}

/** Tells whether whoever wrote a note is still there. */
export interface Locks {
  /** Holds a name until the returned function is called or the page is gone. */
  hold(name: string): () => void;
  /** Waits until nobody holds a name, at most for a time in milliseconds. */
  free(name: string, within: number): Promise<void>;
}

const PREFIX = 'ground-bass start ';

interface Surroundings {
  readonly notes: Notes;
  readonly locks: Locks;
  /** Calls back when the page has been drawn and is at rest. */
  readonly atRest: (work: () => void) => void;
  /** Calls back when the page is left while it works. */
  readonly onLeave: (work: () => void) => void;
  /** A name that no other page has. */
  readonly page: string;
}

export function createStartGuard({ notes, locks, atRest, onLeave, page }: Surroundings): StartGuard {
  const own = `${PREFIX}${page}`;
  let letGo = (): void => {};
  let hasFailed = false;
  /** Counts what is opened, so that an earlier rest does not speak for a later opening. */
  let openings = 0;

  const arrived = (): void => {
    if (hasFailed) return;
    notes.remove(own);
    letGo();
    letGo = () => {};
  };
  onLeave(arrived);

  return {
    async begin() {
      const left = notes.names().filter((name) => name.startsWith(PREFIX) && name !== own);
      // Another page may be starting at this moment; one that does not come to an end is as good as gone.
      await Promise.all(left.map((name) => locks.free(name, PATIENCE)));
      const suspects = left.flatMap((name) => notes.read(name) ?? []);
      for (const name of left) notes.remove(name);
      return new Set(suspects);
    },
    opening(name) {
      openings += 1;
      letGo();
      letGo = locks.hold(own);
      notes.write(own, name);
    },
    drawn() {
      const now = openings;
      atRest(() => {
        if (now === openings) arrived();
      });
    },
    failed: () => {
      hasFailed = true;
    },
  };
}

/** The browser's storage that is written at once; where there is none, nothing is noted. */
const browserNotes: Notes = {
  names: () => guarded(() => Object.keys(window.localStorage)) ?? [],
  read: (name) => guarded(() => window.localStorage.getItem(name)),
  write: (name, text) => guarded(() => window.localStorage.setItem(name, text)),
  remove: (name) => guarded(() => window.localStorage.removeItem(name)),
};

/** A browser may refuse its storage by throwing, or be full. */
function guarded<Value>(work: () => Value): Value | null {
  try {
    return work();
  } catch {
    return null;
  }
}

/** The browser's locks end with the page that holds them, also with one that is frozen and closed. */
const browserLocks = (manager: LockManager | undefined, clock: Clock): Locks => ({
  hold: (name) => {
    let release = (): void => {};
    const held = new Promise<void>((resolve) => {
      release = resolve;
    });
    manager?.request(name, () => held).catch(() => {});
    return release;
  },
  free: async (name, within) => {
    const given = new AbortController();
    const stop = clock.after(within, () => given.abort());
    try {
      await manager?.request(name, { signal: given.signal }, () => {});
    } catch {
      // It did not come free.
    }
    stop();
  },
});

/** Time after which a page that always has something to do counts as at rest, in milliseconds. */
const LONGEST_REST = 2000;

function whenAtRest(work: () => void): void {
  if (typeof window.requestIdleCallback === 'function')
    window.requestIdleCallback(work, { timeout: LONGEST_REST });
  else window.setTimeout(work, LONGEST_REST);
}

export const openStartGuard = (): StartGuard =>
  createStartGuard({
    notes: browserNotes,
    locks: browserLocks(navigator.locks as LockManager | undefined, pageClock),
    atRest: whenAtRest,
    onLeave: (work) => window.addEventListener('pagehide', work),
    page: chanceName(),
  });
