import type { Session } from '../../state';

const NOT_LOADED =
  'The part of the page that reads files could not be loaded. Check that the page is still reachable and load it again.';

/** Opens a file as a lesson of its own, by the part of the page that comes with the first one. */
export async function openChosen(session: Session, file: File): Promise<void> {
  const opener = await import('../opening').catch(() => null);
  if (opener === null) session.editor.setState({ notice: NOT_LOADED });
  else await opener.openFile(session, file);
}
