import { foldersOf } from '../../../core/students';
import type { Session } from '../../state';
import { loadRegister } from '../../storage';
import { THE_TUNE } from '../common';

/**
 * What tells the files of the open version from those of the tune and of the other versions, as the end of a file's
 * name: `-in-e-flat`; '' for the tune. No student who is kept is named by it.
 */
export async function versionStem(session: Session): Promise<string> {
  const { open, versions = [] } = session.lessons.getState().document;
  if (!versions.some(({ id }) => id === open)) return '';
  // Where it is not known who is kept, no version is called by its name.
  const found = await loadRegister().then(
    ({ openRegister }) => openRegister().list(),
    () => null,
  );
  const known = found?.ok ? [...found.value.entries, ...found.value.unreadable] : null;
  const folders = foldersOf({
    versions: known === null ? versions.map(({ id }) => ({ id, name: 'version' })) : versions,
    tune: THE_TUNE,
    named: false,
    students: known?.map(({ name }) => name) ?? [],
    members: null,
  });
  return `-${folders.find(({ version }) => version === open)?.name ?? 'version'}`;
}
