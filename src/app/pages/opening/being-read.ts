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

/** Waits for the reader, and shows meanwhile which file it is at and a way to stop it. */
export async function shown<Read>(
  session: Session,
  reader: FileReader,
  name: string,
  reading: Promise<Read>,
): Promise<Read> {
  const timer = setTimeout(
    () => session.editor.setState({ beingRead: { name, stop: reader.stop } }),
    SHOWN_AFTER,
  );
  try {
    return await reading;
  } finally {
    clearTimeout(timer);
    session.editor.setState({ beingRead: null });
  }
}
