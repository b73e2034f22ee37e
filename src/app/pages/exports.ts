import { deriveSheet, deriveSheets, type Lesson, printLesson } from '../../core/lesson';
import { buildPerformance } from '../../core/performance';
import type { MenuGroup } from '../controls';
import type { Session } from '../state';
import { lineAtHand } from './at-hand';
import { fileStem, saveFile } from './files';
import { mixOf, passageOf, practiceTempo } from './playback';
import { useAtWork } from './session';
import { runWork } from './work';

const FAILED = 'could not be made. Check that the page is still reachable and try again.';

/** Runs an export and says so when it fails; the lesson is never touched. */
async function attempt(
  session: Session,
  what: string,
  work: (lesson: Lesson) => Promise<void>,
): Promise<void> {
  session.editor.setState({ notice: null });
  try {
    await work(session.lessons.getState().lesson);
  } catch {
    session.editor.setState({ notice: `${what} ${FAILED}` });
  }
}

async function savePdf(session: Session, lesson: Lesson): Promise<void> {
  const { buildHandout, handoutPdf } = await import('../../handout');
  const handout = await buildHandout(lesson, deriveSheets(lesson));
  const { bytes, missing } = await handoutPdf(handout);
  saveFile(`${fileStem(lesson.title)}.pdf`, bytes, 'application/pdf');
  const remarks = [
    ...handout.remarks,
    ...(missing.length === 0 ? [] : [`The handout’s type has no sign for ${missing.join(' ')}.`]),
  ];
  if (remarks.length > 0) session.editor.setState({ notice: remarks.join(' ') });
}

async function print(lesson: Lesson): Promise<void> {
  const { buildHandout, printHandout } = await import('../../handout');
  await printHandout(await buildHandout(lesson, deriveSheets(lesson)));
}

/** The piece at hand with its sheet, or a sentence in the notice when there is no line with bars. */
function lineToExport(session: Session, lesson: Lesson) {
  const piece = lineAtHand(lesson, session.editor.getState().pieceId);
  const sheet = piece && deriveSheet(piece, lesson.instrument);
  if (!piece || sheet?.kind !== 'line' || sheet.bars.length === 0) {
    session.editor.setState({ notice: 'There is no line to export yet: write a chord chart first.' });
    return null;
  }
  return { piece, sheet };
}

async function saveMusicXml(session: Session, lesson: Lesson): Promise<void> {
  const line = lineToExport(session, lesson);
  if (line === null) return;
  const { writeMusicXml } = await import('../../core/exchange');
  const text = writeMusicXml(line.sheet, lesson.title);
  saveFile(
    `${fileStem(`${lesson.title} ${line.piece.name}`)}.musicxml`,
    text,
    'application/vnd.recordare.musicxml+xml',
  );
}

async function saveAudio(session: Session, lesson: Lesson): Promise<void> {
  const line = lineToExport(session, lesson);
  if (line === null) return;
  const { piece, sheet } = line;
  await runWork('Making the audio file', async (signal) => {
    const { renderWav } = await import('../../sound');
    const performance = buildPerformance(sheet, {
      tempo: practiceTempo(piece),
      countIn: piece.playing.countIn,
      passage: passageOf(piece, sheet.chart.bars.length),
    });
    const result = await renderWav(performance, mixOf(piece.playing), { signal });
    if (!result.ok) session.editor.setState({ notice: result.problem });
    else if (result.value !== null) {
      saveFile(`${fileStem(`${lesson.title} ${piece.name}`)}.wav`, result.value, 'audio/wav');
    }
  });
}

export const saveLessonFile = (lesson: Lesson): void =>
  saveFile(`${fileStem(lesson.title)}.lesson.json`, printLesson(lesson), 'application/json');

/** What the Export menu offers. */
export function useExports(): readonly MenuGroup[] {
  const { session } = useAtWork();
  return [
    {
      heading: 'The sheet',
      items: [
        {
          label: 'Handout (PDF)',
          note: 'To print or to send.',
          onChoose: () => void attempt(session, 'The handout', (lesson) => savePdf(session, lesson)),
        },
        {
          label: 'Print the handout',
          onChoose: () => void attempt(session, 'The printed page', print),
        },
      ],
    },
    {
      heading: 'The line at hand',
      items: [
        {
          label: 'MusicXML',
          note: 'Staff, tab and chords for a notation program.',
          onChoose: () =>
            void attempt(session, 'The MusicXML file', (lesson) => saveMusicXml(session, lesson)),
        },
        {
          label: 'Audio (WAV)',
          note: 'As the sentence below says it is played, once.',
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
          onChoose: () => saveLessonFile(session.lessons.getState().lesson),
        },
      ],
    },
  ];
}
