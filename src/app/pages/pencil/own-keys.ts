import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { type OwnKeys, readOwnKeys } from '../../../core/writing';
import { readKeys, writeKeys } from '../../storage';

function stored(): OwnKeys {
  try {
    return readOwnKeys(JSON.parse(readKeys() ?? '{}'));
  } catch {
    return {};
  }
}

const chosen = createStore<{ readonly keys: OwnKeys }>(() => ({ keys: stored() }));

/** The keys that the user chose on this device. */
export const ownKeysNow = (): OwnKeys => chosen.getState().keys;

export const useOwnKeys = (): OwnKeys => useStore(chosen, ({ keys }) => keys);

/** Takes other keys from now on; says whether this device keeps them. */
export function rememberKeys(keys: OwnKeys): boolean {
  chosen.setState({ keys });
  return writeKeys(JSON.stringify(keys));
}
