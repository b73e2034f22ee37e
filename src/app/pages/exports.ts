import { deriveSheet, type Lesson, printLesson } from '../../core/lesson';
import { PARTS } from '../../core/performance';
import type { MenuGroup } from '../controls';
import type { Session } from '../state';
import { lineAtHand } from './at-hand';
import { fileStem, saveFile } from './files';
import { printLessonHandout, saveHandout } from './handout-files';
import { mixOf, type Playback, performanceOf } from './playing';
import { savePracticePage } from './practice-file';
import { openPracticeView } from './practice-view';
import { useAtWork, useEditor, useLesson } from './session';
import { runWork } from './work';

const NOT_LOADED =
  'The part of the page that makes it could not be loaded. Check that the page is still reachable and try again.';

/** What a browser throws when a part of the page does not come: each has its own words for a TypeError. */
const isNotLoaded = (problem: unknown): boolean =>
  problem instanceof TypeError && /import|module|fetch|load/i.test(problem.message);

/** Runs an export and says so when it fails; the lesson is never touched. */
async function attempt(
  session: Session,
  what: string,
  work: (lesson: Lesson) => Promise<void>,
): Promise<void> {
  session.editor.setState({ notice: null });
  try {
    await work(session.lessons.getState().lesson);
  } catch (problem) {
    const why = isNotLoaded(problem) ? NOT_LOADED : 'The lesson is as it was.';
    session.editor.setState({ notice: `${what} could not be made. ${why}` });
  }
}

async function savePdf(session: Session, lesson: Lesson): Promise<void> {
  const notice = await saveHandout(lesson);
  if (notice !== null) session.editor.setState({ notice });
}

/** The piece at hand with its sheet, or a sentence in the notice when there is no line with bars. */
function lineToExport(session: Session, lesson: Lesson) {
  const piece = lineAtHand(lesson, session.editor.getState().pieceId);
  const sheet = piece && deriveSheet(piece, lesson.instrument, lesson.noteNames);
  if (!piece || sheet?.kind !== 'line' || sheet.bars.length === 0) {
    session.editor.setState({ notice: 'There is no line to export yet: write a chord chart first.' });
    return null;
  }
  return { piece, sheet };
}

async function saveMusicXml(session: Session, lesson: Lesson): Promise<void> {
  const line = lineToExport(session, lesson);
  if (line === null) return;
  const { exportName, writeMusicXml } = await import('../../core/exchange');
  saveFile(
    `${fileStem(exportName(line.sheet, lesson.title))}.musicxml`,
    writeMusicXml(line.sheet, lesson.title),
    'application/vnd.recordare.musicxml+xml',
  );
}

async function saveMxl(session: Session, lesson: Lesson): Promise<void> {
  const line = lineToExport(session, lesson);
  if (line === null) return;
  const { exportName, packMxl, writeMusicXml } = await import('../../core/exchange');
  saveFile(
    `${fileStem(exportName(line.sheet, lesson.title))}.mxl`,
    new Uint8Array(packMxl(writeMusicXml(line.sheet, lesson.title))),
    'application/vnd.recordare.musicxml',
  );
}

async function saveTextTab(session: Session, lesson: Lesson): Promise<void> {
  const line = lineToExport(session, lesson);
  if (line === null) return;
  const { exportName, writeTextTab } = await import('../../core/exchange');
  saveFile(
    `${fileStem(exportName(line.sheet, lesson.title))}.txt`,
    writeTextTab(line.sheet, lesson.title),
    'text/plain;charset=utf-8',
  );
}

async function saveMidi(session: Session, lesson: Lesson): Promise<void> {
  const line = lineToExport(session, lesson);
  if (line === null) return;
  const { piece, sheet } = line;
  const { exportName, writeMidi } = await import('../../core/exchange');
  const bytes = writeMidi({
    performance: performanceOf(piece, sheet, 'notes'),
    sheet,
    title: lesson.title,
    parts: new Set(PARTS.filter((part) => piece.playing[part])),
  });
  saveFile(`${fileStem(exportName(sheet, lesson.title))}.mid`, new Uint8Array(bytes), 'audio/midi');
}

/** Addresses of this length are to be let through everywhere (RFC 9110, 4.1); mail programs cut longer ones. */
const SAFE_LINK = 8_000;
const COPIED = 'The link is copied. It holds the whole lesson; whoever opens it gets a copy of their own.';
const LONG_LINK =
  'It is long, and some mail programs cut long links off: the lesson file is the safer way to send it.';
const NO_CLIPBOARD =
  'This browser does not let the page copy the link. Send the lesson file instead: it holds the same lesson.';

const COPIED_FOR_PRACTICE =
  'The link is copied. It holds the whole lesson and opens the practice page, on which nothing of the lesson can be changed.';

