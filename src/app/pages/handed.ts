import { askShared } from '../offline';
import type { Session } from '../state';

/** Files that the device's system hands to an installed app; of it only what is used here (W3C, Launch Handler API). */
interface LaunchQueue {
  setConsumer(take: (launch: { readonly files?: readonly { getFile(): Promise<File> }[] }) => void): void;
}

declare global {
  interface Window {
    readonly launchQueue?: LaunchQueue;
  }
}

const NOT_LOADED =
  'The part of the page that reads files could not be loaded, so the file was not opened. Check that the page is still reachable, load it again, and open the file once more.';
const NOTHING_CAME =
  'Nothing was found in what the other app shared. Save the file there, and open it here with Open.';

const UNREADABLE =
  'The file that was handed over could not be read. It may have been moved or changed meanwhile; open it here with Open.';

/** Says what is missing where several files came at once: one lesson is open at a time. */
const onlyOne = (file: File, count: number): string =>
  `${count} files were handed over, and only “${file.name}” was opened. Open the others one by one.`;

async function openHanded(session: Session, file: File, count: number): Promise<void> {
  const { setState, getState } = session.editor;
  const opener = await import('./opening').catch(() => null);
  if (opener === null) {
    setState({ notice: NOT_LOADED });
    return;
  }
  await opener.openFile(session, file);
  if (count < 2) return;
  const { notice } = getState();
  setState({ notice: [...(notice === null ? [] : [notice]), onlyOne(file, count)].join(' ') });
}

/** Opens what another app shared with this one. The address is cleared, so that a reload does not ask again. */
async function openShared(session: Session): Promise<void> {
  const { pathname, search, hash } = window.location;
  if (!new URLSearchParams(search).has('shared')) return;
  window.history.replaceState(null, '', pathname + hash);
  const shared = await askShared();
  if (shared === null) session.editor.setState({ notice: NOTHING_CAME });
  else await openHanded(session, shared.file, shared.count);
}

/** Opens files that the system hands over, where the app is installed: opened from a folder, or shared by another app. */
export function openHandedFiles(session: Session): void {
  window.launchQueue?.setConsumer(({ files = [] }) => {
    const [handle] = files;
    if (handle === undefined) return;
    handle.getFile().then(
      (file) => openHanded(session, file, files.length),
      () => session.editor.setState({ notice: UNREADABLE }),
    );
  });
  void openShared(session);
}
