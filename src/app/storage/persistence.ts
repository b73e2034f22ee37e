/**
 * Whether the browser has agreed to keep what the page stores until the person removes it; where it has not, it may
 * clear it when the device runs out of room (Storage Standard, 5). Unknown where it does not say.
 */
export type Persistence = 'granted' | 'not granted' | 'unknown';

type Manager = Pick<StorageManager, 'persist' | 'persisted'>;

/** The browser's own promise to keep what is stored. Nothing of it is ever waited for. */
export interface Keeping {
  /** Asks for the promise, once in the life of the page and only where it was not given. */
  ask(): void;
  state(): Promise<Persistence>;
}

export function createKeeping(manager: Manager | null): Keeping {
  let asked = false;
  const isGranted = async (): Promise<boolean | null> => {
    try {
      return (await manager?.persisted()) ?? null;
    } catch {
      return null;
    }
  };
  const ask = async (): Promise<void> => {
    if ((await isGranted()) === false) await manager?.persist();
  };
  return {
    ask: () => {
      if (asked) return;
      asked = true;
      // A refusal is told where the lessons are listed.
      ask().catch(() => {});
    },
    state: async () => {
      const granted = await isGranted();
      return granted === null ? 'unknown' : granted ? 'granted' : 'not granted';
    },
  };
}

let own: Keeping | null = null;

/** The one promise of this page. A page that is not served safely has no manager of its storage. */
export function browserKeeping(): Keeping {
  own ??= createKeeping(
    typeof navigator.storage?.persist === 'function' && typeof navigator.storage.persisted === 'function'
      ? navigator.storage
      : null,
  );
  return own;
}
