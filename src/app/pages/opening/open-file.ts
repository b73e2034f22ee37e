import type { Lesson } from '../../../core/lesson';
import type { FileReader, MusicRead } from '../../reader';
import type { Session } from '../../state';
import { shown, usualReader } from './being-read';

type ReadFile = Extract<MusicRead, { readonly ok: true }>['value'];

/** Many times the size of a lesson with a logo and many pieces, or of a score, in bytes. */
const LARGEST_FILE = 5_000_000;
const TOO_LARGE = 'This file is larger than 5 MB, so it is no lesson and no line. Nothing was changed.';
const UNREADABLE =
  'This file could not be read. It may have been moved or changed since it was chosen; choose it once more. Nothing was changed.';
const NO_READER =
  'The part of the page that reads music could not be loaded, so nothing was opened. Check that the page is still reachable and try again.';

const STOPPED = 'The file was not read any further, and nothing was changed.';
const SILENT =
  'Reading this file came to no end, so it was given up. Nothing was changed. Perhaps the program that wrote it can save a shorter part of it.';

/** Why a file that was being read was not, in a sentence. */
const unread = (problem: 'called off' | 'failed' | 'silent'): string =>
  ({ 'called off': STOPPED, failed: NO_READER, silent: SILENT })[problem];

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

/**
 * Opens a file as a lesson of its own; the lesson at hand stays on this device. It is read beside the page, which
 * never waits for it. Every fault is a sentence.
 */
export async function openFile(
  session: Session,
  file: File,
  reader: FileReader = usualReader(),
): Promise<void> {
  const refuse = (notice: string): void => session.editor.setState({ notice });
  if (file.size > LARGEST_FILE) return refuse(TOO_LARGE);
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch {
    return refuse(UNREADABLE);
  }
  if (isMusic(bytes, file.name)) return openMusic(session, reader, bytes, file.name);
  const read = await shown(session, reader, file.name, reader.readLesson(bytes));
  if (read.ok) await session.openRead(read.value);
  else refuse(unread(read.problem));
}

async function openMusic(
  session: Session,
  reader: FileReader,
  bytes: Uint8Array,
  name: string,
): Promise<void> {
  const title = name.replace(/\.[^.]*$/, '');
  const read = async (part: string | null): Promise<ReadFile | null> => {
    const answer = await shown(session, reader, name, reader.readMusic(bytes, title, part));
    if (answer.ok && answer.value.ok) return answer.value.value;
    const notice = answer.ok
      ? answer.value.ok
        ? null
        : answer.value.problem.message
      : unread(answer.problem);
    session.editor.setState({ notice });
    return null;
  };
  const first = await read(null);
  if (first === null || !(await session.openCopy(first.lesson))) return;
  /** What was read of the file, by the pieces that were made of it: undo may bring another part back. */
  const known = new Map<Lesson['pieces'], ReadFile>([[first.lesson.pieces, first]]);
  const { opening } = session.lessons.getState();
  const choosePart = async (id: string): Promise<void> => {
    const other = await read(id);
    if (other === null || session.lessons.getState().opening !== opening) return;
    known.set(other.lesson.pieces, other);
    session.lessons.change((lesson) => ({ ...other.lesson, id: lesson.id }), {
      label: 'read another part',
    });
  };
  const choose = (id: string): void => void choosePart(id);
  const tell = ({ sentences, parts, part }: ReadFile): void =>
    session.editor.setState({ reading: { sentences, parts, part, choosePart: choose } });
  tell(first);
  const stop = session.lessons.subscribe(({ lesson }) => {
    const { reading } = session.editor.getState();
    const told = known.get(lesson.pieces);
    if (reading?.choosePart !== choose) stop();
    else if (told !== undefined && told.part !== reading.part) tell(told);
  });
}
