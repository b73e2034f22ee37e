import { holdsTab, type ReadFile, type Wishes } from '../../../core/exchange';
import type { Lesson } from '../../../core/lesson';
import type { FileReader } from '../../reader';
import type { Session } from '../../state';
import { shown, usualReader } from './being-read';
import { isPage, whyNoLesson } from './other-text';

/** Many times the size of a lesson with a logo and many pieces, or of a score, in bytes. */
const LARGEST_FILE = 5_000_000;
const TOO_LARGE = 'This file is larger than 5 MB, so it is no lesson and no line. Nothing was changed.';
const UNREADABLE =
  'This file could not be read. It may have been moved or changed since it was chosen; choose it once more. Nothing was changed.';

/** Why a file that was being read was not. */
const UNREAD = {
  'called off': 'The file was not read any further, and nothing was changed.',
  failed:
    'The part of the page that reads music could not be loaded, so nothing was opened. Check that the page is still reachable and try again.',
  silent:
    'Reading this file came to no end, so it was given up. Nothing was changed. Try it once more; where it comes to no end again, perhaps the program that wrote it can save a shorter part of it.',
} as const;

const SAID_OF_FILES: ReadonlySet<string | null> = new Set([TOO_LARGE, UNREADABLE, ...Object.values(UNREAD)]);

/** How files of music begin: MIDI, plain or wrapped, XML, a zip, and XML in UTF-16. */
const MUSIC = ['MThd', 'RIFF', '<', 'PK', '\u00fe\u00ff', '\u00ff\u00fe', '\u0000<'];
const MUSIC_NAME = /\.(musicxml|xml|mxl|midi?)$/i;

/** More than a long line takes as tab, in bytes: so much of a text is looked through for it. */
const TAB_IS_WITHIN = 200_000;
const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes.subarray(0, TAB_IS_WITHIN));

/** Whether a file claims to be music of another program, by its first signs, its name, or as tab. */
function isMusic(bytes: Uint8Array, name: string): boolean {
  const head = String.fromCharCode(...bytes.subarray(0, 64)).replace(
    /^(?:\u00ef\u00bb\u00bf)?[ \t\r\n]*/,
    '',
  );
  if (isPage(head)) return false;
  if (!/^[{<]/u.test(head) && holdsTab(textOf(bytes))) return true;
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
  // What was said of the file before is over; other notices stay until they are put away.
  if (SAID_OF_FILES.has(session.editor.getState().notice)) session.editor.setState({ notice: null });
  if (file.size > LARGEST_FILE) return refuse(TOO_LARGE);
  let bytes: Uint8Array;
  try {
    bytes = new Uint8Array(await file.arrayBuffer());
  } catch {
    return refuse(UNREADABLE);
  }
  if (bytes.length === 0) return refuse(whyNoLesson(bytes));
  if (isMusic(bytes, file.name)) return openMusic(session, reader, bytes, file.name);
  const read = await shown(session, reader, file.name, () => reader.readLesson(bytes));
  if (!read.ok) refuse(UNREAD[read.problem]);
  else if (!read.value.ok && read.value.problem.kind === 'not JSON') refuse(whyNoLesson(bytes));
  else await session.openRead(read.value);
}

/** One file of music while it is open: it is read anew for each wish. */
async function openMusic(
  session: Session,
  reader: FileReader,
  bytes: Uint8Array,
  name: string,
): Promise<void> {
  const title = name.replace(/\.[^.]*$/, '');
  const read = async (wishes: Wishes | null): Promise<ReadFile | null> => {
    const answer = await shown(session, reader, name, (onShare) =>
      reader.readMusic(bytes, title, wishes, onShare),
    );
    if (!answer.ok) session.editor.setState({ notice: UNREAD[answer.problem] });
    else if (!answer.value.ok) session.editor.setState({ notice: answer.value.problem.message });
    else return answer.value.value;
    return null;
  };
  const first = await read(null);
  if (first === null) return;
  /** What was read of the file, by the pieces that were made of it: undo may bring another reading back. */
  const known = new Map<Lesson['pieces'], Reading>();
  const opened = { read: first, wishes: wishesOf(first) };
  let told = first.lesson.pieces;
  const tell = (reading: Reading, opening: number): void => {
    told = reading.read.lesson.pieces;
    known.set(told, reading);
    const { sentences } = reading.read;
    session.editor.setState({ reading: { sentences, askAgain: () => again(reading, opening) } });
  };
  const again = (reading: Reading, opening: number): void =>
    ask(session, reader, name, reading, read, async (other) => {
      if (session.lessons.getState().opening !== opening) return;
      session.lessons.change((lesson) => ({ ...other.read.lesson, id: lesson.id }), {
        label: 'read the file otherwise',
      });
      tell(other, opening);
    });
  const open = async (reading: Reading): Promise<void> => {
    if (!(await session.openCopy(reading.read.lesson))) return;
    const { opening } = session.lessons.getState();
    tell(reading, opening);
    const stop = session.lessons.subscribe(({ lesson, opening: now }) => {
      if (now !== opening || session.editor.getState().reading === null) return stop();
      const other = known.get(lesson.pieces);
      if (other !== undefined && lesson.pieces !== told) tell(other, opening);
    });
  };
  if (first.facts.own) await open(opened);
  else ask(session, reader, name, opened, read, open);
}

/** What was read, and what was asked for. */
interface Reading {
  readonly read: ReadFile;
  readonly wishes: Wishes;
}

/** What was read, as wishes: what was likeliest is chosen now. */
const wishesOf = ({ parts, voices, chords, grids, pulses, facts }: ReadFile): Wishes => ({
  part: parts.read,
  voice: voices.read,
  take: 'line',
  octaves: facts.lowered,
  chords: chords.read,
  grid: grids?.read ?? null,
  pulse: pulses?.read ?? null,
  feel: facts.feel,
});

/** What another choice leaves open: another part has other voices, octaves and chords, another voice other octaves. */
function withWish(wishes: Wishes, change: Partial<Wishes>): Wishes {
  const open =
    change.part !== undefined
      ? { voice: null, octaves: null, chords: null }
      : change.voice !== undefined
        ? { octaves: null }
        : change.pulse !== undefined
          ? { chords: null }
          : {};
  return { ...wishes, ...open, ...change };
}

/** Asks what is wanted of a file, reads it anew for each answer, and goes on with what was read last. */
function ask(
  session: Session,
  reader: FileReader,
  fileName: string,
  first: Reading,
  readAgain: (wishes: Wishes) => Promise<ReadFile | null>,
  goOn: (reading: Reading) => Promise<void>,
): void {
  let at = first;
  /** Counts the answers, so that a reading that is overtaken by another one is not shown. */
  let count = 0;
  const show = (busy: boolean): void =>
    session.editor.setState({
      asking: { fileName, ...at, busy, choose: (change) => void choose(change), open, leave },
    });
  const leave = (): void => {
    session.editor.setState({ asking: null });
    reader.stop();
  };
  const open = (): void => {
    session.editor.setState({ asking: null });
    void goOn(at);
  };
  const choose = async (change: Partial<Wishes>): Promise<void> => {
    count += 1;
    const own = count;
    const before = at;
    at = { ...at, wishes: withWish(at.wishes, change) };
    show(true);
    const read = await readAgain(at.wishes);
    if (own !== count || session.editor.getState().asking === null) return;
    const { wishes } = at;
    at = read === null ? before : { read, wishes: { ...wishesOf(read), take: wishes.take } };
    show(false);
  };
  show(false);
}
