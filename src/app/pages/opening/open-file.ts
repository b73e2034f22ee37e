import { loadReader } from '../../../core/exchange';
import type { Lesson } from '../../../core/lesson';
import type { Session } from '../../state';

/** Many times the size of a lesson with a logo and many pieces, or of a score, in bytes. */
const LARGEST_FILE = 5_000_000;
const TOO_LARGE = 'This file is larger than 5 MB, so it is no lesson and no line. Nothing was changed.';
const UNREADABLE =
  'This file could not be read. It may have been moved or changed since it was chosen; choose it once more. Nothing was changed.';
const NO_READER =
  'The part of the page that reads music could not be loaded, so nothing was opened. Check that the page is still reachable and try again.';

type Reader = Awaited<ReturnType<typeof loadReader>>;

/** How files of music begin: MIDI, plain or wrapped, XML, a zip, and XML in UTF-16. */
const MUSIC = ['MThd', 'RIFF', '<', 'PK', '\u00fe\u00ff', '\u00ff\u00fe', '\u0000<'];
const MUSIC_NAME = /\.(musicxml|xml|mxl|midi?)$/i;

/** Whether a file claims to be music of another program, by its first signs or its name. */
function isMusic(bytes: Uint8Array, name: string): boolean {
  const head = String.fromCharCode(...bytes.subarray(0, 64)).replace(
    /^(?:\u00ef\u00bb\u00bf)?[ \t\r\n]*/,
    '',
  );
  return MUSIC.some((start) => head.startsWith(start)) || MUSIC_NAME.test(name);
}

/** Opens a file as a lesson of its own; the lesson at hand stays on this device. Every fault is a sentence. */
export async function openFile(session: Session, file: File): Promise<void> {
  const refuse = (notice: string): void => session.editor.setState({ notice });
  if (file.size > LARGEST_FILE) return refuse(TOO_LARGE);
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch {
    return refuse(UNREADABLE);
  }
  if (!isMusic(bytes, file.name)) return session.openFile(new TextDecoder().decode(bytes));
  const reader = await loadReader().catch(() => null);
  if (reader === null) return refuse(NO_READER);
  await openMusic(session, reader, bytes, file.name.replace(/\.[^.]*$/, ''));
}

async function openMusic(session: Session, reader: Reader, bytes: Uint8Array, title: string): Promise<void> {
  const first = reader.readFile(bytes, title);
  if (!first.ok) {
    session.editor.setState({ notice: first.problem.message });
    return;
  }
  /** What was read of the file, by the pieces that were made of it: undo may bring another part back. */
  const known = new Map<Lesson['pieces'], typeof first.value>();
  const tell = ({ sentences, parts, part }: typeof first.value): void =>
    session.editor.setState({ reading: { sentences, parts, part, choosePart } });
  const choosePart = (id: string): void => {
    const other = reader.readFile(bytes, title, id);
    if (!other.ok) {
      session.editor.setState({ notice: other.problem.message });
      return;
    }
    known.set(other.value.lesson.pieces, other.value);
    session.lessons.change((lesson) => ({ ...other.value.lesson, id: lesson.id }), {
      label: 'read another part',
    });
  };
  if (!(await session.openCopy(first.value.lesson))) return;
  known.set(first.value.lesson.pieces, first.value);
  tell(first.value);
  const stop = session.lessons.subscribe(({ lesson }) => {
    const { reading } = session.editor.getState();
    const read = known.get(lesson.pieces);
    if (reading?.choosePart !== choosePart) stop();
    else if (read !== undefined && read.part !== reading.part) tell(read);
  });
}
