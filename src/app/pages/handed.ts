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
  'The part of the page that reads files could not be loaded, so the file was not opened. Check that the page is still reachable and open it again.';
const NOTHING_CAME =
  'Nothing was found in what the other app shared. Save the file there, and open it here with Open.';

async function openHanded(session: Session, file: File): Promise<void> {
  const opener = await import('./opening').catch(() => null);
  if (opener === null) session.editor.setState({ notice: NOT_LOADED });
  else await opener.openFile(session, file);
}

/** Opens what another app shared with this one. The address is cleared, so that a reload does not ask again. */
async function openShared(session: Session): Promise<void> {
  const { pathname, search, hash } = window.location;
  if (!new URLSearchParams(search).has('shared')) return;
  window.history.replaceState(null, '', pathname + hash);
  const file = await askShared();
  if (file === null) session.editor.setState({ notice: NOTHING_CAME });
  else await openHanded(session, file);
}

/** Opens files that the system hands over, where the app is installed: opened from a folder, or shared by another app. */
export function openHandedFiles(session: Session): void {
  window.launchQueue?.setConsumer(({ files = [] }) => {
    const [handle] = files;
    if (handle !== undefined) void handle.getFile().then((file) => openHanded(session, file));
  });
  void openShared(session);
}
