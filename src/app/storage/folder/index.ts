import type { LessonStorage } from '../lesson-storage';
import { askForFolder, canKeepFolder, mayUse } from './handles';
import { readKept, writeKept } from './kept';
import { type Met, meetFolder } from './meet';

/** How it stands with the folder. */
export interface FolderState {
  /** `asks`: the browser wants the user's word again; `lost`: the folder cannot be found. */
  readonly kind: 'unable' | 'none' | 'asks' | 'kept' | 'lost';
  /** Of the folder; '' for none. */
  readonly name: string;
  /** What came of the last look that had anything to tell. */
  readonly sentence: string;
}

/** The folder in which the lessons of this device are kept, too. */
export interface FolderDoor {
  state(): FolderState;
  /** Calls back when the state has changed, until the returned function is called. */
  watch(listener: () => void): () => void;
  /** Takes up the folder that was chosen before. */
  begin(): Promise<void>;
  /** Asks for a folder, from a click. */
  choose(): Promise<void>;
  /** Asks the browser's leave for the folder again, from a click. */
  goOn(): Promise<void>;
  /** Forgets the folder; its files stay there. */
  stop(): Promise<void>;
  /** Brings device and folder together, one look after the other. */
  look(): Promise<void>;
}

interface Parts {
  readonly storage: LessonStorage;
  /** Sees to it that what is worked on is saved. */
  readonly saveNow: () => Promise<unknown>;
  /** Hears which lessons of the device are in another state now. */
  readonly onChanged: (ids: readonly string[]) => unknown;
}

const nameOf = (fault: unknown): string => (fault instanceof Error ? fault.name : '');

const WHY: Readonly<Record<string, string>> = {
  NotFoundError:
    'The folder is no longer where it was. All lessons stay on this device; choose it anew, or another one.',
  NotAllowedError: 'The browser asks for your word before this page may use the folder again.',
  QuotaExceededError: 'The disk of the folder is full. All lessons stay on this device.',
};
const OTHER =
  'The folder could not be read or written. All lessons stay on this device, and the next look tries again.';

export function openFolder({ storage, saveNow, onChanged }: Parts): FolderDoor {
  let folder: FileSystemDirectoryHandle | null = null;
  let settled: Met['settled'] = [];
  let state: FolderState = { kind: canKeepFolder() ? 'none' : 'unable', name: '', sentence: '' };
  let turn: Promise<void> = Promise.resolve();
  const told = new Set<string>();
  const listeners = new Set<() => void>();
  const become = (change: Partial<FolderState>): void => {
    state = { ...state, ...change };
    for (const listener of listeners) listener();
  };
  const meet = async (): Promise<void> => {
    if (folder === null || state.kind !== 'kept') return;
    try {
      await saveNow();
      const met = await meetFolder(storage, folder, settled, told);
      settled = met.settled;
      await writeKept({ folder, settled });
      if (met.sentence !== '') become({ sentence: met.sentence });
      if (met.changed.length > 0) void onChanged(met.changed);
    } catch (fault) {
      const name = nameOf(fault);
      const kind = name === 'NotFoundError' ? 'lost' : name === 'NotAllowedError' ? 'asks' : 'kept';
      become({ kind, sentence: WHY[name] ?? OTHER });
    }
  };
  const look = (): Promise<void> => {
    turn = turn.then(meet);
    return turn;
  };
  return {
    state: () => state,
    watch: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    async begin() {
      if (state.kind !== 'none') return;
      try {
        const kept = await readKept();
        if (kept === null) return;
        ({ folder, settled } = kept);
        const may = await mayUse(folder, false);
        become({
          kind: may ? 'kept' : 'asks',
          name: folder.name,
          sentence: may ? '' : (WHY.NotAllowedError ?? ''),
        });
        await look();
      } catch {
        become({ sentence: OTHER });
      }
    },
    async choose() {
      try {
        const chosen = await askForFolder();
        if (chosen === null) return;
        // What was agreed on with another folder says nothing of this one.
        folder = chosen;
        settled = [];
        told.clear();
        become({ kind: 'kept', name: chosen.name, sentence: '' });
        await look();
      } catch (fault) {
        become({ sentence: WHY[nameOf(fault)] ?? OTHER });
      }
    },
    async goOn() {
      if (folder === null) return;
      if (await mayUse(folder, true)) {
        become({ kind: 'kept', sentence: '' });
        await look();
      } else become({ sentence: 'The browser did not allow it. All lessons stay on this device.' });
    },
    async stop() {
      folder = null;
      settled = [];
      told.clear();
      await writeKept(null).catch(() => {});
      become({
        kind: 'none',
        name: '',
        sentence: 'The lessons are no longer kept in the folder; its files stay there.',
      });
    },
    look,
  };
}
