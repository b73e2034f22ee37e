import { useSyncExternalStore } from 'react';
import { type OwnKeys, readOwnKeys } from '../../../core/writing';
import { readKeys, writeKeys } from '../../storage';

let own: OwnKeys | null = null;
const listeners = new Set<() => void>();

function stored(): OwnKeys {
  try {
    return readOwnKeys(JSON.parse(readKeys() ?? '{}'));
  } catch {
    return {};
  }
}

/** The keys that the user chose on this device. */
export function ownKeysNow(): OwnKeys {
  own ??= stored();
  return own;
}

export const useOwnKeys = (): OwnKeys =>
  useSyncExternalStore((changed) => {
    listeners.add(changed);
    return () => listeners.delete(changed);
  }, ownKeysNow);

/** Takes other keys from now on; says whether this device keeps them. */
export function rememberKeys(keys: OwnKeys): boolean {
  own = keys;
  for (const listener of listeners) listener();
  return writeKeys(JSON.stringify(keys));
}
