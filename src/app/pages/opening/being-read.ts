import { createFileReader, type FileReader } from '../../reader';
import type { Session } from '../../state';

/** Milliseconds after which a file that is still being read is shown as such. */
const SHOWN_AFTER = 400;

let usual: FileReader | null = null;

/** The reader of this page; its worker starts with the first file. */
export function usualReader(): FileReader {
  usual ??= createFileReader();
  return usual;
}

/**
 * Waits for the reader, and shows meanwhile which file it is at, how much of it is read, and a way to stop it.
 * @param start - begins to read; what it is given is told how much is read
 */
export async function shown<Read>(
  session: Session,
  reader: FileReader,
  name: string,
  start: (onShare: (share: number) => void) => Promise<Read>,
): Promise<Read> {
  let share: number | null = null;
  const show = (): void => session.editor.setState({ beingRead: { name, share, stop: reader.stop } });
  const timer = setTimeout(show, SHOWN_AFTER);
  try {
    return await start((done) => {
      share = done;
      if (session.editor.getState().beingRead !== null) show();
    });
  } finally {
    clearTimeout(timer);
    session.editor.setState({ beingRead: null });
  }
}