/** The address of the app itself: without a query, and without a lesson. */
const appAddress = (): string => window.location.href.replace(/[?#].*$/, '');

async function copyLink(session: Session, lesson: Lesson, page: 'lesson' | 'practice page'): Promise<void> {
  const { writeLessonLink } = await import('../../core/exchange');
  const link = writeLessonLink(lesson, appAddress() + (page === 'lesson' ? '' : '?practice'));
  const copied = page === 'lesson' ? COPIED : COPIED_FOR_PRACTICE;
  try {
    await navigator.clipboard.writeText(link);
  } catch {
    session.editor.setState({ notice: NO_CLIPBOARD });
    return;
  }
  session.editor.setState({ notice: link.length > SAFE_LINK ? `${copied} ${LONG_LINK}` : copied });
}

/** Shows what the student will see; the lesson's own page falls silent. */
async function showPractice(lesson: Lesson, playback: Playback): Promise<void> {
  playback.stop();
  await openPracticeView(lesson);
}

async function saveAudio(session: Session, lesson: Lesson): Promise<void> {
  const line = lineToExport(session, lesson);
  if (line === null) return;
  const { piece, sheet } = line;
  await runWork('Making the audio file', async (signal) => {
    const [{ renderWav }, { exportName }] = await Promise.all([
      import('../../sound'),
      import('../../core/exchange'),
    ]);
    const result = await renderWav(performanceOf(piece, sheet, 'sound'), mixOf(piece.playing), { signal });
    if (!result.ok) session.editor.setState({ notice: result.problem });
    else if (result.value !== null) {
      saveFile(`${fileStem(exportName(sheet, lesson.title))}.wav`, result.value, 'audio/wav');
    }
  });
}

export const saveLessonFile = (lesson: Lesson): void =>
  saveFile(`${fileStem(lesson.title)}.lesson.json`, printLesson(lesson), 'application/json');

function keepAsFile(session: Session, lesson: Lesson): void {
  saveLessonFile(lesson);
  session.keptAsFile(lesson);
}

/** The lesson with one of its pieces alone; its title says which. */
const onlyPiece = (lesson: Lesson, id: string): Lesson => {
  const pieces = lesson.pieces.filter((piece) => piece.id === id);
  return { ...lesson, title: `${lesson.title}: ${pieces[0]?.name ?? ''}`, pieces };
};

/** What the Export menu offers. */
export function useExports(): readonly MenuGroup[] {
  const { session, playback } = useAtWork();
  const lesson = useLesson();
  const line = lineAtHand(
    lesson,
    useEditor((state) => state.pieceId),
  );
  return [
    {
      heading: 'The sheet',
      items: [
        {
          label: 'Handout (PDF)',
          note: 'To print later or to send. It looks the same everywhere.',
          onChoose: () => void attempt(session, 'The handout', (lesson) => savePdf(session, lesson)),
        },
        {
          label: 'Print the handout',
          note: 'On paper, now.',
          onChoose: () => void attempt(session, 'The printed page', printLessonHandout),
        },
      ],
    },
    {
      heading: 'The line at hand',
      items: [
        {
          label: 'MusicXML',
          note: 'Staff, tab and chords, to go on writing in a notation program.',
          onChoose: () =>
            void attempt(session, 'The MusicXML file', (lesson) => saveMusicXml(session, lesson)),
        },
        {
          label: 'MusicXML, compressed',
          note: 'The same as a small .mxl file, for a notation program that prefers it.',
          onChoose: () => void attempt(session, 'The MusicXML file', (lesson) => saveMxl(session, lesson)),
        },
        {
          label: 'Text tab',
          note: 'Plain letters and numbers, for a message or a forum.',
          onChoose: () => void attempt(session, 'The text tab', (lesson) => saveTextTab(session, lesson)),
        },
        {
          label: 'MIDI',
          note: 'The notes of the parts that are switched on, for a sequencer or a keyboard.',
          onChoose: () => void attempt(session, 'The MIDI file', (lesson) => saveMidi(session, lesson)),
        },
        {
          label: 'Audio (WAV)',
          note: 'To play along with anywhere: as it is played now, once through.',
          onChoose: () => void attempt(session, 'The audio file', (lesson) => saveAudio(session, lesson)),
        },
      ],
    },
    {
      heading: 'The whole lesson',
      items: [
        {
          label: 'Lesson file',
          note: 'To keep, or to open on another device.',
          onChoose: () =>
            void attempt(session, 'The lesson file', async (lesson) => keepAsFile(session, lesson)),
        },
        {
          label: 'Copy a link',
          note: 'The lesson is in the link itself; no server keeps it.',
          onChoose: () => void attempt(session, 'The link', (lesson) => copyLink(session, lesson, 'lesson')),
        },
      ],
    },
    {
      heading: 'For the student',
      items: [
        {
          label: 'Practice page',
          note: 'One file that plays and shows the lesson anywhere, also without a network.',
          onChoose: () => void attempt(session, 'The practice page', savePracticePage),
        },
        ...(lesson.pieces.length > 1 && line !== null
          ? [
              {
                label: `Practice page, only ${line.name}`,
                note: 'The same with the line at hand alone.',
                onChoose: () =>
                  void attempt(session, 'The practice page', (whole) =>
                    savePracticePage(onlyPiece(whole, line.id)),
                  ),
              },
            ]
          : []),
        {
          label: 'Copy a practice link',
          note: 'It opens the practice page with this lesson.',
          onChoose: () =>
            void attempt(session, 'The link', (whole) => copyLink(session, whole, 'practice page')),
        },
        {
          label: 'Look at the practice page',
          note: 'As the student will see it, here and now.',
          onChoose: () =>
            void attempt(session, 'The practice page', (whole) => showPractice(whole, playback)),
        },
      ],
    },
  ];
}
